package figures

import (
	"slices"

	"greysill/checker/design"
)

// season says which ways are open to the water.
type season int

const (
	warm       season = iota // diverters send water on to the train
	bypassing                // diverters that have a second route use it
	everSeason               // every way that water can take at any time, overflows included

	// The same, but not through the gravel of a bed: what a bed overflows is
	// untreated, what it lets through is not.
	untreatedWarm
	untreatedBypassing
	untreated

	seasons
)

// node is a place that water comes from or comes to: a source, a part, or a
// feature that water is sent to.
type node struct {
	id      string
	pointer string
	kind    string // of a source or part, "" of anything else
	part    *design.Part
	ways    [seasons][]way
}

// way leads from one node to the next.
type way struct {
	to    int
	share float64 // of the water that leaves the node
}

// network is the flow graph, from the connections as drawn: first the sources,
// then the parts, each in the order of the document, then the features that
// water is sent to.
type network struct {
	nodes []node
	index map[string]int
	order []int // every node before those that it drains to
}

func newNetwork(d *design.Design) *network {
	n := &network{index: make(map[string]int, len(d.Sources)+len(d.Parts))}
	for i := range d.Sources {
		s := &d.Sources[i]
		n.add(node{id: s.ID, pointer: s.Pointer, kind: s.Kind})
	}
	for i := range d.Parts {
		p := &d.Parts[i]
		n.add(node{id: p.ID, pointer: p.Pointer, kind: p.Kind, part: p})
	}
	for i := range d.Sources {
		to := n.lead(d.Sources[i].To)
		n.nodes[i].ways = [seasons][]way{to, to, to, to, to, to}
	}
	for i := range d.Parts {
		n.connect(len(d.Sources)+i, &d.Parts[i])
	}
	n.sort()
	return n
}

func (n *network) add(new node) int {
	i := len(n.nodes)
	n.nodes = append(n.nodes, new)
	n.index[new.id] = i
	return i
}

func (n *network) connect(i int, p *design.Part) {
	to, second, over := n.lead(p.To), n.lead(p.BypassTo), n.lead(p.OverflowTo)
	every := slices.Concat(to, second, over)
	turned := to
	if len(second) > 0 {
		turned = second
	}
	ways := [seasons][]way{
		warm: to, bypassing: turned, everSeason: every,
		untreatedWarm: to, untreatedBypassing: turned, untreated: every,
	}
	if p.Kind == plantedBed {
		ways[untreatedWarm], ways[untreatedBypassing], ways[untreated] = nil, nil, over
	}
	n.nodes[i].ways = ways
}

// lead gives the ways of some outlets. Outlets without a stated share split
// evenly what the others leave; where all are stated, the water divides in the
// ratio of the shares, so that three of 33.3 % lose none of it.
func (n *network) lead(outlets []design.Outlet) []way {
	ways := make([]way, len(outlets))
	stated, open := 0.0, 0
	for _, o := range outlets {
		if o.Share.Given() {
			stated += o.Share.Value
		} else {
			open++
		}
	}
	for k, o := range outlets {
		ways[k].to = n.target(o.Target)
		switch {
		case stated == 0:
			ways[k].share = 1 / float64(len(outlets))
		case !o.Share.Given():
			ways[k].share = max(1-stated, 0) / float64(open)
		case open == 0 || stated > 1:
			ways[k].share = o.Share.Value / stated
		default:
			ways[k].share = o.Share.Value
		}
	}
	return ways
}

// target finds a node by its id. What is neither a source nor a part is
// somewhere outside the system, where the water's way ends.
func (n *network) target(id string) int {
	if i, known := n.index[id]; known {
		return i
	}
	return n.add(node{id: id})
}

// sort puts the nodes in an order in which water meets them.
func (n *network) sort() {
	seen := make([]bool, len(n.nodes))
	var visit func(i int)
	visit = func(i int) {
		if seen[i] {
			return
		}
		seen[i] = true
		for _, w := range n.nodes[i].ways[everSeason] {
			visit(w.to)
		}
		n.order = append(n.order, i)
	}
	for i := range n.nodes {
		visit(i)
	}
	slices.Reverse(n.order)
}
