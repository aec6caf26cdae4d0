package figures_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

func TestInflows(t *testing.T) {
	tests := map[string]struct {
		source string
		want   map[string]any
	}{
		"to the bed":       {`{"id": "s", "kind": "shower", "to": "bed-1"}`, map[string]any{"water": "greywater", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → bed-1 → basin-1"}},
		"by the diverter":  {`{"id": "s", "kind": "sump pump", "to": "diverter-1"}`, map[string]any{"water": "clear water", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → diverter-1 → tank-1 → bed-1 → basin-1"}},
		"below the bed":    {`{"id": "s", "kind": "roof drain", "to": "basin-1"}`, map[string]any{"enters_train": true, "enters_at_or_above_bed": false, "route": "s → basin-1"}},
		"to the sewer":     {`{"id": "s", "kind": "toilet", "to": "sewer-1"}`, map[string]any{"water": "toilet waste", "enters_train": false, "enters_at_or_above_bed": false, "route": "s → sewer-1"}},
		"in part":          {`{"id": "s", "kind": "dishwasher", "to": [{"target": "sewer-1", "share": "90 %"}, {"target": "tank-1"}]}`, map[string]any{"water": "kitchen waste", "enters_train": true, "enters_at_or_above_bed": true, "route": "s → sewer-1; s → tank-1 → bed-1 → basin-1"}},
		"by an overflow":   {`{"id": "s", "kind": "softener backwash", "to": "spill-1"}`, map[string]any{"water": "brine", "enters_train": true, "enters_at_or_above_bed": false, "route": "s → spill-1 → trench-1"}},
		"to a feature":     {`{"id": "s", "kind": "foundation drain", "to": "brook"}`, map[string]any{"enters_train": false, "route": "s → brook"}},
		"joined again":     {`{"id": "s", "kind": "shower", "to": [{"target": "tank-1"}, {"target": "bed-1"}]}`, map[string]any{"route": "s → tank-1 → bed-1 → basin-1; s → bed-1"}},
		"a storm's runoff": {`{"id": "s", "kind": "shower", "to": "bed-1"}`, map[string]any{"enters_train": true}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, withBrook(`[`+tt.source+`]`)), "inflows", "s", tt.want)
		})
	}
}

// withBrook is the train with a brook, a spillway that leads to a trench, and
// other sources.
func withBrook(sources string) entries {
	parts := train["parts"][:len(train["parts"])-1] + `,
		{"id": "spill-1", "kind": "spillway", "path": [[30, 5], [31, 5]], "to": "trench-1"},
		{"id": "storm-1", "kind": "storm inflow", "at": [40, 20], "to": "bed-1"}]`
	return train.with(entries{"sources": sources, "parts": parts,
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [{"id": "brook", "kind": "stream", "path": [[0, 1], [60, 1]]}]}`})
}

func TestStormInflowsDrainIn(t *testing.T) {
	f := compute(t, withBrook(`[]`))
	require.Equal(t, []string{"storm-1"}, subjects(f, "inflows"))
	requireKnown(t, f, "inflows", "storm-1", map[string]any{"kind": "storm inflow", "water": "clear water", "enters_at_or_above_bed": true, "route": "storm-1 → bed-1 → basin-1"})
}

func TestWithoutABedTheBasinsCount(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "s", "kind": "roof drain", "to": "basin-1"}, {"id": "u", "kind": "roof drain", "to": "tank-1"}]`,
		"parts": `[{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
			{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "sewer-1"}, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	})
	requireKnown(t, f, "inflows", "s", map[string]any{"enters_at_or_above_bed": true})
	requireKnown(t, f, "inflows", "u", map[string]any{"enters_at_or_above_bed": false, "enters_train": true})
}

// TestInflowsWithAWayNotDrawn: what is reached is known; what is not reached is
// unknown as long as the drawing leaves a way open.
func TestInflowsWithAWayNotDrawn(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "s", "kind": "toilet"}, {"id": "u", "kind": "shower", "to": "pipe-1"}, {"id": "v", "kind": "shower", "to": [{"target": "pipe-1"}, {"target": "basin-1"}]}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}]`,
	})
	requireLacks(t, f, "inflows", "s", "enters_train", "/sources/0/to")
	requireLacks(t, f, "inflows", "s", "enters_at_or_above_bed", "/sources/0/to")
	requireLacks(t, f, "inflows", "s", "route", "/sources/0/to")
	requireLacks(t, f, "inflows", "u", "enters_train", "/parts/0/to")
	requireKnown(t, f, "inflows", "u", map[string]any{"route": "u → pipe-1"})
	requireKnown(t, f, "inflows", "v", map[string]any{"enters_train": true})
}

