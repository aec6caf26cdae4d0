package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// TestWeirIsASumOfOrifices sums the flow through thin strips of a weir, each an
// orifice under its own depth, which is where the ideal formulas come from.
func TestWeirIsASumOfOrifices(t *testing.T) {
	const strips = 20_000
	const cd, head, bottom, side = 0.62, 0.2, 0.5, 1.5
	sum := 0.0
	for i := range strips {
		depth := head * (float64(i) + 0.5) / strips // under the surface
		width := bottom + 2*side*(head-depth)
		q, err := hydraulics.Orifice(cd, width*head/strips, depth)
		require.NoError(t, err)
		sum += q
	}
	q, err := hydraulics.TrapezoidalWeir(cd, bottom, side, head)
	require.NoError(t, err)
	require.InEpsilon(t, sum, q, 1e-5)
}

// TestTrapezoidIsRectangleAndNotch: the parts add up, and upright sides leave
// the rectangle.
func TestTrapezoidIsRectangleAndNotch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cd := rapid.Float64Range(0.5, 0.7).Draw(t, "cd")
		bottom := rapid.Float64Range(0.1, 3).Draw(t, "bottom")
		side := rapid.Float64Range(0.1, 3).Draw(t, "side slope")
		head := rapid.Float64Range(0, 1).Draw(t, "head")
		rectangle, err := hydraulics.RectangularWeir(cd, bottom, head)
		require.NoError(t, err)
		notch, err := hydraulics.VNotch(cd, 2*math.Atan(side), head)
		require.NoError(t, err)
		whole, err := hydraulics.TrapezoidalWeir(cd, bottom, side, head)
		require.NoError(t, err)
		require.InDelta(t, rectangle+notch, whole, 1e-12)
		upright, err := hydraulics.TrapezoidalWeir(cd, bottom, 0, head)
		require.NoError(t, err)
		require.InDelta(t, rectangle, upright, 1e-12)
	})
}

// TestContractionsAndCipolletti: each contraction takes a tenth of the head off
// the length, and the Cipolletti weir's sides give the two of them back to 2 %.
func TestContractionsAndCipolletti(t *testing.T) {
	const length, head = 1.0, 0.2
	var flows [3]float64
	for n := range flows {
		q, err := hydraulics.FrancisWeir(hydraulics.FrancisUS, length, head, n)
		require.NoError(t, err)
		flows[n] = q
	}
	require.InEpsilon(t, 0.98, flows[1]/flows[0], 1e-12)
	require.InEpsilon(t, 0.96, flows[2]/flows[0], 1e-12)
	cipolletti, err := hydraulics.CipollettiWeir(length, head)
	require.NoError(t, err)
	require.InEpsilon(t, flows[0], cipolletti, 0.02)
}

// TestWeirFormulasAgree: the sources' formulas for one weir lie within 3 % of
// one another, whichever system of units they were printed in.
func TestWeirFormulasAgree(t *testing.T) {
	const length, head, crest = 1.2, 0.15, 0.6
	ideal, err := hydraulics.RectangularWeir(hydraulics.SharpCrest, length, head)
	require.NoError(t, err)
	for name, formula := range map[string]func() (float64, error){
		"Francis in feet":   func() (float64, error) { return hydraulics.FrancisWeir(hydraulics.FrancisUS, length, head, 0) },
		"Francis in metres": func() (float64, error) { return hydraulics.FrancisWeir(hydraulics.FrancisSI, length, head, 0) },
		"Rehbock":           func() (float64, error) { return hydraulics.RehbockWeir(length, head, crest) },
		"Rehbock's Cd": func() (float64, error) {
			cd, err := hydraulics.RehbockCd(head, crest)
			require.NoError(t, err)
			return hydraulics.RectangularWeir(cd, length, head)
		},
		"Bazin's Cd": func() (float64, error) {
			cd, err := hydraulics.BazinCd(head)
			require.NoError(t, err)
			return hydraulics.RectangularWeir(cd, length, head)
		},
	} {
		q, err := formula()
		require.NoError(t, err)
		require.InEpsilon(t, ideal, q, 0.03, name)
	}
}

