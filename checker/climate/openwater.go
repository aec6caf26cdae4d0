package climate

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	PanSource    = "Punmia and others, Irrigation and Water Power Engineering, Examples 4.14 and 4.48"
	MeyerSource  = "Punmia and others, Irrigation and Water Power Engineering, Example 4.15 (Meyer)"
	RohwerSource = "Rohwer 1931, from memory"
)

// PanEvaporation gives how much a pan has lost in m between two readings of its
// level in m, with the rain between them in m and the water added by hand in m,
// negative when some was taken out. Source: PanSource.
func PanEvaporation(before, after, rain, added float64) (float64, error) {
	if err := bounds.Refuse(bounds.NotNegative("level before", before, "m"), bounds.NotNegative("level after", after, "m"),
		bounds.NotNegative("rain", rain, "m"), bounds.Finite("water added", added, "m")); err != nil {
		return 0, err
	}
	return before + rain + added - after, nil
}

// LakeFromPan gives the evaporation of open water from that of a pan, in the
// same unit, by the pan's coefficient, 0.3 to 1. Source: PanSource.
func LakeFromPan(pan, coefficient float64) (float64, error) {
	return unless(bounds.Refuse(bounds.Finite("evaporation of the pan", pan, ""), bounds.Given("pan coefficient", coefficient, 0.3, 1, "")), pan*coefficient)
}

// WindAt carries a wind in m/s from one height above open water to another in
// m, both 0.1 to 200, by the seventh-root law. Source: MeyerSource.
func WindAt(wind, from, to float64) (float64, error) {
	if err := bounds.Refuse(speed(wind), bounds.Given("height", from, 0.1, 200, "m"), bounds.Given("height", to, 0.1, 200, "m")); err != nil {
		return 0, err
	}
	return wind * math.Pow(to/from, 1.0/7), nil
}

// Meyer's factor. Source: MeyerSource, the one for shallow water from memory.
const (
	MeyerDeep    = 0.36 // large deep water
	MeyerShallow = 0.50 // small shallow water
)

// Meyer gives the evaporation of open water in m/s from the saturation and the
// actual vapour pressure in Pa, the wind at 9 m in m/s and Meyer's factor, 0.3 to
// 0.6. Vapour above saturation gives less than 0. Source: MeyerSource, where it
// gives a quarter less than Rohwer's formula.
func Meyer(saturation, actual, windAt9m, factor float64) (float64, error) {
	if err := bounds.Refuse(vapour("saturation vapour pressure", saturation), vapour("actual vapour pressure", actual),
		speed(windAt9m), bounds.Given("Meyer's factor", factor, 0.3, 0.6, "")); err != nil {
		return 0, err
	}
	return factor * (saturation - actual) / mmHg * (1 + windAt9m/kmPerH/16) * mmPerDay, nil
}

// Rohwer gives the evaporation of open water in m/s from the saturation and the
// actual vapour pressure and the pressure of the air in Pa and the wind near the
// water in m/s. Source: RohwerSource.
func Rohwer(saturation, actual, pressure, windNearWater float64) (float64, error) {
	if err := bounds.Refuse(vapour("saturation vapour pressure", saturation), vapour("actual vapour pressure", actual),
		air(pressure), speed(windNearWater)); err != nil {
		return 0, err
	}
	height := 1.465 - 0.000732*pressure/mmHg
	wind := 0.44 + 0.0733*windNearWater/kmPerH
	return 0.771 * height * wind * (saturation - actual) / mmHg * mmPerDay, nil
}
