package figures

import (
	"greysill/checker/climate"
	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var pondTable = tabulate(
	List{Name: "ponds", Doc: "Every pond.", Subject: "a pond"},
	(*drawing).ponds, (*pondWater).subject,
	[]column[*pondWater]{
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of the water's surface.", Formula: surfaceFormula, Source: prismoidal},
			func(b *pondWater) Value { return b.surface }},
		{Field{Name: "greatest_depth", Kind: Number, Dimension: quantity.Length, Doc: "Greatest depth of the water.",
			Formula: "water level − lowest level of the floor"}, func(b *pondWater) Value { return b.depth }},
		{Field{Name: "volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water that it holds at its water level.", Formula: stageFormula, Source: prismoidal},
			func(b *pondWater) Value { return b.volume }},
		{Field{Name: "volume_by", Kind: Text, Doc: "What shows the volume.", Words: []string{sidesDrawn, volumeDrawn}}, func(b *pondWater) Value { return b.by }},
		{Field{Name: "flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the warm season.",
			Formula: flowFormula, Source: householdFlow}, func(b *pondWater) Value { return b.mean }},
		{Field{Name: "turnover", Kind: Number, Dimension: quantity.Duration, Doc: "Time in which that flow fills its volume once; rain and evaporation are left out.",
			Formula: "volume ÷ flow", Source: detention}, (*pondWater).turnover},
		{Field{Name: "freeboard", Kind: Number, Dimension: quantity.Length, Doc: "Height of the rim over the water level; negative where the water would stand over it.",
			Formula: "rim level − water level"}, (*pondWater).freeboard},
		{Field{Name: "settled_first", Kind: Truth,
			Doc: "Whether all water used in the house and all storm water that reaches it, in any season or by any overflow, has come through a settling basin " +
				"or a planted gravel bed; what a bed overflows has not. True when none reaches it."}, (*pondWater).settledFirst},
		{Field{Name: "unsettled_sources", Kind: Text, Doc: "The sources and storm inflows whose water reaches it unsettled; \"none\" where none does."},
			(*pondWater).unsettledSources},
		{Field{Name: "inside_slope", Kind: Number, Dimension: quantity.Slope, Doc: "How steep its sides are below the rim: rise over run."},
			func(b *pondWater) Value { return b.entry("side_slope", b.SideSlope) }},
		{Field{Name: "climb_out_by", Kind: Text, Words: []string{byShelf, bySides}, Doc: "What somebody who falls in climbs out by: a shelf along its edge where one is drawn, with its width and the depth of water over it, else its sides."},
			(*pondWater).climbOut},
		{Field{Name: "shelf_width", Kind: Number, Dimension: quantity.Length, Doc: "Width of that shelf."},
			func(b *pondWater) Value {
				return b.shelf("shelf_width", func(e *design.Edge) quantity.Quantity { return e.ShelfWidth })
			}},
		{Field{Name: "shelf_depth", Kind: Number, Dimension: quantity.Length, Doc: "Depth of water over it."},
			func(b *pondWater) Value {
				return b.shelf("shelf_depth", func(e *design.Edge) quantity.Quantity { return e.ShelfDepth })
			}},
		{Field{Name: "has_embankment", Kind: Truth, Doc: "Whether an embankment is drawn."}, func(b *pondWater) Value { return b.hasBank() }},
		{Field{Name: "embankment_height", Kind: Number, Dimension: quantity.Length, Doc: "Height of its embankment over the outside toe; 0 where none is drawn and the rim stands no higher than the ground.",
			Formula: "level of the top − level of the toe"}, (*pondWater).bankHeight},
		{Field{Name: "embankment_top_width", Kind: Number, Dimension: quantity.Length, Doc: "Width of the embankment's top."}, (*pondWater).bankWidth},
		{Field{Name: "outside_slope", Kind: Number, Dimension: quantity.Slope, Doc: "How steep the outside of its embankment is: rise over run."}, (*pondWater).outsideSlope},
		{Field{Name: "embankment_runs", Kind: Number, Dimension: quantity.Number,
			Doc:     "Run of both sides of its embankment together for a rise of 1; the more, the flatter.",
			Formula: "1 ÷ inside slope + 1 ÷ outside slope"}, (*pondWater).bankRuns},
		{Field{Name: "least_ice", Kind: Number, Dimension: quantity.Length, Doc: "Least ice of the winter, by a snow-covered lake. No figure here says that ice bears anybody.",
			Formula: iceFormula, Source: ice}, func(b *pondWater) Value { return b.ice(iceGrowth.least) }},
		{Field{Name: "greatest_ice", Kind: Number, Dimension: quantity.Length, Doc: "Greatest ice of the winter, by a windy lake without snow. No figure here says that ice bears anybody.",
			Formula: iceFormula, Source: ice}, func(b *pondWater) Value { return b.ice(iceGrowth.greatest) }},
		{Field{Name: "least_winter_depth", Kind: Number, Dimension: quantity.Length, Doc: "Depth of water left under the greatest ice at the deepest place; 0 or less where it freezes to the floor.",
			Formula: "greatest depth − greatest ice"}, (*pondWater).winterDepth},
		{Field{Name: "water_under_ice", Kind: Truth, Doc: "Whether any water is left under the greatest ice at the deepest place."}, (*pondWater).waterUnderIce},
		{Field{Name: "stocked", Kind: Truth, Doc: "Whether fish are drawn in it."}, (*pondWater).stocked},
		{Field{Name: "fish", Kind: Text, Doc: "The fish drawn in it; \"none\" where none are."}, (*pondWater).fish},
		{Field{Name: "has_stocking_permit", Kind: Truth, Doc: "Whether the drawing names the fish and wildlife authority's leave to keep them."}, (*pondWater).hasStockingPermit},
		{Field{Name: "unionized_ammonia_by_emerson", Kind: Number, Dimension: quantity.Density,
			Doc:     "Un-ionized ammonia, as nitrogen, in its water at its warmest.",
			Formula: "total ammonia ÷ (1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92 ÷ (temperature + 273.15)", Source: emerson}, func(b *pondWater) Value { return b.ammonia(treatment.Emerson1975.Unionized) }},
		{Field{Name: "unionized_ammonia_by_trussell", Kind: Number, Dimension: quantity.Density,
			Doc:     "Un-ionized ammonia, as nitrogen, in its water at its warmest, by the older table.",
			Formula: "total ammonia × the share that the table gives by pH and temperature", Source: trussell}, func(b *pondWater) Value { return b.ammonia(treatment.TrussellUnionized) }},
		{Field{Name: "oxygen_saturation", Kind: Number, Dimension: quantity.Density,
			Doc:     "Oxygen that its water can hold at its warmest, in balance with the air of its altitude; at night and under ice there is less.",
			Formula: oxygenFormula, Source: oxygen}, (*pondWater).oxygen},
	},
)

