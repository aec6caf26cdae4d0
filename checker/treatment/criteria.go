package treatment

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the criterion formulas of this file. They are limits of their
// source, which vary with the water; whether they apply, the rule book says.
const (
	Ammonia1999Source = "EPA-822-R-99-014 (1999), as South Dakota ARSD 74:51:01 App. A prints it"
	Ammonia2013Source = "EPA-822-R-13-001 (2013), formula from memory; its values at pH 7 and 20 °C, 17 and 1.9 mg/L, are published"
)

// AcuteAmmonia1999 gives the acute criterion of 1999 in kg/m³ of total ammonia as
// nitrogen at a pH, 6.5 to 9.0, with or without salmonids (trout, salmon).
// Source: Ammonia1999Source.
func AcuteAmmonia1999(pH float64, salmonids bool) (float64, error) {
	low, high := 0.411, 58.4
	if salmonids {
		low, high = 0.275, 39.0
	}
	return bounds.Result(sigmoid(low, high, 7.204, pH)*milligramPerL, criterionPH(pH))
}

// ChronicAmmonia1999 gives the 30-day criterion of 1999 in kg/m³ of total ammonia
// as nitrogen where early life stages of fish are present, at a pH, 6.5 to 9.0,
// and a temperature in °C, 0 to 30. Source: Ammonia1999Source.
func ChronicAmmonia1999(pH, celsius float64) (float64, error) {
	warm := math.Min(2.85, 1.45*math.Pow(10, 0.028*(25-celsius)))
	return bounds.Result(sigmoid(0.0577, 2.487, 7.688, pH)*warm*milligramPerL, criterionPH(pH), criterionWater(celsius))
}

// AcuteAmmonia2013 gives the one-hour criterion of 2013 in kg/m³ of total ammonia
// as nitrogen at a pH, 6.5 to 9.0, and a temperature in °C, 0 to 30, with or
// without salmonids. Mussels set it in warm water. Source: Ammonia2013Source.
func AcuteAmmonia2013(pH, celsius float64, salmonids bool) (float64, error) {
	mussels := 23.12 * math.Pow(10, 0.036*(20-celsius))
	bracket := 0.7249 * sigmoid(0.0114, 1.6181, 7.204, pH)
	criterion := bracket * math.Min(51.93, mussels)
	if salmonids {
		criterion = math.Min(sigmoid(0.275, 39.0, 7.204, pH), bracket*mussels)
	}
	return bounds.Result(criterion*milligramPerL, criterionPH(pH), criterionWater(celsius))
}

// ChronicAmmonia2013 gives the 30-day rolling mean of 2013 in kg/m³ of total
// ammonia as nitrogen at a pH, 6.5 to 9.0, and a temperature in °C, 0 to 30.
// Source: Ammonia2013Source.
func ChronicAmmonia2013(pH, celsius float64) (float64, error) {
	mussels := 2.126 * math.Pow(10, 0.028*(20-math.Max(celsius, 7)))
	return bounds.Result(0.8876*sigmoid(0.0278, 1.1994, 7.688, pH)*mussels*milligramPerL, criterionPH(pH), criterionWater(celsius))
}

// sigmoid falls from high to low as the pH passes the turn.
func sigmoid(low, high, turn, pH float64) float64 {
	return low/(1+math.Pow(10, turn-pH)) + high/(1+math.Pow(10, pH-turn))
}

func criterionPH(pH float64) bounds.Value { return bounds.Given("pH", pH, 6.5, 9.0, "") }

func criterionWater(celsius float64) bounds.Value {
	return bounds.Given("water temperature", celsius, 0, 30, "°C")
}
