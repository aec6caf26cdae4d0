package earthwork_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/ground"
)

type points = []geometry.Point

var (
	rectangle = points{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 4}, {X: 0, Y: 4}}
	//  ┌──┐
	//  │  └──┐
	//  └─────┘
	ell = points{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 2}, {X: 2, Y: 2}, {X: 2, Y: 5}, {X: 0, Y: 5}}
	//  ┌─┐ ┌─┐
	//  │ └─┘ │
	//  └─────┘
	notched = points{{X: 0, Y: 0}, {X: 7, Y: 0}, {X: 7, Y: 4}, {X: 5, Y: 4}, {X: 5, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 5}, {X: 0, Y: 5}}
	//  ┌──┐
	//  │  /        the slant lies between a turn out and a turn in
	//  │ └────┐
	//  └──────┘
	bulging = points{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 2}, {X: 2, Y: 2}, {X: 2.3, Y: 2.5}, {X: 2.3, Y: 5}, {X: 0, Y: 5}}
	//      ┌──┐
	//  ┌───┘  │
	//  └──────┘
	stepped = points{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 4}, {X: 4, Y: 4}, {X: 4, Y: 3.8}, {X: 0, Y: 3.8}}
)

// plain is level or sloping ground with no bend, far round the origin.
func plain(t require.TestingT, level, gradeX, gradeY float64, more ...geometry.Point) *ground.Surface {
	return survey(t, func(x, y float64) float64 { return level + gradeX*x + gradeY*y },
		append(points{{X: -60, Y: -60}, {X: 70, Y: -60}, {X: 70, Y: 70}, {X: -60, Y: 70}}, more...)...)
}

func survey(t require.TestingT, level func(x, y float64) float64, at ...geometry.Point) *ground.Surface {
	spots := make([]ground.Spot, len(at))
	for i, p := range at {
		spots[i] = ground.Spot{X: p.X, Y: p.Y, Z: level(p.X, p.Y)}
	}
	surface, err := ground.New(spots)
	require.NoError(t, err)
	return surface
}

// hummocks is ground that bends all over, no steeper than 1 in 5.
func hummocks(t require.TestingT, seed uint64) *ground.Surface {
	random := rand.New(rand.NewPCG(seed, 1))
	at := points{{X: -60, Y: -60}, {X: 70, Y: -60}, {X: 70, Y: 70}, {X: -60, Y: 70}}
	for i := range 64 {
		at = append(at, geometry.Point{X: float64(i%8)*5 - 15 + random.Float64()*2, Y: float64(i/8)*5 - 15 + random.Float64()*2})
	}
	return survey(t, func(x, y float64) float64 { return 2 + 0.4*math.Sin(x/4) + 0.3*math.Cos(y/3) }, at...)
}

func body(t require.TestingT, b earthwork.Body, err error) earthwork.Body {
	require.NoError(t, err)
	return b
}

func TestExcavationOnLevelGround(t *testing.T) {
	tests := map[string]struct {
		floor   earthwork.Shape
		ground  float64
		volume  float64
		area    float64
		deepest float64
	}{
		"upright": {earthwork.Shape{Outline: rectangle, Levels: []float64{0}}, 2, 24 * 2, 24, 2},
		// A frustum: (2/6)(6×4 + 4 (8×6) + 10×8).
		"sides of 1:1": {earthwork.Shape{Outline: rectangle, Levels: []float64{0}, Run: 1}, 2, 2.0 / 6 * (24 + 4*48 + 80), 80, 2},
		// The L has an area of 18 and five corners out, one in: A(t) = 18 + 22 t + 4 t².
		"an L":           {earthwork.Shape{Outline: ell, Levels: []float64{0}, Run: 1}, 1, 18 + 22.0/2 + 4.0/3, 18 + 22 + 4, 1},
		"nothing to dig": {earthwork.Shape{Outline: rectangle, Levels: []float64{5}, Run: 1}, 2, 0, 0, 0},
		// Floor along x from 0 to 1, upright: half a unit less on average.
		"sloping floor": {earthwork.Shape{Outline: rectangle, Levels: []float64{0, 1, 1, 0}}, 2, 24 * 1.5, 24, 2},
		// The floor comes out of the ground half way along.
		"floor partly above the ground": {earthwork.Shape{Outline: rectangle, Levels: []float64{0, 4, 4, 0}}, 2, 3 * 4 * 2.0 / 2, 12, 2},
		"clockwise":                     {earthwork.Shape{Outline: points{rectangle[3], rectangle[2], rectangle[1], rectangle[0]}, Levels: []float64{0, 0, 1, 1}}, 2, 24 * 1.5, 24, 2},
		"first corner repeated":         {earthwork.Shape{Outline: append(rectangle[:4:4], rectangle[0]), Levels: []float64{0, 1, 1, 0, 0}}, 2, 24 * 1.5, 24, 2},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			got, err := earthwork.Excavation(tt.floor, plain(t, tt.ground, 0, 0))
			require.NoError(t, err)
			require.InDelta(t, tt.volume, got.Volume, 1e-9)
			require.InDelta(t, tt.area, got.Area, 1e-9)
			require.InDelta(t, tt.deepest, got.Depth, 1e-9)
		})
	}
}

