package figures

import (
	"slices"
	"strconv"

	"greysill/checker/design"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var stormTable = tabulate(
	List{Name: "storms", Doc: "Every storm inflow and roof drain, in the design storm.", Subject: "a place where rain runs off"},
	(*drawing).storms, (*storm).subject,
	[]column[*storm]{
		{Field{Name: "kind", Kind: Text, Doc: "What it is.", Words: []string{stormInflow, roofDrain}}, func(s *storm) Value { return text(s.kind) }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Catchment or roof area in plan that drains to it."},
			func(s *storm) Value { return s.area }},
		{Field{Name: "least_coefficient", Kind: Number, Dimension: quantity.Number,
			Doc:     "Least share of the rain that runs off: as drawn; of a roof drain the low end of the table.",
			Formula: "read from the table for a roof", Source: roofRange}, func(s *storm) Value { return s.least }},
		{Field{Name: "greatest_coefficient", Kind: Number, Dimension: quantity.Number,
			Doc:     "Greatest share of the rain that runs off: as drawn; of a roof drain all of it, as codes that size roof drains take it.",
			Formula: "1 for a roof", Source: roofFlow}, func(s *storm) Value { return s.greatest }},
		{Field{Name: "intensity", Kind: Number, Dimension: quantity.RainRate, Doc: "Intensity of the design storm."}, (*storm).intensity},
		{Field{Name: "least_peak_flow", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "Peak flow with the least coefficient, the whole area draining at once.",
			Formula: peakFormula, Source: rational}, func(s *storm) Value { return s.peak(s.least) }},
		{Field{Name: "greatest_peak_flow", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "Peak flow with the greatest coefficient, the whole area draining at once.",
			Formula: peakFormula, Source: rational}, func(s *storm) Value { return s.peak(s.greatest) }},
	},
)

const (
	roofDrain   = "roof drain"
	peakFormula = "coefficient × intensity × area"
)

var (
	rational = Citation{Title: hydraulics.RationalSource, Standing: Published}
	roofFlow = Citation{Title: "all rain on the roof's area in plan, as plumbing codes size roof drains", Standing: Practice}
)

// roof is the runoff coefficient of roofs that has the widest range.
var roof = hydraulics.RunoffCoefficients[slices.IndexFunc(hydraulics.RunoffCoefficients,
	func(c hydraulics.RunoffCoefficient) bool { return c.Surface == "roof" })]

var roofRange = cited(roof.Source)

// storm is a place where the rain of the design storm comes in.
type storm struct {
	*drawing
	id, kind, pointer string
	node              int
	area              Value
	least, greatest   Value // coefficient
}

func (d *drawing) storms() []*storm {
	var all []*storm
	for _, p := range d.ofKind(stormInflow) {
		all = append(all, p.storm())
	}
	for i := range d.Sources {
		if d.Sources[i].Kind == roofDrain {
			all = append(all, d.roof(i))
		}
	}
	return all
}

func (p *part) storm() *storm {
	s := &storm{drawing: p.drawing, id: p.ID, kind: p.Kind, pointer: p.Pointer, node: p.node}
	s.area = number(p.Catchment.Value, p.drawn("catchment"))
	if !p.Catchment.Given() {
		s.area = unknown(p.lack("catchment"))
	}
	s.least = unknown(p.lack("runoff_coefficient"))
	if p.RunoffCoefficient != nil {
		s.least = number(*p.RunoffCoefficient, p.drawn("runoff_coefficient"))
	}
	s.greatest = s.least
	return s
}

func (d *drawing) roof(i int) *storm {
	r := &d.Sources[i]
	return &storm{drawing: d, id: r.ID, kind: r.Kind, pointer: r.Pointer, node: i, area: roofArea(r),
		least:    ofRoof(roof.Range.Low),
		greatest: ofRoof(1)}
}

func roofArea(r *design.Source) Value {
	return fixture{Source: r}.entry("roof_area", r.RoofArea)
}

func ofRoof(coefficient float64) Value {
	return number(coefficient, Input{Name: "coefficient of a " + roof.Surface, Value: strconv.FormatFloat(coefficient, 'g', -1, 64)})
}

func (s *storm) subject() Subject { return Subject{s.id, []string{s.id}, []string{s.pointer}} }

const intensityPointer = "/site/climate/design_storm/intensity"

func (s *storm) intensity() Value {
	switch c := s.Site.Climate; {
	case c == nil || c.DesignStorm == nil || !c.DesignStorm.Intensity.Given():
		return unknown(Lack{intensityPointer, "intensity of the site's design_storm"})
	case c.DesignStorm.Intensity.Value <= 0:
		return unknown(Lack{intensityPointer, "intensity of the site's design_storm, more than 0"})
	}
	return number(s.Site.Climate.DesignStorm.Intensity.Value, Input{Name: "intensity", Pointer: intensityPointer})
}

func (s *storm) peak(coefficient Value) Value {
	intensity := s.intensity()
	known := outOf(0, coefficient, intensity, s.area)
	if !known.Known() {
		return known
	}
	peak, err := hydraulics.RationalPeak(coefficient.Number, intensity.Number, s.area.Number)
	if err != nil {
		return unknown(beyond(Lack{s.pointer, "area and runoff coefficient of " + s.id}, hydraulics.RationalSource))
	}
	return number(peak, known.Inputs...)
}
