package treatment

import (
	"math"

	"greysill/checker/internal/bounds"
)

// CoolingSource is the source of the formulas of this file.
const CoolingSource = "Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 7: the water's sensible heat is the only source, loss to the air alone; integrated along the bed"

// WaterHeat is the heat that a cubic metre of cold water holds per °C, in
// J/(m³·°C). Reed's figure, from memory.
const WaterHeat = 4.215e6

// Cooling is a bed that loses heat through its cover in steady winter weather.
// Ground, sun and the heat of freezing are left out, which errs on the cold side.
type Cooling struct {
	Inlet       float64 // °C of the water that enters, 0 to 45
	Air         float64 // °C
	Conductance float64 // W/(m²·°C) of cover and media, by Conductance
	Area        float64 // m² of plan
	Flow        float64 // m³/s
}

// number gives U·A/(c·ρ·Q), how many times over the water could give up its
// warmth.
func (c Cooling) number() (float64, error) {
	return bounds.Result(c.Conductance*c.Area/(WaterHeat*c.Flow), liquid(c.Inlet), air(c.Air),
		bounds.NotNegative("conductance", c.Conductance, "W/(m²·°C)"), bounds.NotNegative("area", c.Area, "m²"), bounds.Positive("flow", c.Flow, "m³/s"))
}

// Outlet gives the water's temperature in °C at the end of the bed:
// Te = Ta + (T0 − Ta)·exp(−U·A/(c·ρ·Q)). At or below 0 °C it is not a
// temperature that the water has: it says that the bed freezes before its end,
// see FreezingArea. The linear form of the manuals, T0 − U·A·(T0 − Ta)/(c·ρ·Q),
// is not offered: under bare gravel it falls below the air's own temperature.
// Source: CoolingSource.
func (c Cooling) Outlet() (float64, error) {
	x, err := c.number()
	if err != nil {
		return 0, err
	}
	return c.Air + (c.Inlet-c.Air)*math.Exp(-x), nil
}

// Mean gives the mean temperature in °C along the bed, for rates of removal. A
// bed that freezes before its end is an error. Source: CoolingSource.
func (c Cooling) Mean() (float64, error) {
	x, err := c.number()
	if err != nil {
		return 0, err
	}
	outlet := c.Air + (c.Inlet-c.Air)*math.Exp(-x)
	if err := bounds.Refuse(bounds.Given("temperature at the end of the bed", outlet, 0, 60, "°C")); err != nil {
		return 0, err
	}
	if x < 1e-6 { // (1 − e^−x)/x loses its digits here, and nothing cools
		return c.Inlet, nil
	}
	return c.Air - (c.Inlet-c.Air)*math.Expm1(-x)/x, nil
}

// FreezingArea gives the area in m² from the inlet after which the water has
// come down to 0 °C, and whether that is on the bed. In air of 0 °C or more no
// bed freezes. Source: CoolingSource.
func (c Cooling) FreezingArea() (area float64, freezes bool, err error) {
	if _, err := c.number(); err != nil {
		return 0, false, err
	}
	if c.Air >= 0 || c.Conductance == 0 {
		return 0, false, nil
	}
	area = WaterHeat * c.Flow / c.Conductance * math.Log((c.Inlet-c.Air)/-c.Air)
	return area, area <= c.Area, nil
}
