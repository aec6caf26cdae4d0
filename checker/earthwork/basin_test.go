package earthwork_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/earthwork"
	"greysill/checker/geometry"
)

// outlines have how far each can be moved before it runs together.
var outlines = map[string]struct {
	outline         points
	inward, outward float64
}{
	"rectangle": {rectangle, 2, math.Inf(1)},
	"triangle":  {points{{X: 0}, {X: 4}, {Y: 3}}, 1, math.Inf(1)}, // the radius of its inner circle
	"L":         {ell, 1, math.Inf(1)},                            // each arm is 2 wide
	"notched":   {notched, 0.5, 1.5},                              // the bridge is 1 wide, the notch 3
	// Its corner inside, which turns by 90° + α, tan α being 0.3/0.5, moves by the tangent
	// of half that angle towards the side 2 away, which moves towards it. The slant, √0.34
	// long, loses that much and gains the tangent of α/2.
	"bulging": {bulging, 2 / (1 + bulge), math.Sqrt(0.34) / (bulge - math.Tan(math.Atan(0.6)/2))},
	"stepped": {stepped, 1, math.Inf(1)}, // the tower is 2 wide
}

var bulge = math.Tan((math.Pi/2 + math.Atan(0.6)) / 2)

func TestOffsetRange(t *testing.T) {
	for name, tt := range outlines {
		t.Run(name, func(t *testing.T) {
			for _, share := range []float64{0.1, 0.5, 0.99} {
				in, err := earthwork.Offset(tt.outline, -tt.inward*share)
				require.NoError(t, err)
				require.Len(t, in, len(tt.outline))
				out, err := earthwork.Offset(tt.outline, min(tt.outward, 50)*share)
				require.NoError(t, err)
				require.Greater(t, polygon(out).Area(), polygon(tt.outline).Area())
				require.Less(t, polygon(in).Area(), polygon(tt.outline).Area())
			}
			for _, beyond := range []float64{1.01, 2, 10} {
				_, err := earthwork.Offset(tt.outline, -tt.inward*beyond)
				require.ErrorIs(t, err, earthwork.ErrCollapse, "inwards by %v of the range", beyond)
				if !math.IsInf(tt.outward, 1) {
					_, err := earthwork.Offset(tt.outline, tt.outward*beyond)
					require.ErrorIs(t, err, earthwork.ErrCollapse, "outwards by %v of the range", beyond)
				}
			}
		})
	}
}

// TestOffsetKeepsItsDistance: every edge moved lies at the distance from the line
// of the one it was.
func TestOffsetKeepsItsDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline, distance := convex(t), rapid.Float64Range(0.001, 3).Draw(t, "distance")
		moved, err := earthwork.Offset(outline, distance)
		require.NoError(t, err)
		ring := geometry.Outline(moved)
		for _, p := range outline {
			require.True(t, ring.Contains(p))
			require.InDelta(t, distance, geometry.Distance(geometry.At(p), ring.Edge()), 1e-6)
		}
	})
}

// TestOffsetAndBack: out and in again is where it was.
func TestOffsetAndBack(t *testing.T) {
	for name, tt := range outlines {
		distance := min(tt.outward/2, 1.2)
		out, err := earthwork.Offset(tt.outline, distance)
		require.NoError(t, err, name)
		back, err := earthwork.Offset(out, -distance)
		require.NoError(t, err, name)
		for i := range back {
			require.InDelta(t, tt.outline[i].X, back[i].X, 1e-9, name)
			require.InDelta(t, tt.outline[i].Y, back[i].Y, 1e-9, name)
		}
	}
	_, err := earthwork.Offset(rectangle, math.NaN())
	require.ErrorIs(t, err, earthwork.ErrCollapse)
	_, err = earthwork.Offset(rectangle[:2], 1)
	require.ErrorIs(t, err, earthwork.ErrOutline)
}

func TestLength(t *testing.T) {
	length, err := earthwork.Length(rectangle, 1)
	require.NoError(t, err)
	require.InDelta(t, 2*(8+6), length, 1e-12)
	_, err = earthwork.Length(rectangle, -2)
	require.ErrorIs(t, err, earthwork.ErrCollapse)
}

