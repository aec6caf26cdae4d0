package geometry

import "slices"

// Overlap reports whether two rings share ground and reach deeper into each other
// than a depth. It looks at corners, at the middle of the pieces into which each ring
// cuts the other's edge, and last at the places given, which lie within one of them,
// such as its Middles: rings that are the same meet with their edges.
func Overlap(a, b Shape, depth float64, within []Point) bool {
	if !a.filled || !b.filled || Distance(a, b) > 0 {
		return false
	}
	return a.reachesInto(b, depth) || b.reachesInto(a, depth) ||
		slices.ContainsFunc(within, func(p Point) bool { return a.holds(p, depth) && b.holds(p, depth) })
}

// holds reports whether a ring has a place deeper within than a depth.
func (s Shape) holds(p Point, depth float64) bool {
	return s.Contains(p) && Distance(At(p), s.Edge()) > depth
}

func (s Shape) reachesInto(ring Shape, depth float64) bool {
	for i := range s.segments() {
		a, b := s.segment(i)
		if ring.holds(a, depth) {
			return true
		}
		cuts := ring.cuts(a, b)
		for k := 1; k < len(cuts); k++ {
			if ring.holds(along(a, b, (cuts[k-1]+cuts[k])/2), depth) {
				return true
			}
		}
	}
	return false
}

// Middles gives the middle of every triangle that a ring is cut into, else of every
// stretch of a line, or the point itself.
func (s Shape) Middles() []Point {
	var middles []Point
	if s.filled {
		for _, t := range s.Triangles() {
			a, b, c := s.points[t.Corners[0]], s.points[t.Corners[1]], s.points[t.Corners[2]]
			middles = append(middles, Point{(a.X + b.X + c.X) / 3, (a.Y + b.Y + c.Y) / 3})
		}
		return middles
	}
	for i := range s.segments() {
		a, b := s.segment(i)
		middles = append(middles, along(a, b, 0.5))
	}
	return middles
}
