package figures_test

import (
	"testing"
)

// zigzag runs 10 m each way with two square corners.
const zigzag = `"kind": "drain pipe", "path": [[0, 0], [10, 0], [10, 10], [20, 10]]`

func TestCleanouts(t *testing.T) {
	tests := map[string]struct {
		pipe string
		want map[string]any
	}{
		"none": {zigzag, map[string]any{
			"kind": "drain pipe", "length": 30.0, "cleanouts": 0.0, "longest_run": 30.0, "cleanout_off_pipe": 0.0,
			"sharpest_bend": 90.0, "bends_without_cleanout": 90.0 + 90, "bends_without_cleanout_at": "from the start to the end",
		}},
		"half way": {zigzag + `, "cleanouts": [[10, 5]]`, map[string]any{
			"cleanouts": 1.0, "longest_run": 15.0, "bends_without_cleanout": 90.0, "bends_without_cleanout_at": "from the start to cleanout 1 along it",
		}},
		"two, drawn from the end, one beside the pipe": {zigzag + `, "cleanouts": [[18, 10], [2, 0.3]]`, map[string]any{
			"cleanouts": 2.0, "longest_run": 8.0 + 10 + 8, "cleanout_off_pipe": 0.3, "bends_without_cleanout": 180.0,
			"bends_without_cleanout_at": "from cleanout 1 along it to cleanout 2 along it",
		}},
		"off the pipe": {zigzag + `, "cleanouts": [[10, 5], [2, 0.31]]`, map[string]any{
			"cleanouts": 2.0, "longest_run": 15.0, "cleanout_off_pipe": 0.31, "bends_without_cleanout": 90.0,
		}},
		"at a bend, which counts below it": {zigzag + `, "cleanouts": [[10, 0]]`, map[string]any{
			"longest_run": 20.0, "bends_without_cleanout": 90.0 + 90, "bends_without_cleanout_at": "from cleanout 1 along it to the end",
		}},
		"two bends that make a corner": {zigzag + `, "fittings": [{"kind": "45° bend", "at": [10, 0]}, {"kind": "45° bend", "at": [10, 0]}]`, map[string]any{
			"sharpest_bend": 90.0, "bends_without_cleanout": 90.0 + 90,
		}},
		"bends that are more than the corner": {zigzag + `, "fittings": [{"kind": "90° bend", "at": [10, 0]}, {"kind": "22.5° bend", "at": [10, 0]}]`, map[string]any{
			"sharpest_bend": 90 + 22.5, "bends_without_cleanout": 90 + 22.5 + 90,
		}},
		"a bend on the straight": {zigzag + `, "fittings": [{"kind": "22.5° bend", "at": [5, 0]}], "cleanouts": [[8, 0]]`, map[string]any{
			"bends_without_cleanout": 90.0 + 90, "bends_without_cleanout_at": "from cleanout 1 along it to the end",
		}},
		"branches do not bend it": {zigzag + `, "fittings": [{"kind": "wye", "at": [5, 0]}, {"kind": "tee"}]`, map[string]any{"bends_without_cleanout": 180.0}},
		"straight":                {`"kind": "overflow pipe", "path": [[0, 0], [4, 0], [10, 0]]`, map[string]any{"kind": "overflow pipe", "sharpest_bend": 0.0, "bends_without_cleanout": 0.0}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) { requireKnown(t, compute(t, piping(tt.pipe)), "cleanouts", "pipe-1", tt.want) })
	}
}

// A bend fitted where the pipe ends counts in its last run.
func TestBendAtTheEnd(t *testing.T) {
	f := compute(t, piping(`"kind": "drain pipe", "path": [[0, 0], [10, 0]], "fittings": [{"kind": "90° bend", "at": [10, 0]}]`))
	requireKnown(t, f, "cleanouts", "pipe-1", map[string]any{"sharpest_bend": 90.0, "bends_without_cleanout": 90.0})
}

func TestCleanoutsWithBendsNotPlaced(t *testing.T) {
	f := compute(t, piping(zigzag+`, "fittings": [{"kind": "wye"}, {"kind": "45° bend"}]`))
	for _, field := range []string{"sharpest_bend", "bends_without_cleanout", "bends_without_cleanout_at"} {
		requireLacks(t, f, "cleanouts", "pipe-1", field, "/parts/0/fittings/1/at")
	}
	requireKnown(t, f, "cleanouts", "pipe-1", map[string]any{"longest_run": 30.0})
}

// Pipes that lead into one another without a cleanout are one run, whatever they
// are called.
func TestCleanoutsOfPipesThatLeadOn(t *testing.T) {
	lined := func(first, second string) entries {
		return entries{"parts": `[
			{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 0], [20, 0]], "to": "pipe-2"` + first + `},
			{"id": "pipe-2", "kind": "drain pipe", "path": [[20, 0], [20, 15], [30, 15]], "to": "pipe-3"` + second + `},
			{"id": "pipe-3", "kind": "drain pipe", "path": [[30, 15], [40, 15]]},
			{"id": "pipe-4", "kind": "drain pipe", "path": [[0, 30], [25, 30], [25, 15]], "to": "pipe-2"}]`}
	}
	tests := map[string]struct {
		first, second string
		runs, bends   []float64 // of pipe-1, pipe-2 and pipe-3
	}{
		"none":          {"", "", []float64{20, 20 + 25, 20 + 25 + 10}, []float64{0, 180, 180}},
		"on the first":  {`, "cleanouts": [[12, 0]]`, "", []float64{12, 40 + 5, 40 + 5 + 10}, []float64{0, 180, 180}},
		"on the second": {"", `, "cleanouts": [[20, 10]]`, []float64{20, 40 + 5, 40 + 5 + 10}, []float64{0, 90, 90}},
		"at the join":   {`, "cleanouts": [[20, 0]]`, `, "cleanouts": [[26, 15]]`, []float64{20, 40 + 1, 4 + 10}, []float64{0, 180, 0}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, lined(tt.first, tt.second))
			for i, pipe := range []string{"pipe-1", "pipe-2", "pipe-3"} {
				requireKnown(t, f, "cleanouts", pipe, map[string]any{"longest_run": tt.runs[i], "bends_without_cleanout": tt.bends[i]})
			}
		})
	}
}

// A branch that begins half way goes on from the run above it.
func TestCleanoutsOfABranch(t *testing.T) {
	f := compute(t, entries{"parts": `[
		{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 0], [20, 0]], "cleanouts": [[4, 0]], "to": [{"target": "pipe-2"}, {"target": "gully"}]},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[12, 0], [12, 9]]},
		{"id": "gully", "kind": "sewer connection", "at": [20, 0]}]`})
	requireKnown(t, f, "cleanouts", "pipe-2", map[string]any{"longest_run": 8.0 + 9, "bends_without_cleanout": 0.0})
}