func newBasin(t require.TestingT, outline points, level, run, floor, rim float64) *earthwork.Basin {
	b, err := earthwork.NewBasin(outline, level, run, floor, rim)
	require.NoError(t, err)
	return b
}

// TestBasin: a pond of 10 by 8 at its rim, 1 deep, sides of 2:1, so 6 by 4 at the
// floor and 8 by 6 half way; volume (1/6)(80 + 4×48 + 24).
func TestBasin(t *testing.T) {
	pond := points{{X: 0}, {X: 10}, {X: 10, Y: 8}, {Y: 8}}
	b := newBasin(t, pond, 100, 2, 99, 100)
	at := func(f func(float64) (float64, bool), stage float64) float64 {
		v, ok := f(stage)
		return value(t, v, ok)
	}
	require.InDelta(t, 24, at(b.Area, 99), 1e-12)
	require.InDelta(t, 48, at(b.Area, 99.5), 1e-12)
	require.InDelta(t, 80, at(b.Area, 100), 1e-12)
	require.InDelta(t, (80+4*48+24)/6.0, at(b.Volume, 100), 1e-12)
	require.Zero(t, at(b.Volume, 99))
	// Two trapezoids of 10 and 6, two of 8 and 4, each √5 up the slope.
	require.InDelta(t, (2*8+2*6)*math.Sqrt(5), at(b.Sides, 100), 1e-12)
	require.Zero(t, at(b.Sides, 99))

	edge, ok := b.Outline(99)
	require.True(t, ok)
	require.Equal(t, points{{X: 2, Y: 2}, {X: 8, Y: 2}, {X: 8, Y: 6}, {X: 2, Y: 6}}, edge)
	for _, beyond := range []float64{98.9, 100.1, math.NaN()} {
		for _, f := range []func(float64) (float64, bool){b.Area, b.Volume, b.Sides} {
			_, ok := f(beyond)
			require.False(t, ok)
		}
		_, ok = b.Outline(beyond)
		require.False(t, ok)
	}
	for _, none := range []float64{-1, 1e3, math.NaN()} {
		_, ok = b.Stage(none)
		require.False(t, ok)
	}
}

func TestNewBasinRefuses(t *testing.T) {
	tests := map[string]struct {
		outline                points
		level, run, floor, rim float64
		want                   error
	}{
		"no outline":               {nil, 1, 1, 0, 1, earthwork.ErrOutline},
		"negative run":             {rectangle, 1, -1, 0, 1, earthwork.ErrRun},
		"floor above rim":          {rectangle, 1, 1, 2, 1, earthwork.ErrBasinLevels},
		"floor at rim":             {rectangle, 1, 1, 1, 1, earthwork.ErrBasinLevels},
		"no level":                 {rectangle, math.NaN(), 1, 0, 1, earthwork.ErrBasinLevels},
		"sides meet at the floor":  {rectangle, 2, 1, 0, 2, earthwork.ErrCollapse},
		"sides meet above it":      {rectangle, 3, 1, 0, 3, earthwork.ErrCollapse},
		"the notch closes":         {notched, 0, 1, 0, 1.6, earthwork.ErrCollapse},
		"the bridge washes out":    {notched, 0.6, 1, 0, 0.6, earthwork.ErrCollapse},
		"a run beyond all measure": {rectangle, 1, math.Inf(1), 0, 1, earthwork.ErrRun},
	}
	for name, tt := range tests {
		_, err := earthwork.NewBasin(tt.outline, tt.level, tt.run, tt.floor, tt.rim)
		require.ErrorIs(t, err, tt.want, name)
	}
}

