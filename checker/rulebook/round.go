package rulebook

import (
	"encoding/json"
	"math"
	"strconv"
)

// rounded gives the number to 9 significant digits, as rules see it. Figures and
// limits are rounded alike, so that a distance worked out as
// 30.479999999999997 m holds against 100 ft.
func rounded(v float64) float64 {
	if v == 0 || !finite(v) {
		return v
	}
	r, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 9, 64), 64) // even the greatest float64 rounds to one
	return r
}

// number writes a finite number for OPA.
func number(v float64) json.Number {
	if v == 0 {
		return "0" // also for -0
	}
	return json.Number(strconv.FormatFloat(v, 'g', 9, 64))
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
