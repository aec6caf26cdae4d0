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
	var pieces [][]geometry.Point
	on := func(p geometry.Point) bool {
		return geometry.Distance(geometry.At(p), s) >= distance*(1-1e-9)-geometry.Resolution && (keep == nil || keep(p))
	}
	for _, way := range candidates(s, distance, step) {
		var piece []geometry.Point
		for _, p := range way {
			if on(p) {
				piece = append(piece, p)
				continue
			}
			pieces, piece = keepPiece(pieces, piece), nil
		}
		pieces = keepPiece(pieces, piece)
	}
	return pieces
}

func keepPiece(pieces [][]geometry.Point, piece []geometry.Point) [][]geometry.Point {
	if len(piece) > 1 {
		return append(pieces, piece)
	}
	return pieces
}

// candidates gives all lines that the edge of a zone can run on: beside every
// stretch of the shape on both sides, and round every corner.
func candidates(s geometry.Shape, distance, step float64) [][]geometry.Point {
	ring := s.Points()
	var ways [][]geometry.Point
	for i, p := range ring {
		ways = append(ways, arc(p, distance, step))
		next, closed := i+1, s.Edge().Length() > geometry.Path(ring).Length()+geometry.Resolution
		if next == len(ring) {
			if !closed {
				break
			}
			next = 0
		}
		q := ring[next]
		long := apart(p, q)
		if long <= geometry.Resolution {
			continue
		}
		nx, ny := (q.Y-p.Y)/long*distance, -(q.X-p.X)/long*distance
		ways = append(ways, straight(geometry.Point{X: p.X + nx, Y: p.Y + ny}, geometry.Point{X: q.X + nx, Y: q.Y + ny}, step),
			straight(geometry.Point{X: p.X - nx, Y: p.Y - ny}, geometry.Point{X: q.X - nx, Y: q.Y - ny}, step))
	}
	return ways
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
