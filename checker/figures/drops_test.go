package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// cascade is a shower on a tank and a bed, with pipes between.
//
//	shower-1 ── diverter-1 ── pipe-1 ── tank-1 ── pipe-2 ── bed-1 ── sewer-1
//	                └┄┄┄┄┄┄┄┄ pipe-3 ┄┄┄ sewer-1
var cascade = entries{
	"sources": `[{"id": "shower-1", "kind": "shower", "to": "diverter-1", "level": "11.5 m"}, {"id": "basin-1", "kind": "washbasin", "to": "diverter-1", "level": "11.4 m"}]`,
	"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 10], "level": "11 m", "to": "pipe-1", "bypass_to": "pipe-3"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [14, 10]], "inverts": ["11 m", "10.9 m"], "to": "tank-1"},
		{"id": "tank-1", "kind": "surge tank", "outline": [[14, 9], [15, 9], [15, 11], [14, 11]], "covered": true, "water_level": "10.4 m", "inlet_level": "10.8 m", "outlet_level": "10.4 m", "to": "pipe-2"},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[15, 10], [21, 10]], "inverts": ["10.4 m", "10.1 m"], "to": "bed-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[21, 8], [26, 8], [26, 12], [21, 12]], "water_level": "9.9 m", "inlet_level": "10 m", "outlet_level": "9.9 m", "to": "sewer-1"},
		{"id": "pipe-3", "kind": "drain pipe", "path": [[10, 10], [10, 15]], "inverts": ["11 m", "10.7 m"], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39], "level": "9 m"}
	]`,
}

func TestDrops(t *testing.T) {
	f := compute(t, cascade)
	require.Equal(t, []string{"diverter-1 and tank-1", "diverter-1 and sewer-1", "tank-1 and bed-1", "bed-1 and sewer-1"}, subjects(f, "drops"))
	requireKnown(t, f, "drops", "diverter-1 and tank-1", map[string]any{
		"upstream": "diverter-1", "downstream": "tank-1", "into_soil": false, "by": "pipe-1", "outlet": 11.0, "inlet": 10.9, "fall_available": 0.1,
		"dry_drop": 11 - 10.4, "storm_drop": 11 - 10.4, "drowned_dry": false, "drowned_in_storm": false,
	})
	requireKnown(t, f, "drops", "tank-1 and bed-1", map[string]any{"by": "pipe-2", "outlet": 10.4, "inlet": 10.1, "fall_available": 10.4 - 10.1, "dry_drop": 0.5, "drowned_dry": false})
	requireKnown(t, f, "drops", "bed-1 and sewer-1", map[string]any{"by": "none", "outlet": 9.9, "inlet": 9.0, "fall_available": 0.9, "dry_drop": 0.9})
	requireLacks(t, f, "drops", "tank-1 and bed-1", "drowned_in_storm", "/site/climate/design_storm/intensity")
}

// TestDrowned: a bed whose water stands over the tank's outlet backs up into it.
func TestDrowned(t *testing.T) {
	for level, drowned := range map[string]bool{"10.4 m": false, "10.41 m": true} {
		f := compute(t, cascade.with(entries{"parts": strings.Replace(cascade["parts"], `"9.9 m", "inlet_level": "10 m"`, `"`+level+`", "inlet_level": "10 m"`, 1)}))
		requireKnown(t, f, "drops", "tank-1 and bed-1", map[string]any{"drowned_dry": drowned})
	}
}

// TestDrownedInTheStorm: water heaps up over a spillway's crest of 1 m, more than 12 mm
// for 3 L/s.
func TestDrownedInTheStorm(t *testing.T) {
	e := yardDrain(`"overflow_to": "spill-1"`, brink+`,
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "covered": true, "water_level": "9.61 m", "outlet_level": "9.61 m", "to": "pond-1"}`)
	requireKnown(t, compute(t, e), "drops", "tank-1 and pond-1", map[string]any{
		"drowned_dry": false, "drowned_in_storm": true, "storm_drop": 9.61 - 9.6 - rectangularHead(0.003),
	})
	requireKnown(t, compute(t, e), "drops", "pond-1 and sewer-1", map[string]any{"by": "spill-1", "outlet": 9.6, "inlet": 9.6})
}

func TestDropsIntoSoil(t *testing.T) {
	f := compute(t, train)
	requireKnown(t, f, "drops", "bed-1 and basin-1", map[string]any{"into_soil": true})
	requireKnown(t, f, "drops", "bed-1 and trench-1", map[string]any{"into_soil": true})
	requireKnown(t, f, "drops", "tank-1 and bed-1", map[string]any{"into_soil": false})
}

func TestWhatDropsLack(t *testing.T) {
	f := compute(t, entries{"sources": drip, "parts": `[
		{"id": "basin-1", "kind": "mulch basin", "outline": [[14, 9], [15, 9], [15, 11]], "floor": "9 m", "to": "basin-2"},
		{"id": "basin-2", "kind": "mulch basin", "outline": [[24, 9], [25, 9], [25, 11]]},
		{"id": "tank-1", "kind": "surge tank", "at": [1, 1], "to": "pipe-1"},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [10, 15]], "to": "basin-2"}
	]`})
	requireLacks(t, f, "drops", "basin-1 and basin-2", "outlet", "/parts/0/to")
	requireLacks(t, f, "drops", "basin-1 and basin-2", "inlet", "/parts/1")
	requireLacks(t, f, "drops", "basin-1 and basin-2", "dry_drop", "/parts/1/floor")
	requireLacks(t, f, "drops", "tank-1 and basin-2", "fall_available", "/parts/3/inverts")
}

func TestFalls(t *testing.T) {
	f := compute(t, cascade)
	require.Equal(t, []string{"diverter-1 to sewer-1", "diverter-1 to sewer-1 in the bypass season"}, subjects(f, "falls"))
	requireKnown(t, f, "falls", "diverter-1 to sewer-1", map[string]any{
		"season": "warm season", "route": "diverter-1 → pipe-1 → tank-1 → pipe-2 → bed-1 → sewer-1", "source_level": 11.4,
		"first_level": 11.0, "last_level": 9.0, "fall_had": 2.0, "pipe_length": 4.0 + 6, "pipe_fall": 0.1 + 0.3, "drops": 0.4 + 0.1,
		"slope_available": (2 - 0.5) / 10,
	})
	requireKnown(t, f, "falls", "diverter-1 to sewer-1 in the bypass season", map[string]any{
		"season": "bypass season", "route": "diverter-1 → pipe-3 → sewer-1", "fall_had": 2.0, "pipe_length": 5.0, "drops": 0.0, "slope_available": 2.0 / 5,
	})
}

// TestFallsWithoutABypass are the same in every season, and lead to every end.
func TestFallsWithoutABypass(t *testing.T) {
	f := compute(t, entries{
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "pipe-1"}, {"id": "toilet-1", "kind": "toilet", "to": "sewer-1"}]`,
		"site":    siteWith(`"features": [{"id": "ditch-1", "kind": "ditch", "path": [[40, 0], [40, 40]]}]`),
		"parts": `[
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [14, 10]], "inverts": ["11 m", "10.9 m"], "to": [{"target": "ditch-1"}, {"target": "basin-1"}]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[14, 9], [15, 9], [15, 11]], "floor": "10.5 m"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39], "level": "9 m"}
		]`,
	})
	require.Equal(t, []string{"pipe-1 to ditch-1", "pipe-1 to basin-1"}, subjects(f, "falls"))
	requireKnown(t, f, "falls", "pipe-1 to ditch-1", map[string]any{"season": "every season", "route": "pipe-1 → ditch-1", "last_level": 10.9, "fall_had": 0.1})
	requireKnown(t, f, "falls", "pipe-1 to basin-1", map[string]any{"last_level": 10.5, "fall_had": 0.5, "slope_available": 0.5 / 4})
	requireLacks(t, f, "falls", "pipe-1 to basin-1", "source_level", "/sources/0/level")
}

func TestWhatFallsLack(t *testing.T) {
	f := compute(t, train)
	requireLacks(t, f, "falls", "diverter-1 to basin-1", "fall_had", "/parts/0/level", "/parts/3/floor")
	requireLacks(t, f, "falls", "diverter-1 to basin-1", "drops", "/parts/1/inlet_level", "/parts/1/outlet_level", "/parts/2/inlet_level", "/parts/2/outlet_level")
	requireLacks(t, f, "falls", "diverter-1 to basin-1", "slope_available", "/parts")
}
