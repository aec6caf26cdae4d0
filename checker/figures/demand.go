package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var demandTable = tabulate(
	List{Name: "demand", Doc: "What the fixtures on the system give together, on each basis.", Subject: "the system"},
	func(d *drawing) []*drawing { return []*drawing{d} },
	func(*drawing) Subject { return Subject{Name: "the system", Pointers: []string{""}} },
	[]column[*drawing]{
		{Field{Name: "daily_flow_by_occupants", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day, counted by occupants.",
			Formula: "occupants × (25 gal/d for bathing if on the system + 15 gal/d for laundry if on the system)", Source: householdFlow}, (*drawing).flowByOccupants},
		{Field{Name: "daily_flow_by_fixture", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day, counted by the use of each fixture on the system.",
			Formula: "Σ volume for each use × uses a day"}, (*drawing).flowByFixture},
		{Field{Name: "utah_flow", Kind: Number, Dimension: quantity.Flow,
			Doc: "Greywater a day that Utah's tables count by bedrooms, and by the fixtures where only bathing or only laundry is on the system. " +
				"A dwelling of fewer than two bedrooms counts as one of two.",
			Formula: "160 gal/d for two bedrooms, 240 for three and 40 for each further one; of a part of it, for each bedroom, " +
				"30 gal/d for laundry, 50 for showers and bathtubs, 5 for washbasins, if on the system", Source: utahFlow}, (*drawing).utahFlow},
		{Field{Name: "utah_flow_share", Kind: Number, Dimension: quantity.Share,
			Doc:     "The flow by occupants, which everything is worked out for, as a share of what Utah's tables count.",
			Formula: "flow by occupants ÷ flow by Utah's tables", Source: utahFlow}, (*drawing).utahFlowShare},
		{Field{Name: "stated_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day, as stated for the dwelling."}, (*drawing).statedFlow},
		{Field{Name: "states_flow", Kind: Truth, Doc: "Whether a greywater flow is stated for the dwelling."},
			func(d *drawing) Value { return truth(d.Dwelling.StatedFlow.Given()) }},
		{Field{Name: "stated_share", Kind: Number, Dimension: quantity.Share, Doc: "The stated flow as a share of the flow by occupants.",
			Formula: "stated flow ÷ flow by occupants", Source: householdFlow}, (*drawing).statedShare},
		{Field{Name: "laundry_surge_volume", Kind: Number, Dimension: quantity.Volume,
			Doc:     "Water that comes at once when every laundry fixture on the system lets one use go; 0 when none is on it.",
			Formula: "Σ volume for each use"}, (*drawing).laundrySurge},
		{Field{Name: "laundry_surge_rate", Kind: Number, Dimension: quantity.PeakFlow, Doc: "How fast that water comes; 0 when no laundry is on the system.",
			Formula: "Σ discharge rate"}, (*drawing).laundryRate},
		{Field{Name: "fixture_units_ipc", Kind: Number, Dimension: quantity.Number,
			Doc:     "Drainage fixture units of the fixtures on the system by the International Plumbing Code.",
			Formula: "Σ units of each fixture", Source: cited(hydraulics.IPCFixtureUnits.Source)},
			func(d *drawing) Value { return d.units(hydraulics.IPCFixtureUnits) }},
		{Field{Name: "fixture_units_upc", Kind: Number, Dimension: quantity.Number,
			Doc:     "Drainage fixture units of the fixtures on the system by the Uniform Plumbing Code.",
			Formula: "Σ units of each fixture", Source: cited(hydraulics.UPCFixtureUnits.Source)},
			func(d *drawing) Value { return d.units(hydraulics.UPCFixtureUnits) }},
		{Field{Name: "peak_flow_ipc", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "Peak flow of the fixtures on the system, all draining at once, by the International Plumbing Code's conversion.",
			Formula: "Σ International Plumbing Code units × ½ gal/min", Source: cited(hydraulics.IPCUnitFlow.Source)},
			func(d *drawing) Value { return d.peak(hydraulics.IPCUnitFlow, halfGallon) }},
		{Field{Name: "peak_flow_chicago", Kind: Number, Dimension: quantity.PeakFlow,
			Doc: "Peak flow of the fixtures on the system, all draining at once, by the Chicago Plumbing Code's conversion, which is twice the other; " +
				"the units are those of the International Plumbing Code, which it follows.",
			Formula: "Σ International Plumbing Code units × 1 gal/min", Source: cited(hydraulics.ChicagoUnitFlow.Source)},
			func(d *drawing) Value { return d.peak(hydraulics.ChicagoUnitFlow, oneGallon) }},
	},
)

// The flows of one fixture unit as inputs.
var (
	halfGallon = Input{Name: "flow of one fixture unit", Value: "½ gal/min"}
	oneGallon  = Input{Name: "flow of one fixture unit", Value: "1 gal/min"}
)

// overFixtures adds up a figure over some sources, once it is known which are
// on the system.
func (d *drawing) overFixtures(numbers []int, figure func(*design.Source) Value) Value {
	values := make([]Value, len(numbers))
	for k, i := range numbers {
		values[k] = figure(&d.Sources[i])
	}
	return orUnknown(sum(values...), d.streams.lacks)
}

func (d *drawing) flowByFixture() Value { return d.overFixtures(d.streams.all(), flowByUse) }

// all are the sources on the system.
func (s *streams) all() []int { return slices.Concat(s.bathing, s.laundry) }

func (d *drawing) statedFlow() Value {
	if !d.Dwelling.StatedFlow.Given() {
		return unknown(Lack{"/dwelling/stated_flow", "stated_flow of the dwelling"})
	}
	return number(d.Dwelling.StatedFlow.Value, Input{Name: "stated flow", Pointer: "/dwelling/stated_flow"})
}

func (d *drawing) statedShare() Value {
	stated, estimate := d.statedFlow(), d.flowByOccupants()
	known := outOf(0, stated, estimate)
	switch {
	case !known.Known():
		return known
	case estimate.Number == 0:
		return unknown(Lack{"/sources", "a source of greywater that is on the system"})
	}
	return number(stated.Number/estimate.Number, known.Inputs...)
}

func (d *drawing) laundrySurge() Value {
	return d.overFixtures(d.streams.laundry, func(s *design.Source) Value { return fixture{Source: s}.entry("volume_per_use", s.VolumePerUse) })
}

func (d *drawing) laundryRate() Value {
	return d.overFixtures(d.streams.laundry, func(s *design.Source) Value { return fixture{Source: s}.entry("discharge_rate", s.DischargeRate) })
}

func (d *drawing) units(code hydraulics.FixtureUnits) Value {
	return d.overFixtures(d.streams.all(), func(s *design.Source) Value { return unitsOf(s, code) })
}

func (d *drawing) peak(one hydraulics.UnitFlow, constant Input) Value {
	return times(d.units(hydraulics.IPCFixtureUnits), one.PerUnit, constant)
}
