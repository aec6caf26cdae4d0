package figures

import "greysill/checker/quantity"

var dischargeTable = tabulate(
	List{Name: "discharges", Subject: "a place of discharge",
		Doc: "Every place where greywater is let into gravel, mulch or soil: beds, mulch basins, infiltration trenches."},
	func(d *drawing) []*part { return d.ofKind(plantedBed, mulchBasin, trench) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "cover", Kind: Number, Dimension: quantity.Length,
			Doc: "Depth of gravel, mulch or soil over the place where the water is let in: over the inlet header where one is drawn with its cover."}, (*part).cover},
	},
)

// cover is that of the inlet header, where it is drawn there, else that of the
// part.
func (p *part) cover() Value {
	switch {
	case p.Inlet != nil && p.Inlet.Cover.Given():
		return number(p.Inlet.Cover.Value, Input{Name: "cover", Pointer: p.Pointer + "/inlet/cover"})
	case p.Cover.Given():
		return number(p.Cover.Value, p.drawn("cover"))
	case p.Kind == plantedBed:
		return unknown(Lack{p.Pointer + "/inlet/cover", "cover of the inlet of " + p.ID})
	default:
		return unknown(p.lack("cover"))
	}
}
