package design

import (
	"fmt"
	"math"
	"slices"

	"github.com/peterstace/simplefeatures/geom"

	"greysill/checker/quantity"
)

// maxPoints bounds the points of all outlines and paths of a document.
const maxPoints = 5_000

// shapes notes outlines and paths that cannot be drawn, and lists of levels
// that do not match them.
func (f *faults) shapes(d *Design) {
	points := f.ring(d.Site.Boundary, "/site/boundary")
	for _, x := range d.Site.Features {
		points += f.shape(x.Shape, x.Pointer)
	}
	for _, x := range d.Site.Services {
		points += f.shape(x.Shape, x.Pointer)
	}
	for _, p := range d.Parts {
		points += f.shape(p.Shape, p.Pointer)
		f.levels(p)
		if p.Inlet != nil {
			points += f.path(p.Inlet.Path, p.Pointer+"/inlet/path")
		}
	}
	if points > maxPoints {
		f.at("", func() words {
			return words{fmt.Sprintf("outlines and paths have %d points in all", points), fmt.Sprintf("at most %d", maxPoints), "draw with fewer points"}
		})
	}
}

// shape checks one shape and gives the number of its points.
func (f *faults) shape(s Shape, pointer string) int {
	return f.ring(s.Outline, pointer+"/outline") + f.path(s.Path, pointer+"/path")
}

func (f *faults) path(path []Point, pointer string) int {
	for i := 1; i < len(path); i++ {
		if path[i] == path[i-1] {
			f.at(fmt.Sprintf("%s/%d", pointer, i), func() words {
				return words{fmt.Sprintf("points %d and %d of %s are the same", i, i+1, f.what(pointer)), "a path whose every stretch has a length", "take one of the two out"}
			})
		}
	}
	return len(path)
}

// ring checks an outline: no corner twice, an area, no side across another.
// Only the first of these that fails is told, since the others follow from it.
func (f *faults) ring(ring []Point, pointer string) int {
	if len(ring) < 3 || f.repeatedCorner(ring, pointer) {
		return len(ring)
	}
	switch {
	case flat(ring):
		f.at(pointer, func() words {
			return words{f.what(pointer) + " has no area: its corners lie on one line", "an outline that encloses ground", "check its corners"}
		})
	case polygon(ring).Validate() != nil:
		f.at(pointer, func() words { return f.crossing(ring, pointer) })
	}
	return len(ring)
}

func (f *faults) repeatedCorner(ring []Point, pointer string) (repeated bool) {
	first := map[Point]int{}
	for i, corner := range ring {
		before, twice := first[corner]
		if !twice {
			first[corner] = i
			continue
		}
		repeated = true
		f.at(fmt.Sprintf("%s/%d", pointer, i), func() words {
			w := words{fmt.Sprintf("corners %d and %d of %s are the same", before+1, i+1, f.what(pointer)), "an outline that meets each corner once", "take one of the two out"}
			if before == 0 && i == len(ring)-1 {
				w.remedy = "take the last one out: an outline closes by itself"
			}
			return w
		})
	}
	return repeated
}

// crossing says which two sides cross or touch, and where.
func (f *faults) crossing(ring []Point, pointer string) words {
	w := words{f.what(pointer) + " crosses or touches itself", "an outline whose sides meet only at its corners", "put the corners in the order in which they follow one another round the edge"}
	for i := range ring {
		for j := i + 1; j < len(ring); j++ {
			if at, meets := meet(ring, i, j); meets {
				w.found += fmt.Sprintf(": the side from corner %d to %d meets that from corner %d to %d %s",
					i+1, (i+1)%len(ring)+1, j+1, (j+1)%len(ring)+1, f.place(at))
				return w
			}
		}
	}
	return w
}

// place writes a point in the unit of the grid.
func (f *faults) place(p Point) string {
	unit, metres := "m", 1.0
	if value(f.doc.Value(), "/site/grid/unit") == "ft" {
		unit, metres = "ft", foot
	}
	return fmt.Sprintf("near (%.2f, %.2f) %s", p.X/metres, p.Y/metres, unit)
}

// meet gives a point that two sides share. Neighbours share a corner, which is
// no fault; they may not share more.
func meet(ring []Point, i, j int) (Point, bool) {
	a, b := ring[i], ring[(i+1)%len(ring)]
	c, d := ring[j], ring[(j+1)%len(ring)]
	if turn(a, b, c)*turn(a, b, d) > 0 || turn(c, d, a)*turn(c, d, b) > 0 {
		return Point{}, false // one of them lies wholly on one side of the other
	}
	shared, err := geom.Intersection(line(a, b).AsGeometry(), line(c, d).AsGeometry())
	if err != nil || shared.IsEmpty() || shared.Dimension() == 0 && (b == c || d == a) {
		return Point{}, false
	}
	xy, ok := shared.Centroid().XY()
	return Point{xy.X, xy.Y}, ok
}

// turn is positive where c lies left of the way from a to b.
func turn(a, b, c Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }

func line(points ...Point) geom.LineString {
	xys := make([]float64, 0, 2*len(points))
	for _, p := range points {
		xys = append(xys, p.X, p.Y)
	}
	return geom.NewLineString(geom.NewSequence(xys, geom.DimXY))
}

func polygon(ring []Point) geom.Polygon {
	return geom.NewPolygon([]geom.LineString{line(append(ring[:len(ring):len(ring)], ring[0])...)})
}

// flat reports whether all corners lie on one line, to the digits that
// coordinates have.
func flat(ring []Point) bool {
	first, far, length := ring[0], ring[0], 0.0
	for _, p := range ring {
		if d := math.Hypot(p.X-first.X, p.Y-first.Y); d > length {
			far, length = p, d
		}
	}
	return !slices.ContainsFunc(ring, func(p Point) bool { return math.Abs(turn(first, far, p)) > 1e-9*length*length })
}

// levels notes lists of levels that do not match the path or the outline.
func (f *faults) levels(p Part) {
	f.levelCount(p.Inverts, p.Pointer+"/inverts", "point of the path", len(p.Path), 2)
	f.levelCount(p.EdgeLevels, p.Pointer+"/edge_levels", "corner of the outline", len(p.Outline), len(p.Outline))
	f.levelCount(p.Floor, p.Pointer+"/floor", "corner of the outline", len(p.Outline), 1)
	f.levelCount(p.Surface, p.Pointer+"/surface", "corner of the outline", len(p.Outline), 1)
}

// levelCount requires one level for each place, or else the number that also
// has a meaning.
func (f *faults) levelCount(levels []quantity.Quantity, pointer, each string, places, or int) {
	if n := len(levels); n == 0 || places == 0 || n == places || n == or {
		return
	}
	f.at(pointer, func() words {
		w := words{fmt.Sprintf("%s has %s", f.what(pointer), count(len(levels), "level")), fmt.Sprintf("one for each %s, %d", each, places), ""}
		switch {
		case or == 2 && places != 2:
			w.expected += ", or 2, one for each end"
		case or == 1:
			w.expected += ", or a single level"
		}
		return w
	})
}
