package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestInflows(t *testing.T) {
	tests := map[string]struct {
		source string
		want   map[string]any
	}{
		"to the bed": {`{"id": "s", "kind": "shower", "to": "bed-1"}`, map[string]any{
			"water": "greywater", "enters_train": true, "joins_untreated": true, "joins_in_soil": true, "ends_safely": true, "ends_in_sewer": false, "reaches_sewer": false, "ends": "basin-1, trench-1", "unsafe_ends": "none", "route": "s → bed-1 → basin-1"}},
		"by the diverter": {`{"id": "s", "kind": "sump pump", "to": "diverter-1"}`, map[string]any{
			"water": "clear water", "enters_train": true, "joins_untreated": true, "ends": "basin-1, trench-1, sewer-1", "route": "s → diverter-1 → tank-1 → bed-1 → basin-1"}},
		"below the bed": {`{"id": "s", "kind": "roof drain", "to": "basin-1"}`, map[string]any{
			"enters_train": true, "joins_untreated": false, "ends_safely": true, "route": "s → basin-1"}},
		"to the sewer": {`{"id": "s", "kind": "toilet", "to": "sewer-1"}`, map[string]any{
			"water": "toilet waste", "enters_train": false, "joins_untreated": false, "joins_in_soil": false, "ends_safely": true, "ends_in_sewer": true, "reaches_sewer": true, "ends": "sewer-1", "route": "s → sewer-1"}},
		"in part": {`{"id": "s", "kind": "dishwasher", "to": [{"target": "sewer-1", "share": "90 %"}, {"target": "tank-1"}]}`, map[string]any{
			"water": "kitchen waste", "enters_train": true, "ends_in_sewer": false, "reaches_sewer": true, "route": "s → sewer-1; s → tank-1 → bed-1 → basin-1"}},
		"by a spillway": {`{"id": "s", "kind": "softener backwash", "to": "spill-1"}`, map[string]any{
			"water": "brine", "enters_train": true, "route": "s → spill-1 → trench-1"}},
		"to a feature": {`{"id": "s", "kind": "toilet", "to": "brook"}`, map[string]any{
			"enters_train": false, "ends_safely": false, "ends_in_sewer": false, "ends": "brook", "unsafe_ends": "brook", "route": "s → brook"}},
		"one way to a feature": {`{"id": "s", "kind": "clothes washer", "to": [{"target": "bed-1"}, {"target": "brook"}]}`, map[string]any{
			"ends_safely": false, "ends": "basin-1, trench-1, brook", "unsafe_ends": "brook"}},
		"joined again": {`{"id": "s", "kind": "shower", "to": [{"target": "tank-1"}, {"target": "bed-1"}]}`, map[string]any{
			"route": "s → tank-1 → bed-1 → basin-1; s → bed-1"}},
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
	f := compute(t, withBrook(drip))
	require.Equal(t, []string{"drip", "storm-1"}, subjects(f, "inflows"))
	requireKnown(t, f, "inflows", "storm-1", map[string]any{"kind": "storm inflow", "water": "clear water", "joins_untreated": true, "route": "storm-1 → bed-1 → basin-1"})
}

// TestJoinsUntreated: what a bed lets through is treated, what it overflows is
// not, and neither is what never meets a bed.
func TestJoinsUntreated(t *testing.T) {
	tests := map[string]struct {
		sources string
		joins   bool
	}{
		"below the bed":                            {`{"id": "u", "kind": "shower", "to": "bed-1"}, {"id": "s", "kind": "roof drain", "to": "basin-1"}`, false},
		"where the bed overflows":                  {`{"id": "u", "kind": "shower", "to": "bed-1"}, {"id": "s", "kind": "roof drain", "to": "trench-1"}`, true},
		"where nothing overflows":                  {`{"id": "s", "kind": "roof drain", "to": "trench-1"}`, false},
		"into a bed that nothing else reaches":     {`{"id": "s", "kind": "roof drain", "to": "bed-1"}`, true},
		"into a basin with greywater of its own":   {`{"id": "u", "kind": "clothes washer", "to": "basin-2"}, {"id": "s", "kind": "roof drain", "to": "basin-2"}`, true},
		"into a basin of its own":                  {`{"id": "u", "kind": "shower", "to": "bed-1"}, {"id": "s", "kind": "roof drain", "to": "basin-2"}`, false},
		"into a tank with greywater":               {`{"id": "u", "kind": "shower", "to": "tank-2"}, {"id": "s", "kind": "sump pump", "to": "tank-2"}`, true},
		"into the pipe to the sewer":               {`{"id": "u", "kind": "shower", "to": "sewer-1"}, {"id": "s", "kind": "sump pump", "to": "sewer-1"}`, false},
		"into a tank that only kitchen water uses": {`{"id": "u", "kind": "kitchen sink", "to": "tank-2"}, {"id": "s", "kind": "sump pump", "to": "tank-2"}`, false},
	}
	parts := train["parts"][:len(train["parts"])-1] + `,
		{"id": "basin-2", "kind": "mulch basin", "outline": [[34, 28], [36, 28], [36, 30]]},
		{"id": "tank-2", "kind": "surge tank", "outline": [[40, 28], [41, 28], [41, 29]], "to": "sewer-1"}]`
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, train.with(entries{"sources": "[" + tt.sources + "]", "parts": parts}))
			requireKnown(t, f, "inflows", "s", map[string]any{"joins_untreated": tt.joins})
		})
	}
}

