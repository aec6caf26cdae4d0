package quantity

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A sixteenth of an inch is 1.5875 mm, so every length on an inch rule can be
// written in mm, and both spellings must give the same number to the last bit.
func TestSpellingsOfOneLengthAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sixteenths := rapid.IntRange(0, 16*12*1000).Draw(t, "sixteenths of an inch")
		feet, inches, part := sixteenths/(16*12), sixteenths/16%12, sixteenths%16
		tenThousandths := sixteenths * 15875 // of a mm
		texts := []string{
			fmt.Sprintf("%d ft %d %d/16 in", feet, inches, part),
			fmt.Sprintf(`%d'-%d-%d/16"`, feet, inches, part),
			fmt.Sprintf("%d/16 in", sixteenths),
			fmt.Sprintf("%d/192 ft", sixteenths),
			fmt.Sprintf("%d.%04d mm", tenThousandths/10000, tenThousandths%10000),
			fmt.Sprintf("%d.%07d m", tenThousandths/10000000, tenThousandths%10000000),
		}
		first, err := Parse(texts[0], Length)
		require.NoError(t, err)
		for _, text := range texts[1:] {
			q, err := Parse(text, Length)
			require.NoError(t, err)
			require.Equal(t, first.Value, q.Value, text)
		}
	})
}

// Of values read together, none but zero is shown as zero, and a greater one
// is never shown as the same.
func TestValuesReadTogetherStayApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.SampledFrom(Dimensions).Draw(t, "dimension")
		s := rapid.SampledFrom([]System{US, SI}).Draw(t, "system")
		limit := rapid.Float64Range(0.01, 1e4).Draw(t, "limit") * shownIn(d, s)[0].unit.size
		measured := limit * (1 + rapid.Float64Range(1e-6, 1).Draw(t, "excess"))
		u := UnitFor(d, s, measured, limit, measured-limit)
		require.NotEqual(t, u.Format(measured), u.Format(limit))
		require.NotEqual(t, "0", u.digits(measured-limit))
	})
}

// Whatever is read can be shown, and what is shown is read as the same value.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		"24 in", `2'-6 1/2"`, "-2 ft 6 in", "1,250.5 ft2", "½ in", "1:50", "39 °F", "900 °F·d", "0.8 gal/d/ft2",
		"18 MJ/m2/d", "20 min/in", "3", "NaN", "1e9 m", "1/0 in", "2 sq. ft.", "°", "--", "\xff", "1 in 50", "-460 °F",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, d := range Dimensions {
			q, err := Parse(text, d)
			if err != nil {
				var known *Error
				require.True(t, errors.As(err, &known))
				require.NotEmpty(t, known.Found)
				require.NotEmpty(t, known.Expected)
				continue
			}
			require.Equal(t, text, q.Text)
			require.LessOrEqual(t, math.Abs(q.Value), MaxSize)
			for _, s := range []System{US, SI} {
				requireRoundTrip(t, q.Value, d, s)
			}
		}
	})
}

func requireRoundTrip(t *testing.T, v float64, d Dimension, s System) {
	u := UnitFor(d, s, v)
	if math.Abs(v) > MaxSize*math.Min(u.size, 1) {
		return // the number shown would be too large to read
	}
	half := 0.5 * math.Pow10(-u.decimals) * u.size
	requireReads(t, u.Format(v), v, half+math.Abs(v)*1e-9+1e-12)
	u.decimals = maxDecimals
	requireReads(t, u.Format(v), v, math.Abs(v)*1e-9+u.size*1e-12+math.Abs(u.zero)*1e-12)
}

func requireReads(t *testing.T, text string, want, tolerance float64) {
	got, _, err := ParseAny(text)
	require.NoError(t, err)
	require.InDelta(t, want, got.Value, tolerance, text)
}
