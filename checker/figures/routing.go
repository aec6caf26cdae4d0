package figures

import (
	"errors"

	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var routingTable = tabulate(
	List{Name: "routing", Doc: "Every pond and settling basin with the design storm led through its storage.", Subject: "a pond or settling basin"},
	(*drawing).routings, (*routing).subject,
	[]column[*routing]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind.", Words: []string{pond, settlingBasin}}, func(r *routing) Value { return r.kind() }},
		{Field{Name: "storm_volume", Kind: Number, Dimension: quantity.Volume,
			Doc:     "Water that the storm brings: from all storm inflows and roof drains whose water can reach it, and the rain on it and on the parts above. Nothing is held back above.",
			Formula: "Σ coefficient × intensity × area × duration", Source: rational}, (*routing).volume},
		{Field{Name: "peak_inflow", Kind: Number, Dimension: quantity.PeakFlow, Doc: "Greatest flow into it.", Formula: hydrographFormula, Source: modifiedRational},
			func(r *routing) Value { return r.of(func(p passage) float64 { return p.inflow }) }},
		{Field{Name: "stays_under_rim", Kind: Truth, Doc: "Whether its water stays under its rim all through the storm, which begins at the ordinary water level.",
			Formula: routingFormula, Source: levelPool}, (*routing).staysUnder},
		{Field{Name: "peak_surface", Kind: Number, Dimension: quantity.Level, Doc: "Highest level of its water in the storm.", Formula: routingFormula, Source: levelPool},
			func(r *routing) Value { return r.contained(func(p passage) float64 { return p.stage }) }},
		{Field{Name: "peak_outflow", Kind: Number, Dimension: quantity.PeakFlow, Doc: "Greatest flow out of it, by the least that its ways out may carry.", Formula: routingFormula, Source: levelPool},
			func(r *routing) Value { return r.contained(func(p passage) float64 { return p.outflow }) }},
		{Field{Name: "outflow_to_inflow", Kind: Number, Dimension: quantity.Number, Doc: "Greatest flow out for each unit of the greatest flow in.",
			Formula: "peak outflow ÷ peak inflow"}, (*routing).attenuation},
		{Field{Name: "freeboard", Kind: Number, Dimension: quantity.Length, Doc: "Height of the rim over that highest level.",
			Formula: "rim level − highest level"}, func(r *routing) Value {
			return r.contained(func(p passage) float64 { return r.RimLevel.Value - p.stage })
		}},
	},
)

const (
	hydrographFormula = "the flows of all storms added up, time by time; each rises to coefficient × intensity × area in the shorter of duration and time of concentration, " +
		"stays, and falls in the same time; off roofs and parts water comes at once"
	routingFormula = "(inflow₁ + inflow₂) ÷ 2 × step = storage₂ − storage₁ + (outflow₁ + outflow₂) ÷ 2 × step, from step to step; " +
		"storage by the sides as drawn, outflow by the level as in water_levels; " +
		"where it fills and empties in less than a two-thousandth of the storm, its storage counts for nothing"
)

var (
	modifiedRational = Citation{Title: hydraulics.StormSource, Standing: FromMemory}
	levelPool        = Citation{Title: hydraulics.RoutingSource + "; outflow: " + outletSource.Title, Standing: FromMemory}
)

const (
	durationPointer = "/site/climate/design_storm/duration"
	ratingSteps     = 100 // from the lowest way out to the rim

	// How many time steps a storm has, at least and at most.
	routingSteps     = 240
	mostRoutingSteps = 2000
)

// routing is a part with the storm led through it.
type routing struct {
	*part
	storms   []feeder
	flow     Value // peak of all storms
	duration Value
	drawn    Value // what the passage is known from
	passage  passage
}

// passage is how a storm goes through a pool.
type passage struct {
	inflow, outflow, stage float64 // peaks
	over                   bool    // water runs out over the rim
}

func (d *drawing) routings() []*routing {
	var all []*routing
	for _, p := range d.ofKind(pond, settlingBasin) {
		all = append(all, newRouting(p))
	}
	return all
}

func newRouting(p *part) *routing {
	peaks := p.drawing.peaks()
	r := &routing{part: p, flow: peaks.storm(p), duration: p.drawing.stormDuration()}
	for _, all := range [][]feeder{peaks.storms, peaks.rained} {
		for _, f := range all {
			if f.met[p.node] {
				r.storms = append(r.storms, f)
			}
		}
	}
	r.drawn = r.run()
	return r
}

func (d *drawing) stormDuration() Value {
	if c := d.Site.Climate; c == nil || c.DesignStorm == nil || !c.DesignStorm.Duration.Given() {
		return unknown(Lack{durationPointer, "duration of the site's design_storm"})
	}
	return number(d.Site.Climate.DesignStorm.Duration.Value, Input{Name: "duration", Pointer: durationPointer})
}

func (r *routing) volume() Value { return outOf(r.flow.Number*r.duration.Number, r.flow, r.duration) }