// TestSideHill: on ground that falls across a long cutting, the cross-section is a
// trapezoid with a slanting top. With a bottom w, sides of run z, a depth d in the
// middle and ground of grade g, its edges lie at (w/2 + z d)/(1 ∓ z g) from the
// middle, as handbooks of earthworks set out slope stakes (from memory). A piece of
// the cutting is the difference of two lengths.
func TestSideHill(t *testing.T) {
	const w, z, d, g = 4.0, 1.5, 2.0, 0.2
	surface := plain(t, 0, 0, g)
	cutting := func(length float64) float64 {
		floor := earthwork.Shape{Outline: points{{X: 0, Y: -w / 2}, {X: length, Y: -w / 2}, {X: length, Y: w / 2}, {X: 0, Y: w / 2}}, Levels: []float64{-d}, Run: z}
		b, err := earthwork.Excavation(floor, surface)
		return body(t, b, err).Volume
	}
	low, high := (w/2+z*d)/(1+z*g), (w/2+z*d)/(1-z*g)
	// Up to where the sides would meet below the floor, less the triangle below it.
	apex := d + w/2/z
	section := apex*(low+high)/2 - w/2*(w/2/z)
	require.InDelta(t, 7*section, cutting(12)-cutting(5), 1e-9)
}

// pit is the level of a pit with mitred sides over an outline that is the union of
// convex ones: in each the greatest of the distances from the lines of its edges
// counts, of them all the least.
func pit(x, y, run float64, pieces []points) float64 {
	least := math.Inf(1)
	for _, corners := range pieces {
		farthest := 0.0
		for i, p := range corners {
			q := corners[(i+1)%len(corners)]
			farthest = max(farthest, ((x-p.X)*(q.Y-p.Y)-(y-p.Y)*(q.X-p.X))/math.Hypot(q.X-p.X, q.Y-p.Y))
		}
		least = min(least, farthest/run)
	}
	return least
}

func box(x0, y0, x1, y1 float64) points {
	return points{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}
}

// TestExcavationAgainstSums: the exact volume against a sum over a fine grid, of a
// pit whose level is worked out in another way.
func TestExcavationAgainstSums(t *testing.T) {
	tests := map[string]struct {
		outline points
		pieces  []points
	}{
		"rectangle": {rectangle, []points{rectangle}},
		"L":         {ell, []points{box(0, 0, 6, 2), box(0, 0, 2, 5)}},
		// The sides in the notch run together, and the notch is dug away to its bottom.
		"notched": {notched, []points{box(0, 0, 7, 1), box(0, 0, 2, 5), box(5, 0, 7, 4)}},
		// The slanting edge vanishes on the way up.
		"bulging": {bulging, []points{box(0, 0, 6, 2), {{X: 0, Y: 0}, {X: 0.8, Y: 0}, {X: 2.3, Y: 2.5}, {X: 2.3, Y: 5}, {X: 0, Y: 5}}}},
		"stepped": {stepped, []points{box(0, 0, 6, 3.8), box(4, 0, 6, 4)}},
	}
	for name, tt := range tests {
		for _, run := range []float64{0.5, 1, 2} {
			t.Run(name, func(t *testing.T) {
				surface := hummocks(t, uint64(run*2))
				got, err := earthwork.Excavation(earthwork.Shape{Outline: tt.outline, Levels: []float64{0.2}, Run: run}, surface)
				require.NoError(t, err)
				const step = 0.05
				sum, cells := 0.0, 0
				for x := -7.0; x < 14; x += step {
					for y := -7.0; y < 12; y += step {
						level, ok := surface.Level(geometry.Point{X: x, Y: y})
						require.True(t, ok)
						if depth := level - 0.2 - pit(x, y, run, tt.pieces); depth > 0 {
							sum += depth * step * step
							cells++
						}
					}
				}
				require.InEpsilon(t, sum, got.Volume, 0.003)
				require.InEpsilon(t, float64(cells)*step*step, got.Area, 0.01)
			})
		}
	}
}