// drawBasin draws a basin of one of the outlines.
func drawBasin(t *rapid.T) (b *earthwork.Basin, floor, rim float64) {
	name := rapid.SampledFrom([]string{"rectangle", "triangle", "L", "notched", "bulging", "stepped"}).Draw(t, "outline")
	o := outlines[name]
	run := rapid.Float64Range(0, 3).Draw(t, "run")
	down := rapid.Float64Range(0.1, 0.9).Draw(t, "down") * min(o.inward, 2) / max(run, 1)
	up := rapid.Float64Range(0.1, 0.9).Draw(t, "up") * min(o.outward, 2) / max(run, 1)
	return newBasin(t, o.outline, 7, run, 7-down, 7+up), 7 - down, 7 + up
}

// TestStageAndVolume: the one undoes the other, and both grow together.
func TestStageAndVolume(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, floor, rim := drawBasin(t)
		stage := rapid.Float64Range(floor, rim).Draw(t, "stage")
		v, ok := b.Volume(stage)
		require.True(t, ok)
		back, ok := b.Stage(v)
		require.True(t, ok)
		require.InDelta(t, stage, back, 1e-9)
		higher, ok := b.Volume((stage + rim) / 2)
		require.True(t, ok)
		require.GreaterOrEqual(t, higher, v)
	})
}

// TestBasinAgainstItsOutlines: the area at a stage is that of the water's edge as
// drawn, and the sides are the trapezoids between two edges.
func TestBasinAgainstItsOutlines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, floor, rim := drawBasin(t)
		stage := rapid.Float64Range(floor, rim).Draw(t, "stage")
		low, ok := b.Outline(floor)
		require.True(t, ok)
		high, ok := b.Outline(stage)
		require.True(t, ok)
		area, ok := b.Area(stage)
		require.InDelta(t, polygon(high).Area(), value(t, area, ok), 1e-9*(1+area))
		sides := 0.0
		for i := range low {
			n := (i + 1) % len(low)
			sides += triangle(low[i], low[n], high[n], floor, floor, stage) + triangle(low[i], high[n], high[i], floor, stage, stage)
		}
		got, ok := b.Sides(stage)
		require.InDelta(t, sides, value(t, got, ok), 1e-9*(1+sides))
	})
}

// triangle is the area of a triangle in space, half the length of a cross product.
func triangle(a, b, c geometry.Point, za, zb, zc float64) float64 {
	ux, uy, uz := b.X-a.X, b.Y-a.Y, zb-za
	vx, vy, vz := c.X-a.X, c.Y-a.Y, zc-za
	x, y, z := uy*vz-uz*vy, uz*vx-ux*vz, ux*vy-uy*vx
	return math.Sqrt(x*x+y*y+z*z) / 2
}

// TestVolumeIsTheSumOfThinSlices, whose areas are those of the outlines.
func TestVolumeIsTheSumOfThinSlices(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, floor, rim := drawBasin(t)
		const slices = 200
		sum := 0.0
		for i := range slices {
			edge, ok := b.Outline(floor + (rim-floor)*(float64(i)+0.5)/slices)
			require.True(t, ok)
			sum += polygon(edge).Area() * (rim - floor) / slices
		}
		full, ok := b.Volume(rim)
		require.InEpsilon(t, sum, value(t, full, ok), 1e-4)
	})
}

func TestLayers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, floor, rim := drawBasin(t)
		first := rapid.Float64Range(0.1, 0.8).Draw(t, "first") * (rim - floor)
		layers, err := b.Layers([]float64{first, rim - floor - first})
		require.NoError(t, err)
		full, ok := b.Volume(rim)
		require.InDelta(t, value(t, full, ok), layers[0]+layers[1], 1e-9*(1+full))
		lower, ok := b.Volume(floor + first)
		require.InDelta(t, value(t, lower, ok), layers[0], 1e-9*(1+full))
	})
	b := newBasin(t, rectangle, 0, 0, 0, 1)
	for _, bad := range [][]float64{{0.5, 0.6}, {0.5, 0}, {-0.1}, {math.NaN()}, {math.Inf(1)}} {
		_, err := b.Layers(bad)
		require.ErrorIs(t, err, earthwork.ErrLayers)
	}
	none, err := b.Layers(nil)
	require.NoError(t, err)
	require.Empty(t, none)
}
