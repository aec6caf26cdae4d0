package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestDiggingABed: 0.7 m of level ground over the floor; the gravel's surface does not
// matter. A loam swells to 1.25 of its volume and is compacted to 0.90 (U.S. Army FM 5-434, common earth, as
// tabulated in a review course).
func TestDiggingABed(t *testing.T) {
	f := compute(t, laid(``, `, "depth": "0.6 m"`))
	requireKnown(t, f, "quantities.excavation", "bed-1", map[string]any{
		"kind": "planted gravel bed", "volume": 18 * 0.7, "volume_by": "levels of the ground and the floor", "soil_read_as": "common earth", "loose_volume": 18 * 0.7 * 1.25, "compacted_volume": 18 * 0.7 * 0.90})
	requireKnown(t, f, "quantities.excavation", "trench-1", map[string]any{"volume": 10 * 0.6, "volume_by": "depth as drawn"})
}

// TestDiggingOnASlope: ground that falls 1 m over 20 m in x from 10 m; a bed from x = 10
// to 16 with its floor at 9 m is dug 0.5 m deep at one end and 0.2 m at the other.
func TestDiggingOnASlope(t *testing.T) {
	e := laid(``, ``)
	e["site"] = siteWith(`"levels": [[0, 0, 10], [60, 0, 7], [60, 40, 7], [0, 40, 10]]`)
	e["parts"] = `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "floor": "9 m"}]`
	requireKnown(t, compute(t, e), "quantities.excavation", "bed-1", map[string]any{"volume": 18 * (0.5 + 0.2) / 2})

	// A floor that follows the ground down 0.3 m, 0.4 m under it.
	e["parts"] = `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "floor": ["9.1 m", "8.8 m", "8.8 m", "9.1 m"]}]`
	requireKnown(t, compute(t, e), "quantities.excavation", "bed-1", map[string]any{"volume": 18 * 0.4})
}

// TestNothingIsDugAboveGround leaves out what stands on it.
func TestNothingIsDugAboveGround(t *testing.T) {
	e := laid(`, "above_ground": true`, ``)
	require.Equal(t, []string{"trench-1"}, subjects(compute(t, e), "quantities.excavation"))
}

func TestWhatDiggingLacks(t *testing.T) {
	f := compute(t, laid(``, ``))
	requireLacks(t, f, "quantities.excavation", "trench-1", "volume", "/parts/1/depth")
	requireLacks(t, f, "quantities.excavation", "trench-1", "volume_by", "/parts/1/depth")

	e := laid(``, ``)
	e["site"] = bare["site"]
	f = compute(t, e)
	requireLacks(t, f, "quantities.excavation", "bed-1", "volume", "/parts/0/edge_levels")
	requireLacks(t, f, "quantities.excavation", "bed-1", "soil_read_as", "/site/soil/texture")
	requireLacks(t, f, "quantities.excavation", "bed-1", "loose_volume", "/parts/0/edge_levels", "/site/soil/texture")

	e["parts"] = `[{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]]},
		{"id": "tank-1", "kind": "surge tank", "at": [20, 20]}]`
	f = compute(t, e)
	requireLacks(t, f, "quantities.excavation", "bed-1", "volume", "/parts/0/floor")
	requireLacks(t, f, "quantities.excavation", "tank-1", "volume", "/parts/1/outline")
}

// TestDiggingOutOfRange: a floor over the ground is no cut, and no table here has gravel
// swell.
func TestDiggingOutOfRange(t *testing.T) {
	e := laid(``, ``)
	e["site"] = siteWith(`"levels": [[0, 0, 9], [60, 0, 9], [60, 40, 9], [0, 40, 9]], "soil": {"texture": "gravel"}`)
	f := compute(t, e)
	requireLacks(t, f, "quantities.excavation", "bed-1", "volume", "/parts/0/floor")
	require.Equal(t, "a floor of bed-1 below the ground everywhere", value(t, f, "quantities.excavation", "bed-1", "volume").Lacks[0].Entry)
	requireLacks(t, f, "quantities.excavation", "bed-1", "soil_read_as", "/site/soil/texture")
	require.Contains(t, value(t, f, "quantities.excavation", "bed-1", "soil_read_as").Lacks[0].Entry, "within the range of")
}

