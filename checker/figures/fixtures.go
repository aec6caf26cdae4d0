package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var fixtureTable = tabulate(
	List{Name: "fixtures", Doc: "Every fixture that gives greywater.", Subject: "a fixture"},
	(*drawing).fixtures, fixture.subject,
	[]column[fixture]{
		{Field{Name: "kind", Kind: Text, Doc: "The fixture's kind."}, func(f fixture) Value { return text(f.Kind) }},
		{Field{Name: "on_system", Kind: Truth, Doc: "Whether any of its water reaches a part that stores, treats or takes up greywater."}, fixture.onSystem},
		{Field{Name: "flow_by_occupants", Kind: Number, Dimension: quantity.Flow,
			Doc:     "Its share of the greywater a day by occupants; 0 when it is not on the system.",
			Formula: "occupants × 25 gal/d of bathing or 15 gal/d of laundry ÷ fixtures of that stream on the system", Source: householdFlow}, fixture.flowByOccupants},
		{Field{Name: "flow_by_fixture", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater that it gives a day by its use.",
			Formula: "volume for each use × uses a day"}, fixture.flowByUse},
		{Field{Name: "stated_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater that it gives a day, as stated."},
			func(f fixture) Value { return f.entry("flow", f.Flow) }},
		{Field{Name: "surge_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water that comes at once: that of one use, as stated."},
			func(f fixture) Value { return f.entry("volume_per_use", f.VolumePerUse) }},
		{Field{Name: "discharge_rate", Kind: Number, Dimension: quantity.PeakFlow, Doc: "How fast it drains while it drains, as stated."},
			func(f fixture) Value { return f.entry("discharge_rate", f.DischargeRate) }},
		{Field{Name: "surge_time", Kind: Number, Dimension: quantity.Duration, Doc: "How long one use drains.",
			Formula: "volume for each use ÷ discharge rate"}, fixture.surgeTime},
		{Field{Name: "fixture_units_ipc", Kind: Number, Dimension: quantity.Number, Doc: "Drainage fixture units that the International Plumbing Code counts for it.",
			Formula: "read from the table by kind", Source: cited(hydraulics.IPCFixtureUnits.Source)},
			func(f fixture) Value { return unitsOf(f.Source, hydraulics.IPCFixtureUnits) }},
		{Field{Name: "fixture_units_upc", Kind: Number, Dimension: quantity.Number, Doc: "Drainage fixture units that the Uniform Plumbing Code counts for it.",
			Formula: "read from the table by kind", Source: cited(hydraulics.UPCFixtureUnits.Source)},
			func(f fixture) Value { return unitsOf(f.Source, hydraulics.UPCFixtureUnits) }},
		{Field{Name: "fixture_units_by_rate", Kind: Number, Dimension: quantity.Number,
			Doc:     "Drainage fixture units that the Uniform Plumbing Code counts for its discharge rate, as that of a flow that comes now and then.",
			Formula: "read from the table by discharge rate", Source: intermittentFlow}, fixture.unitsByRate},
		{Field{Name: "stated_fixture_units", Kind: Number, Dimension: quantity.Number, Doc: "Drainage fixture units, as stated."}, fixture.statedUnits},
	},
)

var intermittentFlow = Citation{Title: hydraulics.IntermittentFlowSource, Standing: FromMemory}

// cited gives a source of a formula as a citation; the standings are the same
// words.
func cited(s hydraulics.Source) Citation {
	return Citation{Title: s.Title, Standing: Standing(s.Standing)}
}

// fixture is a source of greywater.
type fixture struct {
	*design.Source
	streams *streams
	number  int     // among the sources
	share   float64 // of the flow by occupants, m³/s
}

func (d *drawing) fixtures() []fixture {
	shares := d.streams.shared(d.Design)
	var all []fixture
	for i := range d.Sources {
		if s := &d.Sources[i]; waterOf[s.Kind] == greywater {
			all = append(all, fixture{s, d.streams, i, shares[i]})
		}
	}
	return all
}

func (f fixture) subject() Subject { return Subject{f.ID, []string{f.ID}, []string{f.Pointer}} }

