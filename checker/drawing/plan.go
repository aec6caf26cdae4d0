package drawing

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"greysill/checker/design"
	"greysill/checker/geometry"
)

// plan is the site plan as it is drawn.
type plan struct {
	Review
	design *design.Design
	view
	canvas
	placer
	key    key
	labels []*label
	beyond []string // what lies beyond the frame
	note   []string
	short  bool // a reach is too short for its slope to stand beside it
}

const (
	planMargin   = 7.0 // between what is drawn and the frame
	planLeast    = 70.0
	contourSteps = 14 // contours at most, or so
)

// Plan draws the site to scale: the boundary, what is on the site and in the
// ground, the parts with their ids, drains with their fall, zones to be kept
// clear, distances that are too small, and the numbers of findings.
func Plan(r Review) *Drawing {
	for room := paperHeight; ; room /= 1.05 {
		if d := planWithin(r, room); d.Height <= paperHeight || room < planLeast {
			return d
		}
	}
}

// planWithin draws the plan in a frame of at most a height; the key comes below
// it.
func planWithin(r Review, room float64) *Drawing {
	p := &plan{Review: r, design: r.Figures.Design}
	d := &Drawing{Name: "plan", Title: "Site plan", Width: paperWidth, Scale: p.lay(room)}
	p.open("g", "clip-path", "url(#plan-clip)")
	p.zones()
	p.contours()
	p.features()
	p.boundary()
	p.services()
	p.parts()
	p.dimensions()
	p.letterAll()
	p.close("g")
	d.Height = p.surround(d.Scale.Ratio)
	d.Desc = p.describe(d.Scale)
	d.Notes = p.notes()
	d.body = p.String()
	return d
}

// lay chooses the scale and puts the site in its frame.
func (p *plan) lay(room float64) Scale {
	e := p.extent()
	scale := fit(p.Units, e.width(), e.height(), paperWidth-2*planMargin, room-2*planMargin)
	p.perMetre = 1000 / scale.Ratio
	height := max(e.height()*p.perMetre+2*planMargin, planLeast)
	p.frame = box{0.3, 0.3, paperWidth - 0.3, height}
	p.origin = along(e.low, e.high, 0.5)
	p.at0 = point{paperWidth / 2, height / 2}
	return scale
}

// extent is what the plan has to show: the land, the parts, and everything up to
// what a part stands too near to.
func (p *plan) extent() extent {
	e := nothing()
	e.take(points(p.design.Site.Boundary)...)
	for i := range p.design.Parts {
		for _, s := range covered(&p.design.Parts[i]) {
			e.take(s.Points()...)
		}
	}
	for i := range p.Clearances {
		c := &p.Clearances[i]
		if from, to, ok := p.between(c); ok && c.missed() {
			e.take(from, to)
		}
	}
	if e.empty() {
		e.take(geometry.Point{}, geometry.Point{X: 10, Y: 10})
	}
	return e
}

// thing finds the shape of what a clearance is kept from.
func (p *plan) thing(c *Clearance) geometry.Shape {
	id, pointer := c.Item.Subject.IDs[1], c.Item.Subject.Pointers[1]
	if pointer == "/site/boundary" {
		return geometry.Outline(points(p.design.Site.Boundary)).Edge()
	}
	if f := p.design.Feature(id); f != nil {
		return shapeOf(f.Shape)
	}
	for i := range p.design.Site.Services {
		if s := &p.design.Site.Services[i]; s.ID == id {
			return shapeOf(s.Shape)
		}
	}
	return geometry.Shape{}
}

// between gives the ends of the distance of a clearance.
func (p *plan) between(c *Clearance) (from, to geometry.Point, ok bool) {
	part := p.design.Part(c.Item.Subject.IDs[0])
	if part == nil || c.Distance == 0 {
		return from, to, false
	}
	return nearest(part, p.thing(c))
}

func (p *plan) boundary() {
	ring := p.all(points(p.design.Site.Boundary))
	if len(ring) < 3 {
		return
	}
	p.open("g", "class", "boundary-of")
	p.ring("boundary", ring)
	p.close("g")
	p.obstacle(ring, true)
	p.key.line("boundary", "boundary of the site")
}

// obstacle remembers lines that labels had better not cover.
func (p *plan) obstacle(line []point, closed bool) {
	for i := 1; i < len(line); i++ {
		p.drawn = append(p.drawn, stroke{line[i-1], line[i]})
	}
	if closed && len(line) > 2 {
		p.drawn = append(p.drawn, stroke{line[len(line)-1], line[0]})
	}
}

// notes says what the plan leaves out.
func (p *plan) notes() []string {
	if len(p.beyond) > 0 {
		p.note = append(p.note, "Beyond the edge of the drawing: "+strings.Join(p.beyond, "; ")+".")
	}
	p.note = append(p.note, p.unlettered()...)
	if p.short || slices.ContainsFunc(p.omitted, func(l *label) bool { return l.near && l.class == "note" }) {
		p.note = append(p.note, "Slopes and distances that have no room here stand in the tables of reaches and verdicts.")
	}
	if numbers := p.unplaced(); len(numbers) > 0 {
		p.note = append(p.note, "Findings about what has no place on the plan: "+strings.Join(numbers, ", ")+".")
	}
	return p.note
}

// unplaced gives the numbers of the findings that no part on the plan has.
func (p *plan) unplaced() []string {
	shown := map[int]bool{}
	for _, l := range p.labels {
		for _, m := range l.marks {
			shown[m.Number] = true
		}
	}
	var numbers []string
	for _, m := range p.Marks {
		if n := strconv.Itoa(m.Number); !shown[m.Number] && !slices.Contains(numbers, n) {
			numbers = append(numbers, n)
		}
	}
	return numbers
}

func (p *plan) describe(s Scale) string {
	missed := 0
	for i := range p.Clearances {
		if p.Clearances[i].missed() {
			missed++
		}
	}
	return fmt.Sprintf("Site plan at a scale of %s with %d parts, %d things on or near the site and %d buried services. "+
		"%d distances are too small and dimensioned. The tables of findings and clearances give in words what it shows.",
		s.Words, len(p.design.Parts), len(p.design.Site.Features), len(p.design.Site.Services), missed)
}
