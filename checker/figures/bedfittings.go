package figures

import (
	"math"
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// fittingColumns are the figures of a bed's inlet header, outlet and draw-down.
var fittingColumns = []column[*bed]{
	{Field{Name: "inlet_spread", Kind: Number, Dimension: quantity.Share,
		Doc:     "How much of the bed's width the inlet header spreads the water over, across the water's course.",
		Formula: "extent of the header ÷ extent of the outline, both square to the course: from the header to the outlet where it is drawn, else along the outline's longest side"},
		(*bed).inletSpread},
	{Field{Name: "inlet_cleanouts", Kind: Number, Dimension: quantity.Number, Doc: "Cleanouts drawn on the inlet header."}, (*bed).inletCleanouts},
	{Field{Name: "inlet_stone", Kind: Number, Dimension: quantity.Length, Doc: "Size of the coarse stone round the inlet header."}, (*bed).inletStone},
	{Field{Name: "outlet_stone", Kind: Number, Dimension: quantity.Length, Doc: "Size of the coarse stone round the pipe to the outlet."}, (*bed).outletStone},
	{Field{Name: "outlet_adjustable", Kind: Truth, Doc: "Whether the level that the outlet holds can be changed."}, (*bed).outletAdjustable},
	{Field{Name: "drawdown_at_floor", Kind: Truth, Doc: "Whether the draw-down lies no higher than the lowest point of the floor."}, (*bed).drawdownAtFloor},
	{Field{Name: "drawdown_accessible", Kind: Truth, Doc: "Whether the draw-down's valve can be reached without digging."}, (*bed).drawdownAccessible},
}

func (b *bed) lackOf(fitting, entry, words string) Value {
	return unknown(Lack{b.Pointer + "/" + fitting + "/" + entry, words})
}

// inletSpread compares the header with the outline as both are seen along the
// water's course.
func (b *bed) inletSpread() Value {
	if b.shape.Area() == 0 {
		return unknown(b.lack("outline"))
	}
	if b.Inlet == nil || len(b.Inlet.Path) == 0 {
		return b.lackOf("inlet", "path", "path of the inlet of "+b.ID)
	}
	header := b.header()
	from, to := b.longestSide()
	if b.Outlet != nil && b.Outlet.At != nil {
		from, to = geometry.Nearest(header.shape, geometry.At(geometry.Point(*b.Outlet.At)))
	}
	if math.Hypot(to.X-from.X, to.Y-from.Y) <= geometry.Resolution {
		return b.lackOf("outlet", "at", "a place of the outlet of "+b.ID+" away from its inlet header")
	}
	across := geometry.Point{X: from.Y - to.Y, Y: to.X - from.X}
	return number(extent(header.shape, across)/extent(b.shape, across), header.drawn, b.drawn("outline"))
}

// extent is how long a shape is in a direction.
func extent(s geometry.Shape, along geometry.Point) float64 {
	least, greatest := math.Inf(1), math.Inf(-1)
	for _, p := range s.Points() {
		at := (along.X*p.X + along.Y*p.Y) / math.Hypot(along.X, along.Y)
		least, greatest = min(least, at), max(greatest, at)
	}
	return greatest - least
}

func (b *bed) inletCleanouts() Value {
	if b.Inlet == nil || b.Inlet.Cleanouts == nil {
		return b.lackOf("inlet", "cleanouts", "cleanouts of the inlet of "+b.ID)
	}
	return number(float64(len(b.Inlet.Cleanouts)), Input{Name: "cleanouts of the inlet", Pointer: b.Pointer + "/inlet/cleanouts"})
}

func (b *bed) inletStone() Value {
	if b.Inlet == nil || !b.Inlet.StoneSize.Given() {
		return b.lackOf("inlet", "stone_size", "stone_size of the inlet of "+b.ID)
	}
	return number(b.Inlet.StoneSize.Value, Input{Name: "stone size at the inlet", Pointer: b.Pointer + "/inlet/stone_size"})
}

func (b *bed) outletStone() Value {
	if b.Outlet == nil || !b.Outlet.StoneSize.Given() {
		return b.lackOf("outlet", "stone_size", "stone_size of the outlet of "+b.ID)
	}
	return number(b.Outlet.StoneSize.Value, Input{Name: "stone size at the outlet", Pointer: b.Pointer + "/outlet/stone_size"})
}

func (b *bed) outletAdjustable() Value {
	if b.Outlet == nil || b.Outlet.Adjustable == nil {
		return b.lackOf("outlet", "adjustable", "adjustable of the outlet of "+b.ID)
	}
	return truth(*b.Outlet.Adjustable, Input{Name: "adjustable outlet", Pointer: b.Pointer + "/outlet/adjustable"})
}

func (b *bed) drawdownAtFloor() Value {
	drain := b.Drawdown
	if drain == nil || !drain.Level.Given() {
		return b.lackOf("drawdown", "level", "level of the draw-down of "+b.ID)
	}
	if len(b.floor.lacks) > 0 {
		return unknown(b.floor.lacks...)
	}
	return truth(drain.Level.Value <= slices.Min(b.floor.at)+geometry.Resolution,
		Input{Name: "level of the draw-down", Pointer: b.Pointer + "/drawdown/level"}, b.floor.input)
}

func (b *bed) drawdownAccessible() Value {
	if b.Drawdown == nil || b.Drawdown.Accessible == nil {
		return b.lackOf("drawdown", "accessible", "accessible of the draw-down of "+b.ID)
	}
	return truth(*b.Drawdown.Accessible, Input{Name: "accessible draw-down", Pointer: b.Pointer + "/drawdown/accessible"})
}
