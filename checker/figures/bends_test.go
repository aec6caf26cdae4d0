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
		"two, drawn from the end, one beside the pipe": {zigzag + `, "cleanouts": [[18, 10], [2, 0.5]]`, map[string]any{
			"cleanouts": 2.0, "longest_run": 8.0 + 10 + 8, "cleanout_off_pipe": 0.5, "bends_without_cleanout": 180.0,
			"bends_without_cleanout_at": "from cleanout 1 along it to cleanout 2 along it",
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

func TestCleanoutsWithBendsNotPlaced(t *testing.T) {
	f := compute(t, piping(zigzag+`, "fittings": [{"kind": "wye"}, {"kind": "45° bend"}]`))
	for _, field := range []string{"sharpest_bend", "bends_without_cleanout", "bends_without_cleanout_at"} {
		requireLacks(t, f, "cleanouts", "pipe-1", field, "/parts/0/fittings/1/at")
	}
	requireKnown(t, f, "cleanouts", "pipe-1", map[string]any{"longest_run": 30.0})
}
