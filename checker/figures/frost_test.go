package figures_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func cold(texture, climate string) entries {
	return entries{"site": siteWith(`"soil": {"texture": "` + texture + `"}, "climate": {` + climate + `}`)}
}

const ground = "the ground in winter"

// stefanFeet is Stefan's formula as the U.S. Army's manuals write it (TM 5-852-6, from
// memory): √(48 × k × n × F ÷ L) in feet, k in Btu/(ft·h·°F), F in °F·d, L = 144 Btu/lb ×
// dry density × moisture.
func stefanFeet(k, n, index, density, percent float64) float64 {
	return math.Sqrt(48 * k * n * index / (144 * density * percent / 100))
}

// silt and sand are Kersten's mean conductivities (1949, from memory) by dry density in
// lb/ft³ and moisture in percent, in Btu/(ft·h·°F).
func silt(d, w float64) float64 {
	frozen := 0.01*math.Pow(10, 0.022*d) + 0.085*math.Pow(10, 0.008*d)*w
	return (frozen + (0.9*math.Log10(w)-0.2)*math.Pow(10, 0.01*d)) / 24
}

func sand(d, w float64) float64 {
	frozen := 0.076*math.Pow(10, 0.013*d) + 0.032*math.Pow(10, 0.0146*d)*w
	return (frozen + (0.7*math.Log10(w)+0.4)*math.Pow(10, 0.01*d)) / 24
}

// TestFrostByStefan over the ends of the ranges of a soil (Pavement Interactive,
// Calculation of Frost Depth: silt of 90 to 100 lb/ft³ with 5 to 40 % of water, of which
// Kersten's formula takes 7 % at the least; sand of 120 to 140 lb/ft³ with 5 to 15 %),
// under turf, 0.5, and bare, 0.7 (TM 5-852-4, Table 4-1).
func TestFrostByStefan(t *testing.T) {
	const index = 900
	f := compute(t, cold("loam", `"freezing_index": "900 °F·d"`))
	depths := func(k func(d, w float64) float64, soils ...[2]float64) (least, greatest float64) {
		least = math.Inf(1)
		for _, s := range soils {
			least = min(least, stefanFeet(k(s[0], s[1]), 0.5, index, s[0], s[1]))
			greatest = max(greatest, stefanFeet(k(s[0], s[1]), 0.7, index, s[0], s[1]))
		}
		return least * 0.3048, greatest * 0.3048
	}
	least, greatest := depths(silt, [2]float64{90, 7}, [2]float64{90, 40}, [2]float64{100, 7})
	require.InEpsilon(t, least, known(t, f, "frost", ground, "least_depth_by_stefan"), 1e-6)
	require.InEpsilon(t, greatest, known(t, f, "frost", ground, "greatest_depth_by_stefan"), 1e-6)
	require.Equal(t, "silt: dry density 90 lb/ft³ to 100 lb/ft³ (1442 to 1602 kg/m³), moisture 7 % to 40 % of the dry mass, surface from turf (factor 0.5) to bare soil (factor 0.7)",
		known(t, f, "frost", ground, "soil_assumed"))

	f = compute(t, cold("sandy loam", `"freezing_index": "500 °C·d"`))
	least, greatest = depths(sand, [2]float64{120, 5}, [2]float64{120, 15}, [2]float64{140, 5})
	require.InEpsilon(t, least, known(t, f, "frost", ground, "least_depth_by_stefan"), 1e-6)
	require.InEpsilon(t, greatest, known(t, f, "frost", ground, "greatest_depth_by_stefan"), 1e-6)
}

// TestFrostByBerggren: the homogeneous sandy silt of TM 5-852-6, 2,500 °F·d at its
// surface in 160 days and 37.2 °F in the mean, freezes 5.8 ft deep (from memory); so its
// depth lies within what the ranges give for silt where the surface is bare.
func TestFrostByBerggren(t *testing.T) {
	f := compute(t, cold("silt", `"freezing_index": "3571 °F·d", "mean_annual_temperature": "37.2 °F", "freezing_months": ["nov", "dec", "jan", "feb", "mar"]`))
	requireKnown(t, f, "frost", ground, map[string]any{"season_length": (30 + 31 + 31 + 28 + 31) * 86400.0})
	least, greatest := known(t, f, "frost", ground, "least_depth_by_berggren"), known(t, f, "frost", ground, "greatest_depth_by_berggren")
	require.Less(t, least, 5.8*0.3048)
	require.Greater(t, greatest, 5.8*0.3048)
	// λ is less than 1.
	require.Less(t, least, known(t, f, "frost", ground, "least_depth_by_stefan"))
	require.Less(t, greatest, known(t, f, "frost", ground, "greatest_depth_by_stefan"))
	for _, field := range []string{"least_depth_by_berggren_source", "greatest_depth_by_berggren_source"} {
		require.NotEmpty(t, known(t, f, "frost", ground, field))
	}
}

