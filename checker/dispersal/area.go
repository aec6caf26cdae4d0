package dispersal

import "math"

// Area is the area of soil that a daily flow wants at a loading rate: flow / rate.
// ok is false for a negative flow and unless the rate is positive.
func Area(flow, rate float64) (area float64, ok bool) {
	return result(flow/rate, flow, rate)
}

// PipeAreaSource names where PipeArea stands.
const PipeAreaSource = "Utah Administrative Code R317-401-6.2; Los Angeles County Code, Title 28, Appendix G, G-7"

// PipeArea is the area that trenches count for: the total length of perforated pipe
// times the width of the trench. ok is false for a negative value. Source:
// PipeAreaSource (published).
func PipeArea(length, width float64) (area float64, ok bool) {
	return result(length*width, length, width)
}

// TexasArea is the area that an excavation counts for in Texas: its bottom and one
// foot of sidewall all round. ok is false for a negative value. Source:
// TexasClasses.Source (published).
func TexasArea(bottom, perimeter float64) (area float64, ok bool) {
	return result(bottom+perimeter*foot, bottom, perimeter)
}

// SouthDakotaSource names where SouthDakotaArea and SouthDakotaTrench stand.
const SouthDakotaSource = "Administrative Rules of South Dakota 74:53:01:31"

// SouthDakotaArea is the area of absorption field that South Dakota wants for a flow
// at a percolation rate: Q √t / 5, in square feet for gallons a day and minutes an
// inch. ok is false outside the flows that the rule gives it for, 750 to 7,500
// gal/d; below, the rule has a table by bedrooms that was not read. Source:
// SouthDakotaSource (published).
func SouthDakotaArea(flow, percolation float64) (area float64, ok bool) {
	q := flow / gallonPerDay
	if !measures(percolation) || !(q >= 750*(1-rounding)) || q > 7500*(1+rounding) {
		return 0, false
	}
	return result(q * math.Sqrt(percolation/minutePerInch) / 5 * foot * foot)
}

// SouthDakotaTrench is the share of that area which may be left out for a trench, by
// the depth of stone below its pipe: 20 % from 12 in, 34 % from 18 in, 40 % from 24
// in, nothing below 12 in. ok is false for a negative depth. Source:
// SouthDakotaSource (published).
func SouthDakotaTrench(stoneBelowPipe float64) (share float64, ok bool) {
	depth := stoneBelowPipe/inch + rounding
	switch {
	case !measures(stoneBelowPipe):
		return 0, false
	case depth >= 24:
		return 0.40, true
	case depth >= 18:
		return 0.34, true
	case depth >= 12:
		return 0.20, true
	default:
		return 0, true
	}
}