func TestFlows(t *testing.T) {
	f := compute(t, train)
	tests := map[string]map[string]any{
		"diverter-1": {"warm_sources": "shower-1, washer-1", "warm_flow": si(t, "160 gal/d"), "bypass_sources": "shower-1, washer-1", "bypass_flow": si(t, "160 gal/d")},
		"bed-1":      {"warm_sources": "shower-1, washer-1", "warm_flow": si(t, "160 gal/d"), "bypass_sources": "none", "bypass_flow": 0.0},
		"trench-1":   {"warm_sources": "none", "warm_flow": 0.0, "bypass_sources": "none", "bypass_flow": 0.0},
		"sewer-1":    {"warm_sources": "toilet-1", "warm_flow": 0.0, "bypass_sources": "shower-1, washer-1, toilet-1", "bypass_flow": si(t, "160 gal/d")},
	}
	for part, want := range tests {
		t.Run(part, func(t *testing.T) { requireFlows(t, f, part, want) })
	}
}

// TestShares: three fixtures share the bathing of four occupants, 100 gal/d.
func TestShares(t *testing.T) {
	third := 100.0 / 3
	tests := map[string]struct {
		outlets string
		a, b, c float64 // gal/d of one fixture's third that reach the basins
	}{
		"none stated":             {`[{"target": "basin-a"}, {"target": "basin-b"}, {"target": "basin-c"}]`, third / 3, third / 3, third / 3},
		"one stated":              {`[{"target": "basin-a", "share": "50 %"}, {"target": "basin-b"}, {"target": "basin-c"}]`, third / 2, third / 4, third / 4},
		"all stated":              {`[{"target": "basin-a", "share": "20 %"}, {"target": "basin-b", "share": "30 %"}, {"target": "basin-c", "share": "50 %"}]`, third * 0.2, third * 0.3, third * 0.5},
		"stated to a tenth":       {`[{"target": "basin-a", "share": "33.3 %"}, {"target": "basin-b", "share": "33.3 %"}, {"target": "basin-c", "share": "33.3 %"}]`, third / 3, third / 3, third / 3},
		"nothing left":            {`[{"target": "basin-a", "share": "100 %"}, {"target": "basin-b"}]`, third, 0, 0},
		"twice to the same basin": {`[{"target": "basin-a"}, {"target": "basin-a"}, {"target": "basin-b"}]`, third * 2 / 3, third / 3, 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{
				"sources": `[{"id": "s", "kind": "shower", "to": ` + tt.outlets + `}, {"id": "u", "kind": "bathtub", "to": "basin-d"}, {"id": "v", "kind": "washbasin", "to": "basin-d"}]`,
				"parts": `[{"id": "basin-a", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}, {"id": "basin-b", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]},
					{"id": "basin-c", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}, {"id": "basin-d", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}]`,
			})
			for basin, want := range map[string]float64{"basin-a": tt.a, "basin-b": tt.b, "basin-c": tt.c, "basin-d": 2 * third} {
				requireFlows(t, f, basin, map[string]any{"warm_flow": want * si(t, "1 gal/d"), "bypass_flow": want * si(t, "1 gal/d")})
			}
		})
	}
}

// TestFlowsWithAWayNotDrawn: the drain pipe might lead anywhere but to what
// lies above it.
func TestFlowsWithAWayNotDrawn(t *testing.T) {
	f := compute(t, train.with(entries{"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 30], "to": [{"target": "bed-1"}, {"target": "pipe-1"}], "bypass_to": "sewer-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`}))
	requireLacks(t, f, "flows", "bed-1", "warm_flow", "/parts/1/to")
	requireLacks(t, f, "flows", "bed-1", "warm_sources", "/parts/1/to")
	requireLacks(t, f, "flows", "sewer-1", "warm_flow", "/parts/1/to")
	requireFlows(t, f, "diverter-1", map[string]any{"warm_flow": si(t, "160 gal/d")})
	requireFlows(t, f, "pipe-1", map[string]any{"warm_flow": si(t, "80 gal/d"), "warm_sources": "shower-1, washer-1"})
	requireFlows(t, f, "bed-1", map[string]any{"bypass_flow": 0.0, "bypass_sources": "none"})
}

// TestAToiletWithoutAWay leaves open which sources a part has, and not how much
// greywater.
func TestAToiletWithoutAWay(t *testing.T) {
	f := compute(t, train.with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "diverter-1"}, {"id": "toilet-1", "kind": "toilet"}]`}))
	requireLacks(t, f, "flows", "bed-1", "warm_sources", "/sources/1/to")
	requireFlows(t, f, "bed-1", map[string]any{"warm_flow": si(t, "100 gal/d")})
}

