package drawing

import (
	"math"
	"slices"

	"greysill/checker/geometry"
)

// zone gives the line on which every place lies just so far from a shape, in
// pieces. keep says which side counts, nil when both do. step is the length into
// which curves are cut. All are in metres.
func zone(s geometry.Shape, distance, step float64, keep func(geometry.Point) bool) [][]geometry.Point {
	if distance <= geometry.Resolution || s.Empty() {
		return nil
	}
	z := &zoned{shape: s, sides: sides(s), least: distance*(1-1e-9) - geometry.Resolution, keep: keep}
	for i, side := range z.sides {
		z.follow(i, arc(side[0], distance, step))
		if long := apart(side[0], side[1]); long > geometry.Resolution {
			across := geometry.Point{X: (side[1].Y - side[0].Y) / long * distance, Y: (side[0].X - side[1].X) / long * distance}
			z.follow(i, straight(plus(side[0], across, 1), plus(side[1], across, 1), step))
			z.follow(i, straight(plus(side[0], across, -1), plus(side[1], across, -1), step))
		}
	}
	return z.pieces
}

func plus(p, by geometry.Point, times float64) geometry.Point {
	return geometry.Point{X: p.X + times*by.X, Y: p.Y + times*by.Y}
}

// zoned is a shape whose zone is being drawn.
type zoned struct {
	shape  geometry.Shape
	sides  [][2]geometry.Point
	least  float64 // distance from any side
	keep   func(geometry.Point) bool
	pieces [][]geometry.Point
}

// sides gives the stretches of a shape; its last point has one without length, so
// that every point begins one.
func sides(s geometry.Shape) [][2]geometry.Point {
	ring := s.Points()
	all := make([][2]geometry.Point, len(ring))
	for i, p := range ring {
		all[i] = [2]geometry.Point{p, ring[min(i+1, len(ring)-1)]}
	}
	if closed := s.Length() > geometry.Path(ring).Length()+geometry.Resolution; closed {
		all[len(all)-1][1] = ring[0]
	}
	return all
}

// follow keeps what is on the zone's edge of a line beside a side or round its
// beginning.
func (z *zoned) follow(side int, line []geometry.Point) {
	var piece []geometry.Point
	end := func() {
		if len(piece) > 1 {
			z.pieces = append(z.pieces, piece)
		}
		piece = nil
	}
	for _, p := range line {
		if z.on(p, side) {
			piece = append(piece, p)
		} else {
			end()
		}
	}
	end()
}

// on reports whether a place is no nearer to the shape than the zone reaches. It
// looks at the sides near the given one first, since those tell most often.
func (z *zoned) on(p geometry.Point, near int) bool {
	n := len(z.sides)
	for k := range n {
		side := z.sides[((near+(k+1)/2*(1-k%2*2))%n+n)%n]
		if toSide(p, side) < z.least {
			return false
		}
	}
	return !z.shape.Contains(p) && (z.keep == nil || z.keep(p))
}

// toSide is the distance of a place from a stretch.
func toSide(p geometry.Point, side [2]geometry.Point) float64 {
	a, dx, dy := side[0], side[1].X-side[0].X, side[1].Y-side[0].Y
	t := 0.0
	if square := dx*dx + dy*dy; square > 0 {
		t = min(max(((p.X-a.X)*dx+(p.Y-a.Y)*dy)/square, 0), 1)
	}
	return math.Hypot(p.X-a.X-t*dx, p.Y-a.Y-t*dy)
}

// mostSteps bounds the work that one stretch of a zone takes.
const mostSteps = 720

func straight(a, b geometry.Point, step float64) []geometry.Point {
	n := min(max(int(math.Ceil(apart(a, b)/step)), 1), mostSteps)
	way := make([]geometry.Point, n+1)
	for i := range way {
		way[i] = along(a, b, float64(i)/float64(n))
	}
	return way
}

func arc(centre geometry.Point, r, step float64) []geometry.Point {
	n := min(max(int(math.Ceil(2*math.Pi*r/step)), 24), mostSteps)
	way := make([]geometry.Point, n+1)
	for i := range way {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		way[i] = geometry.Point{X: centre.X + r*cos, Y: centre.Y + r*sin}
	}
	return way
}

// levelCuts gives, in order, where a ring crosses a level line.
func levelCuts(ring []geometry.Point, y float64) []float64 {
	var cuts []float64
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > y) != (b.Y > y) {
			cuts = append(cuts, a.X+(b.X-a.X)*(y-a.Y)/(b.Y-a.Y))
		}
	}
	slices.Sort(cuts)
	return cuts
}

// simplified drops the points of a line that lie straight between their
// neighbours, to within a millionth of a metre.
func simplified(line []geometry.Point) []geometry.Point {
	if len(line) < 3 {
		return line
	}
	kept := line[:1:1]
	for i := 1; i+1 < len(line); i++ {
		a, b := kept[len(kept)-1], line[i+1]
		if geometry.Distance(geometry.At(line[i]), geometry.Path([]geometry.Point{a, b})) > geometry.Resolution {
			kept = append(kept, line[i])
		}
	}
	return append(kept, line[len(line)-1])
}
