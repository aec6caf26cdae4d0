// Package dispersal has what codes and manuals say of how much water soil takes:
// loading rates by texture and by percolation, the area that a flow wants, mulch
// basins, emitters and outlets.
//
// Everything is in SI units: flows in cubic metres per second, areas in square
// metres, loading rates in metres per second (cubic metres per second on a square
// metre), percolation rates in seconds per metre. Sources disagree many times
// over, because some count on greywater and some on the effluent of a septic tank;
// so every table keeps its name, and none is the default.
//
// A loading rate says how much water soil can be expected to take, not that it
// may be given there. Whether it may is for the local code; soil is tested on
// the place.
package dispersal

import "math"

// Exact by definition: the US gallon of 231 in³, the foot, the inch.
const (
	foot              = 0.3048
	inch              = 0.0254
	day               = 86400
	minute            = 60
	gallon            = 231 * inch * inch * inch
	gallonPerDay      = gallon / day
	gallonPerDayPerSF = gallonPerDay / (foot * foot)
	minutePerInch     = minute / inch
)

// rounding keeps a whole number that arithmetic leaves a hair off from counting
// as more, and a percolation rate on the edge of a class in its class.
const rounding = 1e-9

// measures reports whether all of the values are finite and none is negative.
func measures(values ...float64) bool {
	for _, v := range values {
		if !(v >= 0) || math.IsInf(v, 1) {
			return false
		}
	}
	return true
}

// result gives a value worked out from measures, ok=false where one of them is
// negative or not finite, or the value itself is not finite.
func result(value float64, from ...float64) (float64, bool) {
	if !measures(from...) || math.IsNaN(value) || math.IsInf(value, 0) {
		return 0, false
	}
	return value, true
}

// atLeast is the least whole number of things of which each takes a share.
func atLeast(count float64) (number int, ok bool) {
	if !measures(count) || count > 1e9 {
		return 0, false
	}
	return int(math.Ceil(count - rounding)), true
}
