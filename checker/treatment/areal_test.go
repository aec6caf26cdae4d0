package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestArealSetsRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.SampledFrom(Areals).Draw(t, "set")
		celsius := rapid.Float64Range(0, 30).Draw(t, "celsius")
		flow := rapid.Float64Range(1e-7, 1e-3).Draw(t, "flow")
		inlet := a.InletLeast + 0.02
		if a.Of == FecalColiforms {
			inlet = 1e10
		}
		effluent := a.Background + a.BackgroundShare*inlet + inlet/10

		area, err := a.Area(flow, inlet, effluent, celsius)
		require.NoError(t, err)
		back, err := a.Effluent(inlet, flow/area, celsius)
		require.NoError(t, err)
		require.InEpsilon(t, effluent, back, 1e-9)
	})
}

func TestWinterTakesMoreAreaWhereTheSourceSaysSo(t *testing.T) {
	for _, a := range Areals {
		cold, err := a.RateAt(5)
		require.NoError(t, err)
		warm, err := a.RateAt(20)
		require.NoError(t, err)
		switch {
		case a.Theta > 1:
			require.Less(t, cold, warm, a.Name)
		case a.Theta != 0 && a.Theta < 1:
			require.Greater(t, cold, warm, a.Name)
		default:
			require.InDelta(t, warm, cold, 1e-15, a.Name)
		}
		require.Equal(t, a.Theta != 0, a.Corrected(), a.Name)
	}
}

// The bands of BOD follow each other without a gap.
func TestBandsCoverEveryInlet(t *testing.T) {
	for _, inlet := range []float64{0.003, 0.0299, 0.0301, 0.0999, 0.1001, 0.1999, 0.2001, 1} {
		n := 0
		for _, a := range Areals {
			if a.Of == BOD5 && a.Tanks > 0 && a.Holds(inlet) {
				n++
			}
		}
		require.Equal(t, 1, n, "sets for an inlet of %g kg/m³", inlet)
	}
}

func TestBandIsKept(t *testing.T) {
	for _, a := range Areals {
		if a.InletLeast > 0 {
			_, err := a.Effluent(a.InletLeast/2, 1e-6, 15)
			require.ErrorContains(t, err, a.Name)
		}
	}
}
