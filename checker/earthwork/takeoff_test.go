package earthwork_test

import (
	"math"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/earthwork"
	"greysill/checker/geometry"
)

func TestConvertThereAndBack(t *testing.T) {
	states := rapid.SampledFrom([]earthwork.State{earthwork.Bank, earthwork.Loose, earthwork.Compacted})
	soils := rapid.SampledFrom([]earthwork.Soil{earthwork.Clay, earthwork.CommonEarth, earthwork.BlastedRock, earthwork.Sand})
	rapid.Check(t, func(t *rapid.T) {
		soil, from, over, to := soils.Draw(t, "soil"), states.Draw(t, "from"), states.Draw(t, "over"), states.Draw(t, "to")
		volume := rapid.Float64Range(0, 100).Draw(t, "volume")
		step, ok := soil.Convert(volume, from, over)
		require.True(t, ok)
		twice, ok := soil.Convert(step, over, to)
		require.True(t, ok)
		once, ok := soil.Convert(volume, from, to)
		require.True(t, ok)
		require.InDelta(t, once, twice, 1e-12*(1+once))
	})
}

func TestSoilOf(t *testing.T) {
	for texture, want := range map[string]earthwork.Soil{
		"loamy sand": earthwork.Sand, "silt loam": earthwork.CommonEarth, "clay loam": earthwork.CommonEarth, "sandy clay": earthwork.Clay,
	} {
		soil, ok := earthwork.SoilOf(texture)
		require.True(t, ok, texture)
		require.Equal(t, want, soil, texture)
	}
	for _, texture := range []string{"gravel", "", "peat"} {
		_, ok := earthwork.SoilOf(texture)
		require.False(t, ok, texture)
	}
}

// TestDensityOfTestedStone: what was weighed and the porosity that was measured
// go with grains of a specific gravity that limestone and granite have.
func TestDensityOfTestedStone(t *testing.T) {
	for _, stone := range []earthwork.Aggregate{earthwork.No57Stone, earthwork.No4Stone} {
		low, ok := earthwork.DryDensity(2.50, stone.Porosity)
		require.Greater(t, stone.Density, value(t, low, ok))
		high, ok := earthwork.DryDensity(2.75, stone.Porosity)
		require.Less(t, stone.Density, value(t, high, ok))
	}
}

func TestSheet(t *testing.T) {
	// A floor of 6 by 4, whose rim is 14 by 12, turned by the 3-4-5 triangle: the sheet
	// does not care.
	square := points{{X: 0, Y: 0}, {X: 14, Y: 0}, {X: 14, Y: 12}, {X: 0, Y: 12}}
	turned := points{{X: 0, Y: 0}, {X: 14 * 0.8, Y: 14 * 0.6}, {X: 14*0.8 - 12*0.6, Y: 14*0.6 + 12*0.8}, {X: -12 * 0.6, Y: 12 * 0.8}}
	for name, rim := range map[string]points{"square to the axes": square, "turned": turned} {
		length, width, ok := earthwork.Sheet(rim, 3, 4.0/3, 0.5)
		require.True(t, ok, name)
		require.InDelta(t, 6+2*5+1, length, 1e-9, name) // up a slope of 3 on 4 it is 5
		require.InDelta(t, 4+2*5+1, width, 1e-9, name)
	}
	for name, bad := range map[string]func() (float64, float64, bool){
		"no rim":           func() (float64, float64, bool) { return earthwork.Sheet(nil, 1, 1, 1) },
		"negative depth":   func() (float64, float64, bool) { return earthwork.Sheet(rectangle, -1, 1, 1) },
		"negative overlap": func() (float64, float64, bool) { return earthwork.Sheet(rectangle, 1, 1, -1) },
	} {
		length, width, ok := bad()
		require.False(t, ok, name)
		require.Zero(t, length+width, name)
	}
}

// TestSheetAgainstTheLibrary: the smallest rectangle round a floor, from the library
// for geometry.
func TestSheetAgainstTheLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		floor := convex(t)
		length, width, ok := earthwork.Sheet(floor, 0, 0, 0)
		require.True(t, ok)
		require.InEpsilon(t, geom.RotatedMinimumAreaBoundingRectangle(polygon(floor)).Area(), length*width, 1e-9)
	})
	length, width, ok := earthwork.Sheet(notched, 0, 0, 0)
	require.True(t, ok)
	require.InDelta(t, 7, length, 1e-9)
	require.InDelta(t, 5, width, 1e-9)
}

// TestSheetCoversTheBasin: laid flat, the sheet has at least the area of floor and
// sides.
func TestSheetCoversTheBasin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		floor, depth, run := convex(t), rapid.Float64Range(0.1, 2).Draw(t, "depth"), rapid.Float64Range(0, 3).Draw(t, "run")
		b := newBasin(t, floor, 0, run, 0, depth)
		sides, ok := b.Sides(depth)
		require.True(t, ok)
		rim, ok := b.Outline(depth)
		require.True(t, ok)
		length, width, ok := earthwork.Sheet(rim, depth, run, 0)
		require.True(t, ok)
		require.Greater(t, length*width, (geometry.Outline(floor).Area()+sides)*(1-1e-12))
	})
}

func TestAnchorTrench(t *testing.T) {
	trench := earthwork.AnchorTrench{Setback: 0.6, Width: 0.3, Depth: 0.4}
	length, volume, err := trench.Run(rectangle)
	require.NoError(t, err)
	require.InDelta(t, 2*(6+1.5)+2*(4+1.5), length, 1e-12, "0.75 beyond every side")
	require.InDelta(t, length*0.12, volume, 1e-12)
	require.InDelta(t, 1.3, trench.Take(), 1e-12)
	_, _, err = trench.Run(nil)
	require.ErrorIs(t, err, earthwork.ErrOutline)
}

