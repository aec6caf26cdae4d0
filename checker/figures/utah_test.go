package figures_test

import "testing"

// TestAreasByUtah for 100 gal/d (Utah Administrative Code R317-401-7 (2024), Table 8: 3
// gal/d on a square foot and 40 gal/d for an outlet in loam; R317-401-6, Table 4: 2.5
// gal/d on a square foot in sandy loam).
func TestAreasByUtah(t *testing.T) {
	flow := si(t, "100 gal/d")
	f := compute(t, soaker(loam, `{"id": "soak-1", "kind": "mulch basin", "outline": [[10, 10], [13, 10], [13, 12], [10, 12]], "outlets": 2, "depth": "0.3 m"}`))
	wanted := flow / si(t, "3 gal/d/ft2")
	requireKnown(t, f, "soakage", "soak-1", map[string]any{
		"utah_area_wanted": wanted, "utah_area_share": 6 / wanted, "outlets": 2.0, "utah_outlets_wanted": 3.0, "utah_outlets_share": 2.0 / 3, "depth": 0.3,
	})
	wanted = flow / si(t, "2.5 gal/d/ft2")
	f = compute(t, soaker(`{"texture": "sandy loam"}`, longLine))
	requireKnown(t, f, "soakage", "soak-1", map[string]any{"utah_area_wanted": wanted, "utah_area_share": 20 * 0.5 / wanted})
}

func TestWhatUtahsTablesLack(t *testing.T) {
	f := compute(t, soaker(`{}`, wideBasin))
	requireLacks(t, f, "soakage", "soak-1", "utah_area_share", "/site/soil/texture")
	requireLacks(t, f, "soakage", "soak-1", "utah_outlets_wanted", "/site/soil/texture")
	requireLacks(t, f, "soakage", "soak-1", "utah_outlets_share", "/parts/0/outlets", "/site/soil/texture")
	requireLacks(t, f, "soakage", "soak-1", "outlets", "/parts/0/outlets")
	requireLacks(t, f, "soakage", "soak-1", "depth", "/parts/0/depth")

	f = compute(t, soaker(loam, longLine))
	requireLacks(t, f, "soakage", "soak-1", "utah_outlets_wanted", "/parts/0/kind")
	unfed := soaker(loam, wideBasin).with(entries{"sources": drip})
	requireLacks(t, compute(t, unfed), "soakage", "soak-1", "utah_outlets_share", "/sources")
	requireLacks(t, compute(t, unfed), "soakage", "soak-1", "utah_area_share", "/sources")
}

// TestTheGroundUnderATrench rises 1 m in 10 m to the north.
func TestTheGroundUnderATrench(t *testing.T) {
	e := soaker(loam, longLine)
	e["site"] = siteWith(`"soil": ` + loam + `, "levels": [[0, 0, 5], [60, 0, 5], [60, 40, 9], [0, 40, 9]]`)
	requireKnown(t, compute(t, e), "soakage", "soak-1", map[string]any{"ground_slope": 0.1})
	e["site"] = siteWith(`"soil": ` + loam + `, "levels": [[0, 0, 5], [15, 0, 5], [0, 40, 9]]`)
	requireLacks(t, compute(t, e), "soakage", "soak-1", "ground_slope", "/site/levels")
	requireLacks(t, compute(t, soaker(loam, longLine)), "soakage", "soak-1", "ground_slope", "/site/levels")
	e["site"] = siteWith(`"soil": ` + loam + `, "levels": [[0, 0, 5], [0, 0, 6], [0, 40, 9]]`)
	requireLacks(t, compute(t, e), "soakage", "soak-1", "ground_slope", "/site/levels")
}

func TestTheSoil(t *testing.T) {
	requireKnown(t, compute(t, soaker(loam, longLine)), "soil", "the soil", map[string]any{"texture": "loam", "percolation": si(t, "20 min/in")})
	f := compute(t, soaker(`{}`, longLine))
	requireLacks(t, f, "soil", "the soil", "texture", "/site/soil/texture")
	requireLacks(t, f, "soil", "the soil", "percolation", "/site/soil/percolation")
	if got := subjects(compute(t, entries{}), "soil"); len(got) > 0 {
		t.Errorf("a design that lets no water into soil has the subjects %v", got)
	}
}
