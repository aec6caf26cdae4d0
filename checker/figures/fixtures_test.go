package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// washing is a washer and a shower on a basin, and a washbasin on the sewer.
var washing = entries{
	"sources": `[
		{"id": "washer-1", "kind": "clothes washer", "to": "basin-1", "volume_per_use": "20 gal", "uses_per_day": 1.5, "discharge_rate": "8 gal/min", "flow": "36 gal/d"},
		{"id": "shower-1", "kind": "shower", "to": "basin-1", "volume_per_use": "15 gal", "uses_per_day": 4, "fixture_units": 1.5},
		{"id": "washbasin-1", "kind": "washbasin", "to": "sewer-1"},
		{"id": "toilet-1", "kind": "toilet", "to": "sewer-1"}
	]`,
	"parts": `[{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
}

// TestFixtures has the flow by occupants of the California Plumbing Code,
// section 1503.8.1 (three bedrooms count for four people, 15 gal/d of laundry
// and 25 of bathing each), the units of the International Plumbing Code, Table
// 709.1 (from memory), of the Uniform Plumbing Code, Table 702.1 as adopted in
// King County, and, by rate, of its section 702.2 (from memory).
func TestFixtures(t *testing.T) {
	f := compute(t, washing)
	require.Equal(t, []string{"washer-1", "shower-1", "washbasin-1"}, subjects(f, "fixtures"))
	gallon, minute := 231*0.0254*0.0254*0.0254, 60.0
	tests := map[string]map[string]any{
		"washer-1": {
			"kind": "clothes washer", "on_system": true,
			"flow_by_occupants": 4 * 15 * gallon / 86400, "flow_by_fixture": 20 * 1.5 * gallon / 86400, "stated_flow": 36 * gallon / 86400,
			"surge_volume": 20 * gallon, "discharge_rate": 8 * gallon / minute, "surge_time": 20 / 8.0 * minute,
			"fixture_units_ipc": 2.0, "fixture_units_upc": 3.0, "fixture_units_by_rate": 2.0,
		},
		"shower-1": {
			"on_system": true, "flow_by_occupants": 4 * 25 * gallon / 86400, "flow_by_fixture": 15 * 4 * gallon / 86400,
			"fixture_units_ipc": 2.0, "fixture_units_upc": 2.0, "stated_fixture_units": 1.5,
		},
		"washbasin-1": {"on_system": false, "flow_by_occupants": 0.0, "fixture_units_ipc": 1.0, "fixture_units_upc": 1.0},
	}
	for fixture, want := range tests {
		t.Run(fixture, func(t *testing.T) { requireKnown(t, f, "fixtures", fixture, want) })
	}
}

func TestFixturesWithoutEntries(t *testing.T) {
	f := compute(t, washing)
	requireLacks(t, f, "fixtures", "washer-1", "stated_fixture_units", "/sources/0/fixture_units")
	requireLacks(t, f, "fixtures", "shower-1", "stated_flow", "/sources/1/flow")
	requireLacks(t, f, "fixtures", "shower-1", "surge_time", "/sources/1/discharge_rate")
	requireLacks(t, f, "fixtures", "shower-1", "fixture_units_by_rate", "/sources/1/discharge_rate")
	requireLacks(t, f, "fixtures", "washbasin-1", "surge_volume", "/sources/2/volume_per_use")
	requireLacks(t, f, "fixtures", "washbasin-1", "flow_by_fixture", "/sources/2/volume_per_use", "/sources/2/uses_per_day")
}

// TestFixtureRates: the table ends at 50 gal/min, and nothing drains in no time.
func TestFixtureRates(t *testing.T) {
	drawn := func(rate string) entries {
		return washing.with(entries{"sources": `[{"id": "w", "kind": "clothes washer", "to": "basin-1", "volume_per_use": "20 gal", "discharge_rate": "` + rate + `"}]`})
	}
	fast := value(t, compute(t, drawn("51 gal/min")), "fixtures", "w", "fixture_units_by_rate")
	require.Len(t, fast.Lacks, 1)
	require.Contains(t, fast.Lacks[0].Entry, "discharge_rate of w within the range of Uniform Plumbing Code, 702.2")
	requireLacks(t, compute(t, drawn("0 gal/min")), "fixtures", "w", "surge_time", "/sources/0/discharge_rate")
}

func TestFixturesWithAWayNotDrawn(t *testing.T) {
	f := compute(t, washing.with(entries{"sources": `[{"id": "w", "kind": "clothes washer"}]`}))
	requireLacks(t, f, "fixtures", "w", "on_system", "/sources/0/to")
	requireLacks(t, f, "fixtures", "w", "flow_by_occupants", "/sources/0/to")
	requireKnown(t, f, "fixtures", "w", map[string]any{"fixture_units_ipc": 2.0})
}

// TestAZeroIsGiven: a fixture that is not used and counts nothing, and ground from
// which nothing runs off, are drawn so.
func TestAZeroIsGiven(t *testing.T) {
	f := compute(t, entries{"sources": `[{"id": "w", "kind": "clothes washer", "to": "gully", "volume_per_use": "20 gal", "uses_per_day": 0, "fixture_units": 0}]`})
	requireKnown(t, f, "fixtures", "w", map[string]any{"flow_by_fixture": 0.0, "stated_fixture_units": 0.0})

	f = compute(t, raining(`, "intensity": "2 in/h"`, `, "catchment": "50 m2", "runoff_coefficient": 0`, ""))
	requireKnown(t, f, "storms", "storm-1", map[string]any{"least_coefficient": 0.0, "greatest_peak_flow": 0.0})
}
