package ground

import (
	"errors"
	"maps"
	"math"
	"slices"

	"greysill/checker/geometry"
)

// Contour is a line on the ground of one level, in metres, with the higher ground
// to its left.
type Contour struct {
	Level  float64
	Line   []geometry.Point
	Closed bool // the last point joins the first, which is not repeated
}

// mostLevels bounds what an interval may ask for.
const mostLevels = 1000

// ErrInterval says that contours of an interval cannot be drawn.
var ErrInterval = errors.New("the contour interval is more than 0, and so great that there are at most 1,000 levels")

// Contours gives the contour lines of every whole multiple of an interval in
// metres, from the lowest up, those of one level in an order that the spot levels
// fix. Lines begin and end on the hull, or are closed. Ground that is level at a
// contour's own level has the contour along its lower sides, a ridge along both of
// them. The error is ErrInterval.
func (s *Surface) Contours(interval float64) ([]Contour, error) {
	low, high := s.spots[0].Z, s.spots[0].Z
	for _, spot := range s.spots {
		low, high = min(low, spot.Z), max(high, spot.Z)
	}
	if !(interval > 0) || !((high-low)/interval <= mostLevels) {
		return nil, ErrInterval
	}
	var all []Contour
	corners := s.corners()
	for k := math.Ceil(low / interval); k*interval <= high; k++ {
		all = append(all, s.contour(corners, k*interval)...)
	}
	return all, nil
}

// contour joins the steps of one level through the triangles to lines. A spot at
// the level counts as above it, so that every triangle has one step or none.
func (s *Surface) contour(corners [][3]int32, level float64) []Contour {
	steps, into := map[edge]edge{}, map[edge]bool{}
	for _, c := range corners {
		if from, to, ok := s.step(c, level); ok {
			steps[from], into[to] = to, true
		}
	}
	sides := slices.SortedFunc(maps.Keys(steps), compareEdges)
	var all []Contour
	for _, open := range []bool{true, false} {
		for _, side := range sides {
			if _, left := steps[side]; left && into[side] != open {
				all = s.trace(all, steps, side, Contour{Level: level, Closed: !open})
			}
		}
	}
	return all
}

// step gives the sides at which a level enters and leaves a triangle, the higher
// ground to the left.
func (s *Surface) step(corners [3]int32, level float64) (from, to edge, ok bool) {
	for i, u := range corners {
		v := corners[(i+1)%3]
		switch above, ahead := s.spots[u].Z >= level, s.spots[v].Z >= level; {
		case above && !ahead:
			from, ok = edge{min(u, v), max(u, v)}, true
		case !above && ahead:
			to = edge{min(u, v), max(u, v)}
		}
	}
	return from, to, ok
}

// trace follows the steps from a side on, using them up. Where spots lie at the
// level steps have no length, and so may whole lines, which are left out.
func (s *Surface) trace(all []Contour, steps map[edge]edge, side edge, line Contour) []Contour {
	for {
		line.add(s.at(side, line.Level))
		next, on := steps[side]
		if !on {
			break
		}
		delete(steps, side)
		side = next
	}
	if n := len(line.Line); line.Closed && n > 1 && line.Line[0] == line.Line[n-1] {
		line.Line = line.Line[:n-1]
	}
	if len(line.Line) < 2 {
		return all
	}
	return append(all, line)
}

func (c *Contour) add(p geometry.Point) {
	if n := len(c.Line); n == 0 || c.Line[n-1] != p {
		c.Line = append(c.Line, p)
	}
}

// at is the place on an edge that has the level.
func (s *Surface) at(side edge, level float64) geometry.Point {
	a, b := s.spots[side.from], s.spots[side.to]
	t := (level - a.Z) / (b.Z - a.Z)
	return geometry.Point{X: (a.X + t*(b.X-a.X)) * geometry.Resolution, Y: (a.Y + t*(b.Y-a.Y)) * geometry.Resolution}
}
