package checker_test

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"greysill/checker/treatment"
)

// The computations of the water's way through bed, basin and pond.
var (
	_ = register("bed area", computation(bedArea))
	_ = register("bed effluent", computation(bedEffluent))
	_ = register("removal rate", computation(removalRate))
	_ = register("ammonia removal rate", computation(ammoniaRemoval))
	_ = register("loading", computation(loading))
	_ = register("porosity by voids", computation(porosityByVoids))
	_ = register("strength", computation(strength))
	_ = register("strength by load", computation(strengthByLoad))
	_ = register("share of load", computation(shareOfLoad))
	_ = register("conductance of layers", computation(layerConductance))
	_ = register("thermal conductivity", computation(thermalConductivity))
	_ = register("bed water temperature", computation(bedWaterTemperature))
	_ = register("buried pipe", computation(buriedPipe))
	_ = register("Stokes", computation(stokesVelocity))
	_ = register("settling with one corrected drag", computation(correctedOnce))
	_ = register("largest particle by Stokes", computation(largestByStokes))
	_ = register("settling area", computation(settlingArea))
	_ = register("sludge", computation(sludge))
	_ = register("un-ionized ammonia", computation(unionizedAmmonia))
	_ = register("ammonia criterion", computation(ammoniaCriterion))
	_ = register("oxygen saturation", computation(oxygenSaturation))
	_ = register("root depth", computation(rootDepth))
)

// named finds the entry of a table that a check names.
func named[T any](table []T, name string, nameOf func(T) string) (T, error) {
	i := slices.IndexFunc(table, func(entry T) bool { return nameOf(entry) == name })
	if i < 0 {
		var none T
		return none, fmt.Errorf("no entry named %q", name)
	}
	return table[i], nil
}

// siOrZero is the SI value of a quantity, 0 when it is not given.
func siOrZero(text string) float64 {
	if text == "" {
		return 0
	}
	return si(text)
}

type bedAreaInputs struct {
	Basis, Flow, Inlet, Effluent, Depth  string
	Celsius, Porosity, Persons, Bedrooms float64
}

func bedArea(in bedAreaInputs, r *results) map[string]float64 {
	basis, err := named(treatment.Bases(), in.Basis, func(b treatment.Basis) string { return b.Name })
	if err != nil {
		r.err = err
		return nil
	}
	area := r.of(basis.Area(treatment.Sizing{
		Flow: siOrZero(in.Flow), Inlet: siOrZero(in.Inlet), Effluent: siOrZero(in.Effluent), Depth: siOrZero(in.Depth),
		Celsius: in.Celsius, Porosity: in.Porosity, Persons: in.Persons, Bedrooms: in.Bedrooms,
	}))
	results := map[string]float64{"m2": area, "ft2": area / si("1 ft2"), "ac": area / si("1 ac")}
	if in.Persons > 0 {
		results["m2/person"] = area / in.Persons
	}
	return results
}

type bedEffluentInputs struct {
	Set, Of, Inlet, Flow, Area string
	Celsius                    float64
}

func bedEffluent(in bedEffluentInputs, r *results) map[string]float64 {
	q := r.of(treatment.HydraulicLoading(si(in.Flow), si(in.Area)))
	return map[string]float64{"mg/L": r.of(arealSet(in.Set, in.Of, r).Effluent(si(in.Inlet), q, in.Celsius)) / si("1 mg/L")}
}

func arealSet(name, of string, r *results) treatment.Areal {
	a, err := named(treatment.Areals, name+"/"+of, func(a treatment.Areal) string { return a.Name + "/" + string(a.Of) })
	if err != nil {
		r.err = err
	}
	return a
}

type removalRateInputs struct {
	Areal, Of, Volumetric, Depth string
	Celsius, Porosity            float64
}

func removalRate(in removalRateInputs, r *results) map[string]float64 {
	if in.Areal != "" {
		a := arealSet(in.Areal, in.Of, r)
		k := r.of(a.RateAt(in.Celsius))
		perYear := 365 * si("1 d")
		return map[string]float64{"m/d": k * si("1 d"), "m/yr": k * perYear, "least m/yr": a.Rate.Least * perYear, "most m/yr": a.Rate.Most * perYear}
	}
	v, err := named(treatment.Volumetrics, in.Volumetric, func(v treatment.Volumetric) string { return v.Name })
	if err != nil {
		r.err = err
	}
	k := r.of(v.RateAt(in.Celsius))
	areal := k * siOrZero(in.Depth) * in.Porosity
	return map[string]float64{"1/d": k * si("1 d"), "m/d": areal * si("1 d"), "m/yr": areal * 365 * si("1 d")}
}

