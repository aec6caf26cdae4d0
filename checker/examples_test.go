package checker_test

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/rulebook"
)

func checkText(t *testing.T, name, text string) *checker.Result {
	t.Helper()
	result := checker.New().CheckBytes(t.Context(), name, []byte(text))
	require.Empty(t, result.Problems)
	require.Empty(t, result.Verdict.Broken)
	return result
}

func example(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "examples", name))
	require.NoError(t, err)
	return string(text)
}

// found is a finding that is no pass: the rule, what it is about, and how bad.
type found struct {
	rule, subject string
	status        rulebook.Status
}

func remarks(v *rulebook.Verdict) []found {
	var all []found
	for _, f := range v.Findings {
		if f.Status != rulebook.Pass {
			all = append(all, found{f.Rule.ID, f.Item.Subject.Name, f.Status})
		}
	}
	return all
}

func TestPassingExamplesPass(t *testing.T) {
	for _, name := range []string{"passing-bed.json", "cold-climate.json", "mulch-basins.json", "si-bed.json"} {
		t.Run(name, func(t *testing.T) {
			result := checkText(t, name, example(t, name))
			require.Empty(t, remarks(result.Verdict))
			require.Equal(t, rulebook.Pass, result.Status())
		})
	}
}

// The faults that examples/README.md lists, and no others.
var planted = []found{
	{"sources/kitchen_settled", "kitchen-1", rulebook.Fail},
	{"sources/clear_water", "sump-1", rulebook.Fail},
	{"sources/clear_water", "roof-1", rulebook.Fail},
	{"sources/soiled_nappies", "washer-1", rulebook.Fail},
	{"sources/make_up_air_gap", "pond-1", rulebook.Fail},
	{"clearances/building", "surge-1 and house", rulebook.Fail},
	{"clearances/well", "bed-1 and well-1", rulebook.Fail},
	{"clearances/water_service", "basin-2 and water-1", rulebook.Fail},
	{"clearances/property_line", "basin-1 and boundary", rulebook.Fail},
	{"clearances/drain", "basin-1 and tile-drain", rulebook.Fail},
	{"clearances/edible_garden", "basin-2 and vegetables", rulebook.Fail},
	{"clearances/tree", "trench-1 and apple", rulebook.Warn},
	{"overflow/path", "bed-1", rulebook.Fail},
	{"overflow/to_sewer", "bed-1", rulebook.Fail},
	{"overflow/freeboard", "overflow-1", rulebook.Warn},
	{"overflow/spillway_lining", "spillway-1", rulebook.Warn},
	{"sources/safe_end", "shower-1", rulebook.Fail},
	{"sources/safe_end", "bathtub-1", rulebook.Fail},
	{"sources/safe_end", "kitchen-1", rulebook.Fail},
	{"sources/safe_end", "washbasin-1", rulebook.Fail},
	{"sources/safe_end", "washer-1", rulebook.Fail},
	{"services/located", "lights-1", rulebook.Fail},
	{"services/under_digs", "bed-1 and lights-1", rulebook.Fail},
	{"services/beside_digs", "pipe-6 and lights-1", rulebook.Warn},
	{"services/crossing_clearance", "pipe-7 reach 1 and lights-1", rulebook.Warn},
	{"services/wiring_cover", "power-2", rulebook.Warn},
	{"site/own_land", "overflow-1", rulebook.Fail},
	{"site/groundwater", "trench-1", rulebook.Fail},
	{"bed/media_depth", "bed-1", rulebook.Fail},
	{"bed/water_level", "bed-1", rulebook.Fail},
	{"bed/surface_level", "bed-1", rulebook.Warn},
	{"bed/rim", "bed-1", rulebook.Warn},
	{"bed/freeboard", "bed-1", rulebook.Warn},
	{"bed/roots", "bed-1", rulebook.Warn},
	{"bed/washed", "bed-1 layer 1", rulebook.Fail},
	{"bed/invasive_plants", "bed-1 planting 2", rulebook.Warn},
	{"bed/winter_cover", "bed-1", rulebook.Warn},
	{"treatment/detention", "bed-1", rulebook.Warn},
	{"exposure/discharge_cover", "bed-1", rulebook.Fail},
	{"exposure/open_water_ahead", "settling-1", rulebook.Fail},
	{"exposure/barrier", "settling-1", rulebook.Fail},
	{"exposure/barrier", "pond-1", rulebook.Fail},
	{"exposure/standing_time", "surge-1", rulebook.Warn},
	{"exposure/storm_surfacing", "bed-1", rulebook.Warn},
	{"exposure/mosquitoes", "surge-1", rulebook.Warn},
	{"exposure/childproof_lid", "surge-1", rulebook.Fail},
	{"exposure/open_water_permit", "settling-1", rulebook.Warn},
	{"exposure/open_water_permit", "pond-1", rulebook.Warn},
	{"settling/ahead_of_pond", "pond-1", rulebook.Warn},
	{"sources/clear_water_in_soil", "roof-3", rulebook.Warn},
	{"settling/clean_out", "settling-1", rulebook.Warn},
	{"settling/shape", "settling-1", rulebook.Warn},
	{"pond/ammonia", "pond-1", rulebook.Warn},
	{"pond/freeboard", "pond-1", rulebook.Warn},
	{"pond/stocking_permit", "pond-1", rulebook.Warn},
	{"dispersal/area", "basin-1", rulebook.Fail},
	{"dispersal/outlets", "basin-1", rulebook.Warn},
	{"diversion/on_every_route", "washer-1", rulebook.Fail},
	{"diversion/second_route", "diverter-2", rulebook.Fail},
	{"diversion/cold_season", "the cold season", rulebook.Fail},
	{"diversion/backwater_valve", "settling-1 and sewer-2", rulebook.Fail},
	{"diversion/downstream_of_traps", "diverter-2", rulebook.Fail},
	{"diversion/reachable", "diverter-2", rulebook.Fail},
	{"diversion/full_flow", "diverter-2", rulebook.Fail},
	{"diversion/frost_safe", "pipe-7 reach 1", rulebook.Fail},
	{"diversion/frost_safe", "pipe-7 reach 2", rulebook.Fail},
	{"diversion/falls_empty", "pipe-2 reach 2", rulebook.Warn},
	{"diversion/labelled", "diverter-1", rulebook.Warn},
	{"diversion/shows_direction", "diverter-1", rulebook.Warn},
	{"drains/slope", "pipe-4", rulebook.Fail},
	{"drains/slope", "pipe-6 reach 2", rulebook.Fail},
	{"construction/lines_called_in", "the building of the system", rulebook.Fail},
	{"construction/spoil", "the building of the system", rulebook.Warn},
	{"construction/licensed_work", "sewer connection work", rulebook.Warn},
	{"construction/liner_bedding", "pond-1", rulebook.Warn},
	{"records/wells_shown", "the plan", rulebook.Warn},
	{"records/soil_tested", "trench-1", rulebook.Warn},
	{"records/soil_tested", "basin-1", rulebook.Warn},
	{"records/soil_tested", "basin-2", rulebook.Warn},
	{"records/upkeep", "settling-1", rulebook.Warn},
	{"records/mulch_renewed", "basin-2", rulebook.Warn},
	{"flow/stated_flow", "the system", rulebook.Warn},
	{"drains/cleanout_spacing", "pipe-7", rulebook.Warn},
	{"drains/marked", "pipe-7", rulebook.Warn},
	{"drains/diameter", "pipe-7", rulebook.Warn},
	{"drains/joins_fall", "pipe-2 to settling-1", rulebook.Fail},
	{"drains/pipe_drawn", "surge-1 to sewer-1", rulebook.Fail},
}

