package hydraulics

import (
	"cmp"
	"math"
)

// OpenMouthSource names the rule for a pipe whose mouth the water does not
// cover.
const OpenMouthSource = "open mouth of a pipe: critical or normal depth y in it, whichever asks for more head, H = y + (1 + ΣK)·V²/2g (specific energy, as in the inlet control of FHWA HDS-5; from memory)"

// Rating is the flow at a head of 0 or more over the invert of the mouth, in m, and
// what governs it. The fall in m is that from there to the invert of the lower end,
// where the water leaves freely.
//
// Until the water stands at the top of the mouth, critical or normal depth in the pipe
// governs, and the pipe carries no more than when its mouth is just covered; a pipe
// that does not fall carries nothing. Above, the least of critical depth in the mouth,
// which an eddy keeps from filling, and of the rules of Flow governs. So the flow never
// falls with the head.
func (o Outlet) Rating(head, fall float64) (Outflow, error) {
	if err := cmp.Or(o.check(), notNegative("head", head), within("fall", fall, -greatest, greatest)); err != nil {
		return Outflow{}, err
	}
	above := max(head, o.Diameter) - o.Diameter/2
	covered, err := o.Flow(above, max(above+fall, 0))
	if err != nil {
		return Outflow{}, err
	}
	return Least(covered, Outflow{o.open(head, fall), MouthControl}), nil
}

// Head is the head in m over the invert of the mouth at which the pipe carries a
// flow in m³/s, more than 0: Rating turned round. Ranges as there.
func (o Outlet) Head(discharge, fall float64) (float64, error) {
	brim, err := o.Rating(o.Diameter, fall)
	if err := cmp.Or(err, positive("discharge", discharge)); err != nil {
		return 0, err
	}
	at := func(depth float64) float64 { return o.energy(depth, discharge/circular(o.Diameter, depth).Area) }
	depth := o.criticalDepth(discharge)
	head := at(depth)
	if discharge > brim.Discharge || fall <= 0 {
		return max(head, o.covered(discharge, fall)), nil
	}
	if pipe := o.pipe(fall); pipe.at(depth).Discharge < discharge {
		head = max(head, at(bisect(discharge, 0, fullest*o.Diameter, func(y float64) float64 { return pipe.at(y).Discharge })))
	}
	return min(head, o.Diameter), nil
}

func (o Outlet) check() error {
	return cmp.Or(positive("diameter", o.Diameter), positive("length", o.Length), positive("roughness", o.Roughness),
		notNegative("sum of losses", o.Losses))
}

func (o Outlet) pipe(fall float64) Pipe {
	return Pipe{Diameter: o.Diameter, Slope: fall / o.Length, Roughness: o.Roughness}
}

// energy is the head that a depth and velocity in the pipe ask for.
func (o Outlet) energy(depth, velocity float64) float64 {
	return depth + (1+o.Losses)*velocity*velocity/(2*Gravity)
}

// open is the flow of the mouth as long as air gets in. Up to its top critical depth
// governs only where the pipe could carry more at it.
func (o Outlet) open(head, fall float64) float64 {
	if head == 0 || head < o.Diameter && fall <= 0 {
		return 0
	}
	depth := bisect(head, 0, o.Diameter, func(y float64) float64 { return o.energy(y, critical(circular(o.Diameter, y))) })
	flow, pipe := circular(o.Diameter, depth).Area*math.Sqrt(2*Gravity*(head-depth)/(1+o.Losses)), o.pipe(fall)
	if head >= o.Diameter || pipe.at(depth).Discharge >= flow {
		return flow
	}
	depth = bisect(head, 0, fullest*o.Diameter, func(y float64) float64 { return o.energy(y, pipe.at(y).Velocity) })
	return min(flow, pipe.at(depth).Discharge)
}

func (o Outlet) criticalDepth(discharge float64) float64 {
	return bisect(discharge, 0, o.Diameter, func(y float64) float64 {
		s := circular(o.Diameter, y)
		return critical(s) * s.Area
	})
}

// covered is the head at which a covered mouth takes a flow.
func (o Outlet) covered(discharge, fall float64) float64 {
	velocity := discharge / (math.Pi * o.Diameter * o.Diameter / 4)
	dynamic := velocity * velocity / (2 * Gravity)
	return o.Diameter/2 + max(dynamic/(o.OrificeCd*o.OrificeCd), dynamic*o.resistance()-fall, o.Diameter/2)
}

// critical is the critical velocity of a section, √(g·A/T).
func critical(s Section) float64 { return math.Sqrt(Gravity * s.MeanDepth()) }
