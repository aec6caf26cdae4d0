package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const coldSite = `{"frost_depth": "0.9 m", "freezing_months": ["jan"]}`

// wintry is level ground at 10 m that freezes 0.9 m deep, a diverter, and pipes
// of 0.1 m.
func wintry(more, insulation string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"levels": [[0, 0, 10], [60, 0, 10], [60, 40, 10], [0, 40, 10]], "climate": ` + coldSite + `}`,
		"parts": `[
			{"id": "diverter-1", "kind": "diverter", "at": [1, 1], "level": "9.5 m", "to": "pipe-1", "bypass_to": "pipe-2"},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [6, 1]], "diameter": "0.1 m", "inverts": ["9.5 m", "9.2 m"], "to": "bed-1"},
			{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "water_level": "9.3 m", "to": "basin-1"},
			{"id": "pipe-2", "kind": "drain pipe", "path": [[1, 1], [1, 6]], "diameter": "0.1 m", "inverts": ["9.4 m", "9.1 m"], "to": "sewer-1"` + insulation + `},
			{"id": "sewer-1", "kind": "sewer connection", "at": [1, 6], "level": "9.0 m"},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}` + more + `
		]`,
	}
}

func TestPipesInTheFrost(t *testing.T) {
	f := compute(t, wintry(``, ``))
	requireKnown(t, f, "pipe_winter", "pipe-1", map[string]any{"on_second_route": false, "frost_depth": 0.9})
	requireKnown(t, f, "pipe_winter", "pipe-2", map[string]any{
		"on_second_route": true,
		"insulated_cover": 10 - 9.4 - 0.1,
		"below_frost":     10 - 9.4 - 0.1 - 0.9,
		"winter":          "in the frost",
	})
}

func TestWhatTheColdSeasonDoesToAPipe(t *testing.T) {
	without := func(e entries, climate string) entries {
		e["site"] = strings.Replace(e["site"], coldSite, climate, 1)
		return e
	}
	const mild = `{"frost_depth": "0 m", "freezing_months": []}`
	for want, e := range map[string]entries{
		"in the frost":    wintry(``, `, "heated": false`),
		"below the frost": wintry(``, `, "insulation": "2 in"`), // 0.5 m + 2 × 0.3048 m
		"never freezes":   wintry(``, `, "heated": true`),
	} {
		requireKnown(t, compute(t, e), "pipe_winter", "pipe-2", map[string]any{"winter": want})
	}
	requireKnown(t, compute(t, without(wintry(``, ``), mild)), "pipe_winter", "pipe-2", map[string]any{"winter": "never freezes"})

	f := compute(t, without(wintry(``, ``), `{"freezing_months": ["jan"]}`))
	requireLacks(t, f, "pipe_winter", "pipe-2", "winter", "/site/climate/frost_depth")
	f = compute(t, without(wintry(``, ``), `{"frost_depth": "0.9 m"}`))
	requireLacks(t, f, "pipe_winter", "pipe-2", "winter", "/site/climate/freezing_months")
	f = compute(t, without(wintry(``, `, "heated": true`), `{}`))
	requireKnown(t, f, "pipe_winter", "pipe-2", map[string]any{"winter": "never freezes"})
}

// TestInsulationCountsAsSoil: Alaska Administrative Code 18 AAC 72.630 (c), note:
// 1 in of insulation takes the place of 1 ft of soil.
func TestInsulationCountsAsSoil(t *testing.T) {
	f := compute(t, wintry(``, `, "insulation": "1 in"`))
	requireKnown(t, f, "pipe_winter", "pipe-2", map[string]any{
		"insulated_cover": 10 - 9.4 - 0.1 + 0.3048,
		"below_frost":     10 - 9.4 - 0.1 + 0.3048 - 0.9,
	})
}

func TestInsulationInTheOpenAirIsNoSoil(t *testing.T) {
	f := compute(t, wintry(`, {"id": "pipe-3", "kind": "drain pipe", "path": [[1, 1], [1, 6]], "diameter": "0.1 m", "inverts": ["10.4 m", "9.1 m"], "insulation": "1 in", "to": "sewer-1"}`, ``))
	requireKnown(t, f, "pipe_winter", "pipe-3", map[string]any{"insulated_cover": 10 - 10.4 - 0.1})
}

func TestFrostNotShown(t *testing.T) {
	f := compute(t, entries{"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[1, 1], [6, 1]], "inverts": ["9 m", "8 m"], "diameter": "0.1 m"}]`})
	requireLacks(t, f, "pipe_winter", "pipe-1", "below_frost", "/site/levels", "/site/climate/frost_depth")
	requireLacks(t, f, "pipe_winter", "pipe-1", "winter", "/site/climate/freezing_months", "/site/levels", "/site/climate/frost_depth")
}

