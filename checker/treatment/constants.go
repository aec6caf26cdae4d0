package treatment

import (
	"math"

	"greysill/checker/internal/bounds"
)

// Volumetric is a set of constants for plug flow by the time that water stays in
// the pores.
type Volumetric struct {
	Name     string
	Of       Constituent
	Rate     float64 // per s at 20 °C
	Theta    float64 // temperature coefficient
	Porosity float64 // of the medium that the rate was given for, 0 where it was given for every medium
	Origin
}

// Volumetrics lists the volumetric sets. EPA 1988 and EPA 1993 differ by 40 % at
// 6 °C through θ alone.
var Volumetrics = []Volumetric{
	{"EPA 1988, medium sand", BOD5, 1.84 / day, 1.10, 0.42, epa1988},
	{"EPA 1988, coarse sand", BOD5, 1.35 / day, 1.10, 0.39, epa1988},
	{"EPA 1988, gravelly sand", BOD5, 0.86 / day, 1.10, 0.35, epa1988},
	{"EPA 1993", BOD5, 1.104 / day, 1.06, 0, epa1993},
	{"Crites & Tchobanoglous 1998", BOD5, 1.1 / day, 1.06, 0, Origin{"Crites & Tchobanoglous, Small and Decentralized Wastewater Management Systems (1998)", FromMemory}},
	{"UN-HABITAT 2008", BOD5, 1.1 / day, 1.06, 0, unHabitat2008},
}

var (
	epa1988       = Origin{"EPA/625/1-88/022, Design Manual: Constructed Wetlands and Aquatic Plant Systems (September 1988), ch. 3", FromMemory}
	epa1993       = Origin{"EPA 832-R-93-008, Subsurface Flow Constructed Wetlands (July 1993); Reed's constants", FromMemory}
	unHabitat2008 = Origin{"UN-HABITAT, Constructed Wetlands Manual (Kathmandu 2008), ch. 6", FromMemory}
)

// RateAt gives the rate per s at a water temperature in °C, 0 to 45.
func (v Volumetric) RateAt(celsius float64) (float64, error) {
	return AtTemperature(v.Rate, v.Theta, celsius)
}

// Effluent gives the effluent concentration in kg/m³ from the inlet's, the
// detention in s and the water temperature in °C.
func (v Volumetric) Effluent(inlet, detention, celsius float64) (float64, error) {
	rate, err := v.RateAt(celsius)
	if err != nil {
		return 0, err
	}
	return PlugFlow(inlet, rate, detention)
}

// Area gives the plan area in m² for an effluent in kg/m³, from the flow in
// m³/s, the inlet concentration, the water temperature in °C, the depth of water
// in m and the porosity: A = Q·ln(C0/Ce)/(k·y·n).
func (v Volumetric) Area(flow, inlet, effluent, celsius, depth, pores float64) (float64, error) {
	rate, err := v.RateAt(celsius)
	if err != nil {
		return 0, err
	}
	detention, err := PlugFlowTime(inlet, effluent, rate)
	if err != nil {
		return 0, err
	}
	return bounds.Result(flow*detention/(depth*pores), bounds.Positive("flow", flow, "m³/s"), bounds.Positive("depth of water", depth, "m"), porosity(pores))
}

// ReedAmmoniaSource is the source of ReedAmmoniaRate.
const ReedAmmoniaSource = "EPA 832-R-93-008, Subsurface Flow Constructed Wetlands (July 1993), after Reed (from memory)"

// ReedAmmoniaRate gives the rate per s at which a gravel bed removes ammonia
// from the share of its depth that roots have reached, 0 to 1, and the water
// temperature in °C, 10 to 45: below 10 °C the source has another coefficient.
// Source: ReedAmmoniaSource.
func ReedAmmoniaRate(rootShare, celsius float64) (float64, error) {
	if err := bounds.Refuse(bounds.Share("share of the depth with roots", rootShare), bounds.Given("water temperature", celsius, 10, 45, "°C")); err != nil {
		return 0, err
	}
	return AtTemperature((0.01854+0.3922*math.Pow(rootShare, 2.6077))/day, 1.048, celsius)
}