type ammoniaRemovalInputs struct{ Roots, Celsius float64 }

func ammoniaRemoval(in ammoniaRemovalInputs, r *results) map[string]float64 {
	return map[string]float64{"1/d": r.of(treatment.ReedAmmoniaRate(in.Roots, in.Celsius)) * si("1 d")}
}

type loadingInputs struct {
	Flow, Area, Depth, BOD string
	Porosity               float64
}

func loading(in loadingInputs, r *results) map[string]float64 {
	flow, area := si(in.Flow), si(in.Area)
	q := r.of(treatment.HydraulicLoading(flow, area))
	results := map[string]float64{"mm/d": q / si("1 mm/d"), "m/d": q * si("1 d"), "in/d": q * si("1 d") / si("1 in")}
	if in.BOD != "" {
		load := r.of(treatment.OrganicLoad(flow, si(in.BOD), area)) * si("1 d")
		results["g/m2/d"] = load / si("1 g")
		results["lb/ac/d"] = load / si("1 lb") * si("1 ac")
		results["kg/ha/d"] = load * si("1 ha")
	}
	if in.Depth != "" {
		held := r.of(treatment.PoreVolume(treatment.Pores{Volume: area * si(in.Depth), Porosity: in.Porosity}))
		stay := r.of(treatment.Detention(held, flow))
		results["m3"], results["d"], results["h"] = held, stay/si("1 d"), stay/si("1 h")
	}
	return results
}

type voidsInputs struct{ VoidRatio float64 }

func porosityByVoids(in voidsInputs, r *results) map[string]float64 {
	return map[string]float64{"porosity": r.of(treatment.PorosityByVoids(in.VoidRatio))}
}

type strengthInputs struct{ Name, Of string }

func strength(in strengthInputs, r *results) map[string]float64 {
	s, err := named(treatment.Strengths, in.Name, func(s treatment.Strength) string { return s.Name })
	if err != nil {
		r.err = err
	}
	value, unit := s.Of[treatment.Constituent(in.Of)], si("1 mg/L")
	return map[string]float64{"mg/L": value.Typical / unit, "least mg/L": value.Least / unit, "most mg/L": value.Most / unit}
}

type strengthByLoadInputs struct{ Name, Of, Flow string }

func strengthByLoad(in strengthByLoadInputs, r *results) map[string]float64 {
	l, err := named(treatment.Loads, in.Name, func(l treatment.Load) string { return l.Name })
	if err != nil {
		r.err = err
	}
	return map[string]float64{"mg/L": r.of(treatment.Concentration(l.Of[treatment.Constituent(in.Of)], si(in.Flow))) / si("1 mg/L")}
}

type shareOfLoadInputs struct{ Fixture, Of string }

func shareOfLoad(in shareOfLoadInputs, r *results) map[string]float64 {
	s, err := named(treatment.Shares, in.Fixture+"/"+in.Of, func(s treatment.Share) string { return s.Fixture + "/" + string(s.Of) })
	if err != nil {
		r.err = err
	}
	return map[string]float64{"%": 100 * s.Share}
}

// layerInputs is a layer with its conductivity by material, in W/(m·°C) or in
// Btu/(ft·h·°F), or a film with its coefficient in W/(m²·°C).
type layerInputs struct {
	Thickness, Material     string
	Watts, Btu, FilmInWatts float64
}

// btuConductivity is 1 Btu/(ft·h·°F) in W/(m·°C), by the international Btu of
// 1,055.05585262 J, from memory.
var btuConductivity = 1055.05585262 / 3600 / 0.3048 * 1.8

func (l layerInputs) sheet(r *results) treatment.Sheet {
	switch {
	case l.FilmInWatts > 0:
		return treatment.Film(l.FilmInWatts)
	case l.Material != "":
		return treatment.Sheet{Thickness: si(l.Thickness), Conductivity: conductivityOf(l.Material, r)}
	default:
		return treatment.Sheet{Thickness: si(l.Thickness), Conductivity: l.Watts + l.Btu*btuConductivity}
	}
}

func sheets(layers []layerInputs, r *results) []treatment.Sheet {
	list := make([]treatment.Sheet, len(layers))
	for i, l := range layers {
		list[i] = l.sheet(r)
	}
	return list
}

func conductivityOf(material string, r *results) float64 {
	c, err := named(treatment.Conductivities, material, func(c treatment.Conductivity) string { return c.Material })
	if err != nil {
		r.err = err
	}
	return c.Value
}

