package figures

import (
	"slices"

	"greysill/checker/quantity"
)

var partTable = tabulate(
	List{Name: "parts", Doc: "Every part of the system.", Subject: "a part"},
	func(d *drawing) []*part { return d.parts }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "drains_on", Kind: Truth,
			Doc: "Whether the drawing says where its water goes in its ordinary run; of a pond the overflow says it too."}, (*part).drainsOn},
		{Field{Name: "inside_boundary", Kind: Truth,
			Doc: "Whether the whole part lies on one's own land, a bed with its inlet header, outlet and draw-down; touching the boundary from inside is inside."}, (*part).insideBoundary},
		{Field{Name: "beyond_boundary", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far its farthest point lies beyond the boundary; 0 inside.",
			Formula: "greatest distance in plan of any of its points from the land inside the boundary"}, (*part).beyondBoundary},
		{Field{Name: "own_ground", Kind: Truth,
			Doc: "Whether no other bed, basin, trench, pond or tank is drawn on the ground of this one, as far as the drawing's tolerance of distance tells; true of a part of any other kind."},
			(*part).ownGround},
		{Field{Name: "ground_shared", Kind: Text, Doc: "The parts that are drawn on the same ground; \"none\" where none is."}, func(p *part) Value { return p.shares() }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area,
			Doc:     "Area of its outline in plan; length × width of a trench drawn as a line; 0 for a point or another line.",
			Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"}, (*part).area},
	},
)

const boundaryPointer = "/site/boundary"

var boundaryDrawn = Input{Name: "boundary", Pointer: boundaryPointer}

// onLand gives a figure of how the part lies to the boundary.
func (p *part) onLand(figure func() Value) Value {
	if lacks := p.unplaced(); len(lacks) > 0 {
		return unknown(lacks...)
	}
	if p.drawing.boundary.Empty() {
		return unknown(Lack{boundaryPointer, "boundary of the site"})
	}
	v := figure()
	for _, g := range p.grounds {
		v.Inputs = append(v.Inputs, g.drawn)
	}
	v.Inputs = append(v.Inputs, boundaryDrawn)
	return v
}

func (p *part) drainsOn() Value {
	drawn := p.given("to", len(p.To))
	if p.Kind == pond {
		drawn = append(drawn, p.given("overflow_to", len(p.OverflowTo))...)
	}
	return truth(len(drawn) > 0, drawn...)
}

func (p *part) insideBoundary() Value {
	return p.onLand(func() Value {
		outside := func(g covered) bool { return !g.inside(p.drawing.boundary) }
		return truth(!slices.ContainsFunc(p.grounds, outside))
	})
}

func (p *part) beyondBoundary() Value {
	return p.onLand(func() Value {
		farthest := 0.0
		for _, g := range p.grounds {
			farthest = max(farthest, g.beyond(p.drawing.boundary))
		}
		return number(farthest)
	})
}

func (p *part) area() Value {
	return orUnknown(number(p.shape.Area()+2*p.half*p.shape.Length(), Input{Name: p.ID, Pointer: p.lies}), p.unplaced())
}
