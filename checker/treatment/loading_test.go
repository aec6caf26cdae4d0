package treatment

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Flow through a bed takes up water depth at the loading and empties the pores
// in the detention, so that loading × detention = depth × porosity.
func TestLoadingTimesDetentionIsTheWaterHeld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		flow := rapid.Float64Range(1e-7, 1e-2).Draw(t, "flow")
		area := rapid.Float64Range(0.1, 1e4).Draw(t, "area")
		depth := rapid.Float64Range(0.1, 2).Draw(t, "depth")
		pores := rapid.Float64Range(0.2, 1).Draw(t, "porosity")

		loading, err := HydraulicLoading(flow, area)
		require.NoError(t, err)
		volume, err := PoreVolume(Pores{area * depth, pores})
		require.NoError(t, err)
		detention, err := Detention(volume, flow)
		require.NoError(t, err)
		require.InEpsilon(t, depth*pores, loading*detention, 1e-9)
	})
}

func TestPoreVolumeAddsLayers(t *testing.T) {
	// 2 m³ of gravel at 0.4 and 1 m³ at 0.3 hold 0.8 + 0.3 m³; open water holds itself.
	volume, err := PoreVolume(Pores{2, 0.4}, Pores{1, 0.3})
	require.NoError(t, err)
	require.InDelta(t, 1.1, volume, 1e-12)
	volume, err = PoreVolume(Pores{3, 1})
	require.NoError(t, err)
	require.InDelta(t, 3, volume, 1e-12)
}

func TestLoadingRefuses(t *testing.T) {
	refused := map[string]func() (float64, error){
		"no area":               func() (float64, error) { return HydraulicLoading(1e-6, 0) },
		"negative flow":         func() (float64, error) { return HydraulicLoading(-1, 1) },
		"no number":             func() (float64, error) { return HydraulicLoading(math.NaN(), 1) },
		"infinite flow":         func() (float64, error) { return HydraulicLoading(math.Inf(1), 1) },
		"no cross-section":      func() (float64, error) { return OrganicLoad(1e-6, 0.1, 0) },
		"negative BOD":          func() (float64, error) { return OrganicLoad(1e-6, -0.1, 1) },
		"dry":                   func() (float64, error) { return Detention(1, 0) },
		"porosity in percent":   func() (float64, error) { return PoreVolume(Pores{1, 38}) },
		"no pores":              func() (float64, error) { return PoreVolume(Pores{1, 0}) },
		"voids below none":      func() (float64, error) { return PorosityByVoids(-0.1) },
		"voids of no soil":      func() (float64, error) { return PorosityByVoids(38) },
		"negative media volume": func() (float64, error) { return PoreVolume(Pores{-1, 0.4}) },
	}
	requireRefused(t, refused)
}

// requireRefused checks that each call gives an error and no value.
func requireRefused(t *testing.T, calls map[string]func() (float64, error)) {
	t.Helper()
	for name, call := range calls {
		value, err := call()
		require.Error(t, err, name)
		require.Zero(t, value, name)
	}
}
