package drawing

import (
	"math"
	"strconv"
	"strings"
)

// box is an upright rectangle on the paper.
type box struct{ left, top, right, bottom float64 }

func around(centre point, width, height float64) box {
	return box{centre.x - width/2, centre.y - height/2, centre.x + width/2, centre.y + height/2}
}

func (b box) overlaps(o box) bool {
	return b.left < o.right && o.left < b.right && b.top < o.bottom && o.top < b.bottom
}

func (b box) holds(p point) bool {
	return b.left <= p.x && p.x <= b.right && b.top <= p.y && p.y <= b.bottom
}

func (b box) within(o box) bool {
	return o.left <= b.left && b.right <= o.right && o.top <= b.top && b.bottom <= o.bottom
}

func (b box) grown(by float64) box {
	return box{b.left - by, b.top - by, b.right + by, b.bottom + by}
}

// nearest is the place of the box that is nearest to a point.
func (b box) nearest(p point) point {
	return point{min(max(p.x, b.left), b.right), min(max(p.y, b.top), b.bottom)}
}

// stroke is a straight stretch of line on the paper.
type stroke struct{ a, b point }

// off is how far a place lies from the endless line through the stroke.
func (s stroke) off(p point) float64 {
	return math.Abs((s.b.x-s.a.x)*(p.y-s.a.y)-(s.b.y-s.a.y)*(p.x-s.a.x)) / s.a.to(s.b)
}

// meets reports whether any of the stroke lies in the box: Liang and Barsky's
// clipping (from memory).
func (s stroke) meets(b box) bool {
	from, to := 0.0, 1.0
	dx, dy := s.b.x-s.a.x, s.b.y-s.a.y
	for _, side := range [4][2]float64{{-dx, s.a.x - b.left}, {dx, b.right - s.a.x}, {-dy, s.a.y - b.top}, {dy, b.bottom - s.a.y}} {
		switch p, q := side[0], side[1]; {
		case p == 0 && q < 0:
			return false
		case p < 0:
			from = max(from, q/p)
		case p > 0:
			to = min(to, q/p)
		}
	}
	return from <= to
}

// crosses reports whether two strokes cross.
func (s stroke) crosses(o stroke) bool {
	side := func(a, b, p point) float64 { return (b.x-a.x)*(p.y-a.y) - (b.y-a.y)*(p.x-a.x) }
	return side(s.a, s.b, o.a)*side(s.a, s.b, o.b) < 0 && side(o.a, o.b, s.a)*side(o.a, o.b, s.b) < 0
}

// label is lettering that belongs to a place and may stand beside it, with a
// leader where that is far.
type label struct {
	class string
	name  string // what it labels, for reading the drawing back
	lines []string
	marks []Mark // numbers of findings, in rings under the text
	size  float64

	choices    []point // places that it may belong to, the best first
	clear      float64 // how far the thing's symbol reaches from its place
	inside     bool    // it may stand on the place itself
	onlyInside bool    // and nowhere else
	near       bool    // it is left out rather than led far off
}

const (
	ringSize   = 3.4 // from the middle of one finding's ring to the next
	ringsInRow = 5
	leading    = 1.25 // from line to line, in heights of letters
	margin     = 0.5  // between labels
)

func (l *label) extent() (width, height float64) {
	for _, line := range l.lines {
		width = max(width, textWidth(line, l.size))
	}
	rows := (len(l.marks) + ringsInRow - 1) / ringsInRow
	width = max(width, ringSize*float64(min(len(l.marks), ringsInRow)))
	return width, leading*l.size*float64(len(l.lines)) + ringSize*float64(rows)
}

// placer puts labels where they cover no other label and as little of the
// drawing as can be: for each in turn it takes the best of the places round its
// point.
type placer struct {
	frame   box
	taken   []box
	leaders []stroke
	drawn   []stroke // lines that a label had better not cover
	omitted []*label
}

// reaches are the distances from a symbol at which a label is tried.
var reaches = []float64{0.8, 2, 4, 6.5, 9.5, 13, 17, 22, 28, 35, 43}

const (
	directions = 16
	nearReach  = 4 // of reaches, how many a label that must be near tries
)

// place finds room for a label and keeps it; ok is false when there is none.
func (p *placer) place(l *label) (at box, leader stroke, ok bool) {
	best := math.Inf(1)
	for rank, place := range spread(l.choices) {
		where, line, cost := p.beside(l, place)
		if cost += 0.7 * float64(rank); cost < best {
			best, at, leader = cost, where, line
		}
	}
	if math.IsInf(best, 1) {
		p.omitted = append(p.omitted, l)
		return at, leader, false
	}
	p.taken = append(p.taken, at)
	if leader.a.to(leader.b) > l.clear {
		p.leaders = append(p.leaders, leader)
	}
	return at, leader, true
}

