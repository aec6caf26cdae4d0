package figures

import "slices"

var holdingTable = tabulate(
	List{Name: "holdings", Subject: "a part that holds water",
		Doc: "Every part that holds water: surge tanks, planted gravel beds, settling basins, ponds, and those mulch basins and infiltration trenches that drain on or overflow."},
	(*drawing).holdings, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "has_overflow", Kind: Truth, Doc: "Whether an overflow is drawn; what a mulch basin or trench drains on is its overflow too."}, (*part).hasOverflow},
		{Field{Name: "overflow_ends_safely", Kind: Truth,
			Doc: "Whether every way that its overflow takes ends in a sewer or septic connection, " +
				"or in a mulch basin or infiltration trench that drains no further; false when no overflow is drawn."},
			(*part).overflowEndsSafely},
		{Field{Name: "overflow_ends_in_sewer", Kind: Truth,
			Doc: "Whether every way that its overflow takes ends in a sewer or septic connection; false when no overflow is drawn."},
			(*part).overflowEndsInSewer},
		{Field{Name: "overflow_route", Kind: Text, Doc: "Where its overflow goes, part by part; \"none\" where none is drawn."}, (*part).overflowRoute},
	},
)

func (d *drawing) holdings() []*part {
	all := d.ofKind(surgeTank, plantedBed, settlingBasin, pond, mulchBasin, trench)
	return slices.DeleteFunc(all, func(p *part) bool { return takesUp(p.Kind) && len(p.overflow()) == 0 })
}

func (p *part) hasOverflow() Value {
	return truth(len(p.overflow()) > 0, p.overflowDrawn()...)
}

func (p *part) overflowEndsSafely() Value { return p.overflowEnds(mayEnd) }

func (p *part) overflowEndsInSewer() Value { return p.overflowEnds(leaves) }

func (p *part) overflowEnds(end func(kind string) bool) Value {
	ends, lacks := p.drawing.network.allEnd(p.overflow(), end, never)
	return orUnknown(truth(ends, p.overflowDrawn()...), lacks)
}

func (p *part) overflowRoute() Value {
	return text(p.drawing.network.trail(p.node, p.overflow(), everSeason), p.overflowDrawn()...)
}

// overflow gives the ways of the overflow, which stand last among all ways.
// Whatever leaves a mulch basin or trench is more than it takes up.
func (p *part) overflow() []way {
	ways := p.drawing.network.nodes[p.node].ways[everSeason]
	if takesUp(p.Kind) {
		return ways
	}
	return ways[len(ways)-len(p.OverflowTo):]
}

func (p *part) overflowDrawn() []Input {
	drawn := p.given("overflow_to", len(p.OverflowTo))
	if takesUp(p.Kind) {
		drawn = append(drawn, p.given("to", len(p.To))...)
	}
	return drawn
}