func (f fixture) onSystem() Value {
	on := slices.Contains(f.streams.bathing, f.number) || slices.Contains(f.streams.laundry, f.number)
	return orUnknown(truth(on, entryOf(f.Source, "to")), f.streams.lacks)
}

func (f fixture) flowByOccupants() Value {
	return orUnknown(number(f.share, f.streams.inputs...), f.streams.lacks)
}

func (f fixture) flowByUse() Value { return flowByUse(f.Source) }

// flowByUse is the daily flow of a source by what its uses give.
func flowByUse(s *design.Source) Value {
	volume, uses := fixture{Source: s}.entry("volume_per_use", s.VolumePerUse), counted(s, "uses_per_day", s.UsesPerDay)
	return outOf(volume.Number*uses.Number/day, volume, uses)
}

// day is the seconds of a day.
const day = 86400

func (f fixture) surgeTime() Value {
	var lacks []Lack
	if !f.VolumePerUse.Given() {
		lacks = append(lacks, lackOfSource(f.Source, "volume_per_use"))
	}
	if f.DischargeRate.Value <= 0 {
		lacks = append(lacks, lackOfSource(f.Source, "discharge_rate"))
	}
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	return number(f.VolumePerUse.Value/f.DischargeRate.Value, entryOf(f.Source, "volume_per_use"), entryOf(f.Source, "discharge_rate"))
}

func (f fixture) unitsByRate() Value {
	if !f.DischargeRate.Given() {
		return unknown(lackOfSource(f.Source, "discharge_rate"))
	}
	units, ok := hydraulics.IntermittentUnits(f.DischargeRate.Value)
	if !ok {
		return unknown(beyond(lackOfSource(f.Source, "discharge_rate"), intermittentFlow.Title))
	}
	return number(float64(units), entryOf(f.Source, "discharge_rate"))
}

func (f fixture) statedUnits() Value {
	return counted(f.Source, "fixture_units", f.FixtureUnits)
}

// counted gives an entry of a source that is a plain number.
func counted(s *design.Source, entry string, x *float64) Value {
	if x == nil {
		return unknown(lackOfSource(s, entry))
	}
	return number(*x, entryOf(s, entry))
}

func (f fixture) entry(name string, q quantity.Quantity) Value {
	if !q.Given() {
		return unknown(lackOfSource(f.Source, name))
	}
	return number(q.Value, entryOf(f.Source, name))
}

// unitsOf counts a source by a code's table; one that the table does not have,
// as drawn.
func unitsOf(s *design.Source, code hydraulics.FixtureUnits) Value {
	if units, ok := code.Of(hydraulics.Fixture(s.Kind)); ok {
		return number(float64(units), entryOf(s, "kind"))
	}
	return counted(s, "fixture_units", s.FixtureUnits)
}

// sum adds figures up; it is unknown when any of them is.
func sum(values ...Value) Value {
	total := 0.0
	for _, v := range values {
		total += v.Number
	}
	return outOf(total, values...)
}

// outOf is a number worked out from other figures: it has their inputs, and is
// unknown when any of them is.
func outOf(x float64, values ...Value) Value {
	var lacks []Lack
	inputs := 0
	for _, v := range values {
		for _, l := range v.Lacks {
			if !slices.Contains(lacks, l) {
				lacks = append(lacks, l)
			}
		}
		inputs += len(v.Inputs)
	}
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	all := make([]Input, 0, inputs)
	for _, v := range values {
		all = append(all, v.Inputs...)
	}
	return number(x, all...)
}

// times multiplies a figure by a constant.
func times(v Value, factor float64, constant Input) Value {
	return outOf(v.Number*factor, v, Value{Inputs: []Input{constant}})
}

// entryOf names an entry of a source as an input.
func entryOf(s *design.Source, entry string) Input {
	return Input{Name: entry + " of " + s.ID, Pointer: s.Pointer + "/" + entry}
}

// lackOfSource names an entry that a source does not have.
func lackOfSource(s *design.Source, entry string) Lack {
	return Lack{s.Pointer + "/" + entry, entry + " of " + s.ID}
}

// beyond words an entry that is given but lies outside what a formula or table
// holds for.
func beyond(l Lack, of string) Lack {
	return Lack{l.Pointer, l.Entry + " within the range of " + of}
}
