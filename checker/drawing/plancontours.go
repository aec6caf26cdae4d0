package drawing

import (
	"math"
	"strings"

	"greysill/checker/design"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

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
