package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// ponded is a shower on a pond of 10 m × 8 m with more entries.
func ponded(climate, more string) entries {
	return entries{
		"location": `{"region": "US-CO", "altitude": "0 m"}`,
		"site":     siteWith(`"climate": {` + climate + `}`),
		"sources":  `[{"id": "shower-1", "kind": "shower", "to": "pond-1"}]`,
		"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[10, 10], [20, 10], [20, 18], [10, 18]], ` + more + ` "overflow_to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	}
}

const sloped = `"rim_level": "10 m", "water_level": "9.8 m", "floor": "8.5 m", "side_slope": "1:2",`

// TestAPondWithSlopingSides: 1:2 comes in 2 m for each metre down, at the water level
// 0.4 m and at the floor 3 m from each side.
func TestAPondWithSlopingSides(t *testing.T) {
	f := compute(t, ponded(``, sloped+`"embankment": {"top_level": "10.3 m", "toe_level": "9.1 m", "top_width": "2 m"},`))
	top, middle, bottom := 9.2*7.2, 6.6*4.6, 4.0*2.0
	volume, flow := 1.3/6*(top+4*middle+bottom), si(t, "100 gal/d")
	requireKnown(t, f, "ponds", "pond-1", map[string]any{
		"area": top, "greatest_depth": 1.3, "volume": volume, "volume_by": "sides as drawn", "flow": flow,
		"freeboard": 0.2, "embankment_height": 1.2, "embankment_top_width": 2.0,
	})
	require.InEpsilon(t, volume/flow, known(t, f, "ponds", "pond-1", "turnover"), 1e-9)
}

