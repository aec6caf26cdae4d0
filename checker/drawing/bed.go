package drawing

import (
	"fmt"
	"strconv"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

// bedPlan is the plan of one bed with the depth of its media.
type bedPlan struct {
	*plan
	part *design.Part
	ring []geometry.Point
}

const (
	bedHeight = 110.0
	bedMargin = 12.0
)

// Beds draws every planted gravel bed that has an outline: its plan with the depth
// of media, and its section from the inlet to the outlet where floor and surface
// are drawn.
func Beds(r Review) []*Drawing {
	var all []*Drawing
	for i := range r.Figures.Design.Parts {
		part := &r.Figures.Design.Parts[i]
		if part.Kind != plantedBed || len(part.Outline) == 0 {
			continue
		}
		number := strconv.Itoa(len(all) + 1)
		all = append(all, planOfBed(r, part, "bed-plan-"+number))
		if s := sectionOfBed(r, part, "bed-section-"+number); s != nil {
			all = append(all, s)
		}
	}
	return all
}

func planOfBed(r Review, part *design.Part, name string) *Drawing {
	b := &bedPlan{&plan{Review: r, design: r.Figures.Design}, part, points(part.Outline)}
	e := nothing()
	for _, s := range covered(part) {
		e.take(s.Points()...)
	}
	scale := fit(r.Units, e.width(), e.height(), paperWidth-2*bedMargin, bedHeight-2*bedMargin)
	b.perMetre = 1000 / scale.Ratio
	height := e.height()*b.perMetre + 2*bedMargin
	b.frame = box{0.3, 0.3, paperWidth - 0.3, height}
	b.origin, b.at0 = along(e.low, e.high, 0.5), point{paperWidth / 2, height / 2}
	d := &Drawing{Name: name, Title: "Plan of " + part.ID + " with the depth of its media", Width: paperWidth, Scale: scale}
	b.draw(d)
	d.Desc = fmt.Sprintf("Plan of the planted gravel bed %s at a scale of %s, with the depth of media at its %d corners, its inlet header, outlet and draw-down. "+
		"The table of beds gives the depths in words.", part.ID, scale.Words, len(part.Outline))
	d.body = b.String()
	return d
}

func (b *bedPlan) draw(d *Drawing) {
	on := b.all(b.ring)
	clip := d.Name + "-clip"
	b.open("clipPath", "id", clip)
	b.canvas.ring("", on)
	b.close("clipPath")
	b.open("g", "class", "part-of", "data-id", b.part.ID)
	b.canvas.ring("bed-edge", on)
	b.close("g")
	b.obstacle(on, true)
	b.key.line("bed-edge", "edge of the bed")
	b.open("g", "clip-path", "url(#"+clip+")")
	d.Notes = append(d.Notes, b.depths()...)
	b.close("g")
	b.fittings()
	b.corners()
	b.letterAll()
	b.rect("frame", b.frame)
	top := b.frame.bottom + 5
	b.scaleBar(b.Units, d.Scale.Ratio, point{4, top + 5}, 58)
	b.northArrow(point{78, top + 4.5}, b.design.Site.Grid.North.Value)
	d.Notes = append(d.Notes, b.unlettered()...)
	d.Height = b.key.draw(&b.canvas, point{94, top}, 4, top+13)
}

// depth is the depth of media at a place, ok=false when the design does not show
// it.
func (b *bedPlan) depth(at geometry.Point) (float64, bool) {
	p := newProfile(b.Review)
	floor, known := p.floorAt(b.part, b.ring, at)
	top, given := p.topAt(b.part, b.ring, at)
	return top - floor, known && given
}

// depths draws lines of equal depth where the depth varies.
func (b *bedPlan) depths() []string {
	var spots []ground.Spot
	low, high := 0.0, 0.0
	for i, corner := range b.ring {
		depth, known := b.depth(corner)
		if !known {
			return []string{"No depths: the design does not show both the floor and the surface of the media."}
		}
		spots = append(spots, ground.Spot{X: corner.X, Y: corner.Y, Z: depth})
		if i == 0 {
			low, high = depth, depth
		}
		low, high = min(low, depth), max(high, depth)
	}
	if high-low <= 2*geometry.Resolution {
		return []string{"The media are " + b.told(high) + " deep everywhere."}
	}
	surface, err := ground.New(spots)
	if err != nil {
		return []string{"No lines of equal depth: " + err.Error() + "."}
	}
	interval := roundAbove((high-low)/5/inch(b.Units)) * inch(b.Units)
	lines, err := surface.Contours(interval)
	if err != nil {
		return []string{"No lines of equal depth: " + err.Error() + "."}
	}
	for i := range lines {
		b.depthLine(&lines[i])
	}
	b.key.line("contour", "equal depth, every "+b.told(interval))
	return nil
}

// inch is the small unit that intervals of depth are whole in, in metres.
func inch(units quantity.System) float64 {
	if units == quantity.US {
		return foot / 12
	}
	return 0.01
}

// told words a depth in the one small unit that depths of media are told in.
func (b *bedPlan) told(depth float64) string {
	unit := "1 mm"
	if b.Units == quantity.US {
		unit = "1 in"
	}
	return quantity.UnitAs(unit, quantity.Length, b.Units, depth).Format(depth)
}

func (b *bedPlan) depthLine(line *ground.Contour) {
	on := b.contour(line)
	b.line("contour", on)
	b.labels = append(b.labels, &label{class: "level", name: "depth", size: smallLettering, inside: true, near: true, onlyInside: true,
		lines: []string{b.told(line.Level)}, choices: b.middles(on)})
}

// middles gives places on the stretches of a line.
func (b *bedPlan) middles(line []point) []point {
	var all []point
	for i := 1; i < len(line); i++ {
		all = append(all, point{(line[i-1].x + line[i].x) / 2, (line[i-1].y + line[i].y) / 2})
	}
	return all
}

// corners numbers the corners, with the depth at each, and letters the length of
// every edge.
func (b *bedPlan) corners() {
	for i, corner := range b.ring {
		lines := []string{"corner " + strconv.Itoa(i+1)}
		if depth, known := b.depth(corner); known {
			lines = append(lines, b.told(depth)+" deep")
		}
		b.circle("solid", b.at(corner), 0.5)
		b.labels = append(b.labels, &label{class: "id", name: lines[0], size: smallLettering, clear: 0.8, lines: lines, choices: []point{b.at(corner)}})
		next := b.ring[(i+1)%len(b.ring)]
		b.labels = append(b.labels, &label{class: "note", name: "edge", size: smallLettering, near: true, clear: 0.8,
			lines: []string{quantity.Format(apart(corner, next), quantity.Length, b.Units)}, choices: []point{b.at(along(corner, next, 0.5))}})
	}
}

// fittings draws the inlet header with its cleanouts, the outlet and the
// draw-down.
func (b *bedPlan) fittings() {
	if h := b.part.Inlet; h != nil && len(h.Path) > 1 {
		on := b.all(points(h.Path))
		b.line("header", on)
		b.obstacle(on, false)
		b.labels = append(b.labels, &label{class: "note", name: "inlet header", size: lettering, clear: 0.6, lines: []string{"inlet header"}, choices: b.alongLine(points(h.Path))})
		for _, at := range h.Cleanouts {
			b.fitting("cleanout", at, 0.7)
		}
	}
	if o := b.part.Outlet; o != nil && o.At != nil {
		b.fitting("outlet", *o.At, 1.2)
	}
	if d := b.part.Drawdown; d != nil && d.At != nil {
		b.fitting("draw-down", *d.At, 0.5)
	}
}

func (b *bedPlan) fitting(name string, place design.Point, r float64) {
	at := b.at(geometry.Point(place))
	b.circle("fine", at, r)
	b.labels = append(b.labels, &label{class: "note", name: name, size: lettering, clear: r, lines: []string{name}, choices: []point{at}})
}
