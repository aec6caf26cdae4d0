package hydraulics

import (
	"cmp"
	"math"
)

// ManningSource names Manning's equation.
const ManningSource = "Manning's equation, V = R^(2/3)·S^(1/2)/n in m and s (any hydraulics textbook; from memory)"

// Flow is steady uniform flow in a pipe or channel.
type Flow struct {
	Section
	Depth     float64 // m
	Velocity  float64 // mean over the section, m/s
	Discharge float64 // m³/s
}

// ManningVelocity is the mean velocity of uniform flow, m/s:
// V = R^(2/3)·S^(1/2)/n, with the roughness n in s/m^(1/3) and the hydraulic
// radius R in m. For rough turbulent flow, which that of a drain or a ditch is.
// All three are more than 0.
func ManningVelocity(roughness, radius, slope float64) (float64, error) {
	return valid(manning(roughness, radius, slope),
		positive("roughness", roughness), positive("hydraulic radius", radius), positive("slope", slope))
}

func manning(roughness, radius, slope float64) float64 {
	return math.Pow(radius, 2.0/3) * math.Sqrt(slope) / roughness
}

// FrictionSlope is the slope that Manning's equation asks for to carry a
// discharge, m³/s, through a section: S = (Q·n/(A·R^(2/3)))². The discharge may
// be 0; the section may not be dry.
func FrictionSlope(roughness float64, s Section, discharge float64) (float64, error) {
	root := discharge * roughness / (s.Area * math.Pow(s.Radius(), 2.0/3))
	return valid(root*root, positive("roughness", roughness), positive("wetted area", s.Area),
		positive("wetted perimeter", s.Perimeter), notNegative("discharge", discharge))
}

func uniform(roughness, slope, depth float64, s Section) Flow {
	velocity := manning(roughness, s.Radius(), slope)
	return Flow{s, depth, velocity, velocity * s.Area}
}

// WideSheet is uniform flow on a slope so wide that its sides do not count: a
// spillway's apron or a level spreader's strip. The discharge is per metre of
// width, m²/s; the section that comes back is that of one metre. From
// Manning's equation with R = y: y = (q·n/√S)^(3/5), V = q/y. All are more
// than 0.
func WideSheet(roughness, slope, dischargePerWidth float64) (Flow, error) {
	err := cmp.Or(positive("roughness", roughness), positive("slope", slope), positive("discharge per width", dischargePerWidth))
	if err != nil {
		return Flow{}, err
	}
	depth := math.Pow(dischargePerWidth*roughness/math.Sqrt(slope), 0.6)
	sheet := Section{Area: depth, Perimeter: 1, TopWidth: 1}
	return Flow{sheet, depth, dischargePerWidth / depth, dischargePerWidth}, nil
}
