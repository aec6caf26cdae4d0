package figures_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/figures"
)

// bedding is a bed of 6 by 3 m with further entries, on a site with levels.
//
//	31 4───3
//	28 1───2
//	  14   20
func bedding(levels, entry string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "levels": ` + levels + `}`,
		"parts": `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1"` + entry + `},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}]`,
	}
}

func TestBeds(t *testing.T) {
	// Level ground at 10 but for a ridge at 10.6 along x = 17 and a hollow at 9.7
	// half way along the upper edge, at (17, 31).
	ridge := `[[0, 0, 10], [0, 40, 10], [14, 0, 10], [14, 40, 10], [17, 0, 10.6], [17, 40, 10.6], [20, 0, 10], [20, 40, 10], [60, 0, 10], [60, 40, 10]]`
	tests := map[string]struct {
		levels, entry string
		want          map[string]any
	}{
		"floor and surface level": {`[]`, `, "floor": "9.4 m", "surface": "10 m", "water_level": "9.9 m"`, map[string]any{
			"area": 6.0 * 3, "least_depth": 10 - 9.4, "least_depth_at": "everywhere", "greatest_depth": 10 - 9.4, "greatest_depth_at": "everywhere",
			"mean_depth": 10 - 9.4, "media_volume": 6 * 3 * (10 - 9.4), "floor_range": 0.0, "water_below_surface": 10 - 9.9,
		}},
		"the edge as drawn": {`[]`, `, "floor": "9.4 m", "edge_levels": ["10 m", "10.1 m", "10.3 m", "10.2 m"], "water_level": "10.05 m"`, map[string]any{
			"least_depth": 10 - 9.4, "least_depth_at": "corner 1", "greatest_depth": 10.3 - 9.4, "greatest_depth_at": "corner 3",
			"mean_depth": (10+10.1+10.3+10.2)/4 - 9.4, "media_volume": 6 * 3 * ((10+10.1+10.3+10.2)/4 - 9.4), "water_below_surface": 10 - 10.05,
		}},
		"a floor that slopes with the ground": {`[]`, `, "floor": ["9.4 m", "9.3 m", "9.3 m", "9.4 m"], "edge_levels": ["10 m", "9.9 m", "9.9 m", "10 m"]`, map[string]any{
			"least_depth": 0.6, "least_depth_at": "everywhere", "floor_range": 9.4 - 9.3, "mean_depth": 0.6,
		}},
		"the surface counts before the edge": {`[]`, `, "floor": "9.4 m", "surface": ["9.9 m", "9.9 m", "10 m", "10 m"], "edge_levels": ["12 m", "12 m", "12 m", "12 m"]`, map[string]any{
			"least_depth": 9.9 - 9.4, "least_depth_at": "corner 1", "greatest_depth": 10 - 9.4, "greatest_depth_at": "corner 3", "mean_depth": 9.95 - 9.4,
		}},
		"between spot levels": {`[[0, 0, 10], [60, 0, 13], [60, 40, 13], [0, 40, 10]]`, `, "floor": "9.4 m", "water_level": "10.5 m"`, map[string]any{
			// The ground rises by 3 in 60 along x.
			"least_depth": 10 + 14.0/20 - 9.4, "least_depth_at": "corner 1", "greatest_depth": 10 + 20.0/20 - 9.4, "greatest_depth_at": "corner 2",
			"mean_depth": 10 + 17.0/20 - 9.4, "water_below_surface": 10 + 14.0/20 - 10.5,
		}},
		"over a ridge between two corners": {ridge, `, "floor": "9.4 m"`, map[string]any{
			"least_depth": 10 - 9.4, "least_depth_at": "corner 1", "greatest_depth": 10.6 - 9.4, "greatest_depth_at": "the edge between corners 1 and 2",
			"mean_depth": 10.3 - 9.4, "media_volume": 6 * 3 * (10.3 - 9.4),
		}},
		"the floor above the surface": {`[]`, `, "floor": "10.2 m", "surface": "10 m"`, map[string]any{"least_depth": 10 - 10.2, "mean_depth": 10 - 10.2}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, bedding(tt.levels, tt.entry)), "beds", "bed-1", tt.want)
		})
	}
}

