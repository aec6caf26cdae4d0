package quantity

import (
	"math/big"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// NIST Handbook 44, Appendix C, General Tables of Units of Measurement: the
// definitions, each exact. Only the inch and the pound are in SI units; the
// others are counts of them.
func TestUnitsAreExact(t *testing.T) {
	inch, pound := exact("0.0254"), exact("0.45359237")
	inches := func(count int64, power int) *big.Rat {
		size := big.NewRat(count, 1)
		for range power {
			size.Mul(size, inch)
		}
		return size
	}
	tests := []struct {
		name string
		want *big.Rat
	}{
		{"in", inches(1, 1)},
		{"ft", inches(12, 1)},
		{"yd", inches(36, 1)},
		{"mi", inches(5280*12, 1)},
		{"mil", new(big.Rat).Quo(inch, exact("1000"))},
		{"sf", inches(144, 2)},
		{"ac", inches(43560*144, 2)},
		{"gal", inches(231, 3)},
		{"cf", inches(1728, 3)},
		{"cy", inches(27*1728, 3)},
		{"gpd", new(big.Rat).Quo(inches(231, 3), exact("86400"))},
		{"gpm", new(big.Rat).Quo(inches(231, 3), exact("60"))},
		{"cfs", inches(1728, 3)},
		{"mph", new(big.Rat).Quo(inches(5280*12, 1), exact("3600"))},
		{"lb", pound},
		{"pcf", new(big.Rat).Quo(pound, inches(1728, 3))},
	}
	for _, tt := range tests {
		require.Zero(t, tt.want.Cmp(units[tt.name].size), tt.name)
	}
}

// A spelling that stood twice in the table would mean whatever came last.
func TestSpellingsAreUnique(t *testing.T) {
	require.Len(t, units, len(names))
	for _, name := range names {
		require.NotContains(t, refused, name)
		r := reader{text: name, rest: normalize(name)}
		_, err := r.unit()
		require.Nil(t, err, name)
		require.Empty(t, r.rest, name)
	}
}

func TestEveryDimensionHasItsTables(t *testing.T) {
	var reached []Dimension
	for _, k := range kinds {
		reached = append(reached, k.dimensions...)
		require.True(t, strings.ContainsAny(k.noun, "abcdefghijklmnopqrstuvwxyz"))
	}
	slices.Sort(reached)
	all := slices.Sorted(slices.Values(Dimensions))
	require.Equal(t, all, slices.Compact(reached))
	for _, d := range Dimensions {
		require.NotEmpty(t, Examples(d), d)
		for _, s := range []System{US, SI} {
			require.NotEmpty(t, choices[d][s], d)
			for _, c := range choices[d][s] {
				if c.symbol != "" {
					_, err := Parse("1 "+c.symbol, d)
					require.NoError(t, err)
				}
			}
		}
	}
}
