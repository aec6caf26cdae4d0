package figures

import (
	"math"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var heldLevelTable = tabulate(
	List{Name: "held_levels", Subject: "a part whose outlet holds its water",
		Doc: "Every surge tank, planted gravel bed, settling basin and pond whose water goes on in its ordinary run."},
	(*drawing).heldLevels, (*part).subject,
	[]column[*part]{
		{Field{Name: "water_level", Kind: Number, Dimension: quantity.Level, Doc: "Level at which its water is drawn."},
			func(p *part) Value { return p.entry("water_level", p.WaterLevel) }},
		{Field{Name: "outlet_level", Kind: Number, Dimension: quantity.Level,
			Doc: "Level at which its ordinary outlet lets water go; of a bed drawn with two, the one farther from the water level."}, (*part).heldBy},
		{Field{Name: "off_outlet", Kind: Number, Dimension: quantity.Length, Doc: "How far that is from the water level, up or down.",
			Formula: "|outlet level − water level|"}, (*part).offOutlet},
		{Field{Name: "at_outlet", Kind: Truth, Doc: "Whether the two are the same, as far as the drawing's tolerance of levels tells."}, (*part).atOutlet},
	},
)

func (d *drawing) heldLevels() []*part {
	var all []*part
	for _, p := range d.ofKind(surgeTank, plantedBed, settlingBasin, pond) {
		if len(p.To) > 0 {
			all = append(all, p)
		}
	}
	return all
}

func (p *part) heldBy() Value {
	level := p.entry("outlet_level", p.OutletLevel)
	if p.Outlet == nil || !p.Outlet.Level.Given() {
		return level
	}
	control := p.entry("outlet/level", p.Outlet.Level)
	if !level.Known() || p.offWater(control) >= p.offWater(level) {
		return control
	}
	return level
}

func (p *part) offWater(level Value) float64 { return math.Abs(level.Number - p.WaterLevel.Value) }

func (p *part) offOutlet() Value {
	held := p.heldBy()
	return outOf(p.offWater(held), p.entry("water_level", p.WaterLevel), held)
}

func (p *part) atOutlet() Value {
	off := p.offOutlet()
	return orUnknown(truth(off.Number <= p.drawing.levelTolerance(), off.Inputs...), off.Lacks)
}

// levelTolerance is how far levels may be off and still be the same.
func (d *drawing) levelTolerance() float64 {
	if d.Tolerances == nil {
		return geometry.Resolution
	}
	return d.Tolerances.Level.Value + geometry.Resolution
}
