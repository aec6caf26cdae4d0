package figures

import (
	"fmt"
	"math"

	"greysill/checker/geometry"
)

// testDistance counts the tests that reach below the bottom: a shallower one says
// nothing of the soil that has to take the water up.
func (s *soakage) testDistance() Value {
	soil, bottom := s.drawing.Site.Soil, s.bottomDepth()
	if lacks := append(s.unplaced(), bottom.Lacks...); len(lacks) > 0 {
		return unknown(lacks...)
	}
	nearest := unknown(Lack{soilPointer + "/tests", "a test of the site's soil that goes deeper than the bottom of " + s.ID + ", with its place and depth"})
	if soil == nil {
		return nearest
	}
	least := math.Inf(1)
	for i, t := range soil.Tests {
		if t.At == nil || t.Depth.Value <= bottom.Number+geometry.Resolution {
			continue
		}
		if away := s.awayFrom(geometry.At(geometry.Point(*t.At))); away < least {
			least = away
			test := Input{Name: fmt.Sprintf("test %d of the soil", i+1), Pointer: member(soilPointer+"/tests", i)}
			nearest = number(least, append([]Input{{Name: s.ID, Pointer: s.lies}, test}, bottom.Inputs...)...)
		}
	}
	return nearest
}
