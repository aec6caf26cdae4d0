package figures_test

import (
	"testing"
)

func TestDiverters(t *testing.T) {
	tests := map[string]struct {
		second string
		sewer  bool
		route  string
	}{
		"to the sewer":              {`, "bypass_to": "sewer-1"`, true, "diverter-1 → sewer-1"},
		"none":                      {``, false, "none"},
		"to the bed":                {`, "bypass_to": "bed-1"`, false, "diverter-1 → bed-1 → basin-1"},
		"one way to the sewer":      {`, "bypass_to": [{"target": "sewer-1"}, {"target": "basin-1"}]`, false, "diverter-1 → sewer-1; diverter-1 → basin-1"},
		"through the tank":          {`, "bypass_to": "tank-2"`, false, "diverter-1 → tank-2 → sewer-1"},
		"to a feature":              {`, "bypass_to": "brook"`, false, "diverter-1 → brook"},
		"by a pipe":                 {`, "bypass_to": "pipe-1"`, true, "diverter-1 → pipe-1 → sewer-1"},
		"by another diverter's to":  {`, "bypass_to": "diverter-2"`, false, "diverter-1 → diverter-2 → sewer-1"},
		"to the sewer by two pipes": {`, "bypass_to": [{"target": "pipe-1"}, {"target": "sewer-1"}]`, true, "diverter-1 → pipe-1 → sewer-1; diverter-1 → sewer-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, diverting(tt.second)), "diverters", "diverter-1",
				map[string]any{"second_route_reaches_sewer": tt.sewer, "second_route": tt.route})
		})
	}
}

func diverting(second string) entries {
	return withBrook(drip).with(entries{"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 30], "to": "bed-1"` + second + `},
		{"id": "diverter-2", "kind": "diverter", "at": [10, 30], "to": "bed-1", "bypass_to": "sewer-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "tank-2", "kind": "surge tank", "at": [10, 30], "to": "sewer-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "to": "sewer-1"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`})
}

func TestASecondRouteNotDrawnToItsEnd(t *testing.T) {
	f := compute(t, diverting(`, "bypass_to": "pipe-2"`))
	requireLacks(t, f, "diverters", "diverter-1", "second_route_reaches_sewer", "/parts/6/to")

	f = compute(t, diverting(`, "bypass_to": [{"target": "pipe-2"}, {"target": "basin-1"}]`))
	requireKnown(t, f, "diverters", "diverter-1", map[string]any{"second_route_reaches_sewer": false})
}