// TestSlopingFloorAgainstSums: the same for a rectangle whose floor and sides are
// given as five planes.
func TestSlopingFloorAgainstSums(t *testing.T) {
	surface := hummocks(t, 5)
	const run, grade = 1.5, 0.1
	got, err := earthwork.Excavation(earthwork.Shape{Outline: rectangle, Levels: []float64{0, 6 * grade, 6 * grade, 0}, Run: run}, surface)
	require.NoError(t, err)
	const step = 0.05
	sum := 0.0
	for x := -7.0; x < 14; x += step {
		for y := -7.0; y < 12; y += step {
			level, _ := surface.Level(geometry.Point{X: x, Y: y})
			pit := max(grade*x, -x/run, 6*grade+(x-6)/run, grade*x-y/run, grade*x+(y-4)/run)
			sum += max(level-pit, 0) * step * step
		}
	}
	require.InEpsilon(t, sum, got.Volume, 0.003)
}

// convex draws a convex outline: corners in order on an ellipse.
func convex(t *rapid.T) points {
	const places = 24
	n := rapid.IntRange(3, 9).Draw(t, "n")
	at := rapid.SliceOfNDistinct(rapid.IntRange(0, places-1), n, n, rapid.ID).Draw(t, "at")
	slices.Sort(at)
	wide, high := rapid.Float64Range(1, 6).Draw(t, "wide"), rapid.Float64Range(1, 6).Draw(t, "high")
	corners := make(points, n)
	for i := range at {
		sin, cos := math.Sincos(2 * math.Pi * float64(at[i]) / places)
		corners[i] = geometry.Point{X: wide*cos + 1, Y: high*sin - 2}
	}
	return corners
}

// TestConvexOutlines: with one level for all, the sides of a convex outline are
// known to lie apart; with as many levels as corners they are tried one by one.
func TestConvexOutlines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := convex(t)
		if sharp(outline) {
			return
		}
		surface, run := hummocks(t, rapid.Uint64Range(1, 20).Draw(t, "seed")), rapid.Float64Range(0.001, 2).Draw(t, "run")
		apart, refused := earthwork.Excavation(earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: run}, surface)
		tried, err := earthwork.Excavation(earthwork.Shape{Outline: outline, Levels: make([]float64, len(outline)), Run: run}, surface)
		require.Equal(t, refused, err)
		if errors.Is(err, earthwork.ErrSteepGround) { // hummocks may be as steep as flat sides
			return
		}
		require.NoError(t, err)
		require.InEpsilon(t, tried.Volume, apart.Volume, 1e-9)
		require.InEpsilon(t, tried.Area, apart.Area, 1e-9)
	})
}

// scattered draws places for spot levels.
func scattered(t *rapid.T) points {
	coordinate := rapid.Float64Range(-50, 50)
	var at points
	for range rapid.IntRange(0, 12).Draw(t, "spots") {
		at = append(at, geometry.Point{X: math.Round(coordinate.Draw(t, "x")), Y: math.Round(coordinate.Draw(t, "y"))})
	}
	return at
}

// TestExcavationIsABasin: below level ground, an excavation is a basin filled to
// the ground.
func TestExcavationIsABasin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline, run, depth := convex(t), rapid.Float64Range(0.001, 3).Draw(t, "run"), rapid.Float64Range(0.1, 2).Draw(t, "depth")
		basin, err := earthwork.NewBasin(outline, 0, run, 0, depth)
		require.NoError(t, err)
		full, ok := basin.Volume(depth)
		require.True(t, ok)
		got, err := earthwork.Excavation(earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: run}, plain(t, depth, 0, 0, scattered(t)...))
		if sharp(outline) {
			return
		}
		require.NoError(t, err)
		require.InDelta(t, full, got.Volume, 1e-7*(1+full))
		area, ok := basin.Area(depth)
		require.InDelta(t, value(t, area, ok), got.Area, 1e-7*(1+area))
	})
}

