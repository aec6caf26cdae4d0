package figures

import (
	"errors"
	"slices"

	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var pipeFlowTable = tabulate(
	List{Name: "pipe_flow", Subject: "a reach of pipe",
		Doc: "What every reach of every drain pipe and overflow pipe carries, and what it could."},
	(*drawing).pipeFlows, (*pipeFlow).subject,
	[]column[*pipeFlow]{
		{Field{Name: "diameter", Kind: Number, Dimension: quantity.Length, Doc: "Inside diameter."}, func(f *pipeFlow) Value { return f.diameter }},
		{Field{Name: "slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope in the direction that the water runs; negative where the pipe rises.",
			Formula: "fall ÷ length in plan"}, func(f *pipeFlow) Value { return f.grade }},
		{Field{Name: "roughness", Kind: Number, Dimension: quantity.Number, Doc: "Manning's n, as drawn, else the usual one of the pipe's material.",
			Formula: "read from the table by material", Source: cited(hydraulics.PlasticPipe.Source)},
			func(f *pipeFlow) Value { return f.n(f.wall.Usual) }},
		{Field{Name: "roughness_basis", Kind: Text, Doc: "Where Manning's n comes from: the drawing, or the kind of pipe and the source of its table."},
			(*pipeFlow).basis},
		{Field{Name: "full_capacity", Kind: Number, Dimension: quantity.PeakFlow, Doc: "Flow of the pipe running full under no pressure.",
			Formula: "(π × diameter² ÷ 4) × " + manningFormula, Source: manning},
			func(f *pipeFlow) Value { return f.running(f.wall.Usual, 1, discharge) }},
		{Field{Name: "least_full_capacity", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "The same with the greatest n that the material's sources give.",
			Formula: "(π × diameter² ÷ 4) × " + manningFormula, Source: manning},
			func(f *pipeFlow) Value { return f.running(f.wall.Range.High, 1, discharge) }},
		{Field{Name: "greatest_full_capacity", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "The same with the least n that the material's sources give.",
			Formula: "(π × diameter² ÷ 4) × " + manningFormula, Source: manning},
			func(f *pipeFlow) Value { return f.running(f.wall.Range.Low, 1, discharge) }},
		{Field{Name: "full_velocity", Kind: Number, Dimension: quantity.Velocity, Doc: "Mean velocity of the pipe running full.",
			Formula: manningFormula, Source: manning},
			func(f *pipeFlow) Value { return f.running(f.wall.Usual, 1, velocity) }},
		{Field{Name: "half_full_velocity", Kind: Number, Dimension: quantity.Velocity, Doc: "Mean velocity of the pipe running half full.",
			Formula: manningFormula + ", hydraulic radius as that of the full pipe", Source: manning},
			func(f *pipeFlow) Value { return f.running(f.wall.Usual, 0.5, velocity) }},
		{Field{Name: "fixture_units_ipc", Kind: Number, Dimension: quantity.Number, Doc: "Drainage fixture units that it may have to carry at once, by the International Plumbing Code.",
			Formula: "Σ units of each fixture whose water reaches it, in any season and by any overflow", Source: cited(hydraulics.IPCFixtureUnits.Source)},
			func(f *pipeFlow) Value { return f.unitsIPC }},
		{Field{Name: "fixture_units_upc", Kind: Number, Dimension: quantity.Number, Doc: "Drainage fixture units that it may have to carry at once, by the Uniform Plumbing Code.",
			Formula: "Σ units of each fixture whose water reaches it, in any season and by any overflow", Source: cited(hydraulics.UPCFixtureUnits.Source)},
			func(f *pipeFlow) Value { return f.unitsUPC }},
		mostUnits("most_units_ipc_drain", "building drain", hydraulics.IPCBuildingDrain),
		mostUnits("most_units_ipc_branch", "horizontal fixture branch", hydraulics.IPCBranch),
		mostUnits("most_units_upc", "horizontal drain at 1/4 in/ft or steeper", hydraulics.UPCHorizontalDrain),
		mostUnits("most_units_upc_reduced", "horizontal drain at 1/8 in/ft or steeper, where the authority consents to such a slope", hydraulics.UPCReducedSlopeDrain),
		{Field{Name: "peak_flow_ipc", Kind: Number, Dimension: quantity.PeakFlow, Doc: peakDoc + "the International Plumbing Code's conversion.",
			Formula: "Σ International Plumbing Code units × ½ gal/min + Σ greatest peak of the rain", Source: cited(hydraulics.IPCUnitFlow.Source)},
			func(f *pipeFlow) Value { return f.peakIPC }},
		{Field{Name: "depth_ratio_ipc", Kind: Number, Dimension: quantity.Share, Doc: "Depth over diameter at that peak; 0 when nothing comes.",
			Formula: depthFormulaOfPipe, Source: manning}, func(f *pipeFlow) Value { return f.ipc.depthRatio }},
		{Field{Name: "velocity_ipc", Kind: Number, Dimension: quantity.Velocity, Doc: "Mean velocity at that peak; 0 when nothing comes.",
			Formula: depthFormulaOfPipe, Source: manning}, func(f *pipeFlow) Value { return f.ipc.velocity }},
		{Field{Name: "peak_flow_chicago", Kind: Number, Dimension: quantity.PeakFlow, Doc: peakDoc + "the Chicago Plumbing Code's conversion, on the International Plumbing Code's units.",
			Formula: "Σ International Plumbing Code units × 1 gal/min + Σ greatest peak of the rain", Source: cited(hydraulics.ChicagoUnitFlow.Source)},
			func(f *pipeFlow) Value { return f.peakChicago }},
		{Field{Name: "depth_ratio_chicago", Kind: Number, Dimension: quantity.Share, Doc: "Depth over diameter at that peak; 0 when nothing comes.",
			Formula: depthFormulaOfPipe, Source: manning}, func(f *pipeFlow) Value { return f.chicago.depthRatio }},
		{Field{Name: "velocity_chicago", Kind: Number, Dimension: quantity.Velocity, Doc: "Mean velocity at that peak; 0 when nothing comes.",
			Formula: depthFormulaOfPipe, Source: manning}, func(f *pipeFlow) Value { return f.chicago.velocity }},
		{Field{Name: "share_of_capacity", Kind: Number, Dimension: quantity.Share,
			Doc:     "The greater of the two peaks as a share of what the pipe carries running full with the greatest n that the material's sources give.",
			Formula: "peak flow by the Chicago conversion ÷ least full capacity", Source: manning}, (*pipeFlow).shareOfCapacity},
	},
)

const (
	manningFormula     = "(diameter ÷ 4)^(2/3) × slope^(1/2) ÷ n, in m and m/s"
	depthFormulaOfPipe = "the depth y at which area × (area ÷ wetted perimeter)^(2/3) × slope^(1/2) ÷ n is the peak flow, " +
		"with θ = 2·acos(1 − 2y ÷ diameter), area = diameter² × (θ − sin θ) ÷ 8, perimeter = diameter × θ ÷ 2"
	peakDoc = "Peak flow that may reach it, every fixture draining at once and nothing held back by tanks and beds above, by "
)

var manning = Citation{Title: hydraulics.ManningSource, Standing: FromMemory}

// mostUnits declares the most fixture units of a code's table.
func mostUnits(name, as string, table hydraulics.DrainCapacity) column[*pipeFlow] {
	return column[*pipeFlow]{Field{Name: name, Kind: Number, Dimension: quantity.Number,
		Doc:     "The most drainage fixture units that it may carry as a " + as + ".",
		Formula: "read from the table by diameter and slope; between two, the smaller counts", Source: cited(table.Source)},
		func(f *pipeFlow) Value { return f.most(table) }}
}

// pipeFlow is a reach with its section and what comes to it.
type pipeFlow struct {
	*reach
	*load
	diameter, grade Value
	wall            hydraulics.Roughness
	rough           Value // what the wall is known from
	sized           Value // what the table of a code is read by
	section         Value // what the flow is known from
	ipc, chicago    carried
}

// load is what may come to a pipe at once.
type load struct {
	unitsIPC, unitsUPC   Value
	peakIPC, peakChicago Value
}

// carried is the uniform flow of a peak.
type carried struct{ depthRatio, velocity Value }

func (d *drawing) pipeFlows() []*pipeFlow {
	var all []*pipeFlow
	peaks := d.peaks()
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		load := peaks.load(p)
		for _, r := range p.reaches() {
			all = append(all, newPipeFlow(r, load))
		}
	}
	return all
}

