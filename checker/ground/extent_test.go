package ground_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// TestUnder: a house roof, level at 1 along the ridge x = 4, falling to 0 at x = 0
// and to −1 at x = 8.
func TestUnder(t *testing.T) {
	surface, err := ground.New([]ground.Spot{{0, 0, 0}, {4, 0, 1}, {8, 0, -1}, {0, 8, 0}, {4, 8, 1}, {8, 8, -1}})
	require.NoError(t, err)
	tests := map[string]struct {
		shape geometry.Shape
		want  ground.Extent
	}{
		"one side":              {geometry.Outline(points{{X: 1, Y: 1}, {X: 3, Y: 1}, {X: 3, Y: 5}, {X: 1, Y: 5}}), ground.Extent{Lowest: 0.25, Highest: 0.75, Flattest: 0.25, Steepest: 0.25}},
		"up to the ridge":       {geometry.Outline(points{{X: 1, Y: 1}, {X: 4, Y: 1}, {X: 4, Y: 5}, {X: 1, Y: 5}}), ground.Extent{Lowest: 0.25, Highest: 1, Flattest: 0.25, Steepest: 0.25}},
		"over the ridge":        {geometry.Outline(points{{X: 2, Y: 1}, {X: 6, Y: 1}, {X: 6, Y: 5}}), ground.Extent{Lowest: 0, Highest: 1, Flattest: 0.25, Steepest: 0.5}},
		"a bay over the ridge":  {geometry.Outline(points{{X: 1, Y: 1}, {X: 7, Y: 1}, {X: 7, Y: 2}, {X: 3, Y: 2}, {X: 3, Y: 5}, {X: 1, Y: 5}}), ground.Extent{Lowest: -0.5, Highest: 1, Flattest: 0.25, Steepest: 0.5}},
		"a line over the ridge": {geometry.Path(points{{X: 2, Y: 1}, {X: 6, Y: 3}}), ground.Extent{Lowest: 0, Highest: 1, Flattest: 0.25, Steepest: 0.5}},
		"a line down one side":  {geometry.Path(points{{X: 5, Y: 1}, {X: 6, Y: 3}}), ground.Extent{Lowest: 0, Highest: 0.5, Flattest: 0.5, Steepest: 0.5}},
		"a point":               {geometry.At(geometry.Point{X: 1, Y: 2}), ground.Extent{Lowest: 0.25, Highest: 0.25, Flattest: 0.25, Steepest: 0.25}},
		"a point on the hull":   {geometry.At(geometry.Point{X: 8, Y: 3}), ground.Extent{Lowest: -1, Highest: -1, Flattest: 0.5, Steepest: 0.5}},
		"all of it":             {geometry.Outline(points{{X: 0, Y: 0}, {X: 8, Y: 0}, {X: 8, Y: 8}, {X: 0, Y: 8}}), ground.Extent{Lowest: -1, Highest: 1, Flattest: 0.25, Steepest: 0.5}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			got, ok := surface.Under(tt.shape)
			require.True(t, ok)
			require.InDeltaSlice(t, extents(tt.want), extents(got), 1e-9)
		})
	}
	for name, shape := range map[string]geometry.Shape{
		"outside":          geometry.At(geometry.Point{X: 9, Y: 3}),
		"a corner outside": geometry.Outline(points{{X: 1, Y: 1}, {X: 9, Y: 1}, {X: 3, Y: 5}}),
		"nothing":          {},
	} {
		t.Run(name, func(t *testing.T) {
			_, ok := surface.Under(shape)
			require.False(t, ok)
		})
	}
}

func extents(e ground.Extent) []float64 {
	return []float64{e.Lowest, e.Highest, e.Flattest, e.Steepest}
}

// TestUnderAgreesWithSampling: no place in a ring is higher, lower, and none of its
// corners missed; a narrower ring has no wider extent.
func TestUnderAgreesWithSampling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		surface, err := ground.New(hillside(t))
		require.NoError(t, err)
		x, y := rapid.Float64Range(-20, 20).Draw(t, "x"), rapid.Float64Range(-20, 20).Draw(t, "y")
		w, h := rapid.Float64Range(0.1, 20).Draw(t, "w"), rapid.Float64Range(0.1, 20).Draw(t, "h")
		ring := func(w, h float64) geometry.Shape {
			return geometry.Outline(points{{X: x, Y: y}, {X: x + w, Y: y}, {X: x + w, Y: y + h}, {X: x, Y: y + h}})
		}
		e, ok := surface.Under(ring(w, h))
		require.True(t, ok)
		least, greatest := math.Inf(1), math.Inf(-1)
		for i := range 21 {
			for k := range 21 {
				level, ok := surface.Level(geometry.Point{X: x + w*float64(i)/20, Y: y + h*float64(k)/20})
				require.True(t, ok)
				least, greatest = min(least, level), max(greatest, level)
			}
		}
		require.LessOrEqual(t, e.Lowest, least+1e-4)
		require.GreaterOrEqual(t, e.Highest, greatest-1e-4)
		require.LessOrEqual(t, greatest-least, e.Steepest*math.Hypot(w, h)+1e-4)

		within, ok := surface.Under(ring(w/2, h/2))
		require.True(t, ok)
		require.GreaterOrEqual(t, within.Lowest, e.Lowest-1e-6)
		require.LessOrEqual(t, within.Highest, e.Highest+1e-6)
		require.GreaterOrEqual(t, within.Flattest, e.Flattest-1e-6)
		require.LessOrEqual(t, within.Steepest, e.Steepest+1e-6)
	})
}