// sharp reports whether an outline has a corner of less than one radian: where its
// sides meet they rise at less than half their slope, and may never come out.
func sharp(outline points) bool {
	for i, p := range outline {
		a, b := outline[(i+len(outline)-1)%len(outline)], outline[(i+1)%len(outline)]
		angle := math.Atan2(a.Y-p.Y, a.X-p.X) - math.Atan2(b.Y-p.Y, b.X-p.X)
		if math.Abs(math.Remainder(angle, 2*math.Pi)) < 1 {
			return true
		}
	}
	return false
}

// TestTriangulationDoesNotMatter: on a plane, more spot levels change nothing.
func TestTriangulationDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := convex(t)
		if sharp(outline) {
			return
		}
		grade := rapid.Float64Range(-0.1, 0.1)
		a, b := grade.Draw(t, "a"), grade.Draw(t, "b")
		floor := earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: rapid.Float64Range(0.001, 2).Draw(t, "run")}
		one, err := earthwork.Excavation(floor, plain(t, 1, a, b))
		require.NoError(t, err)
		other, err := earthwork.Excavation(floor, plain(t, 1, a, b, scattered(t)...))
		require.NoError(t, err)
		require.InDelta(t, one.Volume, other.Volume, 1e-6*(1+one.Volume))
		require.InDelta(t, one.Area, other.Area, 1e-6*(1+one.Area))
		require.InDelta(t, one.Depth, other.Depth, 1e-6)
	})
}

// TestCutLessFill: over a plane, with upright sides, cut less fill is the area times
// the height of the ground over the floor at the centroid.
func TestCutLessFill(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := convex(t)
		grade := rapid.Float64Range(-0.5, 0.5)
		a, b, floor := grade.Draw(t, "a"), grade.Draw(t, "b"), rapid.Float64Range(-2, 2).Draw(t, "floor")
		surface := plain(t, 0, a, b, scattered(t)...)
		shape := earthwork.Shape{Outline: outline, Levels: []float64{floor}}
		cut, err := earthwork.Excavation(shape, surface)
		require.NoError(t, err)
		fill, err := earthwork.Embankment(shape, surface)
		require.NoError(t, err)
		area, x, y := centroid(outline)
		require.InDelta(t, area*(a*x+b*y-floor), cut.Volume-fill.Volume, 1e-5)
	})
}

// centroid is worked out by the library for geometry.
func centroid(outline points) (area, x, y float64) {
	polygon := polygon(outline)
	at, _ := polygon.Centroid().XY()
	return polygon.Area(), at.X, at.Y
}

func polygon(outline points) geom.Geometry {
	var coordinates []float64
	for _, p := range append(outline[:len(outline):len(outline)], outline[0]) {
		coordinates = append(coordinates, p.X, p.Y)
	}
	ring := geom.NewLineString(geom.NewSequence(coordinates, geom.DimXY))
	return geom.NewPolygon([]geom.LineString{ring}).AsGeometry()
}

// TestVolumesAddUp: an outline with upright sides that is cut in two has the volume
// of its halves, cut and fill.
func TestVolumesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(0.5, 5.5).Draw(t, "at")
		slant := rapid.Float64Range(-0.4, 0.4).Draw(t, "slant")
		low, high := geometry.Point{X: at - slant, Y: 0}, geometry.Point{X: at + slant, Y: 4}
		halves := []points{{rectangle[0], low, high, rectangle[3]}, {low, rectangle[1], rectangle[2], high}}
		surface := hummocks(t, rapid.Uint64Range(1, 20).Draw(t, "seed"))
		level := []float64{rapid.Float64Range(0, 3).Draw(t, "level")}
		for _, of := range []func(earthwork.Shape, *ground.Surface) (earthwork.Body, error){earthwork.Excavation, earthwork.Embankment} {
			whole, err := of(earthwork.Shape{Outline: rectangle, Levels: level}, surface)
			require.NoError(t, err)
			sum := 0.0
			for _, half := range halves {
				part, err := of(earthwork.Shape{Outline: half, Levels: level}, surface)
				require.NoError(t, err)
				sum += part.Volume
			}
			require.InDelta(t, whole.Volume, sum, 1e-5)
		}
	})
}

