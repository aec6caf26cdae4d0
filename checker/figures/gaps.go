package figures

import (
	"math"
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var gapTable = tabulate(
	List{Name: "gaps", Subject: "where a part leads on with no pipe between, or a pipe into the soil",
		Doc: "Every way on, second route or overflow from one part to the next for which no pipe is drawn, and from a pipe into a mulch basin or trench. " +
			"Storm inflows and spillways have none: their water runs over the ground."},
	(*drawing).gaps, (*join).subject,
	[]column[*join]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(j *join) Value { return text(j.from.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(j *join) Value { return j.from.kind() }},
		{Field{Name: "next", Kind: Text, Doc: "The id of the part that it leads to."}, func(j *join) Value { return text(j.to.ID) }},
		{Field{Name: "gap", Kind: Number, Dimension: quantity.Length, Doc: "Distance in plan between the two; of a pipe from its end.",
			Formula: "least distance between the two shapes in plan"}, (*join).apart},
		{Field{Name: "meets", Kind: Truth, Doc: "Whether the two meet in plan, as far as the drawing's tolerance of distance tells."},
			func(j *join) Value {
				gap := j.apart()
				return orUnknown(truth(gap.Number <= j.from.drawing.planTolerance(), gap.Inputs...), gap.Lacks)
			}},
		{Field{Name: "indoors", Kind: Truth, Doc: "Whether both stand in or at one building, where the house's plumbing joins them; never of what is dug."}, (*join).indoors},
	},
)

// gaps gives the ways that are no joins.
func (d *drawing) gaps() []*join {
	var all []*join
	for _, p := range d.parts {
		for _, o := range slices.Concat(p.To, p.BypassTo, p.OverflowTo) {
			if j := (&join{p, d.part(o.Target)}); j.to != nil && j.overland() && !slices.ContainsFunc(all, j.is) {
				all = append(all, j)
			}
		}
	}
	return all
}

// overland reports whether nothing shows how the water gets from the one to the
// other unless they meet.
func (j *join) overland() bool {
	switch {
	case j.from.Kind == stormInflow || j.from.Kind == spillway:
		return false
	case j.from.isPipe():
		return takesUp(j.to.Kind)
	default:
		return !j.to.isPipe()
	}
}

// apart is how far the next part is from the end of the pipe, or from all ground
// that another part covers.
func (j *join) apart() Value {
	if lacks := append(j.from.unplaced(), j.to.unplaced()...); len(lacks) > 0 {
		return unknown(lacks...)
	}
	least := math.Inf(1)
	if j.from.isPipe() {
		least = j.to.awayFrom(j.from.last())
	} else {
		for _, g := range j.from.grounds {
			for _, to := range j.to.grounds {
				least = min(least, max(geometry.Distance(g.shape, to.shape)-g.half-to.half, 0))
			}
		}
	}
	return number(least, Input{Name: j.from.ID, Pointer: j.from.lies}, Input{Name: j.to.ID, Pointer: j.to.lies})
}

func (j *join) indoors() Value {
	for _, building := range only(j.from.drawing.features, "building") {
		if building.outlined && len(j.from.unplaced())+len(j.to.unplaced()) == 0 && j.from.standsIn(&building) && j.to.standsIn(&building) {
			return truth(true, Input{Name: building.id, Pointer: building.lies})
		}
	}
	return truth(false)
}

func (p *part) standsIn(building *thing) bool {
	return works(p.Kind) != field && geometry.Distance(p.shape, building.shape) <= p.drawing.planTolerance()
}
