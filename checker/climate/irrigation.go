package climate

import (
	"fmt"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	LeachingSource  = "Punmia and others, Irrigation and Water Power Engineering, Examples 16.10 and 16.11"
	SoilStoreSource = "Punmia and others, Irrigation and Water Power Engineering, Example 3.2"
)

// LeachingRequirement gives the share of the water that has to pass through the
// roots to carry its salt away, from the electrical conductivities, in one unit,
// of the water led on and of the drainage that the plants bear. Water saltier
// than that drainage is an error. Source: LeachingSource.
func LeachingRequirement(water, drainage float64) (float64, error) {
	if err := bounds.Refuse(bounds.NotNegative("conductivity of the water", water, ""), bounds.Positive("conductivity of the drainage", drainage, "")); err != nil {
		return 0, err
	}
	if water >= drainage {
		return 0, fmt.Errorf("the water's conductivity, %g, is not below the drainage's, %g: no amount leaches its salt", water, drainage)
	}
	return water / drainage, nil
}

// IrrigationDepth gives the depth to lead on, in the unit of the plants'
// evapotranspiration, for a leaching requirement from 0 to 0.99. Source:
// LeachingSource.
func IrrigationDepth(et, leaching float64) (float64, error) {
	if err := bounds.Refuse(bounds.NotNegative("evapotranspiration", et, ""), bounds.Given("leaching requirement", leaching, 0, 0.99, "")); err != nil {
		return 0, err
	}
	return et / (1 - leaching), nil
}

// SoilStore gives the depth of water in m that a soil of some depth in m keeps
// for plants, from its dry density in kg/m³, 100 to 2,700, and its moisture at
// field capacity and at the wilting point as mass over dry mass, each 0 to 1.
// Source: SoilStoreSource.
func SoilStore(dryDensity, fieldCapacity, wilting, depth float64) (float64, error) {
	if err := bounds.Refuse(density(dryDensity), bounds.Share("field capacity", fieldCapacity),
		bounds.Given("wilting point", wilting, 0, fieldCapacity, ""), bounds.NotNegative("depth", depth, "m")); err != nil {
		return 0, err
	}
	return dryDensity / waterDensity * (fieldCapacity - wilting) * depth, nil
}

// waterDensity is that of water in kg/m³, rounded as the sources do.
const waterDensity = 1000.0

func density(dry float64) bounds.Value {
	return bounds.Given("dry density", dry, 100, 2700, "kg/m³")
}