const (
	iceFormula    = "coefficient × √freezing index"
	oxygenFormula = "saturation at sea level × (pressure − vapour pressure) ÷ (101,325 Pa − vapour pressure)"
)

var (
	ice      = Citation{Title: climate.IceSource, Standing: Published}
	emerson  = Citation{Title: treatment.Emerson1975.Source, Standing: Standing(treatment.Emerson1975.Standing)}
	trussell = Citation{Title: treatment.TrussellSource, Standing: Published}
	oxygen   = Citation{Title: treatment.OxygenSource + "; " + treatment.OxygenPressureSource + "; pressure: " + climate.PressureSource, Standing: Published}
)

// iceGrowth has the least and the greatest coefficient of ice.
var iceGrowth = rangeOfIce()

func rangeOfIce() (r struct{ least, greatest float64 }) {
	r.least = climate.IceCoefficients[0].Least
	for _, c := range climate.IceCoefficients {
		r.least, r.greatest = min(r.least, c.Least), max(r.greatest, c.Most)
	}
	return r
}

// pondWater is a pond with its water.
type pondWater struct {
	*vessel
	mean Value // flow
}

func (d *drawing) ponds() []*pondWater {
	parts := d.ofKind(pond)
	if len(parts) == 0 {
		return nil
	}
	flows := d.flows()
	all := make([]*pondWater, len(parts))
	for i, p := range parts {
		all[i] = &pondWater{newVessel(p), flows[p.node-len(d.Sources)].greywater(warm)}
	}
	return all
}

func (b *pondWater) turnover() Value {
	return worked(b.noWater("greywater"), func() (float64, error) { return treatment.Detention(b.volume.Number, b.mean.Number) }, b.volume, b.mean)
}

func (p *part) freeboard() Value {
	rim, level := p.entry("rim_level", p.RimLevel), p.entry("water_level", p.WaterLevel)
	return outOf(rim.Number-level.Number, rim, level)
}

func (b *pondWater) ice(coefficient float64) Value {
	index, _, _ := b.drawing.freezingIndex()
	return worked(Lack{climatePointer + "/freezing_index", "freezing_index of the site's climate"},
		func() (float64, error) { return climate.IceThickness(coefficient, index.Number) }, index)
}

func (b *pondWater) winterDepth() Value {
	thick := b.ice(iceGrowth.greatest)
	return outOf(b.depth.Number-thick.Number, b.depth, thick)
}

func (b *pondWater) waterUnderIce() Value {
	left := b.winterDepth()
	return orUnknown(truth(left.Number > geometry.Resolution, left.Inputs...), left.Lacks)
}

func (b *pondWater) ammonia(share func(pH, celsius float64) (float64, error)) Value {
	pH, warm, total := unknown(b.lack("ph")), b.entry("warm_water", b.WarmWater), b.entry("ammonia", b.Ammonia)
	if b.PH > 0 {
		pH = number(b.PH, b.drawn("ph"))
	}
	return worked(Lack{b.Pointer + "/ph", "ph and warm_water of " + b.ID}, func() (float64, error) {
		free, err := share(pH.Number, warm.Number)
		return free * total.Number, err
	}, pH, warm, total)
}

func (b *pondWater) oxygen() Value {
	warm, altitude := b.entry("warm_water", b.WarmWater), b.drawing.altitude()
	return worked(b.lack("warm_water"), func() (float64, error) {
		pressure, err := climate.Pressure(altitude.Number)
		if err != nil {
			return 0, err
		}
		return treatment.OxygenSaturationAt(warm.Number, pressure)
	}, warm, altitude)
}
