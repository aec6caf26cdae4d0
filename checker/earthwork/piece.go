package earthwork

import "greysill/checker/geometry"

// linear is a quantity that varies linearly with place: a level over a plane, or
// a distance from a line.
type linear struct{ x, y, constant float64 }

func (f linear) at(p geometry.Point) float64 { return f.x*p.X + f.y*p.Y + f.constant }

func (f linear) minus(g linear) linear {
	return linear{f.x - g.x, f.y - g.y, f.constant - g.constant}
}

// through gives the plane through three places, each with its level. Where they
// lie in one line it is level, for no volume stands on them.
func through(a, b, c geometry.Point, za, zb, zc float64) linear {
	area := (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
	if area == 0 {
		return linear{constant: za}
	}
	x := ((zb-za)*(c.Y-a.Y) - (zc-za)*(b.Y-a.Y)) / area
	y := ((zc-za)*(b.X-a.X) - (zb-za)*(c.X-a.X)) / area
	return linear{x, y, za - x*a.X - y*a.Y}
}

// piece is a convex polygon in plan, counterclockwise. One without corners is
// empty.
type piece []geometry.Point

// split cuts a piece in two where f is 0. A piece on which f is 0 everywhere
// counts as above.
func (q piece) split(f linear) (above, below piece) {
	low, high := q.extremes(f)
	switch {
	case low >= 0:
		return q, nil
	case high <= 0:
		return nil, q
	}
	for i, a := range q {
		b := q[(i+1)%len(q)]
		va, vb := f.at(a), f.at(b)
		if va >= 0 {
			above = append(above, a)
		}
		if va <= 0 {
			below = append(below, a)
		}
		if va < 0 && vb > 0 || va > 0 && vb < 0 {
			t := va / (va - vb)
			p := geometry.Point{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}
			above, below = append(above, p), append(below, p)
		}
	}
	return above, below
}

// within gives the part of a piece on which none of the conditions is negative.
func (q piece) within(conditions []linear) piece {
	for _, f := range conditions {
		if len(q) == 0 {
			return nil
		}
		q, _ = q.split(f)
	}
	return q
}

// without gives the parts of a piece on which one of the conditions is negative.
func (q piece) without(conditions []linear) []piece {
	var parts []piece
	for _, f := range conditions {
		if len(q) == 0 {
			return parts
		}
		var outside piece
		if q, outside = q.split(f); len(outside) > 0 {
			parts = append(parts, outside)
		}
	}
	return parts
}

func (q piece) extremes(f linear) (low, high float64) {
	for i, p := range q {
		v := f.at(p)
		if i == 0 {
			low, high = v, v
		}
		low, high = min(low, v), max(high, v)
	}
	return low, high
}

func (q piece) area() float64 { return q.integral(linear{constant: 1}) }

// integral is the volume under f: over each triangle its area times the mean of f
// at the corners.
func (q piece) integral(f linear) float64 {
	sum := 0.0
	for i := 2; i < len(q); i++ {
		a, b, c := q[0], q[i-1], q[i]
		area := ((b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)) / 2
		sum += area * (f.at(a) + f.at(b) + f.at(c)) / 3
	}
	return sum
}
