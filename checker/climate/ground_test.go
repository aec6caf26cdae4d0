package climate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/climate"
)

func TestConductionArgumentUndoesTheErrorFunction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first := rapid.Float64Range(1, 30).Draw(t, "first")
		surface := rapid.Float64Range(-30, -0.1).Draw(t, "surface")
		argument := sound(t)(climate.ConductionArgument(first, surface, 0))
		require.InDelta(t, 0, surface+(first-surface)*math.Erf(argument), 1e-9)
	})
	_, err := climate.ConductionArgument(10, 5, 0)
	require.ErrorContains(t, err, "does not lie between")
	_, err = climate.ConductionArgument(5, 5, 5)
	require.Error(t, err)
}

// Latent heat holds frost back, so conduction alone goes deeper than the modified
// Berggren method in the same winter.
func TestConductionAloneGoesDeeperThanBerggren(t *testing.T) {
	w := climate.Winter{FreezingIndex: 600, SurfaceFactor: 1, Days: 100, MeanAnnual: 8}
	berggren, err := climate.ModifiedBerggren(silt, w, climate.Neumann)
	require.NoError(t, err)
	s := sound(t)
	argument := s(climate.ConductionArgument(8, -6, 0))
	alpha := silt.Conductivity / s(silt.HeatCapacity())
	require.Greater(t, s(climate.ConductionDepth(argument, alpha, 100*86400)), berggren.Depth)
}

// A wave that is right changes with time as fast as it bends with depth.
func TestGroundWaveConducts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wave := climate.GroundWave{Mean: 9, Swing: 12, ColdestDay: 30}
		depth := rapid.Float64Range(0.1, 8).Draw(t, "depth")
		day := rapid.Float64Range(10, 350).Draw(t, "day")
		alpha := rapid.Float64Range(2e-7, 2e-6).Draw(t, "alpha")
		at := func(z, d float64) float64 { return sound(t)(wave.At(z, d, alpha)) }
		const dz, dd = 0.01, 0.1
		change := (at(depth, day+dd) - at(depth, day-dd)) / (2 * dd * 86400)
		bend := (at(depth+dz, day) - 2*at(depth, day) + at(depth-dz, day)) / (dz * dz)
		require.InDelta(t, change, alpha*bend, 1e-9)
	})
}

func TestGroundWaveAtTheSurfaceAndDeep(t *testing.T) {
	wave := climate.GroundWave{Mean: 9, Swing: 12, ColdestDay: 30}
	require.InDelta(t, -3, sound(t)(wave.At(0, 30, 7e-7)), 1e-9)
	require.InDelta(t, 9, sound(t)(wave.At(30, 30, 7e-7)), 0.01)
	// Half a year late and weaker by exp(−π) at π damping depths.
	depth := math.Pi * sound(t)(climate.DampingDepth(7e-7))
	require.InDelta(t, 9+12*math.Exp(-math.Pi), sound(t)(wave.At(depth, 30, 7e-7)), 1e-9)
}

func TestKersten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dry := rapid.Float64Range(1200, 2000).Draw(t, "dry")
		moisture := rapid.Float64Range(0.08, 0.3).Draw(t, "moisture")
		fine := rapid.Bool().Draw(t, "fine")
		frozen, thawed, err := climate.Kersten(dry, moisture, fine)
		require.NoError(t, err)
		wetFrozen, wetThawed, err := climate.Kersten(dry, moisture+0.01, fine)
		require.NoError(t, err)
		require.Greater(t, wetFrozen, frozen)
		require.Greater(t, wetThawed, thawed)
	})
	// 110 lb/ft³ of sand with 10 % of water, by hand: frozen
	// 0.076·10^1.43 + 0.032·10^1.606·10 = 14.96, thawed (0.7 + 0.4)·10^1.1 = 13.85 Btu·in/ft²·h·°F.
	frozen, thawed, err := climate.Kersten(110*pcf, 0.10, false)
	require.NoError(t, err)
	relative(t, 14.96, frozen/btuHour*12, 0.001)
	relative(t, 13.85, thawed/btuHour*12, 0.001)
	_, _, err = climate.Kersten(1600, 0.05, true)
	require.ErrorContains(t, err, "soil moisture")
}

func TestIceGrowsWithTheRoot(t *testing.T) {
	s := sound(t)
	once := s(climate.IceThickness(0.02, 100))
	require.InDelta(t, 0.2, once, 1e-12)
	require.InDelta(t, 2*once, s(climate.IceThickness(0.02, 400)), 1e-12)
}
