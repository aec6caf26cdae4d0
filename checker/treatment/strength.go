package treatment

import "greysill/checker/internal/bounds"

// Constituent is what the water carries.
type Constituent string

// The constituents that sources measure.
const (
	BOD5       Constituent = "BOD5" // biochemical oxygen demand of 5 days
	BOD7       Constituent = "BOD7" // of 7 days, the Nordic measure
	COD        Constituent = "COD"  // chemical oxygen demand
	TSS        Constituent = "TSS"  // suspended solids
	VSS        Constituent = "VSS"  // their volatile part
	Nitrogen   Constituent = "total nitrogen"
	Phosphorus Constituent = "total phosphorus"
)

// Range is a value as a source gives it. Least and Most are the value itself
// where the source gives no range.
type Range struct{ Typical, Least, Most float64 }

func only(value float64) Range { return Range{value, value, value} }

func (r Range) times(factor float64) Range {
	return Range{r.Typical * factor, r.Least * factor, r.Most * factor}
}

// Strength is what a litre of some water carries, in kg/m³.
type Strength struct {
	Name    string
	Water   string // what water was measured
	Kitchen bool   // whether a kitchen sink drains into it
	Of      map[Constituent]Range
	Origin
}

// Strengths lists the published strengths. Sewage bounds greywater from above.
var Strengths = []Strength{
	{"fbr H 201", "bath, shower and washbasin", false, concentrations(map[Constituent]Range{
		BOD5: {111, 85, 200}, COD: {225, 150, 400}, TSS: {40, 30, 70}, Nitrogen: {10, 4, 16}, Phosphorus: {1.5, 0.5, 4},
	}), Origin{"fbr, Hinweisblatt H 201 (Germany), as quoted in a trade summary", Published}},
	{"UC Davis 2002, raw", "whole household sewage, raw", true, concentrations(map[Constituent]Range{
		BOD5: only(450), TSS: only(503), Nitrogen: only(70.4), Phosphorus: only(17.3),
	}), ucDavis2002},
	{"UC Davis 2002, septic tank", "whole household sewage, from a septic tank", true, concentrations(map[Constituent]Range{
		BOD5: only(185), TSS: only(83),
	}), ucDavis2002},
	{"UC Davis 2002, septic tank with filter", "whole household sewage, from a septic tank with an effluent filter", true, concentrations(map[Constituent]Range{
		BOD5: only(135), TSS: only(42),
	}), ucDavis2002},
}

var ucDavis2002 = Origin{"California State Water Resources Control Board / University of California Davis, review of onsite treatment (2002), Table ES-1", Published}

// Load is what one person's water carries, in kg/s.
type Load struct {
	Name    string
	Water   string
	Kitchen bool // whether a kitchen sink drains into it
	Of      map[Constituent]float64
	Origin
}

// Loads lists the loads of one person.
var Loads = []Load{
	{"EPA 2002, bathing, sinks and appliances", "bathing, sinks and appliances", true,
		loads(map[Constituent]float64{BOD5: 28.5, TSS: 17.2, Nitrogen: 1.9, Phosphorus: 1.0}), epa2002Loads},
	{"EPA 2002, toilet", "toilet", false,
		loads(map[Constituent]float64{BOD5: 16.7, TSS: 27.0, Nitrogen: 8.7, Phosphorus: 1.6}), epa2002Loads},
	{"EPA 2002, garbage disposal", "kitchen waste grinder", true,
		loads(map[Constituent]float64{BOD5: 18.0, TSS: 26.5, Nitrogen: 0.6, Phosphorus: 0.1}), epa2002Loads},
	{"Sweden 2005", "all greywater", true,
		loads(map[Constituent]float64{BOD7: 26, COD: 52, Nitrogen: 1.5, Phosphorus: 0.7}),
		Origin{"Jönsson et al., Composition of urine, faeces, greywater and biowaste, Urban Water 2005:6", FromMemory}},
	{"UN-HABITAT 2008", "whole household sewage", true,
		loads(map[Constituent]float64{BOD5: 40}),
		Origin{"UN-HABITAT, Constructed Wetlands Manual (2008), ch. 6", FromMemory}},
}

var epa2002Loads = Origin{"EPA/625/R-00/008, Onsite Wastewater Treatment Systems Manual (2002), Table 3-8", FromMemory}

// Share is the part of all greywater's daily load that one fixture brings.
type Share struct {
	Fixture string
	Of      Constituent
	Share   float64
	Origin
}

// Shares lists the parts of the load by fixture: a kitchen sink alone brings
// about half of the BOD.
var Shares = []Share{
	{"kitchen sink", BOD5, 0.48, friedler2004},
	{"kitchen sink", COD, 0.42, friedler2004},
	{"kitchen sink", VSS, 0.58, friedler2004},
	{"clothes washer", COD, 0.22, friedler2004},
}

var friedler2004 = Origin{"E. Friedler, Environmental Technology 25 (2004), abstract", Published}

// LeavingTemperature is the temperature in °C at which greywater leaves the
// house.
const (
	LeavingTemperature       = 31.0
	LeavingTemperatureSource = "EPA 625/1-80-012, Onsite Wastewater Treatment and Disposal Systems (October 1980), greywater"
)

// Concentration gives what a litre carries in kg/m³ from the load in kg/s and
// the flow in m³/s that carries it. Definition, no source.
func Concentration(load, flow float64) (float64, error) {
	return bounds.Result(load/flow, bounds.NotNegative("load", load, "kg/s"), bounds.Positive("flow", flow, "m³/s"))
}

func concentrations(mgPerL map[Constituent]Range) map[Constituent]Range {
	of := make(map[Constituent]Range, len(mgPerL))
	for c, r := range mgPerL {
		of[c] = r.times(milligramPerL)
	}
	return of
}

func loads(gramsPerDay map[Constituent]float64) map[Constituent]float64 {
	of := make(map[Constituent]float64, len(gramsPerDay))
	for c, g := range gramsPerDay {
		of[c] = g * gramPerDay
	}
	return of
}
