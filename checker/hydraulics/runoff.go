package hydraulics

import (
	"cmp"
	"math"
)

// RunoffCoefficient is the share of rain that runs off one kind of surface.
type RunoffCoefficient struct {
	Surface string
	Range   Span
	Source  Source
}

// RunoffCoefficients lists what sources give for surfaces. They give ranges for
// storms of 2 to 10 years; steep and wet land has the high end.
var RunoffCoefficients = []RunoffCoefficient{
	{"roof", Span{0.75, 0.95}, hec22Summary},
	{"asphalt", Span{0.70, 0.95}, hec22Summary},
	{"concrete", Span{0.80, 0.95}, hec22},
	{"drive or walk", Span{0.75, 0.85}, hec22},
	{"gravel", Span{0.15, 0.30}, hec22Summary},
	{"lawn on sandy soil, under 2 %", Span{0.05, 0.10}, hec22Summary},
	{"lawn on sandy soil, 2 to 7 %", Span{0.10, 0.15}, hec22Summary},
	{"lawn on sandy soil, over 7 %", Span{0.15, 0.20}, hec22Summary},
	{"lawn on heavy soil, under 2 %", Span{0.13, 0.17}, hec22Summary},
	{"lawn on heavy soil, 2 to 7 %", Span{0.18, 0.22}, hec22Summary},
	{"lawn on heavy soil, over 7 %", Span{0.25, 0.35}, hec22Summary},
	{"single-family residential", Span{0.30, 0.50}, hec22},
	{"suburban residential", Span{0.25, 0.40}, hec22},
	{"park", Span{0.10, 0.25}, hec22},
	{"unimproved land", Span{0.10, 0.30}, hec22},
	{"roof or pavement", Span{0.80, 0.80}, davison},
	{"built-up area", Span{0.35, 0.35}, davison},
	{"park", Span{0.15, 0.15}, davison},
	{"farm", Span{0.20, 0.20}, davison},
}

var (
	hec22        = Source{"FHWA HEC-22, Table 3-1", FromMemory}
	hec22Summary = Source{"FHWA HEC-22, Table 3-1, as given in a summary", Published}
	davison      = Source{"Davison, Michigan, code of ordinances, 1046.32", Published}
)

// CurveNumberSource names the NRCS runoff equation.
const CurveNumberSource = "NRCS National Engineering Handbook, Part 630, runoff equation Q = (P − Ia)²/(P − Ia + S), S = 1000/CN − 10 in (values as in that handbook's example, read in an open hydrology library's tests)"

// UsualAbstraction is the NRCS's initial abstraction over the potential
// retention, Ia = 0.2·S.
const UsualAbstraction = 0.2

// PotentialRetention is S, m, of a curve number more than 0 and at most 100:
// 1000/CN − 10 inches.
func PotentialRetention(curveNumber float64) (float64, error) {
	return valid((1000/curveNumber-10)*inch,
		positive("curve number", curveNumber), within("curve number", curveNumber, 0, 100))
}

// RunoffDepth is the NRCS's depth of runoff, m, of a depth of rain in m, 0 or
// more: 0 until the rain exceeds the initial abstraction Ia = a·S, then
// (P − Ia)²/(P − Ia + S). The abstraction a is UsualAbstraction, or 0.05 in later
// work; from 0 to 1.
func RunoffDepth(curveNumber, abstraction, rain float64) (float64, error) {
	retention, err := PotentialRetention(curveNumber)
	if err := cmp.Or(err, within("initial abstraction", abstraction, 0, 1), notNegative("depth of rain", rain)); err != nil {
		return 0, err
	}
	excess := math.Max(rain-abstraction*retention, 0)
	if excess == 0 {
		return 0, nil
	}
	return excess * (excess / (excess + retention)), nil
}

// RiskSource names the risk of a storm within some years.
const RiskSource = "risk 1 − (1 − 1/T)^n (B. C. Punmia, Irrigation and Water Power Engineering, Examples 4.36 and 4.37, as worked in its Python companion)"

// Risk is the chance, 0 to 1, that a storm of a return period in years comes at
// least once within some years: 1 − (1 − 1/T)^n. The return period is 1 or more,
// the years 0 or more.
func Risk(returnPeriod, years float64) (float64, error) {
	return valid(1-math.Pow(1-1/returnPeriod, years),
		notNegative("return period over one year", returnPeriod-1), notNegative("number of years", years))
}
