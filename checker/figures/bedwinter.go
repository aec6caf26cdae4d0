package figures

import (
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var bedWinterTable = tabulate(
	List{Name: "bed_winter", Subject: "a planted gravel bed in winter",
		Doc: "Every planted gravel bed in the coldest month, as though it kept running, with and without snow, for water as warm as it leaves the house and for water cooled down on the way. " +
			"Ground and sun are left out, and so is insulation drawn, for which no conductivity is known."},
	(*drawing).winters, (*winter).subject,
	[]column[*winter]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(w *winter) Value { return text(w.ID) }},
		{Field{Name: "cover", Kind: Text, Doc: "Whether the lasting snow drawn is counted.", Words: []string{withoutSnow, withSnow}},
			func(w *winter) Value { return text(w.cover) }},
		{Field{Name: "inlet", Kind: Text, Doc: "How warm the water comes in.", Words: []string{asItLeaves, cooledDown}},
			func(w *winter) Value { return text(w.inlet) }},
		{Field{Name: "inlet_temperature", Kind: Number, Dimension: quantity.Temperature,
			Doc:     "Temperature of the water that comes in.",
			Formula: "as greywater leaves the house, 31 °C, or the year's mean temperature, that of the ground on its way", Source: leavingSource},
			func(w *winter) Value { return w.warmth }},
		{Field{Name: "coldest_month", Kind: Text, Doc: "The coldest month of the year."}, func(w *winter) Value { return w.month }},
		{Field{Name: "bypassed", Kind: Truth, Doc: "Whether the bypass season covers that whole month."}, (*winter).bypassed},
		{Field{Name: "runs_in_frost", Kind: Truth, Doc: "Whether the bypass season leaves any part of a freezing month open."}, func(w *winter) Value { return w.runsInFrost() }},
		{Field{Name: "air_temperature", Kind: Number, Dimension: quantity.Temperature, Doc: "Mean temperature of the coldest month."},
			func(w *winter) Value { return w.air }},
		{Field{Name: "conductance", Kind: Number, Dimension: quantity.Number,
			Doc:     "Heat that passes from the water to the air, in W for each m² and °C between them.",
			Formula: "1 ÷ Σ thickness ÷ conductivity, in W/(m·°C), of old snow 0.23, mulch 0.05, dry gravel above the water 1.5, saturated gravel below it 2.0", Source: conductanceSource},
			func(w *winter) Value { return w.conductance }},
		{Field{Name: "outlet_temperature", Kind: Number, Dimension: quantity.Temperature,
			Doc:     "Temperature of the water at the end of the bed; below 0 °C it says that the bed freezes before its end.",
			Formula: "air + (inlet − air) × exp(−conductance × area ÷ (4,215,000 J/(m³·°C) × flow))", Source: coolingSource}, (*winter).outletTemperature},
		{Field{Name: "freezes", Kind: Truth, Doc: "Whether the water comes down to 0 °C before the end of the bed."}, (*winter).freezes},
		{Field{Name: "thawed_share", Kind: Number, Dimension: quantity.Share, Doc: "Share of the bed, from the inlet on, over which the water stays above 0 °C.",
			Formula: "4,215,000 J/(m³·°C) × flow ÷ conductance × ln((inlet − air) ÷ −air) ÷ area, at most 100 %", Source: coolingSource}, (*winter).thawedShare},
	},
)

var (
	leavingSource     = Citation{Title: treatment.LeavingTemperatureSource, Standing: Published}
	conductanceSource = Citation{Title: treatment.ConductanceSource + "; conductivities of Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 7", Standing: FromMemory}
	coolingSource     = Citation{Title: treatment.CoolingSource, Standing: FromMemory}
)

// The items of a bed in winter.
const (
	withoutSnow = "without snow"
	withSnow    = "with snow"
	asItLeaves  = "as it leaves the house"
	cooledDown  = "cooled to the year's mean"
)

// winter is a bed in the coldest month of the year.
type winter struct {
	*running
	cover, inlet       string
	warmth, month, air Value
	coldest            int
	conductance        Value
}

func (d *drawing) winters() []*winter {
	month, air, coldest := d.coldestMonth()
	var all []*winter
	for _, r := range d.running() {
		for _, cover := range []string{withoutSnow, withSnow} {
			conductance := r.conductance(cover == withSnow)
			for _, inlet := range []string{asItLeaves, cooledDown} {
				all = append(all, &winter{r, cover, inlet, d.warmth(inlet), month, air, coldest, conductance})
			}
		}
	}
	return all
}