func TestFaultyExampleFailsForItsFaultsOnly(t *testing.T) {
	text := example(t, "faulty-bed.json")
	result := checkText(t, "faulty-bed.json", text)
	require.ElementsMatch(t, planted, remarks(result.Verdict))
	for _, f := range result.Verdict.Findings {
		if f.Status == rulebook.Pass {
			continue
		}
		begins := 0 // the system as a whole
		switch ids := f.Item.Subject.IDs; {
		case len(ids) > 0:
			begins = objectOf(text, ids[0])
		case f.Item.Subject.Name == "the cold season":
			begins = strings.Index(text, `"bypass_season": {`) + len(`"bypass_season": `)
		case strings.HasPrefix(f.Rule.ID, "construction/"):
			begins = strings.Index(text, `"construction": {`)
		}
		line := strings.Count(text[:begins], "\n") + 1
		require.Equal(t, line, result.Verdict.Position(f.Item).Line, "%s at %s", f.Rule.ID, f.Item.Subject.Name)
	}
}

// objectOf finds where the object with the id opens, by looking for the text
// alone.
func objectOf(text, id string) int {
	return strings.LastIndex(text[:strings.Index(text, `"id": "`+id+`"`)], "{")
}

func TestEveryPlantedFaultIsInTheReadme(t *testing.T) {
	readme := example(t, "README.md")
	for _, f := range planted {
		require.Contains(t, readme, "`"+f.rule+"`")
	}
}

// Somebody moves the surge tank of the passing example 8 ft north. Its nearest
// corner was at (65.4, 147.2), and the house's south wall runs from (42.3, 158.2)
// to (90.3, 160.3). Its pipes end where it was.
func TestOnePartMovedBreaksOneClearance(t *testing.T) {
	const before = `"outline": [[65.6, 143.7], [69.1, 143.9], [68.9, 147.3], [65.4, 147.2]]`
	const after = `"outline": [[65.6, 151.7], [69.1, 151.9], [68.9, 155.3], [65.4, 155.2]]`
	text := example(t, "passing-bed.json")
	require.Equal(t, 1, strings.Count(text, before))
	result := checkText(t, "moved.json", strings.Replace(text, before, after, 1))
	require.Equal(t, []found{
		{"clearances/building", "surge-1 and house", rulebook.Fail},
		{"drains/joins_meet", "pipe-1 to surge-1", rulebook.Warn},
		{"drains/joins_meet", "pipe-4 to surge-1", rulebook.Warn},
		{"drains/joins_meet", "surge-1 to pipe-2", rulebook.Warn},
		{"drains/joins_meet", "surge-1 to overflow-2", rulebook.Warn},
	}, remarks(result.Verdict))

	run, rise := 90.3-42.3, 160.3-158.2
	wallAbove := 158.2 + (65.4-42.3)*rise/run
	distance := (wallAbove - 155.2) * run / math.Hypot(run, rise) // ft, square to the wall
	for _, f := range result.Verdict.Findings {
		if f.Status == rulebook.Fail {
			require.InDelta(t, (distance-5)*0.3048, f.Measured[0].Margin, 1e-8, "5 ft is wanted")
		}
	}
}
