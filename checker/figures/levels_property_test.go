package figures_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// onPlane is a bed with a level floor in ground that is a plane, filled to the
// ground.
func onPlane(outline []design.Point, x, y float64) *design.Design {
	plane := func(p design.Point) float64 { return 100 + x*p.X + y*p.Y }
	d := &design.Design{Parts: []design.Part{{ID: "bed-1", Kind: "planted gravel bed", Pointer: "/parts/0", Shape: design.Shape{Outline: outline}, Floor: []quantity.Quantity{metres(90)}}}}
	for _, p := range []design.Point{{X: -50, Y: -50}, {X: 50, Y: -50}, {X: 3, Y: 7}, {X: 50, Y: 50}, {X: -50, Y: 50}} {
		d.Site.Levels = append(d.Site.Levels, design.Spot{X: p.X, Y: p.Y, Z: plane(p)})
	}
	return d
}

func slopes(t *rapid.T) (x, y float64) {
	slope := rapid.Float64Range(-0.1, 0.1)
	return slope.Draw(t, "x"), slope.Draw(t, "y")
}

// fourCorners draws a ring round the origin that bulges outwards.
func fourCorners(t *rapid.T) []design.Point {
	reach := rapid.Float64Range(1, 10)
	return []design.Point{{X: -reach.Draw(t, "west")}, {Y: -reach.Draw(t, "south")}, {X: reach.Draw(t, "east")}, {Y: reach.Draw(t, "north")}}
}

func bedFigure(t require.TestingT, d *design.Design, list, field string) float64 {
	return known(t, figures.Compute(d), list, "bed-1", field).(float64)
}

// TestDepthOnAPlaneStaysBetweenItsCorners, and so does the ground.
func TestDepthOnAPlaneStaysBetweenItsCorners(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := fourCorners(t)
		x, y := slopes(t)
		least, greatest := math.Inf(1), math.Inf(-1)
		for _, p := range outline {
			depth := 10 + x*p.X + y*p.Y
			least, greatest = min(least, depth), max(greatest, depth)
		}
		d := onPlane(outline, x, y)
		require.InDelta(t, least, bedFigure(t, d, "beds", "least_depth"), 1e-6)
		require.InDelta(t, greatest, bedFigure(t, d, "beds", "greatest_depth"), 1e-6)
		mean := bedFigure(t, d, "beds", "mean_depth")
		require.True(t, least-1e-6 <= mean && mean <= greatest+1e-6)
		require.InDelta(t, 90+least, bedFigure(t, d, "ground", "least_level"), 1e-6)
		require.InDelta(t, 90+greatest, bedFigure(t, d, "ground", "greatest_level"), 1e-6)
		require.InDelta(t, math.Hypot(x, y), bedFigure(t, d, "ground", "greatest_slope"), 1e-6)
	})
}

// TestAnOutlineCutInTwo has the volume of both pieces together.
func TestAnOutlineCutInTwo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := fourCorners(t)
		x, y := slopes(t)
		along := func(a, b design.Point, name string) design.Point {
			share := rapid.Float64Range(0.05, 0.95).Draw(t, name)
			return design.Point{X: a.X + share*(b.X-a.X), Y: a.Y + share*(b.Y-a.Y)}
		}
		p, q := along(o[0], o[1], "first cut"), along(o[2], o[3], "second cut")
		volume := func(outline ...design.Point) float64 {
			return bedFigure(t, onPlane(outline, x, y), "beds", "media_volume")
		}
		whole := volume(o...)
		require.InEpsilon(t, whole, volume(p, o[1], o[2], q)+volume(o[0], p, q, o[3]), 1e-6)
	})
}

// TestAreasAndVolumesScale with the square and the cube of all lengths.
func TestAreasAndVolumesScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := fourCorners(t)
		x, y := slopes(t)
		scale := rapid.Float64Range(0.2, 4).Draw(t, "scale")
		small := onPlane(o, x, y)
		large := onPlane(nil, x, y)
		for _, p := range o {
			large.Parts[0].Outline = append(large.Parts[0].Outline, design.Point{X: scale * p.X, Y: scale * p.Y})
		}
		large.Parts[0].Floor = []quantity.Quantity{metres(100 - scale*10)}
		require.InEpsilon(t, scale*scale*bedFigure(t, small, "beds", "area"), bedFigure(t, large, "beds", "area"), 1e-9)
		require.InEpsilon(t, scale*scale*scale*bedFigure(t, small, "beds", "media_volume"), bedFigure(t, large, "beds", "media_volume"), 1e-6)
		require.InEpsilon(t, scale*bedFigure(t, small, "beds", "mean_depth"), bedFigure(t, large, "beds", "mean_depth"), 1e-6)
	})
}

