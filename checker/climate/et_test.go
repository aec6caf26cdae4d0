package climate_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/climate"
)

const (
	mmPerDay = 1e-3 / 86400
	mjPerDay = 1e6 / 86400
	mmHg     = 133.322387415
)

// FAO 56, Example 17: Bangkok in April, 5.72 mm a day.
var (
	bangkok = climate.Place{Latitude: 13.7333 * 3.14159265 / 180, Elevation: 2}
	april   = climate.Weather{Least: 25.6, Greatest: 34.8, Vapour: 2850, Wind: 2, Solar: 22.65 * mjPerDay}
)

func TestPenmanMonteithWithoutWindAndDrynessIsEnergyAlone(t *testing.T) {
	// 0.408 · 0.2 · (15 − 1) / (0.2 + 0.066) = 4.2947 mm a day.
	et := sound(t)(climate.PenmanMonteith(climate.Terms{Temperature: 25, Psychrometric: 66, Slope: 200, Saturation: 3000, Vapour: 3000,
		NetRadiation: 15 * mjPerDay, SoilHeat: 1 * mjPerDay}))
	relative(t, 4.2947*mmPerDay, et, 1e-4)
}

func TestPenmanMonteithRisesWithSunAndDryness(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sound(t)
		terms := climate.Terms{Temperature: 20, Psychrometric: 66, Slope: 145, Saturation: 2400,
			Vapour: rapid.Float64Range(0, 2300).Draw(t, "vapour"), Wind: rapid.Float64Range(0.1, 10).Draw(t, "wind"),
			NetRadiation: rapid.Float64Range(0, 250).Draw(t, "net radiation")}
		here := s(climate.PenmanMonteith(terms))
		sunnier, damper := terms, terms
		sunnier.NetRadiation++
		damper.Vapour++
		require.Greater(t, s(climate.PenmanMonteith(sunnier)), here)
		require.Less(t, s(climate.PenmanMonteith(damper)), here)
	})
}

func TestReferenceETOfMonth(t *testing.T) {
	var year [climate.Months]climate.Weather
	for i := range year {
		year[i] = april
	}
	same, err := climate.ReferenceETOfMonth(bangkok, time.April, year)
	require.NoError(t, err)
	require.Zero(t, same.SoilHeat, "a year of one temperature moves no heat")
	day, err := climate.ReferenceET(bangkok, 105, april, 0)
	require.NoError(t, err)
	require.Equal(t, day, same)

	year[time.May-1].Least, year[time.May-1].Greatest = april.Least+1, april.Greatest+1
	warming, err := climate.ReferenceETOfMonth(bangkok, time.April, year)
	require.NoError(t, err)
	relative(t, 0.07*mjPerDay, warming.SoilHeat, 1e-9)
	require.Less(t, warming.ET, same.ET)

	// January looks back to December.
	year[time.December-1].Least, year[time.December-1].Greatest = april.Least-2, april.Greatest-2
	january, err := climate.ReferenceETOfMonth(bangkok, time.January, year)
	require.NoError(t, err)
	relative(t, 0.14*mjPerDay, january.SoilHeat, 1e-9)
}

func TestDepthOfMonth(t *testing.T) {
	relative(t, 0.1716, sound(t)(climate.DepthOfMonth(5.72*mmPerDay, time.April)), 1e-9) // 5.72 mm on 30 days
}

func TestHargreavesTakesTheMeanAsMeasured(t *testing.T) {
	s := sound(t)
	// V. K. Mehta 2006: 6.1008 with the mean of 35 °C, 5.870 with the midpoint.
	relative(t, 6.1008*mmPerDay, s(climate.Hargreaves(35, 28, 38, 38.93715*mjPerDay)), 1e-4)
	relative(t, 5.870*mmPerDay, s(climate.Hargreaves(33, 28, 38, 38.93715*mjPerDay)), 1e-4)
	_, err := climate.Hargreaves(40, 28, 38, 100)
	require.ErrorContains(t, err, "does not lie between")
	_, err = climate.Hargreaves(-20, -25, -15, 100)
	require.ErrorContains(t, err, "-17.8")
}

func TestMakkinkForms(t *testing.T) {
	// 0.65 · 0.1 / 0.166 · 24.5 / 2.45 = 3.9157 and 0.61 · … − 0.12 = 3.5547 mm a day.
	relative(t, 3.9157*mmPerDay, sound(t)(climate.MakkinkDeBruin.ET(100, 66, 24.5*mjPerDay)), 1e-4)
	relative(t, 3.5547*mmPerDay, sound(t)(climate.Makkink.ET(100, 66, 24.5*mjPerDay)), 1e-4)
}

// Punmia, Example 4.15, prints 20.7 mm a day by Rohwer and 15.9 by Meyer. What was
// read of it tells neither the pressure nor the height of Rohwer's wind; 760 mm Hg
// and 0.9 m give its figure, and other heights near the water come close.
func TestRohwerAgainstMeyer(t *testing.T) {
	s := sound(t)
	full, actual := 31.81*mmHg, 0.4*31.81*mmHg
	rohwer := func(height float64) float64 {
		return s(climate.Rohwer(full, actual, 760*mmHg, s(climate.WindAt(5, 3, height))))
	}
	relative(t, 20.74*mmPerDay, rohwer(0.9), 0.001)
	relative(t, 20.7*mmPerDay, rohwer(0.6), 0.05)
	require.Greater(t, rohwer(0.6), 1.2*s(climate.Meyer(full, actual, s(climate.WindAt(5, 3, 9)), climate.MeyerDeep)))
}

// Small beds among dry ground lose far more than the table for wide fields says.
func TestMeasuredBedsLoseMoreThanFields(t *testing.T) {
	for _, measured := range climate.MeasuredCoefficients {
		require.Less(t, measured.Least, measured.Mean)
		require.Less(t, measured.Mean, measured.Most)
		for _, c := range climate.CropCoefficients {
			require.Greater(t, measured.Least, c.Middle)
		}
	}
}

func TestLeaching(t *testing.T) {
	_, err := climate.LeachingRequirement(4, 4)
	require.ErrorContains(t, err, "no amount leaches")
	require.Equal(t, 60.0, sound(t)(climate.IrrigationDepth(60, 0)))
}
