package drawing

import (
	"math"

	"greysill/checker/design"
	"greysill/checker/geometry"
)

// view puts places of the site, in metres, on the paper.
type view struct {
	perMetre float64 // millimetres of paper for a metre
	origin   geometry.Point
	at0      point // where the origin lies on the paper
}

func (v view) at(p geometry.Point) point {
	return point{v.at0.x + (p.X-v.origin.X)*v.perMetre, v.at0.y - (p.Y-v.origin.Y)*v.perMetre}
}

func (v view) all(ps []geometry.Point) []point {
	on := make([]point, len(ps))
	for i, p := range ps {
		on[i] = v.at(p)
	}
	return on
}

// extent is an upright rectangle on the site.
type extent struct{ low, high geometry.Point }

func nothing() extent {
	inf := math.Inf(1)
	return extent{geometry.Point{X: inf, Y: inf}, geometry.Point{X: -inf, Y: -inf}}
}

func (e *extent) take(ps ...geometry.Point) {
	for _, p := range ps {
		e.low = geometry.Point{X: min(e.low.X, p.X), Y: min(e.low.Y, p.Y)}
		e.high = geometry.Point{X: max(e.high.X, p.X), Y: max(e.high.Y, p.Y)}
	}
}

func (e *extent) empty() bool { return e.low.X > e.high.X }

func (e *extent) width() float64  { return e.high.X - e.low.X }
func (e *extent) height() float64 { return e.high.Y - e.low.Y }

// shapeOf gives a shape in plan, as figures measure it.
func shapeOf(s design.Shape) geometry.Shape {
	switch {
	case s.At != nil:
		return geometry.At(geometry.Point(*s.At))
	case len(s.Path) > 0:
		return geometry.Path(points(s.Path))
	default:
		return geometry.Outline(points(s.Outline))
	}
}

func points(ps []design.Point) []geometry.Point {
	list := make([]geometry.Point, len(ps))
	for i, p := range ps {
		list[i] = geometry.Point(p)
	}
	return list
}

// halfWidth is half the width of a trench that is drawn as its middle line, 0 of
// anything else.
func halfWidth(p *design.Part) float64 {
	if p.Kind == trench && len(p.Path) > 0 {
		return p.Width.Value / 2
	}
	return 0
}

// covered gives all shapes that distances of a part are measured from: its own,
// and its inlet header, outlet and draw-down.
func covered(p *design.Part) []geometry.Shape {
	all := []geometry.Shape{shapeOf(p.Shape)}
	if p.Inlet != nil && len(p.Inlet.Path) > 0 {
		all = append(all, geometry.Path(points(p.Inlet.Path)))
	}
	if p.Outlet != nil && p.Outlet.At != nil {
		all = append(all, geometry.At(geometry.Point(*p.Outlet.At)))
	}
	if p.Drawdown != nil && p.Drawdown.At != nil {
		all = append(all, geometry.At(geometry.Point(*p.Drawdown.At)))
	}
	return all
}

// nearest gives the places between which the distance of a part from a thing is
// measured; ok is false where they touch.
func nearest(p *design.Part, thing geometry.Shape) (from, to geometry.Point, ok bool) {
	best := math.Inf(1)
	for i, s := range covered(p) {
		if s.Empty() || thing.Empty() {
			continue
		}
		a, b := geometry.Nearest(s, thing)
		clear := apart(a, b)
		if i == 0 && clear > 0 {
			half := min(halfWidth(p), clear)
			a = along(a, b, half/clear)
			clear -= half
		}
		if clear < best {
			best, from, to = clear, a, b
		}
	}
	return from, to, best > geometry.Resolution && !math.IsInf(best, 1)
}

func apart(a, b geometry.Point) float64 { return math.Hypot(b.X-a.X, b.Y-a.Y) }

func along(a, b geometry.Point, t float64) geometry.Point {
	return geometry.Point{X: a.X + (b.X-a.X)*t, Y: a.Y + (b.Y-a.Y)*t}
}

// halfWay gives the middle of the longest stretch of a line.
func halfWay(path []geometry.Point) (at geometry.Point, from, to geometry.Point) {
	best := -1.0
	for i := 1; i < len(path); i++ {
		if d := apart(path[i-1], path[i]); d > best {
			best, at, from, to = d, along(path[i-1], path[i], 0.5), path[i-1], path[i]
		}
	}
	return at, from, to
}

// within gives a place inside a ring, near its middle: the middle of its widest
// stretch on the level half way up.
func within(ring []geometry.Point) geometry.Point {
	e := nothing()
	e.take(ring...)
	best, place := -1.0, ring[0]
	for _, share := range []float64{0.5, 0.35, 0.65, 0.2, 0.8} {
		y := e.low.Y + share*e.height()
		cuts := levelCuts(ring, y)
		for i := 0; i+1 < len(cuts); i += 2 {
			if wide := cuts[i+1] - cuts[i]; wide > best*1.25 {
				best, place = wide, geometry.Point{X: (cuts[i] + cuts[i+1]) / 2, Y: y}
			}
		}
	}
	return place
}
