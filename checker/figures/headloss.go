package figures

import (
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var headLossTable = tabulate(
	List{Name: "head_loss", Doc: "Every planted gravel bed with each allowance for clogging: the sources lie thirty times apart.",
		Subject: "a planted gravel bed with an allowance for clogging"},
	(*drawing).clogged, (*clogged).subject,
	[]column[*clogged]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(c *clogged) Value { return text(c.ID) }},
		{Field{Name: "allowance", Kind: Text, Doc: "The allowance for clogging and who makes it."},
			func(c *clogged) Value { return text(c.allowance.Source.Title) }},
		{Field{Name: "clogging", Kind: Text, Words: cloggingNames(), Doc: "The allowance in short."}, func(c *clogged) Value { return text(c.name) }},
		{Field{Name: "standing", Kind: Text, Doc: "How the allowance is known.", Words: standings},
			func(c *clogged) Value { return text(string(c.allowance.Source.Standing)) }},
		{Field{Name: "least_clean_conductivity", Kind: Number, Dimension: quantity.Conductivity,
			Doc:     "Clean conductivity along the layers below the water level, by the least of each layer.",
			Formula: alongFormula, Source: layered}, func(c *clogged) Value { return c.leastClean }},
		{Field{Name: "greatest_clean_conductivity", Kind: Number, Dimension: quantity.Conductivity,
			Doc:     "Clean conductivity along the layers below the water level, by the greatest of each layer.",
			Formula: alongFormula, Source: layered}, func(c *clogged) Value { return c.greatestClean }},
		{Field{Name: "least_head_loss", Kind: Number, Dimension: quantity.Length, Doc: "Head lost along the bed by Darcy's law, by the greatest conductivity.",
			Formula: lossFormula, Source: darcy}, func(c *clogged) Value { return c.leastLoss }},
		{Field{Name: "greatest_head_loss", Kind: Number, Dimension: quantity.Length, Doc: "Head lost along the bed by Darcy's law, by the least conductivity.",
			Formula: lossFormula, Source: darcy}, func(c *clogged) Value { return c.greatestLoss }},
		{Field{Name: "rise", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far the water stands higher at the inlet than at the outlet, by the least conductivity, over a floor taken as level at its mean.",
			Formula: riseFormula, Source: waterSurface}, func(c *clogged) Value { return c.rise }},
		{Field{Name: "water_below_gravel_at_inlet", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of the water at the inlet below the lowest point of the gravel's surface, by the rise; negative where it comes up through the gravel.",
			Formula: "lowest level of the media's surface − water level − rise"}, func(c *clogged) Value { return c.belowGravel(c.rise) }},
		{Field{Name: "rise_share", Kind: Number, Dimension: quantity.Share,
			Doc:     "How much of the dry gravel over still water the rise takes up; above 100 % the water comes up through the gravel at the inlet.",
			Formula: "rise ÷ (lowest level of the media's surface − water level)"}, (*clogged).riseShare},
		{Field{Name: "peak_rise", Kind: Number, Dimension: quantity.Length,
			Doc:     "The same rise if the greatest peak flow lasted, as it does not: a peak is over in minutes.",
			Formula: riseFormula, Source: waterSurface}, func(c *clogged) Value { return c.peakRise }},
		{Field{Name: "water_below_gravel_at_inlet_in_peak", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of the water at the inlet below the lowest point of the gravel's surface by that rise; negative where it comes up through the gravel.",
			Formula: "lowest level of the media's surface − water level − rise"}, func(c *clogged) Value { return c.belowGravel(c.peakRise) }},
	},
)

const (
	alongFormula = "Σ conductivity × thickness below the water level ÷ Σ thickness"
	lossFormula  = "Σ flow × length ÷ (conductivity × width × depth of water) over the zones of the allowance"
	riseFormula  = "from the outlet up, zone by zone: y₁² = y₂² + 2 × flow × length ÷ (conductivity × width), y the depth of water"
)

var (
	layered      = Citation{Title: "Conductivity of layers side by side, as in any soil mechanics textbook", Standing: FromMemory}
	darcy        = Citation{Title: hydraulics.HeadLossSource, Standing: FromMemory}
	waterSurface = Citation{Title: hydraulics.WaterSurfaceSource, Standing: FromMemory}
	standings    = []string{string(Published), string(Practice), string(FromMemory)}
)

// cloggings has the allowances with short names for the items.
var cloggings = []struct {
	name string
	of   hydraulics.Clogging
}{
	{"clean media", hydraulics.CleanMedia},
	{"a third", hydraulics.ReedThird},
	{"two zones", hydraulics.EPAZones},
	{"developed bed", hydraulics.DevelopedBed},
}

func cloggingNames() []string {
	names := make([]string, len(cloggings))
	for i, c := range cloggings {
		names[i] = c.name
	}
	return names
}

// clogged is a bed with one allowance for clogging.
type clogged struct {
	*running
	name                      string
	allowance                 hydraulics.Clogging
	leastClean, greatestClean Value // conductivity
	leastLoss, greatestLoss   Value
	rise, peakRise            Value // by the least conductivity
}

func (d *drawing) clogged() []*clogged {
	var all []*clogged
	for _, r := range d.running() {
		least := r.clean(func(l *layer) Value { return l.conductivity().least })
		greatest := r.clean(func(l *layer) Value { return l.conductivity().greatest })
		for _, a := range cloggings {
			c := &clogged{running: r, name: a.name, allowance: a.of, leastClean: least, greatestClean: greatest}
			c.leastLoss, c.greatestLoss = c.along(greatest, c.flow, c.headLoss), c.along(least, c.flow, c.headLoss)
			c.rise, c.peakRise = c.along(least, c.flow, c.riseAtInlet), c.along(least, c.greatestPeak, c.riseAtInlet)
			all = append(all, c)
		}
	}
	return all
}

func (c *clogged) subject() Subject {
	return Subject{c.ID + ", " + c.name, []string{c.ID}, []string{c.Pointer}}
}

// along gives a figure of a flow through the zones of the allowance.
func (c *clogged) along(clean, flow Value, figure func(flow float64, zones []hydraulics.Zone) (float64, error)) Value {
	return worked(Lack{c.Pointer + "/media", "conductivity of the media of " + c.ID}, func() (float64, error) {
		zones, err := c.allowance.Zones(c.course.length.Number, clean.Number)
		if err != nil {
			return 0, err
		}
		return figure(flow.Number, zones)
	}, clean, flow, c.course.length, c.course.width, c.depth)
}

func (c *clogged) headLoss(flow float64, zones []hydraulics.Zone) (float64, error) {
	sum := 0.0
	for _, z := range zones {
		loss, err := hydraulics.HeadLoss(flow, z.Length, z.Conductivity, c.course.width.Number, c.depth.Number)
		if err != nil {
			return 0, err
		}
		sum += loss
	}
	return sum, nil
}

func (c *clogged) riseAtInlet(flow float64, zones []hydraulics.Zone) (float64, error) {
	bed := hydraulics.Bed{Width: c.course.width.Number, OutletDepth: c.depth.Number, Zones: zones}
	surface, err := bed.WaterSurface(flow)
	if err != nil {
		return 0, err
	}
	return surface[0].Level - c.depth.Number, nil
}

func (c *clogged) belowGravel(rise Value) Value {
	below := c.waterBelowSurface()
	return worked(c.lack("water_level"), func() (float64, error) { return below.Number - rise.Number, nil }, below, rise)
}

func (c *clogged) riseShare() Value {
	below := c.dryGravelLeast()
	return outOf(c.rise.Number/below.Number, c.rise, below)
}
