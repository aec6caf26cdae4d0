package geometry_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
)

type points = []geometry.Point

// ell is a room with a notch: 6 by 4 with the upper right 3 by 2 cut out.
//
//	4 ┌──┐
//	2 │  └──┐
//	0 └─────┘
//	  0  3  6
var ell = points{{0, 0}, {6, 0}, {6, 2}, {3, 2}, {3, 4}, {0, 4}}

func TestArea(t *testing.T) {
	tests := map[string]struct {
		shape geometry.Shape
		want  float64
	}{
		"a point has none":       {geometry.At(geometry.Point{1, 2}), 0},
		"a line has none":        {geometry.Path(points{{0, 0}, {5, 0}, {5, 5}}), 0},
		"a closed edge has none": {geometry.Outline(ell).Edge(), 0},
		"a ring with a notch":    {geometry.Outline(ell), 6*4 - 3*2},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) { require.Equal(t, tt.want, tt.shape.Area()) })
	}
}

func TestPublishedAreas(t *testing.T) {
	// J. Mahun, Open Access Surveying Library, Traverse computations, chapter G,
	// example 7: coordinates in feet as north, east; the cross products as printed
	// there, to the tenth.
	a, b := geometry.Point{2000.000, 500.000}, geometry.Point{1561.426, 323.614}
	c, d := geometry.Point{1488.321, 526.996}, geometry.Point{1686.956, 719.336}
	down := 647228.0 + 822865.2 + 1070602.9 + 843478.0
	up := 780713.0 + 481641.5 + 889019.1 + 1438672.0
	printed := (down - up) / 2
	require.InDelta(t, math.Abs(printed), geometry.Outline(points{a, b, c, d}).Area(), 8*0.06/2,
		"eight products, each printed within 0.06, halved")

	// A quadrilateral worked in a surveying examples page (area computations by
	// coordinates), printed as about .174 acre; 1 acre = 43,560 ft².
	quadrilateral := geometry.Outline(points{{100, 200}, {180, 250}, {140, 320}, {60, 270}})
	require.InDelta(t, 0.174, quadrilateral.Area()/43560, 0.0005, "printed to three decimals")
}

func TestLength(t *testing.T) {
	require.Equal(t, 0.0, geometry.At(geometry.Point{3, 3}).Length())
	require.Equal(t, 3.0+4.0, geometry.Path(points{{0, 0}, {3, 0}, {3, 4}}).Length())
	require.Equal(t, 2*6.0+2*4.0, geometry.Outline(ell).Length())
}

// TestAreaAddsUp cuts an outline that bulges everywhere in two from corner to
// corner.
func TestAreaAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 1, 1)
		stretch := rapid.Float64Range(0.1, 10).Draw(t, "stretch")
		for i := range ring {
			ring[i].X *= stretch
		}
		cut := rapid.IntRange(2, len(ring)-2).Draw(t, "cut")
		one := geometry.Outline(ring[:cut+1])
		other := geometry.Outline(append(slices.Clone(ring[cut:]), ring[0]))
		require.InDelta(t, geometry.Outline(ring).Area(), one.Area()+other.Area(), 1e-9)
	})
}

func TestAreaKnowsNoOrientation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t, 0.2, 1)
		backwards := slices.Clone(ring)
		slices.Reverse(backwards)
		require.InDelta(t, geometry.Outline(ring).Area(), geometry.Outline(backwards).Area(), 1e-9)
	})
}

// signed is the shoelace formula as every handbook has it.
func signed(ring points) float64 {
	twice := 0.0
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		twice += p.X*q.Y - q.X*p.Y
	}
	return twice / 2
}

// star draws a simple ring round the origin, its corners at growing angles and
// between the two radii; counterclockwise.
func star(t *rapid.T, inner, outer float64) points {
	n := rapid.IntRange(4, 12).Draw(t, "corners")
	ring := make(points, n)
	for i := range ring {
		angle := 2 * math.Pi * float64(i) / float64(n)
		r := rapid.Float64Range(inner, outer).Draw(t, "radius")
		ring[i] = geometry.Point{r * math.Cos(angle), r * math.Sin(angle)}
	}
	return ring
}

// shape draws a point, a line or a ring, somewhere near the origin.
func shape(t *rapid.T, name string) geometry.Shape {
	at := place(t, name)
	switch rapid.SampledFrom([]string{"point", "line", "ring"}).Draw(t, name) {
	case "point":
		return geometry.At(at)
	case "line":
		return geometry.Path(rapid.SliceOfN(rapid.Custom(func(t *rapid.T) geometry.Point { return place(t, "p") }), 2, 6).Draw(t, name))
	default:
		return moved(geometry.Outline(star(t, 2, 20)), func(p geometry.Point) geometry.Point {
			return geometry.Point{p.X + at.X, p.Y + at.Y}
		})
	}
}

func place(t *rapid.T, name string) geometry.Point {
	coordinate := rapid.Float64Range(-50, 50)
	return geometry.Point{coordinate.Draw(t, name), coordinate.Draw(t, name)}
}

// moved gives a shape with each of its points moved. What kind of shape it is
// shows in its area and the number of its points.
func moved(s geometry.Shape, move func(geometry.Point) geometry.Point) geometry.Shape {
	ps := make(points, len(s.Points()))
	for i, p := range s.Points() {
		ps[i] = move(p)
	}
	if s.Area() > 0 {
		return geometry.Outline(ps)
	}
	return geometry.Path(ps)
}