type layerConductanceInputs struct {
	Layers, Also []layerInputs // Also lies on top of Layers
	Area         string
	Warm, Cold   float64
}

func layerConductance(in layerConductanceInputs, r *results) map[string]float64 {
	layers := sheets(in.Layers, r)
	u := r.of(treatment.Conductance(layers...))
	covered := r.of(treatment.Conductance(append(slices.Clone(layers), sheets(in.Also, r)...)...))
	results := map[string]float64{
		"W/m2·°C": u, "Btu/ft2·h·°F": u / btuConductivity * 0.3048,
		"covered W/m2·°C": covered, "covered Btu/ft2·h·°F": covered / btuConductivity * 0.3048, "less by %": 100 * (1 - covered/u),
	}
	if in.Area != "" {
		area := si(in.Area)
		heat := u * area * (in.Warm - in.Cold)
		first := r.of(treatment.Conductance(layers[0]))
		results["W"], results["°C/W"], results["behind the first layer °C"] = heat, 1/(u*area), in.Warm-heat/(first*area)
	}
	return results
}

type materialInputs struct{ Material string }

func thermalConductivity(in materialInputs, r *results) map[string]float64 {
	k := conductivityOf(in.Material, r)
	return map[string]float64{"W/m·°C": k, "Btu/ft·h·°F": k / btuConductivity}
}

type bedWaterInputs struct {
	Layers               []layerInputs
	Inlet, Air, Porosity float64
	Depth, Detention     string
}

func bedWaterTemperature(in bedWaterInputs, r *results) map[string]float64 {
	u := r.of(treatment.Conductance(sheets(in.Layers, r)...))
	c := treatment.Cooling{Inlet: in.Inlet, Air: in.Air, Conductance: u, Area: 1, Flow: si(in.Depth) * in.Porosity / si(in.Detention)}
	_, freezes, err := c.FreezingArea()
	results := map[string]float64{"W/m2·°C": u, "outlet °C": r.of(c.Outlet()), "freezes": 0}
	if freezes {
		results["freezes"] = 1
	}
	r.of(0, err)
	return results
}

type buriedPipeInputs struct {
	Length, Diameter, Depth string
	Watts, Btu              float64 // conductivity of the ground
	Pipe, Surface           string
}

func buriedPipe(in buriedPipeInputs, r *results) map[string]float64 {
	p := treatment.BuriedPipe{Length: si(in.Length), Diameter: si(in.Diameter), Depth: si(in.Depth)}
	heat := r.of(p.HeatLoss(in.Watts+in.Btu*btuConductivity, si(in.Pipe), si(in.Surface)))
	return map[string]float64{"S m": r.of(p.ShapeFactor()), "W": heat, "Btu/h·ft": heat / (1055.05585262 / 3600) / (p.Length / si("1 ft"))}
}

type particleInputs struct {
	Diameter                           string
	Density, FluidDensity, Millipascal float64 // kg/m³, kg/m³, mPa·s
}

func (in particleInputs) both() (treatment.Particle, treatment.Fluid) {
	p := treatment.Particle{Density: in.Density}
	if in.Diameter != "" {
		p.Diameter = si(in.Diameter)
	}
	return p, treatment.Fluid{Density: in.FluidDensity, Viscosity: in.Millipascal / 1000}
}

// stokesVelocity gives the velocity also where the law refuses it, with the
// Reynolds number by which it does.
func stokesVelocity(in particleInputs, r *results) map[string]float64 {
	p, f := in.both()
	v, err := treatment.StokesVelocity(p, f)
	re, refused := v*p.Diameter*f.Density/f.Viscosity, 0.0
	var beyond *treatment.BeyondStokes
	if errors.As(err, &beyond) {
		v, re, refused, err = beyond.Velocity, beyond.Reynolds, 1, nil
	}
	r.of(0, err)
	return map[string]float64{"m/s": v, "mm/s": 1000 * v, "ft/s": v / si("1 ft"), "Reynolds": re, "refused": refused}
}

func correctedOnce(in particleInputs, r *results) map[string]float64 {
	p, f := in.both()
	cd := r.of(treatment.DragCoefficient(stokesVelocity(in, r)["Reynolds"]))
	return map[string]float64{"m/s": r.of(treatment.VelocityAtDrag(p, f, cd))}
}

