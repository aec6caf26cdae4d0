package figures_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// stormy is the bare site with a design storm of 36 mm/h, which on 100 m² is 1 L/s.
var stormy = siteWith(`"climate": {"design_storm": {"intensity": "36 mm/h", "duration": "30 min"}}`)

// yardDrain is a storm inflow of 250 m² into a pond of 10 m × 5 m, which is 3 L/s
// with the rain on the pond itself.
func yardDrain(overflow, ways string) entries {
	return entries{"site": stormy, "parts": `[
		{"id": "storm-1", "kind": "storm inflow", "at": [1, 1], "catchment": "500 m2", "runoff_coefficient": 0.5, "to": "pond-1"},
		{"id": "pond-1", "kind": "pond", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]], "floor": "8 m", "water_level": "9.5 m", "rim_level": "10 m", ` + overflow + `},
		` + ways + `,
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39], "level": "8 m"}
	]`}
}

const (
	brink = `{"id": "spill-1", "kind": "spillway", "path": [[20, 11], [20, 13]], "crest_level": "9.6 m", "crest_length": "1 m", "to": "sewer-1", "lining": "turf", "roughness": 0.03, "channel_slope": "4 %"}`
	drop  = `{"id": "over-1", "kind": "overflow pipe", "path": [[20, 12], [30, 12]], "inverts": ["9.6 m", "8.6 m"], "diameter": "100 mm", "material": "ABS", "roughness": 0.013, "to": "sewer-1"}`
)

// rectangularHead is the head over a crest of 1 m with upright sides, by the least
// coefficient of earth crests, 2.6 in feet (FHWA HEC-22; from memory).
func rectangularHead(flow float64) float64 {
	return math.Pow(flow/(2.6*math.Sqrt(0.3048)), 2.0/3)
}

func TestWaterOverASpillway(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": "spill-1"`, brink))
	level := 9.6 + rectangularHead(0.003)
	requireKnown(t, f, "water_levels", "pond-1", map[string]any{
		"kind": "pond", "dry_surface": 9.5, "dry_surface_by": "water level", "ways_out": "spill-1", "storm_flow": 0.003,
		"storm_surface": level, "rim": 10.0, "dry_freeboard": 0.5, "storm_freeboard": 10 - level,
	})
	requireKnown(t, f, "water_levels", "spill-1", map[string]any{
		"kind": "spillway", "dry_surface": 9.6, "dry_surface_by": "crest", "storm_surface": level, "rim": 10.0, "storm_freeboard": 10 - level,
	})
}

// TestASpillwayAndItsChannel: critical depth y over a rectangle, with the greatest
// coefficient of earth crests, 3.0 of the ideal 3.09 in feet; the channel by Manning,
// whose depth is put back into the equation.
func TestASpillwayAndItsChannel(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": "spill-1"`, brink))
	share := 3.0 * math.Sqrt(0.3048) / (math.Pow(2.0/3, 1.5) * math.Sqrt(9.80665))
	depth := math.Cbrt(math.Pow(0.003/share, 2) / 9.80665)
	requireKnown(t, f, "spillway_channels", "spill-1", map[string]any{
		"lining": "turf", "storm_flow": 0.003, "crest_head": rectangularHead(0.003), "crest_velocity": 0.003 / depth, "channel_slope": 0.04,
	})
	y := known(t, f, "spillway_channels", "spill-1", "channel_depth").(float64)
	require.InDelta(t, 0.003, y*math.Pow(y/(1+2*y), 2.0/3)*0.2/0.03, 1e-12)
	requireKnown(t, f, "spillway_channels", "spill-1", map[string]any{"channel_velocity": 0.003 / y})
}

func TestASpillwayThatNothingReaches(t *testing.T) {
	e := dammed(outCrest)
	e["parts"] = strings.Replace(e["parts"], `"rim_level": "10 m"`, `"rim_level": "10 m", "water_level": "9.7 m"`, 1)
	f := compute(t, e)
	requireKnown(t, f, "spillway_channels", "out-1", map[string]any{
		"crest_head": 0.0, "crest_velocity": 0.0, "channel_depth": 0.0, "channel_velocity": 0.0,
	})
	requireKnown(t, f, "water_levels", "basin-1", map[string]any{"storm_surface": 9.7})
}

// TestAStormWithoutRain is no storm to be designed for.
func TestAStormWithoutRain(t *testing.T) {
	e := yardDrain(`"overflow_to": "spill-1"`, brink)
	e["site"] = siteWith(`"climate": {"design_storm": {"intensity": "0 mm/h"}}`)
	requireLacks(t, compute(t, e), "spillway_channels", "spill-1", "crest_head", "/site/climate/design_storm/intensity")
}