func TestTrench(t *testing.T) {
	trench := earthwork.Trench{Width: 0.5, Bedding: 0.1, Surround: 0.2, Pipe: 0.1}
	got, err := trench.Volumes([]earthwork.Place{{0, 0.5}, {10, 0.7}, {14, 0.7}})
	require.NoError(t, err)
	pipe := math.Pi / 4 * 0.01 * 14
	require.InDelta(t, 0.5*(10*0.7+4*0.8), got.Dug, 1e-12)
	require.InDelta(t, 0.5*0.4*14-pipe, got.Embedment, 1e-12)
	require.InDelta(t, pipe, got.Pipe, 1e-12)
	require.InDelta(t, 0.5*(10*0.3+4*0.4), got.Backfill, 1e-12)
}

func TestTrenchSection(t *testing.T) {
	area, ok := earthwork.Trench{Width: 4, Run: 2}.Section(3)
	require.InDelta(t, 3*(4+16)/2.0, value(t, area, ok), 1e-12, "half the sum of bottom and top, times the depth")
}

// TestTrenchIsAnExcavation: with sides of some slope, down a grade, a long trench
// holds what the exact excavation between two cross-sections does.
func TestTrenchIsAnExcavation(t *testing.T) {
	surface := plain(t, 0, 0, 0)
	dug := func(length float64) float64 {
		b, err := earthwork.Excavation(earthwork.Shape{
			Outline: points{{X: 0, Y: -0.3}, {X: length, Y: -0.3}, {X: length, Y: 0.3}, {X: 0, Y: 0.3}},
			Levels:  []float64{-1, -1 - length*0.02, -1 - length*0.02, -1}, Run: 0.75,
		}, surface)
		return body(t, b, err).Volume
	}
	// The far ends differ in depth: their wedges are taken out by making both ends
	// of the excavation upright, as a deeper cut less a shallower one.
	near := endWedge(1, 0.02, 0.6, 0.75, -1)
	far := endWedge(1+20*0.02, 0.02, 0.6, 0.75, 1)
	trench := earthwork.Trench{Width: 0.6, Run: 0.75, Pipe: 0.1}
	got, err := trench.Volumes([]earthwork.Place{{0, 1}, {20, 1.4}})
	require.NoError(t, err)
	require.InDelta(t, dug(20), got.Dug+near+far, 1e-3)
}

// endWedge is, summed in thin slices, what lies beyond the end of a sloping trench:
// from the end on, the bottom rises on the end's side, between the trench's own
// sides carried on along their grade.
func endWedge(depth, grade, width, run, direction float64) float64 {
	sum, step := 0.0, 0.001
	for x := step / 2; x < 2*depth*run; x += step {
		for y := 2 * step; y < width/2+2*depth*run; y += step * 4 {
			end := -depth + x/run
			side := -depth - direction*grade*x + (y-width/2)/run
			sum += 2 * 4 * step * step * max(-max(end, side), 0)
		}
	}
	return sum
}

func TestTrenchRefuses(t *testing.T) {
	good := earthwork.Trench{Width: 0.5, Bedding: 0.1, Surround: 0.2, Pipe: 0.1}
	places := []earthwork.Place{{0, 1}, {5, 1}}
	for name, bad := range map[string]earthwork.Trench{
		"no width":      {Pipe: 0.1},
		"a wide pipe":   {Width: 0.1, Pipe: 0.2},
		"a negative":    {Width: 0.5, Pipe: 0.1, Bedding: -1},
		"not a number":  {Width: math.NaN(), Pipe: 0.1},
		"infinite side": {Width: 1, Run: math.Inf(1)},
	} {
		_, err := bad.Volumes(places)
		require.ErrorIs(t, err, earthwork.ErrTrench, name)
	}
	for name, bad := range map[string][]earthwork.Place{
		"one place":     places[:1],
		"backwards":     {{5, 1}, {0, 1}},
		"the same":      {{5, 1}, {5, 1}},
		"not a number":  {{0, 1}, {math.NaN(), 1}},
		"without depth": {{0, 1}, {1, math.NaN()}},
	} {
		_, err := good.Volumes(bad)
		require.ErrorIs(t, err, earthwork.ErrRunOrder, name)
	}
	_, err := good.Volumes([]earthwork.Place{{0, 1}, {5, 0.29}})
	require.Equal(t, &earthwork.ShallowError{Place: 1}, err)
	require.EqualError(t, err, "at place 2 along the run the ground is lower than the top of the pipe's embedment")
}

func TestPlants(t *testing.T) {
	tests := map[string]struct {
		area, spacing float64
		pattern       earthwork.Pattern
		want          int
		ok            bool
	}{
		"square":              {12, 0.5, earthwork.SquareRows, 48, true},
		"part of one counts":  {12.01, 0.5, earthwork.SquareRows, 49, true},
		"rounding does not":   {0.3 * 0.3 * 100, 0.3, earthwork.SquareRows, 100, true},
		"staggered":           {math.Sqrt(3) / 2 * 50, 1, earthwork.StaggeredRows, 50, true},
		"nothing to plant":    {0, 0.5, earthwork.SquareRows, 0, true},
		"no spacing":          {12, 0, earthwork.SquareRows, 0, false},
		"no area, no spacing": {0, 0, earthwork.SquareRows, 0, false},
		"negative":            {12, -0.5, earthwork.SquareRows, 0, false},
		"too many":            {1e12, 1, earthwork.SquareRows, 0, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			number, ok := earthwork.Plants(tt.area, tt.spacing, tt.pattern)
			require.Equal(t, tt.ok, ok)
			require.Equal(t, tt.want, number)
		})
	}
}
