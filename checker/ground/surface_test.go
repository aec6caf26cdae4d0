package ground_test

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

func TestLevel(t *testing.T) {
	// A pyramid: 0 at the corners of a 4 by 4 square, 2 in its middle.
	pyramid := []ground.Spot{{0, 0, 0}, {4, 0, 0}, {4, 4, 0}, {0, 4, 0}, {2, 2, 2}}
	// The plane through three points, as Schut, Review of interpolation methods
	// for digital terrain models (ISP 1976), eq. 14, has it; the numbers are our
	// own: at (10, 5), 100 − 3/30 × 10 + 2/20 × 5 = 99.5.
	plane := []ground.Spot{{0, 0, 100}, {30, 0, 97}, {0, 20, 102}}
	tests := map[string]struct {
		spots []ground.Spot
		at    geometry.Point
		want  float64
		ok    bool
	}{
		"on a plane":                    {plane, geometry.Point{X: 10, Y: 5}, 100 - 3.0/30*10 + 2.0/20*5, true},
		"at a spot":                     {plane, geometry.Point{X: 30, Y: 0}, 97, true},
		"on the hull":                   {plane, geometry.Point{X: 15, Y: 0}, 98.5, true},
		"on the hull, a slanted edge":   {plane, geometry.Point{X: 30 * 0.7, Y: 20 * 0.3}, 0.7*97 + 0.3*102, true},
		"beside the hull":               {plane, geometry.Point{X: 20, Y: 20}, 0, false},
		"beyond a corner":               {plane, geometry.Point{X: -0.001, Y: -0.001}, 0, false},
		"on top":                        {pyramid, geometry.Point{X: 2, Y: 2}, 2, true},
		"half way up":                   {pyramid, geometry.Point{X: 3, Y: 2}, 1, true},
		"on a ridge":                    {pyramid, geometry.Point{X: 1, Y: 1}, 1, true},
		"a spot given twice counts one": {append(slices.Clone(plane), plane[1]), geometry.Point{X: 10, Y: 5}, 99.5, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			surface, err := ground.New(tt.spots)
			require.NoError(t, err)
			level, ok := surface.Level(tt.at)
			require.Equal(t, tt.ok, ok)
			require.InDelta(t, tt.want, level, 1e-9)
		})
	}
}

// TestPublishedContourFractions: between spots at 863.1 and 867.2 the contours
// 864 and 866 lie at .9/4.1 and 2.9/4.1 of the distance (J. Mahun, Open Access
// Surveying Library, Mapping, chapter E).
func TestPublishedContourFractions(t *testing.T) {
	surface, err := ground.New([]ground.Spot{{0, 0, 863.1}, {100, 0, 867.2}, {50, 40, 870}})
	require.NoError(t, err)
	for contour, fraction := range map[float64]float64{864: 0.9 / 4.1, 866: 2.9 / 4.1} {
		level, ok := surface.Level(geometry.Point{X: 100 * fraction})
		require.True(t, ok)
		require.InDelta(t, contour, level, 1e-9)
	}
}

func TestSpotsWithoutASurface(t *testing.T) {
	tests := map[string][]ground.Spot{
		"none":              nil,
		"two":               {{0, 0, 1}, {1, 0, 1}},
		"two and a repeat":  {{0, 0, 1}, {1, 0, 1}, {0, 0, 1}},
		"in one line":       {{0, 0, 1}, {1, 1, 1}, {2, 2, 5}, {3, 3, 0}},
		"in an upright row": {{7, 0, 1}, {7, 1, 1}, {7, 2, 5}},
	}
	for name, spots := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := ground.New(spots)
			require.ErrorIs(t, err, ground.ErrNoArea)
		})
	}
}

func TestTwoLevelsForOnePlace(t *testing.T) {
	_, err := ground.New([]ground.Spot{{5, 5, 1}, {0, 0, 1}, {1, 0, 1}, {0, 0, 2}})
	var conflict *ground.ConflictError
	require.ErrorAs(t, err, &conflict)
	require.Equal(t, ground.ConflictError{First: 1, Second: 3}, *conflict)
	require.EqualError(t, err, "spot levels 2 and 4 give two levels for one place")
}

