package figures

import (
	"slices"

	"greysill/checker/quantity"
)

var dischargeTable = tabulate(
	List{Name: "discharges", Subject: "a place of discharge",
		Doc: "Every place where greywater is let into gravel, mulch or soil: beds, mulch basins, infiltration trenches."},
	func(d *drawing) []*part { return d.ofKind(plantedBed, mulchBasin, trench) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "cover", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of gravel, mulch or soil over the place where the water is let in: over the inlet header where one is drawn with its cover, and in a bed no more than its levels leave room for.",
			Formula: "as drawn; in a bed the less of that and highest level of the media's surface + mulch − (invert of the inlet header + its diameter)"}, (*part).cover},
	},
)

// cover is that of the inlet header, where it is drawn there, else that of the
// part; in a bed no more than its levels leave room for.
func (p *part) cover() Value {
	stated := p.statedCover()
	if !stated.Known() || p.Kind != plantedBed {
		return stated
	}
	if room := p.roomForCover(); room.Known() && room.Number < stated.Number {
		return room
	}
	return stated
}

func (p *part) statedCover() Value {
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

// roomForCover is how far the highest gravel and the mulch reach over the top of
// the inlet header.
func (p *part) roomForCover() Value {
	if p.Inlet == nil || !p.Inlet.Level.Given() {
		return unknown(p.lack("inlet/level"))
	}
	surface := newBed(p).surface
	if len(surface.lacks) > 0 {
		return unknown(surface.lacks...)
	}
	top := p.Inlet.Level.Value + p.Inlet.Diameter.Value
	return number(slices.Max(surface.at)+p.Mulch.Value-top, surface.input, p.drawn("inlet/level"))
}