// TestTheYearOfAPondCloses: what comes in in twelve months leaves it in them, as long
// as it does not run dry.
func TestTheYearOfAPondCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := pool(`"rain": "0 mm"`, ``)
		for _, month := range []string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"} {
			rain, et := rapid.IntRange(0, 200).Draw(t, "rain"), rapid.IntRange(0, 80).Draw(t, "et")
			e["site"] = strings.Replace(e["site"], `"month": "`+month+`", "rain": "0 mm"`, fmt.Sprintf(`"month": "%s", "rain": "%d mm", "reference_et": "%d mm"`, month, rain, et), 1)
		}
		f := compute(t, e)
		sum := 0.0
		for _, item := range f.List("months") {
			get := func(field string) float64 { return item.Value(field).Number }
			require.False(t, item.Value("may_run_dry").Truth)
			sum += get("greywater") + get("least_runoff") + 100*(get("rain")-get("least_coefficient")*get("reference_et")) - get("least_outflow")
		}
		require.Len(t, f.List("months"), 12)
		require.InDelta(t, 0, sum, 1e-6)
	})
}

// TestFeetAndMetresStandAsHigh: ponds, tanks and beds written in both systems of
// units have the same water levels, drops, falls and storms.
func TestFeetAndMetresStandAsHigh(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := func(low, high int, name string) int { return rapid.IntRange(low, high).Draw(t, name) }
		crest, catchment, bore := mm(9550, 9900, "crest"), mm(1, 2000, "catchment"), mm(40, 200, "bore")
		write := func(length func(mm int) string, area string, grid func(string) string) entries {
			return entries{
				"site": grid(`{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "levels": [[0, 0, 10], [60, 0, 13], [60, 40, 13.5], [0, 40, 10]],
					"climate": {"design_storm": {"intensity": "` + map[bool]string{true: "25.4 mm/h", false: "1 in/h"}[area == "m2"] + `", "duration": "1 h"}}}`),
				"sources": `[{"id": "shower-1", "kind": "shower", "to": "tank-1"}]`,
				"parts": grid(fmt.Sprintf(`[
					{"id": "tank-1", "kind": "surge tank", "outline": [[10, 8], [12, 8], [12, 9], [10, 9]], "water_level": %s, "inlet_level": %s, "outlet_level": %[1]s, "covered": true, "to": "pipe-1"},
					{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 9], [10, 10]], "inverts": [%[1]s, %[3]s], "to": "pond-1"},
					{"id": "storm-1", "kind": "storm inflow", "at": [1, 1], "catchment": "%[8]v %[9]s", "runoff_coefficient": 0.5, "time_of_concentration": "10 min", "to": "pond-1"},
					{"id": "pond-1", "kind": "pond", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]], "floor": %[4]s, "water_level": %[5]s, "rim_level": %[6]s, "side_slope": "100 %%",
						"overflow_to": [{"target": "over-1"}, {"target": "spill-1"}]},
					{"id": "spill-1", "kind": "spillway", "path": [[20, 11], [20, 13]], "crest_level": %[7]s, "crest_length": %[3]s, "side_slope": "50 %%", "channel_slope": "5 %%", "roughness": 0.03, "to": "sewer-1"},
					{"id": "over-1", "kind": "overflow pipe", "path": [[20, 11], [29, 11]], "inverts": [%[5]s, %[4]s], "diameter": %[10]s, "material": "ABS", "to": "sewer-1"},
					{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39], "level": %[4]s}
				]`, length(9900), length(10000), length(9700), length(8500), length(9500), length(10100), length(crest), areaIn(area, catchment), area, length(bore))),
			}
		}
		si := write(func(mm int) string { return fmt.Sprintf(`"%d mm"`, mm) }, "m2", func(s string) string { return s })
		us := write(func(mm int) string { return `"` + strconv.FormatFloat(float64(mm)/304.8, 'g', -1, 64) + ` ft"` }, "ft2",
			func(s string) string { return inFeet(strings.ReplaceAll(s, `"unit": "m"`, `"unit": "ft"`)) })
		a, b := compute(t, si), compute(t, us)
		for i := range a.Lists {
			requireAlike(t, a.Lists[i], b.Lists[i], 1e-6)
		}
		require.NotZero(t, known(t, b, "water_levels", "pond-1", "storm_freeboard"))
		require.NotZero(t, known(t, b, "spillway_channels", "spill-1", "channel_velocity"))
		require.NotZero(t, known(t, b, "falls", "tank-1 to pond-1", "fall_had"))
		require.True(t, value(t, b, "routing", "pond-1", "stays_under_rim").Known())
	})
}

// areaIn writes square metres in a unit.
func areaIn(unit string, metres int) string {
	if unit == "m2" {
		return strconv.Itoa(metres)
	}
	return strconv.FormatFloat(float64(metres)/(0.3048*0.3048), 'g', -1, 64)
}

// inFeet turns coordinates into feet, and leaves the numbers that have no unit.
func inFeet(text string) string {
	apart := strings.NewReplacer(`"runoff_coefficient": 0.5`, `"runoff_coefficient": half`, `"roughness": 0.03`, `"roughness": rough`)
	together := strings.NewReplacer(": half", ": 0.5", ": rough", ": 0.03")
	return together.Replace(scaled(apart.Replace(text)))
}