// TestTheFreezingIndex of monthly means: −5 °C in December, −10 in January, −2 in
// February are 31 × 5 + 31 × 10 + 28 × 2; a single month of −1 °C in October, before 3 °C
// in November, is not in it.
func TestTheFreezingIndex(t *testing.T) {
	year := strings.NewReplacer(
		`"oct", "mean_temperature": "3 °C"`, `"oct", "mean_temperature": "-1 °C"`, `"dec", "mean_temperature": "3 °C"`, `"dec", "mean_temperature": "-5 °C"`,
		`"jan", "mean_temperature": "3 °C"`, `"jan", "mean_temperature": "-10 °C"`, `"feb", "mean_temperature": "3 °C"`, `"feb", "mean_temperature": "-2 °C"`,
	).Replace(evenClimate(`"mean_temperature": "3 °C"`))
	const index = 31*5 + 31*10 + 28*2.0
	f := compute(t, cold("loam", year+`, "freezing_months": []`))
	requireKnown(t, f, "frost", ground, map[string]any{
		"freezing_index": index, "freezing_index_by": "monthly means", "freezing_index_by_monthly_means": index,
		"season_length": (31 + 31 + 31 + 28) * 86400.0, "mean_annual_temperature": (244*3 - 31.0 - index) / 365,
	})
	f = compute(t, cold("loam", year+`, "freezing_index": "800 °C·d", "mean_annual_temperature": "1 °C", "frost_depth": "4 ft"`))
	requireKnown(t, f, "frost", ground, map[string]any{
		"freezing_index": 800.0, "freezing_index_by": "drawn", "freezing_index_by_monthly_means": index, "mean_annual_temperature": 1.0, "frost_depth": 4 * 0.3048,
	})
}

func TestNoFrost(t *testing.T) {
	f := compute(t, cold("clay", evenClimate(`"mean_temperature": "12 °C"`)+`, "freezing_months": []`))
	requireKnown(t, f, "frost", ground, map[string]any{
		"freezing_index": 0.0, "season_length": 0.0, "least_depth_by_stefan": 0.0, "greatest_depth_by_stefan": 0.0,
		"least_depth_by_berggren": 0.0, "greatest_depth_by_berggren": 0.0,
	})
}

func TestWhatFrostLacks(t *testing.T) {
	f := compute(t, bare)
	requireLacks(t, f, "frost", ground, "frost_depth", "/site/climate/frost_depth")
	requireLacks(t, f, "frost", ground, "freezing_index", "/site/climate/freezing_index")
	requireLacks(t, f, "frost", ground, "freezing_index_by_monthly_means", "/site/climate/months")
	requireLacks(t, f, "frost", ground, "season_length", "/site/climate/freezing_months")
	requireLacks(t, f, "frost", ground, "mean_annual_temperature", "/site/climate/mean_annual_temperature")
	requireLacks(t, f, "frost", ground, "soil_assumed", "/site/soil/texture")
	requireLacks(t, f, "frost", ground, "least_depth_by_stefan", "/site/climate/freezing_index", "/site/soil/texture")
	requireLacks(t, f, "frost", ground, "greatest_depth_by_berggren",
		"/site/climate/freezing_index", "/site/soil/texture", "/site/climate/freezing_months", "/site/climate/mean_annual_temperature")
}

// TestFrostOutOfRange: ground that never thaws has no frost depth, and no season freezes
// harder than −60 °C.
func TestFrostOutOfRange(t *testing.T) {
	f := compute(t, cold("loam", `"freezing_index": "4000 °C·d", "mean_annual_temperature": "-6 °C", "freezing_months": ["nov", "dec", "jan", "feb"]`))
	requireLacks(t, f, "frost", ground, "least_depth_by_berggren", "/site/climate")
	require.Contains(t, value(t, f, "frost", ground, "least_depth_by_berggren").Lacks[0].Entry, "within the range of the formula: the mean annual temperature is -6 °C")
	require.Positive(t, known(t, f, "frost", ground, "least_depth_by_stefan"))

	f = compute(t, cold("loam", evenClimate(`"mean_temperature": "-80 °C"`)))
	requireLacks(t, f, "frost", ground, "freezing_index_by_monthly_means", "/site/climate/months")
	requireLacks(t, f, "frost", ground, "mean_annual_temperature", "/site/climate/months")
	require.Contains(t, value(t, f, "frost", ground, "mean_annual_temperature").Lacks[0].Entry, "expected -60 to 60")
	f = compute(t, cold("loam", `"freezing_index": "30000 °C·d"`))
	requireLacks(t, f, "frost", ground, "greatest_depth_by_stefan", "/site/climate")
}
