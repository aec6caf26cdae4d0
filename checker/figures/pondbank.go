package figures

func (p *part) bankHeight() Value {
	if p.Embankment == nil {
		return number(0)
	}
	top, toe := p.entry("embankment/top_level", p.Embankment.TopLevel), p.entry("embankment/toe_level", p.Embankment.ToeLevel)
	return outOf(top.Number-toe.Number, top, toe)
}

func (p *part) bankWidth() Value {
	if p.Embankment == nil {
		return unknown(p.lack("embankment"))
	}
	return p.entry("embankment/top_width", p.Embankment.TopWidth)
}

func (p *part) outsideSlope() Value {
	if p.Embankment == nil {
		return unknown(p.lack("embankment"))
	}
	return p.entry("embankment/outside_slope", p.Embankment.OutsideSlope)
}

func (b *pondWater) bankRuns() Value {
	inside, outside := b.entry("side_slope", b.SideSlope), b.outsideSlope()
	return worked(b.lack("side_slope"), func() (float64, error) {
		return inRange(1/inside.Number+1/outside.Number, inside.Number > 0 && outside.Number > 0)
	}, inside, outside)
}

func (b *pondWater) hasShelf() Value {
	if b.Edge == nil {
		return truth(false)
	}
	return truth(b.Edge.ShelfWidth.Value > 0 && b.Edge.ShelfDepth.Given(), b.drawn("edge"))
}
