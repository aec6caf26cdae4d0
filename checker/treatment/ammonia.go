package treatment

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Dissociation is a set of constants for pKa = Constant + Slope/T of the
// ammonium ion in fresh water, T in K.
type Dissociation struct {
	Name            string
	Constant, Slope float64
	Origin
}

// Emerson1975 is the equation that fish guidance uses. A slope of 2727.92 goes
// round in copies of it and is wrong.
var Emerson1975 = Dissociation{"Emerson 1975", 0.09018, 2729.92,
	Origin{"Emerson, Russo, Lund & Thurston, Journal of the Fisheries Research Board of Canada 32 (1975) 2379, as University of Florida IFAS FA-16 quotes it", Published}}

// Unionized gives the share of total ammonia that is un-ionized, which is what
// harms fish, at a pH, 0 to 14, and a temperature in °C, 0 to 50. Times total
// ammonia as nitrogen it is un-ionized ammonia as nitrogen.
func (d Dissociation) Unionized(pH, celsius float64) (float64, error) {
	pKa := d.Constant + d.Slope/(celsius+celsiusToKelvin)
	return bounds.Result(1/(1+math.Pow(10, pKa-pH)), bounds.Given("pH", pH, 0, 14, ""), bounds.Given("water temperature", celsius, 0, 50, "°C"))
}

// TrussellSource is the source of TrussellUnionized.
const TrussellSource = "Trussell 1972, fresh-water table of un-ionized ammonia, as reprinted in a water test kit's manual"

// trussell has the shares in % by pH from 7.0 by 0.1 and by 10, 15, 20, 25 °C.
var trussell = [][4]float64{
	{0.19, 0.27, 0.40, 0.55},
	{0.23, 0.34, 0.50, 0.70},
	{0.29, 0.43, 0.63, 0.88},
	{0.37, 0.54, 0.79, 1.10},
	{0.47, 0.68, 0.99, 1.38},
	{0.59, 0.85, 1.24, 1.73},
	{0.74, 1.07, 1.56, 2.17},
	{0.92, 1.35, 1.96, 2.72},
	{1.16, 1.69, 2.45, 3.39},
	{1.46, 2.12, 3.06, 4.24},
	{1.83, 2.65, 3.83, 5.28},
	{2.29, 3.32, 4.77, 6.55},
	{2.86, 4.14, 5.94, 8.11},
	{3.58, 5.16, 7.36, 10.00},
	{4.46, 6.41, 9.09, 12.27},
	{5.55, 7.98, 11.18, 14.97},
}

// TrussellUnionized gives the share of total ammonia that is un-ionized by the
// older table, up to 2 % off Emerson's equation, at a pH, 7.0 to 8.5, and a
// temperature in °C, 10 to 25; between its cells evenly by ratio, as the shares
// grow. Source: TrussellSource.
func TrussellUnionized(pH, celsius float64) (float64, error) {
	if err := bounds.Refuse(bounds.Given("pH", pH, 7.0, 8.5, ""), bounds.Given("water temperature", celsius, 10, 25, "°C")); err != nil {
		return 0, err
	}
	row, down := cell((pH-7.0)/0.1, len(trussell))
	column, across := cell((celsius-10)/5, len(trussell[0]))
	at := func(r int) float64 {
		return between(math.Log(trussell[r][column]), math.Log(trussell[r][column+1]), across)
	}
	return math.Exp(between(at(row), at(row+1), down)) / 100, nil
}

// cell gives the place before a position among n, the last but one at most, and
// how far the position is to the next.
func cell(position float64, n int) (index int, share float64) {
	index = min(int(position), n-2)
	return index, position - float64(index)
}

func between(a, b, share float64) float64 { return a + (b-a)*share }
