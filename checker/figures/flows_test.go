package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

func TestFlows(t *testing.T) {
	f := compute(t, train)
	tests := map[string]map[string]any{
		"diverter-1": {"warm_season_sources": "shower-1, washer-1", "warm_season_flow": si(t, "160 gal/d"), "bypass_season_sources": "shower-1, washer-1", "bypass_season_flow": si(t, "160 gal/d")},
		"bed-1":      {"warm_season_sources": "shower-1, washer-1", "warm_season_flow": si(t, "160 gal/d"), "bypass_season_sources": "none", "bypass_season_flow": 0.0},
		"trench-1":   {"warm_season_sources": "none", "warm_season_flow": 0.0, "bypass_season_sources": "none", "bypass_season_flow": 0.0},
		"sewer-1":    {"warm_season_sources": "toilet-1", "warm_season_flow": 0.0, "bypass_season_sources": "shower-1, washer-1, toilet-1", "bypass_season_flow": si(t, "160 gal/d")},
	}
	for part, want := range tests {
		t.Run(part, func(t *testing.T) { requireFlows(t, f, part, want) })
	}
}

// TestShares: three fixtures share the bathing of four occupants, 100 gal/d.
func TestShares(t *testing.T) {
	third := 100.0 / 3
	tests := map[string]struct {
		outlets string
		a, b, c float64 // gal/d of one fixture's third that reach the basins
	}{
		"none stated":             {`[{"target": "basin-a"}, {"target": "basin-b"}, {"target": "basin-c"}]`, third / 3, third / 3, third / 3},
		"one stated":              {`[{"target": "basin-a", "share": "50 %"}, {"target": "basin-b"}, {"target": "basin-c"}]`, third / 2, third / 4, third / 4},
		"all stated":              {`[{"target": "basin-a", "share": "20 %"}, {"target": "basin-b", "share": "30 %"}, {"target": "basin-c", "share": "50 %"}]`, third * 0.2, third * 0.3, third * 0.5},
		"stated to a tenth":       {`[{"target": "basin-a", "share": "33.3 %"}, {"target": "basin-b", "share": "33.3 %"}, {"target": "basin-c", "share": "33.3 %"}]`, third / 3, third / 3, third / 3},
		"nothing left":            {`[{"target": "basin-a", "share": "100 %"}, {"target": "basin-b"}]`, third, 0, 0},
		"twice to the same basin": {`[{"target": "basin-a"}, {"target": "basin-a"}, {"target": "basin-b"}]`, third * 2 / 3, third / 3, 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{
				"sources": `[{"id": "s", "kind": "shower", "to": ` + tt.outlets + `}, {"id": "u", "kind": "bathtub", "to": "basin-d"}, {"id": "v", "kind": "washbasin", "to": "basin-d"}]`,
				"parts": `[{"id": "basin-a", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}, {"id": "basin-b", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]},
					{"id": "basin-c", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}, {"id": "basin-d", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}]`,
			})
			for basin, want := range map[string]float64{"basin-a": tt.a, "basin-b": tt.b, "basin-c": tt.c, "basin-d": 2 * third} {
				requireFlows(t, f, basin, map[string]any{"warm_season_flow": want * si(t, "1 gal/d"), "bypass_season_flow": want * si(t, "1 gal/d")})
			}
		})
	}
}

// TestFlowsWithAWayNotDrawn: the drain pipe might lead anywhere but to what
// lies above it.
func TestFlowsWithAWayNotDrawn(t *testing.T) {
	f := compute(t, train.with(entries{"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 30], "to": [{"target": "bed-1"}, {"target": "pipe-1"}], "bypass_to": "sewer-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`}))
	requireLacks(t, f, "flows", "bed-1", "warm_season_flow", "/parts/1/to")
	requireLacks(t, f, "flows", "bed-1", "warm_season_sources", "/parts/1/to")
	requireLacks(t, f, "flows", "sewer-1", "warm_season_flow", "/parts/1/to")
	requireFlows(t, f, "diverter-1", map[string]any{"warm_season_flow": si(t, "160 gal/d")})
	requireFlows(t, f, "pipe-1", map[string]any{"warm_season_flow": si(t, "80 gal/d"), "warm_season_sources": "shower-1, washer-1"})
	requireFlows(t, f, "bed-1", map[string]any{"bypass_season_flow": 0.0, "bypass_season_sources": "none"})
}

// TestAToiletWithoutAWay leaves open which sources a part has, and not how much
// greywater.
func TestAToiletWithoutAWay(t *testing.T) {
	f := compute(t, train.with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "diverter-1"}, {"id": "toilet-1", "kind": "toilet"}]`}))
	requireLacks(t, f, "flows", "bed-1", "warm_season_sources", "/sources/1/to")
	requireFlows(t, f, "bed-1", map[string]any{"warm_season_flow": si(t, "100 gal/d")})
}

func requireFlows(t *testing.T, f *figures.Figures, part string, want map[string]any) {
	t.Helper()
	for field, expected := range want {
		got := known(t, f, "flows", part, field)
		if flow, isNumber := expected.(float64); isNumber {
			require.InDelta(t, flow, got, 1e-15, "%s of %s", field, part)
			continue
		}
		require.Equal(t, expected, got, "%s of %s", field, part)
	}
}