// TestWaterOverAPipe: an open mouth on a slope of 10 % runs at critical depth, at
// which flow² × top width = g × area³; the depth is sought by the test's own halving.
func TestWaterOverAPipe(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": "over-1"`, drop))
	area := func(y float64) float64 {
		theta := 2 * math.Acos(1-2*y/0.1)
		return 0.01 * (theta - math.Sin(theta)) / 8
	}
	low, high := 0.0, 0.1
	for range 60 {
		y := (low + high) / 2
		if 0.003*0.003*2*math.Sqrt(y*(0.1-y)) > 9.80665*math.Pow(area(y), 3) {
			low = y
		} else {
			high = y
		}
	}
	velocity := 0.003 / area(low)
	requireKnown(t, f, "water_levels", "pond-1", map[string]any{
		"ways_out": "over-1", "storm_surface": 9.6 + low + 1.8*velocity*velocity/(2*9.80665),
	})
}

// TestCapacities: a rectangle of 1 m under 0.4 m of water by C·L·H^1.5, with 2.6 and 3.0
// in feet (from memory); a mouth of 100 mm as an orifice under 0.35 m over its middle,
// since 1 m of fall leaves the barrel room.
func TestCapacities(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": [{"target": "spill-1"}, {"target": "over-1"}]`, brink+", "+drop))
	weir := math.Sqrt(0.3048) * math.Pow(0.4, 1.5)
	requireKnown(t, f, "spillways", "spill-1", map[string]any{
		"serves": "pond-1", "rim": 10.0, "head": 0.4, "least_capacity": 2.6 * weir, "greatest_capacity": 3.0 * weir, "control": "crest",
		"storm_flow": 0.003, "capacity_to_storm": 2.6 * weir / 0.003,
	})
	orifice := 0.6 * math.Pi * 0.1 * 0.1 / 4 * math.Sqrt(2*9.80665*0.35)
	requireKnown(t, f, "spillways", "over-1", map[string]any{"greatest_capacity": orifice, "least_capacity": orifice, "control": "orifice"})
}

// TestAPipeUnderALowRim: with the rim under the top of its mouth it runs part full.
func TestAPipeUnderALowRim(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": "over-1"`, strings.Replace(drop, `"9.6 m"`, `"9.95 m"`, 1)))
	requireKnown(t, f, "spillways", "over-1", map[string]any{"control": "mouth"})
	require.Less(t, known(t, f, "spillways", "over-1", "capacity_to_storm"), 1.0)
	require.Negative(t, known(t, f, "water_levels", "pond-1", "storm_freeboard"))
}

// TestTwoWaysOut: two equal spillways carry half each.
func TestTwoWaysOut(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": [{"target": "spill-1"}, {"target": "spill-2"}]`, brink+", "+strings.ReplaceAll(brink, "spill-1", "spill-2")))
	requireKnown(t, f, "water_levels", "pond-1", map[string]any{"ways_out": "spill-1, spill-2"})
	require.InDelta(t, 9.6+rectangularHead(0.0015), known(t, f, "water_levels", "pond-1", "storm_surface"), 1e-9)
}

func TestOrdinaryLevels(t *testing.T) {
	const square = `"outline": [[10, 10], [12, 10], [12, 12], [10, 12]]`
	tests := map[string]struct {
		part  string
		level float64
		by    string
	}{
		"water level":      {`"kind": "planted gravel bed", ` + square + `, "water_level": "9 m", "outlet_level": "8 m"`, 9, "water level"},
		"level control":    {`"kind": "planted gravel bed", ` + square + `, "outlet": {"level": "8.5 m"}, "outlet_level": "8 m"`, 8.5, "level control"},
		"outlet":           {`"kind": "surge tank", ` + square + `, "outlet_level": "8 m"`, 8, "outlet"},
		"filter":           {`"kind": "filter", "at": [1, 1], "outlet_level": "8 m"`, 8, "outlet"},
		"floor":            {`"kind": "mulch basin", ` + square + `, "floor": ["7 m", "7.2 m", "7 m", "7 m"], "depth": "300 mm"`, 7, "floor"},
		"depth":            {`"kind": "mulch basin", ` + square + `, "edge_levels": ["7 m", "7.2 m", "7 m", "6.9 m"], "depth": "300 mm"`, 6.6, "ground and depth"},
		"depth and ground": {`"kind": "infiltration trench", "path": [[10, 5], [20, 5]], "width": "0.5 m", "depth": "500 mm"`, 11 - 0.5, "ground and depth"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{"site": siteWith(`"levels": [[0, 0, 10], [60, 0, 16], [0, 40, 10], [60, 40, 16]]`), "parts": `[{"id": "p", ` + tt.part + `}]`})
			requireKnown(t, f, "water_levels", "p", map[string]any{"dry_surface": tt.level, "dry_surface_by": tt.by})
		})
	}
}

