package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestWaysWithoutAPipe(t *testing.T) {
	f := compute(t, entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"features": [{"id": "house", "kind": "building", "outline": [[0, 0], [10, 0], [10, 10], [0, 10]]}], "services": []}`,
		"parts": `[{"id": "diverter-1", "kind": "diverter", "at": [9, 9], "to": "tank-1", "bypass_to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [4, 10]},
			{"id": "tank-1", "kind": "surge tank", "outline": [[12, 9], [13, 9], [13, 10], [12, 10]], "to": "bed-1", "overflow_to": "pipe-1"},
			{"id": "bed-1", "kind": "planted gravel bed", "outline": [[13, 9], [17, 9], [17, 12], [13, 12]], "to": "pipe-1", "overflow_to": "trench-1"},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[17, 10], [20, 10]], "to": "basin-1"},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20.4, 9], [22, 9], [22, 11], [20.4, 11]]},
			{"id": "trench-1", "kind": "infiltration trench", "path": [[14, 20], [20, 20]], "width": "0.5 m"},
			{"id": "rain-1", "kind": "storm inflow", "at": [40, 30], "to": "pond-1"},
			{"id": "pond-1", "kind": "pond", "outline": [[30, 20], [34, 20], [34, 24]], "overflow_to": "spill-1"},
			{"id": "spill-1", "kind": "spillway", "path": [[34, 20], [34, 22]], "to": "trench-1"}]`})
	require.Equal(t, []string{"diverter-1 to tank-1", "diverter-1 to sewer-1", "tank-1 to bed-1", "bed-1 to trench-1", "pipe-1 to basin-1", "pond-1 to spill-1"},
		subjects(f, "gaps"))
	for subject, want := range map[string]map[string]any{
		"diverter-1 to tank-1":  {"part": "diverter-1", "part_kind": "diverter", "next": "tank-1", "gap": 3.0, "meets": false, "indoors": false},
		"diverter-1 to sewer-1": {"meets": false, "indoors": true},
		"tank-1 to bed-1":       {"gap": 0.0, "meets": true, "indoors": false},
		"bed-1 to trench-1":     {"gap": 20 - 12 - 0.25, "meets": false, "indoors": false},
		"pipe-1 to basin-1":     {"gap": 0.4, "meets": false, "indoors": false},
		"pond-1 to spill-1":     {"gap": 0.0, "meets": true},
	} {
		requireKnown(t, f, "gaps", subject, want)
	}
}

func TestAWayToAPartWithoutItsPlace(t *testing.T) {
	f := compute(t, entries{"parts": `[{"id": "diverter-1", "kind": "diverter", "at": [9, 9], "to": "tank-1"},
		{"id": "tank-1", "kind": "surge tank", "at": [9, 9]}]`})
	requireLacks(t, f, "gaps", "diverter-1 to tank-1", "gap", "/parts/1/outline")
	requireLacks(t, f, "gaps", "diverter-1 to tank-1", "meets", "/parts/1/outline")
}
