package geometry

// Overlap is how deep two rings reach into each other, 0 where they touch, lie
// apart or are no rings. It is measured at corners, in the middle of the pieces
// into which each ring cuts the other's edge, and in the middle of triangles, so
// that it may be less than the deepest place; it is more than 0 wherever the two
// share ground.
func Overlap(a, b Shape) float64 {
	if !a.filled || !b.filled || Distance(a, b) > 0 {
		return 0
	}
	return max(a.deepestIn(b), b.deepestIn(a))
}

func (s Shape) deepestIn(ring Shape) float64 {
	deepest := 0.0
	probe := func(p Point) {
		if ring.Contains(p) {
			deepest = max(deepest, Distance(At(p), ring.Edge()))
		}
	}
	for i := range s.segments() {
		a, b := s.segment(i)
		cuts := ring.cuts(a, b)
		for k := 1; k < len(cuts); k++ {
			probe(along(a, b, (cuts[k-1]+cuts[k])/2))
		}
		probe(a)
	}
	for _, p := range s.Middles() {
		probe(p)
	}
	return deepest
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
