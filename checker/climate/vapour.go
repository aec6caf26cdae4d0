package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	SaturationSource   = "FAO 56 (1998), eq. 11 and 12; Example 3"
	VapourSlopeSource  = "FAO 56 (1998), eq. 13; Examples 17 and 18"
	HumiditySource     = "FAO 56 (1998), eq. 17; Example 5"
	MeanHumiditySource = "FAO 56 (1998), eq. 19"
	WetBulbSource      = "FAO 56 (1998), eq. 15 and 16; Example 4"
	DewPointSource     = "FAO 56 (1998), eq. 14"
)

// Saturation gives the saturation vapour pressure over water in Pa at a
// temperature in °C, -60 to 60. Source: SaturationSource, eq. 11.
func Saturation(t float64) (float64, error) {
	if err := bounds.Refuse(temperature("temperature", t)); err != nil {
		return 0, err
	}
	return 0.6108 * kPa * math.Exp(17.27*t/(t+237.3)), nil
}

// MeanSaturation gives the mean saturation vapour pressure of a day or a month
// in Pa: the mean of the pressures at the least and the greatest temperature in
// °C, which is more than the pressure at the mean. Source: SaturationSource,
// eq. 12.
func MeanSaturation(least, greatest float64) (float64, error) {
	if err := ordered(least, greatest); err != nil {
		return 0, err
	}
	var c chain
	return (c.take(Saturation(least)) + c.take(Saturation(greatest))) / 2, c.err
}

// VapourSlope gives the slope of the saturation vapour pressure curve in Pa/°C
// at a temperature in °C, -60 to 60. Source: VapourSlopeSource.
func VapourSlope(t float64) (float64, error) {
	e, err := Saturation(t)
	if err != nil {
		return 0, err
	}
	return 4098 * e / math.Pow(t+237.3, 2), nil
}

// VapourFromHumidity gives the actual vapour pressure in Pa from the least and
// greatest temperature in °C and the least and greatest relative humidity, 0 to
// 1; the most humid hour is the coldest. Source: HumiditySource.
func VapourFromHumidity(least, greatest, driest, dampest float64) (float64, error) {
	if err := bounds.Refuse(bounds.Share("minimum humidity", driest), bounds.Share("maximum humidity", dampest)); err != nil {
		return 0, err
	}
	if driest > dampest {
		return 0, fmt.Errorf("the minimum humidity, %g, is above the maximum, %g", driest, dampest)
	}
	if err := ordered(least, greatest); err != nil {
		return 0, err
	}
	var c chain
	return (c.take(Saturation(least))*dampest + c.take(Saturation(greatest))*driest) / 2, c.err
}

// VapourFromMeanHumidity gives the actual vapour pressure in Pa from the least
// and greatest temperature in °C and the mean relative humidity, 0 to 1; less
// good than from the extremes. Source: MeanHumiditySource, from memory.
func VapourFromMeanHumidity(least, greatest, mean float64) (float64, error) {
	if err := bounds.Refuse(bounds.Share("mean humidity", mean)); err != nil {
		return 0, err
	}
	e, err := MeanSaturation(least, greatest)
	return mean * e, err
}

// The coefficient of a psychrometer in 1/°C. Source: WetBulbSource, from memory
// but for the ventilated one, which Example 4 uses.
const (
	VentilatedPsychrometer = 0.000662 // air drawn past the bulbs at about 5 m/s
	NaturalPsychrometer    = 0.0008   // moved by the wind, about 1 m/s
	IndoorPsychrometer     = 0.0012   // in still air
)

// VapourFromWetBulb gives the actual vapour pressure in Pa from the
// temperatures of the dry and the wet bulb in °C, the pressure of the air in Pa
// and the psychrometer's coefficient in 1/°C. A wet bulb that is warmer than the
// dry one, or so cold that no vapour is left, is an error. Source:
// WetBulbSource.
func VapourFromWetBulb(dry, wet, pressure, coefficient float64) (float64, error) {
	if err := bounds.Refuse(temperature("dry bulb's temperature", dry), air(pressure),
		bounds.Given("psychrometer's coefficient", coefficient, 0.0005, 0.002, "1/°C")); err != nil {
		return 0, err
	}
	if wet > dry {
		return 0, fmt.Errorf("the wet bulb, %g °C, is warmer than the dry bulb, %g °C", wet, dry)
	}
	e, err := Saturation(wet)
	if err != nil {
		return 0, err
	}
	actual := e - coefficient*pressure*(dry-wet)
	return unless(bounds.Refuse(vapour("vapour pressure by the wet bulb", actual)), actual)
}

// VapourFromDewPoint gives the actual vapour pressure in Pa: the saturation
// vapour pressure at the dew point in °C. Where no humidity is measured, FAO 56
// takes the least temperature for the dew point. Source: DewPointSource, from
// memory.
func VapourFromDewPoint(dewPoint float64) (float64, error) {
	return Saturation(dewPoint)
}
