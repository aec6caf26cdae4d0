package climate

import (
	"fmt"
	"math"
	"strings"
)

// given is a value with the range in which a formula takes it.
type given struct {
	what        string
	value       float64
	least, most float64
	unit        string
}

// refuse names the first of the values that lies outside its range.
func refuse(values ...given) error {
	for _, g := range values {
		if !(g.value >= g.least && g.value <= g.most) {
			return fmt.Errorf("the %s is %s: expected %s", g.what, strings.TrimSpace(fmt.Sprintf("%g %s", g.value, g.unit)), g.expected())
		}
	}
	return nil
}

func (g given) expected() string {
	switch {
	case g.most < math.MaxFloat64:
		return fmt.Sprintf("%g to %g", g.least, g.most)
	case g.least == 0:
		return "0 or more"
	case g.least > 0:
		return "more than 0"
	default:
		return "a finite number"
	}
}

// Ranges of weather and ground on earth, wide enough for every place where a
// house stands.
func temperature(what string, celsius float64) given {
	return given{what, celsius, -60, 60, "°C"}
}

func share(what string, ratio float64) given {
	return given{what, ratio, 0, 1, ""}
}

func latitude(radians float64) given {
	return given{"latitude", radians, -math.Pi / 2, math.Pi / 2, "rad"}
}

func dayOfYear(n int) given {
	return given{"day of the year", float64(n), 1, 366, ""}
}

func radiation(what string, wattsPerM2 float64) given {
	return given{what, wattsPerM2, 0, 1000, "W/m²"}
}

func vapour(what string, pascals float64) given {
	return given{what, pascals, 0, 20000, "Pa"}
}

func speed(metresPerSecond float64) given {
	return given{"wind speed", metresPerSecond, 0, 60, "m/s"}
}

// notNegative allows every finite value from 0.
func notNegative(what string, value float64, unit string) given {
	return given{what, value, 0, math.MaxFloat64, unit}
}

// positive allows every finite value above 0.
func positive(what string, value float64, unit string) given {
	return given{what, value, math.SmallestNonzeroFloat64, math.MaxFloat64, unit}
}

// finite allows every value but NaN and the infinities.
func finite(what string, value float64, unit string) given {
	return given{what, value, -math.MaxFloat64, math.MaxFloat64, unit}
}

// ordered refuses a least temperature above the greatest.
func ordered(least, greatest float64) error {
	if least > greatest {
		return fmt.Errorf("the minimum temperature, %g °C, is above the maximum, %g °C", least, greatest)
	}
	return refuse(temperature("minimum temperature", least), temperature("maximum temperature", greatest))
}

// unless gives the value, or 0 where there is an error.
func unless(err error, value float64) (float64, error) {
	if err != nil {
		return 0, err
	}
	return value, nil
}

// chain keeps the first error of several steps.
type chain struct{ err error }

// take passes a step's value on.
func (c *chain) take(value float64, err error) float64 {
	if c.err == nil {
		c.err = err
	}
	return value
}
