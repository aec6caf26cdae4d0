package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// ponded is a shower on a bed that runs into a pond, with what a test says of the
// pond.
func besidePond(pond string) entries {
	return entries{
		"site":    siteWith(`"climate": {"freezing_index": "400 °C·d"}`),
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "bed-1"}]`,
		"parts": `[
			{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "to": "pond-1", "overflow_to": "sewer-1"},
			{"id": "pond-1", "kind": "pond", "outline": [[20, 10], [28, 10], [28, 16], [20, 16]]` + pond + `, "overflow_to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
		]`,
	}
}

func TestAnEmbankment(t *testing.T) {
	f := compute(t, besidePond(`, "side_slope": "1:3", "rim_level": "10.0 m", "water_level": "9.7 m",
		"embankment": {"top_level": "10.1 m", "top_width": "1.8 m", "outside_slope": "40 %", "toe_level": "8.9 m"}`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{
		"inside_slope": 1.0 / 3, "outside_slope": 0.4, "embankment_runs": 3 + 1/0.4, "embankment_height": 10.1 - 8.9, "embankment_top_width": 1.8, "freeboard": 10 - 9.7,
	})
	f = compute(t, besidePond(`, "embankment": {"top_level": "10.1 m"}`))
	requireLacks(t, f, "ponds", "pond-1", "embankment_runs", "/parts/1/side_slope", "/parts/1/embankment/outside_slope")
	requireLacks(t, f, "ponds", "pond-1", "embankment_height", "/parts/1/embankment/toe_level")
	requireLacks(t, f, "ponds", "pond-1", "inside_slope", "/parts/1/side_slope")
}

func TestAPondWithoutAnEmbankment(t *testing.T) {
	f := compute(t, besidePond(``))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"has_embankment": false, "climb_out_by": "sides"})
	requireLacks(t, f, "ponds", "pond-1", "embankment_height", "/parts/1/rim_level", "/site/levels")
	requireLacks(t, f, "ponds", "pond-1", "shelf_width", "/parts/1/edge/shelf_width")
	requireLacks(t, f, "ponds", "pond-1", "shelf_depth", "/parts/1/edge/shelf_depth")
	requireLacks(t, f, "ponds", "pond-1", "outside_slope", "/parts/1/embankment")
	requireLacks(t, f, "ponds", "pond-1", "embankment_top_width", "/parts/1/embankment")
}

// What holds the water in above the ground is drawn as an embankment.
func TestARimOverTheGround(t *testing.T) {
	const ground = `, "edge_levels": ["10.2 m", "10.0 m", "10.4 m", "10.3 m"], "rim_level": `
	for _, rim := range []string{"9.8 m", "10.0 m"} {
		requireKnown(t, compute(t, besidePond(ground+`"`+rim+`"`)), "ponds", "pond-1", map[string]any{"embankment_height": 0.0})
	}
	requireLacks(t, compute(t, besidePond(ground+`"10.1 m"`)), "ponds", "pond-1", "embankment_height", "/parts/1/embankment")
}

func TestAShelf(t *testing.T) {
	for edge, by := range map[string]string{
		`{"shelf_width": "0.6 m", "shelf_depth": "0.2 m"}`: "shelf",
		`{"shelf_width": "0.6 m"}`:                         "sides",
		`{"shelf_width": "0 m", "shelf_depth": "0.2 m"}`:   "sides",
		`{"shelf_depth": "0.2 m"}`:                         "sides",
	} {
		requireKnown(t, compute(t, besidePond(`, "edge": `+edge)), "ponds", "pond-1", map[string]any{"climb_out_by": by})
	}
	f := compute(t, besidePond(`, "edge": {"shelf_width": "0.6 m", "shelf_depth": "0.2 m"}`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"shelf_width": 0.6, "shelf_depth": 0.2})
}

// TestWaterUnderIce: 400 °C·d are 720 °F·d. A windy lake without snow grows 0.8 in for
// each root of a °F·d (CRREL Technical Note 04-3, as quoted on a page about ice
// thickness), which is 21.5 in or 0.545 m.
func TestWaterUnderIce(t *testing.T) {
	for depth, left := range map[string]bool{"0.5 m": false, "0.6 m": true} {
		f := compute(t, besidePond(`, "floor": "0 m", "water_level": "`+depth+`"`))
		requireKnown(t, f, "ponds", "pond-1", map[string]any{"water_under_ice": left})
		require.InDelta(t, si(t, depth)-0.545, known(t, f, "ponds", "pond-1", "least_winter_depth"), 1e-3)
	}
	requireLacks(t, compute(t, besidePond(``)), "ponds", "pond-1", "water_under_ice", "/parts/1/water_level", "/parts/1/floor")
}

func TestFish(t *testing.T) {
	requireKnown(t, compute(t, besidePond(``)), "ponds", "pond-1", map[string]any{"stocked": false, "fish": "none", "has_stocking_permit": false})
	f := compute(t, besidePond(`, "stocked": [{"species": "Carassius auratus", "count": 3}, {"species": "Gambusia affinis"}], "stocking_permit": "Leave 26-031"`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"stocked": true, "fish": "Carassius auratus, Gambusia affinis", "has_stocking_permit": true})
}

// TestWhatHasSettled: a settling basin settles what runs through and over it; a bed
// only what runs through it.
func TestWhatHasSettled(t *testing.T) {
	tests := map[string]struct {
		sources, from string
		settled       bool
	}{
		"nothing":                     {drip, "none", true},
		"greywater by a bed":          {`[{"id": "s", "kind": "shower", "to": "bed-1"}]`, "none", true},
		"greywater over a bed":        {`[{"id": "s", "kind": "shower", "to": "bed-2"}]`, "s", false},
		"greywater by a basin":        {`[{"id": "s", "kind": "shower", "to": "basin-1"}]`, "none", true},
		"greywater over a basin":      {`[{"id": "s", "kind": "shower", "to": "basin-2"}]`, "none", true},
		"greywater by a tank":         {`[{"id": "s", "kind": "shower", "to": "tank-1"}]`, "s", false},
		"a roof":                      {`[{"id": "r", "kind": "roof drain", "to": "pond-1"}]`, "r", false},
		"a roof by a basin":           {`[{"id": "r", "kind": "roof drain", "to": "basin-1"}]`, "none", true},
		"a sump pump, which is clear": {`[{"id": "p", "kind": "sump pump", "to": "pond-1"}]`, "none", true},
		"a roof and greywater":        {`[{"id": "r", "kind": "roof drain", "to": "pond-1"}, {"id": "s", "kind": "shower", "to": "tank-1"}]`, "r, s", false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{"sources": tt.sources, "parts": settledParts(``)})
			requireKnown(t, f, "ponds", "pond-1", map[string]any{"settled_first": tt.settled, "unsettled_sources": tt.from})
		})
	}
}

func settledParts(more string) string {
	return `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "to": "pond-1"},
		{"id": "bed-2", "kind": "planted gravel bed", "outline": [[10, 20], [16, 20], [16, 23], [10, 23]], "to": "sewer-1", "overflow_to": "pond-1"},
		{"id": "basin-1", "kind": "settling basin", "outline": [[10, 30], [12, 30], [12, 31], [10, 31]], "to": "pond-1"},
		{"id": "basin-2", "kind": "settling basin", "outline": [[14, 30], [16, 30], [16, 31], [14, 31]], "to": "sewer-1", "overflow_to": "pond-1"},
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "pond-1"},
		{"id": "pond-1", "kind": "pond", "outline": [[20, 10], [28, 10], [28, 16], [20, 16]], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}` + more + `]`
}

func TestStormWaterSettles(t *testing.T) {
	f := compute(t, entries{"parts": settledParts(`, {"id": "storm-1", "kind": "storm inflow", "at": [30, 30], "catchment": "40 m2", "runoff_coefficient": 0.9, "to": "pond-1"}`)})
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"settled_first": false, "unsettled_sources": "storm-1"})
	f = compute(t, entries{"sources": `[{"id": "s", "kind": "shower", "to": "pipe-1"}]`, "parts": settledParts(`, {"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]}`)})
	requireLacks(t, f, "ponds", "pond-1", "settled_first", "/parts/7/to")
	requireLacks(t, f, "ponds", "pond-1", "unsettled_sources", "/parts/7/to")
}
