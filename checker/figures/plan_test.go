package figures_test

import (
	"testing"
)

func TestPlan(t *testing.T) {
	f := compute(t, entries{
		"prepared":  `{"role": "installer", "date": "2025-05-14"}`,
		"operation": `{"operator": "owner"}`,
		"site": `{"grid": {"unit": "m", "north": "7 °", "datum": "10 m on the sill"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "services": [{"id": "water-1", "kind": "water", "path": [[0, 0], [9, 9]]}],
			"features": [{"id": "house", "kind": "building", "outline": [[1, 1], [5, 1], [5, 5]]}],
			"soil": {"tests": [{"kind": "test pit"}, {"kind": "boring"}]}, "looked_for_within": {"wells": "60 m", "surface_water": "150 m"}}`,
		"parts": `[{"id": "basin-1", "kind": "mulch basin", ` + outline + `}]`,
	})
	requireKnown(t, f, "plan", "the plan", map[string]any{
		"prepared_by": "installer", "prepared_on": "2025-05-14", "datum": "10 m on the sill", "shows_north": true, "shows_services": true, "shows_house": true, "shows_water_service": true,
		"soaks_away": true, "soil_tests": 2.0, "wells_shown_within": 60.0, "surface_water_shown_within": 150.0, "operator": "owner",
	})
}

func TestPlanWithoutEntries(t *testing.T) {
	f := compute(t, bare)
	requireKnown(t, f, "plan", "the plan", map[string]any{"shows_north": false, "shows_services": false, "shows_house": false, "shows_water_service": false, "soaks_away": false, "soil_tests": 0.0})
	for field, pointer := range map[string]string{
		"prepared_by": "/prepared/role", "prepared_on": "/prepared/date", "datum": "/site/grid/datum", "operator": "/operation/operator",
		"wells_shown_within": "/site/looked_for_within/wells", "surface_water_shown_within": "/site/looked_for_within/surface_water",
	} {
		requireLacks(t, f, "plan", "the plan", field, pointer)
	}
	blank := compute(t, entries{"operation": `{"operator": " "}`})
	requireLacks(t, blank, "plan", "the plan", "operator", "/operation/operator")
	f = compute(t, entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "looked_for_within": {}}`, "operation": `{}`})
	requireLacks(t, f, "plan", "the plan", "wells_shown_within", "/site/looked_for_within/wells")
	requireLacks(t, f, "plan", "the plan", "operator", "/operation/operator")
}
