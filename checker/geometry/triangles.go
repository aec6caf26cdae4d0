package geometry

import (
	"math"
	"slices"
)

// Triangle is one triangle of a cut-up ring: the numbers of its corners, and
// the weight that it has in a mean.
type Triangle struct {
	Corners [3]int
	Weight  float64
}

// Triangles cuts a ring into triangles between its corners: again and again
// the corner that the shortest diagonal cuts off. Where four corners are left
// that bulge outwards, both ways to cut them count half, which makes a mean
// over a rectangle the mean of its corners, as in the grid method of
// earthworks.
func (s Shape) Triangles() []Triangle {
	var triangles []Triangle
	left := s.counterclockwise()
	for len(left) > 2 {
		if len(left) == 4 && s.bulges(left) {
			return append(triangles, bothCuts(left)...)
		}
		i, isEar := s.nextEar(left)
		if isEar {
			triangles = append(triangles, Triangle{s.around(left, i), 1})
		}
		left = slices.Delete(left, i, i+1)
	}
	return triangles
}

// Mean is the mean over a ring of a quantity that is given at each corner and
// varies linearly over each of its triangles. A ring too thin to cut has the
// plain mean of its corners.
func (s Shape) Mean(atCorners []float64) float64 {
	sum, area := 0.0, 0.0
	for _, t := range s.Triangles() {
		a, b, c := t.Corners[0], t.Corners[1], t.Corners[2]
		weight := t.Weight * math.Abs(cross(s.points[a], s.points[b], s.points[c]))
		sum += weight * (atCorners[a] + atCorners[b] + atCorners[c]) / 3
		area += weight
	}
	if area == 0 {
		return plainMean(atCorners)
	}
	return sum / area
}

func plainMean(xs []float64) float64 {
	sum := 0.0
	for _, x := range xs {
		sum += x
	}
	return sum / float64(len(xs))
}

func (s Shape) counterclockwise() []int {
	order := make([]int, len(s.points))
	for i := range order {
		order[i] = i
	}
	if signedArea(s.points) < 0 {
		slices.Reverse(order)
	}
	return order
}

// nextEar finds the corner to cut off. Where rounding leaves no ear, it gives
// the flattest corner, which can be left out without harm.
func (s Shape) nextEar(left []int) (index int, isEar bool) {
	shortest, flattest, flat := math.Inf(1), math.Inf(1), 0
	for i := range left {
		c := s.around(left, i)
		length := square(s.points[c[0]], s.points[c[2]])
		if length < shortest && s.isEar(left, c) {
			shortest, index, isEar = length, i, true
		}
		if h := math.Abs(s.height(c)); h < flattest {
			flattest, flat = h, i
		}
	}
	if !isEar {
		return flat, false
	}
	return index, true
}

// isEar reports whether the triangle at a corner lies in the ring and no other
// corner touches it. Corners on a straight edge are no ears, so that none is
// lost.
func (s Shape) isEar(left []int, c [3]int) bool {
	if s.height(c) <= Resolution {
		return false
	}
	for _, k := range left {
		if k != c[0] && k != c[1] && k != c[2] && s.touches(c, s.points[k]) {
			return false
		}
	}
	return true
}

// touches reports whether a point lies in a counterclockwise triangle or on
// its edge.
func (s Shape) touches(c [3]int, p Point) bool {
	for i := range c {
		a, b := s.points[c[i]], s.points[c[(i+1)%3]]
		if cross(a, b, p) < -Resolution*between(a, b) {
			return false
		}
	}
	return true
}

// height is how far the middle corner stands out from the line between its
// neighbours, negative when it stands in.
func (s Shape) height(c [3]int) float64 {
	a, b, d := s.points[c[0]], s.points[c[1]], s.points[c[2]]
	width := between(a, d)
	if width == 0 {
		return 0
	}
	return cross(a, b, d) / width
}

func (s Shape) bulges(left []int) bool {
	for i := range left {
		if s.height(s.around(left, i)) <= Resolution {
			return false
		}
	}
	return true
}

func bothCuts(q []int) []Triangle {
	return []Triangle{
		{[3]int{q[0], q[1], q[2]}, 0.5}, {[3]int{q[0], q[2], q[3]}, 0.5},
		{[3]int{q[0], q[1], q[3]}, 0.5}, {[3]int{q[1], q[2], q[3]}, 0.5},
	}
}

func (s Shape) around(left []int, i int) [3]int {
	n := len(left)
	return [3]int{left[(i+n-1)%n], left[i], left[(i+1)%n]}
}
