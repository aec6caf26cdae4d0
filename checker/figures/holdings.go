package figures

var holdingTable = tabulate(
	List{Name: "holdings", Doc: "Every part that holds water: surge tanks, planted gravel beds, settling basins, ponds.",
		Subject: "a part that holds water"},
	func(d *drawing) []*part { return d.ofKind(surgeTank, plantedBed, settlingBasin, pond) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "has_overflow", Kind: Truth, Doc: "Whether an overflow is drawn."}, (*part).hasOverflow},
		{Field{Name: "overflow_ends_safely", Kind: Truth,
			Doc: "Whether every way that its overflow takes ends in a sewer or septic connection, a mulch basin or an infiltration trench; false when no overflow is drawn."},
			(*part).overflowEndsSafely},
		{Field{Name: "overflow_route", Kind: Text, Doc: "Where its overflow goes, part by part; \"none\" where none is drawn."}, (*part).overflowRoute},
	},
)

func (p *part) hasOverflow() Value {
	return truth(len(p.OverflowTo) > 0, p.given("overflow_to", len(p.OverflowTo))...)
}

func (p *part) overflowEndsSafely() Value {
	safe := func(kind string) bool { return leaves(kind) || takesUp(kind) }
	never := func(string) bool { return false }
	ends, lacks := p.drawing.network.allEnd(p.overflow(), safe, never)
	return orUnknown(truth(ends, p.given("overflow_to", len(p.OverflowTo))...), lacks)
}

func (p *part) overflowRoute() Value {
	return text(p.drawing.network.trail(p.node, p.overflow(), everSeason), p.given("overflow_to", len(p.OverflowTo))...)
}

// overflow gives the ways of the overflow, which stand last among all ways.
func (p *part) overflow() []way {
	ways := p.drawing.network.nodes[p.node].ways[everSeason]
	return ways[len(ways)-len(p.OverflowTo):]
}
