package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// pouring is a washer of 60 L and a shower that lead to part-1.
func pouring(part string) entries {
	return entries{
		"sources": `[{"id": "washer-1", "kind": "clothes washer", "to": "part-1", "volume_per_use": "60 L"}, {"id": "shower-1", "kind": "shower", "to": "part-1"}]`,
		"parts": `[{"id": "part-1", ` + part + `},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]},
			{"id": "tank-1", "kind": "surge tank", "inlet_level": "9.55 m", "water_level": "9.5 m", ` + square + `},
			{"id": "tank-2", "kind": "surge tank", "inlet_level": "9.7 m", "water_level": "9.5 m", ` + square + `}]`,
	}
}

const square = `"outline": [[1, 1], [2, 1], [2, 2], [1, 2]]` // 1 m²

// tank80 has room for 80 L: 1 m² × (9.58 m − 9.5 m). What it holds below does not count.
const tank80 = `"kind": "surge tank", "volume": "300 L", "inlet_level": "9.58 m", "water_level": "9.5 m", ` + square

const plot = `"outline": [[14, 28], [20, 28], [20, 31], [14, 31]]` // 18 m²

func TestSurges(t *testing.T) {
	tests := map[string]struct {
		part string
		want map[string]any
	}{
		"a tank": {tank80, map[string]any{
			"kind": "clothes washer", "surge_volume": 0.06, "first_parts": "part-1", "meets_holding": true, "room": 0.08, "share_of_room": 0.06 / 0.08}},
		"a bed": {`"kind": "planted gravel bed", "floor": "9 m", "surface": "9.6 m", "water_level": "9.5 m", "media": [{"material": "gravel", "porosity": "40 %"}], ` + plot,
			map[string]any{"room": 18 * 0.4 * (9.6 - 9.5), "share_of_room": 0.06 / (18 * 0.4 * (9.6 - 9.5))}},
		"a settling basin": {`"kind": "settling basin", "inlet_level": "9.6 m", "water_level": "9.55 m", ` + plot,
			map[string]any{"room": 18 * (9.6 - 9.55), "share_of_room": 0.06 / (18 * (9.6 - 9.55))}},
		"mulch alone":           {`"kind": "mulch basin", ` + plot, map[string]any{"first_parts": "part-1", "meets_holding": false}},
		"a filter before it":    {`"kind": "filter", "at": [1, 1], "to": "tank-1"`, map[string]any{"first_parts": "tank-1", "room": 0.05, "share_of_room": 0.06 / 0.05}},
		"the fuller of two":     {`"kind": "filter", "at": [1, 1], "to": [{"target": "tank-1", "share": "10 %"}, {"target": "tank-2", "share": "90 %"}]`, map[string]any{"first_parts": "tank-1, tank-2", "room": 0.2, "share_of_room": 0.9 * 0.06 / 0.2}},
		"a tank beside mulch":   {`"kind": "filter", "at": [1, 1], "to": [{"target": "basin-1"}, {"target": "tank-1"}]`, map[string]any{"first_parts": "basin-1, tank-1", "room": 0.05, "share_of_room": 0.5 * 0.06 / 0.05}},
		"not into its overflow": {tank80 + `, "to": "tank-2", "overflow_to": "tank-1"`, map[string]any{"first_parts": "part-1"}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, pouring(tt.part))
			require.Equal(t, []string{"washer-1"}, subjects(f, "surges"))
			requireKnown(t, f, "surges", "washer-1", tt.want)
		})
	}
}

func TestSurgesWithoutEntries(t *testing.T) {
	tests := map[string]struct {
		part  string
		lacks []string
	}{
		"a tank's outline":  {`"kind": "surge tank", "volume": "80 L", "inlet_level": "9.58 m", "water_level": "9.5 m", "at": [1, 1]`, []string{"/parts/0/outline"}},
		"a tank's levels":   {`"kind": "surge tank", "volume": "80 L", ` + square, []string{"/parts/0/inlet_level", "/parts/0/water_level"}},
		"a full tank":       {`"kind": "surge tank", "volume": "80 L", "inlet_level": "9.5 m", "water_level": "9.5 m", ` + square, []string{"/parts/0/water_level"}},
		"the bed's media":   {`"kind": "planted gravel bed", ` + plot, []string{"/parts/0/media"}},
		"levels of a basin": {`"kind": "settling basin", ` + plot, []string{"/parts/0/inlet_level", "/parts/0/water_level"}},
		"room above water":  {`"kind": "settling basin", "inlet_level": "9.5 m", "water_level": "9.5 m", ` + plot, []string{"/parts/0/water_level"}},
		"a way on":          {`"kind": "filter", "at": [1, 1]`, []string{"/parts/0/to"}},
		"a part that holds": {`"kind": "mulch basin", ` + plot, []string{"/sources/0/to"}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, pouring(tt.part))
			requireLacks(t, f, "surges", "washer-1", "room", tt.lacks...)
			requireLacks(t, f, "surges", "washer-1", "share_of_room", tt.lacks...)
		})
	}
	f := compute(t, pouring(`"kind": "filter", "at": [1, 1]`))
	requireLacks(t, f, "surges", "washer-1", "first_parts", "/parts/0/to")
	requireLacks(t, f, "surges", "washer-1", "meets_holding", "/parts/0/to")
	f = compute(t, pouring(tank80).with(entries{"sources": `[{"id": "washer-1", "kind": "clothes washer", "to": "part-1"}]`}))
	requireLacks(t, f, "surges", "washer-1", "surge_volume", "/sources/0/volume_per_use")
	requireLacks(t, f, "surges", "washer-1", "share_of_room", "/sources/0/volume_per_use")
}
