package drawing

import (
	"fmt"
	"math"
	"slices"

	"greysill/checker/design"
	"greysill/checker/quantity"
)

// section is the section along the train.
type section struct {
	*profile
	way []*stretch
}

// Section draws the train cut along the way of the water, from the first part to
// the last, nil when fewer than two parts of a train have a place.
func Section(r Review) *Drawing {
	s := &section{newProfile(r), stretches(train(r.Figures.Design))}
	if len(s.way) < 2 {
		return nil
	}
	last := s.way[len(s.way)-1]
	s.low, s.high = s.levels()
	if math.IsInf(s.low, 1) {
		return nil
	}
	d := &Drawing{Name: "section", Title: "Section along the train", Width: paperWidth, Scale: s.lay(last.to(), sectionHigh)}
	s.axis(s.at(last.to(), s.low).x + 2)
	for _, one := range s.way {
		s.draw(one)
	}
	for _, one := range s.way {
		s.groundLine(one)
	}
	s.crossings()
	s.overflows()
	d.Notes = append(s.letterAll(), datum(s.design))
	d.Height = s.surround(d.Scale.Ratio)
	d.Desc = s.describe(d.Scale)
	d.body = s.String()
	return d
}

func newProfile(r Review) *profile {
	p := &profile{Review: r, design: r.Figures.Design}
	if surface, err := surfaceOf(p.design); err == nil {
		p.ground = surface
	}
	return p
}

// levels gives the lowest and the highest level that the section shows.
func (s *section) levels() (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, one := range s.way {
		for _, level := range levelsOf(one.part) {
			low, high = min(low, level), max(high, level)
		}
		for _, distance := range one.steps(1) {
			if level, ok := s.groundAt(one.place(distance)); ok {
				low, high = min(low, level-max(one.part.Depth.Value, s.frostDepth())), max(high, level)
			}
		}
		for i := range s.design.Site.Services {
			for _, c := range s.crossed(&s.design.Site.Services[i], one) {
				low, high = min(low, c.level), max(high, c.level)
			}
		}
	}
	return low, high
}

// levelsOf gives every level that a part is drawn with.
func levelsOf(p *design.Part) []float64 {
	all := slices.Concat(p.Inverts, p.EdgeLevels, p.Floor, p.Surface,
		[]quantity.Quantity{p.WaterLevel, p.RimLevel, p.OutletLevel, p.InletLevel, p.Level, p.CrestLevel})
	var given []float64
	for _, q := range all {
		if q.Given() {
			given = append(given, q.Value)
		}
	}
	return given
}

// draw draws one part of the train and labels it.
func (s *section) draw(one *stretch) {
	part := one.part
	l := &label{class: "id", name: part.ID, size: lettering, lines: []string{part.ID}, marks: s.marksOf(part.ID), clear: 0.5}
	switch {
	case lineClass[part.Kind] != "" && part.Kind != trench && len(part.Inverts) > 0:
		s.pipe(one)
		l.choices = []point{s.onPipe(one, one.long()/2), s.onPipe(one, one.long()/4), s.onPipe(one, one.long()*0.75)}
	case part.At != nil:
		l.choices = []point{s.fitting(one)}
		l.clear = symbolSize
	default:
		v, ok := s.newVessel(one)
		if !ok {
			return
		}
		v.draw()
		middle := len(v.top) / 2
		l.choices = []point{v.profile.at(v.from+v.distances[middle], v.top[middle])}
	}
	s.labels = append(s.labels, l)
}

// fitting draws what is a point in plan, at its level or on the ground.
func (s *section) fitting(one *stretch) point {
	level := one.part.Level.Value
	if levels := levelsOf(one.part); !one.part.Level.Given() && len(levels) > 0 {
		level = slices.Min(levels)
	} else if len(levels) == 0 {
		level, _ = s.groundAt(one.way[0])
	}
	at := s.at(one.from, level)
	s.symbol(one.part.Kind, at)
	s.key.symbol(one.part.Kind)
	s.taken = append(s.taken, around(at, 2*symbolSize, 2*symbolSize))
	return at
}

