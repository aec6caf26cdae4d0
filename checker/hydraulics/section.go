package hydraulics

import (
	"cmp"
	"math"
)

// Section is the wetted cross-section of a pipe or channel.
type Section struct {
	Area      float64 // m²
	Perimeter float64 // wetted, m
	TopWidth  float64 // width of the free surface, m
}

// Radius is the hydraulic radius A ÷ P, m; 0 for a dry section.
func (s Section) Radius() float64 {
	if s.Perimeter == 0 {
		return 0
	}
	return s.Area / s.Perimeter
}

// MeanDepth is the hydraulic depth A ÷ T, m; 0 where there is no free surface.
func (s Section) MeanDepth() float64 {
	if s.TopWidth == 0 {
		return 0
	}
	return s.Area / s.TopWidth
}

// CircularSection is the section of a circular pipe that runs to a depth y:
// θ = 2·acos(1 − 2y/D), A = D²(θ − sin θ)/8, P = Dθ/2. The diameter in m is
// more than 0; the depth in m from 0 to the diameter.
func CircularSection(diameter, depth float64) (Section, error) {
	if err := cmp.Or(positive("diameter", diameter), within("depth in the pipe", depth, 0, diameter)); err != nil {
		return Section{}, err
	}
	return circular(diameter, depth), nil
}

func circular(diameter, depth float64) Section {
	angle := 2 * math.Acos(1-2*depth/diameter)
	return Section{
		Area:      diameter * diameter * (angle - math.Sin(angle)) / 8,
		Perimeter: diameter * angle / 2,
		TopWidth:  2 * math.Sqrt(depth*(diameter-depth)),
	}
}

// CircleArea is the area of a circle, m²; its diameter in m is more than 0.
func CircleArea(diameter float64) (float64, error) {
	return valid(math.Pi*diameter*diameter/4, positive("diameter", diameter))
}

// TrapezoidalSection is the section of a channel with a flat bottom and two
// equal sides, run to a depth: A = (b + z·y)·y, P = b + 2y·√(1 + z²). The side
// slope z is horizontal over vertical: 0 gives a rectangle, and a bottom of 0 a
// triangle, but not both. Bottom and depth in m, none negative.
func TrapezoidalSection(bottom, sideSlope, depth float64) (Section, error) {
	err := cmp.Or(notNegative("bottom width", bottom), notNegative("side slope", sideSlope), notNegative("depth", depth),
		positive("sum of bottom width and side slope", bottom+sideSlope))
	if err != nil {
		return Section{}, err
	}
	return trapezoidal(bottom, sideSlope, depth), nil
}

func trapezoidal(bottom, sideSlope, depth float64) Section {
	return Section{
		Area:      (bottom + sideSlope*depth) * depth,
		Perimeter: bottom + 2*depth*math.Hypot(1, sideSlope),
		TopWidth:  bottom + 2*sideSlope*depth,
	}
}
