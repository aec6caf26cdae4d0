package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// overflow is a pipe of 100 mm and 10 m, as rough as it may be, with an entrance
// that reaches into the water.
var overflow = hydraulics.Outlet{Diameter: 0.1, Length: 10, Roughness: 0.013, Losses: hydraulics.ProjectingEntrance, OrificeCd: hydraulics.SharpOrifice}

// TestHalfFullMouth: half full, area π·D²/8, top width D and hydraulic radius D/4.
// On a steep slope the flow there is critical, √(g·A³/T); on a slight one uniform,
// A·R^(2/3)·√S/n. The head is D/2 + 1.8·V²/2g.
func TestHalfFullMouth(t *testing.T) {
	area := math.Pi * 0.1 * 0.1 / 8
	tests := map[string]struct{ fall, velocity float64 }{
		"steep":  {1, math.Sqrt(hydraulics.Gravity * area / 0.1)},
		"slight": {0.02, math.Pow(0.1/4, 2.0/3) * math.Sqrt(0.02/10) / 0.013},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			head := 0.05 + 1.8*tt.velocity*tt.velocity/(2*hydraulics.Gravity)
			got, err := overflow.Head(area*tt.velocity, tt.fall)
			require.NoError(t, err)
			require.InDelta(t, head, got, 1e-9)
			flow, err := overflow.Rating(head, tt.fall)
			require.NoError(t, err)
			require.InEpsilon(t, area*tt.velocity, flow, 1e-9)
		})
	}
}

// TestCoveredMouth: where the barrel is short and steep the mouth governs, as an
// orifice with V = Q/A under H = (V/0.60)²/2g over its middle.
func TestCoveredMouth(t *testing.T) {
	velocity := 0.015 / (math.Pi * 0.1 * 0.1 / 4)
	head, err := overflow.Head(0.015, 3)
	require.NoError(t, err)
	require.InDelta(t, 0.05+velocity*velocity/(0.36*2*hydraulics.Gravity), head, 1e-9)
}

// TestRatingsRise with the head, and their heads give the flow back.
func TestRatingsRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := overflow
		o.Diameter, o.Length = rapid.Float64Range(0.03, 0.5).Draw(t, "diameter"), rapid.Float64Range(0.5, 50).Draw(t, "length")
		fall := rapid.Float64Range(0.001, 0.2).Draw(t, "slope") * o.Length
		low := rapid.Float64Range(1e-3, 1).Draw(t, "low")
		high := low + rapid.Float64Range(0, 1).Draw(t, "more")
		small, err := o.Rating(low, fall)
		require.NoError(t, err)
		great, err := o.Rating(high, fall)
		require.NoError(t, err)
		require.LessOrEqual(t, small, great*(1+1e-12))

		head, err := o.Head(small, fall)
		require.NoError(t, err)
		again, err := o.Rating(head, fall)
		require.NoError(t, err)
		require.LessOrEqual(t, head, low+1e-9)
		require.InEpsilon(t, small, again, 1e-6)
	})
}

func TestSpillwaysTurnRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := hydraulics.Spillway{Bottom: rapid.Float64Range(0, 5).Draw(t, "crest"), SideSlope: rapid.Float64Range(0.1, 4).Draw(t, "sides"), Coefficient: 0.85}
		head := rapid.Float64Range(0.001, 2).Draw(t, "head")
		want, err := s.Flow(head)
		require.NoError(t, err)
		got, at, err := s.Carrying(want.Discharge)
		require.NoError(t, err)
		require.InEpsilon(t, head, at, 1e-9)
		require.InEpsilon(t, want.Velocity, got.Velocity, 1e-9)
	})
}

func TestWhatAMouthRefuses(t *testing.T) {
	for name, fall := range map[string]float64{"level": 0, "rising": -1, "no number": math.NaN()} {
		_, err := overflow.Rating(0.1, fall)
		require.ErrorContains(t, err, "fall", name)
		_, err = overflow.Head(0.001, fall)
		require.ErrorContains(t, err, "fall", name)
	}
	_, err := overflow.Head(0, 1)
	require.ErrorContains(t, err, "discharge")
	_, err = overflow.Rating(-1, 1)
	require.ErrorContains(t, err, "head")
	_, _, err = hydraulics.Spillway{Bottom: 1, Coefficient: 1}.Carrying(0)
	require.ErrorContains(t, err, "discharge")
}

func TestTabulatedRatings(t *testing.T) {
	double := func(stage float64) (float64, error) { return 2 * (stage - 10), nil }
	read, err := hydraulics.Tabulated(10, 12, 8, double)
	require.NoError(t, err)
	for stage, want := range map[float64]float64{9: 0, 10: 0, 10.1: 0.2, 11: 2, 11.99: 3.98, 12: 4, 13: 4} {
		require.InDelta(t, want, read(stage), 1e-12)
	}
	_, err = hydraulics.Tabulated(10, 10, 8, double)
	require.ErrorContains(t, err, "range of stages")
	_, err = hydraulics.Tabulated(10, 12, 0, double)
	require.ErrorContains(t, err, "steps")
	_, err = hydraulics.Tabulated(10, 12, 8, func(stage float64) (float64, error) { return overflow.Rating(-stage, 1) })
	require.ErrorContains(t, err, "head")
}
