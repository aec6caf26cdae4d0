package drawing_test

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/drawing"
	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// review computes the figures of a design written for a test.
func review(t *testing.T, text string) drawing.Review {
	t.Helper()
	d, problems := design.Read("test.json", []byte(text))
	require.Empty(t, problems)
	return drawing.Review{Figures: figures.Compute(d), Units: quantity.SI}
}

// spilling is a pond with a spillway of 1 m, whose crest lies 0.4 m under the rim,
// and a storm inflow of 0.003 m³/s.
const spilling = `{
	"format": "greywater-design/1", "title": "Pond", "location": {"region": "US-OR"}, "units": "si", "dwelling": {"bedrooms": 1},
	"site": {
		"grid": {"unit": "m"}, "boundary": [[0, 0], [40, 0], [40, 40], [0, 40]], "levels": [[0, 0, 9], [40, 0, 10], [40, 40, 11], [0, 40, 10]],
		"climate": {"design_storm": {"intensity": "36 mm/h", "duration": "30 min"}}
	},
	"sources": [{"id": "shower-1", "kind": "shower", "to": "pond-1"}],
	"parts": [
		{"id": "storm-1", "kind": "storm inflow", "at": [1, 1], "catchment": "500 m2", "runoff_coefficient": 0.5, "to": "pond-1"},
		{"id": "pond-1", "kind": "pond", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]], "floor": "8 m", "water_level": "9.5 m", "rim_level": "10 m", "overflow_to": "spill-1"},
		{"id": "spill-1", "kind": "spillway", "path": [[20, 11], [20, 13]], "crest_level": "9.6 m", "crest_length": "1 m", "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39], "level": "8 m"}
	]}`

func named(t *testing.T, all []*drawing.Drawing, name string) string {
	t.Helper()
	for _, d := range all {
		if d.Name == name {
			return d.SVG()
		}
	}
	require.FailNow(t, "no such drawing: "+name)
	return ""
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}

// TestRatingEndsAtTheFigures: where the water stands at the rim, both curves are as
// far along the axis as the figures of the least and the greatest capacity are, and
// the storm's mark as its figure is.
func TestRatingEndsAtTheFigures(t *testing.T) {
	r := review(t, spilling)
	svg := named(t, drawing.Ratings(r), "rating-1")
	it := r.Figures.List("spillways")[0]
	end := func(class string) float64 {
		m := regexp.MustCompile(`class="`+class+`" d="[^"]*L([\d.]+) [\d.]+"`).FindAllStringSubmatch(svg, -1)
		return number(t, m[0][1]) - 22
	}
	least, most, storm := end("heavy"), end("fine"), end("storm-mark")
	require.InEpsilon(t, it.Value("greatest_capacity").Number/it.Value("least_capacity").Number, most/least, 1e-4)
	require.InEpsilon(t, it.Value("storm_flow").Number/it.Value("least_capacity").Number, storm/least, 1e-3)
}

// TestSeasonsAreTheFigures: bars are as long to each other as the flows are.
func TestSeasonsAreTheFigures(t *testing.T) {
	r := review(t, spilling)
	svg := drawing.Seasons(r).SVG()
	bars := regexp.MustCompile(`class="bar (second|third)" x="[\d.]+" y="[\d.]+" width="([\d.]+)"`).FindAllStringSubmatch(svg, -1)
	var flows []float64
	for _, it := range r.Figures.List("flows") {
		for _, season := range []string{"warm_season_flow", "bypass_season_flow"} {
			if v := it.Value(season); it.Value("warm_season_flow").Number > 0 {
				flows = append(flows, v.Number)
			}
		}
	}
	require.NotEmpty(t, flows)
	for i, flow := range flows {
		require.InEpsilon(t, flow/flows[0], number(t, bars[i][2])/number(t, bars[0][2]), 1e-4)
	}
}

// TestABalanceThatIsNotKnownIsSaid: without weather there is no balance to draw, and
// no bar that could be taken for none.
func TestABalanceThatIsNotKnownIsSaid(t *testing.T) {
	all := drawing.Balances(review(t, spilling))
	require.Len(t, all, 1)
	require.Contains(t, fmt.Sprint(all[0].Notes), "not known")
	require.Equal(t, 1, strings.Count(all[0].SVG(), `class="bar"`), "the one in the key")
}

// TestDrawingsAreTheSameEveryTime: the same design gives the same bytes.
func TestDrawingsAreTheSameEveryTime(t *testing.T) {
	first, second := drawing.All(review(t, spilling)), drawing.All(review(t, spilling))
	require.Equal(t, len(first), len(second))
	for i := range first {
		require.Equal(t, first[i].SVG(), second[i].SVG())
	}
}

// TestADesignThatShowsLittle is drawn as far as it goes.
func TestADesignThatShowsLittle(t *testing.T) {
	r := review(t, `{
		"format": "greywater-design/1", "title": "Little", "location": {"region": "US-OR"}, "units": "us", "dwelling": {"bedrooms": 1},
		"site": {"grid": {"unit": "ft"}, "boundary": [[0, 0], [30, 0], [30, 20]]},
		"sources": [{"id": "shower-1", "kind": "shower", "to": "bed-1"}],
		"parts": [{"id": "bed-1", "kind": "planted gravel bed", "outline": [[0, 0], [9, 0], [9, 3]]}]}`)
	r.Units = quantity.US
	all := drawing.All(r)
	require.Equal(t, "plan", all[0].Name)
	require.Contains(t, all[0].SVG(), `data-id="bed-1"`)
	require.Contains(t, fmt.Sprint(all[0].Notes), "No contour lines")
	for _, d := range all {
		require.NotContains(t, d.SVG(), "NaN")
		require.NotContains(t, d.SVG(), "Inf")
	}
}
