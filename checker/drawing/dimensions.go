package drawing

// dimensions draws every distance that is too small, from the part to what it is
// to keep clear of.
func (p *plan) dimensions() {
	var first []*label
	for i := range p.Clearances {
		c := &p.Clearances[i]
		from, to, ok := p.between(c)
		if !ok || !c.missed() {
			continue
		}
		a, b := p.at(from), p.at(to)
		p.open("g", "class", "dimension-of", "data-part", c.Item.Subject.IDs[0], "data-thing", c.Item.Subject.IDs[1])
		p.line("dimension", []point{a, b})
		p.end(a, b)
		p.end(b, a)
		p.close("g")
		p.obstacle([]point{a, b}, false)
		first = append(first, &label{class: "figure", name: c.Item.Subject.Name, size: lettering, clear: 0.4, lines: []string{c.Words},
			choices: []point{{(a.x + b.x) / 2, (a.y + b.y) / 2}}})
	}
	if len(first) > 0 {
		p.key.dimension()
	}
	p.labels = append(first, p.labels...)
}

// end draws the arrowhead at the end of a dimension line, or a dot where the line
// is too short for arrowheads.
func (c *canvas) end(at, from point) {
	long := at.to(from)
	if long < 5 {
		c.circle("dimension-end", at, 0.45)
		return
	}
	ux, uy := (at.x-from.x)/long, (at.y-from.y)/long
	c.ring("dimension-end", []point{at, at.plus(-2*ux+0.5*uy, -2*uy-0.5*ux), at.plus(-2*ux-0.5*uy, -2*uy+0.5*ux)})
}
