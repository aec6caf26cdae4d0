package figures_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

// wetBed is a shower and a washer on a bed of 6 by 3 m, 0.6 m of media of which
// 0.5 m stands in water, with further entries of the bed.
func wetBed(site, entry string) entries {
	return entries{
		"site":    `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]]` + site + `}`,
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "bed-1"}, {"id": "washer-1", "kind": "clothes washer", "to": "bed-1"}]`,
		"parts": `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1",
				"floor": "9.4 m", "surface": "10 m", "water_level": "9.9 m"` + entry + `},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}]`,
	}
}

const (
	gravel = `, "media": [{"material": "gravel", "porosity": "40 %", "conductivity": "864 m/d"}]`

	// wetFlow is 4 occupants of 3 bedrooms at 25 and 15 US gal a day.
	wetFlow = 4 * (25 + 15) * 231 * 0.0254 * 0.0254 * 0.0254 / 86400
)

func TestFlowThroughABed(t *testing.T) {
	want := map[string]any{
		"course": "longer side of the outline", "length": 6.0, "width": 18.0 / 6, "length_to_width": 2.0, "water_depth": 9.9 - 9.4,
		"least_pore_volume": 18 * 0.5 * 0.4, "greatest_pore_volume": 18 * 0.5 * 0.4, "flow": wetFlow, "area": 18.0, "hydraulic_loading": wetFlow / 18,
		"least_inlet_bod": 0.085, "greatest_inlet_bod": 0.200, // fbr H 201: 85 to 200 mg/L
	}
	f := compute(t, wetBed("", gravel))
	requireKnown(t, f, "bed_flow", "bed-1", want)
	for field, load := range map[string]float64{
		"least_areal_load": wetFlow * 0.085 / 18, "greatest_areal_load": wetFlow * 0.2 / 18,
		"least_section_load": wetFlow * 0.085 / (3 * 0.5), "greatest_section_load": wetFlow * 0.2 / (3 * 0.5),
	} {
		require.InEpsilon(t, load, known(t, f, "bed_flow", "bed-1", field), 1e-9, field)
	}
	require.InDelta(t, 18*0.5*0.4/wetFlow, known(t, f, "bed_flow", "bed-1", "least_detention"), 1e-3)
	require.InDelta(t, 18*0.5*0.4/wetFlow, known(t, f, "bed_flow", "bed-1", "greatest_detention"), 1e-3)
}

// A laundry alone has the load of its people in little water: by EPA 2002
// (remembered), 28.5 g a day for each person in 15 gal.
func TestStrongestGreywater(t *testing.T) {
	e := wetBed("", gravel)
	e["sources"] = `[{"id": "washer-1", "kind": "clothes washer", "to": "bed-1"}]`
	f := compute(t, e)
	require.InDelta(t, 0.0285/(15*231*0.0254*0.0254*0.0254), known(t, f, "bed_flow", "bed-1", "greatest_inlet_bod"), 1e-9)
	require.Contains(t, known(t, f, "bed_flow", "bed-1", "greatest_inlet_bod_source"), "EPA 2002")
	require.Contains(t, known(t, f, "bed_flow", "bed-1", "greatest_inlet_bod_source"), "from memory")
}

func TestCourseOfTheWater(t *testing.T) {
	tests := map[string]struct {
		entry         string
		course        string
		length, width float64
	}{
		"header and outlet along the length": {`, "inlet": {"path": [[14.5, 28], [14.5, 31]]}, "outlet": {"at": [19.5, 29]}`, "inlet header to outlet", 5, 3},
		"header and outlet across it":        {`, "inlet": {"path": [[14, 30.5], [20, 30.5]]}, "outlet": {"at": [15, 28.5]}`, "inlet header to outlet", 2, 6},
		"a header without an outlet":         {`, "inlet": {"path": [[14, 30.5], [20, 30.5]]}`, "longer side of the outline", 6, 3},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, wetBed("", tt.entry)), "bed_flow", "bed-1", map[string]any{"course": tt.course, "length": tt.length, "width": tt.width})
		})
	}
	f := compute(t, wetBed("", `, "inlet": {"path": [[14.5, 28], [14.5, 31]]}, "outlet": {"at": [14.5, 29]}`))
	requireLacks(t, f, "bed_flow", "bed-1", "length", "/parts/0/outlet/at")
}

// The upper of two layers lies dry down to 0.1 m below the surface.
func TestPoresUnderWaterOfTwoLayers(t *testing.T) {
	upper, lower := `{"material": "pea gravel", "thickness": "0.25 m", "porosity": "30 %"}`, `{"material": "gravel", "porosity": "40 %"}`
	f := compute(t, wetBed("", `, "media": [`+upper+`, `+lower+`]`))
	requireKnown(t, f, "bed_flow", "bed-1", map[string]any{"least_pore_volume": 18 * (0.15*0.3 + 0.35*0.4)})
	f = compute(t, wetBed("", `, "media": [`+strings.Replace(upper, "0.25", "0.05", 1)+`, `+lower+`]`))
	requireKnown(t, f, "bed_flow", "bed-1", map[string]any{"least_pore_volume": 18 * 0.5 * 0.4})
}

func TestBedFlowLacks(t *testing.T) {
	bare := compute(t, bedding(`[]`, ``))
	requireLacks(t, bare, "bed_flow", "bed-1", "water_depth", "/parts/0/water_level", "/parts/0/floor")
	requireLacks(t, bare, "bed_flow", "bed-1", "hydraulic_loading", "/sources")
	requireLacks(t, bare, "bed_flow", "bed-1", "least_pore_volume", "/parts/0/media")
	requireLacks(t, bare, "head_loss", "bed-1, clean media", "rise", "/parts/0/media", "/sources", "/parts/0/water_level", "/parts/0/floor")
	below := wetBed("", gravel)
	below["parts"] = strings.Replace(below["parts"], "9.9 m", "9.3 m", 1)
	requireLacks(t, compute(t, below), "bed_flow", "bed-1", "water_depth", "/parts/0/water_level")
	requireLacks(t, compute(t, wetBed("", `, "media": [{"material": "gravel", "porosity": "0 %"}]`)), "bed_flow", "bed-1", "least_detention", "/parts/0/media")
}

// Q·L/(K·W·D), and the exact rise of y₁² = y₂² + 2Q·L/(K·W), over a clean
// conductivity of 0.01 m/s.
func TestHeadLoss(t *testing.T) {
	f := compute(t, wetBed("", gravel))
	unit := wetFlow / (0.01 * 3)
	tests := map[string]float64{ // length over the share of the clean conductivity
		"clean media": 6, "a third": 6 * 3, "two zones": 6 * (0.3/0.01 + 0.7/0.1), "developed bed": 6 * 0.01 / 0.001,
	}
	for allowance, length := range tests {
		rise := math.Sqrt(0.5*0.5+2*unit*length) - 0.5
		subject := "bed-1, " + allowance
		require.InDelta(t, unit*length/0.5, known(t, f, "head_loss", subject, "greatest_head_loss"), 1e-9, allowance)
		require.InDelta(t, unit*length/0.5, known(t, f, "head_loss", subject, "least_head_loss"), 1e-9, allowance)
		require.InDelta(t, rise, known(t, f, "head_loss", subject, "rise"), 1e-7, allowance)
		require.InDelta(t, 0.1-rise, known(t, f, "head_loss", subject, "water_below_gravel_at_inlet"), 1e-7, allowance)
		require.InDelta(t, rise/0.1, known(t, f, "head_loss", subject, "rise_share"), 1e-6, allowance)
		require.Equal(t, allowance, known(t, f, "head_loss", subject, "clogging"))
	}
	require.Len(t, f.List("head_loss"), len(tests))
}

// TestABedInThePeak: a shower and a washer have 2 units each; a unit counts ½ gal/min
// by the International Plumbing Code, 1 gal/min by the Chicago Plumbing Code.
func TestABedInThePeak(t *testing.T) {
	f := compute(t, wetBed("", gravel))
	least, greatest := si(t, "2 gal/min"), si(t, "4 gal/min")
	requireKnown(t, f, "bed_flow", "bed-1", map[string]any{
		"least_peak_flow": least, "greatest_peak_flow": greatest,
		"least_peak_detention": 18 * 0.5 * 0.4 / greatest, "greatest_peak_detention": 18 * 0.5 * 0.4 / least,
	})
	rise := math.Sqrt(0.5*0.5+2*greatest/(0.01*3)*6) - 0.5
	require.InDelta(t, rise, known(t, f, "head_loss", "bed-1, clean media", "peak_rise"), 1e-7)
	require.InDelta(t, 0.1-rise, known(t, f, "head_loss", "bed-1, clean media", "water_below_gravel_at_inlet_in_peak"), 1e-7)
}

// Water comes up through media that let hardly any pass; and media tighter than
// a developed bed are outside that allowance.
func TestWaterThatComesUpThroughTheGravel(t *testing.T) {
	f := compute(t, wetBed("", strings.Replace(gravel, "864 m/d", "1 m/d", 1)))
	require.Negative(t, known(t, f, "head_loss", "bed-1, clean media", "water_below_gravel_at_inlet"))
	requireLacks(t, f, "head_loss", "bed-1, developed bed", "rise", "/parts/0/media")
}

// TestBedsInFeetAndMetres: the same bed written in both systems of units has the
// same figures.
func TestBedsInFeetAndMetres(t *testing.T) {
	climate := weather("-3 °C", "18 °C", `, "mean_annual_temperature": "8 °C", "snow_depth": "0.3048 m"`)
	media := `, "mulch": "0.1524 m", "media": [{"material": "a", "thickness": "0.1016 m", "size": "9.525 mm"}, {"material": "b", "size": "0.01905 m"}],
		"plants": [{"species": "Typha latifolia"}, {"species": "Iris tenax", "root_depth": "0.254 m"}], "rim_level": "10.3632 m",
		"inlet": {"path": [[14.5, 28.5], [14.5, 31]], "stone_size": "0.0508 m"}, "outlet": {"at": [19.5, 29], "stone_size": "0.0508 m"},
		"liner": {"thickness": "0.001143 m", "overlap": "0.3048 m"}, "drawdown": {"level": "9.144 m"}`
	metric := wetBed(climate, media)
	us := wetBed(climate, media)
	turn := strings.NewReplacer("0.3048 m", "12 in", "0.1524 m", "6 in", "0.1016 m", "4 in", "9.525 mm", "3/8 in", "0.01905 m", "3/4 in", "0.254 m", "10 in",
		"10.3632 m", "34 ft", "0.0508 m", "2 in", "0.001143 m", "45 mil", "9.144 m", "30 ft",
		"-3 °C", "26.6 °F", "18 °C", "64.4 °F", "8 °C", "46.4 °F")
	for name := range us {
		us[name] = turn.Replace(us[name])
	}
	require.NotEqual(t, metric, us)
	a, b := compute(t, metric), compute(t, us)
	for i, l := range figures.Catalogue {
		if a.Lists[i].List == l {
			requireAlike(t, a.Lists[i], b.Lists[i], 1e-9)
		}
	}
	require.NotZero(t, known(t, b, "bed_winter", "bed-1 with snow, water as it leaves the house", "outlet_temperature"))
}

// Where the water stands in the open already there is no dry gravel to take up.
func TestRiseUnderOpenWater(t *testing.T) {
	e := wetBed("", gravel)
	e["parts"] = strings.Replace(e["parts"], `"surface": "10 m"`, `"surface": "9.9 m"`, 1)
	requireLacks(t, compute(t, e), "head_loss", "bed-1, clean media", "rise_share", "/parts/0/water_level")
}

// The bed is 6 m along the water's course.
func TestHowMuchOfTheBedTheWaterPasses(t *testing.T) {
	for header, share := range map[string]float64{`[[14.5, 28], [14.5, 31]]`: 5.0 / 6, `[[14, 28], [14, 31]]`: 5.5 / 6, `[[17, 28], [17, 31]]`: 2.5 / 6} {
		f := compute(t, wetBed("", `, "inlet": {"path": `+header+`}, "outlet": {"at": [19.5, 29]}`))
		requireKnown(t, f, "bed_flow", "bed-1", map[string]any{"course_share": share})
	}
	f := compute(t, wetBed("", ""))
	requireLacks(t, f, "bed_flow", "bed-1", "course_share", "/parts/0/inlet/path", "/parts/0/outlet/at")
}
