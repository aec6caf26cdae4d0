// Package earthwork has the formulas of earthworks and of taking off their
// quantities: volumes dug and filled over uneven ground, storage in a basin with
// sloping sides, layers, liners, trenches, plants, and what soil and stone come
// to when they are moved.
//
// Everything is in SI units: lengths and levels in metres, areas in square
// metres, volumes in cubic metres, densities in kilograms per cubic metre. The
// slope of sides is given by their run, the horizontal distance for a rise of
// 1: 2 for sides of 2:1, 0 for upright walls. Levels rise upwards.
//
// An outline is a ring of corners that does not cross itself; its first corner
// is not repeated, and either orientation will do.
//
// Volumes are taken on paper. What stands at the side of a cut is for the person
// who digs: an excavation that somebody enters can bury him, so the rules on
// protecting it, on finding buried services first and on fencing open water come
// before any figure of this package.
package earthwork

import "math"

// result gives a value worked out from measures, ok=false where one of them is
// negative or not finite, or the value itself is not finite.
func result(value float64, from ...float64) (float64, bool) {
	if !measures(from...) || !finite(value) {
		return 0, false
	}
	return value, true
}

// measures reports whether all of the values are finite and none is negative.
func measures(values ...float64) bool {
	for _, v := range values {
		if !(v >= 0) || math.IsInf(v, 1) {
			return false
		}
	}
	return true
}

// finite reports whether none of the values is infinite or no number.
func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}
