package earthwork_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/earthwork"
)

// value takes a result that has to be there.
func value(t require.TestingT, v float64, ok bool) float64 {
	require.True(t, ok)
	return v
}

// TestPrismoidalIsExact: solids whose volume geometry gives in another way.
func TestPrismoidalIsExact(t *testing.T) {
	tests := map[string]struct{ length, first, middle, last, want float64 }{
		"prism":                    {7, 3, 3, 3, 21},
		"wedge":                    {6, 4, 2, 0, 12},
		"pyramid":                  {6, 9, 9.0 / 4, 0, 6 * 9.0 / 3},
		"cone":                     {3, math.Pi, math.Pi / 4, 0, math.Pi},
		"sphere of radius 1":       {2, 0, math.Pi, 0, 4 * math.Pi / 3},
		"frustum, sides 4 and 2":   {3, 16, 9, 4, 28},
		"half a sphere, bowl-wise": {1, math.Pi, 0.75 * math.Pi, 0, 2 * math.Pi / 3},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			v, ok := earthwork.Prismoidal(tt.length, tt.first, tt.middle, tt.last)
			require.InDelta(t, tt.want, value(t, v, ok), 1e-12)
		})
	}
}

// TestAverageEndAreaAgainstPrismoidal: the mean of the ends takes a pyramid half
// as large again as it is.
func TestAverageEndAreaAgainstPrismoidal(t *testing.T) {
	v, ok := earthwork.AverageEndArea(6, 9, 0)
	require.InDelta(t, 1.5*18, value(t, v, ok), 1e-12)
	v, ok = earthwork.AverageEndArea(6, 4, 0)
	require.InDelta(t, 12, value(t, v, ok), 1e-12, "exact for a wedge")
}

func TestFrustumAgreesWithPrismoidal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		side := rapid.Float64Range(0, 50)
		a, b, length := side.Draw(t, "a"), side.Draw(t, "b"), side.Draw(t, "length")
		frustum, ok := earthwork.Frustum(length, a*a, b*b)
		require.True(t, ok)
		middle := (a + b) / 2
		prismoid, ok := earthwork.Prismoidal(length, a*a, middle*middle, b*b)
		require.True(t, ok)
		require.InDelta(t, prismoid, frustum, 1e-9*(1+prismoid))
	})
}

func TestGrid(t *testing.T) {
	tests := map[string]struct {
		rows [][]float64
		want float64
		ok   bool
	}{
		"one cell":         {[][]float64{{1, 2}, {3, 4}}, 10 * 2.5, true},
		"cut less fill":    {[][]float64{{1, -1}, {-1, 1}}, 0, true},
		"all fill":         {[][]float64{{-1, -1}, {-1, -1}}, -10, true},
		"one row":          {[][]float64{{1, 2}}, 0, false},
		"one column":       {[][]float64{{1}, {2}}, 0, false},
		"ragged":           {[][]float64{{1, 2}, {3}}, 0, false},
		"not a number":     {[][]float64{{1, 2}, {3, math.NaN()}}, 0, false},
		"nothing":          {nil, 0, false},
		"infinite in sum":  {[][]float64{{1e308, 1e308}, {1e308, 1e308}}, 0, false},
		"three by two":     {[][]float64{{1, 1, 1}, {1, 1, 1}}, 20, true},
		"peak in a corner": {[][]float64{{4, 0, 0}, {0, 0, 0}, {0, 0, 0}}, 10, true},
		"peak in a side":   {[][]float64{{0, 4, 0}, {0, 0, 0}, {0, 0, 0}}, 20, true},
		"peak inside":      {[][]float64{{0, 0, 0}, {0, 4, 0}, {0, 0, 0}}, 40, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			v, ok := earthwork.Grid(10, tt.rows)
			require.Equal(t, tt.ok, ok)
			require.InDelta(t, tt.want, v, 1e-12)
		})
	}
	_, ok := earthwork.Grid(0, [][]float64{{1, 1}, {1, 1}})
	require.False(t, ok)
}

// TestGridIsTheSumOfItsCells: the weights 1, 2 and 4 come to the mean of its four
// corners in each cell.
func TestGridIsTheSumOfItsCells(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, m := rapid.IntRange(2, 6).Draw(t, "n"), rapid.IntRange(2, 6).Draw(t, "m")
		rows := make([][]float64, n)
		for i := range rows {
			rows[i] = rapid.SliceOfN(rapid.Float64Range(-5, 5), m, m).Draw(t, "row")
		}
		sum := 0.0
		for i := range n - 1 {
			for j := range m - 1 {
				sum += 3 * (rows[i][j] + rows[i+1][j] + rows[i][j+1] + rows[i+1][j+1]) / 4
			}
		}
		v, ok := earthwork.Grid(3, rows)
		require.InDelta(t, sum, value(t, v, ok), 1e-9)
	})
}

// TestRefusals: no formula answers for what cannot be.
func TestRefusals(t *testing.T) {
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		for name, f := range map[string]func(float64) (float64, bool){
			"average end area": func(x float64) (float64, bool) { return earthwork.AverageEndArea(1, x, 1) },
			"prismoidal":       func(x float64) (float64, bool) { return earthwork.Prismoidal(1, 1, x, 1) },
			"frustum":          func(x float64) (float64, bool) { return earthwork.Frustum(1, 1, x) },
			"trench section":   earthwork.Trench{Width: 1}.Section,
			"mass":             func(x float64) (float64, bool) { return earthwork.Mass(1, x) },
			"dry density":      func(x float64) (float64, bool) { return earthwork.DryDensity(x, 0.4) },
			"swell":            func(x float64) (float64, bool) { return earthwork.Swell(x, 1) },
			"shrinkage":        func(x float64) (float64, bool) { return earthwork.Shrinkage(1, x) },
			"settlement":       func(x float64) (float64, bool) { return earthwork.Settlement(x, 0.1) },
			"sheet side":       func(x float64) (float64, bool) { return earthwork.SheetSide(1, x, 0, 0) },
			"convert": func(x float64) (float64, bool) {
				return earthwork.Clay.Convert(x, earthwork.Bank, earthwork.Loose)
			},
		} {
			v, ok := f(bad)
			require.False(t, ok, "%s of %v", name, bad)
			require.Zero(t, v, "%s of %v", name, bad)
		}
	}
	for name, ok := range map[string]bool{
		"porosity above 1":   second(earthwork.DryDensity(2.65, 1.1)),
		"swell from nothing": second(earthwork.Swell(1, 0)),
		"swell of nothing":   second(earthwork.Swell(0, 1)),
		"shrink of nothing":  second(earthwork.Shrinkage(0, 1)),
		"shrink beyond all":  second(earthwork.Settlement(1, 1.5)),
	} {
		require.False(t, ok, name)
	}
}

func second(_ float64, ok bool) bool { return ok }