// TestSettlesFirst: what meets a bed, soil or a pond has come through a settling
// basin or a filter; a surge tank is neither.
func TestSettlesFirst(t *testing.T) {
	tests := map[string]struct {
		source, between string
		settles         bool
	}{
		"straight into the bed":    {`"to": "bed-1"`, ``, false},
		"straight into mulch":      {`"to": "basin-1"`, ``, false},
		"by a settling basin":      {`"to": "a"`, `{"id": "a", "kind": "settling basin", "outline": [[1, 1], [2, 1], [2, 2]], "to": "bed-1"},`, true},
		"by a filter":              {`"to": "a"`, `{"id": "a", "kind": "filter", "at": [1, 1], "to": "bed-1"},`, true},
		"by a surge tank":          {`"to": "a"`, `{"id": "a", "kind": "surge tank", "at": [1, 1], "to": "bed-1"},`, false},
		"by a tank and then":       {`"to": "a"`, `{"id": "a", "kind": "surge tank", "at": [1, 1], "to": "b"}, {"id": "b", "kind": "settling basin", "outline": [[1, 1], [2, 1], [2, 2]], "to": "bed-1"},`, true},
		"past it by an overflow":   {`"to": "a"`, `{"id": "a", "kind": "surge tank", "at": [1, 1], "to": "b", "overflow_to": "bed-1"}, {"id": "b", "kind": "filter", "at": [1, 1], "to": "bed-1"},`, false},
		"one of two ways":          {`"to": [{"target": "a"}, {"target": "basin-1"}]`, `{"id": "a", "kind": "filter", "at": [1, 1], "to": "bed-1"},`, false},
		"to the sewer":             {`"to": "sewer-1"`, ``, true},
		"by a tank into the sewer": {`"to": "a"`, `{"id": "a", "kind": "surge tank", "at": [1, 1], "to": "sewer-1"},`, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, train.with(entries{
				"sources": `[{"id": "s", "kind": "kitchen sink", ` + tt.source + `}]`,
				"parts":   "[" + tt.between + train["parts"][1:],
			}))
			requireKnown(t, f, "inflows", "s", map[string]any{"settles_first": tt.settles})
		})
	}
}

