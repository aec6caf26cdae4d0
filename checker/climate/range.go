package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Ranges of weather and ground on earth, wide enough for every place where a
// house stands.
func temperature(what string, celsius float64) bounds.Value {
	return bounds.Given(what, celsius, -60, 60, "°C")
}

func latitude(radians float64) bounds.Value {
	return bounds.Given("latitude", radians, -math.Pi/2, math.Pi/2, "rad")
}

func dayOfYear(n int) bounds.Value {
	return bounds.Given("day of the year", float64(n), 1, 366, "")
}

func radiation(what string, wattsPerM2 float64) bounds.Value {
	return bounds.Given(what, wattsPerM2, 0, 1000, "W/m²")
}

func vapour(what string, pascals float64) bounds.Value {
	return bounds.Given(what, pascals, 0, 20000, "Pa")
}

func speed(metresPerSecond float64) bounds.Value {
	return bounds.Given("wind speed", metresPerSecond, 0, 60, "m/s")
}

// ordered refuses a least temperature above the greatest.
func ordered(least, greatest float64) error {
	if least > greatest {
		return fmt.Errorf("the minimum temperature, %g °C, is above the maximum, %g °C", least, greatest)
	}
	return bounds.Refuse(temperature("minimum temperature", least), temperature("maximum temperature", greatest))
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
