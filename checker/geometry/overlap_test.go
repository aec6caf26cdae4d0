package geometry_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
)

func TestOverlap(t *testing.T) {
	plot := box(0, 0, 6, 4)
	tests := map[string]struct {
		other  geometry.Shape
		shares bool
	}{
		"the same twice":   {plot, true},
		"apart":            {box(7, 0, 9, 4), false},
		"side by side":     {box(6, 0, 9, 4), false},
		"over a strip":     {box(5, 0, 9, 4), true},
		"across":           {box(2, -1, 4, 5), true},
		"inside":           {box(1, 1, 5, 3), true},
		"round it":         {box(-1, -1, 7, 5), true},
		"a line across it": {geometry.Path(points{{-1, 2}, {7, 2}}), false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.Equal(t, tt.shares, geometry.Overlap(plot, tt.other, 0, plot.Middles()))
			require.Equal(t, tt.shares, geometry.Overlap(tt.other, plot, 0, plot.Middles()), "either way round")
		})
	}
}

// The strip is 1 deep; the middle of a triangle of the plot is 4/3 from its edge.
func TestOverlapByADepth(t *testing.T) {
	plot, strip := box(0, 0, 6, 4), box(5, -1, 9, 5)
	require.True(t, geometry.Overlap(plot, strip, 0.99, nil))
	require.False(t, geometry.Overlap(plot, strip, 1.01, nil))
	require.False(t, geometry.Overlap(plot, plot, 0, nil), "only the edges meet")
	require.True(t, geometry.Overlap(plot, plot, 1.3, plot.Middles()))
	require.False(t, geometry.Overlap(plot, plot, 1.4, plot.Middles()))
}

// Two rectangles share ground where both their spans do.
func TestRectanglesOverlap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.IntRange(-8, 8)
		size := rapid.IntRange(1, 8)
		x, y, u, v := at.Draw(t, "x"), at.Draw(t, "y"), at.Draw(t, "u"), at.Draw(t, "v")
		w, h, m, n := size.Draw(t, "w"), size.Draw(t, "h"), size.Draw(t, "m"), size.Draw(t, "n")
		a, b := box(float64(x), float64(y), float64(x+w), float64(y+h)), box(float64(u), float64(v), float64(u+m), float64(v+n))
		across, along := min(x+w, u+m)-max(x, u), min(y+h, v+n)-max(y, v)
		require.Equal(t, across > 0 && along > 0, geometry.Overlap(a, b, 0, a.Middles()))
		require.False(t, geometry.Overlap(a, b, float64(max(min(w, h), min(m, n)))/2, a.Middles()), "no place of either is deeper")
	})
}

func TestMiddles(t *testing.T) {
	require.Equal(t, []geometry.Point{{1, 1}}, geometry.At(geometry.Point{1, 1}).Middles())
	require.Equal(t, []geometry.Point{{1, 0}, {2, 2}}, geometry.Path(points{{0, 0}, {2, 0}, {2, 4}}).Middles())
	require.Equal(t, []geometry.Point{{2, 1}}, geometry.Outline(points{{0, 0}, {6, 0}, {0, 3}}).Middles())
}

func box(x, y, u, v float64) geometry.Shape {
	return geometry.Outline(points{{x, y}, {u, y}, {u, v}, {x, v}})
}
