package ground_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

type points = []geometry.Point

func contours(t require.TestingT, interval float64, spots ...ground.Spot) []ground.Contour {
	surface, err := ground.New(spots)
	require.NoError(t, err)
	lines, err := surface.Contours(interval)
	require.NoError(t, err)
	return lines
}

func TestContours(t *testing.T) {
	tests := map[string]struct {
		interval float64
		spots    []ground.Spot
		want     []ground.Contour
	}{
		"a pyramid": {1, []ground.Spot{{0, 0, 0}, {4, 0, 0}, {4, 4, 0}, {0, 4, 0}, {2, 2, 2}}, []ground.Contour{
			{1, points{{X: 1, Y: 1}, {X: 3, Y: 1}, {X: 3, Y: 3}, {X: 1, Y: 3}}, true}}},
		"a pit": {1, []ground.Spot{{0, 0, 0.5}, {4, 0, 0.5}, {4, 4, 0.5}, {0, 4, 0.5}, {2, 2, -1.5}}, []ground.Contour{
			{-1, points{{X: 1.5, Y: 1.5}, {X: 1.5, Y: 2.5}, {X: 2.5, Y: 2.5}, {X: 2.5, Y: 1.5}}, true},
			{0, points{{X: 0.5, Y: 0.5}, {X: 0.5, Y: 3.5}, {X: 3.5, Y: 3.5}, {X: 3.5, Y: 0.5}}, true}}},
		"a hillside, its higher side to the left": {2, []ground.Spot{{0, 0, 1}, {0, 6, 7}, {6, 0, 1}}, []ground.Contour{
			{2, points{{X: 0, Y: 1}, {X: 5, Y: 1}}, false},
			{4, points{{X: 0, Y: 3}, {X: 3, Y: 3}}, false},
			{6, points{{X: 0, Y: 5}, {X: 1, Y: 5}}, false}}},
		"level ground at a contour's level":  {1, []ground.Spot{{0, 0, 1}, {1, 0, 1}, {0, 1, 1}}, nil},
		"a single peak at a contour's level": {2, []ground.Spot{{0, 0, 1}, {4, 0, 1}, {4, 4, 1}, {0, 4, 1}, {2, 2, 2}}, nil},
		"a level ridge, along both its sides": {2, []ground.Spot{{0, 0, 1}, {4, 0, 2}, {4, 4, 2}, {8, 0, 1}}, []ground.Contour{
			{2, points{{X: 4, Y: 4}, {X: 4, Y: 0}}, false}, {2, points{{X: 4, Y: 0}, {X: 4, Y: 4}}, false}}},
		"an interval wider than the ground is": {50, []ground.Spot{{0, 0, 1}, {1, 0, 2}, {0, 1, 3}}, nil},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.Equal(t, tt.want, contours(t, tt.interval, tt.spots...))
		})
	}
}

// TestContoursBetweenTwoLevels: between 863.1 and 867.2, the contours 864 and 866
// lie at .2195 and .7073 of the way (J. Mahun, Open Access Surveying Library,
// Mapping, chapter E), to the four decimals printed.
func TestContoursBetweenTwoLevels(t *testing.T) {
	lines := contours(t, 2, ground.Spot{X: 0, Z: 863.1}, ground.Spot{X: 1, Z: 867.2}, ground.Spot{X: 0, Y: 1, Z: 863.1})
	require.Len(t, lines, 2)
	for i, want := range []float64{0.2195, 0.7073} {
		require.Equal(t, 864+2*float64(i), lines[i].Level)
		require.InDelta(t, want, max(lines[i].Line[0].X, lines[i].Line[1].X), 0.00005)
	}
}

func TestContoursThatCannotBeDrawn(t *testing.T) {
	surface, err := ground.New([]ground.Spot{{0, 0, 0}, {1, 0, 20}, {0, 1, 0}})
	require.NoError(t, err)
	for _, interval := range []float64{0, -1, 0.019, math.NaN()} {
		_, err := surface.Contours(interval)
		require.ErrorIs(t, err, ground.ErrInterval)
	}
	lines, err := surface.Contours(0.02)
	require.NoError(t, err)
	require.Len(t, lines, 999, "from 0.02 to 19.98; the ground at 0 is level, and at 20 there is a single place")
}

// TestContoursKeepTheirLevel: every point and the middle of every step of a
// contour lies on ground of its level, so none lies beyond the hull; open lines
// begin and end on the edge of the triangulation.
func TestContoursKeepTheirLevel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		spots := hillside(t)
		surface, err := ground.New(spots)
		require.NoError(t, err)
		lines, err := surface.Contours(rapid.Float64Range(0.5, 5).Draw(t, "interval"))
		require.NoError(t, err)
		again, err := surface.Contours(1)
		require.NoError(t, err)
		other, err := surface.Contours(1)
		require.NoError(t, err)
		require.Equal(t, again, other)
		for _, c := range append(lines, again...) {
			for i, p := range c.Line {
				requireLevel(t, surface, c.Level, p)
				if i > 0 {
					q := c.Line[i-1]
					requireLevel(t, surface, c.Level, geometry.Point{X: (p.X + q.X) / 2, Y: (p.Y + q.Y) / 2})
				}
			}
			if !c.Closed {
				require.True(t, onHull(surface, c.Line[0]) && onHull(surface, c.Line[len(c.Line)-1]))
			}
		}
	})
}

// hillside draws gentle ground within a triangle, some levels whole.
func hillside(t *rapid.T) []ground.Spot {
	spots := []ground.Spot{{-100, -100, 1}, {100, -100, 2}, {0, 200, 3}}
	for i := range rapid.IntRange(0, 20).Draw(t, "spots") {
		x, y := rapid.IntRange(-5, 5).Draw(t, "x"), rapid.IntRange(-5, 5).Draw(t, "y")
		spots = append(spots, ground.Spot{X: float64(10*x) + float64(i)/10, Y: float64(10 * y), Z: float64(rapid.IntRange(-4, 8).Draw(t, "z")) / 2})
	}
	return spots
}

func requireLevel(t require.TestingT, surface *ground.Surface, level float64, p geometry.Point) {
	got, ok := surface.Level(p)
	require.True(t, ok)
	require.InDelta(t, level, got, 1e-4)
}

func onHull(surface *ground.Surface, p geometry.Point) bool {
	for _, d := range (points{{X: 1e-3}, {X: -1e-3}, {Y: 1e-3}, {Y: -1e-3}}) {
		if _, ok := surface.Level(geometry.Point{X: p.X + d.X, Y: p.Y + d.Y}); !ok {
			return true
		}
	}
	return false
}

// TestContoursOfAPlane are straight, parallel and an interval apart.
func TestContoursOfAPlane(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle, slope := rapid.Float64Range(0, 2*math.Pi).Draw(t, "angle"), rapid.Float64Range(0.05, 0.5).Draw(t, "slope")
		up := geometry.Point{X: math.Cos(angle), Y: math.Sin(angle)}
		spots := hillside(t)
		for i, s := range spots {
			spots[i].Z = 100 + slope*(up.X*s.X+up.Y*s.Y)
		}
		for _, c := range contours(t, 1, spots...) {
			require.False(t, c.Closed)
			for _, p := range c.Line {
				require.InDelta(t, (c.Level-100)/slope, up.X*p.X+up.Y*p.Y, 1e-5)
			}
			first, last := c.Line[0], c.Line[len(c.Line)-1]
			require.Positive(t, (last.X-first.X)*up.Y-(last.Y-first.Y)*up.X, "higher ground to the left")
		}
	})
}
