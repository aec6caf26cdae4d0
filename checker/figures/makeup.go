package figures

var makeUpTable = tabulate(
	List{Name: "make_up", Doc: "Every part that is topped up or flushed with water from elsewhere.", Subject: "a part with make-up water"},
	(*drawing).madeUp, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "from", Kind: Text, Doc: "What water it is.", Words: []string{"drinking water", "rainwater"}},
			func(p *part) Value {
				return text(p.MakeUp.From, Input{Name: "make-up water", Pointer: p.Pointer + "/make_up/from"})
			}},
		{Field{Name: "air_gap", Kind: Truth, Doc: "Whether it falls in through open air, so that nothing can be drawn back."},
			func(p *part) Value {
				return stated(p.MakeUp.AirGap, p.Pointer+"/make_up", "air_gap", "the make-up water of "+p.ID)
			}},
	},
)

func (d *drawing) madeUp() []*part {
	var all []*part
	for _, p := range d.parts {
		if p.MakeUp != nil {
			all = append(all, p)
		}
	}
	return all
}
