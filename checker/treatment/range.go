package treatment

import (
	"fmt"
	"strings"
)

// given is a value with the range in which a formula takes it.
type given struct {
	what        string
	value       float64
	least, most float64
	unit        string
}

// No drawing has a value beyond these; they keep products and quotients finite.
const (
	tiny = 1e-15
	huge = 1e15
)

// refuse names the first of the values that lies outside its range.
func refuse(values ...given) error {
	for _, g := range values {
		if !(g.value >= g.least && g.value <= g.most) {
			return fmt.Errorf("the %s is %s: expected %s", g.what, strings.TrimSpace(fmt.Sprint(g.value, " ", g.unit)), g.expected())
		}
	}
	return nil
}

func (g given) expected() string {
	switch {
	case g.value > huge || g.most < huge:
		return fmt.Sprintf("%g to %g", g.least, g.most)
	case g.least == tiny:
		return "more than 0"
	default:
		return fmt.Sprintf("%g or more", g.least)
	}
}

// positive allows every value above 0.
func positive(what string, value float64, unit string) given {
	return given{what, value, tiny, huge, unit}
}

// notNegative allows every value from 0.
func notNegative(what string, value float64, unit string) given {
	return given{what, value, 0, huge, unit}
}

// share allows ratios from 0 to 1.
func share(what string, value float64) given { return given{what, value, 0, 1, ""} }

// porosity allows pores in every medium, 1 for open water.
func porosity(value float64) given { return given{"porosity", value, 0.01, 1, ""} }

// liquid is the range in which water at a house is liquid and a bed's life goes
// on.
func liquid(celsius float64) given { return given{"water temperature", celsius, 0, 45, "°C"} }

// air allows every temperature of the weather.
func air(celsius float64) given { return given{"air temperature", celsius, -60, 60, "°C"} }

// result passes a value on when everything that it was worked out from lies in
// its range.
func result(value float64, from ...given) (float64, error) {
	if err := refuse(from...); err != nil {
		return 0, err
	}
	return value, nil
}
