package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestNamedValuesHaveAnOrigin(t *testing.T) {
	var origins []Origin
	for _, s := range Strengths {
		origins = append(origins, s.Origin)
	}
	for _, l := range Loads {
		origins = append(origins, l.Origin)
	}
	for _, s := range Shares {
		origins = append(origins, s.Origin)
	}
	for _, v := range Volumetrics {
		origins = append(origins, v.Origin)
	}
	for _, a := range Areals {
		origins = append(origins, a.Origin)
	}
	for _, b := range Bases() {
		origins = append(origins, b.Origin)
	}
	for _, c := range Conductivities {
		origins = append(origins, c.Origin)
	}
	for _, s := range SludgeRates {
		origins = append(origins, s.Origin)
	}
	for _, r := range RootDepths {
		origins = append(origins, r.Origin)
	}
	for _, o := range append(origins, Emerson1975.Origin) {
		require.NotEmpty(t, o.Source)
		require.Contains(t, []string{Published, CommonPractice, FromMemory}, o.Standing)
	}
}

func TestNamesAreDistinct(t *testing.T) {
	seen := make(map[string]bool)
	for _, b := range Bases() {
		require.False(t, seen[b.Name], b.Name)
		seen[b.Name] = true
	}
}

func TestRangesAreOrdered(t *testing.T) {
	for _, s := range Strengths {
		for c, r := range s.Of {
			require.LessOrEqual(t, r.Least, r.Typical, "%s, %s", s.Name, c)
			require.LessOrEqual(t, r.Typical, r.Most, "%s, %s", s.Name, c)
			require.Positive(t, r.Least)
		}
	}
}

// The three streams of EPA/625/R-00/008 (2002), Table 3-8, add up to its totals
// in g per person and day (from memory).
func TestLoadsOfTheStreamsAddUp(t *testing.T) {
	sum := make(map[Constituent]float64)
	for _, l := range Loads {
		if l.Origin == epa2002Loads {
			for c, kgPerSecond := range l.Of {
				sum[c] += kgPerSecond * 1000 * 86400
			}
		}
	}
	require.InDelta(t, 63.2, sum[BOD5], 0.05)
	require.InDelta(t, 70.7, sum[TSS], 0.05)
	require.InDelta(t, 11.2, sum[Nitrogen], 0.05)
	require.InDelta(t, 2.7, sum[Phosphorus], 0.05)
}

// Greywater is weaker than whole sewage in everything that both were measured
// for.
func TestSewageBoundsGreywater(t *testing.T) {
	greywater, sewage := Strengths[0], Strengths[1]
	for c, r := range greywater.Of {
		if whole, both := sewage.Of[c]; both {
			require.Less(t, r.Most, whole.Typical, c)
		}
	}
}

func TestConcentrationRefuses(t *testing.T) {
	for name, in := range map[string][2]float64{"no flow": {1e-6, 0}, "negative load": {-1e-6, 1e-6}} {
		c, err := Concentration(in[0], in[1])
		require.Error(t, err, name)
		require.Zero(t, c, name)
	}
}
