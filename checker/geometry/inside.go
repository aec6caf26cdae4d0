package geometry

import (
	"math"
	"slices"
)

// Inside reports whether the whole of a shape lies inside a ring. Touching the
// edge from inside counts as inside. Neither may be empty.
func Inside(s, ring Shape) bool {
	return farthestProbe(s, ring) <= Resolution
}

// FarthestOutside is how far the farthest point of a shape lies outside a
// ring, 0 when the shape is inside. Where the farthest point is a corner or an
// end, the answer is exact; where it lies in between, as it can beside a notch
// in the ring, it is at most a thousandth of the shape's size too small.
// Neither may be empty.
func FarthestOutside(s, ring Shape) float64 {
	best := farthestProbe(s, ring)
	if best <= Resolution {
		return 0
	}
	b := s.box()
	return search(s.simplices(), ring, best, max(between(b.low, b.high)/1000, Resolution))
}

// ClearOfEdge is the least distance from a shape inside a ring to the ring's
// edge, 0 when the shape is on the edge or over it. Neither may be empty.
func ClearOfEdge(s, ring Shape) float64 {
	if !Inside(s, ring) {
		return 0
	}
	return Distance(s, ring.Edge())
}

// farthestProbe is the greatest distance outside a ring of those places that
// tell whether a shape is inside: its points, and the middle of every piece
// into which the ring cuts its edge. A ring has no holes, so that a shape whose
// edge is inside is inside as a whole.
func farthestProbe(s, ring Shape) float64 {
	worst := 0.0
	for i := range s.segments() {
		a, b := s.segment(i)
		cuts := ring.cuts(a, b)
		for k := 1; k < len(cuts); k++ {
			worst = max(worst, ring.toPoint(along(a, b, (cuts[k-1]+cuts[k])/2)))
		}
		worst = max(worst, ring.toPoint(a), ring.toPoint(b))
	}
	return worst
}

// cuts gives, in order, the shares of the way from a to b at which the segment
// begins, meets the ring and ends.
func (s Shape) cuts(a, b Point) []float64 {
	cuts := []float64{0, 1}
	for i := range s.segments() {
		c, d := s.segment(i)
		if t, ok := crossing(a, b, c, d); ok {
			cuts = append(cuts, t)
		}
		if squareToSegment(c, a, b) <= Resolution*Resolution {
			cuts = append(cuts, projection(c, a, b))
		}
	}
	slices.Sort(cuts)
	return cuts
}

// toPoint is the distance of a point from the shape, 0 inside a ring.
func (s Shape) toPoint(p Point) float64 {
	if s.Contains(p) {
		return 0
	}
	return s.toEdge(p)
}

// toEdge is the distance of a point from the shape's line or edge.
func (s Shape) toEdge(p Point) float64 {
	least := math.Inf(1)
	for i := range s.segments() {
		a, b := s.segment(i)
		least = min(least, squareToSegment(p, a, b))
	}
	return math.Sqrt(least)
}

// surrounds reports whether everything within a distance of a point lies in
// the ring.
func (s Shape) surrounds(p Point, distance float64) bool {
	return s.Contains(p) && s.toEdge(p) >= distance
}

// simplices cuts a shape into points, segments or triangles.
func (s Shape) simplices() [][]Point {
	var all [][]Point
	if s.filled {
		for _, t := range s.Triangles() {
			all = append(all, []Point{s.points[t.Corners[0]], s.points[t.Corners[1]], s.points[t.Corners[2]]})
		}
		return all
	}
	for i := range s.segments() {
		a, b := s.segment(i)
		all = append(all, []Point{a, b})
	}
	return all
}

// search halves simplices until none can hold a point that lies more than the
// tolerance farther outside the ring than the best found. A simplex smaller
// than the tolerance never can, so that the search ends.
func search(stack [][]Point, ring Shape, best, tolerance float64) float64 {
	for len(stack) > 0 {
		simplex := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		i, j := longest(simplex)
		if ring.near(simplex, best+tolerance) || ring.surrounds(simplex[i], between(simplex[i], simplex[j])) {
			continue
		}
		middle := along(simplex[i], simplex[j], 0.5)
		best = max(best, ring.toPoint(middle))
		stack = append(stack, replace(simplex, i, middle), replace(simplex, j, middle))
	}
	return best
}

// near reports whether one segment of the ring has all of a simplex within
// reach. It has when it has the simplex's points, distance from a segment being
// a convex function.
func (s Shape) near(simplex []Point, reach float64) bool {
	for i := range s.segments() {
		a, b := s.segment(i)
		if !slices.ContainsFunc(simplex, func(p Point) bool { return squareToSegment(p, a, b) > reach*reach }) {
			return true
		}
	}
	return false
}

func longest(simplex []Point) (i, j int) {
	best := -1.0
	for k := range simplex {
		for l := range k {
			if d := square(simplex[k], simplex[l]); d > best {
				best, i, j = d, k, l
			}
		}
	}
	return i, j
}

func replace(simplex []Point, i int, p Point) []Point {
	changed := slices.Clone(simplex)
	changed[i] = p
	return changed
}
