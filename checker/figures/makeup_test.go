package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestMakeUpWater(t *testing.T) {
	topped := func(more string) entries {
		return entries{"parts": `[
			{"id": "tank-1", "kind": "surge tank", "at": [1, 1]},
			{"id": "pond-1", "kind": "pond", "outline": [[2, 2], [3, 2], [3, 3]], "make_up": {"from": "drinking water"` + more + `}}
		]`}
	}
	f := compute(t, topped(`, "air_gap": true`))
	require.Equal(t, []string{"pond-1"}, subjects(f, "make_up"))
	requireKnown(t, f, "make_up", "pond-1", map[string]any{"kind": "pond", "from": "drinking water", "air_gap": true})

	requireKnown(t, compute(t, topped(`, "air_gap": false`)), "make_up", "pond-1", map[string]any{"air_gap": false})
	requireLacks(t, compute(t, topped(``)), "make_up", "pond-1", "air_gap", "/parts/1/make_up/air_gap")
}

func TestCrossConnection(t *testing.T) {
	requireLacks(t, compute(t, train), "system", "the system", "cross_connection", "/dwelling/cross_connection")
	for text, want := range map[string]bool{"true": true, "false": false} {
		f := compute(t, entries{"dwelling": `{"bedrooms": 3, "cross_connection": ` + text + `}`})
		requireKnown(t, f, "system", "the system", map[string]any{"cross_connection": want})
	}
}

func TestWhatGoesDownADrain(t *testing.T) {
	f := compute(t, entries{
		"sources": `[
			{"id": "shower", "kind": "shower"},
			{"id": "bathtub", "kind": "bathtub", "soiled_nappies": true, "hazardous_chemicals": false},
			{"id": "washer", "kind": "clothes washer"},
			{"id": "tub", "kind": "laundry tub", "soiled_nappies": false, "hazardous_chemicals": true}
		]`,
		"parts": `[{"id": "storm", "kind": "storm inflow", "at": [1, 1]}]`,
	})
	requireKnown(t, f, "inflows", "shower", map[string]any{"soiled_nappies": false})
	requireLacks(t, f, "inflows", "shower", "hazardous_chemicals", "/sources/0/hazardous_chemicals")
	requireKnown(t, f, "inflows", "bathtub", map[string]any{"soiled_nappies": true, "hazardous_chemicals": false})
	requireLacks(t, f, "inflows", "washer", "soiled_nappies", "/sources/2/soiled_nappies")
	requireLacks(t, f, "inflows", "washer", "hazardous_chemicals", "/sources/2/hazardous_chemicals")
	requireKnown(t, f, "inflows", "tub", map[string]any{"soiled_nappies": false, "hazardous_chemicals": true})
	requireKnown(t, f, "inflows", "storm", map[string]any{"soiled_nappies": false, "hazardous_chemicals": false})
}