func newPipeFlow(r *reach, comes *load) *pipeFlow {
	f := &pipeFlow{reach: r, load: comes, grade: r.slope(), diameter: r.part.diameter()}
	f.wall, f.rough = r.part.wall()
	f.sized = outOf(0, f.diameter, f.grade)
	f.section = outOf(0, f.sized, f.rough)
	f.ipc, f.chicago = f.carrying(comes.peakIPC), f.carrying(comes.peakChicago)
	return f
}

func (p *part) diameter() Value {
	if !p.Diameter.Given() {
		return unknown(p.lack("diameter"))
	}
	return number(p.Diameter.Value, p.drawn("diameter"))
}

// n gives a roughness of the pipe's wall.
func (f *pipeFlow) n(roughness float64) Value { return outOf(roughness, f.rough) }

func (f *pipeFlow) basis() Value {
	basis := f.wall.Wall
	if s := f.wall.Source; s.Title != "" {
		basis += " (" + s.Title + "; " + string(s.Standing) + ")"
	}
	return orUnknown(text(basis, f.rough.Inputs...), f.rough.Lacks)
}

func (f *pipeFlow) pipe(roughness float64) hydraulics.Pipe {
	return hydraulics.Pipe{Diameter: f.diameter.Number, Slope: f.grade.Number, Roughness: roughness}
}

