package hydraulics

import (
	"cmp"
	"math"
)

// OpenMouthSource names the rule for a pipe whose mouth the water does not
// cover.
const OpenMouthSource = "open mouth of a pipe: critical or normal depth y in it, whichever is greater, H = y + (1 + ΣK)·V²/2g (specific energy, as in the inlet control of FHWA HDS-5; from memory)"

// Rating is the flow in m³/s at a head of 0 or more over the invert of the mouth,
// in m. The fall in m is that from there to the invert of the lower end, more than
// 0, and the water leaves the lower end freely.
//
// Until the water covers the mouth, critical or normal depth in the pipe governs,
// and the pipe carries no more than when its mouth is just covered; then the rules
// of Flow hold. So the flow never falls with the head.
func (o Outlet) Rating(head, fall float64) (float64, error) {
	if err := cmp.Or(o.checkOpen(fall), notNegative("head", head)); err != nil || head == 0 {
		return 0, err
	}
	above := max(head, o.Diameter) - o.Diameter/2
	covered, err := o.Flow(above, above+fall)
	if err != nil || head >= o.Diameter {
		return covered.Discharge, err
	}
	return min(o.open(head, fall), covered.Discharge), nil
}

// Head is the head in m over the invert of the mouth at which the pipe carries a
// flow in m³/s, more than 0: Rating turned round. Ranges as there.
func (o Outlet) Head(discharge, fall float64) (float64, error) {
	if err := cmp.Or(o.checkOpen(fall), positive("discharge", discharge)); err != nil {
		return 0, err
	}
	brim, err := o.Rating(o.Diameter, fall)
	if err != nil {
		return 0, err
	}
	if discharge > brim {
		return o.covered(discharge, fall), nil
	}
	return min(o.partFull(discharge, fall), o.Diameter), nil
}

func (o Outlet) checkOpen(fall float64) error {
	return cmp.Or(positive("diameter", o.Diameter), positive("length", o.Length), positive("roughness", o.Roughness),
		notNegative("sum of losses", o.Losses), positive("fall", fall), positive("slope", fall/o.Length))
}

func (o Outlet) pipe(fall float64) Pipe {
	return Pipe{Diameter: o.Diameter, Slope: fall / o.Length, Roughness: o.Roughness}
}

// energy is the head that a depth and velocity in the pipe ask for.
func (o Outlet) energy(depth, velocity float64) float64 {
	return depth + (1+o.Losses)*velocity*velocity/(2*Gravity)
}

// open is the flow at a head under the top of the mouth. Critical depth governs
// where the pipe could carry more at it.
func (o Outlet) open(head, fall float64) float64 {
	pipe := o.pipe(fall)
	depth := bisect(head, 0, o.Diameter, func(y float64) float64 { return o.energy(y, critical(circular(o.Diameter, y))) })
	section := circular(o.Diameter, depth)
	if flow := critical(section) * section.Area; pipe.at(depth).Discharge >= flow {
		return flow
	}
	depth = bisect(head, 0, fullest*o.Diameter, func(y float64) float64 { return o.energy(y, pipe.at(y).Velocity) })
	return pipe.at(depth).Discharge
}

// partFull is the head at which an open mouth takes a flow that the pipe carries
// part full.
func (o Outlet) partFull(discharge, fall float64) float64 {
	pipe := o.pipe(fall)
	depth := bisect(discharge, 0, o.Diameter, func(y float64) float64 {
		s := circular(o.Diameter, y)
		return critical(s) * s.Area
	})
	if pipe.at(depth).Discharge < discharge {
		depth = bisect(discharge, 0, fullest*o.Diameter, func(y float64) float64 { return pipe.at(y).Discharge })
	}
	return o.energy(depth, discharge/circular(o.Diameter, depth).Area)
}

// covered is the head at which a covered mouth takes a flow.
func (o Outlet) covered(discharge, fall float64) float64 {
	velocity := discharge / (math.Pi * o.Diameter * o.Diameter / 4)
	dynamic := velocity * velocity / (2 * Gravity)
	return o.Diameter/2 + max(dynamic/(o.OrificeCd*o.OrificeCd), dynamic*o.resistance()-fall, o.Diameter/2)
}

// critical is the critical velocity of a section, √(g·A/T).
func critical(s Section) float64 { return math.Sqrt(Gravity * s.MeanDepth()) }
