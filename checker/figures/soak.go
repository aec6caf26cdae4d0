package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/dispersal"
	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var soakageTable = tabulate(
	List{Name: "soakage", Doc: "Every mulch basin and infiltration trench with what soaks away there.", Subject: "a mulch basin or infiltration trench"},
	(*drawing).soakage, (*soakage).subject,
	[]column[*soakage]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind.", Words: []string{mulchBasin, trench}}, func(s *soakage) Value { return s.kind() }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of soil that it gives: its outline, or length × width of a trench drawn as a line.",
			Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"}, func(s *soakage) Value { return s.given }},
		{Field{Name: "flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it, in the season that brings more; what only an overflow brings does not count.",
			Formula: flowFormula, Source: householdFlow}, func(s *soakage) Value { return s.flow }},
		{Field{Name: "loading", Kind: Number, Dimension: quantity.Loading, Doc: "Flow a day for each unit of its area.",
			Formula: "flow ÷ area", Source: loading}, func(s *soakage) Value { return s.loading() }},
		{Field{Name: "least_area_wanted", Kind: Number, Dimension: quantity.Area, Doc: "Least area that any of the tables that know the soil wants for the flow.",
			Formula: soilFormula, Source: soilTables}, func(s *soakage) Value { return s.least().wanted }},
		{Field{Name: "least_area_wanted_source", Kind: Text, Doc: "Which table wants the least."}, func(s *soakage) Value { return s.least().named() }},
		{Field{Name: "greatest_area_wanted", Kind: Number, Dimension: quantity.Area, Doc: "Greatest area that any of the tables that know the soil wants for the flow.",
			Formula: soilFormula, Source: soilTables}, func(s *soakage) Value { return s.greatest().wanted }},
		{Field{Name: "greatest_area_wanted_source", Kind: Text, Doc: "Which table wants the most."}, func(s *soakage) Value { return s.greatest().named() }},
		{Field{Name: "utah_area_wanted", Kind: Number, Dimension: quantity.Area, Doc: "Area that Utah's table of loading rates for parts of its kind wants for the flow.",
			Formula: soilFormula, Source: utahTables}, func(s *soakage) Value { return s.byUtah().wanted }},
		{Field{Name: "utah_area_share", Kind: Number, Dimension: quantity.Number, Doc: "Area for each unit of area that Utah's table wants; less than 1 is too small.",
			Formula: "area ÷ area wanted"}, func(s *soakage) Value { return s.byUtah().ratio() }},
		{Field{Name: "outlets", Kind: Number, Dimension: quantity.Number, Doc: "Outlets that let water into it."}, (*soakage).outlets},
		{Field{Name: "utah_outlets_wanted", Kind: Number, Dimension: quantity.Number, Doc: "Least number of outlets into a mulch basin that Utah's table wants for the flow.",
			Formula: "flow ÷ flow that one outlet may let in by the soil, rounded up", Source: utahShields}, (*soakage).outletsByUtah},
		{Field{Name: "utah_outlets_share", Kind: Number, Dimension: quantity.Number, Doc: "Outlets for each outlet that Utah's table wants; less than 1 is too few.",
			Formula: "outlets ÷ outlets wanted"}, (*soakage).outletRatio},
		{Field{Name: "depth", Kind: Number, Dimension: quantity.Length, Doc: "Depth of it below the finished ground."},
			func(s *soakage) Value { return s.entry("depth", s.Depth) }},
		{Field{Name: "ground_slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope of the steepest triangle of the ground under it, straight down it.",
			Formula: slopeFormula}, func(s *soakage) Value { return s.onGround(func(e ground.Extent) float64 { return e.Steepest }) }},
		{Field{Name: "mulch_volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume of mulch in it.", Formula: "area × depth of mulch"},
			func(s *soakage) Value { return s.mulchVolume() }},
		{Field{Name: "surge_volume", Kind: Number, Dimension: quantity.Volume,
			Doc: "Water that reaches it when every laundry fixture on the system lets one use go at once, by the shares of the ways in the warm season; " +
				"nothing taken off for what tanks and beds hold back.",
			Formula: "Σ volume for each use × the share of it that reaches the part"}, func(s *soakage) Value { return s.surge }},
		{Field{Name: "porosity_wanted", Kind: Number, Dimension: quantity.Number,
			Doc:     "Share of the mulch's volume that has to be pores so that they hold the surge; more than 1 where the surge is greater than the mulch itself.",
			Formula: "surge volume ÷ volume of mulch", Source: Citation{Title: "A mulch basin holds the peak surge in its pores", Standing: Practice}},
			func(s *soakage) Value { return s.porosityWanted() }},
		{Field{Name: "treated_first", Kind: Truth,
			Doc: "Whether all water used in the house that reaches it, in any season or by any overflow, has passed through a planted gravel bed; " +
				"what a bed overflows has not. True when none reaches it."}, func(s *soakage) Value { return s.treatedFirst() }},
		{Field{Name: "untreated_sources", Kind: Text,
			Doc: "The sources in the house whose water reaches it untreated; \"none\" where none does."}, func(s *soakage) Value { return s.untreatedSources() }},
		{Field{Name: "bottom_depth", Kind: Number, Dimension: quantity.Length, Doc: "Depth of its bottom below the ground, where it is greatest.",
			Formula: "the deeper of the depth as drawn and the greatest of ground − floor round the outline"}, func(s *soakage) Value { return s.bottomDepth() }},
		{Field{Name: "soil_test_distance", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least distance in plan to a test hole or pit that goes deeper than its bottom.",
			Formula: "least distance from the part's ground to the place of the test"}, (*soakage).testDistance},
		{Field{Name: "above_groundwater", Kind: Number, Dimension: quantity.Length,
			Doc:     "Height of its bottom above the groundwater when that is highest; negative where it reaches into it.",
			Formula: "groundwater depth − bottom depth"}, (*soakage).aboveGroundwater},
		{Field{Name: "above_bedrock", Kind: Number, Dimension: quantity.Length,
			Doc:     "Height of its bottom above bedrock or another layer that water does not go through; negative where it reaches into it.",
			Formula: "bedrock depth − bottom depth"}, (*soakage).aboveBedrock},
	},
)

