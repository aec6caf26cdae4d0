package figures_test

import "testing"

func TestSettledFirst(t *testing.T) {
	tests := map[string]struct {
		sources, between string
		settled          bool
		unsettled        string
	}{
		"straight":                     {`[{"id": "s", "kind": "shower", "to": "bed-1"}]`, ``, false, "s"},
		"by a filter":                  {`[{"id": "s", "kind": "shower", "to": "a"}]`, `{"id": "a", "kind": "filter", "at": [1, 1], "to": "bed-1"},`, true, "none"},
		"by a surge tank":              {`[{"id": "s", "kind": "shower", "to": "a"}]`, `{"id": "a", "kind": "surge tank", "at": [1, 1], "to": "bed-1"},`, true, "none"},
		"by the overflow of a filter":  {`[{"id": "s", "kind": "shower", "to": "a"}]`, `{"id": "a", "kind": "filter", "at": [1, 1], "to": "basin-1", "overflow_to": "bed-1"},`, true, "none"},
		"one of two by a pipe alone":   {`[{"id": "s", "kind": "shower", "to": "a"}, {"id": "w", "kind": "clothes washer", "to": "p"}]`, `{"id": "a", "kind": "filter", "at": [1, 1], "to": "p"}, {"id": "p", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "to": "bed-1"},`, false, "w"},
		"clear water needs none of it": {`[{"id": "s", "kind": "roof drain", "to": "bed-1"}]`, ``, true, "none"},
		"a kitchen sink does":          {`[{"id": "s", "kind": "kitchen sink", "to": "bed-1"}]`, ``, false, "s"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			e := wetBed("", "")
			e["sources"] = tt.sources
			e["parts"] = "[" + tt.between + e["parts"][1:]
			requireKnown(t, compute(t, e), "beds", "bed-1", map[string]any{"settled_first": tt.settled, "unsettled_sources": tt.unsettled})
		})
	}
}

func TestSettledFirstLacks(t *testing.T) {
	e := wetBed("", "")
	e["sources"] = `[{"id": "s", "kind": "shower"}]`
	f := compute(t, e)
	requireLacks(t, f, "beds", "bed-1", "settled_first", "/sources/0/to")
	requireLacks(t, f, "beds", "bed-1", "unsettled_sources", "/sources/0/to")
}
