package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestUpkeep(t *testing.T) {
	f := compute(t, train.with(entries{"operation": `{"tasks": [
		{"task": "Empty the lint.", "part": "tank-1", "every": "30 d"}, {"task": "Look for leaks.", "part": "tank-1", "every": "7 d"},
		{"task": "Paint it.", "part": "tank-1"}, {"task": "Flush the header.", "part": "bed-1"}, {"task": "Walk round.", "every": "1 d"}
	]}`}))
	require.Equal(t, []string{"diverter-1", "tank-1", "bed-1", "basin-1"}, subjects(f, "upkeep"))
	const day = 86400.0
	requireKnown(t, f, "upkeep", "tank-1", map[string]any{"kind": "surge tank", "tasks": 3.0, "timed": true, "shortest_interval": 7 * day})
	requireKnown(t, f, "upkeep", "bed-1", map[string]any{"tasks": 1.0, "timed": false})
	requireKnown(t, f, "upkeep", "basin-1", map[string]any{"tasks": 0.0, "timed": false})
	requireLacks(t, f, "upkeep", "bed-1", "shortest_interval", "/operation/tasks")
	requireLacks(t, f, "upkeep", "tank-1", "labelled", "/parts/1/labelled")
	requireKnown(t, compute(t, train), "upkeep", "tank-1", map[string]any{"tasks": 0.0, "timed": false})
	labelled := compute(t, entries{"parts": `[{"id": "filter-1", "kind": "filter", "at": [1, 1], "labelled": true}]`})
	requireKnown(t, labelled, "upkeep", "filter-1", map[string]any{"labelled": true})
}