func requireFlows(t *testing.T, f *figures.Figures, part string, want map[string]any) {
	t.Helper()
	for field, expected := range want {
		got := known(t, f, "flows", part, field)
		if flow, isNumber := expected.(float64); isNumber {
			require.InDelta(t, flow, got, 1e-15, "%s of %s", field, part)
			continue
		}
		require.Equal(t, expected, got, "%s of %s", field, part)
	}
}

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

func TestDiverters(t *testing.T) {
	tests := map[string]struct {
		second string
		sewer  bool
		route  string
	}{
		"to the sewer":              {`, "bypass_to": "sewer-1"`, true, "diverter-1 → sewer-1"},
		"none":                      {``, false, "none"},
		"to the bed":                {`, "bypass_to": "bed-1"`, false, "diverter-1 → bed-1 → basin-1"},
		"one way to the sewer":      {`, "bypass_to": [{"target": "sewer-1"}, {"target": "basin-1"}]`, false, "diverter-1 → sewer-1; diverter-1 → basin-1"},
		"through the tank":          {`, "bypass_to": "tank-2"`, false, "diverter-1 → tank-2 → sewer-1"},
		"to a feature":              {`, "bypass_to": "brook"`, false, "diverter-1 → brook"},
		"by a pipe":                 {`, "bypass_to": "pipe-1"`, true, "diverter-1 → pipe-1 → sewer-1"},
		"by another diverter's to":  {`, "bypass_to": "diverter-2"`, false, "diverter-1 → diverter-2 → sewer-1"},
		"to the sewer by two pipes": {`, "bypass_to": [{"target": "pipe-1"}, {"target": "sewer-1"}]`, true, "diverter-1 → pipe-1 → sewer-1; diverter-1 → sewer-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, diverting(tt.second)), "diverters", "diverter-1",
				map[string]any{"second_route_reaches_sewer": tt.sewer, "second_route": tt.route})
		})
	}
}

