package figures_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// laid is a bed of 6 m × 3 m on level ground at 10 m, and a trench of 20 m × 0.5 m.
func laid(bed, trench string) entries {
	return entries{
		"site": siteWith(`"levels": [[0, 0, 10], [60, 0, 10], [60, 40, 10], [0, 40, 10]], "soil": {"texture": "loam"}`),
		"parts": `[
			{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "surface": "9.9 m", "floor": "9.3 m"` + bed + `},
			{"id": "trench-1", "kind": "infiltration trench", "path": [[20, 20], [40, 20]], "width": "0.5 m"` + trench + `}]`,
	}
}

// TestGravel: pores of 40 % leave 60 % of stone, 2.5 to 2.7 times as heavy as water.
func TestGravel(t *testing.T) {
	f := compute(t, laid(`, "media": [{"material": "pea gravel", "size": "8 mm", "thickness": "0.1 m", "porosity": "35 %"}, {"material": "gravel", "porosity": "40 %"}]`,
		`, "media": [{"material": "stone", "thickness": "0.3 m", "porosity": "40 %"}]`))
	requireKnown(t, f, "quantities.gravel", "bed-1 layer 1", map[string]any{
		"part": "bed-1", "material": "pea gravel", "size": 0.008, "volume": 18 * 0.1, "least_mass": 1.8 * 2500 * 0.65, "greatest_mass": 1.8 * 2700 * 0.65})
	requireKnown(t, f, "quantities.gravel", "bed-1 layer 2", map[string]any{"volume": 18 * 0.5, "least_mass": 9 * 2500 * 0.60, "greatest_mass": 9 * 2700 * 0.60})
	requireKnown(t, f, "quantities.gravel", "trench-1 layer 1", map[string]any{"part": "trench-1", "material": "stone", "volume": 10 * 0.3, "least_mass": 3 * 2500 * 0.60})
}

// TestGravelByItsSize has the pores that tables give stones of that size, and so weighs
// about what stone dumped loose is known to: AASHTO No. 57 1.40 t/m³, No. 4 1.51 t/m³
// (laboratory values of open-graded aggregates, compiled in 2011).
func TestGravelByItsSize(t *testing.T) {
	f := compute(t, laid(`, "media": [{"material": "gravel", "size": "20 mm"}]`, ``))
	volume := known(t, f, "quantities.gravel", "bed-1 layer 1", "volume").(float64)
	require.Less(t, known(t, f, "quantities.gravel", "bed-1 layer 1", "least_mass").(float64)/volume, 1510.0)
	require.Greater(t, known(t, f, "quantities.gravel", "bed-1 layer 1", "greatest_mass").(float64)/volume, 1400.0)
}

func TestWhatGravelLacks(t *testing.T) {
	f := compute(t, laid(`, "media": [{"material": "gravel"}, {"material": "sand", "thickness": "0.1 m", "porosity": "40 %"}]`, `, "media": [{"material": "stone"}]`))
	requireLacks(t, f, "quantities.gravel", "bed-1 layer 1", "size", "/parts/0/media/0/size")
	requireLacks(t, f, "quantities.gravel", "bed-1 layer 1", "least_mass", "/parts/0/media/0/thickness", "/parts/0/media/0/porosity")
	requireLacks(t, f, "quantities.gravel", "trench-1 layer 1", "volume", "/parts/1/media/0/thickness")

	without := laid(``, `, "media": [{"material": "stone", "thickness": "0.3 m", "porosity": "40 %"}]`)
	without["parts"] = strings.Replace(without["parts"], `, "width": "0.5 m"`, ``, 1)
	requireLacks(t, compute(t, without), "quantities.gravel", "trench-1 layer 1", "volume", "/parts/1/width")
}

// TestALiner: down and up the upright walls of 0.7 m below the rim at 10 m, and 0.3 m
// over each edge.
func TestALiner(t *testing.T) {
	f := compute(t, laid(`, "rim_level": "10 m", "liner": {"material": "EPDM", "overlap": "0.3 m"}`, ``))
	requireKnown(t, f, "quantities.liner", "bed-1", map[string]any{"material": "EPDM", "length": 6 + 2*0.7 + 2*0.3, "width": 3 + 2*0.7 + 2*0.3, "area": 8.0 * 5.0})

	// Without a rim the sheet ends at the gravel's surface, 0.6 m over the floor.
	f = compute(t, laid(`, "liner": {"material": "EPDM", "overlap": "0.3 m"}`, ``))
	requireKnown(t, f, "quantities.liner", "bed-1", map[string]any{"length": 6 + 2*0.6 + 2*0.3})
}

