package climate

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	SunSource      = "FAO 56 (1998), eq. 21 to 25; Example 8"
	DaylightSource = "FAO 56 (1998), eq. 34; Example 9"
)

// solarConstant is 0.0820 MJ/m² a minute in W/m². Source: SunSource.
const solarConstant = 0.0820e6 / 60

// SunDistance gives the inverse relative distance of the sun, about 0.967 to
// 1.033, by the day of the year, 1 to 366. Source: SunSource, eq. 23.
func SunDistance(day int) (float64, error) {
	if err := bounds.Refuse(dayOfYear(day)); err != nil {
		return 0, err
	}
	return 1 + 0.033*math.Cos(2*math.Pi/365*float64(day)), nil
}

// Declination gives the sun's declination in rad by the day of the year, 1 to
// 366. Source: SunSource, eq. 24.
func Declination(day int) (float64, error) {
	if err := bounds.Refuse(dayOfYear(day)); err != nil {
		return 0, err
	}
	return 0.409 * math.Sin(2*math.Pi/365*float64(day)-1.39), nil
}

// SunsetAngle gives the hour angle of sunset in rad at a latitude in rad: 0
// where the sun does not rise on that day, π where it does not set. Source:
// SunSource, eq. 25.
func SunsetAngle(phi float64, day int) (float64, error) {
	if err := bounds.Refuse(latitude(phi)); err != nil {
		return 0, err
	}
	delta, err := Declination(day)
	if err != nil {
		return 0, err
	}
	cos := -math.Tan(phi) * math.Tan(delta)
	switch {
	case cos >= 1:
		return 0, nil
	case cos <= -1:
		return math.Pi, nil
	}
	return math.Acos(cos), nil
}

// Extraterrestrial gives the sun's radiation on a level place above the air in
// W/m², mean of the whole day, at a latitude in rad. Source: SunSource, eq. 21.
func Extraterrestrial(phi float64, day int) (float64, error) {
	var c chain
	sunset := c.take(SunsetAngle(phi, day))
	delta := c.take(Declination(day))
	distance := c.take(SunDistance(day))
	if c.err != nil {
		return 0, c.err
	}
	height := sunset*math.Sin(phi)*math.Sin(delta) + math.Cos(phi)*math.Cos(delta)*math.Sin(sunset)
	return solarConstant / math.Pi * distance * max(height, 0), nil // rounding can give a little less than 0 beside the polar night
}

// Daylight gives how long the sun is up in s on a day of the year, at a latitude
// in rad: 0 to 86,400. Source: DaylightSource, the example from memory.
func Daylight(phi float64, day int) (float64, error) {
	sunset, err := SunsetAngle(phi, day)
	return 86400 / math.Pi * sunset, err
}
