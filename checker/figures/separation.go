package figures

import (
	"greysill/checker/design"
	"greysill/checker/quantity"
)

// bottomDepth is how deep the part is dug into the ground: where both its depth
// and its floor are drawn, by the deeper of the two.
func (p *part) bottomDepth() Value {
	down := p.hole().greatestDepth
	if len(p.Outline) == 0 {
		down = p.downToFloor
	}
	return deeper(p.entry("depth", p.Depth), len(p.Floor) > 0, down)
}

// deeper gives the depth as drawn, or that of the floor where it is drawn and
// lies deeper.
func deeper(drawn Value, floored bool, ofFloor func() Value) Value {
	if !floored {
		return drawn
	}
	floor := ofFloor()
	if drawn.Known() && (!floor.Known() || drawn.Number >= floor.Number) {
		return drawn
	}
	return floor
}

func (s *soakage) aboveGroundwater() Value {
	return s.above("groundwater_depth", func(soil *design.Soil) quantity.Quantity { return soil.GroundwaterDepth })
}

func (s *soakage) aboveBedrock() Value {
	return s.above("bedrock_depth", func(soil *design.Soil) quantity.Quantity { return soil.BedrockDepth })
}

// above is the height of the bottom above something in the soil.
func (s *soakage) above(entry string, of func(*design.Soil) quantity.Quantity) Value {
	deep, bottom := s.drawing.soilDepth(entry, of), s.bottomDepth()
	return outOf(deep.Number-bottom.Number, deep, bottom)
}

func (d *drawing) soilDepth(entry string, of func(*design.Soil) quantity.Quantity) Value {
	if d.Site.Soil == nil || !of(d.Site.Soil).Given() {
		return unknown(soilEntry(entry))
	}
	return number(of(d.Site.Soil).Value, Input{Name: entry, Pointer: soilPointer + "/" + entry})
}
