package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

func TestChannelNormalDepth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		channel := hydraulics.Channel{
			Bottom:    rapid.Float64Range(0.1, 5).Draw(t, "bottom"),
			SideSlope: rapid.Float64Range(0, 4).Draw(t, "side slope"),
			Slope:     rapid.Float64Range(0.001, 0.2).Draw(t, "slope"),
			Roughness: rapid.Float64Range(0.01, 0.1).Draw(t, "roughness"),
		}
		at, err := channel.At(rapid.Float64Range(0.001, 5).Draw(t, "depth"))
		require.NoError(t, err)
		found, err := channel.Carrying(at.Discharge)
		require.NoError(t, err)
		require.InEpsilon(t, at.Depth, found.Depth, 1e-9)
	})
}

// TestTriangularChannel: 1:1 sides, 1 m deep: A = 1 m², P = 2√2 m, and with
// n = 0.02 and a slope of 1 % V = (1/(2√2))^(2/3)·0.1/0.02 = 0.5·5 = 2.5 m/s.
func TestTriangularChannel(t *testing.T) {
	flow, err := hydraulics.Channel{SideSlope: 1, Slope: 0.01, Roughness: 0.02}.At(1)
	require.NoError(t, err)
	require.InDelta(t, 1, flow.Area, 1e-12)
	require.InDelta(t, 2*math.Sqrt2, flow.Perimeter, 1e-12)
	require.InDelta(t, 2, flow.TopWidth, 1e-12)
	require.InDelta(t, 2.5, flow.Velocity, 1e-12)
}

// TestWideSheetIsAVeryWideChannel holds the closed form against a rectangle a
// kilometre wide.
func TestWideSheetIsAVeryWideChannel(t *testing.T) {
	sheet, err := hydraulics.WideSheet(0.03, 0.1, 0.05)
	require.NoError(t, err)
	channel, err := hydraulics.Channel{Bottom: 1000, Slope: 0.1, Roughness: 0.03}.Carrying(50)
	require.NoError(t, err)
	require.InEpsilon(t, channel.Depth, sheet.Depth, 1e-3)
	require.InEpsilon(t, channel.Velocity, sheet.Velocity, 1e-3)
	require.InEpsilon(t, 0.05, sheet.Velocity*sheet.Area, 1e-12)
}

// TestRoughnessesAreRanges: the usual value lies in its own range, and no wall
// is smoother than glass or rougher than a thicket.
func TestRoughnessesAreRanges(t *testing.T) {
	for _, r := range []hydraulics.Roughness{hydraulics.PlasticPipe, hydraulics.UPVCPipe, hydraulics.OldDrain, hydraulics.DrainTablePipe,
		hydraulics.VitrifiedClayPipe, hydraulics.CorrugatedPipe, hydraulics.CorrugatedPlastic, hydraulics.CleanEarth,
		hydraulics.GravelBottomStones, hydraulics.ShortGrassChannel} {
		require.LessOrEqual(t, r.Range.Low, r.Usual, r.Wall)
		require.GreaterOrEqual(t, r.Range.High, r.Usual, r.Wall)
		require.Greater(t, r.Range.Low, 0.005, r.Wall)
		require.Less(t, r.Range.High, 0.2, r.Wall)
		require.NotEmpty(t, r.Source.Title, r.Wall)
	}
}
