package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBedFittings(t *testing.T) {
	f := compute(t, wetBed("", `, "inlet": {"path": [[14.5, 28.3], [14.5, 30.7]], "stone_size": "50 mm", "cleanouts": [[14.5, 28.3], [14.5, 30.7]]},
		"outlet": {"at": [19.5, 29], "adjustable": false, "stone_size": "2 in"}, "drawdown": {"level": "9.4 m", "accessible": true}`))
	requireKnown(t, f, "beds", "bed-1", map[string]any{
		"inlet_spread": (30.7 - 28.3) / 3, "inlet_cleanouts": 2.0, "inlet_stone": 0.05, "outlet_stone": 2 * 0.0254, "outlet_adjustable": false,
		"drawdown_at_floor": true, "drawdown_accessible": true,
	})
}

// The bed is 6 by 3 m. A header along the 6 m side spreads water for an outlet
// on the other side of the 3 m.
func TestInletSpread(t *testing.T) {
	tests := map[string]struct {
		entry string
		want  float64
	}{
		"across the shorter side":               {`, "inlet": {"path": [[14.5, 28], [14.5, 31]]}, "outlet": {"at": [19.5, 29]}`, 1},
		"along the longer side":                 {`, "inlet": {"path": [[14, 30.5], [17, 30.5]]}, "outlet": {"at": [15, 28.5]}`, 3.0 / 6},
		"no outlet drawn: across a longer side": {`, "inlet": {"path": [[14.5, 28.5], [14.5, 30]]}`, 1.5 / 3},
		"along the course: a point":             {`, "inlet": {"path": [[14, 29], [17, 29]]}, "outlet": {"at": [19.5, 29]}`, 0},
		"askew":                                 {`, "inlet": {"path": [[14, 28], [15, 31]]}`, 1},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, wetBed("", tt.entry)), "beds", "bed-1", map[string]any{"inlet_spread": tt.want})
		})
	}
}

func TestDrawdownAboveTheFloor(t *testing.T) {
	for level, reaches := range map[string]bool{"9.39 m": true, "9.4 m": true, "9.41 m": false} {
		f := compute(t, wetBed("", `, "drawdown": {"level": "`+level+`", "accessible": false}`))
		requireKnown(t, f, "beds", "bed-1", map[string]any{"drawdown_at_floor": reaches, "drawdown_accessible": false})
	}
}

func TestBedFittingsLack(t *testing.T) {
	bare := compute(t, wetBed("", ""))
	empty := compute(t, wetBed("", `, "inlet": {}, "outlet": {}, "drawdown": {}`))
	for field, pointer := range map[string]string{
		"inlet_spread": "/inlet/path", "inlet_cleanouts": "/inlet/cleanouts", "inlet_stone": "/inlet/stone_size", "outlet_stone": "/outlet/stone_size",
		"outlet_adjustable": "/outlet/adjustable", "drawdown_at_floor": "/drawdown/level", "drawdown_accessible": "/drawdown/accessible",
	} {
		requireLacks(t, bare, "beds", "bed-1", field, "/parts/0"+pointer)
		requireLacks(t, empty, "beds", "bed-1", field, "/parts/0"+pointer)
	}
	requireKnown(t, compute(t, wetBed("", `, "inlet": {"cleanouts": []}`)), "beds", "bed-1", map[string]any{"inlet_cleanouts": 0.0})

	f := compute(t, wetBed("", `, "inlet": {"path": [[14.5, 28], [14.5, 31]]}, "outlet": {"at": [14.5, 29]}`))
	requireLacks(t, f, "beds", "bed-1", "inlet_spread", "/parts/0/outlet/at")
	floorless := compute(t, bedding(`[]`, `, "drawdown": {"level": "9 m"}`))
	requireLacks(t, floorless, "beds", "bed-1", "drawdown_at_floor", "/parts/0/floor")
	require.Empty(t, value(t, f, "beds", "bed-1", "area").Lacks)
}
