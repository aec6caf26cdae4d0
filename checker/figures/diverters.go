package figures

var diverterTable = tabulate(
	List{Name: "diverters", Doc: "Every diverter.", Subject: "a diverter"},
	func(d *drawing) []*part { return d.ofKind(diverter) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "second_route_reaches_sewer", Kind: Truth,
			Doc: "Whether every way of its second route ends in a sewer or septic connection without meeting a part that stores, treats or takes up greywater; " +
				"false when no second route is drawn."}, (*part).secondRouteReachesSewer},
		{Field{Name: "second_route", Kind: Text, Doc: "Where its second route goes, part by part; \"none\" where none is drawn."}, (*part).secondRoute},
	},
)

func (p *part) secondRouteReachesSewer() Value {
	reaches, lacks := p.drawing.network.allEnd(p.second(), leaves, inTrain)
	return orUnknown(truth(reaches, p.given("bypass_to", len(p.BypassTo))...), lacks)
}

func (p *part) secondRoute() Value {
	return text(p.drawing.network.trail(p.node, p.second(), bypassing), p.given("bypass_to", len(p.BypassTo))...)
}

// second gives the ways that the diverter sends water by in the bypass season.
func (p *part) second() []way {
	if len(p.BypassTo) == 0 {
		return nil
	}
	return p.drawing.network.nodes[p.node].ways[bypassing]
}

// given names an entry as an input where the drawing has it.
func (p *part) given(entry string, members int) []Input {
	if members == 0 {
		return nil
	}
	return []Input{p.drawn(entry)}
}
