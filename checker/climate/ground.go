package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	ConductionSource = "Janna, Engineering Heat Transfer, Example 4.5; Incropera and others, Fundamentals of Heat and Mass Transfer, Example 5.6: conduction into deep ground whose surface turns cold at once"
	GroundTempSource = "conduction of a yearly wave into the ground; common practice, no source"
)

// Diffusivity gives the thermal diffusivity in m²/s from the conductivity in
// W/m·°C, the density in kg/m³ and the specific heat in J/kg·°C, by definition.
func Diffusivity(conductivity, density, specificHeat float64) (float64, error) {
	if err := bounds.Refuse(bounds.Positive("thermal conductivity", conductivity, "W/m·°C"), bounds.Positive("density", density, "kg/m³"),
		bounds.Positive("specific heat", specificHeat, "J/kg·°C")); err != nil {
		return 0, err
	}
	return conductivity / (density * specificHeat), nil
}

// ConductionArgument gives the argument x/(2·√(αt)) at which ground of one
// temperature at first, whose surface was set to another, has a temperature in
// between, all in °C. The inverse error function gives it, not the complementary
// error function. Temperatures out of that order are an error. Source:
// ConductionSource.
func ConductionArgument(first, surface, reached float64) (float64, error) {
	if err := bounds.Refuse(temperature("first temperature", first), temperature("surface temperature", surface), temperature("temperature reached", reached)); err != nil {
		return 0, err
	}
	ratio := (reached - surface) / (first - surface)
	if !(ratio >= 0 && ratio < 1) {
		return 0, fmt.Errorf("%g °C does not lie between the surface, %g °C, and the ground at first, %g °C", reached, surface, first)
	}
	return math.Erfinv(ratio), nil
}

// ConductionDepth gives the depth in m that belongs to the argument of
// ConductionArgument, from the diffusivity in m²/s and the time in s. For frost it
// leaves out the latent heat of the soil's water: a check, more than the frost
// depth of any moist soil. Source: ConductionSource.
func ConductionDepth(argument, diffusivity, time float64) (float64, error) {
	if err := bounds.Refuse(bounds.NotNegative("argument", argument, ""), bounds.Positive("diffusivity", diffusivity, "m²/s"), bounds.NotNegative("time", time, "s")); err != nil {
		return 0, err
	}
	return 2 * argument * math.Sqrt(diffusivity*time), nil
}

// DampingDepth gives the depth in m at which the yearly swing of the ground's
// temperature is 1/e of that at the surface, from the diffusivity in m²/s. Source:
// GroundTempSource.
func DampingDepth(diffusivity float64) (float64, error) {
	if err := bounds.Refuse(bounds.Positive("diffusivity", diffusivity, "m²/s")); err != nil {
		return 0, err
	}
	return math.Sqrt(diffusivity * 365 * day / math.Pi), nil
}

// GroundWave is the yearly wave of temperature at the ground's surface.
type GroundWave struct {
	Mean       float64 // of the year, °C
	Swing      float64 // from the mean to the warmest day, °C, 0 to 50
	ColdestDay float64 // of the surface, day of the year, 0 to 366
}

// At gives the temperature in °C at a depth in m on a day of the year, 0 to 366,
// without frost or snow; the wave comes later and weaker with depth. Source:
// GroundTempSource.
func (g GroundWave) At(depth, onDay, diffusivity float64) (float64, error) {
	if err := bounds.Refuse(temperature("mean temperature", g.Mean), bounds.Given("swing", g.Swing, 0, 50, "°C"), bounds.Given("coldest day", g.ColdestDay, 0, 366, ""),
		bounds.NotNegative("depth", depth, "m"), bounds.Given("day of the year", onDay, 0, 366, "")); err != nil {
		return 0, err
	}
	damping, err := DampingDepth(diffusivity)
	if err != nil {
		return 0, err
	}
	phase := 2*math.Pi*(onDay-g.ColdestDay)/365 - depth/damping
	return g.Mean - g.Swing*math.Exp(-depth/damping)*math.Cos(phase), nil
}
