package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestDischarges(t *testing.T) {
	f := compute(t, entries{"parts": `[
		{"id": "a", "kind": "planted gravel bed", "outline": [[1, 1], [2, 1], [2, 2]], "to": "c", "inlet": {"path": [[1, 1], [2, 1]], "cover": "4 in"}},
		{"id": "b", "kind": "planted gravel bed", "outline": [[1, 1], [2, 1], [2, 2]], "to": "c", "inlet": {"path": [[1, 1], [2, 1]]}},
		{"id": "c", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]], "cover": "2 in"},
		{"id": "d", "kind": "infiltration trench", "path": [[1, 1], [2, 1]], "width": "1 ft", "cover": "9 in"},
		{"id": "e", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]},
		{"id": "f", "kind": "surge tank", "at": [1, 1], "to": "c"}
	]`})
	require.Equal(t, []string{"a", "b", "c", "d", "e"}, subjects(f, "discharges"))
	for part, inches := range map[string]float64{"a": 4, "c": 2, "d": 9} {
		requireKnown(t, f, "discharges", part, map[string]any{"cover": inches * 0.0254})
	}
	requireLacks(t, f, "discharges", "b", "cover", "/parts/1/inlet/cover")
	requireLacks(t, f, "discharges", "e", "cover", "/parts/4/cover")
}

// TestCoverThatTheLevelsLeaveRoomFor: a header at the surface of the gravel has no
// cover but the mulch, whatever is written beside it.
func TestCoverThatTheLevelsLeaveRoomFor(t *testing.T) {
	bed := func(more string) entries {
		return entries{"parts": `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "surface": ["10 m", "10 m", "10.1 m", "10 m"]` + more + `}]`}
	}
	for more, want := range map[string]float64{
		`, "inlet": {"level": "10.05 m", "cover": "150 mm"}`:                                     0.05,
		`, "mulch": "80 mm", "inlet": {"level": "10 m", "diameter": "50 mm", "cover": "150 mm"}`: 0.1 + 0.08 - 0.05,
		`, "inlet": {"level": "9.8 m", "diameter": "50 mm", "cover": "150 mm"}`:                  0.15,
		`, "inlet": {"cover": "150 mm"}`:                                                         0.15,
		`, "inlet": {"level": "10.2 m", "cover": "150 mm"}`:                                      -0.1,
	} {
		requireKnown(t, compute(t, bed(more)), "discharges", "bed-1", map[string]any{"cover": want})
	}
}
