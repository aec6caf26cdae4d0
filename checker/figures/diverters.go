package figures

import (
	"math"
	"slices"

	"greysill/checker/quantity"
)

var diverterTable = tabulate(
	List{Name: "diverters", Doc: "Every diverter.", Subject: "a diverter"},
	func(d *drawing) []*part { return d.ofKind(diverter) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "second_route_reaches_sewer", Kind: Truth,
			Doc: "Whether every way of its second route ends in a sewer or septic connection without meeting a part that stores, treats or takes up greywater; " +
				"false when no second route is drawn."}, (*part).secondRouteReachesSewer},
		{Field{Name: "second_route", Kind: Text, Doc: "Where its second route goes, part by part; \"none\" where none is drawn."}, (*part).secondRoute},
		{Field{Name: "downstream_of_traps", Kind: Truth, Doc: "Whether it stands downstream of the fixtures' traps and vents, as stated."},
			func(p *part) Value { return stated(p.DownstreamOfTraps, p.Pointer, "downstream_of_traps", p.ID) }},
		{Field{Name: "accessible", Kind: Truth, Doc: "Whether it can be reached and turned without digging or tools, as stated."},
			func(p *part) Value { return stated(p.Accessible, p.Pointer, "accessible", p.ID) }},
		{Field{Name: "labelled", Kind: Truth, Doc: "Whether it carries a lasting label, as stated."},
			func(p *part) Value { return stated(p.Labelled, p.Pointer, "labelled", p.ID) }},
		{Field{Name: "shows_direction", Kind: Truth, Doc: "Whether it shows by itself which way the water is going, as stated."},
			func(p *part) Value { return stated(p.ShowsDirection, p.Pointer, "shows_direction", p.ID) }},
		{Field{Name: "widest_way_in", Kind: Number, Dimension: quantity.Length,
			Doc: "Greatest inside diameter of the valve as drawn, and of the pipes that lead to it and on from it in the warm season."}, (*part).widestWayIn},
		{Field{Name: "narrowest_second", Kind: Number, Dimension: quantity.Length,
			Doc: "Least inside diameter of the pipes of its second route; of the connection, where no pipe is drawn between."}, (*part).narrowestSecond},
		{Field{Name: "second_to_first", Kind: Number, Dimension: quantity.Number, Doc: "Width of the second route for each unit of the width of what it has to take.",
			Formula: "narrowest second ÷ widest way in"}, (*part).secondToFirst},
	},
)

func (p *part) secondRouteReachesSewer() Value {
	reaches, lacks := p.drawing.network.allEnd(p.second(), leaves, inTrain)
	return orUnknown(truth(reaches, p.given("bypass_to", len(p.BypassTo))...), lacks)
}

func (p *part) secondRoute() Value {
	return text(p.drawing.network.trail(p.node, p.second(), bypassing), p.given("bypass_to", len(p.BypassTo))...)
}

// second gives the ways that the diverter sends water by in the bypass season.
func (p *part) second() []way {
	if len(p.BypassTo) == 0 {
		return nil
	}
	return p.drawing.network.nodes[p.node].ways[bypassing]
}

// given names an entry as an input where the drawing has it.
func (p *part) given(entry string, members int) []Input {
	if members == 0 {
		return nil
	}
	return []Input{p.drawn(entry)}
}

// widestWayIn is the greatest diameter that the diverter may get a full pipe
// from.
func (p *part) widestWayIn() Value {
	widest := Value{}
	if p.Diameter.Given() {
		widest = p.diameter()
	}
	for _, q := range p.drawing.ofKind(drainPipe, overflowPipe) {
		if !p.drawing.network.leads(q.node, p.node) && !p.drawing.network.leads(p.node, q.node) {
			continue
		}
		if d := q.diameter(); len(d.Lacks) > 0 || d.Number > widest.Number {
			widest = outOf(d.Number, d)
		}
		if !widest.Known() {
			return widest
		}
	}
	if widest.Number == 0 {
		return unknown(p.lack("diameter"))
	}
	return widest
}

// leads reports whether water goes straight from a node to another in the warm
// season.
func (n *network) leads(from, to int) bool {
	return slices.ContainsFunc(n.nodes[from].ways[warm], func(w way) bool { return w.to == to })
}

func (p *part) narrowestSecond() Value {
	if len(p.BypassTo) == 0 {
		return unknown(p.lack("bypass_to"))
	}
	met := p.drawing.network.downstream(p.node, bypassing, inTrain)
	for _, wanted := range [][]string{{drainPipe, overflowPipe}, {sewerConnection, septicConnection}} {
		if v, any := p.drawing.narrowest(met, wanted); any {
			return v
		}
	}
	return unknown(Lack{p.Pointer + "/bypass_to", "a pipe or connection on the second route of " + p.ID})
}

// narrowest is the least diameter among the marked parts of some kinds.
func (d *drawing) narrowest(marked []bool, kinds []string) (least Value, any bool) {
	least = Value{Number: math.Inf(1)}
	for _, q := range d.ofKind(kinds...) {
		if !marked[q.node] {
			continue
		}
		any = true
		v := q.diameter()
		if !v.Known() {
			return v, true
		}
		if v.Number < least.Number {
			least = v
		}
	}
	return least, any
}

func (p *part) secondToFirst() Value {
	second, first := p.narrowestSecond(), p.widestWayIn()
	if first.Known() && first.Number <= 0 {
		return unknown(Lack{p.Pointer + "/diameter", "diameter of " + p.ID + ", more than 0"})
	}
	return outOf(second.Number/first.Number, second, first)
}
