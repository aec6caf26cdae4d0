package figures_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// drained is a shower and a washer on a pipe of a grade, in a storm.
func drained(pipe string) entries {
	return raining(`, "intensity": "2 in/h"`, `, "catchment": "50 m2", "runoff_coefficient": 0.5`, "").with(entries{
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "pipe-1"}, {"id": "washer-1", "kind": "clothes washer", "to": "pipe-1"}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 0], [6, 8]], "to": "sewer-1"` + pipe + `},
			{"id": "storm-1", "kind": "storm inflow", "at": [10, 10], "to": "sewer-1", "catchment": "50 m2", "runoff_coefficient": 0.5},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	})
}

// TestPipeFlow works Manning's equation by hand. That a half-full pipe runs as
// fast as a full one is geometry: its hydraulic radius is the same.
func TestPipeFlow(t *testing.T) {
	f := compute(t, drained(`, "inverts": ["10.1 m", "10 m"], "diameter": "80 mm", "roughness": 0.012`))
	full := math.Pow(0.08/4, 2.0/3) * math.Sqrt(0.1/10) / 0.012
	gallonAMinute := 231 * 0.0254 * 0.0254 * 0.0254 / 60
	requireKnown(t, f, "pipe_flow", "pipe-1", map[string]any{
		"diameter": 0.08, "roughness": 0.012, "roughness_basis": "as drawn",
		"full_capacity": full * math.Pi * 0.08 * 0.08 / 4, "least_full_capacity": full * math.Pi * 0.08 * 0.08 / 4, "greatest_full_capacity": full * math.Pi * 0.08 * 0.08 / 4,
		"full_velocity": full, "half_full_velocity": full,
		"fixture_units_ipc": 2.0 + 2, "fixture_units_upc": 2.0 + 3,
		"peak_flow_ipc": 4 * gallonAMinute / 2, "peak_flow_chicago": 4 * gallonAMinute,
	})
	for basis, peak := range map[string]float64{"ipc": 2 * gallonAMinute, "chicago": 4 * gallonAMinute} {
		ratio := known(t, f, "pipe_flow", "pipe-1", "depth_ratio_"+basis).(float64)
		angle := 2 * math.Acos(1-2*ratio)
		area, wetted := 0.08*0.08*(angle-math.Sin(angle))/8, 0.08*angle/2
		velocity := math.Pow(area/wetted, 2.0/3) * math.Sqrt(0.1/10) / 0.012
		require.InEpsilon(t, peak, area*velocity, 1e-9, "the depth carries the peak")
		require.InEpsilon(t, velocity, known(t, f, "pipe_flow", "pipe-1", "velocity_"+basis), 1e-9)
	}
}

// TestMostUnits has cells of the codes' tables: International Plumbing Code,
// Tables 710.1(1) and 710.1(2) (from memory), and Uniform Plumbing Code, Table
// 703.2, as adopted in King County, Washington; 0.8 of it at 1/8 in/ft is from
// memory.
func TestMostUnits(t *testing.T) {
	tests := map[string]struct {
		diameter, fall         string // over 10 m
		drain, branch          float64
		upc, reduced           float64
		noDrain, noUPC, noUPC8 bool
	}{
		"2 in at a quarter": {diameter: "2 in", fall: "208.4 mm", drain: 21, branch: 6, upc: 8, reduced: 0.8 * 8},
		"3 in at a quarter": {diameter: "3 in", fall: "208.4 mm", drain: 42, branch: 20, upc: 35, reduced: 0.8 * 35},
		"3 in at an eighth": {diameter: "3 in", fall: "104.2 mm", drain: 36, branch: 20, reduced: 0.8 * 35, noUPC: true},
		"2 in too flat":     {diameter: "2 in", fall: "100 mm", branch: 6, noDrain: true, noUPC: true, noUPC8: true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, drained(`, "inverts": ["`+tt.fall+`", "0 m"], "diameter": "`+tt.diameter+`", "material": "PVC"`))
			for field, want := range map[string]struct {
				units   float64
				missing bool
			}{
				"most_units_ipc_drain": {tt.drain, tt.noDrain}, "most_units_ipc_branch": {tt.branch, false},
				"most_units_upc": {tt.upc, tt.noUPC}, "most_units_upc_reduced": {tt.reduced, tt.noUPC8},
			} {
				if want.missing {
					requireLacks(t, f, "pipe_flow", "pipe-1", field, "/parts/0/diameter")
					continue
				}
				require.InDelta(t, want.units, known(t, f, "pipe_flow", "pipe-1", field), 1e-9, field)
			}
		})
	}
}

