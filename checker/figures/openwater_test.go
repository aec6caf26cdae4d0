package figures_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestOpenWater(t *testing.T) {
	tests := map[string]struct {
		sources  string
		receives bool
		treated  bool
		from     string
	}{
		"after the bed":                 {`[{"id": "s", "kind": "shower", "to": "bed-1"}]`, true, true, "none"},
		"straight into it":              {`[{"id": "s", "kind": "shower", "to": "pond-1"}]`, true, false, "s"},
		"in part":                       {`[{"id": "s", "kind": "shower", "to": [{"target": "bed-1"}, {"target": "pond-1"}]}, {"id": "u", "kind": "shower", "to": "bed-1"}]`, true, false, "s"},
		"by a bed's overflow":           {`[{"id": "s", "kind": "shower", "to": "bed-2"}]`, true, false, "s"},
		"a toilet":                      {`[{"id": "s", "kind": "toilet", "to": "pond-1"}]`, true, false, "s"},
		"a kitchen sink, after the bed": {`[{"id": "s", "kind": "kitchen sink", "to": "bed-1"}]`, true, true, "none"},
		"brine":                         {`[{"id": "s", "kind": "softener backwash", "to": "pond-1"}]`, true, false, "s"},
		"by a tank overflow":            {`[{"id": "s", "kind": "shower", "to": "tank-1"}]`, true, false, "s"},
		"rain alone":                    {`[{"id": "s", "kind": "roof drain", "to": "pond-1"}]`, false, true, "none"},
		"nothing":                       {drip, false, true, "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, ponding(tt.sources))
			requireKnown(t, f, "open_water", "pond-1", map[string]any{
				"kind": "pond", "receives_wastewater": tt.receives, "treated_first": tt.treated, "untreated_sources": tt.from, "has_permit": true,
			})
		})
	}
}

func ponding(sources string) entries {
	return entries{"sources": sources, "parts": `[
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "bed-1", "overflow_to": "pond-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "pond-1"},
		{"id": "pond-1", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "permit": "W-17", "to": "basin-1"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "tank-2", "kind": "surge tank", "at": [1, 1], "covered": false, "to": "basin-1"},
		{"id": "tank-3", "kind": "surge tank", "at": [1, 1], "covered": true, "to": "basin-1"},
		{"id": "settling-1", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "to": "basin-1"},
		{"id": "settling-2", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "covered": true, "to": "basin-1"},
		{"id": "settling-3", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "covered": false, "to": "basin-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
		{"id": "bed-2", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1", "overflow_to": "pond-1"},
		{"id": "filter-1", "kind": "filter", "at": [1, 1], "to": "basin-1"},
		{"id": "spill-1", "kind": "spillway", "path": [[1, 1], [2, 1]], "to": "basin-1"},
		{"id": "tank-4", "kind": "surge tank", "at": [1, 1], "covered": true, "to": "basin-1", "overflow_to": "spill-1"}
	]`}
}

func TestWhichWaterIsOpen(t *testing.T) {
	f := compute(t, ponding(drip))
	open := map[string]bool{"pond-1": true, "settling-3": true, "spill-1": true, "tank-2": true, "settling-2": false, "tank-3": false, "tank-4": false}
	notSaid := map[string]string{"tank-1": "/parts/0/covered", "settling-1": "/parts/6/covered", "filter-1": "/parts/11/covered"}
	require.ElementsMatch(t, slices.AppendSeq(slices.Collect(maps.Keys(open)), maps.Keys(notSaid)), subjects(f, "open_water"))
	for subject, lies := range open {
		requireKnown(t, f, "open_water", subject, map[string]any{"lies_open": lies})
	}
	for subject, pointer := range notSaid {
		requireLacks(t, f, "open_water", subject, "lies_open", pointer)
	}
	requireKnown(t, f, "open_water", "settling-1", map[string]any{"has_permit": false})
}

