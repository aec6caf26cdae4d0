package treatment

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	ConductanceSource = "layers in series, U = 1/Σ(y/k): Çengel, Heat and Mass Transfer, Ex. 3.1 and 3.2, as worked in an open companion"
	BuriedPipeSource  = "conduction shape factor of a buried cylinder: Janna, Engineering Heat Transfer, Ex. 3.2, and Çengel, Heat and Mass Transfer, Ex. 3.13, as worked in open companions"
)

// Conductivity is how well a material of a bed's cover conducts heat.
type Conductivity struct {
	Material string
	Value    float64 // W/(m·°C)
	Origin
}

// Conductivities lists the conductivities of what lies on and in a bed.
var Conductivities = []Conductivity{
	{"still air", 0.024, reedConductivities},
	{"new snow", 0.08, reedConductivities},
	{"old snow", 0.23, reedConductivities},
	{"ice", 2.21, reedConductivities},
	{"water", 0.58, reedConductivities},
	{"litter", 0.05, reedConductivities},
	{"dry gravel", 1.5, reedConductivities},
	{"saturated gravel", 2.0, reedConductivities},
	{"dry soil", 0.8, reedConductivities},
}

var reedConductivities = Origin{"Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 7, thermal conductivities, after Reed", FromMemory}

// Sheet is one layer that heat passes through.
type Sheet struct {
	Thickness    float64 // m
	Conductivity float64 // W/(m·°C)
}

// Film gives the sheet that resists like a film of air or water with a heat
// transfer coefficient in W/(m²·°C).
func Film(coefficient float64) Sheet { return Sheet{Thickness: 1, Conductivity: coefficient} }

// Conductance gives the conductance of layers in series in W/(m²·°C). No layer
// with a thickness is an error: heat would pass without bound. Source:
// ConductanceSource.
func Conductance(layers ...Sheet) (float64, error) {
	resistance := 0.0
	for _, l := range layers {
		one, err := bounds.Result(l.Thickness/l.Conductivity, bounds.NotNegative("thickness of a layer", l.Thickness, "m"),
			bounds.Positive("thermal conductivity of a layer", l.Conductivity, "W/(m·°C)"))
		if err != nil {
			return 0, err
		}
		resistance += one
	}
	return bounds.Result(1/resistance, bounds.Positive("thermal resistance of all layers", resistance, "m²·°C/W"))
}

// BuriedPipe is a pipe in the ground.
type BuriedPipe struct {
	Length   float64 // m
	Diameter float64 // m, outside
	Depth    float64 // m from the surface to the axis, more than half the diameter
}

// ShapeFactor gives S in m, so that the heat lost is S·k·(Tpipe − Tsurface):
// S = 2πL/arcosh(2z/D). The pipe is long against its depth, the ground uniform
// and steady. The handbooks' 2πL/ln(4z/D) is the same for z > 1.5 D within 2 %.
// Source: BuriedPipeSource.
func (p BuriedPipe) ShapeFactor() (float64, error) {
	return bounds.Result(2*math.Pi*p.Length/math.Acosh(2*p.Depth/p.Diameter), bounds.Positive("length of the pipe", p.Length, "m"),
		bounds.Positive("diameter of the pipe", p.Diameter, "m"), bounds.Given("depth of the pipe's axis", p.Depth, p.Diameter/2+1e-6, 1e6, "m"))
}

// HeatLoss gives the heat in W that the pipe loses to the surface, negative when
// the surface is warmer, from the conductivity of the ground in W/(m·°C), the
// temperature of the pipe, -60 to 100 °C, and that of the surface, -60 to 60 °C.
// Source: BuriedPipeSource.
func (p BuriedPipe) HeatLoss(conductivity, pipe, surface float64) (float64, error) {
	s, err := p.ShapeFactor()
	if err != nil {
		return 0, err
	}
	return bounds.Result(s*conductivity*(pipe-surface), bounds.Positive("thermal conductivity of the ground", conductivity, "W/(m·°C)"),
		bounds.Given("temperature of the pipe", pipe, -60, 100, "°C"), air(surface))
}