// pipe draws a pipe by its invert and its crown, and letters its inverts.
func (s *section) pipe(one *stretch) {
	part := one.part
	var invert, crown []point
	for i, distance := range s.inverts(one) {
		at := s.at(one.from+distance, part.Inverts[i].Value)
		invert = append(invert, at)
		crown = append(crown, at.plus(0, -part.Diameter.Value*s.perMetre*s.times))
	}
	class := lineClass[part.Kind]
	s.open("g", "class", "part-of", "data-id", part.ID)
	s.line(class, invert)
	s.line("fine", crown)
	s.close("g")
	s.obstacle(invert)
	s.key.line(class, part.Kind+", invert")
	s.key.line("fine", "crown of a pipe")
	for i := range invert {
		s.level(invert[i], part.Inverts[i].Value, "")
	}
}

// inverts gives the distances along a pipe at which its inverts are drawn: its
// points where each has one, else its two ends.
func (s *section) inverts(one *stretch) []float64 {
	distances := []float64{0}
	if len(one.part.Inverts) == len(one.way) {
		for i := 1; i < len(one.way); i++ {
			distances = append(distances, distances[i-1]+apart(one.way[i-1], one.way[i]))
		}
		return distances
	}
	return []float64{0, one.long()}[:min(2, len(one.part.Inverts))]
}

// invertAt is the invert of a pipe after a distance.
func (s *section) invertAt(one *stretch, distance float64) float64 {
	at := s.inverts(one)
	for i := 1; i < len(at); i++ {
		if distance <= at[i] && at[i] > at[i-1] {
			a, b := one.part.Inverts[i-1].Value, one.part.Inverts[i].Value
			return a + (b-a)*(distance-at[i-1])/(at[i]-at[i-1])
		}
	}
	return one.part.Inverts[len(at)-1].Value
}

func (s *section) onPipe(one *stretch, distance float64) point {
	return s.at(one.from+distance, s.invertAt(one, distance))
}

// overflows marks on every part where its overflow begins: the crest of a
// spillway or the upper invert of a pipe.
func (s *section) overflows() {
	for _, one := range s.way {
		for _, o := range one.part.OverflowTo {
			to := s.design.Part(o.Target)
			if to == nil || len(one.way) < 2 {
				continue
			}
			level, known := crest(to)
			if !known {
				continue
			}
			at := s.at(one.from, level)
			s.line("overflow", []point{at.plus(-3.5, 0), at.plus(0.8, 0)})
			s.key.line("overflow", "overflow, its invert or crest")
			s.labels = append(s.labels, &label{class: "note", name: to.ID, size: smallLettering, clear: 0.5, choices: []point{at.plus(-2, 0)},
				lines: []string{to.ID + " " + bare(level, s.Units)}})
		}
	}
}

// crest is the level at which water begins to leave by a spillway or a pipe.
func crest(p *design.Part) (float64, bool) {
	if p.CrestLevel.Given() {
		return p.CrestLevel.Value, true
	}
	if len(p.Inverts) > 0 {
		return p.Inverts[0].Value, true
	}
	return 0, false
}

// surround draws the frame, the scale bar and the key.
func (p *profile) surround(ratio float64) float64 {
	p.rect("frame", box{0.3, p.frame.top, p.frame.right, p.frame.bottom})
	top := p.frame.bottom + 5
	p.scaleBar(p.Units, ratio, point{4, top + 3}, 58)
	return p.key.draw(&p.canvas, point{94, top}, 4, top+6)
}

func (s *section) describe(scale Scale) string {
	first, last := s.way[0].part.ID, s.way[len(s.way)-1].part.ID
	return fmt.Sprintf("Section along the way of the water from %s to %s, %d parts, at a scale of %s. "+
		"It shows the ground, floors and sides, layers of media, pipes by their inverts, and water levels; the tables of figures give the levels in words.",
		first, last, len(s.way), scale.Words)
}
