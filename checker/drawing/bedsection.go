package drawing

import (
	"fmt"

	"greysill/checker/design"
	"greysill/checker/geometry"
)

// sectionOfBed cuts a bed from where water comes in to where it goes out.
func sectionOfBed(r Review, part *design.Part, name string) *Drawing {
	s := &section{newProfile(r), stretches(neighbours(r.Figures.Design, part))}
	var bed *stretch
	for _, one := range s.way {
		if one.part == part {
			bed = one
		}
	}
	if bed == nil || bed.long() <= geometry.Resolution {
		return nil
	}
	bed.from, s.way = 0, []*stretch{bed}
	s.low, s.high = s.levels()
	d := &Drawing{Name: name, Title: "Section of " + part.ID + " from inlet to outlet", Width: paperWidth, Scale: s.lay(bed.to(), bedHigh)}
	v, ok := s.newVessel(bed)
	if !ok {
		return nil
	}
	s.axis(s.at(bed.to(), s.low).x + 2)
	v.draw()
	s.groundLine(bed)
	s.ports(bed)
	s.overflows()
	d.Notes = append(s.letterAll(), datum(s.design))
	d.Height = s.surround(d.Scale.Ratio)
	d.Desc = fmt.Sprintf("Section of the planted gravel bed %s at a scale of %s, from inlet to outlet, with the layers of its media, its floor and its water level. "+
		"The tables of beds and layers give the depths in words.", part.ID, d.Scale.Words)
	d.body = s.String()
	return d
}

// neighbours gives a part with the pipes before and after it, where there are any.
func neighbours(d *design.Design, part *design.Part) []*design.Part {
	all := []*design.Part{part}
	for _, o := range part.To {
		if next := d.Part(o.Target); next != nil && len(next.Path) > 0 {
			all = append(all, next)
			break
		}
	}
	for i := range d.Parts {
		for _, o := range d.Parts[i].To {
			if o.Target == part.ID && len(d.Parts[i].Path) > 0 {
				return append([]*design.Part{&d.Parts[i]}, all...)
			}
		}
	}
	return all
}

// ports draws where water comes into a bed and where it leaves.
func (s *section) ports(bed *stretch) {
	port := func(distance, level float64, words string) {
		at := s.at(distance, level)
		s.circle("part", at, 0.8)
		s.labels = append(s.labels, &label{class: "note", name: words, size: smallLettering, clear: 0.9, choices: []point{at},
			lines: []string{words + " " + bare(level, s.Units)}})
	}
	if h := bed.part.Inlet; h != nil && h.Level.Given() {
		port(bed.from, h.Level.Value, "inlet header")
	}
	if o := bed.part.Outlet; o != nil && o.Level.Given() {
		port(bed.to(), o.Level.Value, "outlet")
	}
	if d := bed.part.Drawdown; d != nil && d.Level.Given() {
		port(bed.to(), d.Level.Value, "draw-down")
	}
}
