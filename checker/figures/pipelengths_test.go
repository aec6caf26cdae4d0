package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

var plumbing = entries{
	"parts": `[
		{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 0], [3, 4], [3, 10]], "diameter": "2 in", "material": "ABS", "fittings": [{"kind": "45° bend"}, {"kind": "wye"}], "cleanouts": [[0, 0], [3, 10]], "to": "bed-1"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[0, 20], [8, 20]], "diameter": "50.8 mm", "material": "ABS", "fittings": [{"kind": "45° bend"}], "to": "bed-1"},
		{"id": "pipe-3", "kind": "drain pipe", "path": [[0, 30], [5, 30]], "material": "ABS", "cleanouts": [[0, 30]], "to": "bed-1"},
		{"id": "pipe-4", "kind": "drain pipe", "path": [[0, 31], [6, 31]], "diameter": "2 in", "to": "bed-1"},
		{"id": "over-1", "kind": "overflow pipe", "path": [[30, 30], [30, 39]], "diameter": "3 in", "material": "ABS", "to": "sewer-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "inlet": {"path": [[11, 11], [11, 12]], "diameter": "2 in", "cleanouts": [[11, 11]]}, "to": "sewer-1", "overflow_to": "over-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`,
}

// TestPipeByDiameter: a leg of 3 and 4 m is 5 m long; 50.8 mm is 2 in. Pipes that lack an
// entry stand alone.
func TestPipeByDiameter(t *testing.T) {
	f := compute(t, plumbing)
	require.Equal(t, []string{"ABS pipe of 2 in", "pipe-3", "pipe-4", "ABS pipe of 3 in"}, subjects(f, "quantities.pipe"))
	requireKnown(t, f, "quantities.pipe", "ABS pipe of 2 in", map[string]any{"diameter": 2 * 0.0254, "material": "ABS", "length": 5.0 + 6 + 8})
	requireKnown(t, f, "quantities.pipe", "ABS pipe of 3 in", map[string]any{"length": 9.0})
	requireKnown(t, f, "quantities.pipe", "pipe-3", map[string]any{"material": "ABS", "length": 5.0})
	requireLacks(t, f, "quantities.pipe", "pipe-3", "diameter", "/parts/2/diameter")
	requireLacks(t, f, "quantities.pipe", "pipe-4", "material", "/parts/3/material")
}

func TestFittingsByKind(t *testing.T) {
	f := compute(t, plumbing)
	require.Equal(t, []string{"45° bend of 2 in", "wye of 2 in", "cleanout of 2 in", "cleanout of pipe-3"}, subjects(f, "quantities.fittings"))
	requireKnown(t, f, "quantities.fittings", "45° bend of 2 in", map[string]any{"kind": "45° bend", "diameter": 2 * 0.0254, "count": 2.0})
	requireKnown(t, f, "quantities.fittings", "wye of 2 in", map[string]any{"count": 1.0})
	// Two on pipe-1, one on the inlet header.
	requireKnown(t, f, "quantities.fittings", "cleanout of 2 in", map[string]any{"kind": "cleanout", "count": 3.0})
	requireKnown(t, f, "quantities.fittings", "cleanout of pipe-3", map[string]any{"count": 1.0})
	requireLacks(t, f, "quantities.fittings", "cleanout of pipe-3", "diameter", "/parts/2/diameter")
}
