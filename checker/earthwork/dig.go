package earthwork

import (
	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// maxWork bounds how often a volume holds a part of one side against another.
const maxWork = 5_000_000

// dig is the work on one body, in coordinates from the first corner, so that a
// far origin costs no precision.
type dig struct {
	floor, sides         []facet
	apart                bool // no side lies over another or over the floor
	floorArea, perimeter float64
	origin               geometry.Point
	covered              float64 // area of the floor that has ground over it
	work                 int
	body                 Body
}

// facet is a plane over a region: everywhere that none of the conditions is
// negative.
type facet struct {
	within  []linear
	level   linear
	weight  float64
	outward geometry.Point // of a side
}

// triangle is one triangle of the ground.
type triangle struct {
	piece piece
	level linear
}

func newDig(s Shape, up float64) (*dig, error) {
	r, err := newRing(s.Outline)
	switch {
	case err != nil:
		return nil, err
	case !finite(s.Levels...) || len(s.Levels) != 1 && len(s.Levels) != len(s.Outline):
		return nil, ErrLevels
	case !measures(s.Run):
		return nil, ErrRun
	}
	d := &dig{origin: r.corners[0]}
	levels := make([]float64, len(r.corners))
	for i, n := range r.numbers {
		levels[i] = up * s.Levels[n%len(s.Levels)]
		r.corners[i] = d.local(r.corners[i])
		d.perimeter += r.lengths[i]
	}
	d.floorArea = signedArea(r.corners)
	d.floor = floorFacets(r.corners, levels)
	if s.Run > geometry.Resolution { // steeper sides are upright
		d.sides, err = r.sideFacets(levels, s.Run)
		d.apart = len(s.Levels) == 1 && r.convex()
	}
	return d, err
}

func (d *dig) local(p geometry.Point) geometry.Point {
	return geometry.Point{X: p.X - d.origin.X, Y: p.Y - d.origin.Y}
}

func (d *dig) triangles(surface *ground.Surface, up float64) []triangle {
	var all []triangle
	for _, t := range surface.Triangles() {
		var q piece
		for _, s := range t {
			q = append(q, d.local(geometry.Point{X: s.X, Y: s.Y}))
		}
		all = append(all, triangle{q, through(q[0], q[1], q[2], up*t[0].Z, up*t[1].Z, up*t[2].Z)})
	}
	return all
}

// floorFacets has the triangles of the floor, with their weights.
func floorFacets(corners []geometry.Point, levels []float64) []facet {
	var all []facet
	for _, t := range geometry.Outline(corners).Triangles() {
		i, j, k := t.Corners[0], t.Corners[1], t.Corners[2]
		a, b, c := corners[i], corners[j], corners[k]
		all = append(all, facet{
			within: []linear{leftOf(a, b), leftOf(b, c), leftOf(c, a)},
			level:  through(a, b, c, levels[i], levels[j], levels[k]),
			weight: t.Weight,
		})
	}
	return all
}

// leftOf is positive to the left of the line from a to b.
func leftOf(a, b geometry.Point) linear {
	return linear{a.Y - b.Y, b.X - a.X, (b.Y-a.Y)*a.X - (b.X-a.X)*a.Y}
}
