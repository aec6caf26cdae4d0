package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// onSlope is a part on ground that rises from 10 m at x = 0 to 13 m at x = 60.
func onSlope(part string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"levels": [[0, 0, 10], [60, 0, 13], [60, 40, 13], [0, 40, 10]]}`,
		"parts": `[{"id": "part-1", ` + part + `}]`,
	}
}

func TestDeepestCut(t *testing.T) {
	const square = `"outline": [[10, 10], [20, 10], [20, 20], [10, 20]]`
	tests := map[string]struct {
		part string
		want float64
	}{
		"by its depth":           {`"kind": "mulch basin", "depth": "0.4 m", ` + square, 0.4},
		"by the deeper of two":   {`"kind": "mulch basin", "depth": "0.4 m", "floor": "10 m", ` + square, 10 + 20*0.05 - 10},
		"by the deeper depth":    {`"kind": "mulch basin", "depth": "1.2 m", "floor": "10 m", ` + square, 1.2},
		"by edges and floor":     {`"kind": "planted gravel bed", "edge_levels": ["10.4 m", "10.9 m", "10.8 m", "10.5 m"], "floor": ["9.9 m", "9.8 m", "9.8 m", "9.9 m"], ` + square, 10.9 - 9.8},
		"by ground and floor":    {`"kind": "pond", "floor": "9 m", ` + square, 10 + 20*0.05 - 9},
		"a bed on the ground":    {`"kind": "planted gravel bed", "floor": "12 m", ` + square, 0},
		"a pipe's trench":        {`"kind": "drain pipe", "path": [[0, 10], [20, 10], [20, 20]], "inverts": ["9.6 m", "9.5 m", "9.4 m"], "diameter": "100 mm"`, 11 - 9.4},
		"a pipe over the ground": {`"kind": "overflow pipe", "path": [[0, 10], [20, 10]], "inverts": ["12 m", "11.5 m"], "diameter": "100 mm"`, 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, onSlope(tt.part)), "cuts", "part-1", map[string]any{"deepest_cut": tt.want})
		})
	}
}

// TestWhatIsNoCut: a tank on the ground and a connection.
func TestWhatIsNoCut(t *testing.T) {
	for _, part := range []string{`"kind": "surge tank", "above_ground": true, ` + outline, `"kind": "sewer connection", "at": [1, 1]`} {
		f := compute(t, onSlope(part))
		require.Empty(t, f.List("cuts"))
		require.Empty(t, f.List("construction"))
	}
}

func TestConstruction(t *testing.T) {
	e := onSlope(`"kind": "mulch basin", ` + outline)
	f := compute(t, e.with(entries{"construction": `{"lines_called_in": true, "cave_in_protection": false, "trench_exits": true, "spoil_distance": "0.7 m", "bare_soil_held": false}`}))
	requireKnown(t, f, "construction", "the building of the system", map[string]any{"lines_called_in": true, "spoil_distance": 0.7, "bare_soil_held": false})
	requireKnown(t, f, "cuts", "part-1", map[string]any{"kind": "mulch basin", "protected": false, "has_exit": true})

	for _, f := range []entries{e, e.with(entries{"construction": `{}`})} {
		f := compute(t, f)
		for _, entry := range []string{"lines_called_in", "spoil_distance", "bare_soil_held"} {
			requireLacks(t, f, "construction", "the building of the system", entry, "/construction/"+entry)
		}
		requireLacks(t, f, "cuts", "part-1", "protected", "/construction/cave_in_protection")
		requireLacks(t, f, "cuts", "part-1", "has_exit", "/construction/trench_exits")
		requireLacks(t, f, "cuts", "part-1", "deepest_cut", "/parts/0/floor")
	}
}

func TestCutsWithoutEntries(t *testing.T) {
	f := compute(t, entries{"parts": `[
		{"id": "bed-1", "kind": "planted gravel bed", "floor": "9 m", ` + outline + `},
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "floor": "9 m"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 10], [20, 10]]}]`})
	requireLacks(t, f, "cuts", "bed-1", "deepest_cut", "/site/levels")
	requireLacks(t, f, "cuts", "tank-1", "deepest_cut", "/parts/1/outline")
	requireLacks(t, f, "cuts", "pipe-1", "deepest_cut", "/parts/2/diameter", "/parts/2/inverts", "/site/levels")
}

// TestLicensedWork: a cable across the bed, a gas line beside it, a water line
// across a pipe to the sewer.
func TestLicensedWork(t *testing.T) {
	e := entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "services": [
			{"id": "power-1", "kind": "line voltage", "path": [[17, 20], [17, 39]]},
			{"id": "lights-1", "kind": "low voltage", "path": [[17, 20], [17, 39]]},
			{"id": "gas-1", "kind": "gas", "path": [[22, 20], [22, 39]]},
			{"id": "water-1", "kind": "water", "path": [[5, 0], [5, 39]]}]}`,
		"parts": `[{"id": "bed-1", "kind": "planted gravel bed", ` + outline + `},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [1, 10]], "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [1, 10]}, {"id": "septic-1", "kind": "septic connection", "at": [1, 1]}]`,
	}
	f := compute(t, e.with(entries{"construction": `{"licensed_work": ["electrical"]}`}))
	require.Equal(t, []string{"sewer connection work", "electrical work", "drinking water work"}, subjects(f, "licensed_work"))
	requireKnown(t, f, "licensed_work", "sewer connection work", map[string]any{"work": "sewer connection", "because_of": "sewer-1, septic-1", "named": false})
	requireKnown(t, f, "licensed_work", "electrical work", map[string]any{"because_of": "power-1", "named": true})
	requireKnown(t, f, "licensed_work", "drinking water work", map[string]any{"because_of": "water-1", "named": false})
	requireLacks(t, compute(t, e), "licensed_work", "electrical work", "named", "/construction/licensed_work")
	filled := e.with(entries{"parts": `[{"id": "bed-1", "kind": "planted gravel bed", ` + outline + `, "make_up": {"from": "drinking water"}}]`})
	requireKnown(t, compute(t, filled.with(entries{"construction": `{"licensed_work": []}`})), "licensed_work", "drinking water work",
		map[string]any{"because_of": "bed-1", "named": false})
	none := compute(t, e.with(entries{"construction": `{"licensed_work": []}`}))
	requireKnown(t, none, "licensed_work", "electrical work", map[string]any{"named": false})
}

func TestLinerBedding(t *testing.T) {
	f := compute(t, onSlope(`"kind": "pond", "liner": {"bedded": true}, `+outline))
	requireKnown(t, f, "quantities.liner", "part-1", map[string]any{"bedded": true})
	f = compute(t, onSlope(`"kind": "pond", "liner": {}, `+outline))
	requireLacks(t, f, "quantities.liner", "part-1", "bedded", "/parts/0/liner/bedded")
}
