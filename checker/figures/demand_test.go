package figures_test

import (
	"testing"
)

// TestDemand: of the washing only the washer and the shower are on the system.
// The Chicago Plumbing Code, 18-29-709.3, counts 1 gal/min for a unit; the
// International Plumbing Code, 709.3 (from memory), half of that.
func TestDemand(t *testing.T) {
	gallon := 231 * 0.0254 * 0.0254 * 0.0254
	requireKnown(t, compute(t, washing.with(entries{"dwelling": `{"bedrooms": 3, "sewage": "sewer", "stated_flow": "120 gal/d"}`})), "demand", "the system", map[string]any{
		"daily_flow_by_occupants": 4 * (25 + 15) * gallon / 86400,
		"daily_flow_by_fixture":   (20*1.5 + 15*4) * gallon / 86400,
		"stated_flow":             120 * gallon / 86400,
		"states_flow":             true,
		"stated_share":            120 / (4 * (25 + 15.0)),
		"laundry_surge_volume":    20 * gallon,
		"laundry_surge_rate":      8 * gallon / 60,
		"fixture_units_ipc":       2.0 + 2,
		"fixture_units_upc":       3.0 + 2,
		"peak_flow_ipc":           4 * gallon / 60 / 2,
		"peak_flow_chicago":       4 * gallon / 60,
	})
}

func TestDemandWithoutLaundry(t *testing.T) {
	f := compute(t, washing.with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "basin-1"}]`}))
	requireKnown(t, f, "demand", "the system", map[string]any{"laundry_surge_volume": 0.0, "laundry_surge_rate": 0.0, "fixture_units_upc": 2.0})
}

func TestStatedFlowAgainstNothing(t *testing.T) {
	stated := washing.with(entries{
		"dwelling": `{"bedrooms": 3, "sewage": "sewer", "stated_flow": "120 gal/d"}`,
		"sources":  `[{"id": "shower-1", "kind": "shower", "to": "sewer-1"}]`,
	})
	requireLacks(t, compute(t, stated), "demand", "the system", "stated_share", "/sources")
	requireKnown(t, compute(t, washing), "demand", "the system", map[string]any{"states_flow": false})
	requireLacks(t, compute(t, washing), "demand", "the system", "stated_share", "/dwelling/stated_flow")
}

func TestDemandWithoutEntries(t *testing.T) {
	f := compute(t, washing.with(entries{"sources": `[
		{"id": "washer-1", "kind": "clothes washer", "to": "basin-1", "uses_per_day": 1},
		{"id": "shower-1", "kind": "shower", "to": "basin-1", "volume_per_use": "15 gal"}
	]`}))
	requireLacks(t, f, "demand", "the system", "stated_flow", "/dwelling/stated_flow")
	requireLacks(t, f, "demand", "the system", "daily_flow_by_fixture", "/sources/1/uses_per_day", "/sources/0/volume_per_use")
	requireLacks(t, f, "demand", "the system", "laundry_surge_volume", "/sources/0/volume_per_use")
	requireLacks(t, f, "demand", "the system", "laundry_surge_rate", "/sources/0/discharge_rate")

	f = compute(t, washing.with(entries{"sources": `[{"id": "washer-1", "kind": "clothes washer"}]`}))
	requireLacks(t, f, "demand", "the system", "fixture_units_ipc", "/sources/0/to")
	requireLacks(t, f, "demand", "the system", "peak_flow_chicago", "/sources/0/to")
}
