package drawing

import (
	"math"
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

// profile is a vertical drawing: distances along a way to the right, levels up.
type profile struct {
	Review
	design *design.Design
	canvas
	placer
	key      key
	labels   []*label
	ground   *ground.Surface // nil when there is none
	perMetre float64
	times    float64 // how many times larger heights are drawn
	left     float64
	base     float64 // where the lowest level lies
	low      float64 // the lowest level
	high     float64
}

const (
	axisWidth     = 12.0 // for the lettering of levels
	axisGap       = 7.0  // between them and what is drawn
	sectionHigh   = 92.0 // at most, between the lowest and the highest level
	bedHigh       = 62.0 // of a bed, so that its plan has room on the same page
	profileTop    = 15.0 // room for lettering over the highest level
	profileBottom = 9.0
)

// exaggerations are the factors by which heights may be drawn larger.
var exaggerations = []float64{1, 2, 3, 4, 5, 8, 10, 15, 20, 30, 50}

// lay chooses the scales for a length and the levels low to high, in metres, such
// that the levels take no more than tall millimetres.
func (p *profile) lay(length, tall float64) Scale {
	scale := fit(p.Units, length, 0, paperWidth-axisWidth-2*axisGap, 1)
	p.perMetre, p.times = 1000/scale.Ratio, 1
	for _, times := range exaggerations {
		if (p.high-p.low)*p.perMetre*times <= tall {
			p.times = times
		}
	}
	for p.times == 1 && (p.high-p.low)*p.perMetre > tall {
		scale = fit(p.Units, length, p.high-p.low, paperWidth-axisWidth-2*axisGap, tall)
		p.perMetre = 1000 / scale.Ratio
	}
	p.left, p.base = axisWidth+axisGap, profileTop+(p.high-p.low)*p.perMetre*p.times
	p.frame = box{axisWidth, 0.3, paperWidth - 0.3, p.base + profileBottom}
	scale.Times = p.times
	return scale
}

func (p *profile) at(distance, level float64) point {
	return point{p.left + distance*p.perMetre, p.base - (level-p.low)*p.perMetre*p.times}
}

// axis draws level lines with their levels, and the frame.
func (p *profile) axis(end float64) {
	size, _ := unitOf(p.Units)
	step := roundAbove(7/(p.perMetre*p.times)/size) * size
	for k := math.Ceil(p.low/step - 1e-9); k*step <= p.high+1e-9; k++ {
		a := point{axisWidth, p.at(0, k*step).y}
		p.line("grid", []point{a, {end, a.y}})
		p.text("level", bare(k*step, p.Units), a.plus(-0.8, 0.36*smallLettering), right, smallLettering)
	}
}

// level letters a level beside a place, with more lines under it.
func (p *profile) level(at point, level float64, words string, more ...string) {
	p.labels = append(p.labels, &label{class: "level", name: "level", size: smallLettering, near: true, clear: 0.4, choices: []point{at},
		lines: append([]string{words + bare(level, p.Units)}, more...)})
}

// groundLine draws the ground along a way that begins at a distance.
func (p *profile) groundLine(s *stretch) {
	if p.ground == nil {
		return
	}
	for _, piece := range p.groundAlong(s) {
		p.line("ground", piece)
		p.obstacle(piece)
		p.key.line("ground", "ground as it lies")
		if frost := p.frostDepth(); frost > 0 {
			below := make([]point, len(piece))
			for i, at := range piece {
				below[i] = at.plus(0, frost*p.perMetre*p.times)
			}
			p.line("frost", below)
			p.key.line("frost", "frost line, "+quantity.Format(frost, quantity.Length, p.Units)+" down")
		}
	}
}

func (p *profile) frostDepth() float64 {
	if p.design.Site.Climate == nil {
		return 0
	}
	return p.design.Site.Climate.FrostDepth.Value
}

// groundAlong follows the ground along a stretch, in pieces where it is known.
func (p *profile) groundAlong(s *stretch) [][]point {
	var pieces [][]point
	var piece []point
	for _, distance := range s.steps(1 / p.perMetre) {
		level, known := p.ground.Level(s.place(distance))
		if known {
			piece = append(piece, p.at(s.from+distance, level))
			continue
		}
		if len(piece) > 1 {
			pieces = append(pieces, piece)
		}
		piece = nil
	}
	if len(piece) > 1 {
		pieces = append(pieces, piece)
	}
	return pieces
}

// mostSamples bounds the places at which one stretch is looked at.
const mostSamples = 400

// steps gives the distances along a stretch at which it is looked at.
func (s *stretch) steps(step float64) []float64 {
	n := min(max(int(math.Ceil(s.long()/step)), 1), mostSamples)
	all := make([]float64, 0, n+1+len(s.way))
	for i := range n + 1 {
		all = append(all, s.long()*float64(i)/float64(n))
	}
	sum := 0.0
	for i := 1; i < len(s.way); i++ {
		sum += apart(s.way[i-1], s.way[i])
		all = append(all, min(sum, s.long()))
	}
	slices.Sort(all)
	return slices.Compact(all)
}

func (p *profile) obstacle(line []point) {
	for i := 1; i < len(line); i++ {
		p.drawn = append(p.drawn, stroke{line[i-1], line[i]})
	}
}

// levelOver gives the level at a place in an outline of which one level is drawn,
// or one for each corner: straight over each of the triangles that the outline is
// cut into, the mean where two ways to cut it count alike.
func levelOver(ring []geometry.Point, levels []quantity.Quantity, at geometry.Point) (float64, bool) {
	if len(levels) == 0 || len(levels) != 1 && len(levels) != len(ring) {
		return 0, false
	}
	if len(levels) == 1 {
		return levels[0].Value, true
	}
	sum, weight := 0.0, 0.0
	best, nearest := math.Inf(1), 0.0
	for _, t := range geometry.Outline(ring).Triangles() {
		a, b, c := ring[t.Corners[0]], ring[t.Corners[1]], ring[t.Corners[2]]
		u, v, w := barycentric(a, b, c, at)
		level := u*levels[t.Corners[0]].Value + v*levels[t.Corners[1]].Value + w*levels[t.Corners[2]].Value
		out := -min(u, v, w)
		if out <= 1e-9 {
			sum += t.Weight * level
			weight += t.Weight
		}
		if out < best {
			best, nearest = out, level
		}
	}
	if weight == 0 {
		return nearest, !math.IsInf(best, 1)
	}
	return sum / weight, true
}

// barycentric gives the weights of a triangle's corners at a place.
func barycentric(a, b, c, p geometry.Point) (u, v, w float64) {
	area := func(a, b, c geometry.Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }
	whole := area(a, b, c)
	u, v = area(p, b, c)/whole, area(a, p, c)/whole
	return u, v, 1 - u - v
}

// letterAll places the labels and says what had no room.
func (p *profile) letterAll() []string {
	rank := func(l *label) int {
		switch {
		case len(l.marks) > 0:
			return 0
		case !l.near:
			return 1
		}
		return 2
	}
	slices.SortStableFunc(p.labels, func(a, b *label) int { return rank(a) - rank(b) })
	for _, l := range p.labels {
		p.letter(&p.canvas, l)
	}
	return p.unlettered()
}

// datum says what the levels are counted from.
func datum(d *design.Design) string {
	if d.Site.Grid.Datum == "" {
		return "The design does not say what level 0 is."
	}
	return "Levels are those of the design: " + d.Site.Grid.Datum + "."
}
