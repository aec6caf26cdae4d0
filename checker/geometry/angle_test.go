package geometry_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/geometry"
)

func TestAngles(t *testing.T) {
	o, east := geometry.Point{}, geometry.Point{X: 3}
	for name, tt := range map[string]struct {
		to          geometry.Point
		turn, acute float64
	}{
		"straight on":  {geometry.Point{X: 1}, 0, 0},
		"left":         {geometry.Point{Y: 2}, 90, 90},
		"right":        {geometry.Point{Y: -2}, 90, 90},
		"half left":    {geometry.Point{X: 1, Y: 1}, 45, 45},
		"sharp right":  {geometry.Point{X: -1, Y: -1}, 135, 45},
		"one in two":   {geometry.Point{X: 2, Y: 1}, math.Atan(0.5) * 180 / math.Pi, math.Atan(0.5) * 180 / math.Pi},
		"back":         {geometry.Point{X: -1}, 180, 0},
		"not anywhere": {o, 0, 0},
	} {
		t.Run(name, func(t *testing.T) {
			require.InDelta(t, tt.turn, geometry.Turn(o, east, o, tt.to), 1e-12)
			require.InDelta(t, tt.acute, geometry.Acute(o, east, o, tt.to), 1e-12)
		})
	}
}
