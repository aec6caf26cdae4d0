package figures

import (
	"greysill/checker/design"
	"greysill/checker/quantity"
)

// bottomDepth is how deep the part is dug into the ground.
func (p *part) bottomDepth() Value {
	switch {
	case p.Depth.Given():
		return p.entry("depth", p.Depth)
	case len(p.Floor) == 0:
		return unknown(p.lack("depth"))
	default:
		return p.hole().greatestDepth()
	}
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
