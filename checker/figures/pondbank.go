package figures

import (
	"greysill/checker/design"
	"greysill/checker/quantity"
)

// bankHeight of a pond without an embankment is 0, unless its rim stands over the
// ground: then something holds the water in that is not drawn.
func (p *part) bankHeight() Value {
	if p.Embankment == nil {
		rim, ground := p.entry("rim_level", p.RimLevel), p.lowestEdge()
		over := outOf(rim.Number-ground.Number, rim, ground)
		switch {
		case !over.Known():
			return over
		case over.Number > p.drawing.levelTolerance():
			return unknown(Lack{p.Pointer + "/embankment", "embankment of " + p.ID + ", whose rim stands over the lowest ground at its edge"})
		}
		return number(0, over.Inputs...)
	}
	top, toe := p.entry("embankment/top_level", p.Embankment.TopLevel), p.entry("embankment/toe_level", p.Embankment.ToeLevel)
	return outOf(top.Number-toe.Number, top, toe)
}

func (p *part) hasBank() Value { return truth(p.Embankment != nil) }

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

func (b *pondWater) shelf(entry string, of func(*design.Edge) quantity.Quantity) Value {
	if b.Edge == nil || !of(b.Edge).Given() {
		return unknown(b.lack("edge/" + entry))
	}
	return number(of(b.Edge).Value, b.drawn("edge/"+entry))
}

// What somebody climbs out of a pond by.
const (
	byShelf = "shelf"
	bySides = "sides"
)

func (b *pondWater) climbOut() Value {
	if b.Edge == nil || b.Edge.ShelfWidth.Value <= 0 || !b.Edge.ShelfDepth.Given() {
		return text(bySides)
	}
	return text(byShelf, b.drawn("edge"))
}
