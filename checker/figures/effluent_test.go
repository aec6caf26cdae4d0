package figures_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/treatment"
)

// weather is a site's climate whose months have one mean temperature from
// October to March and another from April to September.
func weather(cold, warm, entry string) string {
	var months []string
	for i, m := range []string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"} {
		mean := cold
		if i >= 3 && i < 9 {
			mean = warm
		}
		months = append(months, fmt.Sprintf(`{"month": %q, "mean_temperature": %q}`, m, mean))
	}
	return `, "climate": {"months": [` + strings.Join(months, ", ") + `]` + entry + `}`
}

// The rates and their sources are those of treatment; the arithmetic is done
// here once more.
func TestEffluent(t *testing.T) {
	f := compute(t, wetBed(weather("6 °C", "15 °C", ""), gravel))
	loading := wetFlow / 18 * 86400                 // m/d
	detention := 18 * 0.5 * 0.4 / (wetFlow * 86400) // d
	tests := map[string]map[string]float64{
		// EPA 1993 (remembered): 1.104 d⁻¹ at 20 °C, θ 1.06.
		"EPA 1993": {
			"least_effluent_in_warm": 0.085 * math.Exp(-1.104*math.Pow(1.06, -5)*detention), "greatest_effluent_in_warm": 0.2 * math.Exp(-1.104*math.Pow(1.06, -5)*detention),
			"least_effluent_in_cold": 0.085 * math.Exp(-1.104*math.Pow(1.06, -14)*detention), "greatest_effluent_in_cold": 0.2 * math.Exp(-1.104*math.Pow(1.06, -14)*detention),
		},
		// EPA 1988 (remembered): gravelly sand 0.86 d⁻¹, θ 1.10, porosity 0.35 of its own.
		"EPA 1988, gravelly sand": {"greatest_effluent_in_cold": 0.2 * math.Exp(-0.86*math.Pow(1.1, -14)*18*0.5*0.35/(wetFlow*86400))},
		// EC/EWPCA 1990 (remembered): 0.1 m/d, uncorrected.
		"EC/EWPCA 1990": {"greatest_effluent_in_warm": 0.2 * math.Exp(-0.1/loading), "greatest_effluent_in_cold": 0.2 * math.Exp(-0.1/loading)},
		// Kadlec & Wallace 2009 (remembered): 25 m/yr, θ 0.981, C* 10 mg/L, P 3 between 100 and 200 mg/L.
		"Kadlec & Wallace 2009, BOD 100 to 200 mg/L": {
			"least_inlet": 0.1, "greatest_inlet": 0.2,
			"greatest_effluent_in_cold": 0.01 + 0.19*math.Pow(1+25.0/365*math.Pow(0.981, -14)/(3*loading), -3),
			"least_effluent_in_warm":    0.01 + 0.09*math.Pow(1+25.0/365*math.Pow(0.981, -5)/(3*loading), -3),
		},
		"Kadlec & Wallace 2009, BOD 30 to 100 mg/L": {"least_inlet": 0.085, "greatest_inlet": 0.1, "warm_temperature": 15, "cold_temperature": 6},
	}
	for basis, want := range tests {
		for field, x := range want {
			require.InDelta(t, x, known(t, f, "effluent", "bed-1, "+basis, field), 1e-9, "%s by %s", field, basis)
		}
	}
	require.NotContains(t, subjects(f, "effluent"), "bed-1, Kadlec & Wallace 2009, BOD 3 to 30 mg/L", "no greywater is so weak")
}

// A bed is judged by the months in which it runs, and its water is never colder
// than ice.
func TestWaterOfTheMonthsInWhichTheBedRuns(t *testing.T) {
	e := wetBed(weather("-4 °C", "15 °C", ""), gravel)
	requireKnown(t, compute(t, e), "effluent", "bed-1, EPA 1993", map[string]any{"warm_temperature": 15.0, "cold_temperature": 0.0})
	e["operation"] = `{"bypass_season": {"from": "10-01", "to": "03-31"}}`
	requireKnown(t, compute(t, e), "effluent", "bed-1, EPA 1993", map[string]any{"warm_temperature": 15.0, "cold_temperature": 15.0})
	e["operation"] = `{"bypass_season": {"from": "10-02", "to": "03-31"}}`
	requireKnown(t, compute(t, e), "effluent", "bed-1, EPA 1993", map[string]any{"cold_temperature": 0.0})
	e["operation"] = `{"bypass_season": {"from": "01-01", "to": "12-31"}}`
	requireLacks(t, compute(t, e), "effluent", "bed-1, EPA 1993", "least_effluent_in_cold", "/operation/bypass_season")
}

