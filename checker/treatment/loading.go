package treatment

import "greysill/checker/internal/bounds"

// Sources of the formulas of this file.
const (
	LoadingSource   = "definition: flow or load over the area that takes it"
	DetentionSource = "definition: pore volume over flow, as in EPA 625/R-99/010 (2000), ch. 5 (from memory)"
)

// HydraulicLoading gives the depth of water that a bed or basin takes up, in
// m/s, from the flow in m³/s and the plan area in m². In a basin the same
// quotient is the surface loading. Source: LoadingSource.
func HydraulicLoading(flow, area float64) (float64, error) {
	return bounds.Result(flow/area, bounds.NotNegative("flow", flow, "m³/s"), bounds.Positive("area", area, "m²"))
}

// OrganicLoad gives the load on an area in kg/(m²·s) from the flow in m³/s and
// its BOD in kg/m³. The area in m² is the plan for the areal load, the width
// times the depth of water for the load on the cross-section at the inlet, which
// is what clogs. Source: LoadingSource.
func OrganicLoad(flow, bod, area float64) (float64, error) {
	return bounds.Result(flow*bod/area, bounds.NotNegative("flow", flow, "m³/s"),
		bounds.NotNegative("BOD", bod, "kg/m³"), bounds.Positive("area", area, "m²"))
}

// Pores is a body of media that stands in water.
type Pores struct {
	Volume   float64 // m³ of media below the water level
	Porosity float64 // share of it that is pores, 0.01 to 1; not the void ratio, which is pores over stone
}

// PoreVolume gives the water that layers hold, in m³. Definition, no source.
func PoreVolume(layers ...Pores) (float64, error) {
	total := 0.0
	for _, l := range layers {
		held, err := bounds.Result(l.Volume*l.Porosity, bounds.NotNegative("volume of media", l.Volume, "m³"), porosity(l.Porosity))
		if err != nil {
			return 0, err
		}
		total += held
	}
	return total, nil
}

// Detention gives the nominal time in s that water stays, from the pore volume
// in m³ and the flow in m³/s: real water takes short cuts and stays for less.
// Crites, Middlebrooks & Reed (2006), ch. 7, take the mean of inflow and outflow
// where evaporation takes a good part. Source: DetentionSource.
func Detention(poreVolume, flow float64) (float64, error) {
	return bounds.Result(poreVolume/flow, bounds.NotNegative("pore volume", poreVolume, "m³"), bounds.Positive("flow", flow, "m³/s"))
}

// PorosityByVoids gives the porosity from the void ratio e, pores over stone, 0
// to 10: n = e/(1+e). Definition; Das, Principles of Geotechnical Engineering,
// Ex. 3.2, as worked in an open companion.
func PorosityByVoids(voidRatio float64) (float64, error) {
	return bounds.Result(voidRatio/(1+voidRatio), bounds.Given("void ratio", voidRatio, 0, 10, ""))
}
