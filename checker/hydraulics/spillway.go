package hydraulics

import (
	"cmp"
	"math"
)

// BroadCrestSource names critical flow over a broad crest.
const BroadCrestSource = "critical flow over a broad crest, Q = √(g·A³/T) where y + A/(2T) = H; (⅔)^1.5·√g = 1.705 m^½/s for a rectangle (J. Lal, Hydraulics, Example 4.13, as worked in its Python companion)"

// BroadCrest is the greatest coefficient of a rectangular broad-crested weir,
// m^½/s, for Weir: (⅔)^1.5·√g, 1.705 in metres and 3.09 in feet. Rounded
// crests reach about 0.95 of it (Lal, Example 4.13).
var BroadCrest = math.Pow(2.0/3, 1.5) * math.Sqrt(Gravity)

// EarthCrest is the range of that coefficient commonly taken for a level earth
// spillway, 2.6 to 3.0 in feet and cfs (FHWA HEC-22, chapter 8, after Brater
// and King; from memory).
var EarthCrest = Span{usWeir(2.6), usWeir(3.0)}

// Spillway is a broad, level crest of trapezoidal section.
type Spillway struct {
	Bottom      float64 // length of the level crest across the flow, m
	SideSlope   float64 // horizontal over vertical, 0 or more
	Coefficient float64 // share of the ideal flow, more than 0 and at most 1
}

// Flow is the flow at a head in m of still water above the crest, m³/s, with
// its critical depth and velocity on the crest: y + A/(2T) = H, V = √(g·A/T).
// The coefficient reduces the discharge and the velocity alike. A head of 0 gives
// no flow.
func (s Spillway) Flow(head float64) (Flow, error) {
	if err := cmp.Or(s.check(), notNegative("head", head)); err != nil || head == 0 {
		return Flow{}, err
	}
	depth := bisect(head, 0, head, func(y float64) float64 {
		return y + trapezoidal(s.Bottom, s.SideSlope, y).MeanDepth()/2
	})
	return s.at(depth), nil
}

// Carrying is the flow of a discharge in m³/s, more than 0, over the crest, and the
// head in m of still water above the crest that it takes: Flow turned round.
func (s Spillway) Carrying(discharge float64) (flow Flow, head float64, err error) {
	if err := cmp.Or(s.check(), positive("discharge", discharge)); err != nil {
		return Flow{}, 0, err
	}
	deep := 1.0
	for s.at(deep).Discharge < discharge {
		deep *= 2
	}
	flow = s.at(bisect(discharge, 0, deep, func(y float64) float64 { return s.at(y).Discharge }))
	return flow, flow.Depth + flow.MeanDepth()/2, nil
}

func (s Spillway) at(depth float64) Flow {
	section := trapezoidal(s.Bottom, s.SideSlope, depth)
	velocity := s.Coefficient * critical(section)
	return Flow{section, depth, velocity, velocity * section.Area}
}

func (s Spillway) check() error {
	return cmp.Or(notNegative("length of the crest", s.Bottom), notNegative("side slope", s.SideSlope),
		positive("sum of crest length and side slope", s.Bottom+s.SideSlope),
		positive("spillway coefficient", s.Coefficient), within("spillway coefficient", s.Coefficient, 0, 1))
}

// VelocityHead is V²/(2g), m, of a velocity in m/s: what a head gains from the
// approaching water, or loses to the leaving water. The velocity is not
// negative.
func VelocityHead(velocity float64) (float64, error) {
	return valid(velocity*velocity/(2*Gravity), notNegative("velocity", velocity))
}

// HeadFor is the head in m at which a rating reaches a discharge in m³/s, by
// halving between 0 and the highest head that there is room for. The rating must
// never fall with the head; its errors come back. A discharge that it does not
// reach is a *RangeError.
func HeadFor(discharge, highest float64, rating func(head float64) (float64, error)) (float64, error) {
	if err := cmp.Or(positive("discharge", discharge), positive("highest head", highest)); err != nil {
		return 0, err
	}
	most, err := rating(highest)
	if err != nil {
		return 0, err
	}
	if most < discharge {
		return 0, outside("discharge", discharge, "no more than passes at the highest head")
	}
	head := bisect(discharge, 0, highest, func(h float64) float64 {
		q, failed := rating(h)
		err = cmp.Or(err, failed)
		return q
	})
	return head, err
}
