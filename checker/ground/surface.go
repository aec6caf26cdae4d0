// Package ground makes a surface of the ground from spot levels: a Delaunay
// triangulation with a plane over each triangle. It answers within the hull of
// the levels and never beyond it.
package ground

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"greysill/checker/geometry"
)

// Spot is a place with the level of the ground there, in metres.
type Spot struct{ X, Y, Z float64 }

// ErrNoArea says that the spot levels span no area: they are fewer than three,
// or lie in one line.
var ErrNoArea = errors.New("the spot levels span no area")

// ConflictError says that one place has two levels.
type ConflictError struct{ First, Second int } // numbers of the spots, from 0

func (e *ConflictError) Error() string {
	return fmt.Sprintf("spot levels %d and %d give two levels for one place", e.First+1, e.Second+1)
}

// Surface is the ground. It is safe for concurrent use.
//
// Inside, places are whole multiples of geometry.Resolution, so that spots on
// a regular grid stay regular whatever unit they were drawn in, and the
// predicates are exact.
type Surface struct {
	spots []Spot
	mesh  *mesh
	edges []edge
	hull  []edge // clockwise

	triangles [][3]Spot // in metres
}

// New triangulates spot levels. Spots at the same place with the same level
// count once. The error is ErrNoArea or a *ConflictError.
func New(spots []Spot) (*Surface, error) {
	distinct, err := merge(spots)
	if err != nil {
		return nil, err
	}
	m, ok := triangulate(distinct)
	if !ok {
		return nil, ErrNoArea
	}
	edges, hull := m.edges()
	s := &Surface{spots: distinct, mesh: m, edges: edges, hull: hull}
	for _, c := range s.corners() {
		s.triangles = append(s.triangles, [3]Spot{s.spot(c[0]), s.spot(c[1]), s.spot(c[2])})
	}
	return s, nil
}

// merge puts the spots on whole places, sorts them and drops repeated ones.
func merge(drawn []Spot) ([]Spot, error) {
	spots := make([]Spot, len(drawn))
	for i, s := range drawn {
		at := whole(geometry.Point{X: s.X, Y: s.Y})
		spots[i] = Spot{at.X, at.Y, s.Z}
	}
	order := make([]int, len(spots))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int {
		return cmp.Or(cmp.Compare(spots[i].X, spots[j].X), cmp.Compare(spots[i].Y, spots[j].Y))
	})
	var distinct []Spot
	for k, i := range order {
		if k > 0 && samePlace(spots[i], spots[order[k-1]]) {
			if spots[i].Z != spots[order[k-1]].Z {
				return nil, &ConflictError{order[k-1], i}
			}
			continue
		}
		distinct = append(distinct, spots[i])
	}
	return distinct, nil
}

func samePlace(a, b Spot) bool { return a.X == b.X && a.Y == b.Y }

// finely gives a place in multiples of the resolution, whole the nearest whole
// one.
func finely(p geometry.Point) geometry.Point {
	return geometry.Point{X: p.X / geometry.Resolution, Y: p.Y / geometry.Resolution}
}

func whole(p geometry.Point) geometry.Point {
	p = finely(p)
	return geometry.Point{X: math.Round(p.X), Y: math.Round(p.Y)}
}

// Level is the ground level at a place, ok=false outside the hull of the spot
// levels.
func (s *Surface) Level(p geometry.Point) (level float64, ok bool) {
	first := s.hull[0]
	u, v, w := s.mesh.walk(edge{first.to, first.from}, whole(p))
	p = finely(p)
	if u == infinity || v == infinity || w == infinity {
		return s.levelOnHull(p)
	}
	a, b, c := s.spots[u], s.spots[v], s.spots[w]
	area := crossAt(a, b, c.X, c.Y)
	return (a.Z*crossAt(b, c, p.X, p.Y) + b.Z*crossAt(c, a, p.X, p.Y) + c.Z*crossAt(a, b, p.X, p.Y)) / area, true
}

// levelOnHull answers for a place that rounding puts a hair outside the hull.
func (s *Surface) levelOnHull(p geometry.Point) (level float64, ok bool) {
	for _, e := range s.hull {
		a, b := s.spots[e.from], s.spots[e.to]
		dx, dy := b.X-a.X, b.Y-a.Y
		t := min(max(((p.X-a.X)*dx+(p.Y-a.Y)*dy)/(dx*dx+dy*dy), 0), 1)
		if math.Hypot(p.X-(a.X+t*dx), p.Y-(a.Y+t*dy)) <= 1 {
			return a.Z + t*(b.Z-a.Z), true
		}
	}
	return 0, false
}

// Bends gives, in order, the shares of the way from a to b at which the ground
// bends: where the way crosses from one triangle to the next. The ends are
// left out.
func (s *Surface) Bends(a, b geometry.Point) []float64 {
	var bends []float64
	a, b = finely(a), finely(b)
	margin := 1 / math.Hypot(b.X-a.X, b.Y-a.Y)
	for _, e := range s.edges {
		if t, ok := crossing(a, b, s.spots[e.from], s.spots[e.to]); ok && t > margin && t < 1-margin {
			bends = append(bends, t)
		}
	}
	slices.Sort(bends)
	return slices.CompactFunc(bends, func(t, u float64) bool { return math.Abs(u-t) <= margin })
}

// crossing is the share of the way from a to b at which it meets the segment
// c–d, the segment's ends included.
func crossing(a, b geometry.Point, c, d Spot) (float64, bool) {
	fromC := (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
	fromD := (b.X-a.X)*(d.Y-a.Y) - (b.Y-a.Y)*(d.X-a.X)
	if (fromC > 0) == (fromD > 0) && fromC != 0 && fromD != 0 || fromC == fromD {
		return 0, false
	}
	fromA, fromB := crossAt(c, d, a.X, a.Y), crossAt(c, d, b.X, b.Y)
	if fromA == fromB {
		return 0, false
	}
	t := fromA / (fromA - fromB)
	return t, t >= 0 && t <= 1
}

// Triangles gives the triangles, each as three spots counterclockwise. They are not
// to be changed.
func (s *Surface) Triangles() [][3]Spot { return s.triangles }

// corners gives the numbers of the spots of each triangle, counterclockwise, in
// order.
func (s *Surface) corners() [][3]int32 {
	var all [][3]int32
	for _, e := range s.edges {
		for _, side := range []edge{e, {e.to, e.from}} {
			if w := s.mesh.apex[side]; w != infinity && w > e.from && w > e.to {
				all = append(all, [3]int32{side.from, side.to, w})
			}
		}
	}
	return all
}

// spot gives a spot in metres.
func (s *Surface) spot(i int32) Spot {
	at := s.spots[i]
	return Spot{at.X * geometry.Resolution, at.Y * geometry.Resolution, at.Z}
}

// crossAt is twice the signed area of the triangle a, b, (x, y).
func crossAt(a, b Spot, x, y float64) float64 {
	return (b.X-a.X)*(y-a.Y) - (b.Y-a.Y)*(x-a.X)
}
