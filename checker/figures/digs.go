package figures

import (
	"slices"

	"greysill/checker/quantity"
)

var digTable = tabulate(
	List{Name: "digs", Doc: "Every part that is dug in, trenches of pipes too, paired with every buried service.", Subject: "a dig and a buried service"},
	(*drawing).digs, pair.subject,
	[]column[pair]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(p pair) Value { return text(p.part.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(p pair) Value { return p.part.kind() }},
		{Field{Name: "service", Kind: Text, Doc: "The service's id."}, func(p pair) Value { return text(p.thing.id) }},
		{Field{Name: "service_kind", Kind: Text, Doc: "What the service carries.", Words: serviceKinds}, func(p pair) Value { return text(p.thing.kind) }},
		{Field{Name: "distance", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least distance in plan between the two, from the edge of the part or the middle line of a pipe; 0 where they touch or overlap.",
			Formula: "least distance between the two shapes in plan"}, func(p pair) Value { return p.distance }},
		{Field{Name: "meets", Kind: Truth, Doc: "Whether the service passes through the dig in plan, or a pipe crosses or touches it, as far as the drawing's tolerance of distance tells."}, pair.meets},
		{Field{Name: "open_water", Kind: Truth, Doc: "Whether the part is open water: a pond, or a settling basin without a cover."},
			func(p pair) Value { return p.part.asOpenWater() }},
	},
)

// digs pairs what is dug with what could be struck.
func (d *drawing) digs() []pair {
	dig := slices.DeleteFunc(d.ofKind(slices.Concat(dug, []string{drainPipe, overflowPipe})...), (*part).standsOn)
	return pairs(dig, d.services)
}

// standsOn reports whether the part stands on the ground.
func (p *part) standsOn() bool { return p.AboveGround != nil && *p.AboveGround }

func (p pair) meets() Value {
	distance := p.distance
	return orUnknown(truth(distance.Number <= p.part.drawing.planTolerance(), distance.Inputs...), distance.Lacks)
}

// asOpenWater tells a pond, or a settling basin without a cover, from other digs.
func (p *part) asOpenWater() Value {
	if p.Kind != pond && p.Kind != settlingBasin {
		return truth(false)
	}
	return p.open()
}
