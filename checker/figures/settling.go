package figures

import (
	"strconv"

	"greysill/checker/design"
	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var settlingTable = tabulate(
	List{Name: "settling", Doc: "Every settling basin and surge tank with the water that runs through it in the warm season.", Subject: "a settling basin or surge tank"},
	(*drawing).settling, (*settling).subject,
	[]column[*settling]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind.", Words: []string{settlingBasin, surgeTank}}, func(s *settling) Value { return s.kind() }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of the water's surface.", Formula: surfaceFormula, Source: prismoidal},
			func(s *settling) Value { return s.surface }},
		{Field{Name: "length_to_width", Kind: Number, Dimension: quantity.Number, Doc: "Length of its outline for each unit of width.",
			Formula: "longer side ÷ shorter side of the smallest rectangle round the outline"}, (*settling).lengthToWidth},
		{Field{Name: "water_depth", Kind: Number, Dimension: quantity.Length, Doc: "Greatest depth of the water.",
			Formula: "water level − lowest level of the floor"}, func(s *settling) Value { return s.depth }},
		{Field{Name: "volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water that it holds at its water level.", Formula: stageFormula, Source: prismoidal},
			func(s *settling) Value { return s.volume }},
		{Field{Name: "volume_by", Kind: Text, Doc: "What shows the volume.", Words: []string{sidesDrawn, volumeDrawn}}, func(s *settling) Value { return s.by }},
		{Field{Name: "volume_per_occupant", Kind: Number, Dimension: quantity.Volume,
			Doc: "Water that it holds for each occupant that the flow is worked out for.", Formula: "volume ÷ occupants"}, (*settling).volumePerOccupant},
		{Field{Name: "flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the warm season.",
			Formula: flowFormula, Source: householdFlow}, func(s *settling) Value { return s.mean }},
		{Field{Name: "detention", Kind: Number, Dimension: quantity.Duration, Doc: "Nominal time that water stays at the mean flow.",
			Formula: "volume ÷ flow", Source: detention}, (*settling).detention},
		{Field{Name: "surface_loading", Kind: Number, Dimension: quantity.Loading, Doc: "Flow for each unit of surface, spread evenly over the day.",
			Formula: "flow ÷ area", Source: loading}, func(s *settling) Value { return s.loading(s.mean) }},
		{Field{Name: "surge_rate", Kind: Number, Dimension: quantity.PeakFlow,
			Doc: "What reaches it while every laundry fixture on the system drains, by the shares of the ways in the warm season.", Formula: surgeFormula},
			func(s *settling) Value { return s.surge }},
		{Field{Name: "surge_surface_loading", Kind: Number, Dimension: quantity.Loading, Doc: "Flow for each unit of surface while the laundry drains.",
			Formula: "surge rate ÷ area", Source: loading}, func(s *settling) Value { return s.loading(s.surge) }},
		{Field{Name: "water_temperature", Kind: Number, Dimension: quantity.Temperature,
			Doc: "Temperature that its water is taken to have: the mean air temperature of the coldest month outside the bypass season, and not less than 0 °C; " +
				"the colder, the slower grains sink."}, func(s *settling) Value { return s.temperature }},
		{Field{Name: "smallest_grain_kept", Kind: Number, Dimension: quantity.GrainSize,
			Doc:     "Diameter of the smallest mineral grain that it keeps whole at the mean flow; lint and soap are lighter and settle worse.",
			Formula: grainFormula, Source: stokes}, func(s *settling) Value { return s.smallest(s.loading(s.mean), "greywater") }},
		{Field{Name: "smallest_grain_kept_in_surge", Kind: Number, Dimension: quantity.GrainSize,
			Doc:     "Diameter of the smallest mineral grain that it keeps whole while the laundry drains.",
			Formula: grainFormula, Source: stokes}, func(s *settling) Value { return s.smallest(s.loading(s.surge), "laundry water") }},
		{Field{Name: "largest_grain_by_stokes", Kind: Number, Dimension: quantity.GrainSize,
			Doc:     "Diameter up to which Stokes' law holds for such grains: the law says too much of greater ones.",
			Formula: "∛(18 × viscosity × kinematic viscosity ÷ (9.80665 m/s² × (density of the grain − density of water))), at a Reynolds number of 1", Source: stokes},
			(*settling).largest},
		{Field{Name: "sludge_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Room for sludge up to the depth at which it is emptied.",
			Formula: "volume between the floor and the sludge depth over it, by the sides as drawn; else area × sludge depth", Source: prismoidal}, (*settling).sludgeRoom},
		{Field{Name: "sludge_share", Kind: Number, Dimension: quantity.Number, Doc: "Room for sludge for each unit of the water that it holds.",
			Formula: "sludge volume ÷ volume"}, (*settling).sludgeShare},
		{Field{Name: "least_clean_out_interval", Kind: Number, Dimension: quantity.Duration,
			Doc:     "Time in which sludge fills that room, by the fastest published rate; the rates are of whole sewage, and greywater brings less.",
			Formula: sludgeFormula, Source: sludgeSource}, func(s *settling) Value { return s.interval(fastest) }},
		{Field{Name: "least_clean_out_interval_source", Kind: Text, Doc: "Which source gives the least."},
			func(s *settling) Value { return sludgeNamed(fastest) }},
		{Field{Name: "greatest_clean_out_interval", Kind: Number, Dimension: quantity.Duration,
			Doc:     "Time in which sludge fills that room, by the slowest published rate.",
			Formula: sludgeFormula, Source: sludgeSource}, func(s *settling) Value { return s.interval(slowest) }},
		{Field{Name: "greatest_clean_out_interval_source", Kind: Text, Doc: "Which source gives the greatest."},
			func(s *settling) Value { return sludgeNamed(slowest) }},
		{Field{Name: "clean_out_interval", Kind: Number, Dimension: quantity.Duration, Doc: "How often its sludge is taken out, as drawn."},
			func(s *settling) Value { return s.entry("clean_out_interval", s.CleanOut) }},
		{Field{Name: "sludge_room_filled", Kind: Number, Dimension: quantity.Number,
			Doc:     "Share of the room for sludge that has filled when it is taken out, by the fastest published rate; more than 1 where it would overfill.",
			Formula: "clean-out interval ÷ least clean-out interval", Source: sludgeSource}, (*settling).roomFilled},
		{Field{Name: "accessible", Kind: Truth, Doc: "Whether it can be reached and worked without digging or tools."}, (*settling).reachable},
	},
)

