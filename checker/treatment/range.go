package treatment

import "greysill/checker/internal/bounds"

// porosity allows pores in every medium, 1 for open water.
func porosity(value float64) bounds.Value { return bounds.Given("porosity", value, 0.01, 1, "") }

// liquid is the range in which water at a house is liquid and a bed's life goes
// on.
func liquid(celsius float64) bounds.Value {
	return bounds.Given("water temperature", celsius, 0, 45, "°C")
}

// air allows every temperature of the weather.
func air(celsius float64) bounds.Value {
	return bounds.Given("air temperature", celsius, -60, 60, "°C")
}
