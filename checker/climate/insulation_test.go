package climate_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/climate"
)

// Alaska Administrative Code 18 AAC 72.630(c): 1 in of insulation may replace
// 1 ft of soil; so 2 in replace 2 ft.
func TestSoilForInsulation(t *testing.T) {
	const inch = 0.0254
	for inches, feet := range map[float64]float64{0: 0, 1: 1, 2: 2, 4: 4} {
		soil, err := climate.SoilForInsulation(inches * inch)
		require.NoError(t, err)
		require.InDelta(t, feet*12*inch, soil, 1e-12)
	}
}

func TestSoilForInsulationOutOfRange(t *testing.T) {
	for _, thickness := range []float64{-0.01, 1.01} {
		_, err := climate.SoilForInsulation(thickness)
		require.Error(t, err)
	}
}