// TestAPublishedLiner: 10 ft by 8 ft and 2 ft deep with 2 ft over each edge takes 18 ft by
// 16 ft by the garden rule, length + 2 depths + 2 overlaps (from memory).
func TestAPublishedLiner(t *testing.T) {
	pond := func(slope string) entries {
		return entries{
			"site": `{"grid": {"unit": "ft"}, "boundary": [[0, 0], [200, 0], [200, 200], [0, 200]]}`,
			"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[20, 20], [30, 20], [30, 28], [20, 28]], "rim_level": "100 ft", "floor": "98 ft",` + slope + `
				"liner": {"material": "EPDM", "overlap": "2 ft"}}]`,
		}
	}
	foot := si(t, "1 ft")
	requireKnown(t, compute(t, pond(``)), "quantities.liner", "pond-1", map[string]any{"length": 18 * foot, "width": 16 * foot, "area": 288 * foot * foot})
	// Sides of 1:1 leave a bottom of 6 ft × 4 ft, and are 2√2 ft long.
	requireKnown(t, compute(t, pond(`"side_slope": "100 %",`)), "quantities.liner", "pond-1", map[string]any{
		"length": (6 + 4*math.Sqrt2 + 4) * foot, "width": (4 + 4*math.Sqrt2 + 4) * foot})
}

func TestWhatALinerLacks(t *testing.T) {
	f := compute(t, laid(`, "liner": {}`, ``))
	requireLacks(t, f, "quantities.liner", "bed-1", "material", "/parts/0/liner/material")
	requireLacks(t, f, "quantities.liner", "bed-1", "area", "/parts/0/liner/overlap")
	require.Equal(t, "overlap of the liner of bed-1", value(t, f, "quantities.liner", "bed-1", "area").Lacks[0].Entry)

	f = compute(t, entries{"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[20, 20], [30, 20], [30, 28], [20, 28]], "liner": {"material": "EPDM", "overlap": "2 ft"}}]`})
	requireLacks(t, f, "quantities.liner", "pond-1", "length", "/parts/0/rim_level", "/parts/0/floor")

	// A rim under the floor is no depth.
	f = compute(t, laid(`, "rim_level": "9 m", "liner": {"material": "EPDM", "overlap": "0.3 m"}`, ``))
	requireLacks(t, f, "quantities.liner", "bed-1", "length", "/parts/0/rim_level")
	require.Equal(t, "rim_level of bed-1 above its floor", value(t, f, "quantities.liner", "bed-1", "length").Lacks[0].Entry)
}

func TestMulch(t *testing.T) {
	f := compute(t, laid(`, "mulch": "0.1 m"`, `, "mulch": "4 in"`))
	require.Equal(t, []string{"bed-1", "trench-1"}, subjects(f, "quantities.mulch"))
	requireKnown(t, f, "quantities.mulch", "bed-1", map[string]any{"volume": 18 * 0.1})
	requireKnown(t, f, "quantities.mulch", "trench-1", map[string]any{"volume": 10 * 4 * 0.0254})
	require.Empty(t, subjects(compute(t, laid(`, "mulch": "0 in"`, ``)), "quantities.mulch"))
}

// TestPlants share a bed's area evenly: 9 m² at 0.5 m are 36 in squares, and 41.6 in
// rows that are staggered, each plant with spacing² × √3 ÷ 2.
func TestPlants(t *testing.T) {
	f := compute(t, laid(`, "plants": [{"species": " Carex ", "spacing": "0.5 m"}, {"species": "Iris", "spacing": "1 m"}]`, ``))
	requireKnown(t, f, "quantities.plants", "plant 1 of bed-1", map[string]any{
		"part": "bed-1", "species": "Carex", "spacing": 0.5, "least_count": 36.0, "greatest_count": math.Ceil(9 / (0.25 * math.Sqrt(3) / 2))})
	requireKnown(t, f, "quantities.plants", "plant 2 of bed-1", map[string]any{"species": "Iris", "least_count": 9.0, "greatest_count": 11.0})
}

func TestWhatPlantsLack(t *testing.T) {
	f := compute(t, laid(`, "plants": [{"species": "Carex"}, {"species": "Iris", "spacing": "0 m"}]`, ``))
	requireLacks(t, f, "quantities.plants", "plant 1 of bed-1", "spacing", "/parts/0/plants/0/spacing")
	requireLacks(t, f, "quantities.plants", "plant 1 of bed-1", "least_count", "/parts/0/plants/0/spacing")
	require.Contains(t, value(t, f, "quantities.plants", "plant 2 of bed-1", "least_count").Lacks[0].Entry, "within the range")
}
