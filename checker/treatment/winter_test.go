package treatment

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func cooling(t *rapid.T) Cooling {
	return Cooling{
		Inlet:       rapid.Float64Range(0.1, 35).Draw(t, "inlet"),
		Air:         rapid.Float64Range(-40, 30).Draw(t, "air"),
		Conductance: rapid.Float64Range(0.05, 5).Draw(t, "conductance"),
		Area:        rapid.Float64Range(0.1, 100).Draw(t, "area"),
		Flow:        rapid.Float64Range(1e-6, 1e-4).Draw(t, "flow"),
	}
}

// Water never cools below the air, which the linear form does.
func TestWaterStaysBetweenInletAndAir(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := cooling(t)
		outlet, err := c.Outlet()
		require.NoError(t, err)
		require.GreaterOrEqual(t, outlet, math.Min(c.Inlet, c.Air))
		require.LessOrEqual(t, outlet, math.Max(c.Inlet, c.Air))
	})
}

// Two beds in a row cool like one of their area.
func TestBedsInSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := cooling(t)
		c.Air = rapid.Float64Range(0.1, 30).Draw(t, "mild air")
		whole, err := c.Outlet()
		require.NoError(t, err)
		half := c
		half.Area /= 2
		half.Inlet, err = half.Outlet()
		require.NoError(t, err)
		twice, err := half.Outlet()
		require.NoError(t, err)
		require.InDelta(t, whole, twice, 1e-9)
	})
}

// At the area where it freezes the water has 0 °C, and Outlet agrees with
// FreezingArea on whether that is on the bed.
func TestFreezingArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := cooling(t)
		area, freezes, err := c.FreezingArea()
		require.NoError(t, err)
		outlet, err := c.Outlet()
		require.NoError(t, err)
		if c.Air >= 0 {
			require.False(t, freezes)
			return
		}
		if math.Abs(outlet) > 1e-9 {
			require.Equal(t, outlet < 0, freezes)
		}
		c.Area = area
		outlet, err = c.Outlet()
		require.NoError(t, err)
		require.InDelta(t, 0, outlet, 1e-9)
	})
}

// The mean against the sum of a thousand slices.
func TestMeanTemperature(t *testing.T) {
	c := Cooling{Inlet: 20, Air: -10, Conductance: 0.3, Area: 20, Flow: 0.4 / 86400}
	mean, err := c.Mean()
	require.NoError(t, err)
	sum := 0.0
	for i := range 1000 {
		slice := c
		slice.Area = c.Area * (float64(i) + 0.5) / 1000
		at, err := slice.Outlet()
		require.NoError(t, err)
		sum += at
	}
	require.InDelta(t, sum/1000, mean, 1e-4)

	c.Conductance = 0
	mean, err = c.Mean()
	require.NoError(t, err)
	require.InDelta(t, 20, mean, 1e-12)
}

func TestWinterRefuses(t *testing.T) {
	fine := Cooling{Inlet: 10, Air: -10, Conductance: 0.3, Area: 10, Flow: 1e-5}
	dry, hot, arctic, bare := fine, fine, fine, fine
	dry.Flow, hot.Inlet, arctic.Air, bare.Conductance = 0, 50, -80, 30
	requireRefused(t, map[string]func() (float64, error){
		"no flow":                    dry.Outlet,
		"water in °F":                hot.Outlet,
		"air of no place":            arctic.Outlet,
		"mean of a bed that freezes": bare.Mean,
	})
	_, _, err := dry.FreezingArea()
	require.Error(t, err)
}