// TestScaling: s times the lengths, s³ times the volume, s² times the area.
func TestScaling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		// In whole numbers, so that spots on one circle stay on one.
		s := float64(rapid.IntRange(2, 9).Draw(t, "s"))
		scaled := func(p points) points {
			larger := make(points, len(p))
			for i := range p {
				larger[i] = geometry.Point{X: p[i].X * s, Y: p[i].Y * s}
			}
			return larger
		}
		outline := rapid.SampledFrom([]points{rectangle, ell, notched, stepped}).Draw(t, "outline")
		at := append(points{{X: -40, Y: -40}, {X: 40, Y: -40}, {X: 40, Y: 40}, {X: -40, Y: 40}}, scattered(t)...)
		hill := func(x, y float64) float64 { return 1.5 + 0.3*math.Sin(x/5) + 0.3*math.Cos(y/5) }
		one, err := earthwork.Excavation(earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: 1}, survey(t, hill, at...))
		require.NoError(t, err)
		other, err := earthwork.Excavation(earthwork.Shape{Outline: scaled(outline), Levels: []float64{0}, Run: 1},
			survey(t, func(x, y float64) float64 { return s * hill(x/s, y/s) }, scaled(at)...))
		require.NoError(t, err)
		require.InEpsilon(t, one.Volume*s*s*s, other.Volume, 1e-4)
		require.InEpsilon(t, one.Area*s*s, other.Area, 1e-4)
		require.InEpsilon(t, one.Depth*s, other.Depth, 1e-4)
	})
}

// TestUpsideDown: an embankment is an excavation upside down.
func TestUpsideDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := rapid.SampledFrom([]points{rectangle, ell, notched, stepped}).Draw(t, "outline")
		at := append(points{{X: -40, Y: -40}, {X: 40, Y: -40}, {X: 40, Y: 40}, {X: -40, Y: 40}}, scattered(t)...)
		hill := func(x, y float64) float64 { return 1.5 + 0.3*math.Sin(x/5) + 0.3*math.Cos(y/5) }
		dug, err := earthwork.Excavation(earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: 1.5}, survey(t, hill, at...))
		require.NoError(t, err)
		filled, err := earthwork.Embankment(earthwork.Shape{Outline: outline, Levels: []float64{0}, Run: 1.5},
			survey(t, func(x, y float64) float64 { return -hill(x, y) }, at...))
		require.NoError(t, err)
		require.InDelta(t, dug.Volume, filled.Volume, 1e-9*dug.Volume)
		require.InDelta(t, dug.Area, filled.Area, 1e-9*dug.Area)
		require.InDelta(t, dug.Depth, filled.Depth, 1e-9)
	})
}

// TestFarFromTheOrigin: a site grid may start anywhere.
func TestFarFromTheOrigin(t *testing.T) {
	move := func(p points) points {
		moved := make(points, len(p))
		for i := range p {
			moved[i] = geometry.Point{X: p[i].X + 500000, Y: p[i].Y - 4e6}
		}
		return moved
	}
	at := points{{X: -40, Y: -40}, {X: 40, Y: -40}, {X: 40, Y: 40}, {X: -40, Y: 40}, {X: 1, Y: 2}}
	hill := func(x, y float64) float64 { return 2 - (x*x+y*y)/4000 }
	here, err := earthwork.Excavation(earthwork.Shape{Outline: ell, Levels: []float64{0}, Run: 2}, survey(t, hill, at...))
	require.NoError(t, err)
	there, err := earthwork.Excavation(earthwork.Shape{Outline: move(ell), Levels: []float64{0}, Run: 2},
		survey(t, func(x, y float64) float64 { return hill(x-500000, y+4e6) }, move(at)...))
	require.NoError(t, err)
	require.InEpsilon(t, here.Volume, there.Volume, 1e-6)
}

