package geometry

import "math"

// Distance is the least distance between two shapes, 0 when they touch or
// overlap, a shape inside a ring included. Neither may be empty.
func Distance(a, b Shape) float64 {
	d := between(Nearest(a, b))
	if d <= Resolution {
		return 0
	}
	return d
}

// Nearest gives the place of each shape that is nearest to the other; the same
// place twice where they overlap. Neither may be empty.
func Nearest(a, b Shape) (onA, onB Point) {
	if p, ok := enclosed(a, b); ok {
		return p, p
	}
	best, box := math.Inf(1), b.box()
	for i := range a.segments() {
		p, q := a.segment(i)
		if box.squareTo(p, q) >= best {
			continue
		}
		for j := range b.segments() {
			r, s := b.segment(j)
			u, v := nearestOnSegments(p, q, r, s)
			if d := square(u, v); d < best {
				best, onA, onB = d, u, v
			}
		}
	}
	return onA, onB
}

// enclosed finds a point of one shape inside the other. Where the edges do not
// meet, the first point answers for all.
func enclosed(a, b Shape) (Point, bool) {
	if b.Contains(a.points[0]) {
		return a.points[0], true
	}
	return b.points[0], a.Contains(b.points[0])
}

// nearestOnSegments gives the nearest places of the segments a–b and c–d: where
// they cross, else one of the four ends with its nearest place on the other
// segment.
func nearestOnSegments(a, b, c, d Point) (onAB, onCD Point) {
	if t, ok := crossing(a, b, c, d); ok {
		p := along(a, b, t)
		return p, p
	}
	best := math.Inf(1)
	try := func(p, q Point) {
		if s := square(p, q); s < best {
			best, onAB, onCD = s, p, q
		}
	}
	try(a, nearestOnSegment(a, c, d))
	try(b, nearestOnSegment(b, c, d))
	try(nearestOnSegment(c, a, b), c)
	try(nearestOnSegment(d, a, b), d)
	return onAB, onCD
}

// crossing finds the share of the way from a to b at which the segment crosses
// c–d, when each has ends on both sides of the other.
func crossing(a, b, c, d Point) (float64, bool) {
	fromA, fromB := cross(c, d, a), cross(c, d, b)
	if (fromA < 0) == (fromB < 0) || fromA == 0 || fromB == 0 {
		return 0, false
	}
	fromC, fromD := cross(a, b, c), cross(a, b, d)
	if (fromC < 0) == (fromD < 0) || fromC == 0 || fromD == 0 {
		return 0, false
	}
	return fromA / (fromA - fromB), true
}

func nearestOnSegment(p, a, b Point) Point { return along(a, b, projection(p, a, b)) }

// projection is the share of the way from a to b that is nearest to p.
func projection(p, a, b Point) float64 {
	length := square(a, b)
	if length == 0 {
		return 0
	}
	t := ((p.X-a.X)*(b.X-a.X) + (p.Y-a.Y)*(b.Y-a.Y)) / length
	return min(max(t, 0), 1)
}

// squareToSegment is the square of the distance of a point from a segment.
func squareToSegment(p, a, b Point) float64 { return square(p, nearestOnSegment(p, a, b)) }

func square(a, b Point) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	return dx*dx + dy*dy
}

// box is the upright rectangle round a shape.
type box struct{ low, high Point }

func (s Shape) box() box {
	b := box{s.points[0], s.points[0]}
	for _, p := range s.points[1:] {
		b.low = Point{min(b.low.X, p.X), min(b.low.Y, p.Y)}
		b.high = Point{max(b.high.X, p.X), max(b.high.Y, p.Y)}
	}
	return b
}

// squareTo is the square of the least distance from the box to the box of a
// segment: no part of the shape is nearer to the segment.
func (b box) squareTo(p, q Point) float64 {
	dx := max(b.low.X-max(p.X, q.X), min(p.X, q.X)-b.high.X, 0)
	dy := max(b.low.Y-max(p.Y, q.Y), min(p.Y, q.Y)-b.high.Y, 0)
	return dx*dx + dy*dy
}
