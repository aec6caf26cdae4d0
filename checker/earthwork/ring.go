package earthwork

import (
	"errors"
	"math"
	"slices"

	"github.com/peterstace/simplefeatures/geom"

	"greysill/checker/geometry"
)

// ErrOutline says that an outline is no ring round an area: it has fewer than
// three corners apart, a corner that turns straight back, a coordinate that is
// not finite, or it crosses itself.
var ErrOutline = errors.New("the outline is no ring of corners round an area")

// ring is an outline made ready to be offset: counterclockwise, no two corners at
// one place.
type ring struct {
	corners []geometry.Point
	along   []geometry.Point // the direction of the edge from each corner to the next, of length 1
	lengths []float64        // of those edges
	numbers []int            // of the corners in the outline as drawn
}

func newRing(outline []geometry.Point) (*ring, error) {
	r := &ring{}
	for i, p := range outline {
		if !finite(p.X, p.Y) {
			return nil, ErrOutline
		}
		if n := len(r.corners); n == 0 || apart(r.corners[n-1], p) && (i < len(outline)-1 || apart(p, r.corners[0])) {
			r.corners, r.numbers = append(r.corners, p), append(r.numbers, i)
		}
	}
	if len(r.corners) < 3 || !simple(r.corners) {
		return nil, ErrOutline
	}
	if signedArea(r.corners) < 0 {
		slices.Reverse(r.corners)
		slices.Reverse(r.numbers)
	}
	return r, r.measure()
}

// measure takes the directions and lengths of the edges.
func (r *ring) measure() error {
	for i, p := range r.corners {
		q := r.corners[r.after(i)]
		length := math.Hypot(q.X-p.X, q.Y-p.Y)
		r.along = append(r.along, geometry.Point{X: (q.X - p.X) / length, Y: (q.Y - p.Y) / length})
		r.lengths = append(r.lengths, length)
	}
	for i := range r.corners {
		if cos, _ := r.turn(i); cos <= -1+1e-9 {
			return ErrOutline
		}
	}
	return nil
}

func (r *ring) after(i int) int { return (i + 1) % len(r.corners) }

func (r *ring) before(i int) int { return (i + len(r.corners) - 1) % len(r.corners) }

// turn gives the cosine and the sine of the angle that the outline turns through
// at a corner, positive to the left.
func (r *ring) turn(i int) (cos, sin float64) {
	u, v := r.along[r.before(i)], r.along[i]
	return u.X*v.X + u.Y*v.Y, u.X*v.Y - u.Y*v.X
}

// mitre is the tangent of half the angle of turn: how far an edge grows at this
// corner for each unit that the outline is moved outwards.
func (r *ring) mitre(i int) float64 {
	cos, sin := r.turn(i)
	return sin / (1 + cos)
}

func (r *ring) convex() bool {
	for i := range r.corners {
		if r.mitre(i) < 0 {
			return false
		}
	}
	return true
}

// outward is the direction away from the area, square to an edge.
func (r *ring) outward(i int) geometry.Point {
	return geometry.Point{X: r.along[i].Y, Y: -r.along[i].X}
}

func apart(a, b geometry.Point) bool {
	return math.Hypot(a.X-b.X, a.Y-b.Y) > geometry.Resolution
}

// simple reports whether a ring of corners does not meet itself.
func simple(corners []geometry.Point) bool {
	coordinates := make([]float64, 0, 2*len(corners)+2)
	for _, p := range append(slices.Clone(corners), corners[0]) {
		coordinates = append(coordinates, p.X-corners[0].X, p.Y-corners[0].Y)
	}
	return geom.NewLineString(geom.NewSequence(coordinates, geom.DimXY)).IsSimple() && signedArea(corners) != 0
}

// signedArea is positive when the ring runs counterclockwise.
func signedArea(corners []geometry.Point) float64 { return piece(corners).area() }
