package figures

import (
	"cmp"
	"fmt"
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var crossingTable = tabulate(
	List{Name: "crossings", Doc: "Every place in plan where a drain pipe or overflow pipe crosses or touches a buried service.", Subject: "a pipe that crosses a buried service"},
	(*drawing).crossings, (*crossing).subject,
	[]column[*crossing]{
		{Field{Name: "pipe", Kind: Text, Doc: "The pipe's id."}, func(c *crossing) Value { return text(c.reach.ID) }},
		{Field{Name: "service", Kind: Text, Doc: "The service's id."}, func(c *crossing) Value { return text(c.service.ID) }},
		{Field{Name: "service_kind", Kind: Text, Doc: "What the service carries.", Words: serviceKinds}, func(c *crossing) Value { return text(c.service.Kind) }},
		{Field{Name: "joins", Kind: Truth, Doc: "Whether the pipe ends there, at the sewer or septic connection that it drains to; places within the drawing's tolerance of distance are the same."}, (*crossing).joins},
		{Field{Name: "angle", Kind: Number, Dimension: quantity.Angle, Doc: "Angle in plan at which they cross; 0 where they run together, 90° where they cross squarely.",
			Formula: "acute angle between the two lines"}, (*crossing).angle},
		{Field{Name: "pipe_invert", Kind: Number, Dimension: quantity.Level, Doc: "Invert of the pipe there.",
			Formula: "upper invert − fall × length from it ÷ length of the reach"}, func(c *crossing) Value { return c.invert }},
		{Field{Name: "service_top", Kind: Number, Dimension: quantity.Level, Doc: "Level of the service's top there.",
			Formula: "ground between spot levels − depth of the service"}, func(c *crossing) Value { return c.top }},
		{Field{Name: "above", Kind: Text, Doc: "Which of the two passes above the other; \"neither\" where they meet.",
			Words: []string{pipe, "service", "neither"}}, (*crossing).above},
		{Field{Name: "vertical_clearance", Kind: Number, Dimension: quantity.Length,
			Doc:     "Height between the two, from the inside of the pipe, whose wall is not drawn, to the outside of the service; negative where they meet.",
			Formula: "the greater of pipe's invert − service's top, and service's top − its diameter − (pipe's invert + its inside diameter)"},
			(*crossing).clearance},
	},
)

// crossing is a place where a reach crosses a service.
type crossing struct {
	reach   *reach
	service *service
	number  int // among those of the two
	at      geometry.Point
	along   float64 // the reach, m
	turn    float64 // acute angle in degrees
	invert  Value
	top     Value
}

func (d *drawing) crossings() []*crossing {
	var all []*crossing
	services := d.buried()
	for _, r := range d.reaches() {
		for i := range services {
			if s := &services[i]; !r.path.Empty() && !s.shape.Empty() && geometry.Distance(r.path, s.shape) == 0 {
				all = append(all, r.crossings(s)...)
			}
		}
	}
	return all
}

// crossings finds where a reach crosses a service, in the order of its path.
func (r *reach) crossings(s *service) []*crossing {
	var all []*crossing
	start, path, line := 0.0, r.path.Points(), s.shape.Points()
	for i := 1; i < len(path); i++ {
		for k := 1; k < len(line); k++ {
			at, meet := meeting(path[i-1:i+1], line[k-1:k+1])
			there := func(c *crossing) bool { return apart(c.at, at) <= geometry.Resolution }
			if meet && !slices.ContainsFunc(all, there) {
				all = append(all, &crossing{reach: r, service: s, at: at,
					along: start + apart(path[i-1], at), turn: geometry.Acute(path[i-1], path[i], line[k-1], line[k])})
			}
		}
		start += apart(path[i-1], path[i])
	}
	slices.SortStableFunc(all, func(a, b *crossing) int { return cmp.Compare(a.along, b.along) })
	for i, c := range all {
		c.number, c.invert, c.top = i, r.level(c.along), s.top(c.at)
	}
	return all
}

// meeting is the place where two segments cross or touch.
func meeting(a, b []geometry.Point) (at geometry.Point, meet bool) {
	at, other := geometry.Nearest(geometry.Path(a), geometry.Path(b))
	return at, apart(at, other) <= geometry.Resolution
}

func (r *reach) level(along float64) Value {
	fall := r.fall()
	if !fall.Known() {
		return fall
	}
	return number(r.invertAt(along), append(fall.Inputs, r.drawn("path"))...)
}

func (c *crossing) subject() Subject {
	name := c.reach.name + " and " + c.service.ID
	if c.number > 0 {
		name = fmt.Sprintf("%s, crossing %d", name, c.number+1)
	}
	return Subject{name, []string{c.reach.ID, c.service.ID}, []string{c.reach.Pointer, c.service.Pointer}}
}

// joins reports whether the pipe is led into the service, not past it.
func (c *crossing) joins() Value {
	p := c.reach.part
	line := p.shape.Points()
	ends := apart(c.at, line[len(line)-1]) <= p.drawing.planTolerance()
	leads := slices.ContainsFunc(p.drawing.network.nodes[p.node].ways[warm], func(w way) bool { return leaves(p.drawing.network.nodes[w.to].kind) })
	return truth(ends && leads, append(p.given("to", len(p.To)), p.drawn("path"))...)
}

// planTolerance is how far places in plan may be off and still be the same.
func (d *drawing) planTolerance() float64 {
	if d.Tolerances == nil {
		return geometry.Resolution
	}
	return d.Tolerances.Distance.Value + geometry.Resolution
}

func (c *crossing) angle() Value {
	return number(c.turn, c.reach.drawn("path"), c.service.drawn("path"))
}

func (c *crossing) above() Value {
	over, under := c.over(), c.under()
	switch {
	case !over.Known():
		return over
	case over.Number >= 0:
		return text(pipe, over.Inputs...)
	case !under.Known():
		return under
	case under.Number >= 0:
		return text("service", under.Inputs...)
	default:
		return text("neither", under.Inputs...)
	}
}

func (c *crossing) clearance() Value {
	over, under := c.over(), c.under()
	switch {
	case !over.Known() || over.Number >= 0:
		return over
	case !under.Known():
		return under
	default:
		return outOf(max(over.Number, under.Number), under)
	}
}

// over is the height of the pipe over the service, when it passes above.
func (c *crossing) over() Value { return outOf(c.invert.Number-c.top.Number, c.invert, c.top) }

// under is the height of the service over the pipe.
func (c *crossing) under() Value {
	outer, inner := c.service.diameter(), c.reach.part.diameter()
	return outOf(c.top.Number-outer.Number-c.invert.Number-inner.Number, c.invert, c.top, outer, inner)
}
