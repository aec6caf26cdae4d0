package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// digging is a part on the rising ground with a gas line.
func digging(part, line string) entries {
	return buried(slope, `{"id": "gas-1", "kind": "gas", "path": `+line+`, "depth": "0.6 m"}`, "").with(entries{
		"parts": `[{"id": "part-1", ` + part + `}]`,
	})
}

const outline = `"outline": [[14, 28], [20, 28], [20, 31], [14, 31]]`

func TestDugServices(t *testing.T) {
	tests := map[string]struct {
		part, line string
		undug      float64
	}{
		// The line's top is 0.6 m under ground of 10.85 m at x = 17.
		"across the slope": {`"kind": "planted gravel bed", "floor": "9.4 m", ` + outline, `[[17, 20], [17, 39]]`, 9.4 - (10.85 - 0.6)},
		// It is highest where it leaves the bed at x = 20, under ground of 11 m.
		"up the slope":              {`"kind": "planted gravel bed", "floor": "9.4 m", ` + outline, `[[10, 30], [30, 30]]`, 9.4 - (11 - 0.6)},
		"drawn from another corner": {`"kind": "planted gravel bed", "floor": "9.4 m", "outline": [[20, 31], [14, 31], [14, 28], [20, 28]]`, `[[10, 30], [30, 30]]`, 9.4 - (11 - 0.6)},
		"wholly in it":              {`"kind": "pond", "floor": "9.4 m", ` + outline, `[[15, 30], [18, 30]]`, 9.4 - (10.9 - 0.6)},
		"with a floor that dips":    {`"kind": "planted gravel bed", "floor": ["9.4 m", "9.3 m", "9.3 m", "9.4 m"], ` + outline, `[[17, 20], [17, 39]]`, 9.3 - (10.85 - 0.6)},
		"by its depth":              {`"kind": "mulch basin", "depth": "0.25 m", ` + outline, `[[17, 20], [17, 39]]`, 0.6 - 0.25},
		"by the deeper floor":       {`"kind": "mulch basin", "depth": "0.25 m", "floor": "9.4 m", ` + outline, `[[17, 20], [17, 39]]`, 9.4 - (10.85 - 0.6)},
		"by the deeper depth":       {`"kind": "mulch basin", "depth": "2 m", "floor": "9.4 m", ` + outline, `[[17, 20], [17, 39]]`, 0.6 - 2},
		"beside a trench's middle line": {`"kind": "infiltration trench", "path": [[14, 20], [20, 20]], "width": "0.5 m", "depth": "0.4 m"`,
			`[[14, 20.2], [20, 20.2]]`, 0.6 - 0.4},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, digging(tt.part, tt.line))
			require.Equal(t, []string{"part-1 and gas-1"}, subjects(f, "dug_services"))
			requireKnown(t, f, "dug_services", "part-1 and gas-1", map[string]any{"part": "part-1", "service": "gas-1", "service_kind": "gas", "undug": tt.undug})
		})
	}
}

// TestServicesClearOfDigs: a line beside a dig, and under what stands on the
// ground.
func TestServicesClearOfDigs(t *testing.T) {
	require.Empty(t, compute(t, digging(`"kind": "mulch basin", `+outline, `[[21, 20], [21, 39]]`)).List("dug_services"))
	require.Empty(t, compute(t, digging(`"kind": "surge tank", "above_ground": true, `+outline, `[[17, 20], [17, 39]]`)).List("dug_services"))
}

func TestDugServicesWithoutEntries(t *testing.T) {
	line := `[[17, 20], [17, 39]]`
	requireLacks(t, compute(t, digging(`"kind": "pond", `+outline, line)), "dug_services", "part-1 and gas-1", "undug", "/parts/0/floor")
	without := digging(`"kind": "pond", "floor": "9.4 m", `+outline, line).with(entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "services": [{"id": "gas-1", "kind": "gas", "path": ` + line + `}]}`,
	})
	requireLacks(t, compute(t, without), "dug_services", "part-1 and gas-1", "undug", "/site/levels", "/site/services/0/depth")
}
