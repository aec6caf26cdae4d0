package hydraulics

import "cmp"

// RationalSource names the rational method.
const RationalSource = "rational method, Q = C·i·A (FHWA HEC-22, equation 3-1)"

// RationalPeak is the peak flow of a storm that lasts at least the time of
// concentration, m³/s: Q = C·i·A, with the intensity in m/s over the area in
// m². In coherent units there is no factor; the US 1.008 (in/h and acres to
// cfs) is only the conversion. For catchments to about 20 acres (8 ha); some
// texts go to 200. The coefficient is 0 to 1, the others are 0 or more.
func RationalPeak(c, intensity, area float64) (float64, error) {
	return valid(c*intensity*area,
		within("runoff coefficient", c, 0, 1), notNegative("rainfall intensity", intensity), notNegative("area", area))
}

// RunoffVolume is the volume of runoff, m³, of a depth of rain in m on an area
// in m²: V = C·P·A. Ranges as for RationalPeak.
func RunoffVolume(c, rain, area float64) (float64, error) {
	return valid(c*rain*area, within("runoff coefficient", c, 0, 1), notNegative("depth of rain", rain), notNegative("area", area))
}

// Surface is a part of a catchment.
type Surface struct{ Area, Coefficient float64 } // m², 0 to 1

// CompositeCoefficient is the runoff coefficient of several surfaces together,
// Σ(C·A)/ΣA. Areas are 0 or more and not all 0.
func CompositeCoefficient(surfaces ...Surface) (float64, error) {
	area, weighted := 0.0, 0.0
	for _, s := range surfaces {
		if err := cmp.Or(notNegative("area", s.Area), within("runoff coefficient", s.Coefficient, 0, 1)); err != nil {
			return 0, err
		}
		area += s.Area
		weighted += s.Area * s.Coefficient
	}
	return valid(weighted/area, positive("sum of the areas", area))
}

// WithFrequency is a runoff coefficient for a rarer storm: C·Cf, and 1 at most,
// since no more can run off than falls. The factor is 1 or more. The cut at 1 is
// part of the method (FHWA HEC-22; from memory).
func WithFrequency(c float64, f FrequencyFactor) (float64, error) {
	return valid(min(c*f.Factor, 1), within("runoff coefficient", c, 0, 1), within("frequency factor", f.Factor, 1, 2))
}

// FrequencyFactor raises the runoff coefficient for a return period.
type FrequencyFactor struct{ Years, Factor float64 }

// FrequencyFactors of FHWA HEC-22 (from memory).
var FrequencyFactors = []FrequencyFactor{{10, 1}, {25, 1.1}, {50, 1.2}, {100, 1.25}}

// Wall shares: how much of an upright wall above a roof counts as roof area.
const (
	IPCWallShare     = 0.50 // International Plumbing Code, 1106.4 (published)
	ChicagoWallShare = 0.25 // Chicago Plumbing Code, 18-29-1106.3 (published)
)

// RoofFlow is the flow off a roof, m³/s: all the rain on its area in plan and on
// a share of the area of the wall above it, areas in m², intensity in m/s.
func RoofFlow(roof, wall, wallShare, intensity float64) (float64, error) {
	return valid((roof+wall*wallShare)*intensity, notNegative("roof area", roof), notNegative("wall area", wall),
		within("share of the wall", wallShare, 0, 1), notNegative("rainfall intensity", intensity))
}
