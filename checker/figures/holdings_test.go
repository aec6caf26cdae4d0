package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestHoldings(t *testing.T) {
	tests := map[string]struct {
		overflow string
		has      bool
		safe     bool
		route    string
	}{
		"to the sewer":              {`, "overflow_to": "sewer-1"`, true, true, "bed-1 → sewer-1"},
		"none":                      {``, false, false, "none"},
		"to a basin":                {`, "overflow_to": "basin-1"`, true, true, "bed-1 → basin-1"},
		"to a brook":                {`, "overflow_to": "brook"`, true, false, "bed-1 → brook"},
		"by a pipe to a brook":      {`, "overflow_to": "over-1"`, true, false, "bed-1 → over-1 → brook"},
		"one way to a brook":        {`, "overflow_to": [{"target": "basin-1"}, {"target": "over-1"}]`, true, false, "bed-1 → basin-1; bed-1 → over-1 → brook"},
		"to a pond that spills":     {`, "overflow_to": "pond-1"`, true, false, "bed-1 → pond-1 → basin-1; pond-1 → over-1 → brook"},
		"to a tank with a safe end": {`, "overflow_to": "tank-2"`, true, true, "bed-1 → tank-2 → sewer-1; tank-2 → basin-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, overflowing(tt.overflow))
			require.Equal(t, []string{"bed-1", "pond-1", "tank-2"}, subjects(f, "holdings"))
			requireKnown(t, f, "holdings", "bed-1", map[string]any{
				"kind": "planted gravel bed", "has_overflow": tt.has, "overflow_ends_safely": tt.safe, "overflow_route": tt.route,
			})
		})
	}
}

func overflowing(overflow string) entries {
	return withBrook(`[]`).with(entries{"parts": `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "sewer-1"` + overflow + `},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "pond-1", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "to": "basin-1", "overflow_to": "over-1"},
		{"id": "tank-2", "kind": "surge tank", "at": [10, 30], "to": "sewer-1", "overflow_to": "basin-1"},
		{"id": "over-1", "kind": "overflow pipe", "path": [[1, 1], [2, 1]], "to": "brook"},
		{"id": "over-2", "kind": "overflow pipe", "path": [[1, 1], [2, 1]]},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`})
}

func TestAnOverflowNotDrawnToItsEnd(t *testing.T) {
	f := compute(t, overflowing(`, "overflow_to": "over-2"`))
	requireLacks(t, f, "holdings", "bed-1", "overflow_ends_safely", "/parts/5/to")
	requireKnown(t, f, "holdings", "bed-1", map[string]any{"has_overflow": true, "overflow_route": "bed-1 → over-2"})
}