func TestBends(t *testing.T) {
	surface, err := ground.New([]ground.Spot{{0, 0, 0}, {4, 0, 0}, {4, 4, 0}, {0, 4, 0}, {2, 2, 2}})
	require.NoError(t, err)
	tests := map[string]struct {
		from, to geometry.Point
		want     []float64
	}{
		"across two ridges":      {geometry.Point{X: 0, Y: 1}, geometry.Point{X: 4, Y: 1}, []float64{1.0 / 4, 3.0 / 4}},
		"over the top":           {geometry.Point{X: 0, Y: 2}, geometry.Point{X: 4, Y: 2}, []float64{0.5}},
		"within one triangle":    {geometry.Point{X: 1, Y: 0.5}, geometry.Point{X: 2, Y: 0.5}, nil},
		"from ridge to ridge":    {geometry.Point{X: 1, Y: 1}, geometry.Point{X: 3, Y: 1}, nil},
		"out over the hull":      {geometry.Point{X: 3.5, Y: 2}, geometry.Point{X: 4.5, Y: 2}, []float64{0.5}},
		"along the hull":         {geometry.Point{X: 1, Y: 0}, geometry.Point{X: 3, Y: 0}, nil},
		"between the same place": {geometry.Point{X: 1, Y: 0.5}, geometry.Point{X: 1, Y: 0.5}, nil},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.InDeltaSlice(t, tt.want, append([]float64{}, surface.Bends(tt.from, tt.to)...), 1e-12)
		})
	}
}

// spotsOn draws spots of three kinds, the hard ones being on a small grid,
// where many lie in a line or on a circle.
func spotsOn(t *rapid.T) []ground.Spot {
	coordinate := rapid.SampledFrom([]*rapid.Generator[float64]{
		rapid.Map(rapid.IntRange(0, 6), func(i int) float64 { return float64(i) * 0.3048 }),
		rapid.Float64Range(-200, 200),
		rapid.Map(rapid.IntRange(0, 40), func(i int) float64 { return 1e6 + float64(i)*1e-6 }),
	}).Draw(t, "kind")
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) ground.Spot {
		return ground.Spot{X: coordinate.Draw(t, "x"), Y: coordinate.Draw(t, "y")}
	}), 3, 20).Draw(t, "spots")
}

// TestDelaunay holds every triangulation against the definition, in exact
// arithmetic of the test's own: triangles turn counterclockwise, no spot lies
// inside a triangle's circle, every spot is used, and the triangles' areas sum
// to the area of the hull.
func TestDelaunay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		drawn := spotsOn(t)
		surface, err := ground.New(drawn)
		var spots []ground.Spot
		for _, s := range drawn {
			if s = micrometres(s); !slices.Contains(spots, s) {
				spots = append(spots, s)
			}
		}
		if err != nil {
			require.ErrorIs(t, err, ground.ErrNoArea)
			require.Zero(t, hullArea(spots).Sign())
			return
		}
		sum, used := new(big.Rat), map[ground.Spot]bool{}
		for _, tri := range surface.Triangles() {
			tri = [3]ground.Spot{micrometres(tri[0]), micrometres(tri[1]), micrometres(tri[2])}
			area := determinant(tri[0], tri[1], tri[2])
			require.Positive(t, area.Sign())
			sum.Add(sum, area)
			for _, s := range spots {
				require.LessOrEqual(t, circle(tri[0], tri[1], tri[2], s).Sign(), 0)
			}
			used[tri[0]], used[tri[1]], used[tri[2]] = true, true, true
		}
		require.Len(t, used, len(spots))
		require.Zero(t, sum.Cmp(hullArea(spots)))
	})
}

// TestARegularGridIsCutTheSameInAnyUnit: four spots at the corners of a square
// lie on one circle, so that either diagonal will do, and rounding must not
// choose it.
func TestARegularGridIsCutTheSameInAnyUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const feet = 0.3048
		dx, dy := float64(rapid.IntRange(-1000, 1000).Draw(t, "dx"))/100, float64(rapid.IntRange(-1000, 1000).Draw(t, "dy"))/100
		var here, there []ground.Spot
		for i := range 16 {
			x, y, z := float64(i%4)*10, float64(i/4)*10, float64(i*i%5)
			here = append(here, ground.Spot{X: x * feet, Y: y * feet, Z: z})
			there = append(there, ground.Spot{X: (x + dx) * feet, Y: (y + dy) * feet, Z: z})
		}
		one, err := ground.New(here)
		require.NoError(t, err)
		other, err := ground.New(there)
		require.NoError(t, err)
		x, y := rapid.Float64Range(0, 30).Draw(t, "x"), rapid.Float64Range(0, 30).Draw(t, "y")
		want, _ := one.Level(geometry.Point{X: x * feet, Y: y * feet})
		got, ok := other.Level(geometry.Point{X: (x + dx) * feet, Y: (y + dy) * feet})
		require.True(t, ok)
		require.InDelta(t, want, got, 1e-4)
	})
}

func TestPlaneIsReproduced(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.Float64Range(-1, 1)
		a, b := slope.Draw(t, "a"), slope.Draw(t, "b")
		plane := func(x, y float64) float64 { return 100 + a*x + b*y }
		coordinate := rapid.Float64Range(-50, 50)
		spots := []ground.Spot{{X: -60, Y: -60}, {X: 60, Y: -60}, {X: 0, Y: 80}}
		for range rapid.IntRange(0, 20).Draw(t, "spots") {
			spots = append(spots, ground.Spot{X: math.Round(coordinate.Draw(t, "x")), Y: math.Round(coordinate.Draw(t, "y"))})
		}
		for i, s := range spots {
			spots[i].Z = plane(s.X, s.Y)
		}
		surface, err := ground.New(spots)
		require.NoError(t, err)
		p := geometry.Point{X: coordinate.Draw(t, "x") / 3, Y: coordinate.Draw(t, "y") / 3}
		level, ok := surface.Level(p)
		require.True(t, ok)
		require.InDelta(t, plane(p.X, p.Y), level, 1e-8)
	})
}

