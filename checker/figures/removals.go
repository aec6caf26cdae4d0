package figures

import "greysill/checker/treatment"

// removal is a published set of constants for the BOD5 that a bed takes out.
type removal struct {
	name, model string
	treatment.Origin
	corrected             bool    // for temperature
	inletLeast, inletMost float64 // kg/m³, the range that the set is for; 0 where it has no end

	// through is what the effluent depends on beside the inlet: the hydraulic
	// loading, or the detention, least and greatest.
	through  func(*running) estimate
	effluent func(inlet, through, celsius float64) (float64, error)
}

// referenceTemperature is the water temperature in °C that rates are given for.
const referenceTemperature = 20

// removals has every set for BOD5.
var removals = removalSets()

func removalSets() []removal {
	var all []removal
	for _, a := range treatment.Areals {
		if a.Of == treatment.BOD5 {
			all = append(all, byArea(a))
		}
	}
	for _, v := range treatment.Volumetrics {
		all = append(all, byVolume(v))
	}
	return all
}

func removalNames() []string {
	names := make([]string, len(removals))
	for i := range removals {
		names[i] = removals[i].name
	}
	return names
}

func byArea(a treatment.Areal) removal {
	model := "Ce = C* + (Ci − C*) × exp(−k ÷ q)"
	if a.Tanks > 0 {
		model = "Ce = C* + (Ci − C*) × (1 + k ÷ (P × q))^−P"
	}
	return removal{a.Name, model, a.Origin, a.Corrected(), a.InletLeast, a.InletMost,
		func(r *running) estimate { return estimate{least: r.loading, greatest: r.loading} }, a.Effluent}
}

func byVolume(v treatment.Volumetric) removal {
	detention := func(r *running) estimate { return r.detentions }
	if v.Porosity > 0 {
		detention = func(r *running) estimate {
			t := r.detention(r.pores(func(*layer) Value { return number(v.Porosity) }), r.flow)
			return estimate{least: t, greatest: t}
		}
	}
	return removal{v.Name, "Ce = Ci × exp(−k × t)", v.Origin, true, 0, 0, detention, v.Effluent}
}

// inlet gives the least and greatest BOD5 of greywater that the set is meant
// for, and whether it is meant for any.
func (s *removal) inlet(r *running) (weak, strong Value, meant bool) {
	weak, strong = r.weakest.bod, r.strongest.bod
	if !weak.Known() {
		return weak, strong, true
	}
	weak.Number = max(weak.Number, s.inletLeast)
	if s.inletMost > 0 {
		strong.Number = min(strong.Number, s.inletMost)
	}
	return weak, strong, weak.Number <= strong.Number
}
