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

// TestWhatIsStatedOfADiverter: what a drawing does not say is not known.
func TestWhatIsStatedOfADiverter(t *testing.T) {
	for _, entry := range []string{"downstream_of_traps", "accessible", "labelled", "shows_direction"} {
		requireLacks(t, compute(t, diverting(``)), "diverters", "diverter-1", entry, "/parts/0/"+entry)
		requireKnown(t, compute(t, diverting(`, "`+entry+`": true`)), "diverters", "diverter-1", map[string]any{entry: true})
		requireKnown(t, compute(t, diverting(`, "`+entry+`": false`)), "diverters", "diverter-1", map[string]any{entry: false})
	}
}

// divided is a pipe through a diverter to a bed or, by a second pipe, the sewer.
func divided(valve, in, on, second, sewer string) entries {
	return entries{"parts": `[
		{"id": "pipe-0", "kind": "drain pipe", "path": [[0, 1], [1, 1]], "to": "diverter-1"` + in + `},
		{"id": "diverter-1", "kind": "diverter", "at": [1, 1], "to": "pipe-1", "bypass_to": "pipe-2"` + valve + `},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "to": "bed-1"` + on + `},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "pipe-3"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[1, 1], [1, 9]], "to": "sewer-1"` + second + `},
		{"id": "pipe-3", "kind": "drain pipe", "path": [[20, 28], [1, 9]], "to": "sewer-1", "diameter": "20 mm"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [1, 9]` + sewer + `}
	]`}
}

func TestWidthOfTheSecondRoute(t *testing.T) {
	const d40, d50, d80 = `, "diameter": "40 mm"`, `, "diameter": "50 mm"`, `, "diameter": "80 mm"`
	f := compute(t, divided(d50, d50, d40, d40, ``))
	requireKnown(t, f, "diverters", "diverter-1", map[string]any{"widest_way_in": 0.050, "narrowest_second": 0.040, "second_to_first": 40.0 / 50})
	f = compute(t, divided(``, d50, d80, d80, ``))
	requireKnown(t, f, "diverters", "diverter-1", map[string]any{"widest_way_in": 0.080, "narrowest_second": 0.080, "second_to_first": 1.0})

	f = compute(t, divided(d50, ``, d40, ``, ``))
	requireLacks(t, f, "diverters", "diverter-1", "widest_way_in", "/parts/0/diameter")
	requireLacks(t, f, "diverters", "diverter-1", "second_to_first", "/parts/4/diameter", "/parts/0/diameter")
}

func TestWidthWithoutPipes(t *testing.T) {
	straight := func(valve, second, sewer string) entries {
		return entries{"parts": `[
			{"id": "diverter-1", "kind": "diverter", "at": [1, 1], "to": "basin-1"` + second + valve + `},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
			{"id": "sewer-1", "kind": "sewer connection", "at": [1, 9]` + sewer + `}
		]`}
	}
	const toSewer, d50, d100 = `, "bypass_to": "sewer-1"`, `, "diameter": "50 mm"`, `, "diameter": "100 mm"`
	requireKnown(t, compute(t, straight(d50, toSewer, d100)), "diverters", "diverter-1", map[string]any{"second_to_first": 100.0 / 50})
	requireLacks(t, compute(t, straight(``, toSewer, d100)), "diverters", "diverter-1", "second_to_first", "/parts/0/diameter")
	requireLacks(t, compute(t, straight(d50, toSewer, ``)), "diverters", "diverter-1", "second_to_first", "/parts/2/diameter")
	requireLacks(t, compute(t, straight(d50, ``, d100)), "diverters", "diverter-1", "second_to_first", "/parts/0/bypass_to")
	requireLacks(t, compute(t, straight(d50, `, "bypass_to": "basin-1"`, d100)), "diverters", "diverter-1", "second_to_first", "/parts/0/bypass_to")
	requireLacks(t, compute(t, straight(`, "diameter": "0 mm"`, toSewer, d100)), "diverters", "diverter-1", "second_to_first", "/parts/0/diameter")
}
