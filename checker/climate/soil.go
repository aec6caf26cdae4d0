package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas and tables of this file.
const (
	SurfaceFactorSource = "TM 5-852-4 / AFM 88-19 chapter 4 (1983; UFC 3-130-04), Table 4-1"
	SoilRangeSource     = "Pavement Interactive, Calculation of Frost Depth"
	SoilHeatStoreSource = "U.S. Army TM 5-852-6 / UFC 3-130-06, from memory; the specific heat of 0.17 Btu/lb·°F also as an open frost-depth program cites it"
	KerstenSource       = "Kersten 1949, University of Minnesota Engineering Experiment Station Bulletin 28, from memory"
)

// Units of the sources, exact.
const (
	btu        = 1055.05585262              // J, International Table
	pound      = 0.45359237                 // kg
	foot       = 0.3048                     // m
	inch       = foot / 12                  // m
	fahrenheit = 5.0 / 9                    // °C for a step of 1 °F
	pcf        = pound / foot / foot / foot // kg/m³
)

// SurfaceFactor is what the freezing index of the air is multiplied by to have
// that of the ground's surface.
type SurfaceFactor struct {
	Surface string
	Freeze  float64
}

// SurfaceFactors are the freezing n-factors. Source: SurfaceFactorSource.
var SurfaceFactors = []SurfaceFactor{
	{"snow", 1.0},
	{"Portland-cement concrete", 0.75},
	{"bituminous pavement", 0.7},
	{"bare soil", 0.7},
	{"shaded", 0.9},
	{"turf", 0.5},
	{"tree-covered", 0.3},
}

// SoilRange is what a kind of soil usually weighs dry, in kg/m³, and how moist it
// usually is, as a ratio to its dry mass; Fine says which of Kersten's soils it
// is.
type SoilRange struct {
	Soil                        string
	LeastDensity, MostDensity   float64
	LeastMoisture, MostMoisture float64
	Fine                        bool
}

// SoilRanges are the usual ranges. Source: SoilRangeSource.
var SoilRanges = []SoilRange{
	{"gravel", 120 * pcf, 140 * pcf, 0.02, 0.10, false},
	{"sand", 120 * pcf, 140 * pcf, 0.05, 0.15, false},
	{"silt", 90 * pcf, 100 * pcf, 0.05, 0.40, true},
	{"clay", 90 * pcf, 100 * pcf, 0.10, 0.50, true},
}

// Ground is the soil that freezes.
type Ground struct {
	DryDensity   float64 // kg/m³, 100 to 2,700
	Moisture     float64 // mass of water over dry mass, above 0 to 3
	Conductivity float64 // thermal, W/m·°C, 0.05 to 5
}

func (g Ground) refuse() error {
	if g.Moisture == 0 {
		return fmt.Errorf("the soil holds no water: how deep dry soil freezes is a question of conduction alone")
	}
	return bounds.Refuse(density(g.DryDensity), bounds.Given("soil moisture", g.Moisture, 0, 3, ""), bounds.Given("thermal conductivity", g.Conductivity, 0.05, 5, "W/m·°C"))
}

// LatentHeat gives the heat that the soil's water gives off when it freezes in
// J/m³, at 144 Btu/lb. Source: SoilHeatStoreSource.
func (g Ground) LatentHeat() (float64, error) {
	return unless(g.refuse(), 144*btu/pound*g.DryDensity*g.Moisture)
}

// HeatCapacity gives the soil's heat capacity in J/m³·°C, mean of frozen and
// thawed. Source: SoilHeatStoreSource.
func (g Ground) HeatCapacity() (float64, error) {
	return unless(g.refuse(), g.DryDensity*(0.17+0.75*g.Moisture)*btu/pound/fahrenheit)
}

// MoistDensity gives the density in kg/m³ of a soil with its water, from its dry
// density in kg/m³ and its moisture as mass over dry mass, 0 to 3. Source:
// SoilRangeSource.
func MoistDensity(dry, moisture float64) (float64, error) {
	return unless(bounds.Refuse(density(dry), bounds.Given("soil moisture", moisture, 0, 3, "")), dry*(1+moisture))
}

// kerstenUnit is 1 Btu·in/ft²·h·°F in W/m·°C.
const kerstenUnit = btu * inch / (foot * foot) / 3600 / fahrenheit

// Kersten gives the thermal conductivity of a soil in W/m·°C, frozen and thawed,
// by its dry density in kg/m³, 1,000 to 2,300, its moisture as mass over dry mass
// and whether it is fine (half or more silt and clay). The least moisture is 0.01
// for a coarse and 0.07 for a fine soil, the greatest 0.5. The modified Berggren
// method takes the mean of both. Source: KerstenSource.
func Kersten(dry, moisture float64, fine bool) (frozen, thawed float64, err error) {
	least := 0.01
	if fine {
		least = 0.07
	}
	if err := bounds.Refuse(bounds.Given("dry density", dry, 1000, 2300, "kg/m³"), bounds.Given("soil moisture", moisture, least, 0.5, "")); err != nil {
		return 0, 0, err
	}
	d, w := dry/pcf, moisture*100
	if fine {
		frozen = 0.01*math.Pow(10, 0.022*d) + 0.085*math.Pow(10, 0.008*d)*w
		thawed = (0.9*math.Log10(w) - 0.2) * math.Pow(10, 0.01*d)
	} else {
		frozen = 0.076*math.Pow(10, 0.013*d) + 0.032*math.Pow(10, 0.0146*d)*w
		thawed = (0.7*math.Log10(w) + 0.4) * math.Pow(10, 0.01*d)
	}
	return frozen * kerstenUnit, thawed * kerstenUnit, nil
}
