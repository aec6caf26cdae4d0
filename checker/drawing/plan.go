package drawing

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
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
	zoneStep     = 0.8
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

// zones draws what is to be kept clear round every thing, by each limit that is in
// force for a part.
func (p *plan) zones() {
	type drawn struct {
		pointer string
		limit   float64
	}
	seen := map[drawn]bool{}
	for _, missed := range []bool{true, false} {
		for i := range p.Clearances {
			c := &p.Clearances[i]
			if is := (drawn{c.Item.Subject.Pointers[1], c.Limit}); c.missed() == missed && !seen[is] {
				seen[is] = true
				p.zone(c)
			}
		}
	}
}

func (p *plan) zone(c *Clearance) {
	class, words, keep := "zone", "distance to keep", p.side(c)
	if c.missed() {
		class, words = "zone missed", "distance to keep, not kept"
	}
	var on [][]point
	for _, piece := range zone(p.thing(c), c.Limit, zoneStep/p.perMetre, keep) {
		on = append(on, p.all(simplified(piece)))
	}
	if !p.inFrame(on) {
		return
	}
	p.open("g", "class", "zone-of", "data-thing", c.Item.Subject.IDs[1], "data-limit", mm(c.Limit))
	p.pieces(class, on)
	p.close("g")
	p.key.line(class, words)
	p.labelZone(c, on)
}

// side says on which side of a thing a zone counts: of the boundary, inside.
func (p *plan) side(c *Clearance) func(geometry.Point) bool {
	if c.Item.Subject.Pointers[1] != "/site/boundary" {
		return nil
	}
	return geometry.Outline(points(p.design.Site.Boundary)).Contains
}

// pieces writes a line that is in pieces as one element.
func (c *canvas) pieces(class string, pieces [][]point) {
	var data strings.Builder
	for _, piece := range pieces {
		data.WriteString(through(piece))
	}
	c.empty("path", "class", class, "d", data.String())
}

func (p *plan) inFrame(pieces [][]point) bool {
	for _, piece := range pieces {
		if slices.ContainsFunc(piece, p.frame.holds) {
			return true
		}
	}
	return false
}

// labelZone letters a zone at one of several places on it, where there is room.
func (p *plan) labelZone(c *Clearance, pieces [][]point) {
	l := &label{class: "note", name: c.Item.Subject.IDs[1], size: smallLettering, inside: true, near: true,
		lines: []string{c.LimitWords + " from " + c.Item.Subject.IDs[1]}}
	for _, piece := range pieces {
		for _, share := range []float64{0.5, 0.25, 0.75, 0.1, 0.9} {
			if at := piece[int(share*float64(len(piece)-1))]; p.frame.grown(-4).holds(at) {
				l.choices = append(l.choices, at)
			}
		}
	}
	if len(l.choices) > 0 {
		p.labels = append(p.labels, l)
	}
}

// contours draws the ground's contour lines, every fifth heavier.
func (p *plan) contours() {
	surface, err := surfaceOf(p.design)
	if err != nil {
		p.note = append(p.note, "No contour lines: "+err.Error()+".")
		return
	}
	interval := p.contourInterval()
	lines, err := surface.Contours(interval)
	if err != nil {
		p.note = append(p.note, "No contour lines: "+err.Error()+".")
		return
	}
	for i, last := 0, 0; i < len(lines); i = last {
		var on [][]point
		for last = i; last < len(lines) && lines[last].Level == lines[i].Level; last++ {
			on = append(on, p.contour(&lines[last]))
		}
		class := "contour"
		if isMain(lines[i].Level, interval) {
			class = "contour main"
		}
		p.open("g", "class", "contour-of", "data-level", mm(lines[i].Level))
		p.pieces(class, on)
		p.close("g")
		p.labelContour(lines[i].Level, on)
	}
	p.key.line("contour", "contour line, every "+round(interval, p.Units))
}

// contour puts a contour line on the paper, a closed one ending where it begins.
func (v view) contour(c *ground.Contour) []point {
	on := v.all(c.Line)
	if c.Closed {
		return append(on, on[0])
	}
	return on
}

// labelContour letters a contour on the line itself.
func (p *plan) labelContour(level float64, pieces [][]point) {
	l := &label{class: "level", name: "contour", size: smallLettering, inside: true, near: true, onlyInside: true,
		lines: []string{bare(level, p.Units)}}
	for _, piece := range pieces {
		for _, at := range piece {
			if p.frame.grown(-6).holds(at) {
				l.choices = append(l.choices, at)
			}
		}
	}
	if len(l.choices) > 0 {
		p.labels = append(p.labels, l)
	}
}

// bare gives a level without its unit, as levels stand on a plan.
func bare(level float64, units quantity.System) string {
	text, _, _ := strings.Cut(quantity.Format(level, quantity.Level, units), " ")
	return text
}

func surfaceOf(d *design.Design) (*ground.Surface, error) {
	spots := make([]ground.Spot, len(d.Site.Levels))
	for i, s := range d.Site.Levels {
		spots[i] = ground.Spot(s)
	}
	return ground.New(spots)
}

// contourInterval is a round interval in the unit of the drawing that gives a
// readable number of lines.
func (p *plan) contourInterval() float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, spot := range p.design.Site.Levels {
		low, high = min(low, spot.Z), max(high, spot.Z)
	}
	size, _ := unitOf(p.Units)
	return roundAbove(max(high-low, 0.01)/contourSteps/size) * size
}

// isMain reports whether a level is a fifth multiple of the interval.
func isMain(level, interval float64) bool {
	return math.Mod(math.Round(level/interval), 5) == 0
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