// TestBasinsThatDrainOn: a basin or trench ends a way only where no way leads on
// from it.
func TestBasinsThatDrainOn(t *testing.T) {
	tests := map[string]struct {
		basin string
		safe  bool
		ends  string
	}{
		"no further":                {``, true, "basin-1"},
		"to a brook":                {`, "to": "brook"`, false, "brook"},
		"overflows to a brook":      {`, "overflow_to": "brook"`, false, "brook"},
		"to a basin":                {`, "to": "basin-2"`, true, "basin-2"},
		"to a basin and to a brook": {`, "to": "basin-2", "overflow_to": "brook"`, false, "basin-2, brook"},
		"overflows to the sewer":    {`, "overflow_to": "sewer-1"`, true, "sewer-1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, withBrook(`[{"id": "s", "kind": "shower", "to": "basin-1"}]`).with(entries{"parts": `[
				{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]` + tt.basin + `},
				{"id": "basin-2", "kind": "mulch basin", "outline": [[34, 28], [36, 28], [36, 30]]},
				{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`}))
			requireKnown(t, f, "inflows", "s", map[string]any{"ends_safely": tt.safe, "ends": tt.ends})
		})
	}
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
	for _, field := range []string{"joins_untreated", "settles_first", "ends_safely", "ends_in_sewer", "ends", "unsafe_ends", "route"} {
		requireLacks(t, f, "inflows", "s", field, "/sources/0/to")
	}
	for _, field := range []string{"enters_train", "joins_untreated", "ends_safely", "ends_in_sewer", "ends"} {
		requireLacks(t, f, "inflows", "u", field, "/parts/0/to")
	}
	requireLacks(t, f, "inflows", "v", "ends_safely", "/parts/0/to")
	requireKnown(t, f, "inflows", "v", map[string]any{"ends_in_sewer": false})
	requireKnown(t, f, "inflows", "u", map[string]any{"route": "u → pipe-1"})
	requireKnown(t, f, "inflows", "v", map[string]any{"enters_train": true})
}

// TestGreywaterOnAWayNotDrawnMayJoin: clear water in a basin is safe from it only
// once the drawing says where it goes.
func TestGreywaterOnAWayNotDrawnMayJoin(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "s", "kind": "roof drain", "to": "basin-1"}, {"id": "u", "kind": "shower", "to": "pipe-1"}, {"id": "v", "kind": "roof drain", "to": "sewer-1"}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [2, 1]]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	})
	requireLacks(t, f, "inflows", "s", "joins_untreated", "/parts/0/to")
	requireKnown(t, f, "inflows", "v", map[string]any{"joins_untreated": false})
}

// TestOtherWaysHideNoMissingOne: a second route and an overflow do not say where
// water goes on an ordinary day; a pond's overflow does.
func TestOtherWaysHideNoMissingOne(t *testing.T) {
	tests := map[string]struct {
		part  string
		lacks bool
	}{
		"a diverter":       {`"kind": "diverter", "at": [1, 1], "bypass_to": "sewer-1"`, true},
		"a bed":            {`"kind": "planted gravel bed", "outline": [[24, 28], [26, 28], [26, 30]], "overflow_to": "sewer-1"`, true},
		"a tank":           {`"kind": "surge tank", "at": [1, 1], "overflow_to": "sewer-1"`, true},
		"a filter":         {`"kind": "filter", "at": [1, 1], "overflow_to": "sewer-1"`, true},
		"a settling basin": {`"kind": "settling basin", "outline": [[24, 28], [26, 28], [26, 30]], "overflow_to": "sewer-1"`, true},
		"a pond":           {`"kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]], "overflow_to": "sewer-1"`, false},
		"an endless pond":  {`"kind": "pond", "outline": [[24, 28], [26, 28], [26, 30]]`, true},
		"a trench":         {`"kind": "infiltration trench", "path": [[1, 1], [2, 1]], "overflow_to": "sewer-1"`, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{
				"sources": `[{"id": "s", "kind": "toilet", "to": "p"}]`,
				"parts":   `[{"id": "p", ` + tt.part + `}, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
			})
			if tt.lacks {
				requireLacks(t, f, "inflows", "s", "ends_in_sewer", "/parts/0/to")
				return
			}
			requireKnown(t, f, "inflows", "s", map[string]any{"ends_in_sewer": true})
		})
	}
}

// TestClearWaterInTheSoil: what a basin takes of both counts, of one of them not.
func TestClearWaterInTheSoil(t *testing.T) {
	parts := `[{"id": "basin-1", "kind": "mulch basin", "outline": [[1, 1], [2, 1], [2, 2]]}, {"id": "basin-2", "kind": "mulch basin", "outline": [[4, 1], [5, 1], [5, 2]]}]`
	for shower, want := range map[string]bool{`, "to": "basin-1"`: true, `, "to": "basin-2"`: false} {
		e := entries{"parts": parts, "sources": `[{"id": "s", "kind": "shower"` + shower + `}, {"id": "r", "kind": "roof drain", "to": "basin-1"}]`}
		requireKnown(t, compute(t, e), "inflows", "r", map[string]any{"joins_in_soil": want})
	}
	open := compute(t, entries{"parts": parts, "sources": `[{"id": "s", "kind": "shower"}, {"id": "r", "kind": "roof drain", "to": "basin-1"}, {"id": "q", "kind": "sump pump"}]`})
	requireLacks(t, open, "inflows", "r", "joins_in_soil", "/sources/0/to")
	requireLacks(t, open, "inflows", "q", "joins_in_soil", "/sources/2/to")
}
