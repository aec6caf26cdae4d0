package earthwork

import "greysill/checker/geometry"

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
