package design

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/source"
)

// circlesOf gives the circles of parts 0 to n-1 with ways between them.
func circlesOf(t require.TestingT, n int, ways [][2]int) source.Problems {
	doc, problems := source.Parse("x.json", []byte("{}"))
	require.Empty(t, problems)
	d := &Design{Document: doc, Parts: make([]Part, n)}
	for i := range d.Parts {
		d.Parts[i].ID = fmt.Sprint("p", i)
	}
	for _, w := range ways {
		p := &d.Parts[w[0]]
		p.OverflowTo = append(p.OverflowTo, Outlet{Target: fmt.Sprint("p", w[1])})
	}
	f := newFaults(doc, nil)
	f.circles(d)
	return f.problems()
}

func TestWaterThatOnlyRunsDownIsNoCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 12).Draw(t, "parts")
		var ways [][2]int
		for range rapid.IntRange(0, 30).Draw(t, "ways") {
			from := rapid.IntRange(0, n-2).Draw(t, "from")
			ways = append(ways, [2]int{from, rapid.IntRange(from+1, n-1).Draw(t, "to")})
		}
		require.Empty(t, circlesOf(t, n, ways))
		// A chain through all of them and a way from the last back to the first.
		for i := range n - 1 {
			ways = append(ways, [2]int{i, i + 1})
		}
		require.NotEmpty(t, circlesOf(t, n, append(ways, [2]int{n - 1, 0})))
	})
}

// Each circle is told once, and each one told is closed and follows the ways.
func TestCirclesAreWhatTheySay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "parts")
		there := map[string]bool{}
		var ways [][2]int
		for range rapid.IntRange(0, 20).Draw(t, "ways") {
			w := [2]int{rapid.IntRange(0, n-1).Draw(t, "from"), rapid.IntRange(0, n-1).Draw(t, "to")}
			ways, there[fmt.Sprintf("p%d → p%d", w[0], w[1])] = append(ways, w), true
		}
		told := map[string]bool{}
		for _, p := range circlesOf(t, n, ways) {
			circle := strings.TrimPrefix(p.Found, "water runs in a circle: ")
			require.False(t, told[circle], circle)
			told[circle] = true
			ids := strings.Split(circle, " → ")
			require.Equal(t, ids[0], ids[len(ids)-1])
			for i := range len(ids) - 1 {
				require.True(t, there[ids[i]+" → "+ids[i+1]], circle)
			}
		}
	})
}

func TestLongCircleIsCut(t *testing.T) {
	var ways [][2]int
	for i := range 100 {
		ways = append(ways, [2]int{i, (i + 1) % 100})
	}
	problems := circlesOf(t, 100, ways)
	require.Len(t, problems, 1)
	require.Equal(t, "water runs in a circle: p0 → p1 → p2 → p3 → p4 → p5 → p6 → p7 → … → p93 → p94 → p95 → p96 → p97 → p98 → p99 → p0", problems[0].Found)
}
