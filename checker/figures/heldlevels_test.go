package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// holding is a bed and a pond that drains nowhere.
func holding(levels, more string) entries {
	return entries{
		"tolerances": `{"level": "10 mm"}`,
		"parts": `[{"id": "bed-1", "kind": "planted gravel bed", "to": "basin-1", ` + levels + plot + more + `},
			{"id": "pond-1", "kind": "pond", "outline": [[30, 1], [31, 1], [31, 2]]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]}]`,
	}
}

func TestHeldLevels(t *testing.T) {
	tests := map[string]struct {
		levels, more string
		outlet, off  float64
		same         bool
	}{
		"at the outlet":           {`"water_level": "9.5 m", "outlet_level": "9.5 m", `, ``, 9.5, 0, true},
		"within the tolerance":    {`"water_level": "9.5 m", "outlet_level": "9.51 m", `, ``, 9.51, 0.01, true},
		"an outlet set higher":    {`"water_level": "9.5 m", "outlet_level": "9.52 m", `, ``, 9.52, 0.02, false},
		"a control set lower":     {`"water_level": "9.5 m", `, `, "outlet": {"level": "9.3 m"}`, 9.3, 0.2, false},
		"a control and an outlet": {`"water_level": "9.5 m", "outlet_level": "9.5 m", `, `, "outlet": {"level": "9.6 m"}`, 9.6, 0.1, false},
		"an outlet farther off":   {`"water_level": "9.5 m", "outlet_level": "9.8 m", `, `, "outlet": {"level": "9.5 m"}`, 9.8, 0.3, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, holding(tt.levels, tt.more))
			require.Equal(t, []string{"bed-1"}, subjects(f, "held_levels"))
			requireKnown(t, f, "held_levels", "bed-1", map[string]any{"water_level": 9.5, "outlet_level": tt.outlet, "off_outlet": tt.off, "at_outlet": tt.same})
		})
	}
}

func TestHeldLevelsLack(t *testing.T) {
	f := compute(t, holding("", ""))
	requireLacks(t, f, "held_levels", "bed-1", "outlet_level", "/parts/0/outlet_level")
	requireLacks(t, f, "held_levels", "bed-1", "at_outlet", "/parts/0/water_level", "/parts/0/outlet_level")
	exact := holding(`"water_level": "9.5 m", "outlet_level": "9.501 m", `, "")
	delete(exact, "tolerances")
	requireKnown(t, compute(t, exact), "held_levels", "bed-1", map[string]any{"at_outlet": false})
}
