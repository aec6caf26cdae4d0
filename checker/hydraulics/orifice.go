package hydraulics

import (
	"cmp"
	"math"
)

// OrificeSource names the orifice equation.
const OrificeSource = "orifice, Q = Cd·A·√(2gH) (K. Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 13.1, as worked in its Python companion)"

// Orifice is the flow through an opening, m³/s: Q = Cd·A·√(2gH), with the
// head H in m from the middle of a free opening, or from the water on the other
// side of a drowned one. For heads greater than the opening is high. The head
// may be 0.
func Orifice(cd, area, head float64) (float64, error) {
	return valid(cd*area*math.Sqrt(2*Gravity*head),
		positive("discharge coefficient", cd), positive("area of the opening", area), notNegative("head", head))
}

// DrainTimeSource names the falling-head drain time.
const DrainTimeSource = "tank of upright walls, t = 2A(√H₁ − √H₂)/(Cd·a·√(2g)) (B. K. Sarkar, Fluid Mechanics & Hydraulic Machines, Examples 4.7 and 4.8, as worked in its Python companion)"

// DrainTime is the time, s, in which a tank with upright walls falls from one
// head to another through an orifice, with nothing flowing in:
// t = 2A(√H₁ − √H₂)/(Cd·a·√(2g)). Two tanks that level out through an orifice
// between them behave as one of area A₁A₂/(A₁ + A₂). Areas in m², heads in m above the
// middle of the orifice; the second may be 0 and is no more than the first.
func DrainTime(tankArea, cd, orificeArea, from, to float64) (float64, error) {
	return valid(2*tankArea*(math.Sqrt(from)-math.Sqrt(to))/(cd*orificeArea*math.Sqrt(2*Gravity)),
		positive("area of the tank", tankArea), positive("discharge coefficient", cd), positive("area of the orifice", orificeArea),
		notNegative("starting head", from), within("final head", to, 0, from))
}

// Control is what holds a flow back where several things could.
type Control string

// The controls.
const (
	CrestControl   Control = "crest"   // the rim, as a weir
	MouthControl   Control = "mouth"   // the mouth of a pipe that air gets into
	OrificeControl Control = "orifice" // the opening
	BarrelControl  Control = "barrel"  // the pipe running full, with its friction
)

// Outflow is a discharge in m³/s and what governs it.
type Outflow struct {
	Discharge float64
	Control   Control
}

// Least is the outflow that governs of several in a row.
func Least(first Outflow, others ...Outflow) Outflow {
	for _, o := range others {
		if o.Discharge < first.Discharge {
			first = o
		}
	}
	return first
}

// RiserSource names the rule for a standpipe.
const RiserSource = "standpipe: a weir round its rim until it flows as an orifice, the lesser governs (FHWA HEC-22; from memory)"

// Riser is an upright standpipe that takes water over its level rim.
type Riser struct {
	Diameter  float64 // inside, m
	CrestC    float64 // weir coefficient of the rim, m^½/s
	OrificeCd float64 // discharge coefficient of the mouth
}

// Flow is the riser's flow at a head in m of water over its rim, 0 or more:
// the lesser of a weir of length πD and of an orifice of area πD²/4. It takes
// the pipe below to carry all of that; see Outlet.
func (r Riser) Flow(head float64) (Outflow, error) {
	area, err := CircleArea(r.Diameter)
	if err != nil {
		return Outflow{}, err
	}
	crest, err := Weir(r.CrestC, math.Pi*r.Diameter, head)
	mouth, failed := Orifice(r.OrificeCd, area, head)
	if err := cmp.Or(err, failed); err != nil {
		return Outflow{}, err
	}
	return Least(Outflow{crest, CrestControl}, Outflow{mouth, OrificeControl}), nil
}
