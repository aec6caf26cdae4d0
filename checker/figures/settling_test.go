package figures_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// evenClimate has the same weather in every month.
func evenClimate(month string) string {
	var all []string
	for _, m := range []string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"} {
		all = append(all, `{"month": "`+m+`", `+month+`}`)
	}
	return `"months": [` + strings.Join(all, ", ") + `]`
}

// siteWith is the bare site with more entries.
func siteWith(more string) string {
	return `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], ` + more + `}`
}

// settlers is a shower and a washer on a settling basin, half of the washer's water
// on the sewer.
func settlers(basin string) entries {
	return entries{
		"site": siteWith(`"climate": {` + evenClimate(`"mean_temperature": "10 °C"`) + `}`),
		"sources": `[
			{"id": "shower-1", "kind": "shower", "to": "basin-1"},
			{"id": "washer-1", "kind": "clothes washer", "to": [{"target": "basin-1", "share": "50 %"}, {"target": "sewer-1"}], "volume_per_use": "60 L", "discharge_rate": "20 L/min"}
		]`,
		"parts": `[
			{"id": "basin-1", "kind": "settling basin", "outline": [[10, 10], [14, 10], [14, 13], [10, 13]], ` + basin + ` "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
		]`,
	}
}

// TestASettlingBasinWithSlopingSides: 4 m × 3 m at the rim, sides that come in
// 0.5 m for each metre down.
func TestASettlingBasinWithSlopingSides(t *testing.T) {
	f := compute(t, settlers(`"rim_level": "10 m", "floor": "9 m", "water_level": "9.8 m", "side_slope": "200 %", "sludge_depth": "0.2 m",`))
	volume := 0.8 / 6 * (3*2 + 4*3.4*2.4 + 3.8*2.8)
	flow, rate := si(t, "130 gal/d"), si(t, "10 L/min")
	room := 0.2 / 6 * (3*2 + 4*3.1*2.1 + 3.2*2.2)
	requireKnown(t, f, "settling", "basin-1", map[string]any{
		"kind": "settling basin", "area": 3.8 * 2.8, "water_depth": 0.8, "volume": volume, "volume_by": "sides as drawn",
		"flow": flow, "surface_loading": flow / (3.8 * 2.8), "surge_rate": rate, "surge_surface_loading": rate / (3.8 * 2.8), "sludge_volume": room,
	})
	require.InEpsilon(t, volume/flow, known(t, f, "settling", "basin-1", "detention"), 1e-9)
	// 4 occupants; 0.254 and 0.178 L a day and person (N. F. Gray, Environmental
	// Technology 16 (1995) 795, abstract).
	require.InEpsilon(t, room*1000/(4*0.254)*86400, known(t, f, "settling", "basin-1", "least_clean_out_interval"), 1e-9)
	require.InEpsilon(t, room*1000/(4*0.178)*86400, known(t, f, "settling", "basin-1", "greatest_clean_out_interval"), 1e-9)
}

// TestTheSmallestGrainKept by Stokes' law in water of 10 °C, 1.307 mPa·s (from
// memory), for quartz.
func TestTheSmallestGrainKept(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3",`))
	grain := func(loading float64) float64 { return math.Sqrt(18 * 1.307e-3 * loading / (9.80665 * 1650)) }
	require.InEpsilon(t, grain(si(t, "130 gal/d")/12), known(t, f, "settling", "basin-1", "smallest_grain_kept"), 1e-3)
	require.InEpsilon(t, grain(si(t, "10 L/min")/12), known(t, f, "settling", "basin-1", "smallest_grain_kept_in_surge"), 1e-3)
	require.InEpsilon(t, math.Cbrt(18*1.307e-3*1.307e-6/(9.80665*1650)), known(t, f, "settling", "basin-1", "largest_grain_by_stokes"), 2e-3)
}

func TestASettlingBasinByTheVolumeDrawn(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3", "sludge_depth": "0.3 m", "floor": ["9 m", "9 m", "9.1 m", "9.1 m"], "water_level": "9.8 m", `))
	requireKnown(t, f, "settling", "basin-1", map[string]any{
		"volume": 6.0, "volume_per_occupant": 1.5, "volume_by": "volume as drawn", "area": 12.0, "water_depth": 0.8, "sludge_volume": 12 * 0.3,
	})
}

func TestWhatASettlingBasinLacks(t *testing.T) {
	f := compute(t, settlers(``))
	requireLacks(t, f, "settling", "basin-1", "volume", "/parts/0/side_slope", "/parts/0/rim_level", "/parts/0/floor", "/parts/0/water_level")
	requireLacks(t, f, "settling", "basin-1", "volume_per_occupant", "/parts/0/side_slope", "/parts/0/rim_level", "/parts/0/floor", "/parts/0/water_level")
	requireLacks(t, f, "settling", "basin-1", "sludge_volume", "/parts/0/sludge_depth")
	requireLacks(t, compute(t, settlers(`"rim_level": "10 m", "floor": "9 m", "water_level": "11 m", "side_slope": "200 %",`)), "settling", "basin-1", "volume", "/parts/0/water_level")
	requireLacks(t, compute(t, settlers(`"rim_level": "10 m", "floor": "9 m", "water_level": "9.8 m", "side_slope": "50 %",`)), "settling", "basin-1", "volume", "/parts/0/side_slope")
}

// TestNoLaundryNoSurge: a basin that no laundry drains to has no surge.
func TestNoLaundryNoSurge(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3",`).with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "basin-1"}]`}))
	requireKnown(t, f, "settling", "basin-1", map[string]any{"surge_rate": 0.0, "surge_surface_loading": 0.0})
	requireLacks(t, f, "settling", "basin-1", "smallest_grain_kept_in_surge", "/sources")
}

func TestASurgeOfUnknownRate(t *testing.T) {
	without := settlers(`"volume": "6 m3",`)
	without["sources"] = strings.Replace(without["sources"], `, "discharge_rate": "20 L/min"`, ``, 1)
	requireLacks(t, compute(t, without), "settling", "basin-1", "surge_rate", "/sources/1/discharge_rate")
}
