package figures

import (
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var bedFlowTable = tabulate(
	List{Name: "bed_flow", Doc: "Every planted gravel bed with the water that runs through it in the warm season.", Subject: "a planted gravel bed"},
	(*drawing).running, (*running).subject,
	[]column[*running]{
		{Field{Name: "course", Kind: Text, Doc: "What shows the course of the water in plan.", Words: []string{headerToOutlet, longerSide}},
			func(r *running) Value { return r.course.by }},
		{Field{Name: "length", Kind: Number, Dimension: quantity.Length,
			Doc:     "Length of the bed along the water's course: from the inlet header to the outlet where both are drawn, else along the outline's longer side.",
			Formula: "least distance in plan from the header to the outlet, else the outline's extent along its longest side"},
			func(r *running) Value { return r.course.length }},
		{Field{Name: "width", Kind: Number, Dimension: quantity.Length, Doc: "Mean width of the bed across the water's course.",
			Formula: "area ÷ the outline's extent along the course"}, func(r *running) Value { return r.course.width }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of the bed in plan.",
			Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"}, func(r *running) Value { return r.area() }},
		{Field{Name: "course_share", Kind: Number, Dimension: quantity.Share,
			Doc:     "How much of the bed's extent along the water's course lies between the inlet header and the outlet; what lies beyond them does little.",
			Formula: "least distance in plan from the header to the outlet ÷ the outline's extent in that direction"}, (*running).courseShare},
		{Field{Name: "length_to_width", Kind: Number, Dimension: quantity.Number, Doc: "Length along the course for each unit of width.",
			Formula: "length ÷ width"}, (*running).lengthToWidth},
		{Field{Name: "water_depth", Kind: Number, Dimension: quantity.Length, Doc: "Mean depth of the water over the floor.",
			Formula: "water level − mean level of the floor", Source: gridMethod}, func(r *running) Value { return r.depth }},
		{Field{Name: "least_pore_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water in the pores below the water level, by the least porosity of each layer.",
			Formula: poreFormula}, func(r *running) Value { return r.leastPores }},
		{Field{Name: "greatest_pore_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water in the pores below the water level, by the greatest porosity of each layer.",
			Formula: poreFormula}, func(r *running) Value { return r.greatestPores }},
		{Field{Name: "flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the warm season.",
			Formula: flowFormula, Source: householdFlow}, func(r *running) Value { return r.flow }},
		{Field{Name: "least_detention", Kind: Number, Dimension: quantity.Duration,
			Doc:     "Nominal time that water stays at the mean flow, by the least porosity; real water takes short cuts and stays for less.",
			Formula: "pore volume below the water level ÷ flow", Source: detention}, func(r *running) Value { return r.detentions.least }},
		{Field{Name: "greatest_detention", Kind: Number, Dimension: quantity.Duration, Doc: "Nominal time that water stays at the mean flow, by the greatest porosity.",
			Formula: "pore volume below the water level ÷ flow", Source: detention}, func(r *running) Value { return r.detentions.greatest }},
		{Field{Name: "least_peak_flow", Kind: Number, Dimension: quantity.PeakFlow, Doc: peakDoc + "the International Plumbing Code's conversion.",
			Formula: "Σ International Plumbing Code units × ½ gal/min + Σ greatest peak of the rain", Source: cited(hydraulics.IPCUnitFlow.Source)},
			func(r *running) Value { return r.leastPeak }},
		{Field{Name: "greatest_peak_flow", Kind: Number, Dimension: quantity.PeakFlow, Doc: peakDoc + "the Chicago Plumbing Code's conversion, on the International Plumbing Code's units.",
			Formula: "Σ International Plumbing Code units × 1 gal/min + Σ greatest peak of the rain", Source: cited(hydraulics.ChicagoUnitFlow.Source)},
			func(r *running) Value { return r.greatestPeak }},
		{Field{Name: "least_peak_detention", Kind: Number, Dimension: quantity.Duration,
			Doc:     "Nominal time that water would stay if the greatest peak flow lasted, by the least porosity. A peak is over in minutes, long before a bed feels all of it.",
			Formula: "pore volume below the water level ÷ peak flow", Source: detention}, func(r *running) Value { return r.detention(r.leastPores, r.greatestPeak) }},
		{Field{Name: "greatest_peak_detention", Kind: Number, Dimension: quantity.Duration,
			Doc:     "Nominal time that water would stay if the least peak flow lasted, by the greatest porosity.",
			Formula: "pore volume below the water level ÷ peak flow", Source: detention}, func(r *running) Value { return r.detention(r.greatestPores, r.leastPeak) }},
		{Field{Name: "hydraulic_loading", Kind: Number, Dimension: quantity.Loading, Doc: "Flow a day for each unit of the bed's area.",
			Formula: "flow ÷ area", Source: loading}, func(r *running) Value { return r.loading }},
		{Field{Name: "least_inlet_bod", Kind: Number, Dimension: quantity.Density, Doc: "Least BOD5 of greywater by the published strengths, nothing taken off for settling.",
			Formula: strengthFormula, Source: strengthSource}, func(r *running) Value { return r.weakest.bod }},
		{Field{Name: "least_inlet_bod_source", Kind: Text, Doc: "Which source gives the least."}, func(r *running) Value { return r.weakest.named }},
		{Field{Name: "greatest_inlet_bod", Kind: Number, Dimension: quantity.Density, Doc: "Greatest BOD5 of greywater by the published strengths, nothing taken off for settling.",
			Formula: strengthFormula, Source: strengthSource}, func(r *running) Value { return r.strongest.bod }},
		{Field{Name: "greatest_inlet_bod_source", Kind: Text, Doc: "Which source gives the greatest."}, func(r *running) Value { return r.strongest.named }},
		{Field{Name: "least_areal_load", Kind: Number, Dimension: quantity.Load, Doc: "Least BOD5 a day for each unit of the bed's area.",
			Formula: arealFormula, Source: loading}, func(r *running) Value { return r.arealLoad(r.weakest.bod) }},
		{Field{Name: "greatest_areal_load", Kind: Number, Dimension: quantity.Load, Doc: "Greatest BOD5 a day for each unit of the bed's area.",
			Formula: arealFormula, Source: loading}, func(r *running) Value { return r.arealLoad(r.strongest.bod) }},
		{Field{Name: "least_section_load", Kind: Number, Dimension: quantity.Load,
			Doc:     "Least BOD5 a day for each unit of the cross-section under water at the inlet, where a bed clogs.",
			Formula: sectionFormula, Source: loading}, func(r *running) Value { return r.sectionLoad(r.weakest.bod) }},
		{Field{Name: "greatest_section_load", Kind: Number, Dimension: quantity.Load,
			Doc:     "Greatest BOD5 a day for each unit of the cross-section under water at the inlet, where a bed clogs.",
			Formula: sectionFormula, Source: loading}, func(r *running) Value { return r.sectionLoad(r.strongest.bod) }},
	},
)

const (
	poreFormula    = "Σ area × thickness of each layer below the water level × its porosity"
	arealFormula   = "flow × BOD5 ÷ area"
	sectionFormula = "flow × BOD5 ÷ (width × depth of water)"
)

var (
	detention = Citation{Title: treatment.DetentionSource, Standing: FromMemory}
	loading   = Citation{Title: treatment.LoadingSource, Standing: Practice}
)

func (r *running) lengthToWidth() Value {
	c := r.course
	return worked(r.lack("outline"), func() (float64, error) { return c.length.Number / c.width.Number, nil }, c.length, c.width)
}

func (r *running) courseShare() Value {
	c := r.course
	if c.by.Known() && c.by.Text != headerToOutlet {
		return unknown(r.endsLacking()...)
	}
	return worked(r.lack("outline"), func() (float64, error) { return c.length.Number * c.width.Number / r.shape.Area(), nil }, c.length, c.width)
}

// endsLacking names the ends of the water's course that are not drawn.
func (b *bed) endsLacking() (lacks []Lack) {
	if b.Inlet == nil || len(b.Inlet.Path) == 0 {
		lacks = append(lacks, Lack{b.Pointer + "/inlet/path", "path of the inlet of " + b.ID})
	}
	if b.Outlet == nil || b.Outlet.At == nil {
		lacks = append(lacks, Lack{b.Pointer + "/outlet/at", "place of the outlet of " + b.ID})
	}
	return lacks
}

func (r *running) detention(pores, flow Value) Value {
	return worked(r.lack("water_level"), func() (float64, error) { return treatment.Detention(pores.Number, flow.Number) }, pores, flow)
}

func (r *running) arealLoad(bod Value) Value {
	area := r.area()
	return worked(r.lack("outline"), func() (float64, error) {
		return treatment.OrganicLoad(r.flow.Number, bod.Number, area.Number)
	}, r.flow, bod, area)
}

func (r *running) sectionLoad(bod Value) Value {
	return worked(r.lack("water_level"), func() (float64, error) {
		return treatment.OrganicLoad(r.flow.Number, bod.Number, r.course.width.Number*r.depth.Number)
	}, r.flow, bod, r.course.width, r.depth)
}
