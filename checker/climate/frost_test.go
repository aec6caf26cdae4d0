package climate_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/climate"
)

const (
	pcf     = 0.45359237 / 0.028316846592
	btuHour = 1055.05585262 / 3600 / 0.3048 * 1.8 // 1 Btu/h·ft·°F in W/m·°C
	foot    = 0.3048
)

// Silt of 100 lb/ft³ with 15 % of water, 0.76 Btu/h·ft·°F.
var silt = climate.Ground{DryDensity: 100 * pcf, Moisture: 0.15, Conductivity: 0.76 * btuHour}

// Alaska Administrative Code 18 AAC 72.630 (c), note: 1 in of insulation replaces
// 1 ft of soil.
func TestInsulationForSoil(t *testing.T) {
	const inch = foot / 12
	got, err := climate.InsulatedCover(2*foot, 2*inch)
	require.NoError(t, err)
	require.InDelta(t, 4*foot, got, 1e-12)
}

// Worked by another program, in US units: turf, mean of the year 50 °F, 90 days.
func TestFrostDepthByFreezingIndex(t *testing.T) {
	for index, want := range map[float64]struct{ stefan, berggren float64 }{
		250: {1.45, 1.30}, 500: {2.05, 1.84}, 1000: {2.91, 2.58}, 1500: {3.56, 3.13}, 2000: {4.11, 3.59}, 3000: {5.03, 4.34},
	} {
		got, err := climate.ModifiedBerggren(silt, climate.Winter{FreezingIndex: index / 1.8, SurfaceFactor: 0.5, Days: 90, MeanAnnual: 10}, climate.AldrichPaynter)
		require.NoError(t, err)
		require.InDelta(t, want.stefan, got.Stefan/foot, 0.006)
		require.InDelta(t, want.berggren, got.Depth/foot, 0.006)
	}
}

// Heat conduction with freezing, stepped through the ground on a grid by its
// enthalpy, is another way to Neumann's solution.
func TestNeumannAgainstAGrid(t *testing.T) {
	w := climate.Winter{FreezingIndex: 2500 / 1.8, SurfaceFactor: 1, Days: 160, MeanAnnual: 5.2 / 1.8}
	got, err := climate.ModifiedBerggren(silt, w, climate.Neumann)
	require.NoError(t, err)
	relative(t, frozenOnGrid(t, silt, w), got.Depth, 0.02)
}

func frozenOnGrid(t *testing.T, g climate.Ground, w climate.Winter) float64 {
	const nodes, cell = 240, 0.05 // 12 m deep
	latent, capacity := sound(t)(g.LatentHeat()), sound(t)(g.HeatCapacity())
	surface := -w.SurfaceFactor * w.FreezingIndex / w.Days
	step := 0.4 * cell * cell * capacity / g.Conductivity
	enthalpy := make([]float64, nodes) // above that of ice at 0 °C, J/m³
	for i := range enthalpy {
		enthalpy[i] = latent + capacity*w.MeanAnnual
	}
	celsius := func(i int) float64 {
		return (math.Min(enthalpy[i], 0) + math.Max(enthalpy[i]-latent, 0)) / capacity
	}
	flows := make([]float64, nodes+1) // downward into each cell
	for time := 0.0; time < w.Days*86400; time += step {
		flows[0] = g.Conductivity * (surface - celsius(0)) / (cell / 2)
		for i := 1; i < nodes; i++ {
			flows[i] = g.Conductivity * (celsius(i-1) - celsius(i)) / cell
		}
		for i := range enthalpy {
			enthalpy[i] += step / cell * (flows[i] - flows[i+1])
		}
	}
	depth := 0.0
	for _, h := range enthalpy {
		depth += cell * (1 - math.Max(math.Min(h/latent, 1), 0))
	}
	return depth
}

func TestLambda(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sound(t)
		alpha := rapid.Float64Range(0, 5).Draw(t, "alpha")
		mu := rapid.Float64Range(0.001, 2).Draw(t, "mu")
		exact := s(climate.Neumann.At(alpha, mu))
		require.Greater(t, exact, 0.0)
		require.Less(t, exact, 1.0)
		require.Less(t, s(climate.Neumann.At(alpha+0.1, mu)), exact, "warm ground holds the frost back")
		require.Less(t, s(climate.AldrichPaynter.At(alpha, mu+0.1)), s(climate.AldrichPaynter.At(alpha, mu)))

		closed, reduced := s(climate.AldrichPaynter.At(alpha, mu)), s(climate.Reduced.At(alpha, mu))
		require.InDelta(t, (closed+reduced)/2, s(climate.Between.At(alpha, mu)), 1e-12)
		require.InDelta(t, 0.707, reduced/closed, 1e-12)
	})
}

