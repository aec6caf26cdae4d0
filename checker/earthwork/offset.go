package earthwork

import (
	"errors"
	"math"

	"greysill/checker/geometry"
)

// ErrCollapse says that an outline moved in or out so far loses an edge or meets
// itself. It is then another shape, with fewer corners or in two parts, and none
// of the formulas of this package holds for it.
var ErrCollapse = errors.New("the sides run together: an edge of the outline vanishes or the outline meets itself")

// Offset moves every edge of an outline square to itself, outwards for a positive
// distance, inwards for a negative one. Neighbouring edges are carried on or cut
// short until they meet; corners are not rounded. A convex outline can be moved
// outwards without end; any other only until an edge vanishes or it meets itself,
// which is ErrCollapse. The corners keep their order; of those that lie at one
// place only the first is kept. Other errors: ErrOutline.
func Offset(outline []geometry.Point, distance float64) ([]geometry.Point, error) {
	r, err := newRing(outline)
	if err != nil {
		return nil, err
	}
	moved, ok := r.offset(distance)
	if !ok {
		return nil, ErrCollapse
	}
	return moved, nil
}

// offset gives the corners of the ring moved outwards, counterclockwise.
func (r *ring) offset(distance float64) (moved []geometry.Point, ok bool) {
	if !finite(distance) {
		return nil, false
	}
	for i := range r.corners {
		if r.lengths[i]+distance*(r.mitre(i)+r.mitre(r.after(i))) < geometry.Resolution {
			return nil, false
		}
	}
	for i, p := range r.corners {
		m, out, u := r.mitre(i), r.outward(i), r.along[i]
		moved = append(moved, geometry.Point{X: p.X + distance*(out.X-m*u.X), Y: p.Y + distance*(out.Y-m*u.Y)})
	}
	return moved, simple(moved)
}

// growth gives the area of the ring moved outwards by a distance t as
// area + length t + mitres t², exact until an edge vanishes.
func (r *ring) growth() (area, length, mitres float64) {
	for i := range r.corners {
		length += r.lengths[i]
		mitres += r.mitre(i)
	}
	return signedArea(r.corners), length, mitres
}

// Length is the way round an outline moved outwards by a distance, as Offset moves
// it: an anchor trench round a pond, an edging, a fence. Errors: ErrOutline,
// ErrCollapse.
func Length(outline []geometry.Point, distance float64) (float64, error) {
	moved, err := Offset(outline, distance)
	if err != nil {
		return 0, err
	}
	length := 0.0
	for i, p := range moved {
		q := moved[(i+1)%len(moved)]
		length += math.Hypot(q.X-p.X, q.Y-p.Y)
	}
	return length, nil
}
