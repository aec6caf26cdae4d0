package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBedEdges(t *testing.T) {
	f := compute(t, wetBed(`, "climate": {"freezing_months": ["jan"]}`, `, "rim_level": "10.15 m", "mulch": "6 in",
		"liner": {"material": "EPDM", "thickness": "45 mil", "overlap": "1 ft", "penetrations": ["outlet pipe, boot"]}`))
	requireKnown(t, f, "beds", "bed-1", map[string]any{
		"surface_range": 0.0, "freeboard": 10.15 - 9.9, "rim_above_surface": true, "mulch": 6 * 0.0254, "runs_in_frost": true,
		"liner_material": "EPDM", "liner_thickness": 0.045 * 0.0254, "liner_overlap": 12 * 0.0254, "liner_holes_drawn": true,
	})
}

func TestUnevenSurface(t *testing.T) {
	uneven := bedding(`[]`, `, "floor": "9.4 m", "edge_levels": ["10 m", "10.1 m", "10.3 m", "10.2 m"], "water_level": "9.9 m", "rim_level": "10.2 m"`)
	requireKnown(t, compute(t, uneven), "beds", "bed-1", map[string]any{"surface_range": 10.3 - 10, "freeboard": 10.2 - 9.9, "rim_above_surface": false})
}

func TestRimAtTheSurface(t *testing.T) {
	requireKnown(t, compute(t, wetBed("", `, "rim_level": "10 m"`)), "beds", "bed-1", map[string]any{"rim_above_surface": true, "freeboard": 10 - 9.9})
	requireKnown(t, compute(t, wetBed("", `, "rim_level": "9.8 m"`)), "beds", "bed-1", map[string]any{"rim_above_surface": false, "freeboard": 9.8 - 9.9})
}

func TestLinerThatEndsAtTheEdge(t *testing.T) {
	f := compute(t, wetBed("", `, "liner": {"overlap": "0 in", "penetrations": []}`))
	requireKnown(t, f, "beds", "bed-1", map[string]any{"liner_overlap": 0.0, "liner_holes_drawn": false})
	requireLacks(t, f, "beds", "bed-1", "liner_material", "/parts/0/liner/material")
	requireLacks(t, f, "beds", "bed-1", "liner_thickness", "/parts/0/liner/thickness")
}

// No season is bypassed, or one that covers the only month that freezes, or one
// that ends a day too soon.
func TestRunsInFrost(t *testing.T) {
	january := `, "climate": {"freezing_months": ["jan"]}`
	requireKnown(t, compute(t, wetBed(`, "climate": {"freezing_months": []}`, "")), "beds", "bed-1", map[string]any{"runs_in_frost": false})
	for season, runs := range map[string]bool{
		`{"from": "12-15", "to": "01-31"}`: false,
		`{"from": "12-15", "to": "01-30"}`: true,
	} {
		e := wetBed(january, "")
		e["operation"] = `{"bypass_season": ` + season + `}`
		f := compute(t, e)
		requireKnown(t, f, "beds", "bed-1", map[string]any{"runs_in_frost": runs})
		requireKnown(t, f, "bed_winter", "bed-1 with snow, water as it leaves the house", map[string]any{"runs_in_frost": runs})
	}
}

func TestBedEdgesLack(t *testing.T) {
	f := compute(t, bedding(`[]`, ""))
	ground := "/parts/0/edge_levels"
	requireLacks(t, f, "beds", "bed-1", "surface_range", ground)
	requireLacks(t, f, "beds", "bed-1", "freeboard", "/parts/0/rim_level", "/parts/0/water_level")
	requireLacks(t, f, "beds", "bed-1", "rim_above_surface", "/parts/0/rim_level", ground)
	requireLacks(t, f, "beds", "bed-1", "mulch", "/parts/0/mulch")
	requireLacks(t, f, "beds", "bed-1", "runs_in_frost", "/site/climate/freezing_months")
	for _, entry := range []string{"material", "thickness"} {
		requireLacks(t, f, "beds", "bed-1", "liner_"+entry, "/parts/0/liner/"+entry)
	}
	requireLacks(t, f, "beds", "bed-1", "liner_overlap", "/parts/0/liner/overlap")
	requireLacks(t, f, "beds", "bed-1", "liner_holes_drawn", "/parts/0/liner/penetrations")
}

// The storm is what water_levels makes of it: the bed has 0.1 m of dry gravel
// over its water.
func TestRiseInTheStorm(t *testing.T) {
	e := wetBed(`, "climate": {"design_storm": {"intensity": "1 in/h"}}`, `, "overflow_to": "spill-1", "rim_level": "10.2 m"`)
	e["parts"] = "[" + `{"id": "spill-1", "kind": "spillway", "path": [[19, 28], [19, 26]], "crest_level": "9.92 m", "crest_length": "0.5 m", "to": "basin-1"},` + e["parts"][1:]
	f := compute(t, e)
	storm, dry := known(t, f, "water_levels", "bed-1", "storm_surface").(float64), known(t, f, "water_levels", "bed-1", "dry_surface").(float64)
	require.Greater(t, storm, 9.92)
	requireKnown(t, f, "beds", "bed-1", map[string]any{"storm_rise_share": (storm - dry) / (10 - 9.9)})
	requireLacks(t, compute(t, bedding(`[]`, `, "floor": "9.4 m", "surface": "10 m"`)), "beds", "bed-1", "storm_rise_share",
		"/site/climate/design_storm/intensity", "/parts/0/water_level")
}