// TestNotchRatingsAgreeWithTheIdeal: with a discharge coefficient of 0.58 the
// ideal V-notch lies within 4 % of what was measured.
func TestNotchRatingsAgreeWithTheIdeal(t *testing.T) {
	for _, r := range []hydraulics.NotchRating{hydraulics.ConeNotch90, hydraulics.ThomsonNotch90, hydraulics.Notch60, hydraulics.Notch45} {
		rapid.Check(t, func(t *rapid.T) {
			head := rapid.Float64Range(hydraulics.RatedHeads.Low, hydraulics.RatedHeads.High).Draw(t, "head")
			rated, err := r.Flow(head)
			require.NoError(t, err)
			ideal, err := hydraulics.VNotch(0.58, r.Angle, head)
			require.NoError(t, err)
			require.InEpsilon(t, ideal, rated, 0.04, r.Source.Title)
		})
	}
}

// TestSpillwayOfUprightSides is the closed form (⅔)^1.5·√g·b·H^1.5.
func TestSpillwayOfUprightSides(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bottom := rapid.Float64Range(0.1, 10).Draw(t, "bottom")
		head := rapid.Float64Range(0.001, 2).Draw(t, "head")
		flow, err := hydraulics.Spillway{Bottom: bottom, Coefficient: 1}.Flow(head)
		require.NoError(t, err)
		want, err := hydraulics.Weir(hydraulics.BroadCrest, bottom, head)
		require.NoError(t, err)
		require.InEpsilon(t, want, flow.Discharge, 1e-9)
		require.InEpsilon(t, 2.0/3*head, flow.Depth, 1e-9)
	})
}

// TestTriangularSpillway is the closed form too: the critical depth of a
// triangle is 4/5 of the head, so Q = z·y²·√(g·y/2).
func TestTriangularSpillway(t *testing.T) {
	flow, err := hydraulics.Spillway{SideSlope: 3, Coefficient: 1}.Flow(0.5)
	require.NoError(t, err)
	require.InDelta(t, 0.4, flow.Depth, 1e-12)
	require.InEpsilon(t, 3*0.16*math.Sqrt(hydraulics.Gravity*0.2), flow.Discharge, 1e-12)
}

// TestSpillwayPassesTheMost: of all depths on the crest, the critical one
// passes the greatest flow, A·√(2g(H − y)).
func TestSpillwayPassesTheMost(t *testing.T) {
	const bottom, side, head = 0.6, 2, 0.3
	flow, err := hydraulics.Spillway{Bottom: bottom, SideSlope: side, Coefficient: 1}.Flow(head)
	require.NoError(t, err)
	most := 0.0
	for i := range 10_000 {
		y := head * float64(i) / 10_000
		section, err := hydraulics.TrapezoidalSection(bottom, side, y)
		require.NoError(t, err)
		most = max(most, section.Area*math.Sqrt(2*hydraulics.Gravity*(head-y)))
	}
	require.InEpsilon(t, most, flow.Discharge, 1e-6)
}

func TestEarthCrestLiesUnderTheIdeal(t *testing.T) {
	require.Less(t, hydraulics.EarthCrest.Low, hydraulics.EarthCrest.High)
	require.Less(t, hydraulics.EarthCrest.High, hydraulics.BroadCrest)
	require.InDelta(t, 1.705, hydraulics.BroadCrest, 0.0005, "as textbooks print it in metres")
}

func TestHeadForTurnsARatingRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		spillway := hydraulics.Spillway{
			Bottom:      rapid.Float64Range(0.1, 5).Draw(t, "bottom"),
			SideSlope:   rapid.Float64Range(0, 3).Draw(t, "side slope"),
			Coefficient: rapid.Float64Range(0.7, 1).Draw(t, "coefficient"),
		}
		rating := func(head float64) (float64, error) {
			flow, err := spillway.Flow(head)
			return flow.Discharge, err
		}
		head := rapid.Float64Range(0.001, 1).Draw(t, "head")
		q, err := rating(head)
		require.NoError(t, err)
		found, err := hydraulics.HeadFor(q, 1.5, rating)
		require.NoError(t, err)
		require.InEpsilon(t, head, found, 1e-9)
	})
}

func TestHeadForPassesErrorsOn(t *testing.T) {
	_, err := hydraulics.HeadFor(0.01, 1, hydraulics.Notch45.Flow)
	require.ErrorContains(t, err, "the head on the notch is 1")
	_, err = hydraulics.HeadFor(1e-6, 0.3, hydraulics.Notch45.Flow)
	require.ErrorContains(t, err, "the head on the notch is 0.0", "the notch is not rated for so little")
}

func TestVelocityHead(t *testing.T) {
	head, err := hydraulics.VelocityHead(math.Sqrt(2 * hydraulics.Gravity))
	require.NoError(t, err)
	require.InDelta(t, 1, head, 1e-12)
}
