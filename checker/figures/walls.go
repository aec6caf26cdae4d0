package figures

import "greysill/checker/hydraulics"

// wall gives the roughness of a pipe's wall, as drawn or by its material, and
// what it is known from.
func (p *part) wall() (hydraulics.Roughness, Value) {
	if p.Roughness > 0 {
		drawn := hydraulics.Roughness{Wall: "as drawn", Usual: p.Roughness, Range: hydraulics.Span{Low: p.Roughness, High: p.Roughness}}
		return drawn, Value{Inputs: []Input{p.drawn("roughness")}}
	}
	if p.Material == "" {
		return hydraulics.Roughness{}, unknown(p.lack("roughness"), p.lack("material"))
	}
	if wall, known := hydraulics.WallOf(p.Material); known {
		return wall, Value{Inputs: []Input{p.drawn("material")}}
	}
	return hydraulics.Roughness{}, unknown(Lack{p.Pointer + "/roughness", "roughness of " + p.ID + ", since no table here has its material"})
}
