package drawing

import (
	"math"
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
)

// crossings draws every buried service where the train crosses it, at the depth
// that the design gives.
func (s *section) crossings() {
	for i := range s.design.Site.Services {
		service := &s.design.Site.Services[i]
		for _, one := range s.way {
			for _, c := range s.crossed(service, one) {
				s.crossing(service, c)
			}
		}
	}
}

// crossed is a place where a service is crossed: how far along the train, and the
// level of the service's top.
type crossed struct{ distance, level float64 }

// crossed gives the places where a stretch crosses a service of a depth that is
// known.
func (s *section) crossed(service *design.Service, one *stretch) []crossed {
	var all []crossed
	for _, distance := range meetings(one, closedPath(shapeOf(service.Shape), len(service.Outline) > 0)) {
		if level, known := s.groundAt(one.place(distance)); known && service.Depth.Given() {
			all = append(all, crossed{one.from + distance, level - service.Depth.Value})
		}
	}
	return all
}

func (s *section) crossing(service *design.Service, c crossed) {
	top := s.at(c.distance, c.level)
	r := max(service.Diameter.Value*s.perMetre/2, 0.5)
	s.circle("part", top.plus(0, r), r)
	s.key.add("buried service crossed", func(c *canvas, at point) { c.circle("part", at.plus(keySample/2, 0), 0.8) })
	s.labels = append(s.labels, &label{class: "note", name: service.ID, size: smallLettering, clear: r, choices: []point{top.plus(0, r)},
		lines: []string{named(service.ID, service.Kind)}})
}

// meetings gives the distances along a stretch at which a line crosses it.
func meetings(one *stretch, line []geometry.Point) []float64 {
	var all []float64
	from := 0.0
	for i := 1; i < len(one.way); i++ {
		a, b := one.way[i-1], one.way[i]
		for k := 1; k < len(line); k++ {
			on, other := geometry.Nearest(geometry.Path([]geometry.Point{a, b}), geometry.Path(line[k-1:k+1]))
			if apart(on, other) > geometry.Resolution {
				continue
			}
			at := from + apart(a, on)
			if !slices.ContainsFunc(all, func(d float64) bool { return math.Abs(d-at) < 0.01 }) {
				all = append(all, at)
			}
		}
		from += apart(a, b)
	}
	return all
}
