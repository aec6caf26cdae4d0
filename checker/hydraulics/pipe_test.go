package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// TestFullPipe: in feet and cfs, by V = 1.486/n·R^(2/3)·S^(1/2) worked by hand
// for 4 in at 1/4 in/ft, n 0.011: R = 1/12 ft, R^(2/3) = 0.19079,
// √(1/48) = 0.144338, V = 135.09 × 0.19079 × 0.144338 = 3.720 ft/s,
// Q = 3.720 × 0.087266 ft² = 0.32465 cfs.
func TestFullPipe(t *testing.T) {
	full, err := hydraulics.Pipe{Diameter: 4 * inch, Slope: 1.0 / 48, Roughness: 0.011}.Full()
	require.NoError(t, err)
	require.InDelta(t, 3.720, full.Velocity/foot, 0.001)
	require.InDelta(t, 0.32465, full.Discharge/cfs, 0.0001)
	require.InDelta(t, 145.7, full.Discharge/gpm, 0.1)
	require.Zero(t, full.MeanDepth(), "a full pipe has no free surface")
}

func TestHalfFullPipeHasTheFullOnesVelocity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pipe := anyPipe(t)
		full, err := pipe.Full()
		require.NoError(t, err)
		half, err := pipe.At(pipe.Diameter / 2)
		require.NoError(t, err)
		require.InEpsilon(t, full.Velocity, half.Velocity, 1e-12)
		require.InEpsilon(t, full.Discharge/2, half.Discharge, 1e-12)
	})
}

func TestPipeFlowScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pipe, factor := anyPipe(t), rapid.Float64Range(0.5, 4).Draw(t, "factor")
		full, err := pipe.Full()
		require.NoError(t, err)
		steeper, larger := pipe, pipe
		steeper.Slope *= factor
		larger.Diameter *= factor
		more, err := steeper.Full()
		require.NoError(t, err)
		require.InEpsilon(t, math.Sqrt(factor), more.Discharge/full.Discharge, 1e-12)
		more, err = larger.Full()
		require.NoError(t, err)
		require.InEpsilon(t, math.Pow(factor, 8.0/3), more.Discharge/full.Discharge, 1e-12)
	})
}

func TestCarryingFindsTheDepth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pipe := anyPipe(t)
		most, err := pipe.Most()
		require.NoError(t, err)
		at, err := pipe.At(rapid.Float64Range(0.01, 1).Draw(t, "share") * most.Depth)
		require.NoError(t, err)
		found, err := pipe.Carrying(at.Discharge)
		require.NoError(t, err)
		require.InDelta(t, at.Depth, found.Depth, 1e-6*pipe.Diameter)
		require.LessOrEqual(t, at.Discharge, most.Discharge)
	})
}

// TestMostIsTheMost compares with every hundredth of the depth.
func TestMostIsTheMost(t *testing.T) {
	pipe := hydraulics.Pipe{Diameter: 0.1, Slope: 0.02, Roughness: 0.011}
	most, err := pipe.Most()
	require.NoError(t, err)
	for i := 1; i <= 100; i++ {
		at, err := pipe.At(float64(i) / 100 * pipe.Diameter)
		require.NoError(t, err)
		require.LessOrEqual(t, at.Discharge, most.Discharge)
	}
}

// TestCircularSectionIsADisc sums strips across the pipe up to the depth.
func TestCircularSectionIsADisc(t *testing.T) {
	const strips = 20_000
	for _, depth := range []float64{0.1, 0.3, 0.5, 0.8, 1} {
		section, err := hydraulics.CircularSection(1, depth)
		require.NoError(t, err)
		sum := 0.0
		for i := range strips {
			y := depth * (float64(i) + 0.5) / strips
			sum += 2 * math.Sqrt(y*(1-y)) * depth / strips
		}
		require.InDelta(t, sum, section.Area, 1e-5)
	}
}

func TestHydraulicElementsOfTheFullPipe(t *testing.T) {
	full, err := hydraulics.HydraulicElements(1)
	require.NoError(t, err)
	require.Equal(t, hydraulics.Ratios{Area: 1, Radius: 1, Velocity: 1, Discharge: 1}, full)
}

func TestFrictionSlopeOfAPipe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pipe := anyPipe(t)
		full, err := pipe.Full()
		require.NoError(t, err)
		slope, err := hydraulics.FrictionSlope(pipe.Roughness, full.Section, full.Discharge)
		require.NoError(t, err)
		require.InEpsilon(t, pipe.Slope, slope, 1e-12)
	})
}

func anyPipe(t *rapid.T) hydraulics.Pipe {
	return hydraulics.Pipe{
		Diameter:  rapid.Float64Range(0.03, 0.6).Draw(t, "diameter"),
		Slope:     rapid.Float64Range(0.001, 0.2).Draw(t, "slope"),
		Roughness: rapid.Float64Range(0.009, 0.03).Draw(t, "roughness"),
	}
}
