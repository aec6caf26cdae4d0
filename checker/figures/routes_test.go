package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRoutes(t *testing.T) {
	tests := map[string]struct {
		to        string
		every     bool
		diverters string
	}{
		"by the diverter":        {`"diverter-1"`, true, "diverter-1"},
		"straight to the bed":    {`"bed-1"`, false, "none"},
		"one way past it":        {`[{"target": "diverter-1"}, {"target": "bed-1"}]`, false, "diverter-1"},
		"one way to the sewer":   {`[{"target": "diverter-1"}, {"target": "sewer-1"}]`, true, "diverter-1"},
		"a spillway to a trench": {`"spill-1"`, false, "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, withBrook(`[{"id": "s", "kind": "shower", "to": `+tt.to+`}]`))
			requireKnown(t, f, "routes", "s", map[string]any{"kind": "shower", "diverter_on_every_way": tt.every, "diverters": tt.diverters})
		})
	}
}

func TestRoutesAreOfGreywaterOnTheSystem(t *testing.T) {
	f := compute(t, train.with(entries{"sources": `[
		{"id": "a", "kind": "shower", "to": "sewer-1"}, {"id": "b", "kind": "kitchen sink", "to": "bed-1"},
		{"id": "c", "kind": "washbasin"}, {"id": "d", "kind": "laundry tub", "to": "diverter-1"}]`}))
	require.Equal(t, []string{"c", "d"}, subjects(f, "routes"))
	requireLacks(t, f, "routes", "c", "diverter_on_every_way", "/sources/2/to")
	requireLacks(t, f, "routes", "c", "diverters", "/sources/2/to")
}