func TestBedLacks(t *testing.T) {
	part := func(entry string) string { return "/parts/0/" + entry }
	tests := map[string]struct {
		levels, entry string
		want          map[string][]string
	}{
		"everything": {`[]`, ``, map[string][]string{
			"least_depth": {part("edge_levels"), part("floor")}, "mean_depth": {part("edge_levels"), part("floor")}, "greatest_depth_at": {part("edge_levels"), part("floor")},
			"floor_range": {part("floor")}, "water_below_surface": {part("edge_levels"), part("water_level")},
		}},
		"the floor": {`[]`, `, "surface": "10 m", "water_level": "9.9 m"`, map[string][]string{
			"least_depth": {part("floor")}, "media_volume": {part("floor")}, "floor_range": {part("floor")},
		}},
		"the surface":            {`[]`, `, "floor": "9.4 m"`, map[string][]string{"least_depth": {part("edge_levels")}}},
		"ground on one side":     {`[[0, 0, 10], [17, 0, 10], [17, 40, 10], [0, 40, 10]]`, `, "floor": "9.4 m"`, map[string][]string{"least_depth": {part("edge_levels")}}},
		"levels in one line":     {`[[0, 0, 10], [20, 20, 10], [40, 40, 10]]`, `, "floor": "9.4 m"`, map[string][]string{"least_depth": {part("edge_levels")}}},
		"two levels in a place":  {`[[0, 0, 10], [60, 0, 10], [0, 0, 11], [60, 40, 10]]`, `, "floor": "9.4 m"`, map[string][]string{"least_depth": {"/site/levels"}}},
		"the water":              {`[]`, `, "surface": "10 m"`, map[string][]string{"water_below_surface": {part("water_level")}}},
		"the surface, for water": {`[]`, `, "water_level": "10 m"`, map[string][]string{"water_below_surface": {part("edge_levels")}}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, bedding(tt.levels, tt.entry))
			for field, pointers := range tt.want {
				requireLacks(t, f, "beds", "bed-1", field, pointers...)
			}
			require.Equal(t, 6.0*3, known(t, f, "beds", "bed-1", "area"))
		})
	}
}

// TestABedOnTooManySpotLevels: the work is bounded, and what is left out is
// said.
func TestABedOnTooManySpotLevels(t *testing.T) {
	var levels []string
	for i := range 700 {
		x := 13 + float64(i)*0.01
		levels = append(levels, fmt.Sprintf("[%g, 20, 10], [%g, 39, 10]", x, x+0.005))
	}
	f := compute(t, bedding("["+strings.Join(levels, ",")+"]", `, "floor": "9.4 m"`))
	lacks := value(t, f, "beds", "bed-1", "least_depth").Lacks
	require.Len(t, lacks, 1)
	require.Equal(t, "/parts/0/edge_levels", lacks[0].Pointer)
	require.Contains(t, lacks[0].Entry, "too many spot levels")
}

// TestDeepeningTheFloor adds as much to every depth.
func TestDeepeningTheFloor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		level := rapid.Float64Range(-20, 20)
		draw := func(name string, lower float64) (as, lowered string) {
			var one, other []string
			for range 4 {
				z := level.Draw(t, name)
				one = append(one, fmt.Sprintf(`"%.6f m"`, z))
				other = append(other, fmt.Sprintf(`"%.6f m"`, z-lower))
			}
			return "[" + strings.Join(one, ",") + "]", "[" + strings.Join(other, ",") + "]"
		}
		by := rapid.Float64Range(0, 5).Draw(t, "by")
		edge, _ := draw("edge", 0)
		floor, deeper := draw("floor", by)
		before := compute(t, bedding(`[]`, `, "edge_levels": `+edge+`, "floor": `+floor))
		after := compute(t, bedding(`[]`, `, "edge_levels": `+edge+`, "floor": `+deeper))
		for _, field := range []string{"least_depth", "greatest_depth", "mean_depth"} {
			was, is := known(t, before, "beds", "bed-1", field).(float64), known(t, after, "beds", "bed-1", field).(float64)
			require.InDelta(t, was+by, is, 2e-6, "levels are written to a micrometre")
		}
		require.InDelta(t, known(t, before, "beds", "bed-1", "floor_range"), known(t, after, "beds", "bed-1", "floor_range"), 2e-6)
	})
}

func TestLeastMeanAndGreatestStandInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var levels []string
		for range rapid.IntRange(0, 12).Draw(t, "spots") {
			levels = append(levels, fmt.Sprintf("[%d, %d, %.3f]", rapid.IntRange(1, 30).Draw(t, "x"), rapid.IntRange(1, 39).Draw(t, "y"), rapid.Float64Range(9, 11).Draw(t, "z")))
		}
		levels = append(levels, "[0, 0, 10]", "[60, 0, 10.5]", "[60, 40, 11]", "[0, 40, 9.5]")
		f := compute(t, bedding("["+strings.Join(levels, ",")+"]", `, "floor": "9.4 m"`))
		if value(t, f, "beds", "bed-1", "least_depth").Known() {
			requireOrder(t, f)
		}
	})
}

func requireOrder(t require.TestingT, f *figures.Figures) {
	least, mean := known(t, f, "beds", "bed-1", "least_depth").(float64), known(t, f, "beds", "bed-1", "mean_depth").(float64)
	greatest := known(t, f, "beds", "bed-1", "greatest_depth").(float64)
	require.LessOrEqual(t, least, mean+1e-9)
	require.LessOrEqual(t, mean, greatest+1e-9)
}

func TestInletInside(t *testing.T) {
	for header, inside := range map[string]bool{
		`[[15, 29], [15, 30]]`:           true,
		`[[14, 28], [14, 31]]`:           true,
		`[[15, 29], [15, 31.1]]`:         false,
		`[[15, 29], [15, 35], [16, 29]]`: false,
		`[[50, 60], [51, 60]]`:           false,
	} {
		f := compute(t, bedding(`[]`, `, "inlet": {"path": `+header+`}`))
		requireKnown(t, f, "beds", "bed-1", map[string]any{"inlet_inside": inside})
	}
	for _, without := range []string{``, `, "inlet": {"cover": "4 in"}`} {
		requireLacks(t, compute(t, bedding(`[]`, without)), "beds", "bed-1", "inlet_inside", "/parts/0/inlet/path")
	}
}

// The surface is level at 10 m. Water rises to the outlet that holds it.
func TestWaterStandsAtTheHigherOutlet(t *testing.T) {
	for outlet, below := range map[string]float64{"9.7 m": 0.2, "9.8 m": 0.2, "9.95 m": 0.05, "10.1 m": -0.1} {
		f := compute(t, bedding(`[]`, `, "floor": "9.4 m", "surface": "10 m", "water_level": "9.8 m", "outlet": {"level": "`+outlet+`"}`))
		requireKnown(t, f, "beds", "bed-1", map[string]any{"water_below_surface": below})
	}
}

func TestWaterBelowTheHighestPlace(t *testing.T) {
	f := compute(t, bedding(`[]`, `, "floor": "9.4 m", "surface": ["10 m", "10.1 m", "10.05 m", "10 m"], "water_level": "9.8 m"`))
	requireKnown(t, f, "beds", "bed-1", map[string]any{"water_below_surface": 10 - 9.8, "water_below_highest": 10.1 - 9.8})
	requireLacks(t, compute(t, bedding(`[]`, `, "surface": "10 m"`)), "beds", "bed-1", "water_below_highest", "/parts/0/water_level")
}
