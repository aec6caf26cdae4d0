package climate_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/climate"
)

// sound gives a value that must have come without an error.
func sound(t require.TestingT) func(value float64, err error) float64 {
	return func(value float64, err error) float64 {
		require.NoError(t, err)
		return value
	}
}

// relative requires that a value lies within a share of what is expected.
func relative(t require.TestingT, want, got, share float64) {
	require.InDelta(t, want, got, share*math.Abs(want))
}

func TestCalendar(t *testing.T) {
	// Days of the common year: 15 April is 31 + 28 + 31 + 15; FAO 56 Examples 17,
	// 18 and 8 take 105, 187 and 246.
	for _, c := range []struct {
		month time.Month
		day   int
		want  int
	}{{time.January, 1, 1}, {time.April, 15, 105}, {time.July, 6, 187}, {time.September, 3, 246}, {time.December, 31, 365}} {
		n, err := climate.DayOfYear(c.month, c.day)
		require.NoError(t, err)
		require.Equal(t, c.want, n)
	}
	sum := 0
	for m := time.January; m <= time.December; m++ {
		days, err := climate.DaysIn(m)
		require.NoError(t, err)
		sum += days
	}
	require.Equal(t, 365, sum)
	for _, c := range []struct {
		month time.Month
		day   int
	}{{time.February, 29}, {time.April, 31}, {time.May, 0}, {0, 1}, {13, 1}} {
		_, err := climate.DayOfYear(c.month, c.day)
		require.Error(t, err, "%s %d", c.month, c.day)
	}
}

// The saturation pressure over water by the steam tables, from memory, in kPa:
// measured, and so apart from the equation.
func TestSaturationAgreesWithSteamTables(t *testing.T) {
	for celsius, kPa := range map[float64]float64{0.01: 0.6117, 10: 1.2282, 20: 2.3393, 30: 4.2470, 40: 7.3849} {
		relative(t, kPa*1000, sound(t)(climate.Saturation(celsius)), 0.002)
	}
}

func TestSlopeIsTheDerivativeOfSaturation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		celsius := rapid.Float64Range(-30, 50).Draw(t, "celsius")
		const step = 0.01
		rise := sound(t)(climate.Saturation(celsius+step)) - sound(t)(climate.Saturation(celsius-step))
		relative(t, rise/(2*step), sound(t)(climate.VapourSlope(celsius)), 1e-4)
	})
}

func TestVapourPressureAgreesBetweenMethods(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sound(t)
		celsius := rapid.Float64Range(-20, 45).Draw(t, "celsius")
		humidity := rapid.Float64Range(0.05, 1).Draw(t, "humidity")
		want := humidity * s(climate.Saturation(celsius))
		relative(t, want, s(climate.VapourFromHumidity(celsius, celsius, humidity, humidity)), 1e-12)
		relative(t, want, s(climate.VapourFromMeanHumidity(celsius, celsius, humidity)), 1e-12)
		// In saturated air both bulbs and the dew point read the same.
		full := s(climate.Saturation(celsius))
		require.InDelta(t, full, s(climate.VapourFromWetBulb(celsius, celsius, 101300, climate.NaturalPsychrometer)), 1e-9)
		require.InDelta(t, full, s(climate.VapourFromDewPoint(celsius)), 1e-9)
	})
}

// The mean of the pressures is above the pressure at the mean, since the curve
// bends upward: FAO 56 warns of the mistake.
func TestMeanSaturationIsNotThatOfTheMean(t *testing.T) {
	s := sound(t)
	require.Greater(t, s(climate.MeanSaturation(15, 24.5)), s(climate.Saturation((15+24.5)/2))+80)
}

func TestWindAt2mFromItselfIsItself(t *testing.T) {
	relative(t, 3.0, sound(t)(climate.WindAt2m(3, 2)), 0.001)
	relative(t, 3.0, sound(t)(climate.WindAt(3, 7, 7)), 1e-12)
}

// The sun's height over the horizon, summed by the minute, is another way to its
// radiation and to the length of the day.
func TestSunBySummingItsHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sound(t)
		phi := s(climate.Latitude(rapid.Float64Range(-90, 90).Draw(t, "latitude")))
		day := rapid.IntRange(1, 366).Draw(t, "day")
		delta := s(climate.Declination(day))
		const minutes = 1440
		sum, up := 0.0, 0.0
		for m := range minutes {
			hour := 2 * math.Pi * (float64(m) + 0.5 - minutes/2) / minutes
			height := math.Sin(phi)*math.Sin(delta) + math.Cos(phi)*math.Cos(delta)*math.Cos(hour)
			sum += math.Max(height, 0)
			if height > 0 {
				up++
			}
		}
		want := 0.0820e6 / 60 * s(climate.SunDistance(day)) * sum / minutes
		require.InDelta(t, want, s(climate.Extraterrestrial(phi, day)), 0.1)
		require.InDelta(t, up*60, s(climate.Daylight(phi, day)), 120)
	})
}

func TestPolarNightAndMidnightSun(t *testing.T) {
	s := sound(t)
	phi := s(climate.Latitude(80))
	require.Zero(t, s(climate.Extraterrestrial(phi, 355)))
	require.Zero(t, s(climate.Daylight(phi, 355)))
	require.InDelta(t, 86400, s(climate.Daylight(phi, 172)), 1e-6)
	_, err := climate.ReferenceET(climate.Place{Latitude: phi}, 355, climate.Weather{Least: -30, Greatest: -20, Vapour: 30, Wind: 2}, 0)
	require.ErrorContains(t, err, "the sun does not rise")
}

func TestSolarRadiationLiesBetweenOvercastAndClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sound(t)
		ra := rapid.Float64Range(10, 500).Draw(t, "ra")
		daylight := rapid.Float64Range(3600, 86400).Draw(t, "daylight")
		sunshine := rapid.Float64Range(0, 1).Draw(t, "share") * daylight
		got := s(climate.SolarFromSunshine(sunshine, daylight, ra, climate.FAOAngstrom))
		require.GreaterOrEqual(t, got, 0.25*ra-1e-9)
		require.LessOrEqual(t, got, s(climate.ClearSky(0, ra))+1e-9)
	})
}

// A sky brighter than the clear one counts as clear, as FAO 56 has it.
func TestNetLongwaveUnderAClearSky(t *testing.T) {
	s := sound(t)
	clear := s(climate.NetLongwave(10, 20, 1200, 300, 300))
	require.Equal(t, clear, s(climate.NetLongwave(10, 20, 1200, 330, 300)))
	require.Less(t, s(climate.NetLongwave(10, 20, 1200, 150, 300)), clear)
}
