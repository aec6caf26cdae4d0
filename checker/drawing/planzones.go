package drawing

import (
	"math"
	"strings"

	"greysill/checker/geometry"
)

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
	for _, piece := range zone(p.thing(c), c.Limit, p.zoneStep(c.Limit), keep) {
		on = append(on, p.inFrame(p.all(simplified(piece)))...)
	}
	if len(on) == 0 {
		return
	}
	p.open("g", "class", "zone-of", "data-thing", c.Item.Subject.IDs[1], "data-limit", mm(c.Limit))
	p.pieces(class, on)
	p.close("g")
	p.key.line(class, words)
	p.labelZone(c, on)
}

// zoneStep gives the length in metres into which a zone's curves are cut: such that
// none lies more than 0.03 mm of paper off its arc.
func (p *plan) zoneStep(radius float64) float64 {
	return min(2, math.Sqrt(8*0.03*radius*p.perMetre)) / p.perMetre
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
		data.WriteString(stepwise(piece))
	}
	c.empty("path", "class", class, "d", data.String())
}

// stepwise gives the path data of a line of many points: each but the first by how
// far it lies from the one before, in hundredths, whose rounding does not add up.
func stepwise(points []point) string {
	var b strings.Builder
	var before point
	for i, p := range points {
		p = point{math.Round(p.x * 100), math.Round(p.y * 100)}
		b.WriteString([]string{"M", "l", " "}[min(i, 2)] + mm((p.x-before.x)/100) + " " + mm((p.y-before.y)/100))
		before = p
	}
	return strings.NewReplacer(" 0.", " .", " -0.", "-.", "l0.", "l.", "-0.", "-.", " -", "-").Replace(b.String())
}

// inFrame gives the stretches of a line that show within the frame.
func (p *plan) inFrame(line []point) [][]point {
	var pieces [][]point
	shown := false // the stretch before
	for i := 1; i < len(line); i++ {
		before := shown
		if shown = (stroke{line[i-1], line[i]}).meets(p.frame); !shown {
			continue
		}
		if !before {
			pieces = append(pieces, line[i-1:i:i])
		}
		last := &pieces[len(pieces)-1]
		*last = append(*last, line[i])
	}
	return pieces
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