func largestByStokes(in particleInputs, r *results) map[string]float64 {
	p, f := in.both()
	d := r.of(treatment.LargestByStokes(p.Density, f))
	p.Diameter = d * 0.999999
	return map[string]float64{"mm": 1000 * d, "mm/s": 1000 * r.of(treatment.StokesVelocity(p, f))}
}

type settlingAreaInputs struct {
	Flows              []string // their mean
	Velocity           string
	Factor             float64
	WithFactorOfMethod bool
}

func settlingArea(in settlingAreaInputs, r *results) map[string]float64 {
	flow := 0.0
	for _, q := range in.Flows {
		flow += si(q) / float64(len(in.Flows))
	}
	velocity, factor := treatment.MediumSiltVelocity, in.Factor
	if in.Velocity != "" {
		velocity = si(in.Velocity)
	}
	if in.WithFactorOfMethod {
		factor = treatment.SettlingAreaFactor
	}
	area := r.of(treatment.SettlingArea(flow, velocity, factor))
	return map[string]float64{"m2": area, "ft2": area / si("1 ft2")}
}

type sludgeInputs struct {
	Rate           string
	Persons, Years float64
	Tank           string
}

func sludge(in sludgeInputs, r *results) map[string]float64 {
	rate, err := named(treatment.SludgeRates, in.Rate, func(s treatment.SludgeRate) string { return s.Name })
	if err != nil {
		r.err = err
	}
	volume := r.of(treatment.SludgeVolume(in.Persons, rate.Rate, in.Years*365*si("1 d")))
	results := map[string]float64{"L": volume / si("1 L")}
	if in.Tank != "" {
		results["% of the tank"] = 100 * volume / si(in.Tank)
		results["years to half the tank"] = r.of(treatment.CleanOutInterval(si(in.Tank)/2, in.Persons, rate.Rate)) / (365 * si("1 d"))
	}
	return results
}

type ammoniaInputs struct {
	By      string // Emerson or Trussell
	PH      float64
	Celsius []float64
	Total   float64 // mg/L
}

// unionizedAmmonia gives the shares in % at each temperature, and as ratios.
func unionizedAmmonia(in ammoniaInputs, r *results) map[string]float64 {
	by, known := map[string]func(pH, celsius float64) (float64, error){
		"Emerson": treatment.Emerson1975.Unionized, "Trussell": treatment.TrussellUnionized,
	}[in.By]
	if !known {
		r.err = fmt.Errorf("no source named %q", in.By)
		return nil
	}
	results := make(map[string]float64)
	for _, celsius := range in.Celsius {
		share := r.of(by(in.PH, celsius))
		at := fmt.Sprintf("%g °C", celsius)
		results["% at "+at], results["ratio at "+at] = 100*share, share
		results["un-ionized mg/L at "+at], results["ionized mg/L at "+at] = in.Total*share, in.Total*(1-share)
	}
	return results
}

type criterionInputs struct {
	Criterion   string
	PH, Celsius float64
	Salmonids   bool
}

func ammoniaCriterion(in criterionInputs, r *results) map[string]float64 {
	var value float64
	switch in.Criterion {
	case "1999 acute":
		value = r.of(treatment.AcuteAmmonia1999(in.PH, in.Salmonids))
	case "1999 chronic":
		value = r.of(treatment.ChronicAmmonia1999(in.PH, in.Celsius))
	case "2013 acute":
		value = r.of(treatment.AcuteAmmonia2013(in.PH, in.Celsius, in.Salmonids))
	case "2013 chronic":
		value = r.of(treatment.ChronicAmmonia2013(in.PH, in.Celsius))
	default:
		r.err = fmt.Errorf("no criterion named %q", in.Criterion)
	}
	return map[string]float64{"mg/L": value / si("1 mg/L")}
}

type oxygenInputs struct{ Celsius, MmHg float64 }

func oxygenSaturation(in oxygenInputs, r *results) map[string]float64 {
	value := r.of(treatment.OxygenSaturation(in.Celsius))
	if in.MmHg > 0 {
		value = r.of(treatment.OxygenSaturationAt(in.Celsius, in.MmHg*133.322387415))
	}
	return map[string]float64{"mg/L": value / si("1 mg/L")}
}

type rootInputs struct{ Plant, Source string }

func rootDepth(in rootInputs, r *results) map[string]float64 {
	for _, known := range treatment.RootDepthsOf(in.Plant) {
		if strings.HasPrefix(known.Source, in.Source) {
			return map[string]float64{"m": known.Depth, "ft": known.Depth / si("1 ft")}
		}
	}
	r.err = fmt.Errorf("nothing on %s from %s", in.Plant, in.Source)
	return nil
}