const (
	surgeFormula  = "Σ discharge rate of each laundry fixture × the share of its water that reaches the part"
	grainFormula  = "√(18 × viscosity × surface loading ÷ (9.80665 m/s² × (density of the grain − density of water)))"
	sludgeFormula = "room for sludge ÷ (occupants × rate of the source)"
)

var (
	stokes       = Citation{Title: treatment.StokesSource + "; " + treatment.IdealSource + "; viscosity: " + treatment.ViscositySource, Standing: FromMemory}
	sludgeSource = Citation{Title: "Published rates of sludge; the source is named beside the value", Standing: Published}
)

// mineral is the density of mineral grains, that of quartz; common practice, no
// source.
const mineral = 2650 // kg/m³

var mineralGrain = Input{Name: "density of the grain", Value: "2,650 kg/m³"}

// fastest and slowest are the sludge rates that lie farthest apart.
var fastest, slowest = sludgeRates()

func sludgeRates() (most, least treatment.SludgeRate) {
	most, least = treatment.SludgeRates[0], treatment.SludgeRates[0]
	for _, r := range treatment.SludgeRates {
		if r.Rate > most.Rate {
			most = r
		}
		if r.Rate < least.Rate {
			least = r
		}
	}
	return most, least
}

func sludgeNamed(r treatment.SludgeRate) Value {
	return text(r.Name + ", " + r.Water + ": " + r.Source + " (" + r.Standing + ")")
}

// settling is a settling basin or a surge tank.
type settling struct {
	*vessel
	mean, surge Value // of flow
	temperature Value // of the water
}

func (d *drawing) settling() []*settling {
	parts := d.ofKind(settlingBasin, surgeTank)
	if len(parts) == 0 {
		return nil
	}
	flows := d.flows()
	surge := d.surge("discharge_rate", func(s *design.Source) quantity.Quantity { return s.DischargeRate })
	_, coldest := d.waterTemperatures()
	all := make([]*settling, len(parts))
	for i, p := range parts {
		all[i] = &settling{newVessel(p), flows[p.node-len(d.Sources)].greywater(warm), surge(p), coldest}
	}
	return all
}

