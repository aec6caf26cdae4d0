package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// pond is a pond with sloping sides over a floor of 4 m², and a crest 0.5 m up.
func pond(crest float64) hydraulics.Pool {
	return hydraulics.Pool{
		Storage: func(h float64) float64 { return 4*h + 6*h*h },
		Outflow: func(h float64) float64 { return crest * math.Pow(math.Max(h-0.5, 0), 1.5) },
		Highest: 1.5,
	}
}

// TestRoutingBalances: inflow less outflow is what the pond gained, at every
// step, whatever the storm and the crest.
func TestRoutingBalances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pool := pond(rapid.Float64Range(0.5, 3).Draw(t, "crest"))
		start := rapid.Float64Range(0, 0.6).Draw(t, "start")
		inflows := rapid.SliceOfN(rapid.Float64Range(0, 0.1), 2, 60).Draw(t, "inflows")
		states, err := pool.Route(start, 10, inflows)
		require.NoError(t, err)
		require.Len(t, states, len(inflows))
		balance := states[0].Storage
		for i := 1; i < len(states); i++ {
			balance += 10 * (inflows[i-1] + inflows[i] - states[i-1].Outflow - states[i].Outflow) / 2
			require.InDelta(t, balance, states[i].Storage, 1e-9)
		}
	})
}

// TestRoutingDampsTheStorm: what leaves a pond that starts at its crest peaks
// lower than what came in, and where it peaks it crosses the falling inflow.
func TestRoutingDampsTheStorm(t *testing.T) {
	inflows, err := hydraulics.Storm{0.9, 100e-3 / 3600, 2000, 900, 600}.Hydrograph(5)
	require.NoError(t, err)
	inflows = append(inflows, make([]float64, 600)...)
	states, err := pond(1.7).Route(0.5, 5, inflows)
	require.NoError(t, err)
	peak, at := 0.0, 0
	for i, s := range states {
		if s.Outflow > peak {
			peak, at = s.Outflow, i
		}
	}
	require.Less(t, peak, 0.9*100e-3/3600*2000)
	require.InDelta(t, inflows[at], peak, 0.001)
}

// TestLinearPoolEmptiesExponentially is the closed form of O = S/k.
func TestLinearPoolEmptiesExponentially(t *testing.T) {
	const k = 3600.0
	pool := hydraulics.Pool{
		Storage: func(h float64) float64 { return 10 * h },
		Outflow: func(h float64) float64 { return 10 * h / k },
		Highest: 2,
	}
	states, err := pool.Route(1, 10, make([]float64, 361))
	require.NoError(t, err)
	require.InEpsilon(t, 10/math.E, states[360].Storage, 1e-5)
}

// TestTankThroughAnOrificeTakesItsDrainTime holds routing against the closed
// form of the falling head.
func TestTankThroughAnOrificeTakesItsDrainTime(t *testing.T) {
	const tank, cd, opening = 2.0, 0.6, 0.001
	pool := hydraulics.Pool{
		Storage: func(h float64) float64 { return tank * h },
		Outflow: func(h float64) float64 {
			q, err := hydraulics.Orifice(cd, opening, h)
			require.NoError(t, err)
			return q
		},
		Highest: 1,
	}
	seconds, err := hydraulics.DrainTime(tank, cd, opening, 1, 0.25)
	require.NoError(t, err)
	const steps = 200
	states, err := pool.Route(1, seconds/steps, make([]float64, steps+1))
	require.NoError(t, err)
	require.InDelta(t, 0.25, states[steps].Stage, 1e-5)
}

func TestRoutingReachesTheSteadyHead(t *testing.T) {
	pool := pond(1.7)
	inflows := make([]float64, 2000)
	for i := range inflows {
		inflows[i] = 0.05
	}
	states, err := pool.Route(0, 5, inflows)
	require.NoError(t, err)
	head, err := hydraulics.HeadFor(0.05, 1, func(h float64) (float64, error) { return hydraulics.Weir(1.7, 1, h) })
	require.NoError(t, err)
	require.InDelta(t, 0.5+head, states[len(states)-1].Stage, 1e-9)
}

func TestWhatRoutingRefuses(t *testing.T) {
	steady := func(q float64, n int) []float64 {
		list := make([]float64, n)
		for i := range list {
			list[i] = q
		}
		return list
	}
	var over *hydraulics.OvertoppedError
	_, err := pond(0.01).Route(0.5, 60, steady(0.2, 100))
	require.ErrorAs(t, err, &over)
	require.ErrorContains(t, err, "the water rises over the highest stage at time step")
	require.Positive(t, over.Step)

	_, err = pond(1.7).Route(2, 60, steady(0, 2))
	require.ErrorContains(t, err, "the starting stage is 2; it must be from 0 to 1.5")
	_, err = pond(1.7).Route(0.5, 60, nil)
	require.ErrorContains(t, err, "number of inflows")
	_, err = pond(1.7).Route(0.5, 60, []float64{0, -0.1})
	require.ErrorContains(t, err, "the inflow is -0.1")
	_, err = pond(1.7).Route(1.4, 3600, steady(0, 2))
	require.ErrorContains(t, err, "the pool empties within it")

	unknown := pond(1.7)
	unknown.Outflow = func(float64) float64 { return math.NaN() }
	_, err = unknown.Route(0.5, 60, steady(0, 2))
	require.ErrorContains(t, err, "a number at every stage")
}

// TestLongestStep: a pond of upright walls whose outflow rises by 0.1 m²/s between
// 0.5 m and 1 m has the longest step 2 × 4 m² ÷ 0.1 m²/s; with it the outflow of a
// steady inflow does not pass the inflow.
func TestLongestStep(t *testing.T) {
	pool := hydraulics.Pool{
		Storage: func(h float64) float64 { return 4 * h },
		Outflow: func(h float64) float64 { return 0.1 * math.Max(h-0.5, 0) },
		Highest: 1,
	}
	require.InEpsilon(t, 2*4/0.1, pool.LongestStep(0, 1), 1e-9)
	require.Equal(t, math.Inf(1), pool.LongestStep(0, 0.4))
	states, err := pool.Route(0.5, 80, []float64{0.03, 0.03, 0.03, 0.03, 0.03})
	require.NoError(t, err)
	for _, s := range states {
		require.LessOrEqual(t, s.Outflow, 0.03+1e-12)
	}
}