// TestAPublishedPond holds 1,639.1 yd³ and 7,000 ft² full to the rim: University of
// Regina, Math Central, volume of a pond of 100 ft by 70 ft, 12 ft deep, sides of 2:1.
func TestAPublishedPond(t *testing.T) {
	f := compute(t, entries{
		"site": `{"grid": {"unit": "ft"}, "boundary": [[0, 0], [200, 0], [200, 200], [0, 200]]}`,
		"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[20, 20], [120, 20], [120, 90], [20, 90]],
			"rim_level": "100 ft", "water_level": "100 ft", "floor": "88 ft", "side_slope": "50 %"}]`,
	})
	require.InDelta(t, 1639.1, known(t, f, "ponds", "pond-1", "volume").(float64)/si(t, "1 yd3"), 0.05)
	require.InDelta(t, 7000, known(t, f, "ponds", "pond-1", "area").(float64)/si(t, "1 ft2"), 1e-6)
	require.InDelta(t, 1639.1, known(t, f, "quantities.excavation", "pond-1", "volume").(float64)/si(t, "1 yd3"), 0.05)
}

// TestIceOfAPond: 0.5 and 0.8 in/√(°F·d) (CRREL Technical Note 04-3, as quoted on a
// page about ice thickness); 0.8 × √900 is 24 in.
func TestIceOfAPond(t *testing.T) {
	f := compute(t, ponded(`"freezing_index": "900 °F·d"`, sloped))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{
		"least_ice": 15 * 0.0254, "greatest_ice": 24 * 0.0254, "least_winter_depth": 1.3 - 24*0.0254,
	})
	f = compute(t, ponded(evenClimate(`"mean_temperature": "3 °C"`), sloped))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"least_ice": 0.0, "greatest_ice": 0.0, "least_winter_depth": 1.3})
}

// TestAPondThatFreezesToItsFloor has less than no water under the ice.
func TestAPondThatFreezesToItsFloor(t *testing.T) {
	f := compute(t, ponded(`"freezing_index": "2500 °F·d"`, `"water_level": "9 m", "floor": "8 m", "volume": "40 m3",`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"least_winter_depth": 1 - 40*0.0254})
}

// TestAmmoniaAndOxygenOfAPond: at pH 8.0 and 25 °C 5.38 % is un-ionized (Emerson and
// others 1975, from memory), 5.28 % by Trussell 1972, fresh-water table, as reprinted in a
// water test kit's manual; at 25 °C water holds 8.26 mg/L at the sea (EN 25814, table, as
// printed in an instrument's manual).
func TestAmmoniaAndOxygenOfAPond(t *testing.T) {
	const milligram = 1e-3 // kg/m³
	f := compute(t, ponded(``, sloped+`"ph": 8, "warm_water": "25 °C", "ammonia": "2 mg/L",`))
	require.InDelta(t, 2*0.0538*milligram, known(t, f, "ponds", "pond-1", "unionized_ammonia_by_emerson"), 2*0.0002*milligram)
	require.InDelta(t, 8.26*milligram, known(t, f, "ponds", "pond-1", "oxygen_saturation"), 0.005*milligram)
	require.InDelta(t, 2*0.0528*milligram, known(t, f, "ponds", "pond-1", "unionized_ammonia_by_trussell"), 2*0.00005*milligram)
}

func TestWhatAPondLacks(t *testing.T) {
	f := compute(t, ponded(``, ``))
	requireLacks(t, f, "ponds", "pond-1", "greatest_depth", "/parts/0/water_level", "/parts/0/floor")
	requireLacks(t, f, "ponds", "pond-1", "volume", "/parts/0/side_slope", "/parts/0/rim_level", "/parts/0/floor", "/parts/0/water_level")
	requireLacks(t, f, "ponds", "pond-1", "freeboard", "/parts/0/rim_level", "/parts/0/water_level")
	requireLacks(t, f, "ponds", "pond-1", "least_ice", "/site/climate/freezing_index")
	requireLacks(t, f, "ponds", "pond-1", "least_winter_depth", "/parts/0/water_level", "/parts/0/floor", "/site/climate/freezing_index")
	requireLacks(t, f, "ponds", "pond-1", "unionized_ammonia_by_emerson", "/parts/0/ph", "/parts/0/warm_water", "/parts/0/ammonia")
	requireLacks(t, f, "ponds", "pond-1", "oxygen_saturation", "/parts/0/warm_water")
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"has_embankment": false})

	f = compute(t, ponded(``, sloped+`"embankment": {"top_width": "2 m"},`).with(entries{"location": `{"region": "US-CO"}`, "sources": drip}))
	requireLacks(t, f, "ponds", "pond-1", "embankment_height", "/parts/0/embankment/top_level", "/parts/0/embankment/toe_level")
	require.Equal(t, "top_level of the embankment of pond-1", value(t, f, "ponds", "pond-1", "embankment_height").Lacks[0].Entry)
	requireLacks(t, f, "ponds", "pond-1", "turnover", "/sources")
	requireLacks(t, f, "ponds", "pond-1", "oxygen_saturation", "/parts/0/warm_water", "/location/altitude")
}

// TestAPondOutOfRange: Trussell's table begins at pH 7.0; water under the floor or over
// the rim, and a floor that sides of 1:2 do not reach, hold nothing.
func TestAPondOutOfRange(t *testing.T) {
	f := compute(t, ponded(``, sloped+`"ph": 6.5, "warm_water": "25 °C", "ammonia": "2 mg/L",`))
	lack := value(t, f, "ponds", "pond-1", "unionized_ammonia_by_trussell").Lacks[0]
	require.Contains(t, lack.Entry, "ph and warm_water of pond-1 within the range of the formula: the pH is 6.5: expected 7 to 8.5")
	require.Positive(t, known(t, f, "ponds", "pond-1", "unionized_ammonia_by_emerson"))

	for drawn, pointer := range map[string]string{
		strings.Replace(sloped, "9.8 m", "8.4 m", 1):  "/parts/0/water_level",
		strings.Replace(sloped, "9.8 m", "10.5 m", 1): "/parts/0/water_level",
		strings.Replace(sloped, "8.5 m", "7 m", 1):    "/parts/0/side_slope",
	} {
		requireLacks(t, compute(t, ponded(``, drawn)), "ponds", "pond-1", "volume", pointer)
	}
	requireLacks(t, compute(t, ponded(``, strings.Replace(sloped, "9.8 m", "8.4 m", 1))), "ponds", "pond-1", "greatest_depth", "/parts/0/water_level")
	f = compute(t, ponded(``, `"rim_level": "9 m", "water_level": "9.8 m", "floor": "8.5 m", "volume": "10 m3",`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"freeboard": -0.8, "volume": 10.0, "volume_by": "volume as drawn"})
}
