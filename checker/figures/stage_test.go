package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWhatSidesLack: sides of one slope go down to one level; where they do not show what
// a pond holds, its volume as drawn counts.
func TestWhatSidesLack(t *testing.T) {
	tests := map[string]struct{ from, to, lacks string }{
		"an uneven floor": {`"floor": "8.5 m"`, `"floor": ["8.5 m", "8.5 m", "8.6 m", "8.6 m"]`, "one level for the floor of pond-1, or its volume"},
		"no slope":        {`"side_slope": "1:2",`, ``, "side_slope of pond-1, or its volume"},
		"a slope of 0":    {`"side_slope": "1:2"`, `"side_slope": "0 %"`, "side_slope of pond-1, more than 0"},
		"no rim":          {`"rim_level": "10 m",`, ``, "rim_level of pond-1"},
		"no water":        {`"water_level": "9.8 m",`, ``, "water_level of pond-1"},
		"water over it":   {`"water_level": "9.8 m"`, `"water_level": "10.1 m"`, "water_level of pond-1 within the range of its floor and rim"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			drawn := strings.Replace(sloped, tt.from, tt.to, 1)
			require.NotEqual(t, sloped, drawn)
			require.Equal(t, tt.lacks, value(t, compute(t, ponded(``, drawn)), "ponds", "pond-1", "volume").Lacks[0].Entry)
			requireKnown(t, compute(t, ponded(``, drawn+`"volume": "70 m3",`)), "ponds", "pond-1", map[string]any{"volume": 70.0, "volume_by": "volume as drawn"})
		})
	}
}

// TestSidesGoBeforeTheVolumeDrawn: where both are drawn, what the sides show counts.
func TestSidesGoBeforeTheVolumeDrawn(t *testing.T) {
	f := compute(t, ponded(``, sloped+`"volume": "70 m3",`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"volume": 1.3 / 6 * (9.2*7.2 + 4*6.6*4.6 + 4.0*2.0), "volume_by": "sides as drawn"})
}

// TestTheSurfaceOfAPondWithUprightSides is its outline.
func TestTheSurfaceOfAPondWithUprightSides(t *testing.T) {
	f := compute(t, ponded(``, `"volume": "70 m3", "floor": ["8.5 m", "8.5 m", "8 m", "8 m"], "water_level": "9.8 m",`))
	requireKnown(t, f, "ponds", "pond-1", map[string]any{"area": 80.0, "greatest_depth": 1.8, "volume": 70.0})
}
