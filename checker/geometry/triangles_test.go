package geometry_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
)

func TestMean(t *testing.T) {
	tests := map[string]struct {
		ring  points
		at    []float64
		want  float64
		delta float64
	}{
		"a triangle": {points{{0, 0}, {4, 0}, {0, 3}}, []float64{1, 2, 6}, (1.0 + 2 + 6) / 3, 1e-12},
		"a rectangle has the mean of its corners": {
			points{{0, 0}, {9, 0}, {9, 2}, {0, 2}}, []float64{12, 12, 12, 24}, (12.0 + 12 + 12 + 24) / 4, 1e-12},
		"a corner drawn on a straight edge counts": {
			// Two triangles of 2 × 2 either side of the middle, 3 deep there and 0 elsewhere.
			points{{0, 0}, {2, 0}, {4, 0}, {2, 2}}, []float64{0, 3, 0, 0}, (0.0 + 3 + 0) / 3, 1e-12},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.InDelta(t, tt.want, geometry.Outline(tt.ring).Mean(tt.at), tt.delta)
		})
	}
}

// TestPublishedGridMethod is one cell of a borrow pit, as a worked answer of a
// surveying course has it: corners at 87.6, 87.6, 87.6 and 88.6 ft, average
// 87.85, filled to 90 over 50 by 50 ft: 2.15 ft, 199 yd³.
func TestPublishedGridMethod(t *testing.T) {
	cell := geometry.Outline(points{{0, 0}, {50, 0}, {50, 50}, {0, 50}})
	mean := cell.Mean([]float64{87.6, 87.6, 87.6, 88.6})
	require.InDelta(t, 87.85, mean, 1e-9)
	require.InDelta(t, 199, (90-mean)*cell.Area()/27, 0.5, "printed to the cubic yard")
}

func TestTrianglesCoverTheRing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 1, 40)
		s := geometry.Outline(ring)
		total := 0.0
		for _, tri := range s.Triangles() {
			a, b, c := ring[tri.Corners[0]], ring[tri.Corners[1]], ring[tri.Corners[2]]
			area := signed(points{a, b, c})
			require.Positive(t, area)
			total += tri.Weight * area
		}
		require.InDelta(t, s.Area(), total, 1e-6)
	})
}

// TestMeanOfAPlane: over any ring, the mean of a plane is its height at the
// centroid, by the closed formula for a polygon's centroid.
func TestMeanOfAPlane(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := refined(t, star(t, 5, 40))
		slope := rapid.Float64Range(-1, 1)
		a, b, c := slope.Draw(t, "a"), slope.Draw(t, "b"), rapid.Float64Range(-100, 100).Draw(t, "c")
		plane := func(x, y float64) float64 { return a*x + b*y + c }
		at := make([]float64, len(ring))
		for i, p := range ring {
			at[i] = plane(p.X, p.Y)
		}
		require.InDelta(t, plane(centroid(ring)), geometry.Outline(ring).Mean(at), 1e-4)
	})
}

func TestMeanKnowsNoOrientation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 5, 40)
		at := make([]float64, len(ring))
		for i := range at {
			at[i] = rapid.Float64Range(0, 3).Draw(t, "depth")
		}
		want := geometry.Outline(ring).Mean(at)
		slices.Reverse(ring)
		slices.Reverse(at)
		require.InDelta(t, want, geometry.Outline(ring).Mean(at), 1e-9)
		require.LessOrEqual(t, want, slices.Max(at)+1e-9)
		require.GreaterOrEqual(t, want, slices.Min(at)-1e-9)
	})
}

// refined puts further corners on the edges of a ring, where rounding leaves
// them a hair to one side or the other.
func refined(t *rapid.T, ring points) points {
	var finer points
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		finer = append(finer, p)
		for k := range rapid.IntRange(0, 3).Draw(t, "further") {
			u := float64(k+1) / 4
			finer = append(finer, geometry.Point{p.X + u*(q.X-p.X), p.Y + u*(q.Y-p.Y)})
		}
	}
	return finer
}

func centroid(ring points) (x, y float64) {
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		w := p.X*q.Y - q.X*p.Y
		x += (p.X + q.X) * w
		y += (p.Y + q.Y) * w
	}
	return x / (6 * signed(ring)), y / (6 * signed(ring))
}

func TestTrianglesOfAnEmptyRing(t *testing.T) {
	require.Empty(t, geometry.Outline(nil).Triangles())
	require.Empty(t, geometry.Outline(points{{1, 1}, {2, 2}}).Triangles())
	require.False(t, math.IsNaN(geometry.Outline(nil).Area()))
}
