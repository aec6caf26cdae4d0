package drawing

import (
	"greysill/checker/design"
	"greysill/checker/geometry"
)

// stretch is one part of the train as water passes it: its way in plan, and how
// far along the train it begins, in metres.
type stretch struct {
	part *design.Part
	way  []geometry.Point
	from float64
}

func (s *stretch) long() float64 { return geometry.Path(s.way).Length() }

func (s *stretch) to() float64 { return s.from + s.long() }

// place is where the way is after a distance from its beginning.
func (s *stretch) place(distance float64) geometry.Point {
	for i := 1; i < len(s.way); i++ {
		long := apart(s.way[i-1], s.way[i])
		if distance <= long && long > 0 {
			return along(s.way[i-1], s.way[i], distance/long)
		}
		distance -= long
	}
	return s.way[len(s.way)-1]
}

// train gives the parts along the longest way that water takes in the warm season,
// by the number of parts, the first in the document where several are as long.
func train(d *design.Design) []*design.Part {
	longest := map[string][]*design.Part{}
	var from func(id string) []*design.Part
	from = func(id string) []*design.Part {
		part := d.Part(id)
		if part == nil {
			return nil
		}
		if known, done := longest[id]; done {
			return known
		}
		var on []*design.Part
		for _, o := range part.To {
			if way := from(o.Target); len(way) > len(on) {
				on = way
			}
		}
		longest[id] = append([]*design.Part{part}, on...)
		return longest[id]
	}
	var best []*design.Part
	for i := range d.Sources {
		for _, o := range d.Sources[i].To {
			if way := from(o.Target); len(way) > len(best) {
				best = way
			}
		}
	}
	return best
}

// stretches lays the parts of a train end to end. Through an area the way leads
// from where water comes in over its middle to where it goes out. Parts without a
// place are left out.
func stretches(parts []*design.Part) []*stretch {
	var all []*stretch
	for i, part := range parts {
		var in, out *geometry.Point
		if len(all) > 0 {
			in = &all[len(all)-1].way[len(all[len(all)-1].way)-1]
		}
		if i+1 < len(parts) && len(parts[i+1].Path) > 0 {
			next := geometry.Point(parts[i+1].Path[0])
			out = &next
		}
		way := wayThrough(part, in, out)
		if len(way) == 0 {
			continue
		}
		s := &stretch{part: part, way: way}
		if len(all) > 0 {
			s.from = all[len(all)-1].to() + apart(*in, way[0])
		}
		all = append(all, s)
	}
	return all
}

// wayThrough is the way of water through a part that it comes to and leaves at
// given places, where they are known.
func wayThrough(part *design.Part, in, out *geometry.Point) []geometry.Point {
	switch {
	case part.At != nil:
		return []geometry.Point{geometry.Point(*part.At)}
	case len(part.Path) > 0:
		return points(part.Path)
	case len(part.Outline) == 0:
		return nil
	}
	ring := points(part.Outline)
	centre := within(ring)
	opposite := func(p geometry.Point) geometry.Point {
		far, _ := geometry.Nearest(geometry.Outline(ring).Edge(), geometry.At(geometry.Point{X: 2*centre.X - p.X, Y: 2*centre.Y - p.Y}))
		return far
	}
	switch {
	case in == nil && out == nil:
		first := ring[0]
		in = &first
		fallthrough
	case out == nil:
		far := opposite(*in)
		out = &far
	case in == nil:
		far := opposite(*out)
		in = &far
	}
	ends := geometry.Outline(ring)
	start, _ := geometry.Nearest(ends, geometry.At(*in))
	end, _ := geometry.Nearest(ends, geometry.At(*out))
	return []geometry.Point{start, centre, end}
}
