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
		sewer    bool
		route    string
	}{
		"to the sewer":              {`, "overflow_to": "sewer-1"`, true, true, true, "bed-1 → sewer-1"},
		"none":                      {``, false, false, false, "none"},
		"to a basin":                {`, "overflow_to": "basin-1"`, true, true, false, "bed-1 → basin-1"},
		"to a brook":                {`, "overflow_to": "brook"`, true, false, false, "bed-1 → brook"},
		"by a pipe to a brook":      {`, "overflow_to": "over-1"`, true, false, false, "bed-1 → over-1 → brook"},
		"one way to a brook":        {`, "overflow_to": [{"target": "basin-1"}, {"target": "over-1"}]`, true, false, false, "bed-1 → basin-1; bed-1 → over-1 → brook"},
		"to a pond that spills":     {`, "overflow_to": "pond-1"`, true, false, false, "bed-1 → pond-1 → basin-1; pond-1 → over-1 → brook"},
		"to a tank with a safe end": {`, "overflow_to": "tank-2"`, true, true, false, "bed-1 → tank-2 → sewer-1; tank-2 → basin-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, overflowing(tt.overflow))
			require.Equal(t, []string{"bed-1", "pond-1", "tank-2"}, subjects(f, "holdings"))
			requireKnown(t, f, "holdings", "bed-1", map[string]any{
				"kind": "planted gravel bed", "has_overflow": tt.has, "overflow_ends_safely": tt.safe, "overflow_ends_in_sewer": tt.sewer,
				"overflow_route": tt.route,
			})
		})
	}
}

// TestBasinsHoldWaterThatDrainOn: what a basin or trench does not take up
// overflows, whichever way it is drawn.
func TestBasinsHoldWaterThatDrainOn(t *testing.T) {
	f := compute(t, withBrook(drip).with(entries{"parts": `[
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "basin-2", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]], "to": "brook"},
		{"id": "basin-3", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]], "overflow_to": "brook"},
		{"id": "trench-1", "kind": "infiltration trench", "path": [[1, 1], [2, 1]], "to": "basin-1"},
		{"id": "trench-2", "kind": "infiltration trench", "path": [[1, 1], [2, 1]], "to": "basin-1", "overflow_to": "basin-2"}
	]`}))
	require.Equal(t, []string{"basin-2", "basin-3", "trench-1", "trench-2"}, subjects(f, "holdings"))
	for subject, want := range map[string]struct {
		safe  bool
		route string
	}{
		"basin-2":  {false, "basin-2 → brook"},
		"basin-3":  {false, "basin-3 → brook"},
		"trench-1": {true, "trench-1 → basin-1"},
		"trench-2": {false, "trench-2 → basin-1; trench-2 → basin-2 → brook"},
	} {
		requireKnown(t, f, "holdings", subject, map[string]any{"has_overflow": true, "overflow_ends_safely": want.safe, "overflow_route": want.route})
	}
}

func overflowing(overflow string) entries {
	return withBrook(drip).with(entries{"parts": `[
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
	requireLacks(t, f, "holdings", "bed-1", "overflow_ends_in_sewer", "/parts/5/to")
	requireKnown(t, f, "holdings", "bed-1", map[string]any{"has_overflow": true, "overflow_route": "bed-1 → over-2"})
}
