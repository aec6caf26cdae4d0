package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

const metreADay = 1.0 / 86400

func TestLayers(t *testing.T) {
	f := compute(t, wetBed("", `, "media": [
		{"material": "pea gravel", "size": "16 mm", "thickness": "0.2 m"},
		{"material": "gravel", "size": "20 mm", "porosity": "41 %", "conductivity": "7500 m/d"}]`))
	requireKnown(t, f, "layers", "bed-1 layer 1", map[string]any{
		"bed": "bed-1", "material": "pea gravel", "size": 0.016, "thickness": 0.2, "volume": 18 * 0.2,
		// Fine gravel of 16 mm: U.S. EPA 1993 gives 0.38; Crites and others 2006, chapter 7, 0.35 to 0.38 and 1,000 to
		// 10,000 m/d. Both remembered.
		"least_porosity": 0.35, "greatest_porosity": 0.38, "least_pore_volume": 18 * 0.2 * 0.35, "greatest_pore_volume": 18 * 0.2 * 0.38,
		"least_conductivity": 1000 * metreADay, "greatest_conductivity": 10000 * metreADay,
	})
	require.Contains(t, known(t, f, "layers", "bed-1 layer 1", "porosity_source"), "from memory")
	requireKnown(t, f, "layers", "bed-1 layer 2", map[string]any{
		"thickness": 0.6 - 0.2, "volume": 18 * 0.4, "least_porosity": 0.41, "greatest_porosity": 0.41, "porosity_source": "drawn",
		"least_conductivity": 7500 * metreADay, "greatest_conductivity": 7500 * metreADay, "conductivity_source": "drawn",
	})
}

// A size between two of the tables has the values of both: 16 mm down to 0.35
// and 1,000 m/d, 32 mm up to 0.40 and 50,000 m/d (Crites and others 2006,
// remembered).
func TestSizeBetweenThoseOfTheTables(t *testing.T) {
	f := compute(t, wetBed("", `, "media": [{"material": "gravel", "size": "3/4 in"}]`))
	requireKnown(t, f, "layers", "bed-1 layer 1", map[string]any{
		"least_porosity": 0.35, "greatest_porosity": 0.40, "least_conductivity": 1000 * metreADay, "greatest_conductivity": 50000 * metreADay,
	})
	// The bed's head loss spans the same fifty times.
	least, greatest := known(t, f, "head_loss", "bed-1, clean media", "least_head_loss").(float64), known(t, f, "head_loss", "bed-1, clean media", "greatest_head_loss").(float64)
	require.InDelta(t, 50, greatest/least, 1e-9)
}

func TestLayerLacks(t *testing.T) {
	layer := func(i, entry string) string { return "/parts/0/media/" + i + "/" + entry }
	f := compute(t, wetBed("", `, "media": [{"material": "a", "thickness": "0.7 m"}, {"material": "b", "size": "200 mm"}]`))
	requireLacks(t, f, "layers", "bed-1 layer 1", "size", layer("0", "size"))
	requireLacks(t, f, "layers", "bed-1 layer 1", "least_porosity", layer("0", "porosity"))
	requireLacks(t, f, "layers", "bed-1 layer 2", "thickness", layer("1", "thickness"))
	requireLacks(t, f, "layers", "bed-1 layer 2", "greatest_conductivity", layer("1", "conductivity"))
	require.Contains(t, value(t, f, "layers", "bed-1 layer 2", "greatest_conductivity").Lacks[0].Entry, "within the range of 1 mm to 128 mm")
	f = compute(t, wetBed("", `, "media": [{"material": "a"}, {"material": "b"}]`))
	requireLacks(t, f, "layers", "bed-1 layer 2", "volume", layer("0", "thickness"))
	requireLacks(t, f, "bed_flow", "bed-1", "least_pore_volume", layer("0", "thickness"))
}

// The water stands 0.1 m below the surface.
func TestHowLayersLie(t *testing.T) {
	fine, coarse := `"material": "pea gravel", "size": "10 mm", "thickness": `, `{"material": "gravel", "size": "20 mm", "washed": true}`
	for thickness, lies := range map[string]string{"0.1 m": "above the water", "0.11 m": "under water", "0.05 m": "above the water"} {
		f := compute(t, wetBed("", `, "media": [{`+fine+`"`+thickness+`", "washed": false}, `+coarse+`]`))
		requireKnown(t, f, "layers", "bed-1 layer 1", map[string]any{"lies": lies, "washed": false, "no_finer_than_above": true})
		requireKnown(t, f, "layers", "bed-1 layer 2", map[string]any{"lies": "under water", "washed": true, "no_finer_than_above": true})
	}
	f := compute(t, wetBed("", `, "media": [{"material": "rock", "size": "40 mm", "thickness": "0.2 m"}, {"material": "a", "size": "10 mm", "thickness": "0.1 m"}, {"material": "b"}]`))
	requireKnown(t, f, "layers", "bed-1 layer 2", map[string]any{"no_finer_than_above": false})
	requireLacks(t, f, "layers", "bed-1 layer 3", "no_finer_than_above", "/parts/0/media/2/size")
	requireLacks(t, f, "layers", "bed-1 layer 1", "washed", "/parts/0/media/0/washed")
	requireLacks(t, compute(t, bedding(`[]`, `, "floor": "9 m", "surface": "10 m", "media": [`+coarse+`]`)), "layers", "bed-1 layer 1", "lies", "/parts/0/water_level")
}

// The bed is 0.6 m deep, with a tolerance of 10 mm.
func TestWhetherLayersFill(t *testing.T) {
	tests := map[string]struct {
		media string
		thick float64
		fill  bool
	}{
		"the lowest fills":     {`{"material": "a", "thickness": "0.1 m"}, {"material": "b"}`, 0.6, true},
		"as thick as deep":     {`{"material": "a", "thickness": "0.1 m"}, {"material": "b", "thickness": "0.5 m"}`, 0.6, true},
		"within the tolerance": {`{"material": "a", "thickness": "0.59 m"}`, 0.59, true},
		"too thin":             {`{"material": "a", "thickness": "0.1 m"}, {"material": "b", "thickness": "0.2 m"}`, 0.3, false},
		"too thick":            {`{"material": "a", "thickness": "0.7 m"}`, 0.7, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			e := bedding(`[]`, `, "floor": "9.4 m", "surface": "10 m", "media": [`+tt.media+`]`).with(entries{"tolerances": `{"level": "10 mm"}`})
			requireKnown(t, compute(t, e), "beds", "bed-1", map[string]any{"layers_thickness": tt.thick, "layers_fill": tt.fill})
		})
	}
	f := compute(t, bedding(`[]`, `, "floor": "9.4 m", "surface": "10 m"`))
	requireLacks(t, f, "beds", "bed-1", "layers_fill", "/parts/0/media")
	requireLacks(t, f, "beds", "bed-1", "layers_thickness", "/parts/0/media")
}
