package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestManyTanksComeToPlugFlow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inlet := rapid.Float64Range(0.02, 0.5).Draw(t, "inlet")
		background := rapid.Float64Range(0, 0.01).Draw(t, "background")
		rate := rapid.Float64Range(1e-7, 1e-5).Draw(t, "rate")
		loading := rapid.Float64Range(2e-7, 1e-5).Draw(t, "loading")

		plug, err := KCStar(inlet, background, rate, loading)
		require.NoError(t, err)
		before := inlet
		for _, tanks := range []float64{1, 3, 10, 1000} {
			mixed, err := PKCStar(inlet, background, rate, loading, tanks)
			require.NoError(t, err)
			require.LessOrEqual(t, mixed, before, "more tanks remove more")
			require.GreaterOrEqual(t, mixed, plug*(1-1e-9), "none removes more than plug flow")
			before = mixed
		}
		// The difference of P·ln(1+x/P) from x is x²/2P.
		x := rate / loading
		if x < 5 {
			require.InDelta(t, plug, before, (inlet-background)*x*x/1000)
		}
	})
}

func TestAreaAndEffluentAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		flow := rapid.Float64Range(1e-7, 1e-3).Draw(t, "flow")
		inlet := rapid.Float64Range(0.05, 0.5).Draw(t, "inlet")
		background := rapid.Float64Range(0, 0.01).Draw(t, "background")
		effluent := rapid.Float64Range(0.011, 0.049).Draw(t, "effluent")
		rate := rapid.Float64Range(1e-7, 1e-5).Draw(t, "rate")
		tanks := rapid.Float64Range(1, 50).Draw(t, "tanks")

		area, err := KCStarArea(flow, inlet, effluent, background, rate)
		require.NoError(t, err)
		back, err := KCStar(inlet, background, rate, flow/area)
		require.NoError(t, err)
		require.InEpsilon(t, effluent, back, 1e-9)

		mixedArea, err := PKCStarArea(flow, inlet, effluent, background, rate, tanks)
		require.NoError(t, err)
		require.Greater(t, mixedArea, area, "mixing costs area")
		back, err = PKCStar(inlet, background, rate, flow/mixedArea, tanks)
		require.NoError(t, err)
		require.InEpsilon(t, effluent, back, 1e-9)

		time, err := PlugFlowTime(inlet, effluent, rate)
		require.NoError(t, err)
		back, err = PlugFlow(inlet, rate, time)
		require.NoError(t, err)
		require.InEpsilon(t, effluent, back, 1e-9)
	})
}

// The volumetric and the areal equation are one, with the areal rate k·y·n.
func TestVolumetricIsArealTimesPoreDepth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.SampledFrom(Volumetrics).Draw(t, "set")
		celsius := rapid.Float64Range(0, 30).Draw(t, "celsius")
		depth := rapid.Float64Range(0.2, 1).Draw(t, "depth")
		pores := rapid.Float64Range(0.3, 0.5).Draw(t, "porosity")
		const flow, inlet, effluent = 5e-6, 0.150, 0.030

		byVolume, err := v.Area(flow, inlet, effluent, celsius, depth, pores)
		require.NoError(t, err)
		rate, err := v.RateAt(celsius)
		require.NoError(t, err)
		byArea, err := KCStarArea(flow, inlet, effluent, 0, rate*depth*pores)
		require.NoError(t, err)
		require.InEpsilon(t, byArea, byVolume, 1e-9)

		back, err := v.Effluent(inlet, byVolume*depth*pores/flow, celsius)
		require.NoError(t, err)
		require.InEpsilon(t, effluent, back, 1e-9)
	})
}

// A doubling over 10 °C, the rule of thumb of van 't Hoff, is θ = 2^(1/10).
func TestTemperatureCoefficient(t *testing.T) {
	rate, err := AtTemperature(3, 1.0717734625, 30)
	require.NoError(t, err)
	require.InDelta(t, 6, rate, 1e-8)
	rate, err = AtTemperature(3, 1.06, 20)
	require.NoError(t, err)
	require.InDelta(t, 3, rate, 1e-12)
}

func TestFirstOrderRefuses(t *testing.T) {
	requireRefused(t, map[string]func() (float64, error){
		"frozen water":            func() (float64, error) { return AtTemperature(1, 1.06, -0.1) },
		"temperature in °F":       func() (float64, error) { return AtTemperature(1, 1.06, 50) },
		"coefficient in percent":  func() (float64, error) { return AtTemperature(1, 6, 10) },
		"effluent above inlet":    func() (float64, error) { return PlugFlowTime(0.03, 0.15, 1e-5) },
		"effluent of nothing":     func() (float64, error) { return PlugFlowTime(0.15, 0, 1e-5) },
		"no rate":                 func() (float64, error) { return PlugFlowTime(0.15, 0.03, 0) },
		"effluent at background":  func() (float64, error) { return KCStarArea(1e-6, 0.15, 0.01, 0.01, 1e-6) },
		"effluent under it":       func() (float64, error) { return PKCStarArea(1e-6, 0.15, 0.009, 0.01, 1e-6, 3) },
		"inlet below background":  func() (float64, error) { return KCStar(0.005, 0.01, 1e-6, 1e-6) },
		"no loading":              func() (float64, error) { return KCStar(0.15, 0.01, 1e-6, 0) },
		"half a tank":             func() (float64, error) { return PKCStar(0.15, 0.01, 1e-6, 1e-6, 0.5) },
		"no depth":                func() (float64, error) { return Volumetrics[0].Area(1e-6, 0.15, 0.03, 10, 0, 0.4) },
		"roots below the bed":     func() (float64, error) { return ReedAmmoniaRate(1.1, 15) },
		"ammonia below 10 °C":     func() (float64, error) { return ReedAmmoniaRate(0.5, 9) },
		"areal set, frozen water": func() (float64, error) { return Areals[0].RateAt(-1) },
	})
}
