package ground_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

func rectangle(x, y, width, height float64) geometry.Shape {
	return geometry.Outline([]geometry.Point{{X: x, Y: y}, {X: x + width, Y: y}, {X: x + width, Y: y + height}, {X: x, Y: y + height}})
}

func TestSteepest(t *testing.T) {
	// Level from x = 0 to 10, from there to 20 a rise of 3 in 10.
	bank, err := ground.New([]ground.Spot{{0, 0, 5}, {0, 10, 5}, {10, 0, 5}, {10, 10, 5}, {20, 0, 8}, {20, 10, 8}})
	require.NoError(t, err)
	tests := map[string]struct {
		shape geometry.Shape
		want  float64
		ok    bool
	}{
		"on the level":           {rectangle(1, 1, 8, 8), 0, true},
		"on the bank":            {rectangle(12, 1, 2, 2), 0.3, true},
		"inside one triangle":    {rectangle(18, 4, 0.5, 0.5), 0.3, true},
		"across the foot":        {rectangle(8, 1, 4, 2), 0.3, true},
		"a line on the bank":     {geometry.Path([]geometry.Point{{X: 15, Y: 1}, {X: 15, Y: 9}}), 0.3, true},
		"a point":                {geometry.At(geometry.Point{X: 5, Y: 5}), 0, true},
		"beyond the spot levels": {rectangle(18, 1, 4, 2), 0, false},
		"nothing":                {geometry.Shape{}, 0, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			slope, ok := bank.Steepest(tt.shape)
			require.Equal(t, tt.ok, ok)
			require.InDelta(t, tt.want, slope, 1e-9)
		})
	}
}

// TestAPlaneIsAsSteepAsItsGradient whichever way it falls.
func TestAPlaneIsAsSteepAsItsGradient(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y := rapid.Float64Range(-1, 1).Draw(t, "x"), rapid.Float64Range(-1, 1).Draw(t, "y")
		var spots []ground.Spot
		for _, p := range [][2]float64{{0, 0}, {30, 0}, {0, 30}, {30, 30}, {12, 17}} {
			spots = append(spots, ground.Spot{X: p[0], Y: p[1], Z: x*p[0] + y*p[1]})
		}
		surface, err := ground.New(spots)
		require.NoError(t, err)
		slope, ok := surface.Steepest(rectangle(5, 5, 20, 20))
		require.True(t, ok)
		require.InDelta(t, math.Hypot(x, y), slope, 1e-9)
	})
}