// surge follows what every laundry fixture on the system gives at once.
func (d *drawing) surge(entry string, of func(*design.Source) quantity.Quantity) func(*part) Value {
	var given []gift
	for _, i := range d.streams.laundry {
		given = append(given, gift{i, fixture{Source: &d.Sources[i]}.entry(entry, of(&d.Sources[i]))})
	}
	reaching := d.carried(given)
	return func(p *part) Value { return orUnknown(reaching(p), d.streams.lacks) }
}

// gift is what a node of the network gives.
type gift struct {
	from int
	of   Value
}

// carried follows what some nodes give, by the shares of the ways in the warm
// season, and tells what of it reaches a part. Nothing is taken off for what
// tanks and beds on the way hold back.
func (d *drawing) carried(given []gift) func(*part) Value {
	amounts, met := map[int]float64{}, make([][]bool, len(given))
	var open []int
	for k, g := range given {
		amounts[g.from] = g.of.Number
		met[k] = d.network.downstream(g.from, warm, nil)
		open = append(open, d.network.openEnds(g.from, met[k], nil)...)
	}
	into := d.network.carry(amounts, warm)
	return func(p *part) Value {
		var from []Value
		for k, g := range given {
			if met[k][p.node] {
				from = append(from, g.of)
			}
		}
		return orUnknown(outOf(into[p.node], from...), d.network.lacks(d.network.above(p.node, open)))
	}
}

func (s *settling) volumePerOccupant() Value {
	people := s.drawing.occupants()
	return outOf(s.volume.Number/people.Number, s.volume, people)
}

func (s *settling) detention() Value {
	return worked(s.noWater("greywater"), func() (float64, error) { return treatment.Detention(s.volume.Number, s.mean.Number) }, s.volume, s.mean)
}

// noWater is lacking where a formula needs some flow.
func (p *part) noWater(which string) Lack {
	return Lack{"/sources", "a source of " + which + " that reaches " + p.ID}
}

func (s *settling) loading(flow Value) Value {
	return worked(s.lack("outline"), func() (float64, error) { return treatment.HydraulicLoading(flow.Number, s.surface.Number) }, flow, s.surface)
}

func (s *settling) smallest(loading Value, water string) Value {
	if loading.Known() && loading.Number == 0 {
		return unknown(s.noWater(water))
	}
	return worked(s.lack("outline"), func() (float64, error) {
		water, err := treatment.Water(s.temperature.Number)
		if err != nil {
			return 0, err
		}
		return treatment.SmallestKept(loading.Number, mineral, water)
	}, loading, s.temperature, Value{Inputs: []Input{mineralGrain}})
}

func (s *settling) largest() Value {
	return worked(Lack{monthsOfYear, "mean temperatures"}, func() (float64, error) {
		water, err := treatment.Water(s.temperature.Number)
		if err != nil {
			return 0, err
		}
		return treatment.LargestByStokes(mineral, water)
	}, s.temperature, Value{Inputs: []Input{mineralGrain}})
}

// sludgeRoom follows the sides where they are drawn.
func (s *settling) sludgeRoom() Value {
	depth := s.entry("sludge_depth", s.SludgeDepth)
	if s.by.Text == sidesDrawn {
		top := outOf(s.floor.Number+depth.Number, s.floor, depth)
		if room := s.held((*earthwork.Basin).Volume, top); room.Known() || !top.Known() {
			return room
		}
		return unknown(Lack{s.Pointer + "/sludge_depth", "sludge_depth of " + s.ID + " within the range of its depth"})
	}
	area := s.area()
	if area.Known() && area.Number < geometry.Resolution {
		area = unknown(s.lack("outline"))
	}
	return outOf(area.Number*depth.Number, area, depth)
}

func (s *settling) interval(rate treatment.SludgeRate) Value {
	people, room := s.drawing.occupants(), s.sludgeRoom()
	return worked(s.lack("sludge_depth"), func() (float64, error) {
		return treatment.CleanOutInterval(room.Number, people.Number, rate.Rate)
	}, room, people, Value{Inputs: []Input{{Name: "rate of sludge", Value: litresADay(rate.Rate)}}})
}

func litresADay(rate float64) string {
	return strconv.FormatFloat(rate*1000*day, 'g', 3, 64) + " L/d for each person"
}
