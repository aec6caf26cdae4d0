package earthwork

import (
	"math"

	"greysill/checker/geometry"
)

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
