package figures_test

import (
	"testing"
)

// raining is a yard of 10 acres that drains into a trench, and a roof, in a
// storm of an intensity.
func raining(intensity, inflow, roof string) entries {
	return entries{
		"site":    `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "climate": {"design_storm": {"duration": "1 h"` + intensity + `}}}`,
		"sources": `[{"id": "roof-1", "kind": "roof drain", "to": "sewer-1"` + roof + `}]`,
		"parts": `[{"id": "storm-1", "kind": "storm inflow", "at": [10, 10], "to": "sewer-1"` + inflow + `},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	}
}

// TestStorms: 10 acres at 0.35 in 2 in/h give 0.35 × 2 × 10 = 7.0 cfs by the
// rational method, as the trade words it (the arithmetic is common practice, no
// source); the exact factor is 43,560 ÷ 43,200 = 1.0083. The range of roofs,
// 0.75 to 0.95, is that of FHWA HEC-22, Table 3-1, as given in a summary.
func TestStorms(t *testing.T) {
	f := compute(t, raining(`, "intensity": "2 in/h"`, `, "catchment": "435600 ft2", "runoff_coefficient": 0.35`, `, "roof_area": "100 m2"`))
	cfs, inchAnHour := 0.3048*0.3048*0.3048, 0.0254/3600
	requireKnown(t, f, "storms", "storm-1", map[string]any{
		"kind": "storm inflow", "area": 43560 * 10 * 0.3048 * 0.3048, "least_coefficient": 0.35, "greatest_coefficient": 0.35,
		"intensity": 2 * inchAnHour, "least_peak_flow": 7.0 * 43560 / 43200 * cfs, "greatest_peak_flow": 7.0 * 43560 / 43200 * cfs,
	})
	requireKnown(t, f, "storms", "roof-1", map[string]any{
		"kind": "roof drain", "area": 100.0, "least_coefficient": 0.75, "greatest_coefficient": 1.0,
		"least_peak_flow": 0.75 * 2 * inchAnHour * 100, "greatest_peak_flow": 2 * inchAnHour * 100,
	})
}

func TestStormsWithoutEntries(t *testing.T) {
	f := compute(t, raining("", "", ""))
	requireLacks(t, f, "storms", "storm-1", "area", "/parts/0/catchment")
	requireLacks(t, f, "storms", "storm-1", "least_coefficient", "/parts/0/runoff_coefficient")
	requireLacks(t, f, "storms", "storm-1", "greatest_peak_flow", "/parts/0/runoff_coefficient", "/site/climate/design_storm/intensity", "/parts/0/catchment")
	requireLacks(t, f, "storms", "roof-1", "intensity", "/site/climate/design_storm/intensity")
	requireLacks(t, f, "storms", "roof-1", "least_peak_flow", "/site/climate/design_storm/intensity", "/sources/0/roof_area")
}
