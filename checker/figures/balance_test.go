package figures_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// pool is a shower on a lined pond of 100 m², 60 m³.
func pool(month, more string) entries {
	return entries{
		"site":    siteWith(`"climate": {` + evenClimate(month) + `}`),
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "switch-1"}]`,
		"parts": `[
			{"id": "switch-1", "kind": "diverter", "at": [1, 1], "to": "pond-1", "bypass_to": "sewer-1"},
			{"id": "pond-1", "kind": "pond", "outline": [[10, 10], [20, 10], [20, 20], [10, 20]], "volume": "60 m3", "liner": {"material": "EPDM"}, "overflow_to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}` + more + `
		]`,
	}
}

// TestAPondThatSpillsEveryMonth: what comes in and what open water evaporates, 1.05
// times the reference (FAO 56, Table 12, from memory), leave the rest.
func TestAPondThatSpillsEveryMonth(t *testing.T) {
	f := compute(t, pool(`"rain": "50 mm", "reference_et": "100 mm"`, ``))
	greywater := si(t, "100 gal/d") * 31 * 86400
	require.Len(t, f.List("months"), 12)
	requireKnown(t, f, "months", "pond-1 in January", map[string]any{
		"month": "January", "rain": 0.05, "reference_et": 0.1, "reference_et_by": "drawn", "greywater": greywater, "least_runoff": 0.0,
		"least_coefficient": 1.05, "greatest_coefficient": 1.05,
		"least_outflow": greywater + 100*(0.05-0.105), "greatest_outflow": greywater + 100*(0.05-0.105),
		"least_store": 60.0, "may_run_dry": false, "may_spill": true,
	})
}

// TestRunoffFillsAPond: half of the rain on 400 m² comes too, all of it goes by the
// shares of the ways.
func TestRunoffFillsAPond(t *testing.T) {
	f := compute(t, pool(`"rain": "50 mm", "reference_et": "100 mm"`,
		`, {"id": "storm-1", "kind": "storm inflow", "at": [9, 9], "catchment": "400 m2", "runoff_coefficient": 0.5, "to": [{"target": "pond-1"}, {"target": "sewer-1"}]}`))
	requireKnown(t, f, "months", "pond-1 in June", map[string]any{"least_runoff": 400 * 0.5 * 0.05 / 2, "greatest_runoff": 400 * 0.5 * 0.05 / 2})
}

// TestDaysOfTheBypassSeason: 16 of January's 31 days are left to the pond, and 28 of
// February's.
func TestDaysOfTheBypassSeason(t *testing.T) {
	e := pool(`"rain": "50 mm", "reference_et": "100 mm"`, ``)
	e["operation"] = `{"bypass_season": {"from": "12-01", "to": "01-15"}}`
	f := compute(t, e)
	for month, days := range map[string]float64{"January": 16, "February": 28, "December": 0} {
		requireKnown(t, f, "months", "pond-1 in "+month, map[string]any{"greywater": si(t, "100 gal/d") * days * 86400})
	}
}

func TestAPondThatRunsDry(t *testing.T) {
	e := pool(`"rain": "0 mm", "reference_et": "300 mm"`, ``)
	e["sources"] = strings.Replace(e["sources"], "switch-1", "sewer-1", 1)
	requireKnown(t, compute(t, e), "months", "pond-1 in July", map[string]any{
		"least_outflow": 0.0, "greatest_outflow": 0.0, "least_store": 0.0, "may_run_dry": true, "may_spill": false})
}

// TestABedHoldsItsPores: a lined bed of 20 m² and 0.5 m of water at 40 % pores. With
// 100 gal/d it loses 0.30 of the reference at the least (FAO 56, Table 12, from memory)
// and 3.68 at the most (Water Quality Research Journal 53(2):53, abstract).
func TestABedHoldsItsPores(t *testing.T) {
	e := pool(`"rain": "0 mm", "reference_et": "100 mm"`, ``)
	e["parts"] = `[
		{"id": "switch-1", "kind": "diverter", "at": [1, 1], "to": "bed-1", "bypass_to": "sewer-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [15, 10], [15, 14], [10, 14]], "surface": "10 m", "floor": "9.4 m", "water_level": "9.9 m",
			"media": [{"material": "gravel", "porosity": "40 %"}], "liner": {"material": "EPDM"}, "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`
	greywater := si(t, "100 gal/d") * 30 * 86400
	requireKnown(t, compute(t, e), "months", "bed-1 in June", map[string]any{
		"least_store": 20 * 0.5 * 0.4, "least_outflow": greywater - 20*3.68*0.1, "greatest_outflow": greywater - 20*0.30*0.1})
}

func TestWhatABalanceLacks(t *testing.T) {
	f := compute(t, pool(`"mean_temperature": "10 °C"`, ``))
	requireLacks(t, f, "months", "pond-1 in May", "rain", "/site/climate/months")
	requireLacks(t, f, "months", "pond-1 in May", "least_outflow", "/site/climate/months", "/site/climate/months")
	unlined := pool(`"rain": "50 mm", "reference_et": "100 mm"`, ``)
	unlined["parts"] = strings.Replace(unlined["parts"], `"liner": {"material": "EPDM"}, `, ``, 1)
	requireLacks(t, compute(t, unlined), "months", "pond-1 in May", "may_run_dry", "/parts/1/liner")
}

// bangkok is FAO 56 (1998), Example 17: April at 13°44′ N, 2 m above the sea, with the
// months before and after it 1 °C cooler and warmer, which gives the example's soil heat.
func bangkok(t *testing.T, more string) entries {
	e := pool(`"minimum_temperature": "25.6 °C", "maximum_temperature": "34.8 °C", "mean_temperature": "30.2 °C", "rain": "50 mm"`+more, ``)
	e["location"] = `{"region": "TH-10", "latitude": "13.7333 °", "altitude": "2 m"}`
	e["site"] = strings.NewReplacer(
		`"mar", "minimum_temperature": "25.6 °C", "maximum_temperature": "34.8 °C"`, `"mar", "minimum_temperature": "24.6 °C", "maximum_temperature": "33.8 °C"`,
		`"may", "minimum_temperature": "25.6 °C", "maximum_temperature": "34.8 °C"`, `"may", "minimum_temperature": "26.6 °C", "maximum_temperature": "35.8 °C"`).Replace(e["site"])
	require.Contains(t, e["site"], "35.8")
	return e
}

// TestPenmanMonteith gives the 5.72 mm a day of Example 17: its vapour pressure of
// 2.85 kPa is 64.45 % of the 4.42 kPa of saturation.
func TestPenmanMonteith(t *testing.T) {
	f := compute(t, bangkok(t, `, "humidity": "64.45 %", "wind": "2 m/s", "radiation": "22.65 MJ/m2/d"`))
	require.Equal(t, "Penman–Monteith", known(t, f, "months", "pond-1 in April", "reference_et_by"))
	require.InDelta(t, 30*5.72e-3, known(t, f, "months", "pond-1 in April", "reference_et"), 30*0.02e-3)
}

// TestHargreaves takes the radiation above the air of the same example, 38.06 MJ/m² a
// day (FAO 56, Example 17 and equation 52).
func TestHargreaves(t *testing.T) {
	f := compute(t, bangkok(t, ``))
	require.Equal(t, "Hargreaves", known(t, f, "months", "pond-1 in April", "reference_et_by"))
	require.InEpsilon(t, 30*1e-3*0.0023*(30.2+17.8)*math.Sqrt(34.8-25.6)*38.06/2.45, known(t, f, "months", "pond-1 in April", "reference_et"), 1e-3)
}
