package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func soaker(soil, part string) entries {
	return entries{
		"site":    siteWith(`"soil": ` + soil),
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "soak-1"}, {"id": "washer-1", "kind": "clothes washer", "to": "soak-2", "volume_per_use": "60 L"}]`,
		"parts":   `[` + part + `, {"id": "soak-2", "kind": "mulch basin", "outline": [[30, 10], [31, 10], [31, 11], [30, 11]], "mulch": "0.2 m"}]`,
	}
}

const (
	loam      = `{"texture": "loam", "percolation": "20 min/in"}`
	wideBasin = `{"id": "soak-1", "kind": "mulch basin", "outline": [[10, 10], [13, 10], [13, 12], [10, 12]], "mulch": "0.3 m"}`
	longLine  = `{"id": "soak-1", "kind": "infiltration trench", "path": [[10, 10], [30, 10]], "width": "0.5 m"}`
)

// TestTheAreaThatSoilWants for 100 gal/d on loam of 20 min/in. The rates are those of
// Utah Administrative Code R317-401-7 (2024), Table 8 (3 gal/d on a square foot), and
// R317-401-6, Table 4 (a loam is not in it: that of sandy clay loam, 1.6); Uniform
// Plumbing Code, Table 1503.5 (from memory: 60 ft² for 100 gal/d of sandy clay); 30
// Texas Administrative Code § 285.91(1) (0.25); Montana DEQ, Circular DEQ-4, Table 8-1
// (0.4); International Plumbing Code, Table 1303.8 (from memory: 0.8).
func TestTheAreaThatSoilWants(t *testing.T) {
	foot := si(t, "1 ft")
	tests := map[string]struct {
		part   string
		wanted map[string]float64 // square feet
	}{
		"mulch basin": {wideBasin, map[string]float64{
			"Utah, mulch basin": 100 / 3.0, "Uniform Plumbing Code, six soils": 60, "Texas, on-site sewage": 400, "Montana, on-site sewage": 250,
			"International Plumbing Code, seepage": 125}},
		"trench": {longLine, map[string]float64{
			"Utah, trench": 100 / 1.6, "Uniform Plumbing Code, six soils": 60, "Texas, on-site sewage": 400, "Montana, on-site sewage": 250,
			"International Plumbing Code, seepage": 125}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, soaker(loam, tt.part))
			for basis, squareFeet := range tt.wanted {
				require.InDelta(t, squareFeet*foot*foot, known(t, f, "soakage_areas", "soak-1 by "+basis, "area_wanted"), 1e-9, basis)
			}
			require.Len(t, f.List("soakage_areas"), 2*len(tt.wanted))
			require.InDelta(t, 400*foot*foot, known(t, f, "soakage", "soak-1", "greatest_area_wanted"), 1e-9)
		})
	}
}

func TestSoakage(t *testing.T) {
	f := compute(t, soaker(loam, wideBasin))
	flow := si(t, "100 gal/d")
	requireKnown(t, f, "soakage", "soak-1", map[string]any{
		"kind": "mulch basin", "area": 6.0, "flow": flow, "loading": flow / 6, "mulch_volume": 6 * 0.3, "surge_volume": 0.0, "porosity_wanted": 0.0,
		"least_area_wanted": flow / si(t, "3 gal/d/ft2"),
	})
	requireKnown(t, f, "soakage", "soak-2", map[string]any{"surge_volume": 0.06, "porosity_wanted": 0.06 / (1 * 0.2)})
	requireKnown(t, f, "soakage_areas", "soak-1 by Texas, on-site sewage", map[string]any{
		"soil": "class II", "soil_inferred": false, "area_counted": 6 + 10*0.3048, "counted_to_wanted": (6 + 10*0.3048) / (400 * 0.3048 * 0.3048),
	})
	requireKnown(t, f, "soakage_areas", "soak-1 by Uniform Plumbing Code, six soils", map[string]any{"soil": "sandy clay", "soil_inferred": true})
}

// TestTheSidesOfALongTrench: 20 m × 0.5 m has 41 m of side.
func TestTheSidesOfALongTrench(t *testing.T) {
	f := compute(t, soaker(loam, longLine))
	requireKnown(t, f, "soakage", "soak-1", map[string]any{"area": 10.0})
	requireKnown(t, f, "soakage_areas", "soak-1 by Texas, on-site sewage", map[string]any{"area_counted": 10 + 41*0.3048})
}

func TestWhatSoakageLacks(t *testing.T) {
	f := compute(t, soaker(`{}`, wideBasin))
	requireLacks(t, f, "soakage_areas", "soak-1 by Utah, mulch basin", "area_wanted", "/site/soil/texture")
	requireLacks(t, f, "soakage_areas", "soak-1 by Montana, on-site sewage", "soil", "/site/soil/percolation")
	requireLacks(t, f, "soakage", "soak-1", "least_area_wanted", "/site/soil/texture")

	f = compute(t, soaker(`{"texture": "silty clay", "percolation": "90 min/in"}`, wideBasin))
	v := value(t, f, "soakage_areas", "soak-1 by International Plumbing Code, seepage", "rate")
	require.Equal(t, "percolation of the site's soil within the range of International Plumbing Code, seepage", v.Lacks[0].Entry)
}

// TestWhatSoaksAwayUntreated: greywater that a bed has not cleaned reaches a part straight, or by a bed's overflow.
func TestWhatSoaksAwayUntreated(t *testing.T) {
	parts := `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "soak-1", "overflow_to": "soak-2"},
		{"id": "soak-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "soak-2", "kind": "infiltration trench", "path": [[10, 10], [30, 10]], "width": "0.5 m"},
		{"id": "soak-3", "kind": "mulch basin", "outline": [[34, 28], [36, 28], [36, 30]]}
	]`
	f := compute(t, entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "bed-1"}, {"id": "tub-1", "kind": "bathtub", "to": "soak-3"}]`, "parts": parts})
	requireKnown(t, f, "soakage", "soak-1", map[string]any{"treated_first": true, "untreated_sources": "none"})
	requireKnown(t, f, "soakage", "soak-2", map[string]any{"treated_first": false, "untreated_sources": "shower-1"})
	requireKnown(t, f, "soakage", "soak-3", map[string]any{"treated_first": false, "untreated_sources": "tub-1"})

	f = compute(t, entries{"sources": `[{"id": "shower-1", "kind": "shower"}]`, "parts": parts})
	requireLacks(t, f, "soakage", "soak-1", "treated_first", "/sources/0/to")
}

// TestATrenchThatOnlyOverflowsReach has no area wanted, and no ratio to it.
func TestATrenchThatOnlyOverflowsReach(t *testing.T) {
	f := compute(t, train.with(entries{"site": siteWith(`"soil": ` + loam)}))
	requireKnown(t, f, "soakage", "trench-1", map[string]any{"flow": 0.0, "loading": 0.0, "greatest_area_wanted": 0.0})
	requireLacks(t, f, "soakage_areas", "trench-1 by Utah, trench", "counted_to_wanted", "/sources")
}
