package figures

import "slices"

// downstream marks the nodes that water from a node meets in a season. Beyond
// a node at which stop holds it does not look; a nil stop looks all the way.
func (n *network) downstream(from int, s season, stop func(kind string) bool) []bool {
	met := make([]bool, len(n.nodes))
	var visit func(i int)
	visit = func(i int) {
		for _, w := range n.nodes[i].ways[s] {
			if met[w.to] {
				continue
			}
			met[w.to] = true
			if stop == nil || !stop(n.nodes[w.to].kind) {
				visit(w.to)
			}
		}
	}
	visit(from)
	return met
}

// meets reports whether water from a node meets a kind of part, or what the
// drawing would have to show to tell.
func (n *network) meets(from int, s season, stop, wanted func(kind string) bool) (bool, []Lack) {
	met := n.downstream(from, s, stop)
	if n.anyOf(met, wanted) {
		return true, nil
	}
	return false, n.lacks(n.openEnds(from, met, stop))
}

// anyOf reports whether any of the marked nodes is of a kind.
func (n *network) anyOf(marked []bool, wanted func(kind string) bool) bool {
	for i := range marked {
		if marked[i] && wanted(n.nodes[i].kind) {
			return true
		}
	}
	return false
}

// openEnds gives those of a node and the marked ones below it where the drawing
// fails to say where the water goes on.
func (n *network) openEnds(from int, met []bool, stop func(kind string) bool) []int {
	var ends []int
	for i := range met {
		here := &n.nodes[i]
		if (met[i] || i == from) && here.open() && (stop == nil || !stop(here.kind)) {
			ends = append(ends, i)
		}
	}
	return ends
}

// above leaves out those nodes that cannot lead to a place: itself, and what
// lies below it.
func (n *network) above(place int, nodes []int) []int {
	if len(nodes) == 0 {
		return nil
	}
	below := n.downstream(place, everSeason, nil)
	return slices.DeleteFunc(slices.Clone(nodes), func(i int) bool { return i == place || below[i] })
}

// spread is where some water comes to.
type spread struct {
	met  []bool // the nodes
	open []int  // those of them, and where it comes from, whose further way is not drawn
}

// from follows the water of every source of a class, also of all at once.
func (n *network) from(s season, class func(water string) bool) spread {
	all := spread{met: make([]bool, len(n.nodes))}
	for i := range n.nodes {
		if n.nodes[i].part != nil || !class(waterOf[n.nodes[i].kind]) {
			continue
		}
		met := n.downstream(i, s, nil)
		for k := range met {
			all.met[k] = all.met[k] || met[k]
		}
		all.open = append(all.open, n.openEnds(i, met, nil)...)
	}
	return all
}

// lacks lists what is lacking to follow the water beyond nodes, each once.
func (n *network) lacks(openEnds []int) []Lack {
	var lacks []Lack
	for _, i := range openEnds {
		if l := n.nodes[i].lack(); !slices.Contains(lacks, l) {
			lacks = append(lacks, l)
		}
	}
	return lacks
}

// open reports whether the drawing fails to say where the node's water goes in
// its ordinary run. A second route or an overflow does not say it, but that of a
// pond does: what rain and evaporation leave of a pond's water may leave it by
// the overflow alone.
func (n *node) open() bool {
	if n.kind == pond {
		return len(n.ways[everSeason]) == 0
	}
	return n.kind != "" && len(n.ways[warm]) == 0 && !mayEnd(n.kind)
}

func (n *node) lack() Lack {
	if n.kind == pond {
		return Lack{n.pointer + "/to", "to or overflow_to of " + n.id}
	}
	return Lack{n.pointer + "/to", "to of " + n.id}
}

// allEnd reports whether all water that takes the given ways ends at a kind of
// part, one that no way leads on from, without meeting a barred one before; or
// what the drawing would have to show to tell. No way at all is false.
func (n *network) allEnd(ways []way, end, barred func(kind string) bool) (bool, []Lack) {
	var lacks []Lack
	seen := make([]bool, len(n.nodes))
	var visit func(ways []way) bool
	visit = func(ways []way) bool {
		for _, w := range ways {
			here := &n.nodes[w.to]
			switch {
			case seen[w.to]:
				continue
			case len(here.ways[everSeason]) == 0 && end(here.kind):
			case barred(here.kind):
				return false
			case here.open():
				lacks = append(lacks, here.lack())
			case len(here.ways[everSeason]) == 0:
				return false
			}
			seen[w.to] = true
			if !visit(here.ways[everSeason]) {
				return false
			}
		}
		return true
	}
	if len(ways) == 0 || !visit(ways) {
		return false, nil
	}
	return len(lacks) == 0, lacks
}
