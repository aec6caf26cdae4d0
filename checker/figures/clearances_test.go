package figures_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// yard is a site of 60 by 40 m with a bed of 6 by 3, a trench half a metre
// wide, and what they keep clear of.
var yard = train.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
	"features": [
		{"id": "well-1", "kind": "well", "at": [23, 35]},
		{"id": "spring-1", "kind": "spring", "at": [17, 29]},
		{"id": "house", "kind": "building", "outline": [[2, 33], [17, 33], [17, 38], [2, 38]]},
		{"id": "brook", "kind": "stream", "path": [[0, 10], [60, 10]]},
		{"id": "service-1", "kind": "water service", "path": [[50, 0], [50, 40]]}
	],
	"services": [
		{"id": "water-1", "kind": "water", "path": [[40, 0], [40, 40]]},
		{"id": "gas-1", "kind": "gas", "path": [[17, 0], [17, 40]]}
	]}`})

func TestClearances(t *testing.T) {
	f := compute(t, yard)
	tests := map[string]struct {
		list, subject string
		want          float64
	}{
		"a ring from a point":             {"well", "bed-1 and well-1", math.Hypot(23-20, 35-31)},
		"a point inside a ring":           {"well", "bed-1 and spring-1", 0},
		"a corner from a point":           {"well", "tank-1 and well-1", math.Hypot(23-12, 35-30)},
		"a ring from a ring":              {"building", "bed-1 and house", 33 - 31},
		"a point from a ring":             {"building", "diverter-1 and house", 33 - 30},
		"a ring from a line":              {"surface_water", "bed-1 and brook", 28 - 10},
		"a trench from its edge":          {"surface_water", "trench-1 and brook", 20 - 10 - 0.5/2},
		"a line across a ring":            {"buried_line", "bed-1 and gas-1", 0},
		"a line across a trench":          {"buried_line", "trench-1 and gas-1", 0},
		"a water line is a service":       {"buried_line", "bed-1 and water-1", 40 - 20},
		"and a water line":                {"water_service", "bed-1 and water-1", 40 - 20},
		"a water service as a feature":    {"water_service", "bed-1 and service-1", 50 - 20},
		"the property line from inside":   {"property_line", "bed-1 and boundary", 40 - 31},
		"the property line from a point":  {"property_line", "sewer-1 and boundary", 40 - 39},
		"the property line from a trench": {"property_line", "trench-1 and boundary", 14 - 0.5/2},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, f, "clearances."+tt.list, tt.subject, map[string]any{"distance": tt.want, "touches": tt.want == 0})
		})
	}
}

func TestClearancesNameBothSides(t *testing.T) {
	f := compute(t, yard)
	requireKnown(t, f, "clearances.surface_water", "bed-1 and brook", map[string]any{
		"part": "bed-1", "part_kind": "planted gravel bed", "works": "field", "feature": "brook", "feature_kind": "stream",
	})
	subject := f.List("clearances.surface_water")[2].Subject
	require.Equal(t, []string{"bed-1", "brook"}, subject.IDs)
	require.Equal(t, []string{"/parts/2", "/site/features/3"}, subject.Pointers)
	requireKnown(t, f, "clearances.property_line", "bed-1 and boundary", map[string]any{"feature": "boundary", "feature_kind": "property line"})
	require.Len(t, f.List("clearances.property_line"), 6, "one for each part")
	require.Empty(t, f.List("clearances.pool"))
}

func TestWellsSayWhomTheyServe(t *testing.T) {
	wells := yard.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [
		{"id": "house", "kind": "building", "outline": [[2, 33], [17, 33], [17, 38], [2, 38]]},
		{"id": "well-1", "kind": "well", "at": [23, 35], "public": true, "grouted": false},
		{"id": "spring-1", "kind": "spring", "at": [17, 29], "public": false, "grouted": true}
	]}`})
	f := compute(t, wells)
	requireKnown(t, f, "clearances.well", "bed-1 and well-1", map[string]any{"serves": "the public", "casing": "not grouted"})
	requireKnown(t, f, "clearances.well", "bed-1 and spring-1", map[string]any{"serves": "a household", "casing": "grouted"})
	requireLacks(t, compute(t, yard), "clearances.well", "bed-1 and spring-1", "serves", "/site/features/1/public")
	requireLacks(t, compute(t, yard), "clearances.well", "bed-1 and spring-1", "casing", "/site/features/1/grouted")
}

