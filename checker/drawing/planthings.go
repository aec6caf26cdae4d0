package drawing

import (
	"slices"
	"strings"

	"greysill/checker/design"
	"greysill/checker/geometry"
)

// features draws what is on and near the site.
func (p *plan) features() {
	for i := range p.design.Site.Features {
		f := &p.design.Site.Features[i]
		p.open("g", "class", "feature", "data-id", f.ID)
		p.feature(f)
		p.close("g")
	}
}

func (p *plan) feature(f *design.Feature) {
	shape := shapeOf(f.Shape)
	on := p.all(shape.Points())
	class := thingClass[f.Kind]
	if class == "" {
		class = "thing"
	}
	l := &label{class: "note", name: f.ID, size: lettering, lines: []string{named(f.ID, f.Kind)}}
	switch {
	case f.At != nil:
		p.symbol(f.Kind, on[0])
		l.choices, l.clear = on, symbolSize
	case len(f.Outline) > 0:
		p.ring(class, on)
		p.obstacle(on, true)
		l.choices, l.inside = []point{p.at(within(points(f.Outline)))}, true
		p.key.area(class, f.Kind)
	default:
		p.linear(class, f.Kind, shape.Points())
		l.choices = p.alongLine(shape.Points())
	}
	p.labelThing(l)
}

// labelThing keeps a thing's label when it lies in the frame, else notes that it
// lies beyond.
func (p *plan) labelThing(l *label) {
	l.choices = slices.DeleteFunc(l.choices, func(at point) bool { return !p.frame.grown(-1).holds(at) })
	if len(l.choices) == 0 {
		p.beyond = append(p.beyond, l.lines[0])
		return
	}
	p.labels = append(p.labels, l)
}

// named gives an id with the kind of what it names, unless the id says it.
func named(id, kind string) string {
	if strings.Contains(id, kind) {
		return id
	}
	return id + ", " + kind
}

// alongLine gives places on a line that a label may belong to.
func (p *plan) alongLine(path []geometry.Point) []point {
	var places []point
	for _, share := range []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9} {
		for i := 1; i < len(path); i++ {
			places = append(places, p.at(along(path[i-1], path[i], share)))
		}
	}
	return places
}

// linear draws a line on the ground or in it. What is known by letters has them
// along the line.
func (p *plan) linear(class, kind string, path []geometry.Point) {
	on := p.all(path)
	p.line(class, on)
	p.obstacle(on, false)
	letters, lettered := serviceLetters[kind]
	if !lettered {
		p.key.line(class, kind)
		return
	}
	p.key.lettered(class, letters, kind)
	p.letters(letters, on)
}

// lettersApart is how far apart the letters of a buried line are.
const lettersApart = 30

// letters writes the letters of a buried line along it, wherever no others are.
func (p *plan) letters(letters string, line []point) {
	next := lettersApart / 3.0
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		long := a.to(b)
		for ; next < long; next += lettersApart {
			at := point{a.x + (b.x-a.x)*next/long, a.y + (b.y-a.y)*next/long}
			where := around(at, textWidth(letters, smallLettering), smallLettering)
			if !p.keeps(where) {
				continue
			}
			p.text("service-letter", letters, at.plus(0, 0.36*smallLettering), middle, smallLettering)
		}
		next -= long
	}
}

// keeps takes a place for lettering that stands where it stands; false when it is
// taken already.
func (p *placer) keeps(where box) bool {
	if !where.within(p.frame) || slices.ContainsFunc(p.taken, where.grown(margin).overlaps) {
		return false
	}
	p.taken = append(p.taken, where)
	return true
}

// services draws the buried lines.
func (p *plan) services() {
	for i := range p.design.Site.Services {
		s := &p.design.Site.Services[i]
		p.open("g", "class", "service-of", "data-id", s.ID)
		shape := shapeOf(s.Shape)
		l := &label{class: "note", name: s.ID, size: lettering, lines: []string{named(s.ID, s.Kind)}}
		if s.At != nil {
			p.symbol(s.Kind, p.at(shape.Points()[0]))
			l.choices, l.clear = p.all(shape.Points()), symbolSize
		} else {
			p.linear("service", s.Kind, closedPath(shape, len(s.Outline) > 0))
			l.choices = p.alongLine(shape.Points())
		}
		p.close("g")
		p.labelThing(l)
	}
}

func closedPath(s geometry.Shape, closed bool) []geometry.Point {
	if closed {
		return append(slices.Clone(s.Points()), s.Points()[0])
	}
	return s.Points()
}

// symbolSize is half the size of the symbol of what is drawn as a point.
const symbolSize = 1.3

// symbol draws what is a point on the plan.
func (p *plan) symbol(kind string, at point) {
	p.canvas.symbol(kind, at)
	p.key.symbol(kind)
	p.taken = append(p.taken, around(at, 2*symbolSize, 2*symbolSize))
}

func (c *canvas) symbol(kind string, at point) {
	const s = symbolSize
	square := []point{at.plus(-s, -s), at.plus(s, -s), at.plus(s, s), at.plus(-s, s)}
	switch kind {
	case "well", "spring":
		c.circle("part", at, s)
		c.circle("solid", at, 0.4)
	case "tree":
		c.circle("thing", at, s)
		c.line("thing", []point{at.plus(-s, 0), at.plus(s, 0)})
		c.line("thing", []point{at.plus(0, -s), at.plus(0, s)})
	case diverter:
		c.ring("part", []point{at.plus(-s, -s), at.plus(s, s), at.plus(s, -s), at.plus(-s, s)})
	case "sewer connection", "septic connection":
		c.circle("part", at, s)
		c.line("fine", []point{at.plus(-0.9, -0.9), at.plus(0.9, 0.9)})
		c.line("fine", []point{at.plus(-0.9, 0.9), at.plus(0.9, -0.9)})
	case filter:
		c.ring("part", square)
		c.line("fine", []point{square[0], square[2]})
	case stormInflow:
		c.ring("solid", []point{at.plus(0, s), at.plus(-s, -s), at.plus(s, -s)})
	default:
		c.ring("part", square)
	}
}