var soakageAreaTable = tabulate(
	List{Name: "soakage_areas", Subject: "a mulch basin or infiltration trench by one table of soils",
		Doc: "Every mulch basin and infiltration trench with each table of loading rates that is meant for it; they differ many times over."},
	(*drawing).soakageAreas, (*soilArea).subject,
	[]column[*soilArea]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(a *soilArea) Value { return text(a.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind.", Words: []string{mulchBasin, trench}}, func(a *soilArea) Value { return a.kind() }},
		{Field{Name: "basis", Kind: Text, Doc: "The table.", Words: soilTableNames()}, func(a *soilArea) Value { return text(a.table.name) }},
		{Field{Name: "basis_source", Kind: Text, Doc: "Where the table stands, and how its values are known."}, func(a *soilArea) Value { return text(a.table.source) }},
		{Field{Name: "soil", Kind: Text, Doc: "The row of the table that the site's soil is read as."}, func(a *soilArea) Value { return a.soil }},
		{Field{Name: "soil_inferred", Kind: Truth, Doc: "Whether the table has no row for the site's soil, so that the nearest finer or stricter row is taken."},
			func(a *soilArea) Value { return a.inferred }},
		{Field{Name: "rate", Kind: Number, Dimension: quantity.Loading, Doc: "Loading rate of that row.",
			Formula: "read from the table by the soil's texture or percolation", Source: soilTables}, func(a *soilArea) Value { return a.rate }},
		{Field{Name: "area_counted", Kind: Number, Dimension: quantity.Area,
			Doc:     "Area of the part as the table's code counts it: its area in plan; in Texas one foot of its sides as well.",
			Formula: "area in plan; in Texas area + 1 ft × perimeter", Source: texas}, func(a *soilArea) Value { return a.counted }},
		{Field{Name: "area_wanted", Kind: Number, Dimension: quantity.Area, Doc: "Area that the flow wants.",
			Formula: soilFormula, Source: soilTables}, func(a *soilArea) Value { return a.wanted }},
		{Field{Name: "counted_to_wanted", Kind: Number, Dimension: quantity.Number, Doc: "Area counted for each unit of area wanted; less than 1 is too small.",
			Formula: "area counted ÷ area wanted"}, (*soilArea).ratio},
	},
)

const soilFormula = "flow ÷ loading rate of the soil"

var (
	soilTables = Citation{Title: "Tables of loading rates by soil; each is named beside its value", Standing: FromMemory}
	texas      = Citation{Title: dispersal.TexasClasses.Source, Standing: Published}
)

// soilTable is a table of loading rates, by texture or by percolation.
type soilTable struct {
	name, source string
	by           string // the entry of the soil that it is read by
	kinds        []string
	counts       func(p *part) Value // the area of a part
	row          func(s *design.Soil) (soil string, rate float64, inferred, ok bool)
}

var tablesOfSoils = soilTablesInOrder()

// soilTablesInOrder has every table with the kinds of part that it is for: those
// for sewage and for fields of any kind hold for both.
func soilTablesInOrder() []soilTable {
	both := []string{mulchBasin, trench}
	kinds := map[*dispersal.TextureTable][]string{&dispersal.UtahTrench: {trench}, &dispersal.UtahMulch: {mulchBasin}}
	var all []soilTable
	for _, t := range dispersal.TextureTables {
		s := soilTable{name: t.Name, source: t.Source + " (" + t.Standing + "); soils matched by " + t.Matched, by: "texture", kinds: both, counts: (*part).area}
		if only := kinds[t]; only != nil {
			s.kinds = only
		}
		if t == &dispersal.TexasClasses {
			s.counts = (*part).texasArea
		}
		s.row = func(soil *design.Soil) (string, float64, bool, bool) {
			row, inferred, ok := t.Rate(soil.Texture)
			return row.Soil, row.Rate, inferred, ok
		}
		all = append(all, s)
	}
	for _, t := range dispersal.PercolationTables {
		all = append(all, soilTable{name: t.Name, source: t.Source + " (" + t.Standing + ")", by: "percolation", kinds: both, counts: (*part).area,
			row: func(soil *design.Soil) (string, float64, bool, bool) {
				rate, ok := t.Rate(soil.Percolation.Value)
				return "by percolation", rate, false, ok
			}})
	}
	return all
}

func soilTableNames() []string {
	names := make([]string, len(tablesOfSoils))
	for i, t := range tablesOfSoils {
		names[i] = t.name
	}
	return names
}

// soilArea is a part by one table.
type soilArea struct {
	*part
	table          *soilTable
	flow           Value
	soil, inferred Value
	rate, counted  Value
	wanted         Value
}

// soakage is a mulch basin or trench.
type soakage struct {
	*part
	given, flow, surge Value
	areas              []*soilArea
}

func (d *drawing) newSoakage() []*soakage {
	parts := d.ofKind(mulchBasin, trench)
	if len(parts) == 0 {
		return nil
	}
	flows := d.flows()
	surge := d.surge("volume_per_use", func(s *design.Source) quantity.Quantity { return s.VolumePerUse })
	all := make([]*soakage, len(parts))
	for i, p := range parts {
		s := &soakage{part: p, given: p.drawnArea(), flow: flows[p.node-len(d.Sources)].greatest(), surge: surge(p)}
		for k := range tablesOfSoils {
			if t := &tablesOfSoils[k]; slices.Contains(t.kinds, p.Kind) {
				s.areas = append(s.areas, newSoilArea(p, t, s.flow))
			}
		}
		all[i] = s
	}
	return all
}

func (d *drawing) soakageAreas() []*soilArea {
	var all []*soilArea
	for _, s := range d.soakage() {
		all = append(all, s.areas...)
	}
	return all
}

func (a *soilArea) subject() Subject {
	return Subject{a.ID + " by " + a.table.name, []string{a.ID}, []string{a.Pointer}}
}

// greatest is the flow of the season that brings more.
func (f flow) greatest() Value {
	inWarm, inBypass := f.greywater(warm), f.greywater(bypassing)
	inputs, lacks := gathered([]Value{inWarm, inBypass})
	return orUnknown(number(max(inWarm.Number, inBypass.Number), inputs...), lacks)
}

// drawnArea is the area in plan, which has to be more than 0.
func (p *part) drawnArea() Value {
	area := p.area()
	if area.Known() && area.Number <= geometry.Resolution*geometry.Resolution {
		return unknown(p.lack("outline"))
	}
	return area
}

func newSoilArea(p *part, t *soilTable, flow Value) *soilArea {
	a := &soilArea{part: p, table: t, flow: flow, counted: t.counts(p)}
	if bottom := p.drawnArea(); !bottom.Known() {
		a.counted = bottom
	}
	a.read()
	a.wanted = worked(soilEntry(t.by), func() (float64, error) { return inRange(dispersal.Area(flow.Number, a.rate.Number)) }, flow, a.rate)
	return a
}

const soilPointer = "/site/soil"

func soilEntry(entry string) Lack {
	return Lack{soilPointer + "/" + entry, entry + " of the site's soil"}
}

// read finds the row of the site's soil.
func (a *soilArea) read() {
	soil := a.drawing.Site.Soil
	if soil == nil || a.table.by == "texture" && soil.Texture == "" || a.table.by == "percolation" && !soil.Percolation.Given() {
		v := unknown(soilEntry(a.table.by))
		a.soil, a.inferred, a.rate = v, v, v
		return
	}
	row, rate, inferred, ok := a.table.row(soil)
	if !ok {
		v := unknown(beyond(soilEntry(a.table.by), a.table.name))
		a.soil, a.inferred, a.rate = v, v, v
		return
	}
	drawn := Input{Name: a.table.by, Pointer: soilPointer + "/" + a.table.by}
	a.soil, a.inferred, a.rate = text(row, drawn), truth(inferred, drawn), number(rate, drawn)
}

// texasArea is the area that counts in Texas.
func (p *part) texasArea() Value {
	bottom := p.area()
	perimeter := p.shape.Length()
	if p.half > 0 {
		perimeter = 2 * (p.shape.Length() + 2*p.half)
	}
	return worked(p.lack("outline"), func() (float64, error) { return inRange(dispersal.TexasArea(bottom.Number, perimeter)) }, bottom)
}

func (a *soilArea) ratio() Value {
	if a.wanted.Known() && a.wanted.Number == 0 {
		return unknown(a.noWater("greywater"))
	}
	return outOf(a.counted.Number/a.wanted.Number, a.counted, a.wanted)
}

// named names the table and how it is known.
func (a *soilArea) named() Value {
	return orUnknown(text(a.table.name+": "+a.table.source, a.wanted.Inputs...), a.wanted.Lacks)
}

func (s *soakage) loading() Value {
	return worked(s.lack("outline"), func() (float64, error) { return treatment.HydraulicLoading(s.flow.Number, s.given.Number) }, s.flow, s.given)
}

func (s *soakage) least() *soilArea { return s.pick(func(x, y float64) bool { return x < y }) }

func (s *soakage) greatest() *soilArea { return s.pick(func(x, y float64) bool { return x > y }) }

// pick gives the first of the tables that know the soil by an order, the first of
// all where none does.
func (s *soakage) pick(before func(x, y float64) bool) *soilArea {
	picked := s.areas[0]
	for _, a := range s.areas[1:] {
		if a.wanted.Known() && (!picked.wanted.Known() || before(a.wanted.Number, picked.wanted.Number)) {
			picked = a
		}
	}
	return picked
}

func (s *soakage) porosityWanted() Value {
	mulch := s.mulchVolume()
	if mulch.Known() && mulch.Number <= 0 {
		return unknown(Lack{s.Pointer + "/mulch", "mulch of " + s.ID + ", more than 0"})
	}
	return outOf(s.surge.Number/mulch.Number, s.surge, mulch)
}
