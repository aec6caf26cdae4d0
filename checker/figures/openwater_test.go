package figures_test

import (
	"slices"
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
		"after the bed":      {`[{"id": "s", "kind": "shower", "to": "bed-1"}]`, true, true, "none"},
		"straight into it":   {`[{"id": "s", "kind": "shower", "to": "pond-1"}]`, true, false, "s"},
		"in part":            {`[{"id": "s", "kind": "shower", "to": [{"target": "bed-1"}, {"target": "pond-1"}]}, {"id": "u", "kind": "shower", "to": "bed-1"}]`, true, false, "s"},
		"by a tank overflow": {`[{"id": "s", "kind": "shower", "to": "tank-1"}]`, true, false, "s"},
		"rain alone":         {`[{"id": "s", "kind": "roof drain", "to": "pond-1"}]`, false, true, "none"},
		"nothing":            {`[]`, false, true, "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, ponding(tt.sources))
			requireKnown(t, f, "open_water", "pond-1", map[string]any{
				"kind": "pond", "receives_greywater": tt.receives, "treated_first": tt.treated, "untreated_sources": tt.from, "has_permit": true,
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
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]}
	]`}
}

func TestWhichWaterIsOpen(t *testing.T) {
	f := compute(t, ponding(`[]`))
	require.Equal(t, []string{"pond-1", "settling-1", "settling-3", "tank-2"}, slices.Sorted(slices.Values(subjects(f, "open_water"))))
	requireKnown(t, f, "open_water", "settling-1", map[string]any{"has_permit": false})
}

func TestOpenWaterWithAWayNotDrawn(t *testing.T) {
	f := compute(t, ponding(`[{"id": "s", "kind": "shower", "to": "pipe-1"}]`))
	requireLacks(t, f, "open_water", "pond-1", "receives_greywater", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "treated_first", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "untreated_sources", "/parts/9/to")

	f = compute(t, ponding(`[{"id": "s", "kind": "shower", "to": [{"target": "pond-1"}, {"target": "pipe-1"}]}]`))
	requireKnown(t, f, "open_water", "pond-1", map[string]any{"receives_greywater": true, "treated_first": false})
}
