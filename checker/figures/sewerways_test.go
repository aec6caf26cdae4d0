package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// sewered is a diverter and a tank on one sewer connection, the tank by two pipes
// into a third.
func sewered(diverter, pipe2, pipe3, sewer string) entries {
	return entries{"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [1, 1], "to": "tank-1", "bypass_to": "sewer-1"` + diverter + `},
		{"id": "tank-1", "kind": "surge tank", "at": [2, 2], "to": "pipe-1", "overflow_to": "pipe-2"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[2, 2], [3, 2]], "inverts": ["9.4 m", "9.3 m"], "to": "pipe-3", "backwater_valve": true},
		{"id": "pipe-2", "kind": "overflow pipe", "path": [[2, 2], [3, 2]], "inverts": ["9.7 m", "9.3 m"], "to": "pipe-3"` + pipe2 + `},
		{"id": "pipe-3", "kind": "drain pipe", "path": [[3, 2], [5, 2]], "inverts": ["9.3 m", "9.1 m"], "to": "sewer-1"` + pipe3 + `},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 2]` + sewer + `}
	]`}
}

func TestWaysIntoTheSewer(t *testing.T) {
	f := compute(t, sewered(`, "level": "9.8 m"`, ``, ``, `, "backwater_valve": false, "surcharge_level": "9.5 m"`))
	require.Equal(t, []string{"diverter-1 and sewer-1", "tank-1 and sewer-1"}, subjects(f, "sewer_ways"))
	requireKnown(t, f, "sewer_ways", "diverter-1 and sewer-1", map[string]any{
		"part": "diverter-1", "part_kind": "diverter", "connection": "sewer-1", "backwater": "none",
		"upper_level": 9.8, "surcharge_level": 9.5, "above_surcharge": 9.8 - 9.5,
	})
	requireKnown(t, f, "sewer_ways", "tank-1 and sewer-1", map[string]any{
		"backwater":       "none", // in the overflow
		"upper_level":     9.4,    // of the lower pipe
		"above_surcharge": 9.4 - 9.5,
	})
}

func TestABackwaterValveOnEveryWay(t *testing.T) {
	word := map[bool]string{true: "valve or air gap", false: "none"}
	const none, valve = ``, `, "backwater_valve": true`
	tests := map[string]struct {
		diverter, pipe2, pipe3, sewer string
		ofDiverter, ofTank            bool
	}{
		"at the connection":   {none, none, none, valve, true, true},
		"an air gap there":    {none, none, none, `, "air_gap": true, "backwater_valve": false`, true, true},
		"at the diverter":     {valve, none, none, `, "backwater_valve": false`, true, false},
		"in the overflow too": {none, valve, none, `, "backwater_valve": false`, false, true},
		"where the two join":  {none, none, valve, `, "backwater_valve": false`, false, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, sewered(tt.diverter, tt.pipe2, tt.pipe3, tt.sewer))
			requireKnown(t, f, "sewer_ways", "diverter-1 and sewer-1", map[string]any{"backwater": word[tt.ofDiverter]})
			requireKnown(t, f, "sewer_ways", "tank-1 and sewer-1", map[string]any{"backwater": word[tt.ofTank]})
		})
	}
}

func TestAWayIntoTheSewerNotShown(t *testing.T) {
	f := compute(t, sewered(``, ``, ``, ``))
	requireLacks(t, f, "sewer_ways", "diverter-1 and sewer-1", "backwater", "/parts/5/backwater_valve")
	requireLacks(t, f, "sewer_ways", "diverter-1 and sewer-1", "upper_level", "/parts/0/level")
	requireLacks(t, f, "sewer_ways", "diverter-1 and sewer-1", "above_surcharge", "/parts/0/level", "/parts/5/surcharge_level")

	f = compute(t, entries{"parts": `[
		{"id": "tank-1", "kind": "surge tank", "at": [2, 2], "to": "pipe-1", "overflow_to": "sewer-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[2, 2], [3, 2]], "to": "sewer-1"},
		{"id": "tank-2", "kind": "surge tank", "at": [2, 2], "to": "tank-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 2]}
	]`})
	require.Equal(t, []string{"tank-1 and sewer-1"}, subjects(f, "sewer_ways"), "what drains into another part has no way of its own")
	requireLacks(t, f, "sewer_ways", "tank-1 and sewer-1", "upper_level", "/parts/0/outlet_level")
}
