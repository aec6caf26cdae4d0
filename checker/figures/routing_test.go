package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// routed is yardDrain with the storm inflow's time of concentration, steep sides,
// a crest at a level and a storm of a duration.
func routed(crest, duration string) entries {
	e := yardDrain(`"side_slope": "10000 %", "overflow_to": "spill-1"`, strings.Replace(brink, `"9.6 m"`, `"`+crest+`"`, 1))
	e["parts"] = strings.Replace(e["parts"], `"catchment"`, `"time_of_concentration": "10 min", "catchment"`, 1)
	e["site"] = strings.Replace(e["site"], "30 min", duration, 1)
	return e
}

// TestAStormThatThePondHolds: with the crest out of reach, 3 L/s over 30 min raise
// the water by 5.4 m³. At a level the pond is 10 m × 5 m less twice 0.01 of the depth
// below the rim.
func TestAStormThatThePondHolds(t *testing.T) {
	f := compute(t, routed("9.99 m", "30 min"))
	requireKnown(t, f, "routing", "pond-1", map[string]any{
		"kind": "pond", "storm_volume": 0.003 * 1800, "stays_under_rim": true, "peak_outflow": 0.0, "outflow_to_inflow": 0.0,
	})
	stage := known(t, f, "routing", "pond-1", "peak_surface").(float64)
	area := func(level float64) float64 { return (10 - 0.02*(10-level)) * (5 - 0.02*(10-level)) }
	require.InDelta(t, 5.4, (stage-9.5)/6*(area(9.5)+4*area((9.5+stage)/2)+area(stage)), 1e-6)
	requireKnown(t, f, "routing", "pond-1", map[string]any{"freeboard": 10 - stage})
	require.InDelta(t, 0.003, known(t, f, "routing", "pond-1", "peak_inflow"), 1e-12)
}

// TestALongStorm fills the pond until as much runs out as comes in.
func TestALongStorm(t *testing.T) {
	f := compute(t, routed("9.6 m", "2 d"))
	require.InEpsilon(t, 0.003, known(t, f, "routing", "pond-1", "peak_outflow"), 0.001)
	require.InDelta(t, 9.6+rectangularHead(0.003), known(t, f, "routing", "pond-1", "peak_surface"), 0.001)
	require.InDelta(t, 1, known(t, f, "routing", "pond-1", "outflow_to_inflow"), 0.001)
}

// TestAPondTooSmallToStore lets out what comes in.
func TestAPondTooSmallToStore(t *testing.T) {
	e := routed("9.6 m", "200 d")
	f := compute(t, e)
	requireKnown(t, f, "routing", "pond-1", map[string]any{"outflow_to_inflow": 1.0, "stays_under_rim": true, "peak_surface": 9.6 + rectangularHead(0.003)})
	e["site"] = strings.Replace(e["site"], "36 mm/h", "36000 mm/h", 1)
	requireKnown(t, compute(t, e), "routing", "pond-1", map[string]any{"stays_under_rim": false})
}

// TestAShortStorm is damped: less runs out, and it stands lower, than if the pond
// stored none.
func TestAShortStorm(t *testing.T) {
	f := compute(t, routed("9.55 m", "30 min"))
	out := known(t, f, "routing", "pond-1", "peak_outflow").(float64)
	require.Positive(t, out)
	require.Less(t, out, 0.003)
	require.Less(t, known(t, f, "routing", "pond-1", "peak_surface"), known(t, f, "water_levels", "pond-1", "storm_surface"))
}

func TestAStormOverTheRim(t *testing.T) {
	e := routed("9.99 m", "2 d")
	e["site"] = strings.Replace(e["site"], "36 mm/h", "360 mm/h", 1)
	f := compute(t, e)
	requireKnown(t, f, "routing", "pond-1", map[string]any{"stays_under_rim": false})
	requireLacks(t, f, "routing", "pond-1", "peak_surface", "/parts/1/rim_level")
	require.Negative(t, known(t, f, "water_levels", "pond-1", "storm_freeboard"))
}

func TestWhatRoutingLacks(t *testing.T) {
	whole := routed("9.6 m", "30 min")
	without := func(name, entry string) entries {
		require.Contains(t, whole[name], entry)
		return whole.with(entries{name: strings.Replace(whole[name], entry, "", 1)})
	}
	requireLacks(t, compute(t, without("site", `, "duration": "30 min"`)), "routing", "pond-1", "storm_volume", "/site/climate/design_storm/duration")
	requireLacks(t, compute(t, without("parts", `"time_of_concentration": "10 min", `)), "routing", "pond-1", "peak_surface", "/parts/0/time_of_concentration")
	requireLacks(t, compute(t, without("parts", `"side_slope": "10000 %", `)), "routing", "pond-1", "peak_surface", "/parts/1/side_slope")
	requireLacks(t, compute(t, without("parts", `, "overflow_to": "spill-1"`)), "routing", "pond-1", "peak_surface", "/parts/1/overflow_to")
	dry := whole.with(entries{"site": strings.Replace(whole["site"], "36 mm/h", "0 mm/h", 1)})
	requireLacks(t, compute(t, dry), "routing", "pond-1", "peak_inflow", "/site/climate/design_storm/intensity")
}
