package hydraulics

import (
	"cmp"
	"math"
)

// Pipe is a circular gravity drain on a straight grade.
type Pipe struct {
	Diameter  float64 // inside, m
	Slope     float64 // fall over length, the way the water runs
	Roughness float64 // Manning's n, s/m^(1/3)
}

// Full is the flow of the pipe running full under no pressure, by Manning's
// equation with A = πD²/4 and R = D/4.
func (p Pipe) Full() (Flow, error) { return p.At(p.Diameter) }

// At is the uniform flow at a depth in m, more than 0 and at most the diameter.
// Manning's n is taken as the same at all depths.
func (p Pipe) At(depth float64) (Flow, error) {
	err := cmp.Or(p.check(), positive("depth in the pipe", depth), within("depth in the pipe", depth, 0, p.Diameter))
	if err != nil {
		return Flow{}, err
	}
	return p.at(depth), nil
}

// Most is the greatest uniform flow: at 0.938 of the diameter a pipe carries
// 1.076 times what it carries full.
func (p Pipe) Most() (Flow, error) { return p.At(fullest * p.Diameter) }

// Carrying is the uniform flow of a discharge in m³/s, more than 0. A discharge
// somewhat over the full pipe's has two depths; this is the smaller one, which a
// drain that fills from empty has. More than Most is a *RangeError: the pipe
// would run under pressure.
func (p Pipe) Carrying(discharge float64) (Flow, error) {
	if err := cmp.Or(p.check(), positive("discharge", discharge)); err != nil {
		return Flow{}, err
	}
	most := p.at(fullest * p.Diameter)
	if discharge > most.Discharge {
		return Flow{}, outside("discharge", discharge, "no more than the pipe carries without pressure")
	}
	depth := bisect(discharge, 0, most.Depth, func(y float64) float64 { return p.at(y).Discharge })
	return p.at(depth), nil
}

func (p Pipe) at(depth float64) Flow {
	return uniform(p.Roughness, p.Slope, depth, circular(p.Diameter, depth))
}

func (p Pipe) check() error {
	return cmp.Or(positive("diameter", p.Diameter), positive("slope", p.Slope), positive("roughness", p.Roughness))
}

// fullest is the depth over the diameter at which A^(5/3)·P^(-2/3) is greatest:
// the root of 5θ·cos θ = 3θ + 2·sin θ between the half-full and the full pipe.
var fullest = func() float64 {
	angle := bisect(0, math.Pi, 2*math.Pi, func(a float64) float64 { return 5*a*math.Cos(a) - 3*a - 2*math.Sin(a) })
	return (1 - math.Cos(angle/2)) / 2
}()

// Ratios are a part-full pipe's values over the full pipe's, the trade's
// hydraulic elements.
type Ratios struct{ Area, Radius, Velocity, Discharge float64 }

// HydraulicElements gives the ratios at a depth over the diameter, more than 0
// and at most 1, for a Manning's n that is the same at all depths. Size, slope
// and roughness do not change them.
func HydraulicElements(depthRatio float64) (Ratios, error) {
	unit := Pipe{Diameter: 1, Slope: 1, Roughness: 1}
	part, err := unit.At(depthRatio)
	if err != nil {
		return Ratios{}, err
	}
	full := unit.at(1)
	return Ratios{
		Area:      part.Area / full.Area,
		Radius:    part.Radius() / full.Radius(),
		Velocity:  part.Velocity / full.Velocity,
		Discharge: part.Discharge / full.Discharge,
	}, nil
}
