package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// TestLevelBedIsAParabola: y₁² = y₂² + 2Q·L/(K·W) on a level floor, the
// Dupuit parabola; 400 L/d, 3 m wide, 5 m long, 86.4 m/d, 0.4 m at the outlet:
// √(0.16 + 2·0.4·5/(86.4·3)) = √0.175432 = 0.418846 m.
func TestLevelBedIsAParabola(t *testing.T) {
	bed := hydraulics.Bed{Width: 3, OutletDepth: 0.4, Zones: []hydraulics.Zone{{5, 1e-3}}}
	stations, err := bed.WaterSurface(0.4 / day)
	require.NoError(t, err)
	require.InDelta(t, 0.418846, stations[0].Depth, 1e-6)
	for _, s := range stations {
		require.InDelta(t, math.Sqrt(0.16+2*0.4/day*(5-s.FromInlet)/(1e-3*3)), s.Depth, 1e-9)
	}
	last := stations[len(stations)-1]
	require.InDelta(t, 5, last.FromInlet, 1e-9)
	require.InDelta(t, 0.4, last.Level, 1e-12)
}

// TestZonesAddUp: on a level floor the squares of the depths gain zone by zone.
func TestZonesAddUp(t *testing.T) {
	zones, err := hydraulics.EPAZones.Zones(5, 7500/day)
	require.NoError(t, err)
	stations, err := hydraulics.Bed{Width: 3, OutletDepth: 0.4, Zones: zones}.WaterSurface(0.4 / day)
	require.NoError(t, err)
	want := 0.16 + 2*0.4/3*(1.5/75+3.5/750)
	require.InDelta(t, math.Sqrt(want), stations[0].Depth, 1e-9)
}

// TestSlopingBed is the implicit closed form of dy/dξ = c/y − s, with ξ up the
// bed and c = Q/(K·W): ξ = −(y − y₂)/s − c/s²·ln((c − s·y)/(c − s·y₂)).
func TestSlopingBed(t *testing.T) {
	const k, width, slope, outlet, length = 1e-3, 3.0, 0.01, 0.4, 10.0
	const q = 2 / day
	stations, err := hydraulics.Bed{width, slope, outlet, []hydraulics.Zone{{length, k}}}.WaterSurface(q)
	require.NoError(t, err)
	const c = q / (k * width)
	for _, s := range stations {
		up := -(s.Depth-outlet)/slope - c/(slope*slope)*math.Log((c-slope*s.Depth)/(c-slope*outlet))
		require.InDelta(t, length-s.FromInlet, up, 1e-4)
		require.InDelta(t, slope*(length-s.FromInlet)+s.Depth, s.Level, 1e-12)
	}
}

// TestUniformFlowKeepsItsDepth: where the floor falls as fast as Darcy's
// gradient, Q = K·W·y·s, the water runs along it at one depth.
func TestUniformFlowKeepsItsDepth(t *testing.T) {
	q, err := hydraulics.DarcyDischarge(1e-3, 3*0.4, 0.01)
	require.NoError(t, err)
	stations, err := hydraulics.Bed{3, 0.01, 0.4, []hydraulics.Zone{{20, 1e-3}}}.WaterSurface(q)
	require.NoError(t, err)
	for _, s := range stations {
		require.InDelta(t, 0.4, s.Depth, 1e-9)
	}
}

// TestWaterSurfaceRisesTowardTheInlet, and more with more flow or more
// clogging.
func TestWaterSurfaceRisesTowardTheInlet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := rapid.Float64Range(0, 2).Draw(t, "flow") / day
		bed := hydraulics.Bed{
			Width:       rapid.Float64Range(0.5, 10).Draw(t, "width"),
			FloorSlope:  rapid.Float64Range(-0.02, 0.02).Draw(t, "slope"),
			OutletDepth: rapid.Float64Range(0.3, 0.6).Draw(t, "depth"),
			Zones:       []hydraulics.Zone{{rapid.Float64Range(1, 10).Draw(t, "length"), rapid.Float64Range(1e-4, 0.1).Draw(t, "conductivity")}},
		}
		inlet := func(q float64) float64 {
			stations, err := bed.WaterSurface(q)
			require.NoError(t, err)
			for i := 1; i < len(stations); i++ {
				require.GreaterOrEqual(t, stations[i-1].Level, stations[i].Level-1e-12)
			}
			return stations[0].Level
		}
		before := inlet(q)
		require.GreaterOrEqual(t, inlet(1.1*q), before)
		bed.Zones[0].Conductivity /= 3
		require.GreaterOrEqual(t, inlet(q), before)
	})
}

// TestHeadLossIsTheSmallLossLimit: for a small loss the mean-depth formula and
// the water surface agree.
func TestHeadLossIsTheSmallLossLimit(t *testing.T) {
	stations, err := hydraulics.Bed{Width: 3, OutletDepth: 0.4, Zones: []hydraulics.Zone{{5, 0.05}}}.WaterSurface(0.6 / day)
	require.NoError(t, err)
	loss, err := hydraulics.HeadLoss(0.6/day, 5, 0.05, 3, 0.4)
	require.NoError(t, err)
	require.InEpsilon(t, loss, stations[0].Level-0.4, 1e-3)
}

// TestStillWaterIsLevel: without flow the surface is level, and a floor that
// rises over it stands dry.
func TestStillWaterIsLevel(t *testing.T) {
	bed := hydraulics.Bed{Width: 3, FloorSlope: 0.05, OutletDepth: 0.4, Zones: []hydraulics.Zone{{6, 1e-3}}}
	stations, err := bed.WaterSurface(0)
	require.NoError(t, err)
	for _, s := range stations {
		require.InDelta(t, 0.4, s.Level, 1e-12)
	}
	bed.Zones[0].Length = 9
	_, err = bed.WaterSurface(0)
	require.ErrorContains(t, err, "depth of water at the inlet end")
}

