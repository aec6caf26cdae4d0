package treatment

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestConductance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := rapid.Float64Range(0.01, 2).Draw(t, "thickness")
		k := rapid.Float64Range(0.01, 5).Draw(t, "conductivity")
		alone, err := Conductance(Sheet{y, k})
		require.NoError(t, err)
		require.InEpsilon(t, k/y, alone, 1e-9)

		split, err := Conductance(Sheet{y / 2, k}, Sheet{y / 2, k})
		require.NoError(t, err)
		require.InEpsilon(t, alone, split, 1e-9, "two halves are one layer")

		covered, err := Conductance(Sheet{y, k}, Sheet{0.15, 0.05})
		require.NoError(t, err)
		require.Less(t, covered, alone, "a cover keeps warm")
	})
}

// Series conductance against the heat balance at the joint of two layers: the
// same heat must pass through both.
func TestHeatPassesBothLayersAlike(t *testing.T) {
	u, err := Conductance(Sheet{0.2, 0.05}, Sheet{0.45, 2})
	require.NoError(t, err)
	heat := u * (10 - -10.0)
	joint := -10 + heat*0.2/0.05
	require.InDelta(t, heat, (10-joint)*2/0.45, 1e-9)
}

func TestShapeFactor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := BuriedPipe{Length: 1, Diameter: rapid.Float64Range(0.02, 0.3).Draw(t, "diameter")}
		p.Depth = p.Diameter * rapid.Float64Range(1.5, 50).Draw(t, "depth in diameters")
		s, err := p.ShapeFactor()
		require.NoError(t, err)
		// The handbooks' short form for a deep pipe.
		require.InEpsilon(t, 2*math.Pi/math.Log(4*p.Depth/p.Diameter), s, 0.02)

		p.Depth *= 2
		deeper, err := p.ShapeFactor()
		require.NoError(t, err)
		require.Less(t, deeper, s)
	})
}

func TestConductionRefuses(t *testing.T) {
	requireRefused(t, map[string]func() (float64, error){
		"no layer":            func() (float64, error) { return Conductance() },
		"no thickness":        func() (float64, error) { return Conductance(Sheet{0, 2}) },
		"no conductivity":     func() (float64, error) { return Conductance(Sheet{0.1, 0}) },
		"negative thickness":  func() (float64, error) { return Conductance(Sheet{-0.1, 2}, Sheet{1, 1}) },
		"pipe in the air":     func() (float64, error) { return BuriedPipe{1, 0.1, 0.04}.ShapeFactor() },
		"no pipe":             func() (float64, error) { return BuriedPipe{1, 0, 0.5}.ShapeFactor() },
		"temperatures in K":   func() (float64, error) { return BuriedPipe{1, 0.1, 0.5}.HeatLoss(1, 353, 283) },
		"ground without heat": func() (float64, error) { return BuriedPipe{1, 0.1, 0.5}.HeatLoss(0, 30, 0) },
	})
}
