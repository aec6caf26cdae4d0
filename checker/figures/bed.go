package figures

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

// bed is a planted gravel bed with its depth at places round its edge: at the
// corners, and between them wherever the ground bends.
type bed struct {
	*part
	stations        []station
	surface, floor  levels // at the stations
	depths          []float64
	least, greatest float64 // of the depths
	mean            float64
	lacks           []Lack // of the depths
}

// station is a place on the edge of an outline: a share of the way from a
// corner to the next.
type station struct {
	corner int
	share  float64
}

// levels are the levels of a surface at the stations of a bed.
type levels struct {
	at    []float64
	input Input
	lacks []Lack
}

// maxStations bounds the work that a bed on dense spot levels takes.
const maxStations = 1000

func newBed(p *part) *bed {
	b := &bed{part: p}
	if p.shape.Area() == 0 {
		b.lacks = []Lack{p.lack("outline")}
		b.surface.lacks, b.floor.lacks = b.lacks, b.lacks
		return b
	}
	b.stations = make([]station, len(b.Outline))
	for i := range b.stations {
		b.stations[i].corner = i
	}
	b.surface = b.top()
	b.floor = b.drawnLevels("floor", b.Floor)
	b.lacks = slices.Concat(b.surface.lacks, b.floor.lacks)
	if len(b.lacks) == 0 {
		b.measure()
	}
	return b
}

func (b *bed) measure() {
	b.depths = make([]float64, len(b.stations))
	for i := range b.depths {
		b.depths[i] = b.surface.at[i] - b.floor.at[i]
	}
	b.least, b.greatest = slices.Min(b.depths), slices.Max(b.depths)
	ring := make([]geometry.Point, len(b.stations))
	for i, at := range b.stations {
		ring[i] = b.point(at)
	}
	b.mean = geometry.Outline(ring).Mean(b.depths)
}

// top gives the levels that the media reach up to.
func (b *bed) top() levels {
	switch {
	case len(b.Surface) > 0:
		return b.drawnLevels("surface", b.Surface)
	case len(b.EdgeLevels) > 0:
		return b.drawnLevels("edge_levels", b.EdgeLevels)
	default:
		return b.ground()
	}
}

// drawnLevels spreads levels as drawn over the stations: one for all, or one for
// each corner with a straight line to the next.
func (b *bed) drawnLevels(entry string, drawn []quantity.Quantity) levels {
	if len(drawn) != 1 && len(drawn) != len(b.Outline) {
		return levels{lacks: []Lack{b.lack(entry)}}
	}
	l := levels{at: make([]float64, len(b.stations)), input: b.drawn(entry)}
	for i, p := range b.stations {
		here, next := drawn[p.corner%len(drawn)].Value, drawn[(p.corner+1)%len(drawn)].Value
		l.at[i] = here + p.share*(next-here)
	}
	return l
}

// ground follows the ground round the edge, adding a station wherever it bends.
func (b *bed) ground() levels {
	surface, err := b.drawing.ground()
	var conflict *ground.ConflictError
	switch {
	case errors.As(err, &conflict):
		return levels{lacks: []Lack{{"/site/levels", fmt.Sprintf("a single level where spot levels %d and %d lie", conflict.First+1, conflict.Second+1)}}}
	case err != nil:
		return levels{lacks: []Lack{b.noGround()}}
	}
	b.follow(surface)
	if len(b.stations) > maxStations {
		return levels{lacks: []Lack{{b.Pointer + "/edge_levels", "edge_levels of " + b.ID + ", whose edge crosses too many spot levels to follow"}}}
	}
	l := levels{input: Input{Name: "spot levels", Pointer: "/site/levels"}}
	for _, p := range b.stations {
		level, ok := surface.Level(b.point(p))
		if !ok {
			return levels{lacks: []Lack{b.noGround()}}
		}
		l.at = append(l.at, level)
	}
	return l
}

func (b *bed) noGround() Lack {
	return Lack{b.Pointer + "/edge_levels", "edge_levels of " + b.ID + ", or spot levels of the site all round it"}
}

// follow adds the stations where the ground bends between two corners. It gives
// up beyond the most that are followed.
func (b *bed) follow(surface *ground.Surface) {
	b.stations = nil
	for i := range b.Outline {
		if len(b.stations) > maxStations {
			return
		}
		b.stations = append(b.stations, station{i, 0})
		for _, share := range surface.Bends(b.corner(i), b.corner(i+1)) {
			b.stations = append(b.stations, station{i, share})
		}
	}
}

func (b *bed) corner(i int) geometry.Point { return geometry.Point(b.Outline[i%len(b.Outline)]) }

func (b *bed) point(p station) geometry.Point {
	from, to := b.corner(p.corner), b.corner(p.corner+1)
	return geometry.Point{X: from.X + p.share*(to.X-from.X), Y: from.Y + p.share*(to.Y-from.Y)}
}

// where words the first place that has an extreme depth.
func (b *bed) where(depth float64) string {
	p := b.stations[slices.IndexFunc(b.depths, func(d float64) bool { return math.Abs(d-depth) <= geometry.Resolution })]
	switch {
	case b.greatest-b.least <= geometry.Resolution:
		return "everywhere"
	case p.share > 0:
		return fmt.Sprintf("the edge between corners %d and %d", p.corner+1, (p.corner+1)%len(b.Outline)+1)
	default:
		return fmt.Sprintf("corner %d", p.corner+1)
	}
}
