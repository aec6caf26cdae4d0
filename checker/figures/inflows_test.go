package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestInflows(t *testing.T) {
	tests := map[string]struct {
		source string
		want   map[string]any
	}{
		"to the bed":       {`{"id": "s", "kind": "shower", "to": "bed-1"}`, map[string]any{"water": "greywater", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → bed-1 → basin-1"}},
		"by the diverter":  {`{"id": "s", "kind": "sump pump", "to": "diverter-1"}`, map[string]any{"water": "clear water", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → diverter-1 → tank-1 → bed-1 → basin-1"}},
		"below the bed":    {`{"id": "s", "kind": "roof drain", "to": "basin-1"}`, map[string]any{"enters_train": true, "enters_at_or_above_bed": false, "route": "s → basin-1"}},
		"to the sewer":     {`{"id": "s", "kind": "toilet", "to": "sewer-1"}`, map[string]any{"water": "toilet waste", "enters_train": false, "enters_at_or_above_bed": false, "route": "s → sewer-1"}},
		"in part":          {`{"id": "s", "kind": "dishwasher", "to": [{"target": "sewer-1", "share": "90 %"}, {"target": "tank-1"}]}`, map[string]any{"water": "kitchen waste", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → sewer-1; s → tank-1 → bed-1 → basin-1"}},
		"by an overflow":   {`{"id": "s", "kind": "softener backwash", "to": "spill-1"}`, map[string]any{"water": "brine", "enters_train": true, "enters_at_or_above_bed": false, "route": "s → spill-1 → trench-1"}},
		"to a feature":     {`{"id": "s", "kind": "foundation drain", "to": "brook"}`, map[string]any{"enters_train": false, "route": "s → brook"}},
		"joined again":     {`{"id": "s", "kind": "shower", "to": [{"target": "tank-1"}, {"target": "bed-1"}]}`, map[string]any{"route": "s → tank-1 → bed-1 → basin-1; s → bed-1"}},
		"a storm's runoff": {`{"id": "s", "kind": "shower", "to": "bed-1"}`, map[string]any{"enters_train": true}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, withBrook(`[`+tt.source+`]`)), "inflows", "s", tt.want)
		})
	}
}

// withBrook is the train with a brook, a spillway that leads to a trench, and
// other sources.
func withBrook(sources string) entries {
	parts := train["parts"][:len(train["parts"])-1] + `,
		{"id": "spill-1", "kind": "spillway", "path": [[30, 5], [31, 5]], "to": "trench-1"},
		{"id": "storm-1", "kind": "storm inflow", "at": [40, 20], "to": "bed-1"}]`
	return train.with(entries{"sources": sources, "parts": parts,
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [{"id": "brook", "kind": "stream", "path": [[0, 1], [60, 1]]}]}`})
}

func TestStormInflowsDrainIn(t *testing.T) {
	f := compute(t, withBrook(`[]`))
	require.Equal(t, []string{"storm-1"}, subjects(f, "inflows"))
	requireKnown(t, f, "inflows", "storm-1", map[string]any{"kind": "storm inflow", "water": "clear water", "enters_at_or_above_bed": true, "route": "storm-1 → bed-1 → basin-1"})
}

func TestWithoutABedTheBasinsCount(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "s", "kind": "roof drain", "to": "basin-1"}, {"id": "u", "kind": "roof drain", "to": "tank-1"}]`,
		"parts": `[{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
			{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "sewer-1"}, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	})
	requireKnown(t, f, "inflows", "s", map[string]any{"enters_at_or_above_bed": true})
	requireKnown(t, f, "inflows", "u", map[string]any{"enters_at_or_above_bed": false, "enters_train": true})
}

// TestInflowsWithAWayNotDrawn: what is reached is known; what is not reached is
// unknown as long as the drawing leaves a way open.
func TestInflowsWithAWayNotDrawn(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "s", "kind": "toilet"}, {"id": "u", "kind": "shower", "to": "pipe-1"}, {"id": "v", "kind": "shower", "to": [{"target": "pipe-1"}, {"target": "basin-1"}]}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}]`,
	})
	requireLacks(t, f, "inflows", "s", "enters_train", "/sources/0/to")
	requireLacks(t, f, "inflows", "s", "enters_at_or_above_bed", "/sources/0/to")
	requireLacks(t, f, "inflows", "s", "route", "/sources/0/to")
	requireLacks(t, f, "inflows", "u", "enters_train", "/parts/0/to")
	requireKnown(t, f, "inflows", "u", map[string]any{"route": "u → pipe-1"})
	requireKnown(t, f, "inflows", "v", map[string]any{"enters_train": true})
}
