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
			require.InEpsilon(t, area*tt.velocity, flow.Discharge, 1e-9)
			require.Equal(t, hydraulics.MouthControl, flow.Control)
		})
	}
}

// TestCoveredMouth: deep under water a mouth is an orifice with V = Q/A under
// H = (V/0.60)²/2g over its middle, as long as the barrel is steep.
func TestCoveredMouth(t *testing.T) {
	velocity := 0.015 / (math.Pi * 0.1 * 0.1 / 4)
	head, err := overflow.Head(0.015, 3)
	require.NoError(t, err)
	require.InDelta(t, 0.05+velocity*velocity/(0.36*2*hydraulics.Gravity), head, 1e-9)
	flow, err := overflow.Rating(head, 3)
	require.NoError(t, err)
	require.InEpsilon(t, 0.015, flow.Discharge, 1e-9)
	require.Equal(t, hydraulics.OrificeControl, flow.Control)
}

// TestAPipeThatDoesNotFall carries nothing before the water stands at its top, then
// what its barrel lets through: H = (1 + ΣK + 2g·n²·L/R^(4/3))·V²/2g.
func TestAPipeThatDoesNotFall(t *testing.T) {
	flow, err := overflow.Rating(0.099, 0)
	require.NoError(t, err)
	require.Zero(t, flow.Discharge)
	flow, err = overflow.Rating(0.1, 0)
	require.NoError(t, err)
	losses := 1.8 + 2*hydraulics.Gravity*0.013*0.013*10/math.Pow(0.025, 4.0/3)
	require.InEpsilon(t, math.Pi*0.1*0.1/4*math.Sqrt(2*hydraulics.Gravity*0.05/losses), flow.Discharge, 1e-9)
	require.Equal(t, hydraulics.BarrelControl, flow.Control)
	head, err := overflow.Head(flow.Discharge/2, 0)
	require.NoError(t, err)
	require.InDelta(t, 0.1, head, 1e-12)
	flow, err = overflow.Rating(0.1, -1)
	require.NoError(t, err)
	require.Zero(t, flow.Discharge)
}

// anyOverflow draws a pipe with its fall.
func anyOverflow(t *rapid.T) (o hydraulics.Outlet, fall float64) {
	o = overflow
	o.Diameter, o.Length = rapid.Float64Range(0.03, 0.5).Draw(t, "diameter"), rapid.Float64Range(0.5, 50).Draw(t, "length")
	return o, rapid.Float64Range(0.001, 0.2).Draw(t, "slope") * o.Length
}

// TestRatingsTurnRound: the head for a flow gives the flow back.
func TestRatingsTurnRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, fall := anyOverflow(t)
		at := rapid.Float64Range(1e-3, 1).Draw(t, "head")
		want, err := o.Rating(at, fall)
		require.NoError(t, err)
		head, err := o.Head(want.Discharge, fall)
		require.NoError(t, err)
		require.LessOrEqual(t, head, at+1e-9)
		got, err := o.Rating(head, fall)
		require.NoError(t, err)
		require.InEpsilon(t, want.Discharge, got.Discharge, 1e-6)
	})
}

// TestOverflowsCarryMore with a higher head and a greater fall, and in a larger pipe
// when the water stands as high for its size.
func TestOverflowsCarryMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, fall := anyOverflow(t)
		head, more := rapid.Float64Range(1e-3, 1).Draw(t, "head"), rapid.Float64Range(1, 3).Draw(t, "more")
		flow := func(o hydraulics.Outlet, head, fall float64) float64 {
			f, err := o.Rating(head, fall)
			require.NoError(t, err)
			return f.Discharge
		}
		least := flow(o, head, fall) * (1 - 1e-9)
		require.GreaterOrEqual(t, flow(o, head*more, fall), least)
		require.GreaterOrEqual(t, flow(o, head, fall*more), least)
		o.Diameter *= more
		require.GreaterOrEqual(t, flow(o, head*more, fall), least)
	})
}

// TestSpillwaysCarryMore with a higher head, a longer crest and gentler sides.
func TestSpillwaysCarryMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		flow := func(bottom, sides, head float64) float64 {
			f, err := hydraulics.Spillway{Bottom: bottom, SideSlope: sides, Coefficient: 0.85}.Flow(head)
			require.NoError(t, err)
			return f.Discharge
		}
		bottom, sides, head := rapid.Float64Range(0.1, 5).Draw(t, "crest"), rapid.Float64Range(0, 4).Draw(t, "sides"), rapid.Float64Range(0.001, 1).Draw(t, "head")
		more := rapid.Float64Range(1, 3).Draw(t, "more")
		least := flow(bottom, sides, head) * (1 - 1e-9)
		require.GreaterOrEqual(t, flow(bottom, sides, head*more), least)
		require.GreaterOrEqual(t, flow(bottom*more, sides, head), least)
		require.GreaterOrEqual(t, flow(bottom, sides*more, head), least)
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
	_, err := overflow.Rating(0.1, math.NaN())
	require.ErrorContains(t, err, "fall")
	_, err = overflow.Head(0, 1)
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
	_, err = hydraulics.Tabulated(10, 12, 8, func(stage float64) (float64, error) {
		flow, err := overflow.Rating(-stage, 1)
		return flow.Discharge, err
	})
	require.ErrorContains(t, err, "head")
}
