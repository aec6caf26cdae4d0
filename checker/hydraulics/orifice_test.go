package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// TestRiserGoesFromCrestToOrifice: the two are equal at a head of
// Cd·√(2g)·D/(4C), and below it the crest governs.
func TestRiserGoesFromCrestToOrifice(t *testing.T) {
	riser := hydraulics.Riser{Diameter: 0.1, CrestC: 1.8, OrificeCd: 0.6}
	turn := 0.6 * math.Sqrt(2*hydraulics.Gravity) * 0.1 / (4 * 1.8)
	for head, want := range map[float64]hydraulics.Control{
		0: hydraulics.CrestControl, turn * 0.99: hydraulics.CrestControl, turn * 1.01: hydraulics.OrificeControl, 1: hydraulics.OrificeControl,
	} {
		out, err := riser.Flow(head)
		require.NoError(t, err)
		require.Equal(t, want, out.Control, "at %g m", head)
	}
}

func TestRiserNeverFalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		riser := hydraulics.Riser{Diameter: rapid.Float64Range(0.03, 0.5).Draw(t, "diameter"), CrestC: 1.8, OrificeCd: 0.6}
		low := rapid.Float64Range(0, 2).Draw(t, "head")
		less, err := riser.Flow(low)
		require.NoError(t, err)
		more, err := riser.Flow(low + rapid.Float64Range(0, 1).Draw(t, "rise"))
		require.NoError(t, err)
		require.GreaterOrEqual(t, more.Discharge, less.Discharge)
	})
}

// TestShortOutletIsAnOrificeAndLongOneABarrel: with the same head on both, a
// short pipe is held back by its mouth and a long one by its wall.
func TestShortOutletIsAnOrificeAndLongOneABarrel(t *testing.T) {
	outlet := hydraulics.Outlet{Diameter: 0.1, Length: 0.5, Roughness: 0.011, Losses: hydraulics.SharpEntrance, OrificeCd: 0.6}
	short, err := outlet.Flow(1, 1)
	require.NoError(t, err)
	require.Equal(t, hydraulics.OrificeControl, short.Control)

	outlet.Length = 30
	long, err := outlet.Flow(1, 1)
	require.NoError(t, err)
	require.Equal(t, hydraulics.BarrelControl, long.Control)
	require.Less(t, long.Discharge, short.Discharge)
}

// TestVeryLongBarrelIsAPipeOnItsGrade: with friction alone the head over the
// length is Manning's slope.
func TestVeryLongBarrelIsAPipeOnItsGrade(t *testing.T) {
	out, err := hydraulics.Outlet{Diameter: 0.1, Length: 5000, Roughness: 0.013, OrificeCd: 0.6}.Flow(50, 50)
	require.NoError(t, err)
	full, err := hydraulics.Pipe{Diameter: 0.1, Slope: 0.01, Roughness: 0.013}.Full()
	require.NoError(t, err)
	require.InEpsilon(t, full.Discharge, out.Discharge, 0.001)
}

// TestBarrelUsesUpItsHead: the head is the velocity head, the losses and the
// friction slope over the length.
func TestBarrelUsesUpItsHead(t *testing.T) {
	outlet := hydraulics.Outlet{Diameter: 0.15, Length: 12, Roughness: 0.012, Losses: 0.9, OrificeCd: 0.62}
	out, err := outlet.Flow(3, 0.8)
	require.NoError(t, err)
	section, err := hydraulics.CircularSection(0.15, 0.15)
	require.NoError(t, err)
	slope, err := hydraulics.FrictionSlope(0.012, section, out.Discharge)
	require.NoError(t, err)
	head, err := hydraulics.VelocityHead(out.Discharge / section.Area)
	require.NoError(t, err)
	require.InEpsilon(t, 0.8, 1.9*head+12*slope, 1e-9)
}

func TestLeastGoverns(t *testing.T) {
	barrel := hydraulics.Outflow{Discharge: 0.01, Control: hydraulics.BarrelControl}
	crest := hydraulics.Outflow{Discharge: 0.02, Control: hydraulics.CrestControl}
	require.Equal(t, barrel, hydraulics.Least(crest, barrel))
	require.Equal(t, barrel, hydraulics.Least(barrel, crest))
}

// TestDrainTimeAddsUp: falling in two goes takes as long as in one.
func TestDrainTimeAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(0.1, 3).Draw(t, "from")
		half := from * rapid.Float64Range(0, 1).Draw(t, "share")
		time := func(from, to float64) float64 {
			s, err := hydraulics.DrainTime(2, 0.6, 0.001, from, to)
			require.NoError(t, err)
			return s
		}
		require.InDelta(t, time(from, 0), time(from, half)+time(half, 0), 1e-6)
	})
}