func TestExcavationRefuses(t *testing.T) {
	level := plain(t, 2, 0, 0)
	small := survey(t, func(x, y float64) float64 { return 2 }, points{{X: -1, Y: -1}, {X: 7, Y: -1}, {X: 7, Y: 5}, {X: -1, Y: 5}}...)
	// Level at 0 as far as x = 20, then up to 30 within 10.
	cliff := survey(t, func(x, y float64) float64 { return max(0, 3*(x-20)) },
		points{{X: -60, Y: -60}, {X: 20, Y: -60}, {X: 30, Y: -60}, {X: -60, Y: 60}, {X: 20, Y: 60}, {X: 30, Y: 60}}...)
	crossed := points{{X: 0, Y: 0}, {X: 4, Y: 4}, {X: 4, Y: 0}, {X: 0, Y: 4}}
	tests := map[string]struct {
		floor earthwork.Shape
		on    *ground.Surface
		want  error
	}{
		"no outline":             {earthwork.Shape{Levels: []float64{0}}, level, earthwork.ErrOutline},
		"a crossed outline":      {earthwork.Shape{Outline: crossed, Levels: []float64{0}}, level, earthwork.ErrOutline},
		"corners in a line":      {earthwork.Shape{Outline: points{{X: 0}, {X: 1}, {X: 3}}, Levels: []float64{0}}, level, earthwork.ErrOutline},
		"a corner at infinity":   {earthwork.Shape{Outline: points{{X: 0}, {X: math.Inf(1)}, {Y: 3}}, Levels: []float64{0}}, level, earthwork.ErrOutline},
		"a spike":                {earthwork.Shape{Outline: points{{X: 0}, {X: 4}, {X: 4, Y: 4}, {X: 9, Y: 4}, {X: 0, Y: 4}}, Levels: []float64{0}}, level, earthwork.ErrOutline},
		"no level":               {earthwork.Shape{Outline: rectangle}, level, earthwork.ErrLevels},
		"too few levels":         {earthwork.Shape{Outline: rectangle, Levels: []float64{1, 2, 3}}, level, earthwork.ErrLevels},
		"a level that is none":   {earthwork.Shape{Outline: rectangle, Levels: []float64{math.NaN()}}, level, earthwork.ErrLevels},
		"a negative run":         {earthwork.Shape{Outline: rectangle, Levels: []float64{0}, Run: -1}, level, earthwork.ErrRun},
		"beyond, by its floor":   {earthwork.Shape{Outline: points{{X: 0}, {X: 8}, {X: 8, Y: 4}}, Levels: []float64{0}}, small, earthwork.ErrBeyondGround},
		"beyond, by its sides":   {earthwork.Shape{Outline: rectangle, Levels: []float64{0}, Run: 1}, small, earthwork.ErrBeyondGround},
		"beyond everything":      {earthwork.Shape{Outline: points{{X: 100}, {X: 104}, {X: 104, Y: 4}}, Levels: []float64{0}, Run: 1}, small, earthwork.ErrBeyondGround},
		"a second rise":          {earthwork.Shape{Outline: rectangle, Levels: []float64{-1}, Run: 1}, cliff, earthwork.ErrSteepGround},
		"a floor like its sides": {earthwork.Shape{Outline: rectangle, Levels: []float64{0, 6, 6, 0}, Run: 1}, level, &earthwork.SteepError{Corner: 1}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			got, err := earthwork.Excavation(tt.floor, tt.on)
			require.Equal(t, tt.want, err)
			require.Zero(t, got)
		})
	}
	_, err := earthwork.Excavation(earthwork.Shape{Outline: rectangle, Levels: []float64{0}, Run: 0.9}, small)
	require.ErrorIs(t, err, earthwork.ErrBeyondGround)
	_, err = earthwork.Excavation(earthwork.Shape{Outline: rectangle, Levels: []float64{1}, Run: 0.9}, small)
	require.NoError(t, err, "comes out 0.1 before the ground ends")
}

// TestManyCorners: the work is bounded, and says so.
func TestManyCorners(t *testing.T) {
	var star points
	for i := range 500 {
		radius := 3 + float64(i%2)
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 500)
		star = append(star, geometry.Point{X: radius * cos, Y: radius * sin})
	}
	var at points
	for i := range 400 {
		at = append(at, geometry.Point{X: float64(i%20)*5 - 47, Y: float64(i/20)*5 - 47})
	}
	_, err := earthwork.Excavation(earthwork.Shape{Outline: star, Levels: []float64{0}, Run: 3},
		survey(t, func(x, y float64) float64 { return 9 + x/50 }, at...))
	require.ErrorIs(t, err, earthwork.ErrTooComplex)
}
