package figures_test

import "testing"

func TestParts(t *testing.T) {
	tests := map[string]struct {
		part   string
		inside bool
		by     float64
		area   float64
	}{
		"inside":                    {`"kind": "mulch basin", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]]`, true, 0, 3 * 2},
		"on the edge":               {`"kind": "mulch basin", "outline": [[0, 0], [4, 0], [4, 3], [0, 3]]`, true, 0, 4 * 3},
		"over the edge":             {`"kind": "mulch basin", "outline": [[58, 1], [62, 1], [62, 3], [58, 3]]`, false, 2, 4 * 2},
		"over a corner":             {`"kind": "pond", "outline": [[58, 38], [63, 38], [63, 44], [58, 44]]`, false, 5, 5 * 6},
		"outside":                   {`"kind": "surge tank", "at": [-3, -4]`, false, 5, 0},
		"a pipe over the edge":      {`"kind": "drain pipe", "path": [[50, 20], [61, 20]]`, false, 1, 0},
		"a trench inside":           {`"kind": "infiltration trench", "path": [[10, 10], [20, 10]], "width": "0.6 m"`, true, 0, 10 * 0.6},
		"a trench touching":         {`"kind": "infiltration trench", "path": [[10, 0.3], [20, 0.3]], "width": "0.6 m"`, true, 0, 10 * 0.6},
		"a trench half over":        {`"kind": "infiltration trench", "path": [[10, 0.1], [20, 0.1]], "width": "0.6 m"`, false, 0.3 - 0.1, 10 * 0.6},
		"a trench all over":         {`"kind": "infiltration trench", "path": [[10, -1], [20, -1]], "width": "0.6 m"`, false, 1 + 0.3, 10 * 0.6},
		"a trench with its outline": {`"kind": "infiltration trench", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]]`, true, 0, 3 * 2},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{"parts": `[{"id": "p", ` + tt.part + `}]`})
			requireKnown(t, f, "parts", "p", map[string]any{"inside_boundary": tt.inside, "beyond_boundary": tt.by, "area": tt.area})
		})
	}
}
