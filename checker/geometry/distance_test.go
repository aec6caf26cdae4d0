package geometry_test

import (
	"math"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
)

func TestDistance(t *testing.T) {
	square := geometry.Outline(points{{0, 0}, {4, 0}, {4, 4}, {0, 4}})
	tests := map[string]struct {
		a, b geometry.Shape
		want float64
	}{
		"two points":                      {geometry.At(geometry.Point{0, 0}), geometry.At(geometry.Point{3, 4}), 5},
		"the same point":                  {geometry.At(geometry.Point{3, 4}), geometry.At(geometry.Point{3, 4}), 0},
		"a point inside a ring":           {geometry.At(geometry.Point{1, 1}), square, 0},
		"a point inside, from the edge":   {geometry.At(geometry.Point{1, 2}), square.Edge(), 1},
		"a point on the edge":             {geometry.At(geometry.Point{4, 2}), square, 0},
		"a point beside the edge":         {geometry.At(geometry.Point{6, 2}), square, 2},
		"a point off the corner":          {geometry.At(geometry.Point{7, 8}), square, 5},
		"a point in a notch":              {geometry.At(geometry.Point{4, 3.5}), geometry.Outline(ell), 1},
		"a point beyond the line's end":   {geometry.At(geometry.Point{-3, 4}), geometry.Path(points{{0, 0}, {9, 0}}), 5},
		"crossing lines":                  {geometry.Path(points{{0, 0}, {2, 2}}), geometry.Path(points{{0, 2}, {2, 0}}), 0},
		"parallel lines":                  {geometry.Path(points{{0, 0}, {2, 0}}), geometry.Path(points{{1, 3}, {9, 3}}), 3},
		"lines on one line":               {geometry.Path(points{{0, 0}, {2, 0}}), geometry.Path(points{{5, 0}, {9, 0}}), 3},
		"lines that overlap":              {geometry.Path(points{{0, 0}, {2, 0}}), geometry.Path(points{{1, 0}, {9, 0}}), 0},
		"a line through a ring":           {geometry.Path(points{{-1, 2}, {9, 2}}), square, 0},
		"a line inside a ring":            {geometry.Path(points{{1, 1}, {2, 3}}), square, 0},
		"a ring inside a ring":            {geometry.Outline(points{{1, 1}, {2, 1}, {2, 2}}), square, 0},
		"rings that share an edge":        {geometry.Outline(points{{4, 0}, {8, 0}, {8, 4}, {4, 4}}), square, 0},
		"rings apart":                     {geometry.Outline(points{{7, 8}, {9, 8}, {9, 9}}), square, math.Hypot(3, 4)},
		"a slanted edge touched half way": {geometry.At(geometry.Point{0.1, 0.3}), geometry.Path(points{{0, 0}, {0.3, 0.9}}), 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.InDelta(t, tt.want, geometry.Distance(tt.a, tt.b), 1e-12)
			require.InDelta(t, tt.want, geometry.Distance(tt.b, tt.a), 1e-12)
		})
	}
}

func TestDistanceIsSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := shape(t, "a"), shape(t, "b")
		require.InDelta(t, geometry.Distance(a, b), geometry.Distance(b, a), 1e-9)
	})
}

func TestDistanceKnowsNoPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, by := shape(t, "a"), shape(t, "b"), place(t, "by")
		angle := rapid.Float64Range(0, 2*math.Pi).Draw(t, "angle")
		turn := func(p geometry.Point) geometry.Point {
			sin, cos := math.Sincos(angle)
			return geometry.Point{p.X*cos - p.Y*sin + by.X, p.X*sin + p.Y*cos + by.Y}
		}
		require.InDelta(t, geometry.Distance(a, b), geometry.Distance(moved(a, turn), moved(b, turn)), 1e-6+1e-9)
	})
}

func TestDistanceGrowsWithTheDrawing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := shape(t, "a"), shape(t, "b")
		k := rapid.Float64Range(0.5, 20).Draw(t, "k")
		grow := func(p geometry.Point) geometry.Point { return geometry.Point{p.X * k, p.Y * k} }
		require.InDelta(t, k*geometry.Distance(a, b), geometry.Distance(moved(a, grow), moved(b, grow)), (k+1)*geometry.Resolution)
	})
}

func TestTriangleInequality(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, c := shape(t, "a"), shape(t, "c")
		b := geometry.At(place(t, "b"))
		require.LessOrEqual(t, geometry.Distance(a, c), geometry.Distance(a, b)+geometry.Distance(b, c)+3*geometry.Resolution)
	})
}

// TestDistanceAgreesWithAnotherLibrary checks the distance, and the nearest
// places, against an implementation that shares no line with this one.
func TestDistanceAgreesWithAnotherLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := shape(t, "a"), shape(t, "b")
		want, ok := geom.Distance(foreign(t, a), foreign(t, b))
		require.True(t, ok)
		require.InDelta(t, want, geometry.Distance(a, b), geometry.Resolution+1e-9)

		onA, onB := geometry.Nearest(a, b)
		require.InDelta(t, want, math.Hypot(onA.X-onB.X, onA.Y-onB.Y), 1e-9)
		require.LessOrEqual(t, geometry.Distance(geometry.At(onA), a), 1e-9)
		require.LessOrEqual(t, geometry.Distance(geometry.At(onB), b), 1e-9)
	})
}

func foreign(t require.TestingT, s geometry.Shape) geom.Geometry {
	var flat []float64
	for _, p := range s.Points() {
		flat = append(flat, p.X, p.Y)
	}
	switch {
	case s.Area() > 0:
		line := geom.NewLineString(geom.NewSequence(append(flat, flat[0], flat[1]), geom.DimXY))
		ring := geom.NewPolygon([]geom.LineString{line})
		require.NoError(t, ring.Validate())
		return ring.AsGeometry()
	case len(flat) == 2:
		return geom.XY{X: flat[0], Y: flat[1]}.AsPoint().AsGeometry()
	default:
		return geom.NewLineString(geom.NewSequence(flat, geom.DimXY)).AsGeometry()
	}
}

func BenchmarkDistance(b *testing.B) {
	bed := geometry.Outline(points{{0, 0}, {6, 0}, {6, 2}, {0, 2}})
	house := geometry.Outline(points{{20, 5}, {32, 5}, {32, 15}, {26, 15}, {26, 12}, {20, 12}})
	for b.Loop() {
		geometry.Distance(bed, house)
	}
}
