package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// joined is a pipe from (10, 10) at 9.6 m to (20, 10) at 9.3 m that leads to part-1.
func joined(part string) entries {
	return entries{"parts": `[
		{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "inverts": ["9.6 m", "9.3 m"], "diameter": "100 mm", "to": "part-1"},
		{"id": "part-1", ` + part + `}
	]`}
}

func TestJoinsOfAPipe(t *testing.T) {
	box := `"outline": [[20.5, 9], [22, 9], [22, 11], [20.5, 11]]`
	tests := map[string]struct {
		part string
		want map[string]any
	}{
		"a tank half a metre off": {`"kind": "surge tank", "inlet_level": "9.2 m", ` + box, map[string]any{
			"part": "pipe-1", "part_kind": "drain pipe", "next": "part-1", "next_kind": "surge tank", "drop": 9.3 - 9.2, "gap": 0.5, "meets": false, "narrows": false}},
		"a bed's header": {`"kind": "planted gravel bed", "inlet_level": "1 m", "inlet": {"path": [[20, 10], [20, 11]], "level": "9.1 m"}, ` + box,
			map[string]any{"drop": 9.3 - 9.1, "gap": 0.0, "meets": true}},
		"a bed by its inlet level": {`"kind": "planted gravel bed", "inlet_level": "9.1 m", ` + box, map[string]any{"drop": 9.3 - 9.1}},
		"a connection set too high": {`"kind": "sewer connection", "at": [20, 10], "level": "9.4 m", "diameter": "100 mm"`,
			map[string]any{"drop": 9.3 - 9.4, "gap": 0.0, "meets": true, "narrows": false}},
		"a narrower diverter": {`"kind": "diverter", "at": [20, 10], "level": "9.3 m", "diameter": "80 mm"`, map[string]any{"drop": 0.0, "narrows": true}},
		"a wider pipe":        {`"kind": "drain pipe", "path": [[20, 10], [30, 10]], "inverts": ["9.3 m", "9 m"], "diameter": "110 mm"`, map[string]any{"drop": 0.0, "gap": 0.0, "narrows": false}},
		"a pipe midway": {`"kind": "drain pipe", "path": [[20, 0], [20, 20]], "inverts": ["9.4 m", "9 m"], "diameter": "50 mm"`,
			map[string]any{"drop": 9.3 - 9.2, "gap": 0.0, "narrows": true}},
		"a branch": {`"kind": "drain pipe", "path": [[15, 10], [15, 20]], "inverts": ["9.4 m", "9 m"], "diameter": "100 mm"`,
			map[string]any{"drop": 9.45 - 9.4, "gap": 0.0, "meets": true}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, joined(tt.part))
			require.Equal(t, []string{"pipe-1 to part-1"}, subjects(f, "joins"))
			requireKnown(t, f, "joins", "pipe-1 to part-1", tt.want)
		})
	}
}

// TestJoinsFromAPart: the outlet of a part against the beginning of its pipe; of
// an overflow only the pipe is drawn.
func TestJoinsFromAPart(t *testing.T) {
	from := func(part string) entries {
		return entries{"parts": `[{"id": "part-1", ` + part + `},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "inverts": ["9.6 m", "9.3 m"], "diameter": "100 mm", "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 10], "level": "9.2 m", "diameter": "100 mm"}]`}
	}
	box := `"outline": [[8, 9], [10, 9], [10, 11], [8, 11]]`
	for part, drop := range map[string]float64{
		`"kind": "surge tank", "to": "pipe-1", "outlet_level": "9.7 m", ` + box:                                     9.7 - 9.6,
		`"kind": "planted gravel bed", "to": "pipe-1", "outlet": {"level": "9.5 m"}, "outlet_level": "1 m", ` + box: 9.5 - 9.6,
		`"kind": "diverter", "at": [10, 10], "bypass_to": "pipe-1", "level": "9.65 m"`:                              9.65 - 9.6,
		`"kind": "surge tank", "overflow_to": "pipe-1", "outlet_level": "9.1 m", ` + box:                            0,
	} {
		f := compute(t, from(part))
		require.Equal(t, []string{"part-1 to pipe-1", "pipe-1 to sewer-1"}, subjects(f, "joins"), part)
		requireKnown(t, f, "joins", "part-1 to pipe-1", map[string]any{"drop": drop, "gap": 0.0, "meets": true, "narrows": false})
	}
}

// TestWhatIsNoJoin: a basin has no level to run in at, a feature is no part, and
// two parts may be joined indoors. What leads twice to one part is one join.
func TestWhatIsNoJoin(t *testing.T) {
	f := compute(t, entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [{"id": "ditch", "kind": "ditch", "path": [[0, 0], [9, 9]]}]}`,
		"parts": `[{"id": "diverter-1", "kind": "diverter", "at": [10, 10], "to": "filter-1", "bypass_to": "sewer-1"},
			{"id": "filter-1", "kind": "filter", "at": [10, 10], "to": "pipe-1", "overflow_to": "pipe-1"},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "to": [{"target": "basin-1"}, {"target": "ditch"}]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 10]}]`})
	require.Equal(t, []string{"filter-1 to pipe-1"}, subjects(f, "joins"))
}

func TestJoinsWithinTheTolerance(t *testing.T) {
	near := joined(`"kind": "sewer connection", "at": [20.1, 10]`)
	require.Equal(t, false, known(t, compute(t, near), "joins", "pipe-1 to part-1", "meets"))
	near = near.with(entries{"tolerances": `{"distance": "0.1 m"}`})
	require.Equal(t, true, known(t, compute(t, near), "joins", "pipe-1 to part-1", "meets"))
}

func TestJoinsWithoutEntries(t *testing.T) {
	f := compute(t, entries{"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "to": "tank-1"},
		{"id": "tank-1", "kind": "surge tank", "at": [20, 10], "to": "pipe-2"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[20, 10], [30, 10]], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [30, 10]}]`})
	requireLacks(t, f, "joins", "pipe-1 to tank-1", "drop", "/parts/0/inverts", "/parts/1/inlet_level")
	requireLacks(t, f, "joins", "pipe-1 to tank-1", "gap", "/parts/1/outline")
	requireLacks(t, f, "joins", "pipe-1 to tank-1", "meets", "/parts/1/outline")
	requireLacks(t, f, "joins", "tank-1 to pipe-2", "drop", "/parts/1/outlet_level", "/parts/2/inverts")
	requireLacks(t, f, "joins", "pipe-2 to sewer-1", "narrows", "/parts/2/diameter", "/parts/3/diameter")
}
