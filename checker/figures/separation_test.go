package figures_test

import "testing"

// soaking is a mulch basin in ground that rises from 10 m at x = 0 to 10.6 m at
// x = 6.
func soaking(soil, basin string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"levels": [[0, 0, 10], [60, 0, 16], [60, 40, 16], [0, 40, 10]]` + soil + `}`,
		"parts": `[{"id": "basin-1", "kind": "mulch basin", "outline": [[2, 2], [6, 2], [6, 4], [2, 4]]` + basin + `}]`,
	}
}

func TestHeightAboveGroundwaterAndRock(t *testing.T) {
	const soil = `, "soil": {"groundwater_depth": "2 m", "bedrock_depth": "0.9 m"}`
	for basin, bottom := range map[string]float64{
		`, "depth": "0.4 m"`: 0.4,
		`, "floor": "9.8 m"`: 10.6 - 9.8, // at the uphill edge
		`, "floor": "10 m", "edge_levels": ["10.5 m", "10.7 m", "10.7 m", "10.5 m"]`: 10.7 - 10,
		`, "depth": "1.2 m"`:                   1.2,
		`, "depth": "0.4 m", "floor": "9.8 m"`: 10.6 - 9.8, // the deeper of two that differ
		`, "depth": "1.2 m", "floor": "9.8 m"`: 1.2,
	} {
		requireKnown(t, compute(t, soaking(soil, basin)), "soakage", "basin-1", map[string]any{
			"bottom_depth": bottom, "above_groundwater": 2 - bottom, "above_bedrock": 0.9 - bottom,
		})
	}
}

// TestDepthOfATrenchDrawnAsALine: the ground under its middle line rises to 10.6 m.
func TestDepthOfATrenchDrawnAsALine(t *testing.T) {
	e := soaking(`, "soil": {"groundwater_depth": "2 m"}`, ``)
	for more, bottom := range map[string]float64{`"floor": "9.8 m"`: 10.6 - 9.8, `"depth": "0.4 m", "floor": "9.8 m"`: 10.6 - 9.8, `"depth": "0.4 m"`: 0.4} {
		e["parts"] = `[{"id": "trench-1", "kind": "infiltration trench", "path": [[2, 2], [6, 2]], "width": "0.5 m", ` + more + `}]`
		requireKnown(t, compute(t, e), "soakage", "trench-1", map[string]any{"bottom_depth": bottom, "above_groundwater": 2 - bottom})
	}
}

func TestHeightAboveGroundwaterNotShown(t *testing.T) {
	f := compute(t, soaking(``, ``))
	requireLacks(t, f, "soakage", "basin-1", "bottom_depth", "/parts/0/depth")
	requireLacks(t, f, "soakage", "basin-1", "above_groundwater", "/site/soil/groundwater_depth", "/parts/0/depth")
	requireLacks(t, f, "soakage", "basin-1", "above_bedrock", "/site/soil/bedrock_depth", "/parts/0/depth")

	f = compute(t, soaking(`, "soil": {"groundwater_depth": "2 m"}`, `, "depth": "0.4 m"`))
	requireKnown(t, f, "soakage", "basin-1", map[string]any{"above_groundwater": 2 - 0.4})
	requireLacks(t, f, "soakage", "basin-1", "above_bedrock", "/site/soil/bedrock_depth")
}