// TestGroundIsStraightBetweenBends: between two bends the level half way is the
// mean of the levels at both.
func TestGroundIsStraightBetweenBends(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		coordinate := rapid.Float64Range(-50, 50)
		spots := []ground.Spot{{X: -100, Y: -100, Z: 1}, {X: 100, Y: -100, Z: 2}, {X: 0, Y: 200, Z: 3}}
		for range rapid.IntRange(0, 20).Draw(t, "spots") {
			spots = append(spots, ground.Spot{X: math.Round(coordinate.Draw(t, "x")), Y: math.Round(coordinate.Draw(t, "y"))})
		}
		surface, err := ground.New(slices.CompactFunc(spots, func(a, b ground.Spot) bool { return a == b }))
		require.NoError(t, err)
		a := geometry.Point{X: coordinate.Draw(t, "x"), Y: coordinate.Draw(t, "y")}
		b := geometry.Point{X: coordinate.Draw(t, "x"), Y: coordinate.Draw(t, "y")}
		level := func(share float64) float64 {
			z, ok := surface.Level(geometry.Point{X: a.X + share*(b.X-a.X), Y: a.Y + share*(b.Y-a.Y)})
			require.True(t, ok)
			return z
		}
		places := append([]float64{0}, append(surface.Bends(a, b), 1)...)
		for i := 1; i < len(places); i++ {
			u, v := places[i-1], places[i]
			require.InDelta(t, (level(u)+level(v))/2, level((u+v)/2), 1e-4)
		}
	})
}

// micrometres gives a spot to the whole micrometre, which is as fine as places
// are told apart.
func micrometres(s ground.Spot) ground.Spot {
	return ground.Spot{X: math.Round(s.X * 1e6), Y: math.Round(s.Y * 1e6), Z: s.Z}
}

func rat(x float64) *big.Rat { return new(big.Rat).SetFloat64(x) }

func product(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }

// determinant is twice the signed area.
func determinant(a, b, c ground.Spot) *big.Rat {
	up := new(big.Rat).Add(product(rat(a.X), rat(b.Y)), product(rat(b.X), rat(c.Y)))
	up.Add(up, product(rat(c.X), rat(a.Y)))
	down := new(big.Rat).Add(product(rat(b.X), rat(a.Y)), product(rat(c.X), rat(b.Y)))
	down.Add(down, product(rat(a.X), rat(c.Y)))
	return up.Sub(up, down)
}

// circle is positive when d lies inside the circle: d's lift below the plane
// through the lifts of a, b and c, by expansion along the lifts.
func circle(a, b, c, d ground.Spot) *big.Rat {
	lift := func(s ground.Spot) *big.Rat {
		return new(big.Rat).Add(product(rat(s.X), rat(s.X)), product(rat(s.Y), rat(s.Y)))
	}
	sum := product(lift(a), determinant(b, c, d))
	sum.Sub(sum, product(lift(b), determinant(a, c, d)))
	sum.Add(sum, product(lift(c), determinant(a, b, d)))
	return sum.Sub(sum, product(lift(d), determinant(a, b, c)))
}

// hullArea is twice the area of the convex hull, by gift wrapping.
func hullArea(spots []ground.Spot) *big.Rat {
	first := slices.MinFunc(spots, func(a, b ground.Spot) int {
		if a.X != b.X {
			return int(math.Copysign(1, a.X-b.X))
		}
		return int(math.Copysign(1, a.Y-b.Y))
	})
	area, here := new(big.Rat), first
	for {
		next := here
		for _, s := range spots {
			side := determinant(here, next, s).Sign()
			if next == here || side < 0 || side == 0 && farther(here, s, next) {
				next = s
			}
		}
		area.Add(area, determinant(first, here, next))
		if here = next; here == first {
			return area
		}
	}
}

func farther(from, a, b ground.Spot) bool {
	return math.Hypot(a.X-from.X, a.Y-from.Y) > math.Hypot(b.X-from.X, b.Y-from.Y)
}

func BenchmarkNew(b *testing.B) {
	for _, side := range []int{6, 70} {
		b.Run(fmt.Sprintf("grid of %d", side*side), func(b *testing.B) {
			var spots []ground.Spot
			for i := range side * side {
				spots = append(spots, ground.Spot{X: float64(i%side) * 5 * 0.3048, Y: float64(i/side) * 5 * 0.3048, Z: float64(i % 7)})
			}
			for b.Loop() {
				_, _ = ground.New(spots)
			}
		})
	}
}
