package treatment

import (
	"fmt"

	"greysill/checker/internal/bounds"
)

// Sizing is what the plan area of a bed is worked out from. A basis reads only
// the entries that it names.
type Sizing struct {
	Flow     float64 // m³/s
	Inlet    float64 // BOD5 in kg/m³
	Effluent float64 // BOD5 in kg/m³ wanted
	Celsius  float64 // of the water
	Depth    float64 // of the water in m
	Porosity float64 // of the media, unless the basis has its own
	Persons  float64
	Bedrooms float64
}

// Basis is one way to size the plan area of a horizontal-flow gravel bed. The
// bases differ by a factor of fifty for the same house, so an area is never
// shown without the name of its basis.
type Basis struct {
	Name    string
	Formula string
	Origin
	area func(Sizing) (float64, error)
}

// Area gives the plan area in m². An entry that the basis needs and that is
// missing or out of its range is an error.
func (b Basis) Area(s Sizing) (float64, error) {
	area, err := b.area(s)
	if err != nil {
		return 0, fmt.Errorf("area by %s: %w", b.Name, err)
	}
	return area, nil
}

// Bases gives every basis: the first-order sets for BOD, then what manuals and
// rules allow per flow, load, person or bedroom.
func Bases() []Basis {
	var all []Basis
	for _, a := range Areals {
		if a.Of == BOD5 {
			all = append(all, byAreal(a))
		}
	}
	for _, v := range Volumetrics {
		all = append(all, byVolumetric(v))
	}
	return append(all, allowances...)
}

func byAreal(a Areal) Basis {
	formula := "Q/k · ln((Ci−C*)/(Ce−C*))"
	if a.Tanks > 0 {
		formula = "P·Q/k · (((Ci−C*)/(Ce−C*))^(1/P) − 1)"
	}
	return Basis{a.Name, formula, a.Origin, func(s Sizing) (float64, error) {
		return a.Area(s.Flow, s.Inlet, s.Effluent, s.Celsius)
	}}
}

func byVolumetric(v Volumetric) Basis {
	return Basis{v.Name, "Q · ln(Ci/Ce) / (k·y·n)", v.Origin, func(s Sizing) (float64, error) {
		pores := s.Porosity
		if v.Porosity > 0 {
			pores = v.Porosity
		}
		return v.Area(s.Flow, s.Inlet, s.Effluent, s.Celsius, s.Depth, pores)
	}}
}

// allowances are the bases that are one quotient.
var allowances = []Basis{
	byFlow("Crites 2006", 1.0/18.5/day, Origin{"Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 2: 18.5 m² per m³/d, a planning factor", Published}),
	byFlow("DWA-A 262:2006, hydraulic", 0.040/day, dwa2006),
	byFlow("Morel & Diener 2006, 50 mm/d", 0.050/day, morelDiener2006),
	byFlow("Morel & Diener 2006, 80 mm/d", 0.080/day, morelDiener2006),
	byFlow("GIZ 2011, greywater, 60 mm/d", 0.060/day, giz2011),
	byFlow("GIZ 2011, greywater, 80 mm/d", 0.080/day, giz2011),
	byFlow("TVA 1993", gallon/day/(1.3*foot*foot), Origin{"Steiner & Watson, TVA/WM-93/10 (2nd ed., May 1993): 1.3 ft² per gal/d", FromMemory}),

	byLoad("EPA 2000, effluent 30 mg/L", 6*gramPerDay, epa2000),
	byLoad("EPA 2000, effluent 20 mg/L", 1.6*gramPerDay, epa2000),
	byLoad("Crites 2006, organic", 8.0*gramPerDay, Origin{"Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 2: below 80 kg/ha·d", Published}),
	byLoad("Morel & Diener 2006, 6 g/m²·d", 6*gramPerDay, morelDiener2006),
	byLoad("Morel & Diener 2006, 10 g/m²·d", 10*gramPerDay, morelDiener2006),

	perPerson("Eawag, 5 m² per person", 5, eawag),
	perPerson("Eawag, 10 m² per person", 10, eawag),
	perPerson("DWA-A 262:2006, per person", 5, dwa2006),
	perPerson("GIZ 2011, cold climate", 8, giz2011),
	perPerson("GIZ 2011, warm climate", 3, giz2011),

	{"Iowa", "300 ft² per bedroom", Origin{"Iowa Administrative Code r. 567-69.15 (2024)", Published}, func(s Sizing) (float64, error) {
		return bounds.Result(300*foot*foot*s.Bedrooms, bounds.Positive("number of bedrooms", s.Bedrooms, ""))
	}},
}

var (
	dwa2006         = Origin{"DWA-A 262 (2006), superseded in 2017, when such beds became a downstream stage", FromMemory}
	morelDiener2006 = Origin{"Morel & Diener, Greywater Management in Low and Middle-Income Countries (2006), horizontal-flow filter", FromMemory}
	giz2011         = Origin{"GIZ, Technology Review of Constructed Wetlands (2011)", FromMemory}
	epa2000         = Origin{"EPA/625/R-99/010, Constructed Wetlands Treatment of Municipal Wastewaters (September 2000), ch. 5", FromMemory}
	eawag           = Origin{"Eawag, Compendium of Sanitation Systems and Technologies, horizontal subsurface flow constructed wetland", Published}
)

func byFlow(name string, loading float64, from Origin) Basis {
	return Basis{name, "flow ÷ hydraulic loading", from, func(s Sizing) (float64, error) {
		return bounds.Result(s.Flow/loading, bounds.Positive("flow", s.Flow, "m³/s"))
	}}
}

func byLoad(name string, load float64, from Origin) Basis {
	return Basis{name, "flow × BOD ÷ areal load", from, func(s Sizing) (float64, error) {
		return bounds.Result(s.Flow*s.Inlet/load, bounds.Positive("flow", s.Flow, "m³/s"), bounds.Positive("BOD", s.Inlet, "kg/m³"))
	}}
}

func perPerson(name string, area float64, from Origin) Basis {
	return Basis{name, "area per person × persons", from, func(s Sizing) (float64, error) {
		return bounds.Result(area*s.Persons, bounds.Positive("number of persons", s.Persons, ""))
	}}
}