func (w *winter) subject() Subject {
	return Subject{w.ID + " " + w.cover + ", water " + w.inlet, []string{w.ID}, []string{w.Pointer}}
}

func (d *drawing) coldestMonth() (name, air Value, coldest int) {
	means, lacks := d.monthlyMeans()
	if len(lacks) > 0 {
		return unknown(lacks...), unknown(lacks...), 0
	}
	_, c := extremes(means)
	return text(year[c.month].name, c.temperature.Inputs...), c.temperature, c.month
}

func (d *drawing) warmth(inlet string) Value {
	switch {
	case inlet == asItLeaves:
		return number(treatment.LeavingTemperature)
	case d.Site.Climate == nil || !d.Site.Climate.MeanAnnualTemperature.Given():
		return unknown(Lack{climatePointer + "/mean_annual_temperature", "mean_annual_temperature of the site's climate"})
	default:
		return number(d.Site.Climate.MeanAnnualTemperature.Value, Input{Name: "mean annual temperature", Pointer: climatePointer + "/mean_annual_temperature"})
	}
}

// conductance is that of all that lies between the water and the air.
func (r *running) conductance(snow bool) Value {
	dry := r.dryGravel()
	from := []Value{r.depth, dry, r.mulch()}
	layers := []treatment.Sheet{sheet("saturated gravel", from[0]), sheet("dry gravel", dry), sheet("litter", from[2])}
	if snow {
		from = append(from, r.snow())
		layers = append(layers, sheet("old snow", from[3]))
	}
	return worked(r.lack("mulch"), func() (float64, error) { return treatment.Conductance(layers...) }, from...)
}

func sheet(material string, thickness Value) treatment.Sheet {
	for _, c := range treatment.Conductivities {
		if c.Material == material {
			return treatment.Sheet{Thickness: thickness.Number, Conductivity: c.Value}
		}
	}
	return treatment.Sheet{} // which no conductance takes
}

// dryGravel is the mean depth of media above the water.
func (r *running) dryGravel() Value {
	media := r.meanDepth()
	inputs, lacks := gathered([]Value{media, r.depth})
	switch dry := media.Number - r.depth.Number; {
	case len(lacks) > 0:
		return unknown(lacks...)
	case dry < 0:
		return unknown(Lack{r.Pointer + "/water_level", "water_level of " + r.ID + " below the mean level of its gravel"})
	default:
		return number(dry, inputs...)
	}
}

func (b *bed) mulch() Value {
	if !b.Mulch.Given() {
		return unknown(Lack{b.Pointer + "/mulch", `mulch of ` + b.ID + ` ("0 in" where there is none)`})
	}
	return number(b.Mulch.Value, b.drawn("mulch"))
}

func (r *running) snow() Value {
	pointer := climatePointer + "/snow_depth"
	if c := r.drawing.Site.Climate; c != nil && c.SnowDepth.Given() {
		return number(c.SnowDepth.Value, Input{Name: "snow depth", Pointer: pointer})
	}
	return unknown(Lack{pointer, `snow_depth of the site's climate ("0 in" where none lasts)`})
}

func (w *winter) bypassed() Value {
	if !w.month.Known() {
		return unknown(w.month.Lacks...)
	}
	return truth(len(leftOpen([]int{w.coldest}, w.drawing.season())) == 0, w.month.Inputs...)
}

// cooled gives a figure of the water that cools along the bed.
func (w *winter) cooled(figure func(treatment.Cooling) (float64, error)) Value {
	area := w.running.area()
	return worked(Lack{climatePointer, "temperatures of the site's climate"}, func() (float64, error) {
		return figure(treatment.Cooling{Inlet: w.warmth.Number, Air: w.air.Number, Conductance: w.conductance.Number, Area: area.Number, Flow: w.flow.Number})
	}, w.warmth, w.air, w.conductance, area, w.flow)
}

func (w *winter) outletTemperature() Value { return w.cooled(treatment.Cooling.Outlet) }

func (w *winter) freezes() Value {
	thawed := w.thawedShare()
	return Value{Truth: thawed.Known() && thawed.Number < 1, Inputs: thawed.Inputs, Lacks: thawed.Lacks}
}

func (w *winter) thawedShare() Value {
	return w.cooled(func(c treatment.Cooling) (float64, error) {
		area, freezes, err := c.FreezingArea()
		if !freezes {
			return 1, err
		}
		return area / c.Area, err
	})
}
