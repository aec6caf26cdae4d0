package figures

import (
	"slices"

	"greysill/checker/geometry"
)

// groundShared names the parts that hold or take up water and are drawn on the same
// ground as this one, beyond what the drawing's tolerance of distance tells apart.
func (p *part) groundShared() Value {
	if lacks := p.unplaced(); len(lacks) > 0 {
		return unknown(lacks...)
	}
	var names []string
	inputs := []Input{{Name: p.ID, Pointer: p.lies}}
	for _, other := range p.drawing.parts {
		if other != p && p.overlaps(other) {
			names = append(names, other.ID)
			inputs = append(inputs, Input{Name: other.ID, Pointer: other.lies})
		}
	}
	return text(listed(names), inputs...)
}

func (p *part) ownGround() Value {
	shared := p.shares()
	return Value{Truth: shared.Known() && shared.Text == listed(nil), Inputs: shared.Inputs, Lacks: shared.Lacks}
}

// overlaps compares the ground of two parts that are dug in.
func (p *part) overlaps(other *part) bool {
	switch {
	case !p.isDug() || !other.isDug() || p.shape.Empty() || other.shape.Empty():
		return false
	case p.half+other.half == 0:
		return geometry.Overlap(p.shape, other.shape, p.drawing.planTolerance(), p.middles())
	default:
		return p.runsOver(other) || other.runsOver(p)
	}
}

// runsOver compares parts of which one at least is a trench drawn as a line, half
// its width to either side. Trenches may begin at one place: the middle of a stretch
// counts.
func (p *part) runsOver(other *part) bool {
	half := p.half + other.half
	reach := half - min(p.drawing.planTolerance(), half/2)
	return slices.ContainsFunc(p.middles(), func(middle geometry.Point) bool {
		return geometry.Distance(geometry.At(middle), other.shape) < reach
	})
}