// With no stored heat λ is 1: Stefan. For a little of it, and ground at 0 °C, the
// series of Neumann's solution gives λ² = 1 − μ/3.
func TestLambdaNearStefan(t *testing.T) {
	for _, l := range []climate.Lambda{climate.AldrichPaynter, climate.Neumann} {
		require.Equal(t, 1.0, sound(t)(l.At(0.3, 0)), l.Name)
	}
	lambda := sound(t)(climate.Neumann.At(0, 0.001))
	require.InDelta(t, 1-0.001/3, lambda*lambda, 1e-6)
}

func TestStefanGrowsWithTheRootOfTheIndex(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := climate.Winter{FreezingIndex: rapid.Float64Range(1, 2000).Draw(t, "index"), SurfaceFactor: 0.5, Days: 100, MeanAnnual: 8}
		once := sound(t)(climate.Stefan(silt, w))
		w.FreezingIndex *= 4
		relative(t, 2*once, sound(t)(climate.Stefan(silt, w)), 1e-12)
	})
}

func TestFrostWhereItDoesNotApply(t *testing.T) {
	w := climate.Winter{FreezingIndex: 3000, SurfaceFactor: 1, Days: 250, MeanAnnual: -4}
	_, err := climate.ModifiedBerggren(silt, w, climate.Neumann)
	require.ErrorContains(t, err, "never thaws")
	_, err = climate.Stefan(climate.Ground{DryDensity: 1600, Conductivity: 1}, w)
	require.ErrorContains(t, err, "holds no water")
	mild, err := climate.ModifiedBerggren(silt, climate.Winter{SurfaceFactor: 1, Days: 1, MeanAnnual: 12}, climate.Neumann)
	require.NoError(t, err)
	require.Zero(t, mild.Depth)
}

func TestFreezingSeason(t *testing.T) {
	s := func(first, last time.Month, days int, index float64) climate.Season {
		return climate.Season{Index: index, Days: days, First: first, Last: last}
	}
	for name, c := range map[string]struct {
		means [climate.Months]float64
		want  climate.Season
	}{
		// 31·3 + 31·8 + 28·6 + 31·1 = 540.
		"over the new year": {[12]float64{-8, -6, -1, 6, 12, 17, 20, 19, 14, 8, 2, -3}, s(time.December, time.March, 121, 540)},
		// 30·2 − 31·1 + 31·4 = 153: December's thaw counts against it.
		"with a thaw": {[12]float64{-4, 2, 5, 9, 14, 18, 21, 20, 16, 10, -2, 1}, s(time.November, time.January, 92, 153)},
		"southern":    {[12]float64{18, 17, 13, 8, 3, -1, -2, 0, 4, 9, 13, 16}, s(time.June, time.July, 61, 92)},
		"none":        {[12]float64{5, 6, 8, 11, 14, 17, 19, 19, 16, 12, 8, 5}, climate.Season{}},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := climate.FreezingSeason(c.means)
			require.NoError(t, err)
			require.InDelta(t, c.want.Index, got.Index, 1e-9)
			got.Index = c.want.Index
			require.Equal(t, c.want, got)
		})
	}
	frozen, err := climate.FreezingSeason([12]float64{-9, -9, -9, -9, -9, -9, -9, -9, -9, -9, -9, -9})
	require.NoError(t, err)
	require.Equal(t, 365, frozen.Days)
	require.InDelta(t, 9*365, frozen.Index, 1e-9)
}

func TestFreezingMonths(t *testing.T) {
	means := [12]float64{-8, -6, 0, 6, 12, 17, 20, 19, 14, 8, 2, -3}
	months, err := climate.FreezingMonths(means, 0)
	require.NoError(t, err)
	require.Equal(t, []time.Month{time.January, time.February, time.March, time.December}, months)
	months, err = climate.FreezingMonths(means, 2)
	require.NoError(t, err)
	require.Contains(t, months, time.November)
	means[3] = math.NaN()
	_, err = climate.FreezingMonths(means, 0)
	require.ErrorContains(t, err, "April")
}

func TestMeanOfYearWeighsMonthsByTheirDays(t *testing.T) {
	means := [12]float64{1: 10} // February
	relative(t, 280.0/365, sound(t)(climate.MeanOfYear(means)), 1e-12)
}