// beside finds the best room for a label at one of its places.
func (p *placer) beside(l *label, place point) (at box, leader stroke, best float64) {
	width, height := l.extent()
	best = math.Inf(1)
	try := func(b box, away float64) {
		s := stroke{place, b.nearest(place)}
		if cost := p.cost(b, s, away); cost < best {
			best, at, leader = cost, b, s
		}
	}
	if l.inside {
		try(around(place, width, height), 0)
	}
	for i, reach := range reaches {
		if l.onlyInside || l.near && i >= nearReach || best < reach {
			break
		}
		for d := range directions {
			sin, cos := math.Sincos(2 * math.Pi * float64(d) / directions)
			try(around(place.plus(cos*(l.clear+reach+width/2), sin*(l.clear+reach+height/2)), width, height), reach)
		}
	}
	return at, leader, best
}

// cost weighs a place: infinite where the label covers another one, its leader
// runs through another one, or it leaves the frame.
func (p *placer) cost(b box, leader stroke, away float64) float64 {
	if !b.within(p.frame) {
		return math.Inf(1)
	}
	roomy := b.grown(margin)
	for _, other := range p.taken {
		if roomy.overlaps(other) || leader.meets(other) && !other.holds(leader.a) {
			return math.Inf(1)
		}
	}
	cost := away
	for _, other := range p.leaders {
		if other.meets(b) {
			return math.Inf(1)
		}
		if leader.crosses(other) {
			cost += 6
		}
	}
	for _, s := range p.drawn {
		if s.meets(b) {
			cost += 2.5
		}
	}
	return cost
}

// unlettered says which labels had no room, those left out that may be.
func (p *placer) unlettered() []string {
	var without []string
	for _, l := range p.omitted {
		if !l.near {
			without = append(without, l.name)
		}
	}
	if len(without) == 0 {
		return nil
	}
	return []string{"No room for the lettering of: " + strings.Join(without, ", ") + "."}
}

// letter places a label and writes it, with a leader where it stands off.
func (p *placer) letter(c *canvas, l *label) {
	at, leader, ok := p.place(l)
	if !ok {
		return
	}
	c.open("g", "class", "label", "data-label", l.name, "data-box", hundredths(at.left)+" "+hundredths(at.top)+" "+hundredths(at.right)+" "+hundredths(at.bottom))
	if leader.a.to(leader.b) > l.clear+1.5 {
		c.line("leader", []point{leader.a, leader.b})
	}
	y := at.top
	centre := (at.left + at.right) / 2
	for _, line := range l.lines {
		c.text(l.class, line, point{centre, y + l.size}, middle, l.size)
		y += leading * l.size
	}
	c.marks(l.marks, at.left, y, at.right)
	c.close("g")
}

// marks writes the numbers of findings in rows of rings, centred between two
// sides.
func (c *canvas) marks(marks []Mark, left, top, right float64) {
	for i, m := range marks {
		row, inRow := i/ringsInRow, min(ringsInRow, len(marks)-i/ringsInRow*ringsInRow)
		x := (left+right)/2 + ringSize*(float64(i%ringsInRow)-float64(inRow-1)/2)
		c.ringed(m, point{x, top + ringSize*(float64(row)+0.5)})
	}
}

// ringed writes the number of a finding in its ring.
func (c *canvas) ringed(m Mark, at point) {
	class := ringClass[m.Of]
	c.circle("mark "+class, at, 1.55)
	number := strconv.Itoa(m.Number)
	size := min(smallLettering, 2.5/textWidth(number, 1))
	c.text("mark-"+class, number, at.plus(0, size*0.36), middle, size)
}

// ringClass has the class of each standing's ring.
var ringClass = map[Standing]string{Fails: "fails", Warns: "warns", NotShown: "gap", Allowed: "allowed"}

// mostChoices bounds the places that one label tries.
const mostChoices = 12

// spread picks evenly among many places.
func spread(places []point) []point {
	if len(places) <= mostChoices {
		return places
	}
	picked := make([]point, mostChoices)
	for i := range picked {
		picked[i] = places[int(math.Round(float64(i)*float64(len(places)-1)/(mostChoices-1)))]
	}
	return picked
}
