package figures

import (
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var partTable = tabulate(
	List{Name: "parts", Doc: "Every part of the system.", Subject: "a part"},
	func(d *drawing) []*part { return d.parts }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "inside_boundary", Kind: Truth,
			Doc: "Whether the whole part lies on one's own land; touching the boundary from inside is inside."}, (*part).insideBoundary},
		{Field{Name: "beyond_boundary", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far its farthest point lies beyond the boundary; 0 inside.",
			Formula: "greatest distance in plan of any of its points from the land inside the boundary"}, (*part).beyondBoundary},
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
	v.Inputs = []Input{{Name: p.ID, Pointer: p.lies}, boundaryDrawn}
	return v
}

func (p *part) insideBoundary() Value {
	return p.onLand(func() Value { return truth(p.inside()) })
}

func (p *part) beyondBoundary() Value {
	return p.onLand(func() Value { return number(p.beyond()) })
}

// inside reports whether all of the part is on one's own land, half its width
// included where it is drawn as a line.
func (p *part) inside() bool {
	land := p.drawing.boundary
	if p.half == 0 {
		return geometry.Inside(p.shape, land)
	}
	return geometry.ClearOfEdge(p.shape, land) >= p.half-geometry.Resolution
}

// beyond is how far the part reaches beyond the boundary.
func (p *part) beyond() float64 {
	land := p.drawing.boundary
	switch {
	case p.inside():
		return 0
	case geometry.Inside(p.shape, land):
		return p.half - geometry.ClearOfEdge(p.shape, land)
	default:
		return geometry.FarthestOutside(p.shape, land) + p.half
	}
}

func (p *part) area() Value {
	return orUnknown(number(p.shape.Area()+2*p.half*p.shape.Length(), Input{Name: p.ID, Pointer: p.lies}), p.unplaced())
}
