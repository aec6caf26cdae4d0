package figures

import (
	"slices"

	"greysill/checker/climate"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var monthTable = tabulate(
	List{Name: "months", Subject: "a planted gravel bed or pond in one month",
		Doc: "Every planted gravel bed and pond in each month of a mean year that comes back again and again; what parts above it evaporate is not taken off."},
	(*drawing).months, (*balanced).subject,
	[]column[*balanced]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(b *balanced) Value { return text(b.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind.", Words: []string{plantedBed, pond}}, func(b *balanced) Value { return b.kind() }},
		{Field{Name: "month", Kind: Text, Doc: "The month.", Words: monthNames([]int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})},
			func(b *balanced) Value { return text(year[b.month].name) }},
		{Field{Name: "greywater", Kind: Number, Dimension: quantity.Volume, Doc: "Greywater that reaches it in the month, the days of the bypass season by the bypass ways.",
			Formula: "warm-season flow × days outside the bypass season + bypass-season flow × days within", Source: householdFlow},
			func(b *balanced) Value { return b.greywater }},
		{Field{Name: "rain", Kind: Number, Dimension: quantity.Length, Doc: "Rain in the month."}, func(b *balanced) Value { return b.weather.rain }},
		{Field{Name: "least_runoff", Kind: Number, Dimension: quantity.Volume, Doc: "Rain that storm inflows and roof drains lead to it in the month, by the least runoff coefficients.",
			Formula: runoffFormula, Source: rational}, func(b *balanced) Value { return b.runoff[driest] }},
		{Field{Name: "greatest_runoff", Kind: Number, Dimension: quantity.Volume, Doc: "Rain that storm inflows and roof drains lead to it in the month, by the greatest runoff coefficients.",
			Formula: runoffFormula, Source: rational}, func(b *balanced) Value { return b.runoff[wettest] }},
		{Field{Name: "reference_et", Kind: Number, Dimension: quantity.Length,
			Doc:     "Reference evapotranspiration in the month: as drawn, else by Penman–Monteith where the weather of all months is given in full, else by Hargreaves.",
			Formula: "as drawn; else FAO 56 equation 6; else 0.0023 × (mean + 17.8 °C) × √(maximum − minimum) × radiation above the air ÷ 2.45 MJ/kg", Source: etSource},
			func(b *balanced) Value { return b.weather.et }},
		{Field{Name: "reference_et_by", Kind: Text, Doc: "What it is known from.", Words: []string{drawnET, penmanMonteith, hargreaves}},
			func(b *balanced) Value { return b.weather.by }},
		{Field{Name: "least_coefficient", Kind: Number, Dimension: quantity.Number,
			Doc:     "Least crop coefficient: of a bed the least of any wetland cover in any part of its season, of a pond that of open water.",
			Formula: "read from the table", Source: fieldCover}, func(b *balanced) Value { return b.coefficient(wettest) }},
		{Field{Name: "greatest_coefficient", Kind: Number, Dimension: quantity.Number,
			Doc:     "Greatest crop coefficient: of a bed the greatest measured on a small one, which loses two to three times as much as a wide field, of a pond that of open water.",
			Formula: "read from the table", Source: smallBed}, func(b *balanced) Value { return b.coefficient(driest) }},
		{Field{Name: "least_outflow", Kind: Number, Dimension: quantity.Volume,
			Doc:     "Water that leaves it in the month by its outlet or overflow in the driest case: by the greatest crop coefficient, the least runoff and the least pores.",
			Formula: balanceFormula, Source: balanceSource}, func(b *balanced) Value { return b.out(driest) }},
		{Field{Name: "greatest_outflow", Kind: Number, Dimension: quantity.Volume,
			Doc:     "Water that leaves it in the month by its outlet or overflow in the wettest case: by the least crop coefficient, the greatest runoff and the greatest pores.",
			Formula: balanceFormula, Source: balanceSource}, func(b *balanced) Value { return b.out(wettest) }},
		{Field{Name: "least_store", Kind: Number, Dimension: quantity.Volume, Doc: "Water that it holds at the end of the month in the driest case.",
			Formula: balanceFormula, Source: balanceSource}, func(b *balanced) Value { return b.store() }},
		{Field{Name: "may_run_dry", Kind: Truth, Doc: "Whether it runs dry in the month in the driest case."}, (*balanced).runsDry},
		{Field{Name: "may_spill", Kind: Truth, Doc: "Whether any water leaves it in the month in the wettest case."}, (*balanced).spills},
	},
)

const (
	runoffFormula  = "Σ coefficient × rain × catchment × the share of its water that reaches the part"
	balanceFormula = "store before + greywater + runoff + (rain − coefficient × reference evapotranspiration) × area; above the full store it leaves; no seepage, with a liner"
)

var (
	balanceSource = Citation{Title: climate.BalanceSource, Standing: Practice}
	fieldCover    = Citation{Title: climate.Table12Source, Standing: FromMemory}
	smallBed      = Citation{Title: climate.TyphaBedSource, Standing: Published}
	etSource      = Citation{Title: climate.PenmanMonteithSource + "; " + climate.HargreavesSource, Standing: FromMemory}
)

// The two cases of a balance.
const (
	driest  = iota // the greatest crop coefficient, the least runoff and pores
	wettest        // the opposite
	cases
)

// coefficients has the crop coefficients of a bed and of a pond.
var coefficients = map[string][cases]float64{plantedBed: bedCoefficients(), pond: pondCoefficients()}

const openCover = "open water shallower than 2 m"

func bedCoefficients() (c [cases]float64) {
	c[wettest] = climate.CropCoefficients[0].Initial
	for _, cover := range climate.CropCoefficients {
		if cover.Cover != openCover {
			c[wettest] = min(c[wettest], cover.Initial, cover.Middle, cover.End)
		}
	}
	for _, m := range climate.MeasuredCoefficients {
		c[driest] = max(c[driest], m.Most)
	}
	return c
}

func pondCoefficients() [cases]float64 {
	i := slices.IndexFunc(climate.CropCoefficients, func(c climate.CropCoefficient) bool { return c.Cover == openCover })
	open := climate.CropCoefficients[i]
	return [cases]float64{driest: max(open.Initial, open.Middle, open.End), wettest: min(open.Initial, open.Middle, open.End)}
}

// balanced is a bed or pond in one month.
type balanced struct {
	*basinYear
	month     int
	weather   *monthWeather
	greywater Value
	runoff    [cases]Value
}

// basinYear is the whole year of a bed or pond.
type basinYear struct {
	*part
	full    [cases]Value
	drains  [cases]Value // area that drains to it times the share of the rain that runs off
	months  []*balanced
	results [cases][]climate.Balance
	known   [cases]Value // what the results were worked out from
}

func (d *drawing) months() []*balanced {
	parts := d.ofKind(plantedBed, pond)
	if len(parts) == 0 {
		return nil
	}
	flows, weather, catchments, bypassed := d.flows(), d.weather(), d.catchments(), d.bypassedDays()
	var all []*balanced
	for _, p := range parts {
		b := &basinYear{part: p, full: p.fullStore(), drains: [cases]Value{catchments[driest](p), catchments[wettest](p)}}
		b.add(flows[p.node-len(d.Sources)].inMonths(bypassed), weather)
		b.balance()
		all = append(all, b.months...)
	}
	return all
}

// catchments tells how much land drains to a part, each piece times its share of
// the rain that runs off.
func (d *drawing) catchments() (reaching [cases]func(*part) Value) {
	var given [cases][]gift
	for _, s := range d.storms() {
		given[driest] = append(given[driest], gift{s.node, outOf(s.area.Number*s.least.Number, s.area, s.least)})
		given[wettest] = append(given[wettest], gift{s.node, outOf(s.area.Number*s.greatest.Number, s.area, s.greatest)})
	}
	return [cases]func(*part) Value{d.carried(given[driest]), d.carried(given[wettest])}
}

// fullStore is the water in a bed's pores, or in a pond, by the least and the
// greatest porosity.
func (p *part) fullStore() [cases]Value {
	if p.Kind == pond {
		v := newVessel(p)
		return [cases]Value{v.volume, v.volume}
	}
	r := &running{bed: newBed(p)}
	r.depth = r.waterDepth()
	r.wet, r.wetLacks = r.underWater()
	return [cases]Value{r.pores(func(l *layer) Value { return l.porosity().least }), r.pores(func(l *layer) Value { return l.porosity().greatest })}
}

func (b *basinYear) add(greywater [climate.Months]Value, weather []monthWeather) {
	for m := range year {
		month := &balanced{basinYear: b, month: m, weather: &weather[m], greywater: greywater[m]}
		for c, area := range b.drains {
			rain := month.weather.rain
			month.runoff[c] = worked(Lack{monthsOfYear, "rain of " + year[m].name},
				func() (float64, error) { return hydraulics.RunoffVolume(1, rain.Number, area.Number) }, rain, area)
		}
		b.months = append(b.months, month)
	}
}

// inMonths is the greywater of each month, by the days of it that lie in the
// bypass season.
func (f flow) inMonths(bypassed [climate.Months]int) (all [climate.Months]Value) {
	from := []Value{f.greywater(warm)}
	if f.drawing.season() != nil {
		from = append(from, f.greywater(bypassing), Value{Inputs: []Input{{Name: "bypass season", Pointer: seasonPointer}}})
	}
	inputs, lacks := gathered(from)
	for m, turned := range bypassed {
		volume := from[0].Number * float64(year[m].days-turned) * day
		if turned > 0 {
			volume += from[1].Number * float64(turned) * day
		}
		all[m] = orUnknown(number(volume, inputs...), lacks)
	}
	return all
}

// bypassedDays tells how many days of each month lie in the bypass season.
func (d *drawing) bypassedDays() (days [climate.Months]int) {
	season := d.season()
	if season == nil {
		return days
	}
	from, to := seasonDay(season.From), seasonDay(season.To)
	for m := range year {
		first := dayOf(m, 1)
		for k := range year[m].days {
			if within(from, to, first+k) {
				days[m]++
			}
		}
	}
	return days
}

// sealed is no more than the drawing's word that no water seeps away.
func (p *part) sealed() Value {
	if p.Liner == nil {
		return unknown(Lack{p.Pointer + "/liner", "liner of " + p.ID + ", without which its seepage is not known"})
	}
	return truth(true, p.drawn("liner"))
}

func (b *basinYear) balance() {
	area := b.drawnArea()
	for c := range cases {
		from := []Value{area, b.sealed(), b.full[c], b.drains[c], b.months[0].greywater, b.everyMonth()}
		spans := make([]climate.Fluxes, len(b.months))
		for i, m := range b.months {
			spans[i] = climate.Fluxes{In: m.greywater.Number + m.runoff[c].Number, Rain: m.weather.rain.Number, ET: m.weather.et.Number,
				Coefficient: coefficients[b.Kind][c]}
		}
		b.known[c] = worked(b.lack("outline"), func() (x float64, err error) {
			b.results[c], err = climate.Basin{Area: area.Number, Full: b.full[c].Number}.MeanYear(spans)
			return 0, err
		}, from...)
	}
}

// everyMonth stands for the weather of the whole year.
func (b *basinYear) everyMonth() Value {
	var weather []Value
	for _, m := range b.months {
		weather = append(weather, m.weather.rain, m.weather.et)
	}
	_, lacks := gathered(weather)
	return orUnknown(Value{Inputs: []Input{{Name: "weather of every month", Pointer: monthsOfYear}}}, lacks)
}

func (b *balanced) subject() Subject {
	return Subject{b.ID + " in " + year[b.month].name, []string{b.ID}, []string{b.Pointer}}
}

func (b *balanced) coefficient(c int) Value {
	return number(coefficients[b.Kind][c])
}

// result gives a figure of the balance in one case.
func (b *balanced) result(c int, figure func(*climate.Balance) Value) Value {
	if !b.known[c].Known() {
		return b.known[c]
	}
	v := figure(&b.results[c][b.month])
	v.Inputs = b.known[c].Inputs
	return v
}

func (b *balanced) out(c int) Value {
	return b.result(c, func(r *climate.Balance) Value { return number(r.Out) })
}

func (b *balanced) store() Value {
	return b.result(driest, func(r *climate.Balance) Value { return number(r.End) })
}

func (b *balanced) runsDry() Value {
	return b.result(driest, func(r *climate.Balance) Value { return truth(r.Dry()) })
}

func (b *balanced) spills() Value {
	return b.result(wettest, func(r *climate.Balance) Value { return truth(r.Out > 0) })
}
