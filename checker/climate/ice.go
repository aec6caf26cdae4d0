package climate

import (
	"math"

	"greysill/checker/internal/bounds"
)

// IceSource is the growth of ice on still water.
const IceSource = "CRREL Technical Note 04-3, as quoted on a page about ice thickness"

// iceUnit is 1 in/√(°F·d) in m/√(°C·d).
var iceUnit = inch / math.Sqrt(fahrenheit)

// IceCoefficient is the growth of ice on one kind of water, in m/√(°C·d).
type IceCoefficient struct {
	Water       string
	Least, Most float64
}

// IceCoefficients are those of lakes; the figures for rivers differ between
// copies of the source and are left out. Source: IceSource.
var IceCoefficients = []IceCoefficient{
	{"windy lake, no snow", 0.8 * iceUnit, 0.8 * iceUnit},
	{"average lake with snow", 0.5 * iceUnit, 0.7 * iceUnit},
}

// IceThickness gives how thick ice grows in m, from the coefficient in m/√(°C·d),
// 0 to 0.1, and the freezing index of the air so far in °C·d, 0 to 10,000. It says
// nothing of whether the ice bears anybody: no one goes onto a pond's ice by this
// figure. Source: IceSource.
func IceThickness(coefficient, freezingIndex float64) (float64, error) {
	if err := bounds.Refuse(bounds.Given("ice coefficient", coefficient, 0, 0.1, "m/√(°C·d)"), bounds.Given("freezing index", freezingIndex, 0, 10000, "°C·d")); err != nil {
		return 0, err
	}
	return coefficient * math.Sqrt(freezingIndex), nil
}
