package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file. Two formulas go by the name of
// Hargreaves and differ by half; each has its own name here.
const (
	HargreavesSource        = "FAO 56 (1998), eq. 52"
	HargreavesSamaniSource  = "McMahon and others 2013, supplement, eq. S19.101; worked example 13, as quoted in an open evapotranspiration library"
	MakkinkSource           = "McMahon and others 2013, supplement, worked example, as quoted in an open evapotranspiration library"
	MakkinkDeBruinSource    = "De Bruin 1987, from memory"
	LatentHeatOfWaterSource = "FAO 56 (1998), eq. 8: 2.45 MJ/kg"
)

// waterPerMJ is how much water 1 MJ/m² evaporates in mm, as FAO 56 rounds it.
const waterPerMJ = 0.408

// Hargreaves gives the reference evapotranspiration in m/s from temperatures in
// °C and the radiation above the air in W/m². The mean temperature is the
// measured one: where it is not the middle between the extremes, that middle
// would give another result. A mean below -17.8 °C lies outside the formula.
// Source: HargreavesSource.
func Hargreaves(mean, least, greatest, extraterrestrial float64) (float64, error) {
	if err := hargreavesRange(mean, least, greatest, extraterrestrial); err != nil {
		return 0, err
	}
	return 0.0023 * (mean + 17.8) * math.Sqrt(greatest-least) * waterPerMJ * extraterrestrial / mjPerDay * mmPerDay, nil
}

// HargreavesSamani gives the reference evapotranspiration in m/s as Hargreaves
// does, but with a coefficient that falls and rises with the daily range of
// temperature: 45 % more in the source's own example. Source:
// HargreavesSamaniSource.
func HargreavesSamani(mean, least, greatest, extraterrestrial float64) (float64, error) {
	if err := hargreavesRange(mean, least, greatest, extraterrestrial); err != nil {
		return 0, err
	}
	swing := greatest - least
	coefficient := 0.00185*swing*swing - 0.0433*swing + 0.4023
	return 0.0135 * coefficient * extraterrestrial / mjPerDay / latentHeat * math.Sqrt(swing) * (mean + 17.8) * mmPerDay, nil
}

func hargreavesRange(mean, least, greatest, extraterrestrial float64) error {
	if err := ordered(least, greatest); err != nil {
		return err
	}
	if !(mean >= least && mean <= greatest) {
		return fmt.Errorf("the mean temperature, %g °C, does not lie between the minimum, %g °C, and the maximum, %g °C", mean, least, greatest)
	}
	return bounds.Refuse(bounds.Given("mean temperature", mean, -17.8, 60, "°C"), radiation("extraterrestrial radiation", extraterrestrial))
}

// latentHeat is the heat that evaporates 1 kg of water in MJ. Source:
// LatentHeatOfWaterSource.
const latentHeat = 2.45

// MakkinkForm has the factor and the subtrahend, in m/s, of a form of Makkink's
// formula.
type MakkinkForm struct{ Factor, Less float64 }

// The forms of Makkink's formula.
var (
	Makkink        = MakkinkForm{Factor: 0.61, Less: 0.12 * mmPerDay} // MakkinkSource
	MakkinkDeBruin = MakkinkForm{Factor: 0.65}                        // MakkinkDeBruinSource
)

// MakkinkPsychrometric gives the psychrometric constant in Pa/°C from the
// pressure of the air in Pa as the source of Makkink takes it, 0.09 % above
// Psychrometric. Source: MakkinkSource.
func MakkinkPsychrometric(pressure float64) (float64, error) {
	if err := bounds.Refuse(air(pressure)); err != nil {
		return 0, err
	}
	return 0.00163 / latentHeat * pressure, nil
}

// ET gives the reference evapotranspiration in m/s from the slope of the
// saturation vapour pressure curve and the psychrometric constant in Pa/°C and
// the solar radiation on the ground in W/m²: for a moist, mild climate. In dark
// winter months it can come out a little below 0.
func (f MakkinkForm) ET(slope, psychrometric, solar float64) (float64, error) {
	if err := bounds.Refuse(bounds.Positive("slope of the saturation vapour pressure", slope, "Pa/°C"),
		bounds.Positive("psychrometric constant", psychrometric, "Pa/°C"), radiation("solar radiation", solar)); err != nil {
		return 0, err
	}
	return f.Factor*slope/(slope+psychrometric)*solar/mjPerDay/latentHeat*mmPerDay - f.Less, nil
}
