package figures_test

import "testing"

// dugIn is a basin of 2 by 2 m, 0.3 m deep, with tests of the soil.
func dugIn(tests string) entries {
	return entries{
		"site":  siteWith(`"soil": {"texture": "loam"` + tests + `}`),
		"parts": `[{"id": "basin-1", "kind": "mulch basin", "depth": "0.3 m", "outline": [[10, 10], [12, 10], [12, 12], [10, 12]]}]`,
	}
}

func TestSoilTestDistance(t *testing.T) {
	tests := map[string]struct {
		tests string
		away  float64
	}{
		"beside it":           {`{"id": "a", "kind": "test pit", "at": [15, 16], "depth": "1 m"}`, 5},
		"in it":               {`{"id": "a", "kind": "test pit", "at": [11, 11], "depth": "1 m"}`, 0},
		"the nearer":          {`{"id": "a", "kind": "boring", "at": [30, 11], "depth": "1 m"}, {"id": "b", "kind": "test pit", "at": [20, 11], "depth": "0.4 m"}`, 8},
		"one too shallow":     {`{"id": "a", "kind": "test pit", "at": [11, 11], "depth": "0.3 m"}, {"id": "b", "kind": "test pit", "at": [20, 11], "depth": "0.4 m"}`, 8},
		"one without a place": {`{"id": "a", "kind": "test pit", "depth": "2 m"}, {"id": "b", "kind": "test pit", "at": [20, 11], "depth": "0.4 m"}`, 8},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, dugIn(`, "tests": [`+tt.tests+`]`)), "soakage", "basin-1", map[string]any{"soil_test_distance": tt.away})
		})
	}
}

func TestSoilTestDistanceLacks(t *testing.T) {
	for _, tests := range []string{``, `, "tests": []`, `, "tests": [{"id": "a", "kind": "test pit", "at": [11, 11]}]`} {
		requireLacks(t, compute(t, dugIn(tests)), "soakage", "basin-1", "soil_test_distance", "/site/soil/tests")
	}
	soilless := dugIn("").with(entries{"site": bare["site"]})
	requireLacks(t, compute(t, soilless), "soakage", "basin-1", "soil_test_distance", "/site/soil/tests")
	bottomless := dugIn("").with(entries{"parts": `[{"id": "basin-1", "kind": "mulch basin", "outline": [[10, 10], [12, 10], [12, 12], [10, 12]]}]`})
	requireLacks(t, compute(t, bottomless), "soakage", "basin-1", "soil_test_distance", "/parts/0/depth")
}