// running gives a figure of the flow at a share of the diameter.
func (f *pipeFlow) running(roughness, share float64, figure func(hydraulics.Flow) float64) Value {
	if !f.section.Known() {
		return f.section
	}
	flow, err := f.pipe(roughness).At(share * f.diameter.Number)
	if err != nil {
		return unknown(f.refused(err))
	}
	return number(figure(flow), f.section.Inputs...)
}

func (f *pipeFlow) carrying(peak Value) carried {
	known := outOf(0, f.section, peak)
	if !known.Known() || peak.Number == 0 {
		return carried{known, known}
	}
	flow, err := f.pipe(f.wall.Usual).Carrying(peak.Number)
	if err != nil {
		return carried{unknown(f.refused(err)), unknown(f.refused(err))}
	}
	return carried{number(flow.Depth/f.diameter.Number, known.Inputs...), number(flow.Velocity, known.Inputs...)}
}

func discharge(f hydraulics.Flow) float64 { return f.Discharge }

func velocity(f hydraulics.Flow) float64 { return f.Velocity }

func (f *pipeFlow) shareOfCapacity() Value {
	capacity := f.running(f.wall.Range.High, 1, discharge)
	known := outOf(0, f.peakChicago, capacity)
	if !known.Known() {
		return known
	}
	return number(f.peakChicago.Number/capacity.Number, known.Inputs...)
}

// refused words a value that Manning's equation does not hold for.
func (f *pipeFlow) refused(err error) Lack {
	var out *hydraulics.RangeError
	switch errors.As(err, &out); out.Quantity {
	case "slope":
		return beyond(Lack{f.Pointer + "/inverts", "a slope of " + f.name}, "Manning's equation, "+out.Needs)
	case "discharge":
		return Lack{f.Pointer + "/diameter", "a diameter and slope of " + f.name + " that carry its peak flow within the range of a pipe that is not under pressure"}
	default:
		return beyond(Lack{f.Pointer + "/diameter", "a " + out.Quantity + " of " + f.name}, "Manning's equation, "+out.Needs)
	}
}

func (f *pipeFlow) most(table hydraulics.DrainCapacity) Value {
	if !f.sized.Known() {
		return f.sized
	}
	units, source, ok := table.MostUnits(f.diameter.Number, f.grade.Number)
	if !ok {
		return unknown(beyond(Lack{f.Pointer + "/diameter", "a diameter and slope of " + f.name}, table.Source.Title))
	}
	return number(units, append(slices.Clip(f.sized.Inputs), Input{Name: "table", Value: source.Title + ", " + string(source.Standing)})...)
}
