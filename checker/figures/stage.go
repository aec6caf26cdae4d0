package figures

import (
	"errors"
	"slices"

	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// vessel is a part that holds water in the open or in a tank, with what it holds
// when it is full to its water level.
type vessel struct {
	*part
	level, floor           Value // floor: its lowest level
	depth, surface, volume Value
	by                     Value // what shows the volume
}

// What shows the volume that a part holds.
const (
	sidesDrawn  = "sides as drawn"
	volumeDrawn = "volume as drawn"
)

const (
	stageFormula = "where side slope, level floor and rim level are drawn: (area at the floor + 4 × area half way + area at the water level) × depth ÷ 6; " +
		"else the volume drawn"
	surfaceFormula = "where side slope, level floor and rim level are drawn, the outline moved in by run × (rim level − water level); else the area of the outline"
)

var prismoidal = Citation{Title: earthwork.PrismoidalSource, Standing: FromMemory}

func newVessel(p *part) *vessel {
	v := &vessel{part: p, level: p.entry("water_level", p.WaterLevel), floor: p.lowestFloor()}
	v.depth = p.greatestWaterDepth()
	v.surface = p.area()
	if p.SideSlope.Given() {
		v.surface = p.held((*earthwork.Basin).Area, v.level)
	}
	v.volume, v.by = p.entry("volume", p.Volume), text(volumeDrawn, p.drawn("volume"))
	if held := p.held((*earthwork.Basin).Volume, v.level); held.Known() || !p.Volume.Given() {
		v.volume, v.by = held, orUnknown(text(sidesDrawn, held.Inputs...), held.Lacks)
	}
	return v
}

// entry gives an entry of the part as a figure.
func (p *part) entry(name string, q quantity.Quantity) Value {
	if !q.Given() {
		return unknown(p.lack(name))
	}
	return number(q.Value, p.drawn(name))
}

func (p *part) lowestFloor() Value {
	if len(p.Floor) == 0 {
		return unknown(p.lack("floor"))
	}
	return number(slices.MinFunc(p.Floor, lower).Value, p.drawn("floor"))
}

func lower(a, b quantity.Quantity) int {
	if a.Value < b.Value {
		return -1
	}
	return 1
}

func (p *part) greatestWaterDepth() Value {
	level, floor := p.entry("water_level", p.WaterLevel), p.lowestFloor()
	depth := outOf(level.Number-floor.Number, level, floor)
	if depth.Known() && depth.Number <= geometry.Resolution {
		return unknown(Lack{p.Pointer + "/water_level", "water_level of " + p.ID + " above its floor"})
	}
	return depth
}

// held gives a figure of what the part holds up to a level where its sides are
// drawn, which go down from the outline at the level of the rim with one slope to
// a level floor.
func (p *part) held(figure func(b *earthwork.Basin, stage float64) (float64, bool), stage Value) Value {
	b, drawn := p.basin()
	known := outOf(0, drawn, stage)
	if !known.Known() {
		return known
	}
	x, ok := figure(b, stage.Number)
	if !ok {
		return unknown(Lack{p.Pointer + "/water_level", "water_level of " + p.ID + " within the range of its floor and rim"})
	}
	return number(x, known.Inputs...)
}

// basin is the part as its sides are drawn, with the level of its floor and what it
// is known from.
func (p *part) basin() (*earthwork.Basin, Value) {
	area, run, rim, floor := p.area(), p.sides(), p.entry("rim_level", p.RimLevel), p.levelFloor()
	inputs, lacks := gathered([]Value{area, run, rim, floor})
	if len(lacks) > 0 {
		return nil, unknown(lacks...)
	}
	b, err := earthwork.NewBasin(p.shape.Points(), rim.Number, run.Number, floor.Number, rim.Number)
	if err != nil {
		return nil, unknown(Lack{p.Pointer + "/side_slope", "sides of " + p.ID + " within the range of the formula: " + err.Error()})
	}
	return b, number(floor.Number, inputs...)
}

// sides is the run of the part's sides for a rise of 1.
func (p *part) sides() Value {
	switch {
	case !p.SideSlope.Given():
		return unknown(Lack{p.Pointer + "/side_slope", "side_slope of " + p.ID + ", or its volume"})
	case p.SideSlope.Value <= 0:
		return unknown(Lack{p.Pointer + "/side_slope", "side_slope of " + p.ID + ", more than 0"})
	default:
		return number(1/p.SideSlope.Value, p.drawn("side_slope"))
	}
}

// levelFloor is the level of a floor that does not slope.
func (p *part) levelFloor() Value {
	floor := p.lowestFloor()
	if floor.Known() && slices.MaxFunc(p.Floor, lower).Value-floor.Number > geometry.Resolution {
		return unknown(Lack{p.Pointer + "/floor", "one level for the floor of " + p.ID + ", or its volume"})
	}
	return floor
}

var errRange = errors.New("a value lies outside it")

// inRange gives the result of a formula that only tells whether it holds.
func inRange(x float64, ok bool) (float64, error) {
	if !ok {
		return 0, errRange
	}
	return x, nil
}
