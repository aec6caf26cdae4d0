package dispersal_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/dispersal"
)

// Units by their definitions, worked out here once more.
const (
	gpd     = 3.785411784e-3 / 86400
	ft      = 0.3048
	gpdPerF = gpd / ft / ft
	mpi     = 60 / 0.0254
)

func value(t require.TestingT, v float64, ok bool) float64 {
	require.True(t, ok)
	return v
}

func TestArea(t *testing.T) {
	area, ok := dispersal.Area(160*gpd, 2.5*gpdPerF)
	require.InDelta(t, 64*ft*ft, value(t, area, ok), 1e-9)
	// 5 gallons a day on a square foot are 204 litres a day on a square metre.
	require.InDelta(t, 204, dispersal.UtahTrench.Rows[0].Rate*86400*1000, 0.5)
}

func TestAreaByFlowAndRate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		flow, rate := rapid.Float64Range(1e-7, 1).Draw(t, "flow"), rapid.Float64Range(1e-7, 1e-3).Draw(t, "rate")
		area, ok := dispersal.Area(flow, rate)
		require.InEpsilon(t, flow, value(t, area, ok)*rate, 1e-12, "at its rate, the area takes the flow")
		more, ok := dispersal.Area(2*flow, rate)
		require.InEpsilon(t, 2*area, value(t, more, ok), 1e-12)
		less, ok := dispersal.Area(flow, 2*rate)
		require.InEpsilon(t, area/2, value(t, less, ok), 1e-12)
	})
}

func TestTextureRate(t *testing.T) {
	tests := map[string]struct {
		table    *dispersal.TextureTable
		texture  string
		soil     string
		inferred bool
		ok       bool
	}{
		"named":                    {&dispersal.UtahTrench, "sandy loam", "sandy loam", false, true},
		"coarse":                   {&dispersal.UtahTrench, "gravel", "coarse sand or gravel", false, true},
		"between, finer is less":   {&dispersal.UtahTrench, "sand", "fine sand", true, true},
		"loam":                     {&dispersal.UtahTrench, "loam", "sandy clay loam", true, true},
		"sandy clay":               {&dispersal.UtahTrench, "sandy clay", "clay with sand or gravel", true, true},
		"between, coarser is less": {&dispersal.UniformPlumbingCode, "silty clay loam", "clay with considerable sand or gravel", true, true},
		"coarser than any":         {&dispersal.UtahMulch, "gravel", "sand", true, true},
		"clay loam in mulch":       {&dispersal.UtahMulch, "clay loam", "clay", true, true},
		"class":                    {&dispersal.TexasClasses, "loam", "class II", false, true},
		"no texture":               {&dispersal.UtahTrench, "peat", "", false, false},
		"nothing":                  {&dispersal.UtahTrench, "", "", false, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			row, inferred, ok := tt.table.Rate(tt.texture)
			require.Equal(t, tt.ok, ok)
			require.Equal(t, tt.inferred, inferred)
			require.Equal(t, tt.soil, row.Soil)
		})
	}
	short := dispersal.TextureTable{Rows: []dispersal.Row{{Soil: "sand", Rate: 1, Textures: []string{"sand"}}}}
	_, _, ok := short.Rate("clay")
	require.False(t, ok, "finer than any")
}

// TestTexturesGetLess: the finer the soil, the less it takes, row by row.
func TestTexturesGetLess(t *testing.T) {
	for _, table := range dispersal.TextureTables {
		for i, row := range table.Rows {
			require.Positive(t, row.Rate, table.Name)
			require.NotEmpty(t, row.Textures, table.Name)
			require.Subset(t, dispersal.Textures, row.Textures, table.Name)
			if i > 0 {
				require.Less(t, row.Rate, table.Rows[i-1].Rate, table.Name)
			}
		}
		require.NotEmpty(t, table.Source)
		require.Contains(t, []string{"published", "from memory"}, table.Standing)
		for _, texture := range dispersal.Textures {
			_, _, ok := table.Rate(texture)
			require.True(t, ok, "%s: %s", table.Name, texture)
		}
	}
}

func TestPercolationRate(t *testing.T) {
	tests := map[string]struct {
		table   *dispersal.PercolationTable
		minutes float64
		want    float64 // gal/d on a square foot
		ok      bool
	}{
		"fastest":              {&dispersal.Montana, 0, 0.8, true},
		"within":               {&dispersal.Montana, 8, 0.6, true},
		"just below a bound":   {&dispersal.Montana, 15.99, 0.5, true},
		"on a bound":           {&dispersal.Montana, 16, 0.4, true},
		"slowest":              {&dispersal.Montana, 120.9, 0.2, true},
		"printed twice":        {&dispersal.Montana, 121, 0, false},
		"not permitted":        {&dispersal.Montana, 500, 0, false},
		"last class with end":  {&dispersal.InternationalPlumbingCode, 60, 0.4, true},
		"beyond the table":     {&dispersal.InternationalPlumbingCode, 60.01, 0, false},
		"another class":        {&dispersal.InternationalPlumbingCode, 30, 0.72, true},
		"negative":             {&dispersal.Montana, -1, 0, false},
		"not a number":         {&dispersal.Montana, math.NaN(), 0, false},
		"does not soak at all": {&dispersal.Montana, math.Inf(1), 0, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			rate, ok := tt.table.Rate(tt.minutes * mpi)
			require.Equal(t, tt.ok, ok)
			require.InDelta(t, tt.want*gpdPerF, rate, 1e-15)
		})
	}
}

