package earthwork

import (
	"math"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// maxWork bounds how often a volume holds a part of one side against another.
const maxWork = 5_000_000

// dig is the work on one body, in coordinates from the first corner, so that a
// far origin costs no precision.
type dig struct {
	floor, sides         []facet
	floorArea, perimeter float64
	origin               geometry.Point
	covered              float64 // area of the floor that has ground over it
	work                 int
	body                 Body
}

// facet is a plane over a region: everywhere that none of the conditions is
// negative.
type facet struct {
	within  []linear
	level   linear
	weight  float64
	outward geometry.Point // of a side
}

// triangle is one triangle of the ground.
type triangle struct {
	piece piece
	level linear
}

func newDig(s Shape, up float64) (*dig, error) {
	r, err := newRing(s.Outline)
	switch {
	case err != nil:
		return nil, err
	case !finite(s.Levels...) || len(s.Levels) != 1 && len(s.Levels) != len(s.Outline):
		return nil, ErrLevels
	case !measures(s.Run):
		return nil, ErrRun
	}
	d := &dig{origin: r.corners[0]}
	levels := make([]float64, len(r.corners))
	for i, n := range r.numbers {
		levels[i] = up * s.Levels[n%len(s.Levels)]
		r.corners[i] = d.local(r.corners[i])
		d.perimeter += r.lengths[i]
	}
	d.floorArea = signedArea(r.corners)
	d.floor = floorFacets(r.corners, levels)
	if s.Run > geometry.Resolution { // steeper sides are upright
		d.sides, err = r.sideFacets(levels, s.Run)
	}
	return d, err
}

func (d *dig) local(p geometry.Point) geometry.Point {
	return geometry.Point{X: p.X - d.origin.X, Y: p.Y - d.origin.Y}
}

func (d *dig) triangles(surface *ground.Surface, up float64) []triangle {
	var all []triangle
	for _, t := range surface.Triangles() {
		var q piece
		for _, s := range t {
			q = append(q, d.local(geometry.Point{X: s.X, Y: s.Y}))
		}
		all = append(all, triangle{q, through(q[0], q[1], q[2], up*t[0].Z, up*t[1].Z, up*t[2].Z)})
	}
	return all
}

// floorFacets has the triangles of the floor, with their weights.
func floorFacets(corners []geometry.Point, levels []float64) []facet {
	var all []facet
	for _, t := range geometry.Outline(corners).Triangles() {
		i, j, k := t.Corners[0], t.Corners[1], t.Corners[2]
		a, b, c := corners[i], corners[j], corners[k]
		all = append(all, facet{
			within: []linear{leftOf(a, b), leftOf(b, c), leftOf(c, a)},
			level:  through(a, b, c, levels[i], levels[j], levels[k]),
			weight: t.Weight,
		})
	}
	return all
}

// leftOf is positive to the left of the line from a to b.
func leftOf(a, b geometry.Point) linear {
	return linear{a.Y - b.Y, b.X - a.X, (b.Y-a.Y)*a.X - (b.X-a.X)*a.Y}
}

// sideFacets has the plane over the outer side of each edge. Where the outline
// turns outwards at a corner, the sides meet in the line in which their planes
// cut each other. Where it turns inwards, each ends square to its edge at the
// corner, and the lower of the two holds.
func (r *ring) sideFacets(levels []float64, run float64) ([]facet, error) {
	planes := make([]linear, len(r.corners))
	for i := range planes {
		planes[i] = r.sidePlane(i, levels[i], levels[r.after(i)], run)
	}
	sides := make([]facet, len(r.corners))
	for i, p := range r.corners {
		u, out, q := r.along[i], r.outward(i), r.corners[r.after(i)]
		side := facet{level: planes[i], outward: out, within: []linear{distanceAlong(out, p)}}
		start, end := distanceAlong(u, p), distanceAlong(geometry.Point{X: -u.X, Y: -u.Y}, q)
		if r.mitre(i) > straight {
			start = planes[i].minus(planes[r.before(i)])
		}
		if next := r.after(i); r.mitre(next) > straight {
			end = planes[i].minus(planes[next])
		}
		if !(start.at(q) > 0) {
			return nil, &SteepError{r.numbers[i]}
		}
		if !(end.at(p) > 0) {
			return nil, &SteepError{r.numbers[r.after(i)]}
		}
		side.within = append(side.within, start, end)
		sides[i] = side
	}
	return sides, nil
}

// straight is the turn, in radians, below which a corner counts as none.
const straight = 1e-9

// sidePlane is the plane through an edge, with its levels at both ends, that
// rises square to it.
func (r *ring) sidePlane(i int, from, to, run float64) linear {
	u, out := r.along[i], r.outward(i)
	grade := (to - from) / r.lengths[i]
	x, y := grade*u.X+out.X/run, grade*u.Y+out.Y/run
	return linear{x, y, from - x*r.corners[i].X - y*r.corners[i].Y}
}

// distanceAlong is how far a place lies from p in a direction.
func distanceAlong(direction, p geometry.Point) linear {
	return linear{direction.X, direction.Y, -direction.X*p.X - direction.Y*p.Y}
}

// runsOut reports whether a side is still in the ground where the spot levels
// end: along an edge that only one triangle has.
func (d *dig) runsOut(triangles []triangle) bool {
	for _, e := range hull(triangles) {
		for _, side := range d.sides {
			a, b, ok := e.clip(side.within)
			depth := e.level.minus(side.level)
			if ok && math.Max(depth.at(a), depth.at(b)) > geometry.Resolution {
				return true
			}
		}
	}
	return false
}

// border is an edge of the ground with the plane inside it.
type border struct {
	from, to geometry.Point
	level    linear
}

func hull(triangles []triangle) []border {
	shared := make(map[[2]geometry.Point]bool)
	for _, t := range triangles {
		for i, p := range t.piece {
			shared[[2]geometry.Point{p, t.piece[(i+1)%3]}] = true
		}
	}
	var all []border
	for _, t := range triangles {
		for i, p := range t.piece {
			if q := t.piece[(i+1)%3]; !shared[[2]geometry.Point{q, p}] {
				all = append(all, border{p, q, t.level})
			}
		}
	}
	return all
}

// clip gives the part of a border on which none of the conditions is negative.
func (e border) clip(conditions []linear) (a, b geometry.Point, ok bool) {
	a, b = e.from, e.to
	for _, f := range conditions {
		va, vb := f.at(a), f.at(b)
		if va < 0 && vb < 0 {
			return a, b, false
		}
		if (va < 0) != (vb < 0) {
			t := va / (va - vb)
			p := geometry.Point{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}
			if va < 0 {
				a = p
			} else {
				b = p
			}
		}
	}
	return a, b, true
}
