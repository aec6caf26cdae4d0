package hydraulics

import (
	"cmp"
	"math"
)

// WaterSurfaceSource names the water surface along a bed.
const WaterSurfaceSource = "Darcy's law with the gradient of the free water surface (Dupuit), stepped up from the outlet; y₁² = y₂² + 2Q·L/(K·W) on a level floor (any groundwater textbook; from memory)"

// Bed is a bed of uniform width whose outlet holds a depth of water.
type Bed struct {
	Width       float64 // m
	FloorSlope  float64 // fall over length toward the outlet; negative where it rises
	OutletDepth float64 // of water over the floor at the outlet, m
	Zones       []Zone  // from the inlet on
}

// Zone is a stretch of the bed of one conductivity.
type Zone struct {
	Length       float64 // m
	Conductivity float64 // m/s
}

// Station is a place along the bed.
type Station struct {
	FromInlet float64 // m
	Depth     float64 // of water over the floor there, m
	Level     float64 // of the water over the floor at the outlet, m
}

// stepsPerZone keeps the error of a step's mean depth far under a grain's size.
const stepsPerZone = 200

// WaterSurface is the water surface of a steady flow in m³/s, 0 or more, from
// the inlet to the outlet. It takes the flow as the same all along; where the bed
// loses or gains water, the mean of in and out is commonly taken (Crites,
// Middlebrooks and Reed 2006). Each step up the bed solves
// y₁ = y₂ − s·Δx + Q·Δx/(K·W·ȳ) with the step's mean depth ȳ, which is exact on
// a level floor.
//
// A bed whose floor rises out of still water toward the inlet stands dry there,
// which is a *RangeError. Whether the water would stand above the gravel is for
// the caller to see.
func (b Bed) WaterSurface(discharge float64) ([]Station, error) {
	if err := cmp.Or(b.check(), notNegative("discharge", discharge)); err != nil {
		return nil, err
	}
	upstream, depth := 0.0, b.OutletDepth
	stations := []Station{{0, depth, depth}}
	for i := len(b.Zones) - 1; i >= 0; i-- {
		zone := b.Zones[i]
		dx := zone.Length / stepsPerZone
		for range stepsPerZone {
			upstream += dx
			depth = stepUp(depth, b.FloorSlope*dx, discharge*dx/(zone.Conductivity*b.Width))
			if err := positive("depth of water at the inlet end", depth); err != nil {
				return nil, err
			}
			stations = append(stations, Station{upstream, depth, b.FloorSlope*upstream + depth})
		}
	}
	return fromInlet(stations, upstream), nil
}

// stepUp solves (y − depth + rise)·(y + depth) = 2·loss for the depth y one
// step up the bed.
func stepUp(depth, rise, loss float64) float64 {
	return (math.Sqrt(rise*rise+4*(depth*(depth-rise)+2*loss)) - rise) / 2
}

// fromInlet turns stations counted up from the outlet round.
func fromInlet(stations []Station, length float64) []Station {
	turned := make([]Station, len(stations))
	for i, s := range stations {
		s.FromInlet = length - s.FromInlet
		turned[len(stations)-1-i] = s
	}
	return turned
}

func (b Bed) check() error {
	err := cmp.Or(positive("width", b.Width), positive("depth of water at the outlet", b.OutletDepth),
		within("slope of the floor", b.FloorSlope, -1, 1), positive("number of zones", float64(len(b.Zones))))
	for _, z := range b.Zones {
		err = cmp.Or(err, positive("length of a zone", z.Length), positive("hydraulic conductivity", z.Conductivity))
	}
	return err
}