func TestWaterThatStaysInAPipe(t *testing.T) {
	pipe := func(to, inverts string) string {
		return `, {"id": "p", "kind": "drain pipe", "path": [[1, 1], [2, 1], [3, 1]], "inverts": [` + inverts + `], "to": ` + to + `}`
	}
	tests := map[string]struct {
		more, subject string
		want          float64
	}{
		"none beyond mulch":              {pipe(`"basin-1"`, `"9 m", "8 m", "7 m"`), "p reach 2", 0},
		"none into a connection":         {pipe(`"sewer-1"`, `"9.3 m", "9.2 m", "9.1 m"`), "p reach 2", 0},
		"below a connection":             {pipe(`"sewer-1"`, `"9.3 m", "9.2 m", "8.8 m"`), "p reach 2", 9.0 - 8.8},
		"below a bed's water":            {pipe(`"bed-1"`, `"9.5 m", "9.25 m", "9.2 m"`), "p reach 2", 9.3 - 9.2},
		"and as far up as it reaches":    {pipe(`"bed-1"`, `"9.5 m", "9.25 m", "9.2 m"`), "p reach 1", 9.3 - 9.25},
		"before a reach that rises":      {pipe(`"basin-1"`, `"9 m", "8 m", "8.4 m"`), "p reach 1", 8.4 - 8},
		"before a pipe that is higher":   {pipe(`"pipe-1"`, `"9.9 m", "9.6 m", "9.4 m"`), "p reach 2", 9.5 - 9.4},
		"by the easier of two ways":      {pipe(`[{"target": "bed-1"}, {"target": "basin-1"}]`, `"9.5 m", "9.25 m", "9.2 m"`), "p reach 2", 0},
		"before a diverter, as bypassed": {pipe(`"diverter-1"`, `"9.9 m", "9.6 m", "9.45 m"`), "p reach 2", 9.5 - 9.45},
		"none out of the system":         {pipe(`"brook"`, `"9 m", "8 m", "7 m"`), "p reach 1", 0},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			e := wintry(tt.more, ``)
			e["site"] = `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [{"id": "brook", "kind": "stream", "at": [50, 1]}]}`
			requireKnown(t, compute(t, e), "pipe_winter", tt.subject, map[string]any{"standing_water": tt.want})
		})
	}
}

func TestAPipeThatRises(t *testing.T) {
	f := compute(t, wintry(`,
		{"id": "up", "kind": "drain pipe", "path": [[1, 1], [2, 1], [3, 1]], "inverts": ["9 m", "8 m", "8.4 m"], "to": "basin-1"},
		{"id": "unknown", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "to": "basin-1"}`, ``))
	requireKnown(t, f, "pipe_winter", "up reach 1", map[string]any{"rises": true})
	requireKnown(t, f, "pipe_winter", "pipe-1", map[string]any{"rises": false})
	requireLacks(t, f, "pipe_winter", "unknown", "rises", "/parts/7/inverts")
	requireLacks(t, f, "pipe_winter", "unknown", "standing_water", "/parts/7/inverts")
}

func TestStandingWaterNotShown(t *testing.T) {
	f := compute(t, entries{"parts": `[
		{"id": "p", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "inverts": ["9 m", "8 m"], "to": "q"},
		{"id": "q", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "inverts": ["8 m", "7 m"], "to": "tank-1"},
		{"id": "tank-1", "kind": "surge tank", "at": [2, 2], "to": "basin-1"},
		{"id": "r", "kind": "drain pipe", "path": [[1, 1], [2, 1]], "inverts": ["9 m", "8 m"]},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]}
	]`})
	require.Len(t, f.List("pipe_winter"), 3)
	requireLacks(t, f, "pipe_winter", "p", "standing_water", "/parts/2/water_level")
	requireLacks(t, f, "pipe_winter", "r", "standing_water", "/parts/3/to")
}
