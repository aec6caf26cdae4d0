package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// crossed is a pipe from (10, 10) to (20, 10) with the invert 8.96 m at x = 12,
// where the ground is at 10.6 m, and a service.
func crossed(service string) entries {
	return buried(slope, `{"id": "gas-1", "kind": "gas", `+service+`}`, `"path": [[10, 10], [20, 10]], "inverts": ["9 m", "8.8 m"], "diameter": "100 mm"`)
}

func TestCrossings(t *testing.T) {
	const invert = 9 - 0.2*2/10
	square := `"path": [[12, 0], [12, 20]]`
	tests := map[string]struct {
		service string
		want    map[string]any
	}{
		"service above": {square + `, "depth": "0.6 m", "diameter": "50 mm"`, map[string]any{
			"pipe": "pipe-1", "service": "gas-1", "service_kind": "gas", "angle": 90.0, "pipe_invert": invert, "service_top": 10.6 - 0.6,
			"above": "service", "vertical_clearance": 10.0 - 0.05 - (invert + 0.1),
		}},
		"pipe above": {square + `, "depth": "2 m"`, map[string]any{"service_top": 10.6 - 2, "above": "pipe", "vertical_clearance": invert - 8.6}},
		"they meet": {square + `, "depth": "1.6 m", "diameter": "50 mm"`, map[string]any{
			"service_top": 9.0, "above": "neither", "vertical_clearance": invert - 9.0,
		}},
		"aslant":           {`"path": [[10, 8], [14, 12]], "depth": "2 m"`, map[string]any{"angle": 45.0, "above": "pipe"}},
		"aslant, drawn up": {`"path": [[14, 12], [10, 8]], "depth": "2 m"`, map[string]any{"angle": 45.0, "above": "pipe"}},
		"ends at the pipe": {`"path": [[12, 10], [12, 20]], "depth": "2 m"`, map[string]any{"angle": 90.0, "above": "pipe"}},
		"on the pipe":      {`"path": [[10, 10], [20, 10]], "depth": "2 m"`, map[string]any{"angle": 0.0}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, crossed(tt.service))
			require.Equal(t, []string{"pipe-1 and gas-1"}, subjects(f, "crossings"))
			requireKnown(t, f, "crossings", "pipe-1 and gas-1", tt.want)
		})
	}
}

func TestNoCrossing(t *testing.T) {
	require.Empty(t, compute(t, crossed(`"path": [[12, 10.01], [12, 20]], "depth": "2 m"`)).List("crossings"))
}

// TestCrossingsInOrder: a service that doubles back crosses at x = 12 and 16; a
// corner on the pipe counts once.
func TestCrossingsInOrder(t *testing.T) {
	f := compute(t, crossed(`"path": [[16, 0], [16, 20], [12, 20], [12, 0]], "depth": "2 m"`))
	require.Equal(t, []string{"pipe-1 and gas-1", "pipe-1 and gas-1, crossing 2"}, subjects(f, "crossings"))
	requireKnown(t, f, "crossings", "pipe-1 and gas-1", map[string]any{"service_top": 10.6 - 2})
	requireKnown(t, f, "crossings", "pipe-1 and gas-1, crossing 2", map[string]any{"service_top": 10.8 - 2})

	f = compute(t, crossed(`"path": [[12, 0], [12, 10], [14, 20]], "depth": "2 m"`))
	require.Equal(t, []string{"pipe-1 and gas-1"}, subjects(f, "crossings"))
}

// TestAPipeThatJoinsAService: it ends on it, at the connection it drains to.
func TestAPipeThatJoinsAService(t *testing.T) {
	joining := func(service, to, tolerance string) bool {
		e := crossed(service + `, "depth": "1 m"`).with(entries{"parts": `[
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "to": "` + to + `"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 10]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]}
		]`, "tolerances": `{"distance": "` + tolerance + `"}`})
		return known(t, compute(t, e), "crossings", "pipe-1 and gas-1", "joins").(bool)
	}
	require.True(t, joining(`"path": [[20, 0], [20, 20]]`, "sewer-1", "0 m"))
	require.False(t, joining(`"path": [[20, 0], [20, 20]]`, "basin-1", "0 m"))
	require.False(t, joining(`"path": [[19.9, 0], [19.9, 20]]`, "sewer-1", "0 m"))
	require.True(t, joining(`"path": [[19.9, 0], [19.9, 20]]`, "sewer-1", "0.1 m"))
}

func TestCrossingsWithoutEntries(t *testing.T) {
	f := compute(t, crossed(`"path": [[12, 0], [12, 20]]`))
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "service_top", "/site/services/0/depth")
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "vertical_clearance", "/site/services/0/depth")
	requireKnown(t, f, "crossings", "pipe-1 and gas-1", map[string]any{"angle": 90.0, "pipe_invert": 9 - 0.2*2/10})

	f = compute(t, crossed(`"path": [[12, 0], [12, 20]], "depth": "0.6 m"`))
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "above", "/site/services/0/diameter")
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "vertical_clearance", "/site/services/0/diameter")

	f = compute(t, buried("", `{"id": "gas-1", "kind": "gas", "path": [[12, 0], [12, 20]], "depth": "2 m"}`, `"path": [[10, 10], [20, 10]]`))
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "pipe_invert", "/parts/0/inverts")
	requireLacks(t, f, "crossings", "pipe-1 and gas-1", "above", "/parts/0/inverts", "/site/levels")
}
