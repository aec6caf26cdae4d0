package hydraulics

import (
	"cmp"
	"math"
)

// OutletSource names the rule for a pipe under head.
const OutletSource = "pipe under head: the lesser of its mouth as an orifice and of the full barrel, H = (1 + ΣK + 2g·n²·L/R^(4/3))·V²/2g (FHWA HEC-22; from memory)"

// Loss coefficients of a pipe's entrance, K in K·V²/2g, common practice.
const (
	SharpEntrance      = 0.5 // square-edged, flush with the wall
	ProjectingEntrance = 0.8 // pipe reaching into the water
	RoundedEntrance    = 0.2
)

// Outlet is a pipe that draws from a basin whose water covers its mouth.
type Outlet struct {
	Diameter  float64 // inside, m
	Length    float64 // m
	Roughness float64 // Manning's n, s/m^(1/3)
	Losses    float64 // sum of the loss coefficients of entrance, bends and valves
	OrificeCd float64 // discharge coefficient of the mouth
}

// Flow is the flow through the pipe, m³/s, and what governs it. The head on
// the mouth, m, is measured from the middle of its opening; the head on the
// barrel, m, from the middle of its lower end, or from the water there where that
// stands higher. Neither is negative. It holds for a covered mouth and a barrel
// that runs full: the head on the mouth is at least half the diameter.
func (o Outlet) Flow(mouthHead, barrelHead float64) (Outflow, error) {
	area, err := CircleArea(o.Diameter)
	if err != nil {
		return Outflow{}, err
	}
	if mouthHead < o.Diameter/2 {
		return Outflow{}, outside("head on the mouth", mouthHead, "at least half the diameter, so that water covers the mouth")
	}
	mouth, err := Orifice(o.OrificeCd, area, mouthHead)
	barrel, failed := o.full(area, barrelHead)
	if err := cmp.Or(err, failed); err != nil {
		return Outflow{}, err
	}
	return Least(Outflow{mouth, OrificeControl}, Outflow{barrel, BarrelControl}), nil
}

// full is the flow at which the losses and the velocity head use up the head.
func (o Outlet) full(area, head float64) (float64, error) {
	return valid(area*math.Sqrt(2*Gravity*head/o.resistance()),
		notNegative("length", o.Length), positive("roughness", o.Roughness),
		notNegative("sum of losses", o.Losses), notNegative("head on the barrel", head))
}

// resistance is the velocity heads that the full pipe uses up.
func (o Outlet) resistance() float64 {
	friction := 2 * Gravity * o.Roughness * o.Roughness * o.Length / math.Pow(o.Diameter/4, 4.0/3)
	return 1 + o.Losses + friction
}
