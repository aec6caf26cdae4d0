package treatment

import (
	"errors"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	TemperatureSource = "van 't Hoff–Arrhenius form k = k20·θ^(T−20), as in EPA 625/1-88-022 (1988), ch. 3 (from memory)"
	PlugFlowSource    = "EPA 625/1-88-022 (1988), ch. 3, and EPA 832-R-93-008 (1993): Ce = C0·exp(−k·t) (from memory)"
	KCStarSource      = "Kadlec & Knight, Treatment Wetlands (1996), k–C* model"
	TanksSource       = "Kadlec & Wallace, Treatment Wetlands, 2nd ed. (2009), P–k–C* model (from memory)"
)

// AtTemperature gives a rate at a water temperature in °C, 0 to 45, from the
// rate at 20 °C, in its unit, and the temperature coefficient θ, 0.9 to 1.2.
// Source: TemperatureSource.
func AtTemperature(rate20, theta, celsius float64) (float64, error) {
	return bounds.Result(rate20*math.Pow(theta, celsius-20), bounds.NotNegative("rate at 20 °C", rate20, ""),
		bounds.Given("temperature coefficient θ", theta, 0.9, 1.2, ""), liquid(celsius))
}

// PlugFlow gives what is left of an inlet concentration, in its unit, after a
// time in s at a rate per s. Source: PlugFlowSource.
func PlugFlow(inlet, rate, detention float64) (float64, error) {
	return bounds.Result(inlet*math.Exp(-rate*detention), bounds.NotNegative("inlet concentration", inlet, "kg/m³"),
		bounds.NotNegative("rate", rate, "1/s"), bounds.NotNegative("detention", detention, "s"))
}

// PlugFlowTime gives the time in s that plug flow takes from one concentration
// to another at a rate per s, the inverse of PlugFlow.
func PlugFlowTime(inlet, effluent, rate float64) (float64, error) {
	if err := falling(inlet, effluent, 0); err != nil {
		return 0, err
	}
	return bounds.Result(math.Log(inlet/effluent)/rate, bounds.Positive("rate", rate, "1/s"))
}

// KCStar gives the effluent concentration of a bed in plug flow, in the inlet's
// unit: (Ce−C*)/(Ci−C*) = exp(−k/q), with the background C* that no bed
// undercuts, the areal rate k in m/s and the hydraulic loading q in m/s. C* = 0
// is the plain areal equation of the older manuals. Source: KCStarSource.
func KCStar(inlet, background, rate, loading float64) (float64, error) {
	return bounds.Result(background+(inlet-background)*math.Exp(-rate/loading), aboveBackground(inlet, background),
		bounds.NotNegative("background", background, "kg/m³"), bounds.NotNegative("rate", rate, "m/s"), bounds.Positive("hydraulic loading", loading, "m/s"))
}

// KCStarArea gives the area in m² that plug flow takes from one concentration
// to another, from the flow in m³/s, the background and the areal rate in m/s,
// the inverse of KCStar.
func KCStarArea(flow, inlet, effluent, background, rate float64) (float64, error) {
	if err := falling(inlet, effluent, background); err != nil {
		return 0, err
	}
	return bounds.Result(flow/rate*math.Log((inlet-background)/(effluent-background)),
		bounds.Positive("flow", flow, "m³/s"), bounds.Positive("rate", rate, "m/s"))
}

// PKCStar gives the effluent concentration of a bed that mixes like a number of
// tanks in series, P, 1 to 1,000 and not always whole:
// (Ce−C*)/(Ci−C*) = (1 + k/(P·q))^(−P). Many tanks come to KCStar. Source:
// TanksSource.
func PKCStar(inlet, background, rate, loading, tanks float64) (float64, error) {
	return bounds.Result(background+(inlet-background)*math.Pow(1+rate/(tanks*loading), -tanks), aboveBackground(inlet, background),
		bounds.NotNegative("background", background, "kg/m³"), bounds.NotNegative("rate", rate, "m/s"), bounds.Positive("hydraulic loading", loading, "m/s"), tankCount(tanks))
}

// PKCStarArea gives the area in m² for a given effluent, the inverse of PKCStar:
// A = (P·Q/k)·(((Ci−C*)/(Ce−C*))^(1/P) − 1).
func PKCStarArea(flow, inlet, effluent, background, rate, tanks float64) (float64, error) {
	if err := falling(inlet, effluent, background); err != nil {
		return 0, err
	}
	ratio := math.Pow((inlet-background)/(effluent-background), 1/tanks)
	return bounds.Result(tanks*flow/rate*(ratio-1), bounds.Positive("flow", flow, "m³/s"), bounds.Positive("rate", rate, "m/s"), tankCount(tanks))
}

func tankCount(tanks float64) bounds.Value {
	return bounds.Given("number of tanks in series", tanks, 1, 1000, "")
}

func aboveBackground(inlet, background float64) bounds.Value {
	return bounds.Given("inlet concentration", inlet, background, bounds.Huge, "kg/m³")
}

// falling refuses an effluent that no area could give.
func falling(inlet, effluent, background float64) error {
	if err := bounds.Refuse(bounds.NotNegative("background", background, "kg/m³"), bounds.Positive("inlet concentration", inlet, "kg/m³")); err != nil {
		return err
	}
	if !(effluent > background) {
		return errors.New("the effluent wanted is not above the background that every bed of these constants leaves: no area gives it")
	}
	if !(effluent <= inlet) {
		return errors.New("the effluent wanted is above the inlet concentration")
	}
	return nil
}
