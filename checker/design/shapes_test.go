package design

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/source"
)

func ringFaults(t require.TestingT, ring []Point) source.Problems {
	doc, problems := source.Parse("x.json", []byte("{}"))
	require.Empty(t, problems)
	f := newFaults(doc, nil)
	f.ring(ring, "/outline")
	return f.problems()
}

func TestRings(t *testing.T) {
	for _, tc := range []struct {
		name  string
		ring  []Point
		found string // "" when nothing is wrong
	}{
		{"triangle", []Point{{0, 0}, {4, 0}, {0, 3}}, ""},
		{"clockwise", []Point{{0, 0}, {0, 3}, {4, 0}}, ""},
		{"corner on a straight side", []Point{{0, 0}, {2, 0}, {4, 0}, {0, 3}}, ""},
		{"hollow", []Point{{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}}, ""},
		{"far from the origin", []Point{{3e5, 3e5}, {3e5 + 4, 3e5}, {3e5, 3e5 + 3}}, ""},
		{"bow tie", []Point{{0, 0}, {2, 2}, {2, 0}, {0, 2}},
			`"outline" crosses or touches itself: the side from corner 1 to 2 meets that from corner 3 to 4 near (1.00, 1.00) m`},
		{"corner on another side", []Point{{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}},
			`"outline" crosses or touches itself: the side from corner 1 to 2 meets that from corner 3 to 4 near (2.00, 0.00) m`},
		{"there and back", []Point{{0, 0}, {4, 0}, {4, 4}, {4, 2}},
			`"outline" crosses or touches itself: the side from corner 2 to 3 meets that from corner 3 to 4 near (4.00, 3.00) m`},
		{"on one line", []Point{{0, 0}, {1, 1}, {3, 3}}, `"outline" has no area: its corners lie on one line`},
		{"on one line in tenths", []Point{{0.1, 0.3}, {0.2, 0.6}, {0.3, 0.9}, {0.7, 2.1}}, `"outline" has no area: its corners lie on one line`},
	} {
		t.Run(tc.name, func(t *testing.T) {
			problems := ringFaults(t, tc.ring)
			if tc.found == "" {
				require.Empty(t, problems)
				return
			}
			require.Len(t, problems, 1)
			require.Equal(t, tc.found, problems[0].Found)
		})
	}
}

// Corners in order round a centre never cross; two of them exchanged do.
func TestCornersRoundACentre(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(5, 40).Draw(t, "corners")
		ring := make([]Point, n)
		for i := range ring {
			at := 2 * math.Pi * float64(i) / float64(n)
			ring[i] = Point{math.Cos(at) * 10, math.Sin(at) * 10}
		}
		require.Empty(t, ringFaults(t, ring))
		i := rapid.IntRange(0, n-2).Draw(t, "exchanged")
		ring[i], ring[i+1] = ring[i+1], ring[i]
		problems := ringFaults(t, ring)
		require.Len(t, problems, 1)
		require.Contains(t, problems[0].Found, "meets that from corner")
		slices.Reverse(ring)
		require.Len(t, ringFaults(t, ring), 1)
	})
}