func TestWorks(t *testing.T) {
	want := map[string]string{
		"surge tank": "tank", "filter": "tank",
		"planted gravel bed": "field", "mulch basin": "field", "infiltration trench": "field", "settling basin": "field", "pond": "field",
		"drain pipe": "pipe", "overflow pipe": "pipe",
		"diverter": "fitting", "spillway": "fitting", "storm inflow": "fitting", "sewer connection": "fitting", "septic connection": "fitting",
	}
	shapes := map[string]string{
		"diverter": "at", "sewer connection": "at", "septic connection": "at", "surge tank": "at", "filter": "at", "storm inflow": "at",
		"drain pipe": "path", "overflow pipe": "path", "spillway": "path",
	}
	coordinates := map[string]string{"at": `[1, 1]`, "path": `[[1, 1], [2, 1]]`, "outline": `[[1, 1], [2, 1], [2, 2]]`}
	for _, kind := range kinds(t, "part") {
		shape := shapes[kind]
		if shape == "" {
			shape = "outline"
		}
		f := compute(t, entries{"parts": `[{"id": "p", "kind": "` + kind + `", "` + shape + `": ` + coordinates[shape] + `}]`})
		require.Equal(t, want[kind], known(t, f, "clearances.property_line", "p and boundary", "works"), kind)
	}
}

// TestWideFeaturesNeedTheirOutline: a point or a line for something wide may lie
// on its far side.
func TestWideFeaturesNeedTheirOutline(t *testing.T) {
	wide := map[string]string{
		"building": "building", "lake": "surface_water", "pond": "surface_water", "wetland": "surface_water", "disposal field": "disposal_field",
		"floodway": "floodway", "swimming pool": "pool", "driveway": "paving", "edible garden": "edible_garden",
		"septic tank": "septic_tank", "seepage pit": "disposal_field",
	}
	for _, kind := range kinds(t, "feature") {
		list, isWide := wide[kind]
		for shape, coordinates := range map[string]string{"at": `[30, 8]`, "path": `[[30, 8], [40, 8]]`, "outline": `[[30, 8], [40, 8], [40, 4], [30, 4]]`} {
			f := compute(t, train.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
				"features": [{"id": "f", "kind": "` + kind + `", "` + shape + `": ` + coordinates + `}]}`}))
			if isWide && shape != "outline" {
				requireLacks(t, f, "clearances."+list, "bed-1 and f", "distance", "/site/features/0/outline")
				requireLacks(t, f, "clearances."+list, "bed-1 and f", "touches", "/site/features/0/outline")
			} else if isWide {
				requireKnown(t, f, "clearances."+list, "bed-1 and f", map[string]any{"distance": math.Hypot(30-20, 28-8)})
			}
		}
	}
}

// TestLongFeaturesNeedTheirLine: a stream that is drawn as a point far away may
// run past the bed.
func TestLongFeaturesNeedTheirLine(t *testing.T) {
	for kind, list := range map[string]string{
		"stream": "surface_water", "ditch": "drainage", "public main": "public_main", "water service": "water_service", "retaining wall": "ground", "slope break": "ground",
	} {
		for coordinates, known := range map[string]bool{`"at": [30, 8]`: false, `"path": [[30, 8], [40, 8]]`: true} {
			f := compute(t, train.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
				"features": [{"id": "f", "kind": "` + kind + `", ` + coordinates + `}]}`}))
			if known {
				requireKnown(t, f, "clearances."+list, "bed-1 and f", map[string]any{"distance": math.Hypot(30-20, 28-8)})
			} else {
				requireLacks(t, f, "clearances."+list, "bed-1 and f", "distance", "/site/features/0/path")
			}
		}
	}
}

// TestABedReachesAsFarAsItsHeader: the nearest of all that belongs to a bed
// counts.
func TestABedReachesAsFarAsItsHeader(t *testing.T) {
	for more, want := range map[string]float64{
		``: 23 - 20,
		`, "inlet": {"path": [[19, 29], [22, 29]]}`:                               23 - 22,
		`, "outlet": {"at": [21, 29]}`:                                            23 - 21,
		`, "drawdown": {"at": [22.5, 29]}`:                                        23 - 22.5,
		`, "inlet": {"path": [[15, 29], [19, 29]]}, "outlet": {"at": [19.5, 30]}`: 23 - 20,
		`, "inlet": {"path": [[19, 29], [24, 29]]}`:                               0,
	} {
		f := compute(t, entries{
			"site":  `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [{"id": "well-1", "kind": "well", "at": [23, 29]}]}`,
			"parts": `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]]` + more + `}]`,
		})
		requireKnown(t, f, "clearances.well", "bed-1 and well-1", map[string]any{"distance": want})
	}
}