// TestDiggingAPondInASlope: a pond of 8 m × 6 m at its rim, 1 m deep, its sides 1:1, in
// level ground at the rim is a frustum of a pyramid's kind, (48 + 4 × 35 + 24) × 1 ÷ 6;
// 0.5 m more ground on top adds (48 + 4 × 55.25 + 63) × 0.5 ÷ 6.
func TestDiggingAPondInASlope(t *testing.T) {
	pond := func(ground string) entries {
		return entries{
			"site":  siteWith(`"levels": [[0, 0, ` + ground + `], [60, 0, ` + ground + `], [60, 40, ` + ground + `], [0, 40, ` + ground + `]]`),
			"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[20, 10], [28, 10], [28, 16], [20, 16]], "rim_level": "10 m", "floor": "9 m", "side_slope": "1:1"}]`,
		}
	}
	frustum := (48 + 4*35 + 24) * 1.0 / 6
	requireKnown(t, compute(t, pond("10")), "quantities.excavation", "pond-1", map[string]any{"volume": frustum, "volume_by": "spot levels of the ground, floor and sides"})
	requireKnown(t, compute(t, pond("10.5")), "quantities.excavation", "pond-1", map[string]any{"volume": frustum + (48+4*55.25+63)*0.5/6})
}

// TestABankRoundAPond: ground at 9.5 m; a pond of 8 m × 6 m at its rim at 10 m, its floor at
// 9 m and its sides 1:1, in a bank 1 m wide on top whose outside falls 1:2. The bank as a
// solid is a frustum of 10 × 8, 11 × 9 and 12 × 10 m, 0.5 m high; the pond takes 8 × 6, 7.5 ×
// 5.5 and 7 × 5 m out of it. Common earth is compacted to 0.90 of its volume.
func TestABankRoundAPond(t *testing.T) {
	banked := func(more string) entries {
		return entries{
			"site": siteWith(`"levels": [[0, 0, 9.5], [60, 0, 9.5], [60, 40, 9.5], [0, 40, 9.5]], "soil": {"texture": "loam"}`),
			"parts": `[{"id": "pond-1", "kind": "pond", "outline": [[20, 10], [28, 10], [28, 16], [20, 16]], "rim_level": "10 m", "floor": "9 m", "side_slope": "1:1",
				"embankment": {"top_level": "10 m", "top_width": "1 m"` + more + `}}]`,
		}
	}
	fill := (10*8+4*11*9+12*10)*0.5/6 - (8*6+4*7.5*5.5+7*5)*0.5/6
	dug := (7*5 + 4*6.5*4.5 + 6*4) * 0.5 / 6
	requireKnown(t, compute(t, banked(`, "outside_slope": "1:2"`)), "quantities.excavation", "pond-1", map[string]any{"volume": dug, "fill": fill, "left_over": dug - fill/0.90})
	requireLacks(t, compute(t, banked(``)), "quantities.excavation", "pond-1", "fill", "/parts/0/embankment/outside_slope")

	hill := banked(`, "outside_slope": "1:2"`)
	hill["site"] = siteWith(`"levels": [[0, 0, 9.5], [60, 0, 11], [60, 40, 11], [0, 40, 9.5]], "soil": {"texture": "loam"}`)
	requireLacks(t, compute(t, hill), "quantities.excavation", "pond-1", "fill", "/parts/0/embankment")
	plain := compute(t, laid(``, ``))
	requireKnown(t, plain, "quantities.excavation", "bed-1", map[string]any{"fill": 0.0, "left_over": 18 * 0.7})
}
