package drawing

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

func spot(t *rapid.T, name string) geometry.Point {
	return geometry.Point{X: rapid.Float64Range(-50, 50).Draw(t, name+" x"), Y: rapid.Float64Range(-50, 50).Draw(t, name+" y")}
}

// TestZonesKeepTheirDistance: every place on the edge of a zone is just as far from
// the thing as is to be kept clear.
func TestZonesKeepTheirDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		corners := []geometry.Point{spot(t, "a"), spot(t, "b"), spot(t, "c"), spot(t, "d")}
		distance := rapid.Float64Range(0.1, 40).Draw(t, "distance")
		shape := map[string]geometry.Shape{
			"point": geometry.At(corners[0]), "line": geometry.Path(corners), "ring": geometry.Outline(corners[:3]), "edge": geometry.Outline(corners[:3]).Edge(),
		}[rapid.SampledFrom([]string{"point", "line", "ring", "edge"}).Draw(t, "shape")]
		pieces := zone(shape, distance, 0.5, nil)
		require.NotEmpty(t, pieces)
		for _, piece := range pieces {
			for _, p := range piece {
				require.InDelta(t, distance, geometry.Distance(geometry.At(p), shape), 1e-5)
			}
		}
	})
}

// TestZoneOfAWell: a circle of the distance is 2πr long, but for what its chords cut
// off.
func TestZoneOfAWell(t *testing.T) {
	pieces := zone(geometry.At(geometry.Point{X: 3, Y: 4}), 10, 0.1, nil)
	require.Len(t, pieces, 1)
	require.InDelta(t, 62.83185, geometry.Path(pieces[0]).Length(), 0.001)
}

// TestZoneOfAHouse: round a square of 10 m at 2 m, four sides and a quarter circle at
// each corner: 40 + 4π.
func TestZoneOfAHouse(t *testing.T) {
	square := geometry.Outline([]geometry.Point{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 0, Y: 10}})
	long := 0.0
	for _, piece := range zone(square, 2, 0.01, nil) {
		long += geometry.Path(simplified(piece)).Length()
	}
	require.InDelta(t, 52.566, long, 0.15, "an end of a step is lost at each join")
}

func TestZoneInsideABoundary(t *testing.T) {
	square := geometry.Outline([]geometry.Point{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 0, Y: 10}})
	for _, piece := range zone(square.Edge(), 2, 0.1, square.Contains) {
		for _, p := range piece {
			require.True(t, square.Contains(p))
		}
	}
	require.Nil(t, zone(square, 0, 0.1, nil))
}

// TestScales: a length of 100 m on 180 mm asks for 1:555.6, so that the next in use is
// 1:600 in feet, 50 to the inch, and 1:1000 in metres.
func TestScales(t *testing.T) {
	us := fit(quantity.US, 100, 0, 180, 1)
	require.InDelta(t, 600, us.Ratio, 1e-9)
	require.Equal(t, "1 in = 50 ft (1:600)", us.Words)
	require.Equal(t, "1:1000", fit(quantity.SI, 100, 0, 180, 1).Words)
	require.Equal(t, "1:500", fit(quantity.SI, 90, 0, 180, 1).Words, "just fits")
	require.Equal(t, "1:50", fit(quantity.SI, 1, 9, 180, 200).Words, "the height decides")
	require.Equal(t, "1:5000", fit(quantity.SI, 900, 1, 180, 200).Words)
}

func TestRoundNumbers(t *testing.T) {
	for x, want := range map[float64][2]float64{1: {1, 1}, 1.5: {1, 2}, 3: {2, 5}, 7: {5, 10}, 0.03: {0.02, 0.05}, 200: {200, 200}} {
		require.InEpsilon(t, want[0], roundBelow(x), 1e-9, x)
		require.InEpsilon(t, want[1], roundAbove(x), 1e-9, x)
	}
}

// TestLevelOver: over a rectangle of which one corner is 4 lower, the middle is the
// mean of both ways to cut it, 1 lower, as in the grid method of earthworks (common
// practice, no source).
func TestLevelOver(t *testing.T) {
	ring := []geometry.Point{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 4}, {X: 0, Y: 4}}
	levels := []quantity.Quantity{{Value: 6, Text: "6 m"}, {Value: 10, Text: "10 m"}, {Value: 10, Text: "10 m"}, {Value: 10, Text: "10 m"}}
	for i, corner := range ring {
		level, ok := levelOver(ring, levels, corner)
		require.True(t, ok)
		require.InDelta(t, levels[i].Value, level, 1e-9)
	}
	level, _ := levelOver(ring, levels, geometry.Point{X: 5, Y: 2})
	require.InDelta(t, 9, level, 1e-9)
	level, _ = levelOver(ring, levels[:1], geometry.Point{X: 5, Y: 2})
	require.InDelta(t, 6, level, 1e-9)
	_, ok := levelOver(ring, levels[:2], ring[0])
	require.False(t, ok)
}

// TestTrain takes the longest way, and lays its parts end to end.
func TestTrain(t *testing.T) {
	at := func(x, y float64) *design.Point { return &design.Point{X: x, Y: y} }
	to := func(ids ...string) (all []design.Outlet) {
		for _, id := range ids {
			all = append(all, design.Outlet{Target: id})
		}
		return all
	}
	d := &design.Design{
		Sources: []design.Source{{ID: "toilet", To: to("sewer")}, {ID: "shower", To: to("diverter")}},
		Parts: []design.Part{
			{ID: "sewer", Kind: "sewer connection", Shape: design.Shape{At: at(9, 9)}},
			{ID: "diverter", Kind: "diverter", Shape: design.Shape{At: at(0, 0)}, To: to("sewer", "pipe")},
			{ID: "pipe", Kind: "drain pipe", Shape: design.Shape{Path: []design.Point{{X: 3, Y: 4}, {X: 6, Y: 8}}}, To: to("bed")},
			{ID: "bed", Kind: "planted gravel bed", Shape: design.Shape{Outline: []design.Point{{X: 6, Y: 8}, {X: 16, Y: 8}, {X: 16, Y: 12}, {X: 6, Y: 12}}}},
		},
	}
	way := stretches(train(d))
	require.Len(t, way, 3)
	require.Equal(t, []string{"diverter", "pipe", "bed"}, []string{way[0].part.ID, way[1].part.ID, way[2].part.ID})
	require.InDelta(t, 5, way[1].from, 1e-9, "from the diverter to the pipe's beginning")
	require.InDelta(t, 10, way[2].from, 1e-9)
	require.Equal(t, geometry.Point{X: 4.5, Y: 6}, way[1].place(2.5))
	require.InDelta(t, geometry.Distance(geometry.At(way[2].way[0]), geometry.At(way[2].way[1])), geometry.Distance(geometry.At(way[2].way[1]), geometry.At(way[2].way[2])), 1e-9,
		"through the middle to the other side")
}

func TestCrossingsAlongAStretch(t *testing.T) {
	one := &stretch{way: []geometry.Point{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}}}
	require.Equal(t, []float64{4}, meetings(one, []geometry.Point{{X: 4, Y: -1}, {X: 4, Y: 1}}))
	require.Equal(t, []float64{13}, meetings(one, []geometry.Point{{X: 9, Y: 3}, {X: 30, Y: 3}}))
	require.Empty(t, meetings(one, []geometry.Point{{X: 0, Y: 1}, {X: 9, Y: 1}}))
}
