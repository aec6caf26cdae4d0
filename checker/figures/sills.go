package figures

import (
	"math"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// sills are the levels that water has to rise to before it runs on: at each
// node, the highest on its easiest way out. Where nothing holds the water back,
// that is minus infinity.
type sills struct {
	*drawing
	of []*Value // by node, nil until asked for
}

func newSills(d *drawing) *sills { return &sills{d, make([]*Value, len(d.network.nodes))} }

var freeOutfall = Value{Number: math.Inf(-1)}

// at is the sill of a node: its own level, or that of what lies beyond.
func (s *sills) at(node int) Value {
	if s.of[node] == nil {
		v := s.fresh(node)
		s.of[node] = &v
	}
	return *s.of[node]
}

func (s *sills) fresh(node int) Value {
	p := s.partAt(node)
	switch {
	case p == nil:
		return freeOutfall // a feature
	case works(p.Kind) == pipe:
		return s.pastPipe(node, -1)
	case p.Kind == diverter:
		return higher(p.entry("level", p.Level), s.past(node))
	case p.Kind == filter:
		return higher(p.entry("outlet_level", p.OutletLevel), s.past(node))
	case takesUp(p.Kind):
		return freeOutfall
	case inTrain(p.Kind):
		return p.entry("water_level", p.WaterLevel)
	case leaves(p.Kind):
		return p.entry("level", p.Level)
	default:
		return s.past(node)
	}
}

// past is the sill of the easiest way on from a node, in the bypass season.
func (s *sills) past(node int) Value {
	ways := s.network.nodes[node].ways[bypassing]
	if len(ways) == 0 {
		return unknown(s.network.nodes[node].lack())
	}
	easiest := Value{Number: math.Inf(1)}
	for _, w := range ways {
		next := s.at(w.to)
		if len(next.Lacks) > 0 {
			return next
		}
		if next.Number < easiest.Number {
			easiest = next
		}
	}
	return easiest
}

// pastPipe is the sill of a pipe beyond one of its inverts, of all of it beyond -1.
func (s *sills) pastPipe(node, beyond int) Value {
	p := s.partAt(node)
	if len(p.Inverts) == 0 {
		return unknown(p.lack("inverts"))
	}
	return higher(p.highest("inverts", p.Inverts[min(beyond+1, len(p.Inverts)-1):]), s.past(node))
}

func (p *part) highest(entry string, levels []quantity.Quantity) Value {
	top := math.Inf(-1)
	for _, q := range levels {
		top = max(top, q.Value)
	}
	return number(top, p.drawn(entry))
}

// higher gives the higher of two levels.
func higher(own, beyond Value) Value {
	switch {
	case len(own.Lacks)+len(beyond.Lacks) > 0:
		return outOf(0, own, beyond)
	case beyond.Number > own.Number+geometry.Resolution:
		return beyond
	default:
		return own
	}
}