// TestRoughnessByMaterial: the values are from memory, but for uPVC (Urban
// Stormwater Management Manual for Malaysia, 2012, Table 2.3, read in a
// summary) and concrete, clay and corrugated metal (drainage handbooks; V. T. Chow,
// Open-Channel Hydraulics, 1959, Table 5-6; both from memory).
func TestRoughnessByMaterial(t *testing.T) {
	tests := map[string]float64{
		"ABS": 0.011, "PVC, schedule 40": 0.011, "uPVC": 0.011, "polyethylene": 0.011, "HDPE": 0.011,
		"concrete": 0.013, "vitrified clay": 0.014, "Corrugated polyethylene": 0.020, "corrugated steel": 0.024,
	}
	for material, n := range tests {
		f := compute(t, drained(`, "inverts": ["10.1 m", "10 m"], "diameter": "80 mm", "material": "`+material+`"`))
		requireKnown(t, f, "pipe_flow", "pipe-1", map[string]any{"roughness": n})
		least := known(t, f, "pipe_flow", "pipe-1", "least_full_capacity").(float64)
		greatest := known(t, f, "pipe_flow", "pipe-1", "greatest_full_capacity").(float64)
		require.GreaterOrEqual(t, known(t, f, "pipe_flow", "pipe-1", "full_capacity"), least, material)
		require.LessOrEqual(t, known(t, f, "pipe_flow", "pipe-1", "full_capacity"), greatest, material)
	}
}

func TestPipeFlowWithoutEntries(t *testing.T) {
	f := compute(t, drained(""))
	requireLacks(t, f, "pipe_flow", "pipe-1", "diameter", "/parts/0/diameter")
	requireLacks(t, f, "pipe_flow", "pipe-1", "roughness", "/parts/0/roughness", "/parts/0/material")
	requireLacks(t, f, "pipe_flow", "pipe-1", "full_capacity", "/parts/0/diameter", "/parts/0/inverts", "/parts/0/roughness", "/parts/0/material")
	requireLacks(t, f, "pipe_flow", "pipe-1", "most_units_upc", "/parts/0/diameter", "/parts/0/inverts")
	requireKnown(t, f, "pipe_flow", "pipe-1", map[string]any{"fixture_units_ipc": 4.0})

	unheard := compute(t, drained(`, "inverts": ["10.1 m", "10 m"], "diameter": "80 mm", "material": "bamboo"`))
	requireLacks(t, unheard, "pipe_flow", "pipe-1", "roughness_basis", "/parts/0/roughness")
}

// TestPipesBeyondTheFormula: a pipe that rises, and one that its peak puts
// under pressure.
func TestPipesBeyondTheFormula(t *testing.T) {
	f := compute(t, drained(`, "inverts": ["10 m", "10.1 m"], "diameter": "80 mm", "material": "ABS"`))
	rising := value(t, f, "pipe_flow", "pipe-1", "full_velocity")
	require.Len(t, rising.Lacks, 1)
	require.Equal(t, "/parts/0/inverts", rising.Lacks[0].Pointer)
	require.Contains(t, rising.Lacks[0].Entry, "within the range of Manning's equation")

	f = compute(t, drained(`, "inverts": ["10.1 m", "10 m"], "diameter": "10 mm", "material": "ABS"`))
	require.Less(t, known(t, f, "pipe_flow", "pipe-1", "full_capacity"), known(t, f, "pipe_flow", "pipe-1", "peak_flow_ipc"))
	requireLacks(t, f, "pipe_flow", "pipe-1", "depth_ratio_ipc", "/parts/0/diameter")
	requireLacks(t, f, "pipe_flow", "pipe-1", "velocity_chicago", "/parts/0/diameter")
}

// TestPeaks: rain on a roof and on a yard joins the fixtures; a pipe that
// nothing comes to carries nothing; what might come by a way not drawn is lacking.
func TestPeaks(t *testing.T) {
	pipes := entries{
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "pipe-1"}, {"id": "roof-1", "kind": "roof drain", "roof_area": "100 m2", "to": "pipe-1"}]`,
		"parts": `[{"id": "storm-1", "kind": "storm inflow", "at": [10, 10], "to": "pipe-1", "catchment": "50 m2", "runoff_coefficient": 0.5},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 0], [6, 8]], "inverts": ["10.1 m", "10 m"], "diameter": "200 mm", "material": "ABS", "to": "sewer-1"},
			{"id": "pipe-2", "kind": "drain pipe", "path": [[0, 0], [6, 8]], "inverts": ["10.1 m", "10 m"], "diameter": "80 mm", "material": "ABS", "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	}
	f := compute(t, raining(`, "intensity": "2 in/h"`, "", "").with(pipes))
	rain := (100 + 0.5*50) * 2 * 0.0254 / 3600
	requireKnown(t, f, "pipe_flow", "pipe-1", map[string]any{"fixture_units_ipc": 2.0, "peak_flow_chicago": 2*231*0.0254*0.0254*0.0254/60 + rain})
	requireKnown(t, f, "pipe_flow", "pipe-2", map[string]any{"fixture_units_ipc": 0.0, "peak_flow_ipc": 0.0, "depth_ratio_ipc": 0.0, "velocity_chicago": 0.0})

	f = compute(t, raining("", "", "").with(pipes))
	requireLacks(t, f, "pipe_flow", "pipe-1", "peak_flow_ipc", "/site/climate/design_storm/intensity")

	f = compute(t, drained("").with(entries{"sources": `[{"id": "washer-1", "kind": "clothes washer"}, {"id": "pump-1", "kind": "sump pump", "to": "pipe-1"}]`}))
	requireLacks(t, f, "pipe_flow", "pipe-1", "fixture_units_upc", "/sources/0/to")
	f = compute(t, drained("").with(entries{"sources": `[{"id": "pump-1", "kind": "sump pump", "to": "pipe-1"}]`}))
	requireLacks(t, f, "pipe_flow", "pipe-1", "fixture_units_ipc", "/sources/0/fixture_units")
}
