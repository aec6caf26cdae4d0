package figures

import (
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

var groundTable = tabulate(
	List{Name: "ground", Doc: "The ground under every part, as it is before any digging: the planes over the triangles between spot levels.", Subject: "a part"},
	func(d *drawing) []*part { return d.parts }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "least_level", Kind: Number, Dimension: quantity.Level, Doc: "Lowest level of the ground within its outline, along its line or at its place.",
			Formula: planeFormula}, func(p *part) Value { return p.onGround(lowestGround) }},
		{Field{Name: "greatest_level", Kind: Number, Dimension: quantity.Level, Doc: "Highest level of the ground there.",
			Formula: planeFormula}, func(p *part) Value { return p.onGround(func(e ground.Extent) float64 { return e.Highest }) }},
		{Field{Name: "least_slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope of the flattest triangle there, straight down it.",
			Formula: slopeFormula}, func(p *part) Value { return p.onGround(func(e ground.Extent) float64 { return e.Flattest }) }},
		{Field{Name: "greatest_slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope of the steepest triangle there, straight down it.",
			Formula: slopeFormula}, func(p *part) Value { return p.onGround(func(e ground.Extent) float64 { return e.Steepest }) }},
	},
)

const (
	planeFormula = "level of the plane through the three spot levels of the triangle that a place lies in"
	slopeFormula = "√((rise for each unit along x)² + (rise for each unit along y)²) of the plane through a triangle's three spot levels"
)

func lowestGround(e ground.Extent) float64 { return e.Lowest }

// onGround gives a figure of the ground under the part.
func (p *part) onGround(figure func(ground.Extent) float64) Value {
	if p.shape.Empty() {
		return unknown(Lack{p.Pointer, "the place of " + p.ID + " in plan"})
	}
	extent, ok := p.under()
	if ok {
		return number(figure(extent), spotLevels, Input{Name: p.ID, Pointer: p.lies})
	}
	if _, lacks := p.drawing.surface("under " + p.ID); len(lacks) > 0 {
		return unknown(lacks...)
	}
	return unknown(noSpots("under " + p.ID))
}