func TestWhatWaterLevelsLack(t *testing.T) {
	f := compute(t, yardDrain(`"overflow_to": "sewer-1"`, brink))
	requireLacks(t, f, "water_levels", "pond-1", "storm_surface", "/parts/1/overflow_to")
	f = compute(t, yardDrain(`"overflow_to": "spill-1"`, strings.Replace(brink, `"crest_level": "9.6 m", `, "", 1)))
	requireLacks(t, f, "water_levels", "pond-1", "storm_surface", "/parts/2/crest_level")
	f = compute(t, yardDrain(`"overflow_to": "over-1"`, strings.Replace(drop, `"inverts": ["9.6 m", "8.6 m"], `, "", 1)))
	requireLacks(t, f, "water_levels", "pond-1", "storm_surface", "/parts/2/inverts")
	f = compute(t, yardDrain(`"overflow_to": "spill-1"`, brink).with(entries{"site": bare["site"]}))
	requireLacks(t, f, "water_levels", "pond-1", "storm_surface", "/site/climate/design_storm/intensity")
	requireKnown(t, f, "water_levels", "pond-1", map[string]any{"dry_freeboard": 0.5})
	f = compute(t, entries{"parts": `[{"id": "p", "kind": "surge tank", "at": [1, 1]}]`})
	requireLacks(t, f, "water_levels", "p", "dry_surface", "/parts/0/water_level")
	requireLacks(t, f, "water_levels", "p", "rim", "/parts/0/rim_level")
}

// TestAWayOutThatOthersShare carries what all of them bring.
func TestAWayOutThatOthersShare(t *testing.T) {
	e := yardDrain(`"overflow_to": "spill-1"`, brink+`,
		{"id": "storm-2", "kind": "storm inflow", "at": [1, 1], "catchment": "100 m2", "runoff_coefficient": 1, "to": "spill-1"}`)
	requireKnown(t, compute(t, e), "water_levels", "pond-1", map[string]any{"storm_flow": 0.004})
}

// TestRainOnThePartsAbove comes down to the part, on a covered one there is none.
func TestRainOnThePartsAbove(t *testing.T) {
	for covered, flow := range map[bool]float64{false: 0.001, true: 0.0005} {
		f := compute(t, entries{"site": stormy, "parts": fmt.Sprintf(`[
			{"id": "tank-1", "kind": "surge tank", "outline": [[0, 0], [10, 0], [10, 5], [0, 5]], "covered": %v, "to": "bed-1"},
			{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]], "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
		]`, covered)})
		requireKnown(t, f, "water_levels", "bed-1", map[string]any{"storm_flow": flow, "ways_out": "none"})
	}
}

// TestABedInTheStorm: water that stands in the open lies less than 0 below the
// gravel.
func TestABedInTheStorm(t *testing.T) {
	e := entries{"site": stormy, "parts": `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [20, 10], [20, 20], [10, 20]], "surface": "9.65 m", "water_level": "9.5 m", "overflow_to": "spill-1", "to": "sewer-1"},
		` + brink + `, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`}
	requireKnown(t, compute(t, e), "beds", "bed-1", map[string]any{"storm_water_below_surface": 0.05 - rectangularHead(0.001)})
	e["parts"] = strings.Replace(e["parts"], `"surface": "9.65 m", `, "", 1)
	requireLacks(t, compute(t, e), "beds", "bed-1", "storm_water_below_surface", "/parts/0/edge_levels")
}

// TestGroundUnderParts on a plane that rises by 1 in 10 along x.
func TestGroundUnderParts(t *testing.T) {
	plane := entries{"site": siteWith(`"levels": [[0, 0, 10], [60, 0, 16], [0, 40, 10], [60, 40, 16]]`), "parts": `[
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]]},
		{"id": "pipe-1", "kind": "drain pipe", "path": [[5, 5], [5, 20]]},
		{"id": "away", "kind": "sewer connection", "at": [-5, 39]}
	]`}
	f := compute(t, plane)
	requireKnown(t, f, "ground", "bed-1", map[string]any{"kind": "planted gravel bed", "least_level": 11.0, "greatest_level": 12.0, "least_slope": 0.1, "greatest_slope": 0.1})
	requireKnown(t, f, "ground", "pipe-1", map[string]any{"least_level": 10.5, "greatest_level": 10.5, "least_slope": 0.1})
	requireLacks(t, f, "ground", "away", "least_slope", "/site/levels")
	requireLacks(t, compute(t, plane.with(entries{"site": bare["site"]})), "ground", "bed-1", "least_level", "/site/levels")
}
