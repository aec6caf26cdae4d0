package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestOxygenFallsWithWarmthAndHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		celsius := rapid.Float64Range(0, 39).Draw(t, "celsius")
		pressure := rapid.Float64Range(60000, 105000).Draw(t, "pressure")
		at, err := OxygenSaturationAt(celsius, pressure)
		require.NoError(t, err)
		warmer, err := OxygenSaturationAt(celsius+1, pressure)
		require.NoError(t, err)
		higher, err := OxygenSaturationAt(celsius, pressure-1000)
		require.NoError(t, err)
		require.Less(t, warmer, at)
		require.Less(t, higher, at)
	})
}

func TestOxygenAtSeaLevelIsTheEquation(t *testing.T) {
	for _, celsius := range []float64{0, 15, 40} {
		want, err := OxygenSaturation(celsius)
		require.NoError(t, err)
		got, err := OxygenSaturationAt(celsius, 101325)
		require.NoError(t, err)
		require.InDelta(t, want, got, 1e-12)
	}
}
