package treatment

import (
	"math"

	"greysill/checker/climate"
	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	OxygenSource         = "APHA, Standard Methods (1985), as the SWAT theoretical documentation quotes it, eq. 4:5.3.2"
	OxygenPressureSource = "(P − pv)/(P0 − pv), common practice, no source; it gives Table 3 of the DR/850 colorimeter manual"
)

// OxygenSaturation gives the dissolved oxygen in kg/m³ of fresh water in balance
// with the air at sea level, 101,325 Pa, at a temperature in °C, 0 to 40. Source:
// OxygenSource.
func OxygenSaturation(celsius float64) (float64, error) {
	t := celsius + celsiusToKelvin
	logarithm := -139.34411 + 1.575701e5/t - 6.642308e7/(t*t) + 1.243800e10/math.Pow(t, 3) - 8.621949e11/math.Pow(t, 4)
	return bounds.Result(math.Exp(logarithm)*milligramPerL, bounds.Given("water temperature", celsius, 0, 40, "°C"))
}

// OxygenSaturationAt gives the same under an air pressure in Pa, 50,000 to
// 110,000, as of the place's elevation and not reduced to sea level. Source:
// OxygenPressureSource.
func OxygenSaturationAt(celsius, pressure float64) (float64, error) {
	saturation, err := OxygenSaturation(celsius)
	if err != nil {
		return 0, err
	}
	vapour, err := climate.Saturation(celsius)
	if err != nil {
		return 0, err
	}
	return bounds.Result(saturation*(pressure-vapour)/(standardPressure-vapour), bounds.Given("air pressure", pressure, 50000, 110000, "Pa"))
}
