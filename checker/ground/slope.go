package ground

import (
	"math"

	"greysill/checker/geometry"
)

// Steepest is the steepest slope of the ground that a shape lies on or touches,
// fall over distance in plan: that of the steepest of its triangles. ok is false
// where the shape reaches beyond the hull of the spot levels, and for an empty one.
func (s *Surface) Steepest(shape geometry.Shape) (slope float64, ok bool) {
	if shape.Empty() {
		return 0, false
	}
	for _, p := range shape.Points() {
		if _, inside := s.Level(p); !inside {
			return 0, false
		}
	}
	for _, t := range s.Triangles() {
		corners := []geometry.Point{{X: t[0].X, Y: t[0].Y}, {X: t[1].X, Y: t[1].Y}, {X: t[2].X, Y: t[2].Y}}
		if steep := steepness(t); steep > slope && geometry.Distance(geometry.Outline(corners), shape) <= geometry.Resolution {
			slope = steep
		}
	}
	return slope, true
}

// steepness is the slope of the plane through three spots: the length of its
// gradient.
func steepness(t [3]Spot) float64 {
	a, b, c := t[0], t[1], t[2]
	area := crossAt(a, b, c.X, c.Y)
	x := ((b.Z-a.Z)*(c.Y-a.Y) - (c.Z-a.Z)*(b.Y-a.Y)) / area
	y := ((c.Z-a.Z)*(b.X-a.X) - (b.Z-a.Z)*(c.X-a.X)) / area
	return math.Hypot(x, y)
}
