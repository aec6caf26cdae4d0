package figures_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// dammed is a covered basin of 4 m × 3 m, its rim at 10 m, that overflows into a way
// out.
func dammed(out string) entries {
	return entries{
		"site":    siteWith(`"climate": {"design_storm": {"intensity": "36 mm/h"}}`),
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "basin-1"}]`,
		"parts": `[{"id": "basin-1", "kind": "settling basin", "outline": [[10, 10], [14, 10], [14, 13], [10, 13]], "rim_level": "10 m", "covered": true, "to": "trench-1", "overflow_to": "out-1"},
			` + out + `,
			{"id": "trench-1", "kind": "infiltration trench", "path": [[30, 30], [40, 30]], "width": "0.5 m"}]`,
	}
}

const (
	outCrest = `{"id": "out-1", "kind": "spillway", "path": [[14, 10.5], [14, 12.5]], "crest_level": "9.8 m", "crest_length": "2 m", "to": "trench-1"}`
	outPipe  = `{"id": "out-1", "kind": "overflow pipe", "path": [[14, 11], [24, 11]], "inverts": ["9.5 m", "9.3 m"], "diameter": "100 mm", "roughness": 0.011, "to": "trench-1"}`
)

// TestAnUprightSpillway: coefficients of 2.6 and 3.0 of an earth crest in feet and
// seconds (from memory) are 2.6 and 3.0 × √0.3048 in metres.
func TestAnUprightSpillway(t *testing.T) {
	f := compute(t, dammed(outCrest))
	flow := func(coefficient float64) float64 { return coefficient * math.Sqrt(0.3048) * 2 * math.Pow(0.2, 1.5) }
	requireKnown(t, f, "spillways", "out-1", map[string]any{
		"kind": "spillway", "serves": "basin-1", "rim": 10.0, "head": 0.2, "control": "crest", "storm_flow": 0.0,
		"least_capacity": flow(2.6), "greatest_capacity": flow(3.0),
	})
}

// TestADrainPipeThatServesAsOverflow is held to the same; one that nothing
// overflows into is no way out.
func TestADrainPipeThatServesAsOverflow(t *testing.T) {
	drain := strings.Replace(outPipe, "overflow pipe", "drain pipe", 1)
	f, pipe := compute(t, dammed(drain)), compute(t, dammed(outPipe))
	requireKnown(t, f, "spillways", "out-1", map[string]any{
		"kind": "drain pipe", "serves": "basin-1", "head": 0.5, "below_rim": true, "least_capacity": known(t, pipe, "spillways", "out-1", "least_capacity"),
	})
	e := dammed(drain)
	e["parts"] = strings.Replace(e["parts"], `"overflow_to": "out-1"`, `"overflow_to": "trench-1"`, 1)
	require.Empty(t, subjects(compute(t, e), "spillways"))
}

// TestACrestAsDrawn is as long as its path.
func TestACrestAsDrawn(t *testing.T) {
	drawn := compute(t, dammed(strings.Replace(outCrest, `"crest_length": "2 m", `, ``, 1)))
	require.Equal(t, known(t, compute(t, dammed(outCrest)), "spillways", "out-1", "least_capacity"), known(t, drawn, "spillways", "out-1", "least_capacity"))
}

// TestAPublishedSpillway: 100 ft under a head of 2.25 ft carries 990 cfs by 0.95 of the
// ideal 3.087 (J. Lal, Hydraulics, Example 4.13, as worked in its Python companion); an
// earth crest carries less than the ideal.
func TestAPublishedSpillway(t *testing.T) {
	f := compute(t, dammed(`{"id": "out-1", "kind": "spillway", "path": [[14, 10.5], [14, 12.5]], "crest_level": "9.3142 m", "crest_length": "100 ft", "to": "trench-1"}`))
	cfs := math.Pow(0.3048, 3)
	require.InDelta(t, 990, known(t, f, "spillways", "out-1", "least_capacity").(float64)/cfs*0.95*3.087/2.6, 1)
	require.Less(t, known(t, f, "spillways", "out-1", "greatest_capacity"), 990*cfs/0.95)
}

// TestASlopingSpillway: at the critical depth y of 2 m with sides of 1:3, y + area ÷
// (2 × top width) is the head, and area × √(gravity × area ÷ top width) the ideal flow.
func TestASlopingSpillway(t *testing.T) {
	const depth, gravity = 0.15, 9.80665
	area, top := 2*depth+3*depth*depth, 2+6*depth
	head := depth + area/(2*top)
	out := strings.Replace(strings.Replace(outCrest, "9.8 m", strconv.FormatFloat(10-head, 'f', 9, 64)+" m", 1), `"crest_length"`, `"side_slope": "1:3", "crest_length"`, 1)
	ideal := area * math.Sqrt(gravity*area/top)
	require.InEpsilon(t, ideal*2.6/3.087, known(t, compute(t, dammed(out)), "spillways", "out-1", "least_capacity"), 2e-3)
}

// TestAnOverflowPipe of 100 mm and 10 m, 0.5 m under the rim: its mouth as an orifice
// holds it back, 0.60 × area × √(2 g × 0.45 m); with 60 m of pipe the barrel does, whose
// lower end lies 0.65 m under the rim to its middle.
func TestAnOverflowPipe(t *testing.T) {
	const gravity = 9.80665
	area := math.Pi * 0.1 * 0.1 / 4
	orifice := 0.60 * area * math.Sqrt(2*gravity*0.45)
	barrel := func(length, entrance float64) float64 {
		friction := 2 * gravity * 0.011 * 0.011 * length / math.Pow(0.1/4, 4.0/3)
		return area * math.Sqrt(2*gravity*0.65/(1+entrance+friction))
	}
	f := compute(t, dammed(outPipe))
	require.Less(t, barrel(10, 0.8), orifice)
	requireKnown(t, f, "spillways", "out-1", map[string]any{
		"kind": "overflow pipe", "head": 0.5, "least_capacity": barrel(10, 0.8), "greatest_capacity": barrel(10, 0.5), "control": "barrel"})

	short := strings.Replace(outPipe, "[24, 11]", "[15, 11]", 1)
	require.Greater(t, barrel(1, 0.8), orifice)
	requireKnown(t, compute(t, dammed(short)), "spillways", "out-1", map[string]any{
		"least_capacity": orifice, "greatest_capacity": orifice, "control": "orifice"})
}

// TestTheRoughnessOfTheWall spans the table's range for the material: 0.009 to 0.013 for
// plastic (from memory).
func TestTheRoughnessOfTheWall(t *testing.T) {
	capacity := func(roughness, field string) any {
		return known(t, compute(t, dammed(strings.Replace(outPipe, `"roughness": 0.011`, roughness, 1))), "spillways", "out-1", field)
	}
	require.Equal(t, capacity(`"roughness": 0.013`, "least_capacity"), capacity(`"material": "PVC"`, "least_capacity"))
	require.Equal(t, capacity(`"roughness": 0.009`, "greatest_capacity"), capacity(`"material": "PVC"`, "greatest_capacity"))
}

// TestTheStormAtASpillway: 36 mm/h is 1e-5 m/s; on 400 m² of which 0.5 runs off, and on
// the 12 m² of the open basin.
func TestTheStormAtASpillway(t *testing.T) {
	e := dammed(outCrest + `, {"id": "storm-1", "kind": "storm inflow", "at": [9, 9], "catchment": "400 m2", "runoff_coefficient": 0.5, "to": "basin-1"}`)
	e["parts"] = strings.Replace(e["parts"], `"covered": true`, `"covered": false`, 1)
	f := compute(t, e)
	storm := 0.5*1e-5*400 + 1e-5*12
	requireKnown(t, f, "spillways", "out-1", map[string]any{
		"storm_flow": storm, "capacity_to_storm": known(t, f, "spillways", "out-1", "least_capacity").(float64) / storm})
}

// TestASpillwayOverTheRim carries nothing.
func TestASpillwayOverTheRim(t *testing.T) {

	for level, head := range map[string]float64{"10 m": 0, "10.2 m": -0.2} {
		f := compute(t, dammed(strings.Replace(outCrest, "9.8 m", level, 1)))
		requireKnown(t, f, "spillways", "out-1", map[string]any{"head": head, "least_capacity": 0.0, "greatest_capacity": 0.0, "control": "none"})
	}
}

func TestWhatASpillwayLacks(t *testing.T) {
	f := compute(t, dammed(`{"id": "out-1", "kind": "spillway", "path": [[14, 10.5], [14, 12.5]], "to": "trench-1"}`))
	requireLacks(t, f, "spillways", "out-1", "head", "/parts/1/crest_level")
	requireLacks(t, f, "spillways", "out-1", "least_capacity", "/parts/1/crest_level")
	requireLacks(t, f, "spillways", "out-1", "control", "/parts/1/crest_level")

	f = compute(t, dammed(`{"id": "out-1", "kind": "overflow pipe", "path": [[14, 11], [24, 11]], "to": "trench-1"}`))
	requireLacks(t, f, "spillways", "out-1", "least_capacity", "/parts/1/inverts", "/parts/1/diameter", "/parts/1/roughness", "/parts/1/material")

	without := dammed(outCrest)
	without["parts"] = strings.Replace(without["parts"], `"rim_level": "10 m", "covered": true`, `"covered": false`, 1)
	without["site"] = bare["site"]
	f = compute(t, without)
	requireLacks(t, f, "spillways", "out-1", "rim", "/parts/0/rim_level")
	requireLacks(t, f, "spillways", "out-1", "storm_flow", "/site/climate/design_storm/intensity")

	requireLacks(t, compute(t, dammed(outCrest)), "spillways", "out-1", "capacity_to_storm", "/parts") // no storm reaches it

	unserved := dammed(outCrest)
	unserved["parts"] = strings.Replace(unserved["parts"], `, "overflow_to": "out-1"`, ``, 1)
	f = compute(t, unserved)
	requireKnown(t, f, "spillways", "out-1", map[string]any{"serves": "none"})
	requireLacks(t, f, "spillways", "out-1", "rim", "/parts")
}

// TestAPipeThatTheRimDoesNotCover runs with an open mouth, which lets through less than
// a covered one would.
func TestAPipeThatTheRimDoesNotCover(t *testing.T) {
	f := compute(t, dammed(strings.Replace(outPipe, "9.5 m", "9.95 m", 1)))
	requireKnown(t, f, "spillways", "out-1", map[string]any{"control": "mouth"})
	require.Less(t, known(t, f, "spillways", "out-1", "least_capacity"), 0.60*math.Pi*0.1*0.1/4*math.Sqrt(2*9.80665*0.05))
}
