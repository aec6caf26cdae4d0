package climate

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	PressureSource      = "FAO 56 (1998), eq. 7; Example 2"
	PsychrometricSource = "FAO 56 (1998), eq. 8; Example 2"
	WindSource          = "FAO 56 (1998), eq. 47; Example 18"
)

// Pressure gives the mean pressure of the air in Pa at an elevation in m above
// the sea, -500 to 9,000. Source: PressureSource.
func Pressure(elevation float64) (float64, error) {
	if err := bounds.Refuse(height(elevation)); err != nil {
		return 0, err
	}
	return 101.3 * kPa * math.Pow((293-0.0065*elevation)/293, 5.26), nil
}

// Psychrometric gives the psychrometric constant in Pa/°C from the pressure of
// the air in Pa, 20,000 to 120,000: the specific heat of the air, 1.013 kJ/kg·°C,
// over the ratio of the molecular weights, 0.622, and the latent heat. The source
// rounds the quotient to 0.665/1,000. Source: PsychrometricSource.
func Psychrometric(pressure float64) (float64, error) {
	if err := bounds.Refuse(air(pressure)); err != nil {
		return 0, err
	}
	return 1.013e-3 / (0.622 * latentHeat) * pressure, nil
}

// WindAt2m gives the wind at 2 m above grass in m/s from the wind measured at
// another height in m, 0.5 to 200. Source: WindSource.
func WindAt2m(wind, height float64) (float64, error) {
	if err := bounds.Refuse(speed(wind), bounds.Given("height of the wind gauge", height, 0.5, 200, "m")); err != nil {
		return 0, err
	}
	return wind * 4.87 / math.Log(67.8*height-5.42), nil
}

func height(elevation float64) bounds.Value {
	return bounds.Given("elevation", elevation, -500, 9000, "m")
}

func air(pressure float64) bounds.Value {
	return bounds.Given("air pressure", pressure, 20000, 120000, "Pa")
}
