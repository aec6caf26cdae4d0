package hydraulics

import "math"

// DarcySource names Darcy's law.
const DarcySource = "Darcy's law, Q = K·i·A (B. M. Das, Principles of Geotechnical Engineering, Example 7.5, as worked in its Python companion)"

// DarcyDischarge is the flow through a porous medium, m³/s: Q = K·A·i, with
// the hydraulic conductivity K in m/s and the whole section A in m². For slow
// flow in sand to small gravel; in very coarse rock the flow may be turbulent and
// Darcy's law gives too much (R. W. Crites, E. J. Middlebrooks and S. C. Reed,
// Natural Wastewater Treatment Systems, 2006). Conductivity and area are more than
// 0, the gradient is not negative.
func DarcyDischarge(conductivity, area, gradient float64) (float64, error) {
	return valid(conductivity*area*gradient,
		positive("hydraulic conductivity", conductivity), positive("section", area), notNegative("gradient", gradient))
}

// DarcySection is the section that a flow in m³/s needs at a gradient, m²:
// A = Q/(K·i). All are more than 0.
func DarcySection(discharge, conductivity, gradient float64) (float64, error) {
	return valid(discharge/(conductivity*gradient),
		positive("discharge", discharge), positive("hydraulic conductivity", conductivity), positive("gradient", gradient))
}

// HeadLossSource names the head lost along a bed.
const HeadLossSource = "head lost along a bed, Δh = Q·L/(K·W·D) (U.S. EPA 625/R-99/010, Constructed Wetlands Treatment of Municipal Wastewaters, 2000, chapter 5; from memory)"

// HeadLoss is the head lost along a length of bed of one mean depth of water,
// m: Δh = Q·L/(K·W·D), lengths in m. Where the loss is not small against the
// depth, Bed.WaterSurface is the exact form. Conductivity, width and depth are
// more than 0, the others not negative.
func HeadLoss(discharge, length, conductivity, width, depth float64) (float64, error) {
	return valid(discharge*length/(conductivity*width*depth), notNegative("discharge", discharge), notNegative("length", length),
		positive("hydraulic conductivity", conductivity), positive("width", width), positive("depth of water", depth))
}

// WidthForHeadLoss is the width that a bed of a plan area needs to lose no
// more than a head, m: W = √(Q·A/(K·D·Δh)). It is HeadLoss with L = A/W (U.S. EPA
// 2000, chapter 5; from memory). All are more than 0.
func WidthForHeadLoss(discharge, planArea, conductivity, depth, headLoss float64) (float64, error) {
	return valid(math.Sqrt(discharge*planArea/(conductivity*depth*headLoss)),
		positive("discharge", discharge), positive("plan area", planArea), positive("hydraulic conductivity", conductivity),
		positive("depth of water", depth), positive("head loss", headLoss))
}

// Layer is one layer of a medium: its thickness, m, and conductivity, m/s.
type Layer struct{ Thickness, Conductivity float64 }

// ConductivityAlong is the conductivity of layers for flow along them, m/s:
// Σ(K·d)/Σd. Thicknesses and conductivities are more than 0.
func ConductivityAlong(layers ...Layer) (float64, error) {
	thickness, product, err := sum(layers, func(l Layer) float64 { return l.Thickness * l.Conductivity })
	return valid(product/thickness, err)
}

// ConductivityAcross is the conductivity of layers for flow through one after
// the other, m/s: Σd/Σ(d/K). Thicknesses and conductivities are more than 0.
func ConductivityAcross(layers ...Layer) (float64, error) {
	thickness, resistance, err := sum(layers, func(l Layer) float64 { return l.Thickness / l.Conductivity })
	return valid(thickness/resistance, err)
}

func sum(layers []Layer, share func(Layer) float64) (thickness, total float64, err error) {
	for _, l := range layers {
		if err := positive("thickness of a layer", l.Thickness); err != nil {
			return 0, 0, err
		}
		if err := positive("hydraulic conductivity", l.Conductivity); err != nil {
			return 0, 0, err
		}
		thickness += l.Thickness
		total += share(l)
	}
	return thickness, total, positive("number of layers", float64(len(layers)))
}
