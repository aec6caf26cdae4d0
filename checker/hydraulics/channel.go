package hydraulics

import "cmp"

// Channel is a prismatic channel with a flat bottom and two equal sides on a
// straight grade. A side slope of 0 makes it a rectangle.
type Channel struct {
	Bottom    float64 // width, m
	SideSlope float64 // horizontal over vertical
	Slope     float64 // fall over length
	Roughness float64 // Manning's n, s/m^(1/3)
}

// At is the uniform flow at a depth in m, more than 0.
func (c Channel) At(depth float64) (Flow, error) {
	if err := cmp.Or(c.check(), positive("depth", depth)); err != nil {
		return Flow{}, err
	}
	return c.at(depth), nil
}

// Carrying is the uniform flow of a discharge in m³/s, more than 0, at its
// normal depth.
func (c Channel) Carrying(discharge float64) (Flow, error) {
	if err := cmp.Or(c.check(), positive("discharge", discharge)); err != nil {
		return Flow{}, err
	}
	deep := 1.0
	for c.at(deep).Discharge < discharge {
		deep *= 2
	}
	depth := bisect(discharge, 0, deep, func(y float64) float64 { return c.at(y).Discharge })
	return c.at(depth), nil
}

func (c Channel) at(depth float64) Flow {
	return uniform(c.Roughness, c.Slope, depth, trapezoidal(c.Bottom, c.SideSlope, depth))
}

func (c Channel) check() error {
	return cmp.Or(notNegative("bottom width", c.Bottom), notNegative("side slope", c.SideSlope),
		positive("sum of bottom width and side slope", c.Bottom+c.SideSlope),
		positive("slope", c.Slope), positive("roughness", c.Roughness))
}