// TestBoundsInCentimetres: 16 min/in written as min/cm is on the bound all the
// same.
func TestBoundsInCentimetres(t *testing.T) {
	rate, ok := dispersal.Montana.Rate(16 / 2.54 * 60 / 0.01)
	require.InDelta(t, 0.4*gpdPerF, value(t, rate, ok), 1e-15)
}

func TestSlowerSoilTakesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := rapid.SampledFrom(dispersal.PercolationTables).Draw(t, "table")
		minutes := rapid.Float64Range(0, 130)
		a, b := minutes.Draw(t, "a")*mpi, minutes.Draw(t, "b")*mpi
		fast, _ := table.Rate(min(a, b))
		slow, _ := table.Rate(max(a, b))
		require.GreaterOrEqual(t, fast, slow)
	})
	for _, table := range dispersal.PercolationTables {
		require.NotEmpty(t, table.Name)
		require.NotEmpty(t, table.Source)
		require.Contains(t, []string{"published", "from memory"}, table.Standing)
	}
}

func TestTexas(t *testing.T) {
	// A trench of 20 ft by 3 ft: 60 ft² and 46 ft round.
	area, ok := dispersal.TexasArea(60*ft*ft, 46*ft)
	require.InDelta(t, 106*ft*ft, value(t, area, ok), 1e-12)
}

func TestSouthDakota(t *testing.T) {
	for _, outside := range []float64{0, 749, 7501, -1, math.NaN(), math.Inf(1)} {
		_, ok := dispersal.SouthDakotaArea(outside*gpd, 20*mpi)
		require.False(t, ok, "%v gal/d", outside)
	}
	_, ok := dispersal.SouthDakotaArea(1000*gpd, -mpi)
	require.False(t, ok)
	for inches, want := range map[float64]float64{0: 0, 11.9: 0, 12: 0.20, 18: 0.34, 24: 0.40, 40: 0.40} {
		share, ok := dispersal.SouthDakotaTrench(inches * 0.0254)
		require.InDelta(t, want, value(t, share, ok), 1e-12, "%v in", inches)
	}
	_, ok = dispersal.SouthDakotaTrench(-0.1)
	require.False(t, ok)
}

func TestOutlets(t *testing.T) {
	emitters, discharge, ok := dispersal.UtahEmitters("sandy loam", 160*gpd)
	require.True(t, ok)
	require.Equal(t, 144, emitters)
	require.InDelta(t, 1.2*gpd, discharge, 1e-15)
	shields, ok := dispersal.UtahShields("loam", 160*gpd)
	require.True(t, ok)
	require.Equal(t, 4, shields)
	shields, ok = dispersal.UtahShields("loam", 161*gpd)
	require.True(t, ok)
	require.Equal(t, 5, shields)
	for _, flow := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, _, ok = dispersal.UtahEmitters("sandy loam", flow)
		require.False(t, ok)
		_, ok = dispersal.UtahShields("loam", flow)
		require.False(t, ok)
	}
	_, _, ok = dispersal.UtahEmitters("loam", gpd)
	require.False(t, ok, "a soil that the table does not have")
	_, ok = dispersal.UtahShields("sandy loam", gpd)
	require.False(t, ok, "a soil that the table does not have")
}

// TestOutletsForEverySoil: each soil of the loading tables has its outlets. The
// least number of emitters, each at its most, comes near the whole flow: the two
// columns of the table are reciprocals, rounded.
func TestOutletsForEverySoil(t *testing.T) {
	for _, row := range dispersal.UtahTrench.Rows {
		emitters, discharge, ok := dispersal.UtahEmitters(row.Soil, 1000*gpd)
		require.True(t, ok, row.Soil)
		require.InEpsilon(t, 1000*gpd, float64(emitters)*discharge, 0.09, row.Soil)
	}
	for _, row := range dispersal.UtahMulch.Rows {
		_, ok := dispersal.UtahShields(row.Soil, 1000*gpd)
		require.True(t, ok, row.Soil)
	}
}

func TestMulch(t *testing.T) {
	held, ok := dispersal.MulchHeld(2, 0.25, 0.5)
	require.InDelta(t, 0.25, value(t, held, ok), 1e-15)
	wanted, ok := dispersal.MulchWanted(0.15, 0.5)
	require.InDelta(t, 0.3, value(t, wanted, ok), 1e-15)
}

func TestRefusals(t *testing.T) {
	for name, ok := range map[string]bool{
		"no rate":           second(dispersal.Area(1, 0)),
		"nothing over none": second(dispersal.Area(0, 0)),
		"negative flow":     second(dispersal.Area(-1, 1)),
		"endless flow":      second(dispersal.Area(math.Inf(1), 1)),
		"no pipe":           second(dispersal.PipeArea(math.NaN(), 1)),
		"negative width":    second(dispersal.PipeArea(1, -1)),
		"no perimeter":      second(dispersal.TexasArea(1, -1)),
		"porosity above 1":  second(dispersal.MulchHeld(1, 1, 1.1)),
		"no porosity":       second(dispersal.MulchWanted(1, 0)),
		"all pores and one": second(dispersal.MulchWanted(1, 1.5)),
		"negative surge":    second(dispersal.MulchWanted(-1, 0.5)),
	} {
		require.False(t, ok, name)
	}
}

func second(_ float64, ok bool) bool { return ok }
