package drawing

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// parts draws the parts of the train, areas first so that pipes lie over them.
func (p *plan) parts() {
	for _, areas := range []bool{true, false} {
		for i := range p.design.Parts {
			part := &p.design.Parts[i]
			if isArea := len(part.Outline) > 0 || halfWidth(part) > 0; isArea == areas {
				p.open("g", "class", "part-of", "data-id", part.ID)
				p.part(part)
				p.close("g")
			}
		}
	}
	p.slopes()
}

func (p *plan) part(part *design.Part) {
	l := &label{class: "id", name: part.ID, size: lettering, lines: []string{part.ID}, marks: p.marksOf(part.ID)}
	switch {
	case part.At != nil:
		at := p.at(geometry.Point(*part.At))
		p.symbol(part.Kind, at)
		l.choices, l.clear = []point{at}, symbolSize
	case len(part.Outline) > 0:
		l.choices, l.inside = []point{p.at(within(points(part.Outline)))}, true
		p.area(part)
	case halfWidth(part) > 0:
		l.choices = p.alongLine(points(part.Path))
		p.ditch(part)
	case len(part.Path) > 0:
		l.choices = p.alongLine(points(part.Path))
		p.pipe(part)
	default:
		return
	}
	p.labels = append(p.labels, l)
}

func (p *plan) area(part *design.Part) {
	class := partClass[part.Kind]
	if class == "" {
		class = "part"
	}
	on := p.all(points(part.Outline))
	p.ring(class, on)
	p.obstacle(on, true)
	p.key.area(class, part.Kind)
	if part.Inlet != nil && len(part.Inlet.Path) > 1 {
		header := p.all(points(part.Inlet.Path))
		p.line("header", header)
		p.obstacle(header, false)
		p.key.line("header", "inlet header")
	}
	if part.Outlet != nil && part.Outlet.At != nil {
		p.circle("part", p.at(geometry.Point(*part.Outlet.At)), 0.6)
	}
}

// ditch draws a trench that is given as its middle line and its width, stretch by
// stretch.
func (p *plan) ditch(part *design.Part) {
	path, half := points(part.Path), halfWidth(part)
	for i := 1; i < len(path); i++ {
		a, b := path[i-1], path[i]
		nx, ny := (b.Y-a.Y)/apart(a, b)*half, -(b.X-a.X)/apart(a, b)*half
		on := p.all([]geometry.Point{{X: a.X + nx, Y: a.Y + ny}, {X: b.X + nx, Y: b.Y + ny}, {X: b.X - nx, Y: b.Y - ny}, {X: a.X - nx, Y: a.Y - ny}})
		p.ring("trench", on)
		p.obstacle(on, true)
	}
	p.key.area("trench", part.Kind)
}

func (p *plan) pipe(part *design.Part) {
	class := lineClass[part.Kind]
	if class == "" {
		class = "drain"
	}
	on := p.all(points(part.Path))
	p.line(class, on)
	p.obstacle(on, false)
	for i := 1; i < len(on); i++ {
		p.arrow(on[i-1], on[i])
	}
	words := part.Kind + ", flow by the arrow"
	if part.Kind == spillway {
		words = part.Kind
	}
	p.key.line(class, words)
	for _, at := range part.Cleanouts {
		p.circle("fine", p.at(geometry.Point(at)), 0.7)
		p.key.symbol("cleanout")
	}
}

// arrow shows which way a stretch flows, where it is long enough to.
func (c *canvas) arrow(from, to point) {
	long := from.to(to)
	if long < 4 {
		return
	}
	ux, uy := (to.x-from.x)/long, (to.y-from.y)/long
	tip := point{(from.x+to.x)/2 + ux*1.2, (from.y+to.y)/2 + uy*1.2}
	c.ring("arrow", []point{tip, tip.plus(-2.4*ux+0.9*uy, -2.4*uy-0.9*ux), tip.plus(-2.4*ux-0.9*uy, -2.4*uy+0.9*ux)})
}

// slopes letters every reach of pipe with its slope, beside it.
func (p *plan) slopes() {
	for _, it := range p.Figures.List("reaches") {
		part, slope := p.design.Part(it.Subject.IDs[0]), it.Value("slope")
		path := reachOf(part, p.Figures.List("reaches"), it)
		if len(path) < 2 || slope == nil || !slope.Known() {
			continue
		}
		at, from, to := halfWay(path)
		if apart(from, to)*p.perMetre < 5 {
			p.short = true
			continue
		}
		p.labels = append(p.labels, &label{class: "note", name: it.Subject.Name, size: smallLettering, near: true, choices: []point{p.at(at)}, clear: 0.6,
			lines: []string{quantity.Format(slope.Number, quantity.Slope, p.Units)}})
	}
}

// reachOf gives the points of a reach: one stretch of its pipe where the pipe has
// several reaches, else the whole.
func reachOf(part *design.Part, all []*figures.Item, it *figures.Item) []geometry.Point {
	var mine []*figures.Item
	for _, other := range all {
		if other.Subject.IDs[0] == it.Subject.IDs[0] {
			mine = append(mine, other)
		}
	}
	path := points(part.Path)
	if i := slices.Index(mine, it); len(mine) > 1 && i+1 < len(path) {
		return path[i : i+2]
	}
	return path
}

// marksOf gives the findings about a part, each number once.
func (r *Review) marksOf(id string) []Mark {
	var marks []Mark
	for _, m := range r.Marks {
		if len(m.IDs) > 0 && m.IDs[0] == id && !slices.ContainsFunc(marks, func(o Mark) bool { return o.Number == m.Number }) {
			marks = append(marks, m)
		}
	}
	return marks
}

// letterAll places all labels: dimensions, then parts with findings, parts,
// things, and last what may be left out.
func (p *plan) letterAll() {
	rank := func(l *label) int {
		switch {
		case l.class == "figure":
			return 0
		case len(l.marks) > 0:
			return 1
		case l.class == "id":
			return 2
		case !l.near:
			return 3
		case l.class == "level":
			return 5
		}
		return 4
	}
	slices.SortStableFunc(p.labels, func(a, b *label) int { return rank(a) - rank(b) })
	for _, l := range p.labels {
		p.letter(&p.canvas, l)
	}
}

// surround draws the frame, the north arrow, the scale bar and the key, and gives
// the height of the whole.
func (p *plan) surround(ratio float64) float64 {
	p.open("clipPath", "id", "plan-clip")
	p.rect("", p.frame)
	p.close("clipPath")
	p.rect("frame", p.frame)
	p.key.marks(p.Marks)
	top := p.frame.bottom + 5
	p.scaleBar(p.Units, ratio, point{4, top + 5}, 58)
	p.northArrow(point{78, top + 4.5}, p.design.Site.Grid.North.Value)
	return p.key.draw(&p.canvas, point{94, top}, 4, top+13)
}
