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
