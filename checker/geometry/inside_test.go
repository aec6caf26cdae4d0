package geometry_test

import (
	"math"
	"slices"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
)

func TestInside(t *testing.T) {
	// Across the notch the farthest place is as far, d, from one side as from the
	// other: 2 + d = 4 − 2d/3, so d = 1.2.
	lot := geometry.Outline(ell)
	tests := map[string]struct {
		shape   geometry.Shape
		inside  bool
		outside float64 // how far the farthest point lies outside
		clear   float64 // of the edge, from inside
	}{
		"a point inside":                  {geometry.At(geometry.Point{1, 1}), true, 0, 1},
		"a point on the edge":             {geometry.At(geometry.Point{6, 1}), true, 0, 0},
		"a point outside":                 {geometry.At(geometry.Point{9, 6}), false, 5, 0},
		"a line along the edge":           {geometry.Path(points{{1, 0}, {5, 0}}), true, 0, 0},
		"a line to the edge":              {geometry.Path(points{{1, 1}, {6, 1}}), true, 0, 0},
		"a line over the edge":            {geometry.Path(points{{1, 1}, {8, 1}}), false, 2, 0},
		"a line across the notch":         {geometry.Path(points{{3, 4}, {6, 2}}), false, 1.2, 0},
		"a line round the notch":          {geometry.Path(points{{2, 3}, {2, 1}, {5, 1}}), true, 0, 1},
		"a ring inside":                   {geometry.Outline(points{{0.5, 0.5}, {1, 0.5}, {1, 1}}), true, 0, 0.5},
		"a ring that is the lot":          {lot, true, 0, 0},
		"a ring over one corner":          {geometry.Outline(points{{5, 1}, {7, 1}, {7, 3}}), false, math.Sqrt2, 0},
		"a ring that encloses the lot":    {geometry.Outline(points{{-1, -1}, {7, -1}, {7, 5}, {-1, 5}}), false, math.Hypot(1, 3), 0},
		"a ring with its corners on land": {geometry.Outline(points{{0, 0}, {6, 0}, {6, 2}, {3, 4}, {0, 4}}), false, 1.2, 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.Equal(t, tt.inside, geometry.Inside(tt.shape, lot))
			require.InDelta(t, tt.outside, geometry.FarthestOutside(tt.shape, lot), 0.01, "a thousandth of the size")
			require.InDelta(t, tt.clear, geometry.ClearOfEdge(tt.shape, lot), 1e-12)
		})
	}
}

// TestFarthestPointBesideANotch: the corners of the line and of the bar all
// lie on the land, and the farthest point lies half way across the notch.
//
//	3 ┌─┐   ┌─┐
//	  │ │   │ │   the notch is 4 wide and 2 deep
//	1 │ └───┘ │
//	0 └───────┘
//	  0 1   5 6
func TestFarthestPointBesideANotch(t *testing.T) {
	lot := geometry.Outline(points{{0, 0}, {6, 0}, {6, 3}, {5, 3}, {5, 1}, {1, 1}, {1, 3}, {0, 3}})
	line := geometry.Path(points{{1, 3}, {5, 3}})
	require.False(t, geometry.Inside(line, lot))
	require.InDelta(t, 2, geometry.FarthestOutside(line, lot), 4.0/1000, "equally far from both sides and the bottom")

	bar := geometry.Outline(points{{0, 2}, {6, 2}, {6, 2.5}, {0, 2.5}})
	require.False(t, geometry.Inside(bar, lot))
	require.InDelta(t, 1.5, geometry.FarthestOutside(bar, lot), 6.1/1000, "its top edge above the bottom of the notch")
}

// TestEdgesOnSlantsCountAsInside: a corner put on a slanted edge of the lot is
// rounded to one side or the other.
func TestEdgesOnSlantsCountAsInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 10, 40)
		k := rapid.IntRange(0, len(ring)-1).Draw(t, "edge")
		share := rapid.Float64Range(0, 1).Draw(t, "share")
		a, b := ring[k], ring[(k+1)%len(ring)]
		p := geometry.Point{a.X + share*(b.X-a.X), a.Y + share*(b.Y-a.Y)}
		lot := geometry.Outline(ring)
		require.True(t, geometry.Inside(geometry.At(p), lot))
		require.True(t, geometry.Inside(geometry.Path(points{a, p, b}), lot))
		require.True(t, geometry.Inside(geometry.Outline(points{{0, 0}, a, p}), lot))
		require.Zero(t, geometry.FarthestOutside(geometry.Outline(points{{0, 0}, a, p}), lot))
	})
}

func TestInsideKnowsNoOrientation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 10, 40)
		backwards := slices.Clone(ring)
		slices.Reverse(backwards)
		s := shape(t, "s")
		require.Equal(t, geometry.Inside(s, geometry.Outline(ring)), geometry.Inside(s, geometry.Outline(backwards)))
		require.InDelta(t, geometry.FarthestOutside(s, geometry.Outline(ring)), geometry.FarthestOutside(s, geometry.Outline(backwards)), 0.15)
	})
}

// TestInsideAgreesWithAnotherLibrary leaves out what lies within rounding of
// the edge, where the other library splits hairs.
func TestInsideAgreesWithAnotherLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lot, s := geometry.Outline(star(t, 10, 60)), shape(t, "s")
		want, err := geom.Covers(foreign(t, lot), foreign(t, s))
		require.NoError(t, err)
		if want || geometry.FarthestOutside(s, lot) > 0.001 {
			require.Equal(t, want, geometry.Inside(s, lot))
		}
	})
}

// TestFarthestOutsideAgreesWithSampling walks a ring's edge and its inside in
// small steps.
func TestFarthestOutsideAgreesWithSampling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lot := geometry.Outline(star(t, 5, 30))
		ring := star(t, 5, 30)
		sampled := 0.0
		for i, p := range ring {
			q := ring[(i+1)%len(ring)]
			for k := range 21 {
				for depth := range 11 {
					u, v := float64(k)/20, float64(depth)/10
					x := geometry.Point{v * (p.X + u*(q.X-p.X)), v * (p.Y + u*(q.Y-p.Y))}
					sampled = max(sampled, geometry.Distance(geometry.At(x), lot))
				}
			}
		}
		got := geometry.FarthestOutside(geometry.Outline(ring), lot)
		require.GreaterOrEqual(t, got, sampled-0.1, "a thousandth of the size, which is under 100")
		require.LessOrEqual(t, got, sampled+5, "no farther than the samples but for their spacing")
	})
}
