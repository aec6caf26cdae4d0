package figures

import "greysill/checker/geometry"

// covered is ground that a part covers: a shape in plan, and half the width of
// what is drawn as its middle line.
type covered struct {
	shape geometry.Shape
	half  float64
	drawn Input // its coordinates
}

// covers gives all ground that the part covers: its own shape, and its inlet
// header, outlet and draw-down, which may be drawn beyond it.
func (p *part) covers() []covered {
	all := []covered{{p.shape, p.half, Input{Name: p.ID, Pointer: p.lies}}}
	if p.Inlet != nil && len(p.Inlet.Path) > 0 {
		all = append(all, p.header())
	}
	if p.Outlet != nil && p.Outlet.At != nil {
		all = append(all, covered{shape: geometry.At(geometry.Point(*p.Outlet.At)), drawn: Input{Name: "outlet of " + p.ID, Pointer: p.Pointer + "/outlet/at"}})
	}
	if p.Drawdown != nil && p.Drawdown.At != nil {
		all = append(all, covered{shape: geometry.At(geometry.Point(*p.Drawdown.At)), drawn: Input{Name: "draw-down of " + p.ID, Pointer: p.Pointer + "/drawdown/at"}})
	}
	return all
}

// header is the ground under the inlet header, which has to be drawn.
func (p *part) header() covered {
	return covered{shape: geometry.Path(points(p.Inlet.Path)), drawn: Input{Name: "inlet header of " + p.ID, Pointer: p.Pointer + "/inlet/path"}}
}

// inside reports whether all of it is on a piece of land.
func (c covered) inside(land geometry.Shape) bool {
	if c.half == 0 {
		return geometry.Inside(c.shape, land)
	}
	return geometry.ClearOfEdge(c.shape, land) >= c.half-geometry.Resolution
}

// beyond is how far it reaches beyond a piece of land.
func (c covered) beyond(land geometry.Shape) float64 {
	switch {
	case c.inside(land):
		return 0
	case geometry.Inside(c.shape, land):
		return c.half - geometry.ClearOfEdge(c.shape, land)
	default:
		return geometry.FarthestOutside(c.shape, land) + c.half
	}
}

// clear is its distance from a thing, 0 where they touch or overlap.
func (c covered) clear(t *thing) float64 {
	measure := geometry.Distance
	if t.kind == propertyLineKind {
		measure = geometry.ClearOfEdge
	}
	if clear := measure(c.shape, t.shape) - c.half; clear > geometry.Resolution {
		return clear
	}
	return 0
}