// TestCloggingDiffersThirtyfold: the sources' head losses for one bed of fine
// gravel, relative to the clean bed: 3 times, 0.3/0.01 + 0.7/0.1 = 37 times, and
// 86.8 times (7,500 over 86.4 m/d).
func TestCloggingDiffersThirtyfold(t *testing.T) {
	loss := func(c hydraulics.Clogging) float64 {
		zones, err := c.Zones(5, 7500/day)
		require.NoError(t, err)
		total := 0.0
		for _, z := range zones {
			dh, err := hydraulics.HeadLoss(0.4/day, z.Length, z.Conductivity, 3, 0.4)
			require.NoError(t, err)
			total += dh
		}
		return total
	}
	clean := loss(hydraulics.CleanMedia)
	require.InEpsilon(t, 3, loss(hydraulics.ReedThird)/clean, 1e-9)
	require.InEpsilon(t, 37, loss(hydraulics.EPAZones)/clean, 1e-9)
	require.InEpsilon(t, 7500/86.4, loss(hydraulics.DevelopedBed)/clean, 1e-9)
}

func TestWidthForHeadLossLosesThatHead(t *testing.T) {
	width, err := hydraulics.WidthForHeadLoss(0.6/day, 15, 86.4/day, 0.4, 0.04)
	require.NoError(t, err)
	loss, err := hydraulics.HeadLoss(0.6/day, 15/width, 86.4/day, width, 0.4)
	require.NoError(t, err)
	require.InDelta(t, 0.04, loss, 1e-12)
}

func TestDarcySectionTurnsTheDischargeRound(t *testing.T) {
	section, err := hydraulics.DarcySection(0.4/day, 1e-3, 0.01)
	require.NoError(t, err)
	q, err := hydraulics.DarcyDischarge(1e-3, section, 0.01)
	require.NoError(t, err)
	require.InEpsilon(t, 0.4/day, q, 1e-12)
}

// TestLayers: 0.3 m at 1 and 0.1 m at 5 mm/s: along (0.3·1 + 0.1·5)/0.4 = 2,
// across 0.4/(0.3/1 + 0.1/5) = 1.25 mm/s.
func TestLayers(t *testing.T) {
	layers := []hydraulics.Layer{{0.3, 1e-3}, {0.1, 5e-3}}
	along, err := hydraulics.ConductivityAlong(layers...)
	require.NoError(t, err)
	require.InDelta(t, 2e-3, along, 1e-15)
	across, err := hydraulics.ConductivityAcross(layers...)
	require.NoError(t, err)
	require.InDelta(t, 1.25e-3, across, 1e-15)
	_, err = hydraulics.ConductivityAlong()
	require.ErrorContains(t, err, "number of layers")
}

// TestAcrossIsNeverMoreThanAlong: the harmonic mean and the arithmetic one.
func TestAcrossIsNeverMoreThanAlong(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		layers := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) hydraulics.Layer {
			return hydraulics.Layer{rapid.Float64Range(0.01, 1).Draw(t, "thickness"), rapid.Float64Range(1e-5, 1).Draw(t, "conductivity")}
		}), 1, 5).Draw(t, "layers")
		along, err := hydraulics.ConductivityAlong(layers...)
		require.NoError(t, err)
		across, err := hydraulics.ConductivityAcross(layers...)
		require.NoError(t, err)
		require.LessOrEqual(t, across, along*(1+1e-12))
	})
}

// TestKozenyRatioByVoids: n³/(1 − n)² is e³/(1 + e), and the way back undoes it.
func TestKozenyRatioByVoids(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from, to := rapid.Float64Range(0.1, 0.6).Draw(t, "from"), rapid.Float64Range(0.1, 0.6).Draw(t, "to")
		there, err := hydraulics.KozenyRatio(from, to)
		require.NoError(t, err)
		back, err := hydraulics.KozenyRatio(to, from)
		require.NoError(t, err)
		require.InEpsilon(t, 1, there*back, 1e-12)
		e, err := hydraulics.VoidRatio(from)
		require.NoError(t, err)
		f, err := hydraulics.VoidRatio(to)
		require.NoError(t, err)
		require.InEpsilon(t, f*f*f/(1+f)/(e*e*e/(1+e)), there, 1e-12)
		n, err := hydraulics.Porosity(e)
		require.NoError(t, err)
		require.InDelta(t, from, n, 1e-12)
	})
}

// TestMediaAreInOrder: ranges the right way round, porosities that stones can
// have, and 7,500 m/d for fine gravel in the text that was read.
func TestMediaAreInOrder(t *testing.T) {
	read := 0
	for _, m := range hydraulics.Media {
		require.LessOrEqual(t, m.Porosity.Low, m.Porosity.High, m.Name)
		require.Less(t, m.Porosity.High, 0.5, m.Name)
		require.LessOrEqual(t, m.Conductivity.Low, m.Conductivity.High, m.Name)
		require.NotEmpty(t, m.Source.Title, m.Name)
		if m.Source.Standing == hydraulics.Published && m.Size > 0 {
			read++
			require.InDelta(t, 24608*foot, m.Conductivity.Low*day, 1, "24,608 ft/d as printed; a metre a day of rounding")
		}
	}
	require.Equal(t, 1, read)
}
