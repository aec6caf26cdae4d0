package figures_test

import (
	"fmt"
	"testing"
)

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
		"outside":                   {`"kind": "filter", "at": [-3, -4]`, false, 5, 0},
		"a header over the edge":    {`"kind": "planted gravel bed", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]], "inlet": {"path": [[1, 2], [-6, 2]]}`, false, 6, 3 * 2},
		"an outlet over the edge":   {`"kind": "planted gravel bed", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]], "outlet": {"at": [2, -7]}`, false, 7, 3 * 2},
		"a draw-down over the edge": {`"kind": "planted gravel bed", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]], "drawdown": {"at": [-8, 2]}`, false, 8, 3 * 2},
		"all of a bed inside":       {`"kind": "planted gravel bed", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]], "inlet": {"path": [[1, 2], [0.5, 2]]}, "outlet": {"at": [5, 2]}, "drawdown": {"at": [6, 2]}`, true, 0, 3 * 2},
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

func TestWhichPartsDrainOn(t *testing.T) {
	const bed = `"kind": "planted gravel bed", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]]`
	const pond = `"kind": "pond", "outline": [[1, 1], [4, 1], [4, 3], [1, 3]]`
	tests := map[string]struct {
		part string
		on   bool
	}{
		"a bed":                     {bed + `, "to": "q"`, true},
		"a bed that overflows":      {bed + `, "overflow_to": "q"`, false},
		"a pond":                    {pond + `, "to": "q"`, true},
		"a pond that overflows":     {pond + `, "overflow_to": "q"`, true},
		"a pond without a way":      {pond, false},
		"a pipe without a way":      {`"kind": "drain pipe", "path": [[1, 1], [2, 2]]`, false},
		"a diverter that turns off": {`"kind": "diverter", "at": [1, 1], "bypass_to": "q"`, false},
		"a connection":              {`"kind": "sewer connection", "at": [1, 1]`, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{"parts": `[{"id": "p", ` + tt.part + `}, {"id": "q", "kind": "sewer connection", "at": [9, 9]}]`})
			requireKnown(t, f, "parts", "p", map[string]any{"drains_on": tt.on})
		})
	}
}

func TestPartsDrawnTooRoughlyToPlace(t *testing.T) {
	for _, tt := range []struct{ part, lacks string }{
		{`"kind": "surge tank", "at": [1, 1]`, "outline"},
		{`"kind": "infiltration trench", "path": [[1, 1], [2, 1]], "width": "0 ft"`, "width"},
		{`"kind": "infiltration trench", "path": [[1, 1], [2, 1]]`, "width"},
	} {
		f := compute(t, entries{"parts": `[{"id": "p", ` + tt.part + `}]`})
		for _, field := range []string{"area", "inside_boundary", "beyond_boundary"} {
			requireLacks(t, f, "parts", "p", field, fmt.Sprint("/parts/0/", tt.lacks))
		}
		requireLacks(t, f, "clearances.property_line", "p and boundary", "distance", fmt.Sprint("/parts/0/", tt.lacks))
	}
}