// run leads the storm through the part.
func (r *routing) run() Value {
	water := r.drawing.surfaces().of[r.node]
	basin, drawn := r.basin()
	if !r.SideSlope.Given() {
		drawn = unknown(r.lack("side_slope"))
	}
	from := []Value{r.flow, r.duration, drawn, water.dry}
	times, longest := r.concentrations()
	from = append(from, times...)
	if len(water.ways) == 0 {
		from = append(from, unknown(Lack{r.Pointer + "/overflow_to", "a spillway or overflow pipe that " + r.ID + " overflows into"}))
	}
	var ways []*rating
	for _, w := range water.ways {
		way := w.rating()
		ways, from = append(ways, way), append(from, way.low, way.drawn)
	}
	from = append(from, water.storm)
	return worked(Lack{r.Pointer + "/rim_level", "rim_level and ways out of " + r.ID + ", and the design storm,"}, func() (float64, error) {
		outflow, err := hydraulics.Tabulated(lowestOf(ways), r.RimLevel.Value, ratingSteps, func(stage float64) (float64, error) { return flowAt(stage, ways) })
		if err != nil {
			return 0, err
		}
		storage := func(stage float64) float64 {
			volume, _ := basin.Volume(stage)
			return volume
		}
		pool := hydraulics.Pool{Storage: storage, Outflow: outflow, Lowest: drawn.Number, Highest: r.RimLevel.Value}
		return 0, r.lead(pool, water, times, r.duration.Number+longest)
	}, from...)
}

// lead takes steps that are short for the storm and for the pool.
func (r *routing) lead(pool hydraulics.Pool, water *standingWater, times []Value, span float64) error {
	step := min(span/routingSteps, pool.LongestStep(water.dry.Number, min(water.storm.Number, pool.Highest)))
	short := step*mostRoutingSteps < span
	if short {
		step = span / routingSteps
	}
	inflows, err := r.inflows(times, step)
	if err != nil {
		return err
	}
	for _, q := range inflows {
		r.passage.inflow = max(r.passage.inflow, q)
	}
	if short {
		r.passage.outflow, r.passage.stage = r.passage.inflow, water.storm.Number
		r.passage.over = water.storm.Number > pool.Highest
		return nil
	}
	return r.pass(pool, water.dry.Number, step, inflows)
}

// pass notes the peaks.
func (r *routing) pass(pool hydraulics.Pool, start, step float64, inflows []float64) error {
	states, err := pool.Route(start, step, inflows)
	var over *hydraulics.OvertoppedError
	if errors.As(err, &over) {
		r.passage.over = true
		return nil
	}
	for i, s := range states {
		if i == 0 || s.Stage > r.passage.stage {
			r.passage.stage, r.passage.outflow = s.Stage, s.Outflow
		}
	}
	return err
}

// concentrations gives the time of concentration of each storm, 0 of roofs and
// parts, and the longest of them.
func (r *routing) concentrations() (times []Value, longest float64) {
	for _, f := range r.storms {
		time := Value{}
		if p := r.drawing.partAt(f.storm.node); f.storm.kind == stormInflow {
			time = p.entry("time_of_concentration", p.Concentration)
		}
		times, longest = append(times, time), max(longest, time.Number)
	}
	return times, longest
}

// inflows adds up the hydrographs. Water that comes at once, or sooner than a step
// can show, comes within one.
func (r *routing) inflows(times []Value, step float64) ([]float64, error) {
	sum := []float64{0}
	for i, f := range r.storms {
		storm := hydraulics.Storm{Coefficient: f.storm.greatest.Number, Intensity: f.storm.intensity().Number, Area: f.storm.area.Number,
			Duration: r.duration.Number, Concentration: max(times[i].Number, step)}
		flows, err := storm.Hydrograph(step)
		if err != nil {
			return nil, err
		}
		for k, q := range flows {
			if k == len(sum) {
				sum = append(sum, 0)
			}
			sum[k] += q
		}
	}
	return sum, nil
}

func lowestOf(ways []*rating) float64 {
	lowest := ways[0].low.Number
	for _, w := range ways {
		lowest = min(lowest, w.low.Number)
	}
	return lowest
}

// of gives a figure of the passage.
func (r *routing) of(figure func(passage) float64) Value {
	if !r.drawn.Known() {
		return r.drawn
	}
	return number(figure(r.passage), r.drawn.Inputs...)
}

func (r *routing) staysUnder() Value {
	return orUnknown(truth(!r.passage.over, r.drawn.Inputs...), r.drawn.Lacks)
}

// contained gives a figure of a storm that stays under the rim.
func (r *routing) contained(figure func(passage) float64) Value {
	if r.passage.over {
		return unknown(Lack{r.Pointer + "/rim_level", "a rim_level of " + r.ID + " that its water in the storm stays under"})
	}
	return r.of(figure)
}

func (r *routing) attenuation() Value {
	if r.drawn.Known() && r.passage.inflow == 0 {
		return unknown(Lack{"/parts", "a storm inflow whose water reaches " + r.ID})
	}
	return r.contained(func(p passage) float64 { return p.outflow / p.inflow })
}