func TestBedAreas(t *testing.T) {
	f := compute(t, wetBed(weather("6 °C", "15 °C", ""), gravel))
	flow := wetFlow * 86400 // m³/d
	// Everything but the names is remembered or published in treatment; the arithmetic is done here once more.
	tests := map[string][2]float64{
		"Iowa":                       {3 * 300 * 0.3048 * 0.3048, 3 * 300 * 0.3048 * 0.3048}, // r. 567-69.15: 300 ft² for each bedroom
		"Eawag, 5 m² per person":     {20, 20},                                               // 4 occupants
		"Crites 2006":                {18.5 * flow, 18.5 * flow},                             // 18.5 m² for 1 m³/d
		"EPA 2000, effluent 30 mg/L": {flow * 85 / 6, flow * 200 / 6},                        // 6 g/m² a day
		"EC/EWPCA 1990":              {flow / 0.1 * math.Log(85.0/30), flow / 0.1 * math.Log(200.0/30)},
		"EPA 1993": {flow * math.Log(85.0/30) / (1.104 * math.Pow(1.06, -5) * 0.5 * 0.4),
			flow * math.Log(200.0/30) / (1.104 * math.Pow(1.06, -14) * 0.5 * 0.4)},
		// The rate rises in the cold: the least area is that of the cold.
		"Kadlec & Wallace 2009, BOD 100 to 200 mg/L": {
			3 * flow / (25.0 / 365 * math.Pow(0.981, -14)) * (math.Cbrt(90.0/20) - 1), 3 * flow / (25.0 / 365 * math.Pow(0.981, -5)) * (math.Cbrt(190.0/20) - 1)},
	}
	for basis, want := range tests {
		requireKnown(t, f, "bed_areas", "bed-1, "+basis, map[string]any{
			"area": 18.0, "least_wanted": want[0], "greatest_wanted": want[1], "greatest_ratio": 18 / want[0], "least_ratio": 18 / want[1],
		})
	}
}

// Every basis of treatment is there but one that is meant for weaker water, and
// lacks nothing.
func TestEveryBasisOfAnArea(t *testing.T) {
	f := compute(t, wetBed(weather("6 °C", "15 °C", ""), gravel))
	for _, basis := range treatment.Bases() {
		if basis.Name == "Kadlec & Wallace 2009, BOD 3 to 30 mg/L" {
			continue
		}
		least, greatest := known(t, f, "bed_areas", "bed-1, "+basis.Name, "least_wanted").(float64), known(t, f, "bed_areas", "bed-1, "+basis.Name, "greatest_wanted").(float64)
		require.Positive(t, least, basis.Name)
		require.LessOrEqual(t, least, greatest, basis.Name)
		requireKnown(t, f, "bed_areas", "bed-1, "+basis.Name, map[string]any{"source": basis.Source, "standing": basis.Standing, "model": basis.Formula})
	}
}

// A basis lacks what it reads and nothing else.
func TestBasesLackWhatTheyRead(t *testing.T) {
	e := wetBed("", "")
	f := compute(t, e)
	require.NotZero(t, known(t, f, "bed_areas", "bed-1, Iowa", "least_wanted"))
	require.NotZero(t, known(t, f, "bed_areas", "bed-1, Crites 2006", "least_wanted"))
	require.NotZero(t, known(t, f, "bed_areas", "bed-1, EC/EWPCA 1990", "least_wanted"), "its rate is the same in every month")
	requireLacks(t, f, "bed_areas", "bed-1, Kadlec & Wallace 2009, BOD 30 to 100 mg/L", "least_ratio", "/site/climate/months")
	requireLacks(t, f, "bed_areas", "bed-1, EPA 1993", "least_wanted", "/site/climate/months", "/parts/0/media")
	requireLacks(t, f, "bed_areas", "bed-1, EPA 1988, coarse sand", "least_wanted", "/site/climate/months")
	requireLacks(t, f, "effluent", "bed-1, EPA 1993", "least_effluent_in_cold", "/parts/0/media", "/site/climate/months")
	e["sources"] = drip
	f = compute(t, e)
	require.NotZero(t, known(t, f, "bed_areas", "bed-1, Iowa", "least_wanted"))
	requireLacks(t, f, "bed_areas", "bed-1, Crites 2006", "least_wanted", "/sources")
}

// The laundry alone is so strong that Kadlec & Knight's background lies above
// 30 mg/L: 3.5 + 0.053 × 502 mg/L.
func TestNoAreaGivesTheEffluent(t *testing.T) {
	e := wetBed(weather("6 °C", "15 °C", ""), gravel)
	e["sources"] = `[{"id": "washer-1", "kind": "clothes washer", "to": "bed-1"}]`
	lacks := value(t, compute(t, e), "bed_areas", "bed-1, Kadlec & Knight 1996", "greatest_wanted").Lacks
	require.Len(t, lacks, 1)
	require.Contains(t, lacks[0].Entry, "no area gives it")
}
