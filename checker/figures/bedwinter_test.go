package figures_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBedInWinter(t *testing.T) {
	mulched := gravel + `, "mulch": "150 mm"`
	f := compute(t, wetBed(weather("-10 °C", "15 °C", `, "mean_annual_temperature": "4 °C", "snow_depth": "300 mm"`), mulched))
	// 0.1 m of dry gravel lies over 0.5 m that stands in water. Conductivities of Crites, Middlebrooks & Reed 2006, ch. 7 (remembered).
	bare := 1 / (0.15/0.05 + 0.1/1.5 + 0.5/2.0)
	snowed := 1 / (0.3/0.23 + 0.15/0.05 + 0.1/1.5 + 0.5/2.0)
	tests := map[string]struct{ conductance, inlet float64 }{
		"bed-1 without snow, water as it leaves the house":    {bare, 31},
		"bed-1 without snow, water cooled to the year's mean": {bare, 4},
		"bed-1 with snow, water as it leaves the house":       {snowed, 31},
		"bed-1 with snow, water cooled to the year's mean":    {snowed, 4},
	}
	for subject, tt := range tests {
		outlet := -10 + (tt.inlet+10)*math.Exp(-tt.conductance*18/(4.215e6*wetFlow))
		requireKnown(t, f, "bed_winter", subject, map[string]any{
			"inlet_temperature": tt.inlet, "coldest_month": "January", "bypassed": false, "air_temperature": -10.0,
			"conductance": tt.conductance, "outlet_temperature": outlet, "freezes": outlet < 0,
		})
	}
	require.Len(t, f.List("bed_winter"), len(tests))
}

// Under bare gravel the linear form of the manuals falls below the air's own
// temperature; the exponential form never does, and the bed freezes.
func TestBareGravelFreezes(t *testing.T) {
	f := compute(t, wetBed(weather("-10 °C", "15 °C", `, "mean_annual_temperature": "4 °C"`), gravel+`, "mulch": "0 mm"`))
	subject := "bed-1 without snow, water cooled to the year's mean"
	require.Greater(t, known(t, f, "bed_winter", subject, "outlet_temperature"), -10.0)
	u := 1 / (0.1/1.5 + 0.5/2.0)
	require.Less(t, 4-u*18*(4+10)/(4.215e6*wetFlow), -10.0, "the linear form")
	requireKnown(t, f, "bed_winter", subject, map[string]any{"freezes": true, "thawed_share": 4.215e6 * wetFlow / u * math.Log(14.0/10) / 18})
}

func TestMildWinter(t *testing.T) {
	e := wetBed(weather("2 °C", "15 °C", ""), gravel+`, "mulch": "0 mm"`)
	e["operation"] = `{"bypass_season": {"from": "12-15", "to": "02-15"}}`
	requireKnown(t, compute(t, e), "bed_winter", "bed-1 without snow, water as it leaves the house", map[string]any{"freezes": false, "thawed_share": 1.0, "bypassed": true})
}

func TestWinterLacks(t *testing.T) {
	subject := "bed-1 with snow, water cooled to the year's mean"
	f := compute(t, wetBed("", gravel))
	requireLacks(t, f, "bed_winter", subject, "conductance", "/parts/0/mulch", "/site/climate/snow_depth")
	requireLacks(t, f, "bed_winter", subject, "inlet_temperature", "/site/climate/mean_annual_temperature")
	requireLacks(t, f, "bed_winter", subject, "freezes", "/site/climate/mean_annual_temperature", "/site/climate/months", "/parts/0/mulch", "/site/climate/snow_depth")
	f = compute(t, wetBed(`, "climate": {"months": [{"month": "jan", "mean_temperature": "1 °C"}]}`, gravel))
	require.Contains(t, value(t, f, "bed_winter", subject, "coldest_month").Lacks[0].Entry, "February to December")
	f = compute(t, wetBed(weather("-70 °C", "15 °C", ""), gravel+`, "mulch": "0 mm"`))
	requireLacks(t, f, "bed_winter", "bed-1 without snow, water as it leaves the house", "outlet_temperature", "/site/climate")
}
