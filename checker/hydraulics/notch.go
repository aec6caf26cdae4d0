package hydraulics

import "math"

// VNotchSource names the ideal V-notch.
const VNotchSource = "V-notch, Q = 8/15·Cd·√(2g)·tan(θ/2)·H^2.5 (B. K. Sarkar, Fluid Mechanics & Hydraulic Machines, Example 5.3, as worked in its Python companion)"

// VNotch is the flow over a sharp-crested V-notch, m³/s:
// Q = 8/15·Cd·√(2g)·tan(θ/2)·H^2.5. The angle θ in radians lies between 0 and
// π; the head in m may be 0.
func VNotch(cd, angle, head float64) (float64, error) {
	return valid(triangle(cd, math.Tan(angle/2), head), positive("discharge coefficient", cd),
		positive("notch angle", angle), positive("rest of the notch angle to π", math.Pi-angle), notNegative("head", head))
}

func triangle(cd, sideSlope, head float64) float64 {
	return 8.0 / 15 * cd * math.Sqrt(2*Gravity) * sideSlope * math.Pow(head, 2.5)
}

// TrapezoidalWeir is the flow over a sharp-crested trapezoidal overflow, m³/s:
// a rectangular weir and the two halves of a V-notch, with one discharge
// coefficient. The side slope is horizontal over vertical, 0 or more.
func TrapezoidalWeir(cd, bottom, sideSlope, head float64) (float64, error) {
	rectangle, err := RectangularWeir(cd, bottom, head)
	return valid(rectangle+triangle(cd, sideSlope, head), err, notNegative("side slope", sideSlope))
}

// NotchRating is a measured rating of a V-notch of one angle, Q = K·H^N.
type NotchRating struct {
	Angle    float64 // radians
	K        float64 // m^(3−N)/s
	Exponent float64
	Source   Source
}

// Ratings of V-notches.
var (
	ConeNotch90    = usNotch(90, 2.49, 2.48, Source{"Cone, Q = 2.49·H^2.48 in ft and cfs (USBR, Water Measurement Manual, chapter 7)", FromMemory})
	ThomsonNotch90 = usNotch(90, 152.8/60, 2.5, Source{"Thomson, Q = 152.8·H^2.5 in ft and cubic feet a minute (H. C. Adams, The Sewerage of Sea Coast Towns, 1911, Table 6)", Published})
	Notch60        = usNotch(60, 1.443, 2.5, Source{"Q = 1.443·H^2.5 in ft and cfs (60-degree V-notch discharge table after ASTM D5242)", Published})
	Notch45        = usNotch(45, 1.035, 2.5, Source{"Q = 1.035·H^2.5 in ft and cfs (45-degree V-notch discharge table after ASTM D5242)", Published})
)

func usNotch(degrees, k, exponent float64, source Source) NotchRating {
	return NotchRating{degrees * math.Pi / 180, k * math.Pow(foot, 3-exponent), exponent, source}
}

// RatedHeads is the range of head, m, that V-notches are commonly rated for:
// 0.2 to 1.25 ft (from memory).
var RatedHeads = Span{0.2 * foot, 1.25 * foot}

// Flow is the rated flow, m³/s, at a head in m within RatedHeads.
func (r NotchRating) Flow(head float64) (float64, error) {
	return valid(r.K*math.Pow(head, r.Exponent), within("head on the notch", head, RatedHeads.Low, RatedHeads.High))
}
