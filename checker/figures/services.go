package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var dugServiceTable = tabulate(
	List{Name: "dug_services", Doc: "Every buried service that passes in plan through what is dug for a part.", Subject: "a dig with a buried service in it"},
	(*drawing).dugServices, (*dugService).subject,
	[]column[*dugService]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(s *dugService) Value { return text(s.part.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(s *dugService) Value { return s.part.kind() }},
		{Field{Name: "service", Kind: Text, Doc: "The service's id."}, func(s *dugService) Value { return text(s.service.ID) }},
		{Field{Name: "service_kind", Kind: Text, Doc: "What the service carries.", Words: serviceKinds}, func(s *dugService) Value { return text(s.service.Kind) }},
		{Field{Name: "undug", Kind: Number, Dimension: quantity.Length,
			Doc: "Least height of ground left between the dig and the top of the service below it, at the points of the service inside the dig and wherever it " +
				"meets the edge or the ground bends; negative where the dig goes down to the service or below it.",
			Formula: "the less of lowest floor level − (ground between spot levels − depth of the service) and depth of the service − depth of the part, as the part is drawn"},
			func(s *dugService) Value { return s.undug() }},
	},
)

// service is a buried line with its shape in plan.
type service struct {
	*design.Service
	drawing *drawing
	shape   geometry.Shape
}

func (d *drawing) buried() []service {
	all := make([]service, len(d.Site.Services))
	for i := range all {
		all[i] = service{&d.Site.Services[i], d, d.services[i].shape}
	}
	return all
}

func (s *service) drawn(entry string) Input {
	return Input{Name: entry + " of " + s.ID, Pointer: s.Pointer + "/" + entry}
}

func (s *service) entry(name string, q quantity.Quantity) Value {
	if !q.Given() {
		return unknown(Lack{s.Pointer + "/" + name, name + " of " + s.ID})
	}
	return number(q.Value, s.drawn(name))
}

func (s *service) depth() Value { return s.entry("depth", s.Depth) }

func (s *service) diameter() Value { return s.entry("diameter", s.Diameter) }

// top is the level of the service's top at a place.
func (s *service) top(at geometry.Point) Value {
	ground, depth := s.drawing.level(at, "over "+s.ID), s.depth()
	return outOf(ground.Number-depth.Number, ground, depth)
}

// level is the ground at a place.
func (d *drawing) level(at geometry.Point, place string) Value {
	surface, lacks := d.surface(place)
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	level, ok := surface.Level(at)
	if !ok {
		return unknown(noSpots(place))
	}
	return number(level, spotLevels)
}

// dugService is a part with a service that passes through its dig.
type dugService struct {
	part    *part
	service *service
}

// dug are the kinds of part that are dug into the ground.
var dug = []string{surgeTank, plantedBed, mulchBasin, trench, settlingBasin, pond}

func (d *drawing) dugServices() []*dugService {
	var all []*dugService
	services := d.buried()
	for _, p := range d.ofKind(dug...) {
		if p.shape.Empty() || p.standsOn() {
			continue
		}
		for i := range services {
			if s := &services[i]; !s.shape.Empty() && geometry.Distance(p.shape, s.shape) <= p.half {
				all = append(all, &dugService{p, s})
			}
		}
	}
	return all
}

func (s *dugService) subject() Subject {
	return Subject{s.part.ID + " and " + s.service.ID, []string{s.part.ID, s.service.ID}, []string{s.part.Pointer, s.service.Pointer}}
}

func (s *dugService) undug() Value {
	if !s.part.Depth.Given() {
		if len(s.part.Floor) == 0 {
			return unknown(s.part.lack("floor"))
		}
		return s.aboveFloor()
	}
	depth := s.service.depth()
	left := outOf(depth.Number-s.part.Depth.Value, depth, Value{Inputs: []Input{s.part.drawn("depth")}})
	if len(s.part.Floor) == 0 {
		return left
	}
	if over := s.aboveFloor(); !over.Known() || !left.Known() || over.Number < left.Number {
		return over
	}
	return left
}

// aboveFloor measures from the lowest floor level, which the whole dig may
// reach.
func (s *dugService) aboveFloor() Value {
	floor := number(lowest(s.part.Floor), s.part.drawn("floor"))
	var left []float64
	var top Value
	for _, at := range s.places() {
		if top = s.service.top(at); !top.Known() {
			return top
		}
		left = append(left, floor.Number-top.Number)
	}
	return outOf(slices.Min(left), floor, top)
}

func lowest(levels []quantity.Quantity) float64 {
	return slices.MinFunc(levels, func(a, b quantity.Quantity) int {
		if a.Value < b.Value {
			return -1
		}
		return 1
	}).Value
}

// places are those of the service in the dig at which its depth under the
// ground turns: its points, where the ground bends, and where it meets the edge.
func (s *dugService) places() []geometry.Point {
	near, _ := geometry.Nearest(s.service.shape, s.part.shape)
	places := []geometry.Point{near}
	if surface, lacks := s.part.drawing.surface(""); len(lacks) == 0 {
		for _, p := range bends(s.service.shape.Points(), surface) {
			if geometry.Distance(geometry.At(p.at), s.part.shape) <= s.part.half {
				places = append(places, p.at)
			}
		}
	}
	return append(places, s.edges()...)
}

// edges are the places where the service meets the edge of the dig.
func (s *dugService) edges() []geometry.Point {
	var places []geometry.Point
	line, ring := s.service.shape.Points(), s.part.shape.Points()
	for i := 1; i < len(line); i++ {
		for k := range ring {
			if at, meet := meeting(line[i-1:i+1], []geometry.Point{ring[k], ring[(k+1)%len(ring)]}); meet {
				places = append(places, at)
			}
		}
	}
	return places
}
