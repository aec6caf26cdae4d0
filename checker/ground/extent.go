package ground

import (
	"math"

	"greysill/checker/geometry"
)

// Extent is how high and how steep the ground is over a shape: levels in metres,
// slopes as fall over length in plan.
type Extent struct{ Lowest, Highest, Flattest, Steepest float64 }

// Under gives the extent of the ground under a shape, all of it: over what a ring
// encloses, along a line, at a point. ok=false where some of it lies outside the
// hull of the spot levels, or the shape is empty. Slopes are those of whole
// triangles, counted where the shape has some part of them.
func (s *Surface) Under(shape geometry.Shape) (e Extent, ok bool) {
	for _, p := range shape.Points() {
		if _, ok := s.Level(p); !ok {
			return Extent{}, false
		}
	}
	e = Extent{math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)}
	if shape.Area() > geometry.Resolution*shape.Length() {
		s.within(shape, &e)
	} else {
		s.along(shape.Points(), &e)
	}
	return e, e.Lowest <= e.Highest && e.Flattest <= e.Steepest
}

// within cuts the triangles of a ring with those of the ground.
func (s *Surface) within(shape geometry.Shape, e *Extent) {
	corners := shape.Points()
	for _, cut := range shape.Triangles() {
		a, b, c := corners[cut.Corners[0]], corners[cut.Corners[1]], corners[cut.Corners[2]]
		for _, t := range s.triangles {
			if apart(t, a, b, c) {
				continue
			}
			if piece := clipped([]geometry.Point{a, b, c}, t); wide(piece) {
				e.take(t, piece...)
			}
		}
	}
}

// along takes the ground between the places at which it bends.
func (s *Surface) along(points []geometry.Point, e *Extent) {
	for i, a := range points {
		b := points[min(i+1, len(points)-1)]
		from := 0.0
		for _, to := range append(s.Bends(a, b), 1) {
			middle := between(a, b, (from+to)/2)
			if t, ok := s.triangle(middle); ok {
				e.take(t, between(a, b, from), between(a, b, to))
			}
			from = to
		}
	}
}

// triangle finds the triangle that holds a place.
func (s *Surface) triangle(p geometry.Point) (t [3]Spot, ok bool) {
	first := s.hull[0]
	u, v, w := s.mesh.walk(edge{first.to, first.from}, whole(p))
	if u == infinity || v == infinity || w == infinity {
		return s.nearHull(u, v, w)
	}
	return [3]Spot{s.spot(u), s.spot(v), s.spot(w)}, true
}

// nearHull finds the triangle inside the hull edge that a place lies on.
func (s *Surface) nearHull(u, v, w int32) (t [3]Spot, ok bool) {
	for _, e := range []edge{{u, v}, {v, w}, {w, u}} {
		if e.from == infinity || e.to == infinity {
			continue
		}
		if x := s.mesh.apex[edge{e.to, e.from}]; x != infinity {
			return [3]Spot{s.spot(e.to), s.spot(e.from), s.spot(x)}, true
		}
	}
	return t, false
}

// take widens the extent by a piece of a triangle.
func (e *Extent) take(t [3]Spot, piece ...geometry.Point) {
	x, y := gradient(t)
	slope := math.Hypot(x, y)
	e.Flattest, e.Steepest = min(e.Flattest, slope), max(e.Steepest, slope)
	for _, p := range piece {
		level := t[0].Z + x*(p.X-t[0].X) + y*(p.Y-t[0].Y)
		e.Lowest, e.Highest = min(e.Lowest, level), max(e.Highest, level)
	}
}

// gradient is the rise of a triangle's plane in each direction.
func gradient(t [3]Spot) (x, y float64) {
	bx, by, bz := t[1].X-t[0].X, t[1].Y-t[0].Y, t[1].Z-t[0].Z
	cx, cy, cz := t[2].X-t[0].X, t[2].Y-t[0].Y, t[2].Z-t[0].Z
	area := bx*cy - by*cx
	return (bz*cy - cz*by) / area, (cz*bx - bz*cx) / area
}

// apart reports whether the boxes round two triangles have nothing in common.
func apart(t [3]Spot, a, b, c geometry.Point) bool {
	return max(a.X, b.X, c.X) < min(t[0].X, t[1].X, t[2].X) || min(a.X, b.X, c.X) > max(t[0].X, t[1].X, t[2].X) ||
		max(a.Y, b.Y, c.Y) < min(t[0].Y, t[1].Y, t[2].Y) || min(a.Y, b.Y, c.Y) > max(t[0].Y, t[1].Y, t[2].Y)
}

// clipped is the piece of a convex ring that lies in a triangle.
func clipped(ring []geometry.Point, t [3]Spot) []geometry.Point {
	for i := range t {
		a, b := t[i], t[(i+1)%3]
		var kept []geometry.Point
		for k, p := range ring {
			q := ring[(k+1)%len(ring)]
			here, next := crossAt(a, b, p.X, p.Y), crossAt(a, b, q.X, q.Y)
			if here >= 0 {
				kept = append(kept, p)
			}
			if (here > 0 && next < 0) || (here < 0 && next > 0) {
				kept = append(kept, between(p, q, here/(here-next)))
			}
		}
		ring = kept
	}
	return ring
}

// wide reports whether a ring is wider than the resolution, and so more than
// what two neighbours have in common.
func wide(ring []geometry.Point) bool {
	shape := geometry.Outline(ring)
	return shape.Area() > geometry.Resolution*shape.Length()
}

func between(a, b geometry.Point, t float64) geometry.Point {
	return geometry.Point{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}
}
