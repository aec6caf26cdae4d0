package figures

import (
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var cutTable = tabulate(
	List{Name: "cuts", Doc: "Every part that is dug in, and the trench of every drain pipe and overflow pipe.", Subject: "something that is dug"},
	(*drawing).cuts, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "deepest_cut", Kind: Number, Dimension: quantity.Length,
			Doc: "Greatest depth from the ground down to the floor of the part or the invert of the pipe; what is dug below for bedding comes on top. " +
				"0 where nothing lies below the ground.",
			Formula: "of a pipe, greatest cover + diameter; of a part the deeper of its depth as drawn and highest ground at a corner of the outline, as drawn or between spot levels, − lowest floor level"},
			(*part).deepestCut},
		{Field{Name: "protected", Kind: Truth, Doc: "Whether the plan has deep cuts sloped back, shored or boxed."},
			func(p *part) Value { return p.drawing.stated("cave_in_protection", construction.protection) }},
		{Field{Name: "has_exit", Kind: Truth, Doc: "Whether the plan has a ladder or ramp near everybody in a deep trench."},
			func(p *part) Value { return p.drawing.stated("trench_exits", construction.exits) }},
	},
)

func (d *drawing) cuts() []*part {
	var all []*part
	for _, p := range d.parts {
		if (p.isDug() || p.isPipe()) && !p.standsOn() {
			all = append(all, p)
		}
	}
	return all
}

func (p *part) deepestCut() Value {
	var depth Value
	switch {
	case p.isPipe():
		depth = p.deepestTrench()
	case p.Depth.Given():
		depth = deeper(p.entry("depth", p.Depth), len(p.Floor) > 0, p.downToFloor)
	default:
		depth = p.downToFloor()
	}
	depth.Number = max(depth.Number, 0)
	return depth
}

func (p *part) downToFloor() Value {
	ground, floor := p.highestGround(), p.lowestFloor()
	return outOf(ground.Number-floor.Number, ground, floor)
}

func (p *part) deepestTrench() Value {
	covers := []Value{p.diameter()}
	deepest := 0.0
	for _, r := range p.reaches() {
		c := newCover(r)
		cover := c.of(c.greatest.depth)
		covers, deepest = append(covers, cover), max(deepest, cover.Number+p.Diameter.Value)
	}
	inputs, lacks := gathered(covers)
	return orUnknown(number(deepest, inputs...), lacks)
}

// highestGround is the highest ground at the corners of the part.
func (p *part) highestGround() Value {
	if len(p.EdgeLevels) > 0 {
		highest := p.EdgeLevels[0].Value
		for _, l := range p.EdgeLevels {
			highest = max(highest, l.Value)
		}
		return number(highest, p.drawn("edge_levels"))
	}
	if lacks := p.unplaced(); len(lacks) > 0 {
		return unknown(lacks...)
	}
	var highest Value
	for i, at := range p.shape.Points() {
		level := p.drawing.level(geometry.Point(at), "round "+p.ID)
		if !level.Known() {
			return level
		}
		if i == 0 || level.Number > highest.Number {
			highest = level
		}
	}
	return highest
}
