// Package geometry is plane geometry on points, lines and rings of corners:
// distances, areas, what lies inside what, and cutting a ring into triangles.
//
// Lengths have the unit of the coordinates, which is the metre throughout the
// program.
package geometry

import "math"

// Resolution is the length, in metres, under which two places are one. It
// keeps rounding from telling apart what a drawing puts in the same place, and
// is far finer than anything that can be set out on the ground.
const Resolution = 1e-6

// Point is a place in the plane.
type Point struct{ X, Y float64 }

// Shape is a point, a line or a filled ring. The zero Shape is empty; nothing
// can be measured from it.
type Shape struct {
	points []Point
	closed bool // the last point joins the first
	filled bool // what the ring encloses belongs to the shape
}

// At gives the shape of a point.
func At(p Point) Shape { return Shape{points: []Point{p}} }

// Path gives the shape of a line through the points.
func Path(points []Point) Shape { return Shape{points: points} }

// Outline gives the shape of everything that a ring encloses, its edge
// included. The first corner is not repeated; either orientation will do.
func Outline(corners []Point) Shape {
	return Shape{points: corners, closed: true, filled: true}
}

// Edge gives the ring itself without what it encloses. The edge of a point or
// a line is the same point or line.
func (s Shape) Edge() Shape {
	s.filled = false
	return s
}

// Empty reports whether the shape has no point at all.
func (s Shape) Empty() bool { return len(s.points) == 0 }

// Points gives the shape's points or corners in order. They are not to be
// changed.
func (s Shape) Points() []Point { return s.points }

// Length is the length of a line or of the way round a ring, 0 for a point.
func (s Shape) Length() float64 {
	total := 0.0
	for i := range s.segments() {
		a, b := s.segment(i)
		total += between(a, b)
	}
	return total
}

// Area is the area that a ring encloses, 0 for a point or a line.
func (s Shape) Area() float64 {
	if !s.filled {
		return 0
	}
	return math.Abs(signedArea(s.points))
}

// Contains reports whether a ring encloses a point. Of points on the edge it
// may say either; a point or a line encloses nothing.
func (s Shape) Contains(p Point) bool {
	if !s.filled {
		return false
	}
	inside := false
	for i := range s.segments() {
		a, b := s.segment(i)
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) {
			inside = !inside
		}
	}
	return inside
}

// segments is the number of segments; a point has one, of length 0.
func (s Shape) segments() int {
	switch {
	case len(s.points) < 2 || s.closed:
		return len(s.points)
	default:
		return len(s.points) - 1
	}
}

func (s Shape) segment(i int) (Point, Point) {
	next := i + 1
	if next == len(s.points) {
		next = 0
	}
	return s.points[i], s.points[next]
}

// signedArea is positive when the ring runs counterclockwise. It is summed
// from the first corner so that a far origin costs no precision.
func signedArea(ring []Point) float64 {
	twice := 0.0
	for i := 2; i < len(ring); i++ {
		twice += cross(ring[0], ring[i-1], ring[i])
	}
	return twice / 2
}

// cross is twice the signed area of a triangle, positive when a, b, c run
// counterclockwise.
func cross(a, b, c Point) float64 {
	return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
}

func between(a, b Point) float64 { return math.Hypot(b.X-a.X, b.Y-a.Y) }

// along is the place a share t of the way from a to b.
func along(a, b Point, t float64) Point {
	return Point{a.X + (b.X-a.X)*t, a.Y + (b.Y-a.Y)*t}
}
