package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

const (
	acre        = 43560 * foot * foot
	inchPerHour = inch / 3600
)

// TestRationalMethodInFeet: the US form leaves out 1.00833, that is 43,560 ft²
// an acre over 12 in a foot and 3,600 s an hour.
func TestRationalMethodInFeet(t *testing.T) {
	q, err := hydraulics.RationalPeak(1, inchPerHour, acre)
	require.NoError(t, err)
	require.InDelta(t, 43560.0/12/3600, q/cfs, 1e-12)
}

func TestCompositeCoefficient(t *testing.T) {
	c, err := hydraulics.CompositeCoefficient(hydraulics.Surface{100, 0.9}, hydraulics.Surface{300, 0.2})
	require.NoError(t, err)
	require.InDelta(t, (90+60)/400.0, c, 1e-12)
	_, err = hydraulics.CompositeCoefficient()
	require.ErrorContains(t, err, "sum of the areas")
}

// TestCompositeGivesTheSumOfTheParts: the parts' flows and the whole's are one.
func TestCompositeGivesTheSumOfTheParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		surfaces := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) hydraulics.Surface {
			return hydraulics.Surface{rapid.Float64Range(1, 1000).Draw(t, "area"), rapid.Float64Range(0, 1).Draw(t, "c")}
		}), 1, 6).Draw(t, "surfaces")
		sum, area := 0.0, 0.0
		for _, s := range surfaces {
			q, err := hydraulics.RationalPeak(s.Coefficient, inchPerHour, s.Area)
			require.NoError(t, err)
			sum, area = sum+q, area+s.Area
		}
		c, err := hydraulics.CompositeCoefficient(surfaces...)
		require.NoError(t, err)
		whole, err := hydraulics.RationalPeak(c, inchPerHour, area)
		require.NoError(t, err)
		require.InDelta(t, sum, whole, 1e-12)
	})
}

func TestFrequencyRaisesToOneAtMost(t *testing.T) {
	century := hydraulics.FrequencyFactors[3]
	c, err := hydraulics.WithFrequency(0.4, century)
	require.NoError(t, err)
	require.InDelta(t, 0.5, c, 1e-12)
	c, err = hydraulics.WithFrequency(0.9, century)
	require.NoError(t, err)
	require.Equal(t, 1.0, c)
}

// TestRoofFlowCountsAShareOfTheWall: 50 % and 25 % of 200 ft² above 1,000 ft².
func TestRoofFlowCountsAShareOfTheWall(t *testing.T) {
	bare, err := hydraulics.RoofFlow(1000, 0, hydraulics.IPCWallShare, inchPerHour)
	require.NoError(t, err)
	for share, want := range map[float64]float64{hydraulics.IPCWallShare: 1.1, hydraulics.ChicagoWallShare: 1.05} {
		q, err := hydraulics.RoofFlow(1000, 200, share, inchPerHour)
		require.NoError(t, err)
		require.InEpsilon(t, want, q/bare, 1e-12)
	}
}

func TestRunoffCoefficientsAreShares(t *testing.T) {
	for _, c := range hydraulics.RunoffCoefficients {
		require.Positive(t, c.Range.Low, c.Surface)
		require.LessOrEqual(t, c.Range.Low, c.Range.High, c.Surface)
		require.Less(t, c.Range.High, 1.0, c.Surface)
	}
}

// TestRunoffDepthIsLessThanTheRain: nothing runs off until the rain exceeds the
// initial abstraction, and a curve number of 100 sheds it all.
func TestRunoffDepthIsLessThanTheRain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cn := rapid.Float64Range(30, 100).Draw(t, "curve number")
		rain := rapid.Float64Range(0, 0.3).Draw(t, "rain")
		runoff, err := hydraulics.RunoffDepth(cn, hydraulics.UsualAbstraction, rain)
		require.NoError(t, err)
		require.GreaterOrEqual(t, runoff, 0.0)
		require.LessOrEqual(t, runoff, rain*(1+1e-12))
		retention, err := hydraulics.PotentialRetention(cn)
		require.NoError(t, err)
		if rain <= hydraulics.UsualAbstraction*retention {
			require.Zero(t, runoff)
		}
	})
	all, err := hydraulics.RunoffDepth(100, hydraulics.UsualAbstraction, 0.05)
	require.NoError(t, err)
	require.InDelta(t, 0.05, all, 1e-15)
}

// TestRiskOfRepeatedYears multiplies the chances that it stays away.
func TestRiskOfRepeatedYears(t *testing.T) {
	risk, err := hydraulics.Risk(25, 3)
	require.NoError(t, err)
	require.InDelta(t, 1-0.96*0.96*0.96, risk, 1e-12)
}

// TestHydrographHoldsTheRain: the volume under it is C·i·A·duration, whichever
// of the two times is the longer.
func TestHydrographHoldsTheRain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		minutes := rapid.IntRange(2, 120)
		storm := hydraulics.Storm{0.7, 50e-3 / 3600, 2000, 60 * float64(minutes.Draw(t, "duration")), 60 * float64(minutes.Draw(t, "concentration"))}
		flows, err := storm.Hydrograph(60)
		require.NoError(t, err)
		peak, err := storm.Peak()
		require.NoError(t, err)
		volume, highest := 0.0, 0.0
		for i, q := range flows {
			highest = max(highest, q)
			if i > 0 {
				volume += 60 * (q + flows[i-1]) / 2
			}
		}
		require.InEpsilon(t, 0.7*50e-3/3600*2000*storm.Duration, volume, 1e-9)
		require.InEpsilon(t, peak, highest, 1e-12)
		require.Zero(t, flows[0])
		require.InDelta(t, 0, flows[len(flows)-1], 1e-12)
	})
}

func TestHydrographRefusesStepsThatMissThePeak(t *testing.T) {
	storm := hydraulics.Storm{0.7, 1e-5, 2000, 600, 300}
	_, err := storm.Hydrograph(400)
	require.ErrorContains(t, err, "the time step is 400; it must be from 0 to 300")
	_, err = storm.Hydrograph(1e-6)
	require.ErrorContains(t, err, "number of time steps")
}

// TestLeaderScales: a full share doubled is 2^(5/3) of the flow, the diameter
// doubled 2^(8/3).
func TestLeaderScales(t *testing.T) {
	one, err := hydraulics.LeaderFlow(0.05, 0.15)
	require.NoError(t, err)
	fuller, err := hydraulics.LeaderFlow(0.05, 0.30)
	require.NoError(t, err)
	wider, err := hydraulics.LeaderFlow(0.10, 0.15)
	require.NoError(t, err)
	require.InEpsilon(t, math.Pow(2, 5.0/3), fuller/one, 1e-12)
	require.InEpsilon(t, math.Pow(2, 8.0/3), wider/one, 1e-12)
}