// TestSpillways: an overflow may run over a spillway, the greywater of every day
// may not before it has passed through a bed.
func TestSpillways(t *testing.T) {
	tests := map[string]struct {
		sources  string
		receives bool
		treated  bool
	}{
		"every day":            {`[{"id": "s", "kind": "shower", "to": "spill-1"}]`, true, false},
		"by an overflow":       {`[{"id": "s", "kind": "shower", "to": "tank-4"}]`, true, true},
		"rain alone":           {`[{"id": "s", "kind": "roof drain", "to": "spill-1"}]`, false, true},
		"in the bypass season": {`[{"id": "s", "kind": "shower", "to": "diverter-1"}]`, true, false},
		"after the bed":        {`[{"id": "s", "kind": "shower", "to": "bed-3"}]`, true, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			e := ponding(tt.sources)
			e["parts"] = strings.TrimRight(e["parts"], "]\n\t ") + `,
				{"id": "diverter-1", "kind": "diverter", "at": [1, 1], "to": "bed-2", "bypass_to": "spill-1"},
				{"id": "bed-3", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "spill-1"}]`
			requireKnown(t, compute(t, e), "open_water", "spill-1", map[string]any{"receives_wastewater": tt.receives, "treated_first": tt.treated})
		})
	}
}

func TestOpenWaterWithAWayNotDrawn(t *testing.T) {
	f := compute(t, ponding(`[{"id": "s", "kind": "shower", "to": "pipe-1"}]`))
	requireLacks(t, f, "open_water", "pond-1", "receives_wastewater", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "treated_first", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "untreated_sources", "/parts/9/to")

	f = compute(t, ponding(`[{"id": "s", "kind": "shower", "to": [{"target": "pond-1"}, {"target": "pipe-1"}]}]`))
	requireKnown(t, f, "open_water", "pond-1", map[string]any{"receives_wastewater": true, "treated_first": false})
}

func TestDepthAndBarrierOfOpenWater(t *testing.T) {
	f := compute(t, entries{"parts": `[
		{"id": "pond-1", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "floor": ["9 m", "8.8 m", "9.1 m"], "water_level": "9.5 m",
			"barrier": {"height": "48 in", "self_latching_gate": true}},
		{"id": "pond-2", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "floor": "9 m", "water_level": "9.4 m", "screened": true, "childproof": true},
		{"id": "settling-1", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "settling-2", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "covered": true},
		{"id": "spill-1", "kind": "spillway", "path": [[1, 1], [2, 1]]}]`})
	requireKnown(t, f, "open_water", "pond-1", map[string]any{"water_depth": 9.5 - 8.8, "barrier_height": 48 * 0.0254, "gate_latches_itself": true})
	requireKnown(t, f, "open_water", "tank-1", map[string]any{"water_depth": 9.4 - 9, "barrier_height": 0.0, "gate_latches_itself": false, "screened": true, "childproof": true})
	requireLacks(t, f, "open_water", "pond-2", "water_depth", "/parts/1/water_level", "/parts/1/floor")
	requireLacks(t, f, "open_water", "pond-2", "barrier_height", "/parts/1/barrier/height")
	requireLacks(t, f, "open_water", "pond-2", "gate_latches_itself", "/parts/1/barrier/self_latching_gate")
	requireKnown(t, f, "open_water", "pond-2", map[string]any{"screened": false, "childproof": false})
	requireLacks(t, f, "open_water", "settling-1", "screened", "/parts/3/screened")
	requireLacks(t, f, "open_water", "settling-1", "childproof", "/parts/3/childproof")
	requireLacks(t, f, "open_water", "settling-1", "barrier_height", "/parts/3/barrier/height")
	requireKnown(t, f, "open_water", "settling-2", map[string]any{"barrier_height": 0.0, "gate_latches_itself": false})
	requireKnown(t, f, "open_water", "spill-1", map[string]any{"water_depth": 0.0, "barrier_height": 0.0, "screened": false})
}
