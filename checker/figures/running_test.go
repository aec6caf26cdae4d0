package figures_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// TestAnyBedHasSoundFigures: whatever its entries, down to 0 and up to the
// format's bounds, each figure is finite or names what it lacks.
func TestAnyBedHasSoundFigures(t *testing.T) {
	lengths := []string{"0 m", "1 um", "0.1 m", "0.5 m", "10000 m"}
	shares := []string{"0 %", "0.001 %", "40 %", "100 %"}
	conductivities := []string{"0 m/d", "0.000001 m/d", "7500 m/d", "1000000000 m/d"}
	temperatures := []string{"-80 °C", "-10 °C", "0 °C", "20 °C", "70 °C"}
	levels := []string{"-10000 m", "9.4 m", "9.9 m", "10 m", "10000 m"}
	rapid.Check(t, func(t *rapid.T) {
		text := ""
		maybe := func(name string, of []string) {
			if rapid.IntRange(0, 5).Draw(t, "drawn") > 0 {
				text += fmt.Sprintf(`, %q: %q`, name, rapid.SampledFrom(of).Draw(t, name))
			}
		}
		maybe("mulch", lengths)
		entry := text + `, "media": [`
		for i := range rapid.IntRange(1, 3).Draw(t, "layers") {
			text = ""
			maybe("size", []string{"0 m", "1 mm", "9 mm", "0.5 in", "128 mm", "10 m"})
			maybe("thickness", lengths)
			maybe("porosity", shares)
			maybe("conductivity", conductivities)
			entry += map[bool]string{true: ", "}[i > 0] + `{"material": "gravel"` + text + `}`
		}
		text = ""
		maybe("mean_annual_temperature", temperatures)
		maybe("snow_depth", lengths)
		site := weather(rapid.SampledFrom(temperatures).Draw(t, "cold"), rapid.SampledFrom(temperatures).Draw(t, "warm"), text)
		e := wetBed(site, entry+`], "plants": [{"species": "Typha latifolia"}]`)
		e["parts"] = relevelled(t, e["parts"], levels)
		for _, l := range compute(t, e).Lists {
			for _, item := range l.Items {
				for k, field := range l.List.Fields {
					requireSound(t, field, &item.Values[k])
				}
			}
		}
	})
}

// relevelled gives the bed of wetBed other levels.
func relevelled(t *rapid.T, parts string, levels []string) string {
	draw := func(name string) string { return rapid.SampledFrom(levels).Draw(t, name) }
	return strings.NewReplacer(`"floor": "9.4 m"`, `"floor": "`+draw("floor")+`"`, `"surface": "10 m"`, `"surface": "`+draw("surface")+`"`,
		`"water_level": "9.9 m"`, `"water_level": "`+draw("water")+`"`).Replace(parts)
}

// TestMorePoresHoldWaterForLonger: with the porosity, the detention rises and the
// area wanted falls in proportion.
func TestMorePoresHoldWaterForLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		percent := rapid.IntRange(10, 45).Draw(t, "percent")
		of := func(percent int) (detention, area float64) {
			f := compute(t, wetBed(weather("6 °C", "15 °C", ""), fmt.Sprintf(`, "media": [{"material": "gravel", "porosity": "%d %%"}]`, percent)))
			return known(t, f, "bed_flow", "bed-1", "least_detention").(float64), known(t, f, "bed_areas", "bed-1, EPA 1993", "greatest_wanted").(float64)
		}
		detention, area := of(percent)
		twice, half := of(2 * percent)
		require.InEpsilon(t, 2*detention, twice, 1e-9)
		require.InEpsilon(t, area/2, half, 1e-9)
	})
}