func diverting(second string) entries {
	return withBrook(`[]`).with(entries{"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 30], "to": "bed-1"` + second + `},
		{"id": "diverter-2", "kind": "diverter", "at": [10, 30], "to": "bed-1", "bypass_to": "sewer-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "tank-2", "kind": "surge tank", "at": [10, 30], "to": "sewer-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "to": "sewer-1"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`})
}

func TestASecondRouteNotDrawnToItsEnd(t *testing.T) {
	f := compute(t, diverting(`, "bypass_to": "pipe-2"`))
	requireLacks(t, f, "diverters", "diverter-1", "second_route_reaches_sewer", "/parts/6/to")

	f = compute(t, diverting(`, "bypass_to": [{"target": "pipe-2"}, {"target": "basin-1"}]`))
	requireKnown(t, f, "diverters", "diverter-1", map[string]any{"second_route_reaches_sewer": false})
}

func TestHoldings(t *testing.T) {
	tests := map[string]struct {
		overflow string
		has      bool
		safe     bool
		route    string
	}{
		"to the sewer":              {`, "overflow_to": "sewer-1"`, true, true, "bed-1 → sewer-1"},
		"none":                      {``, false, false, "none"},
		"to a basin":                {`, "overflow_to": "basin-1"`, true, true, "bed-1 → basin-1"},
		"to a brook":                {`, "overflow_to": "brook"`, true, false, "bed-1 → brook"},
		"by a pipe to a brook":      {`, "overflow_to": "over-1"`, true, false, "bed-1 → over-1 → brook"},
		"one way to a brook":        {`, "overflow_to": [{"target": "basin-1"}, {"target": "over-1"}]`, true, false, "bed-1 → basin-1; bed-1 → over-1 → brook"},
		"to a pond that spills":     {`, "overflow_to": "pond-1"`, true, false, "bed-1 → pond-1 → basin-1; pond-1 → over-1 → brook"},
		"to a tank with a safe end": {`, "overflow_to": "tank-2"`, true, true, "bed-1 → tank-2 → sewer-1; tank-2 → basin-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, overflowing(tt.overflow))
			require.Equal(t, []string{"bed-1", "pond-1", "tank-2"}, subjects(f, "holdings"))
			requireKnown(t, f, "holdings", "bed-1", map[string]any{
				"kind": "planted gravel bed", "has_overflow": tt.has, "overflow_ends_safely": tt.safe, "overflow_route": tt.route,
			})
		})
	}
}

func overflowing(overflow string) entries {
	return withBrook(`[]`).with(entries{"parts": `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "sewer-1"` + overflow + `},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "pond-1", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "to": "basin-1", "overflow_to": "over-1"},
		{"id": "tank-2", "kind": "surge tank", "at": [10, 30], "to": "sewer-1", "overflow_to": "basin-1"},
		{"id": "over-1", "kind": "overflow pipe", "path": [[1, 1], [2, 1]], "to": "brook"},
		{"id": "over-2", "kind": "overflow pipe", "path": [[1, 1], [2, 1]]},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`})
}

func TestAnOverflowNotDrawnToItsEnd(t *testing.T) {
	f := compute(t, overflowing(`, "overflow_to": "over-2"`))
	requireLacks(t, f, "holdings", "bed-1", "overflow_ends_safely", "/parts/5/to")
	requireKnown(t, f, "holdings", "bed-1", map[string]any{"has_overflow": true, "overflow_route": "bed-1 → over-2"})
}

func TestOpenWater(t *testing.T) {
	tests := map[string]struct {
		sources  string
		receives bool
		treated  bool
		from     string
	}{
		"after the bed":      {`[{"id": "s", "kind": "shower", "to": "bed-1"}]`, true, true, "none"},
		"straight into it":   {`[{"id": "s", "kind": "shower", "to": "pond-1"}]`, true, false, "s"},
		"in part":            {`[{"id": "s", "kind": "shower", "to": [{"target": "bed-1"}, {"target": "pond-1"}]}, {"id": "u", "kind": "shower", "to": "bed-1"}]`, true, false, "s"},
		"by a tank overflow": {`[{"id": "s", "kind": "shower", "to": "tank-1"}]`, true, false, "s"},
		"rain alone":         {`[{"id": "s", "kind": "roof drain", "to": "pond-1"}]`, false, true, "none"},
		"nothing":            {`[]`, false, true, "none"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, ponding(tt.sources))
			requireKnown(t, f, "open_water", "pond-1", map[string]any{
				"kind": "pond", "receives_greywater": tt.receives, "treated_first": tt.treated, "untreated_from": tt.from, "has_permit": true,
			})
		})
	}
}

func ponding(sources string) entries {
	return entries{"sources": sources, "parts": `[
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "bed-1", "overflow_to": "pond-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "pond-1"},
		{"id": "pond-1", "kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "permit": "W-17", "to": "basin-1"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "tank-2", "kind": "surge tank", "at": [1, 1], "covered": false, "to": "basin-1"},
		{"id": "tank-3", "kind": "surge tank", "at": [1, 1], "covered": true, "to": "basin-1"},
		{"id": "settling-1", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "to": "basin-1"},
		{"id": "settling-2", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "covered": true, "to": "basin-1"},
		{"id": "settling-3", "kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "covered": false, "to": "basin-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]}
	]`}
}

func TestWhichWaterIsOpen(t *testing.T) {
	f := compute(t, ponding(`[]`))
	require.Equal(t, []string{"pond-1", "settling-1", "settling-3", "tank-2"}, slices.Sorted(slices.Values(subjects(f, "open_water"))))
	requireKnown(t, f, "open_water", "settling-1", map[string]any{"has_permit": false})
}

func TestOpenWaterWithAWayNotDrawn(t *testing.T) {
	f := compute(t, ponding(`[{"id": "s", "kind": "shower", "to": "pipe-1"}]`))
	requireLacks(t, f, "open_water", "pond-1", "receives_greywater", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "treated_first", "/parts/9/to")
	requireLacks(t, f, "open_water", "pond-1", "untreated_from", "/parts/9/to")

	f = compute(t, ponding(`[{"id": "s", "kind": "shower", "to": [{"target": "pond-1"}, {"target": "pipe-1"}]}]`))
	requireKnown(t, f, "open_water", "pond-1", map[string]any{"receives_greywater": true, "treated_first": false})
}
