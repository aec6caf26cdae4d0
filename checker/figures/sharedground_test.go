package figures_test

import "testing"

// TestGroundShared draws another part beside a basin of 4 by 2 m; the tolerance is 0.2 m.
func TestGroundShared(t *testing.T) {
	const basin = `"kind": "mulch basin", "outline": `
	tests := map[string]struct{ other, shared string }{
		"the same basin twice":       {basin + `[[1, 1], [5, 1], [5, 3], [1, 3]]`, "other"},
		"half of it":                 {basin + `[[3, 1], [7, 1], [7, 3], [3, 3]]`, "other"},
		"side by side":               {basin + `[[5, 1], [9, 1], [9, 3], [5, 3]]`, "none"},
		"within the tolerance":       {basin + `[[4.8, 1], [9, 1], [9, 3], [4.8, 3]]`, "none"},
		"beyond the tolerance":       {basin + `[[4.7, 0.5], [9, 0.5], [9, 3.5], [4.7, 3.5]]`, "other"},
		"a pond round it":            {`"kind": "pond", "outline": [[0, 0], [9, 0], [9, 9], [0, 9]]`, "other"},
		"a trench through it":        {`"kind": "infiltration trench", "path": [[0, 2], [9, 2]], "width": "0.6 m"`, "other"},
		"a trench along its edge":    {`"kind": "infiltration trench", "path": [[1, 3.2], [5, 3.2]], "width": "0.6 m"`, "none"},
		"a trench half over it":      {`"kind": "infiltration trench", "path": [[1, 3.05], [5, 3.05]], "width": "0.6 m"`, "other"},
		"a pipe across it":           {`"kind": "drain pipe", "path": [[0, 2], [9, 2]]`, "none"},
		"a tank of which no outline": {`"kind": "surge tank", "at": [2, 2]`, "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{
				"tolerances": `{"distance": "0.2 m"}`,
				"parts":      `[{"id": "basin-1", "kind": "mulch basin", "outline": [[1, 1], [5, 1], [5, 3], [1, 3]]}, {"id": "other", ` + tt.other + `}]`,
			})
			requireKnown(t, f, "parts", "basin-1", map[string]any{"ground_shared": tt.shared, "own_ground": tt.shared == "none"})
		})
	}
}

func TestTrenchesFromOnePlace(t *testing.T) {
	f := compute(t, entries{"parts": `[{"id": "trench-1", "kind": "infiltration trench", "path": [[10, 10], [20, 10]], "width": "0.6 m"},
		{"id": "trench-2", "kind": "infiltration trench", "path": [[10, 10], [10, 13], [20, 13]], "width": "0.6 m"}]`})
	requireKnown(t, f, "parts", "trench-1", map[string]any{"own_ground": true})
	requireKnown(t, f, "parts", "trench-2", map[string]any{"own_ground": true})
}

func TestTrenchesDrawnTwice(t *testing.T) {
	const trench = `"kind": "infiltration trench", "path": [[10, 10], [20, 10]], "width": `
	f := compute(t, entries{"parts": `[{"id": "trench-1", ` + trench + `"0.6 m"}, {"id": "trench-2", ` + trench + `"0.4 m"}, {"id": "trench-3", "kind": "infiltration trench", "path": [[10, 12], [20, 12]]}]`})
	requireKnown(t, f, "parts", "trench-1", map[string]any{"own_ground": false, "ground_shared": "trench-2"})
	requireLacks(t, f, "parts", "trench-3", "own_ground", "/parts/2/width")
	requireLacks(t, f, "parts", "trench-3", "ground_shared", "/parts/2/width")
}
