package figures

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"greysill/checker/climate"
	"greysill/checker/quantity"
)

var frostTable = tabulate(
	List{Name: "frost", Doc: "How deep the ground freezes: always one item.", Subject: "the ground in winter"},
	func(d *drawing) []*frost { return []*frost{d.frost()} },
	func(*frost) Subject { return Subject{Name: "the ground in winter", Pointers: []string{climatePointer}} },
	[]column[*frost]{
		{Field{Name: "frost_depth", Kind: Number, Dimension: quantity.Length, Doc: "Frost depth as drawn."}, (*frost).drawnDepth},
		{Field{Name: "freezing_index", Kind: Number, Dimension: quantity.DegreeDays,
			Doc:     "Freezing index of the air: as drawn, else of the monthly means, which are those of a milder winter than the one that a design is for.",
			Formula: indexFormula, Source: indexSource}, func(f *frost) Value { return f.index }},
		{Field{Name: "freezing_index_by", Kind: Text, Doc: "What the freezing index is known from.", Words: []string{indexDrawn, indexOfMonths}},
			func(f *frost) Value { return f.by }},
		{Field{Name: "freezing_index_by_monthly_means", Kind: Number, Dimension: quantity.DegreeDays, Doc: "Freezing index of the monthly means.",
			Formula: indexFormula, Source: indexSource}, func(f *frost) Value { return f.ofMonths }},
		{Field{Name: "season_length", Kind: Number, Dimension: quantity.Duration, Doc: "Length of the freezing season, in whole months: those named, and those whose mean temperature is 0 °C or less.",
			Formula: "Σ days of the freezing months"}, func(f *frost) Value { return f.days }},
		{Field{Name: "mean_annual_temperature", Kind: Number, Dimension: quantity.Temperature, Doc: "Mean temperature of the year: as drawn, else of the monthly means.",
			Formula: "as drawn; else Σ mean temperature × days of the month ÷ 365"}, func(f *frost) Value { return f.annual }},
		{Field{Name: "soil_assumed", Kind: Text, Doc: "What kind of ground the soil's texture is read as, with the dry density, moisture and surfaces that are assumed; " +
			"the greatest density is not taken with the greatest moisture, which its pores could not hold."},
			func(f *frost) Value { return f.assumed() }},
		{Field{Name: "least_depth_by_stefan", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least depth by Stefan's formula over the values assumed; the formula gives more than there is.",
			Formula: stefanFormula, Source: stefan}, func(f *frost) Value { return f.stefan.least }},
		{Field{Name: "greatest_depth_by_stefan", Kind: Number, Dimension: quantity.Length,
			Doc:     "Greatest depth by Stefan's formula over the values assumed.",
			Formula: stefanFormula, Source: stefan}, func(f *frost) Value { return f.stefan.greatest }},
		{Field{Name: "least_depth_by_berggren", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least depth by the modified Berggren formula over the values assumed and the forms of λ.",
			Formula: berggrenFormula, Source: berggren}, func(f *frost) Value { return f.berggren.least }},
		{Field{Name: "least_depth_by_berggren_source", Kind: Text, Doc: "Which form of λ gives the least."}, func(f *frost) Value { return f.berggren.leastBy }},
		{Field{Name: "greatest_depth_by_berggren", Kind: Number, Dimension: quantity.Length,
			Doc:     "Greatest depth by the modified Berggren formula over the values assumed and the forms of λ.",
			Formula: berggrenFormula, Source: berggren}, func(f *frost) Value { return f.berggren.greatest }},
		{Field{Name: "greatest_depth_by_berggren_source", Kind: Text, Doc: "Which form of λ gives the greatest."}, func(f *frost) Value { return f.berggren.greatestBy }},
	},
)

// What the freezing index is known from.
const (
	indexDrawn    = "drawn"
	indexOfMonths = "monthly means"
)

const (
	indexFormula    = "as drawn; else Σ −mean temperature × days of the month over the run of months in which it falls the most"
	stefanFormula   = "√(2 × conductivity × surface factor × freezing index × 86,400 s ÷ (144 Btu/lb × dry density × moisture)), the conductivity by Kersten, mean of frozen and thawed"
	berggrenFormula = "λ × Stefan's depth, λ by the thermal ratio and the fusion parameter"
)

var (
	indexSource = Citation{Title: climate.FreezingIndexSource, Standing: FromMemory}
	stefan      = Citation{Title: climate.StefanSource + "; conductivity: " + climate.KerstenSource + "; soils: " + climate.SoilRangeSource, Standing: FromMemory}
	berggren    = Citation{Title: climate.ModifiedBerggrenSource, Standing: FromMemory}
)

// lambdas are the forms of λ, less the one that lies between two others.
var lambdas = []climate.Lambda{climate.AldrichPaynter, climate.Reduced, climate.Neumann}

// frozenSurfaces are what covers the ground round a bed, from what lets the
// least frost in to what lets in the most.
var frozenSurfaces = []string{"turf", "bare soil"}

// groundOf reads a soil's texture as a kind of ground; our reading, common
// practice.
var groundOf = map[string]string{
	"gravel": "gravel", "coarse sand": "sand", "sand": "sand", "fine sand": "sand", "loamy sand": "sand", "sandy loam": "sand",
	"loam": "silt", "silt loam": "silt", "silt": "silt",
	"sandy clay loam": "clay", "clay loam": "clay", "silty clay loam": "clay", "sandy clay": "clay", "silty clay": "clay", "clay": "clay",
}

// leastFineMoisture is the least moisture of a fine soil that Kersten's formula
// holds for.
const leastFineMoisture = 0.07

// frost is the ground in winter.
type frost struct {
	*drawing
	index, by, ofMonths, days, annual, soil Value
	stefan                                  depths
	berggren                                depths
}

// depths are the least and the greatest of a depth with what gives each.
type depths struct {
	least, greatest     Value
	leastBy, greatestBy Value
}

// byStefan stands for the form of λ of Stefan's formula, which has none.
var byStefan = []climate.Lambda{{Name: "Stefan", Source: climate.StefanSource}}

func (d *drawing) frost() *frost {
	f := &frost{drawing: d, soil: d.groundKind(), days: d.freezingDays(), annual: d.annualMean()}
	f.index, f.by, f.ofMonths = d.freezingIndex()
	winter := climate.Winter{FreezingIndex: f.index.Number, Days: 1} // of no matter to Stefan, nor where nothing freezes
	f.stefan = f.over(winter, byStefan, func(g climate.Ground, w climate.Winter, _ climate.Lambda) (float64, error) {
		return climate.Stefan(g, w)
	}, f.index, f.soil)
	winter.MeanAnnual = f.annual.Number
	if f.index.Number > 0 {
		winter.Days = f.days.Number / day
	}
	f.berggren = f.over(winter, lambdas, func(g climate.Ground, w climate.Winter, l climate.Lambda) (float64, error) {
		b, err := climate.ModifiedBerggren(g, w, l)
		return b.Depth, err
	}, f.index, f.soil, f.days, f.annual)
	return f
}

func (f *frost) drawnDepth() Value {
	c := f.Site.Climate
	if c == nil || !c.FrostDepth.Given() {
		return unknown(Lack{climatePointer + "/frost_depth", "frost_depth of the site's climate"})
	}
	return number(c.FrostDepth.Value, Input{Name: "frost depth", Pointer: climatePointer + "/frost_depth"})
}

func (d *drawing) freezingIndex() (index, by, ofMonths Value) {
	means, inputs, lacks := d.meansOfYear()
	season, err := climate.FreezingSeason(means)
	ofMonths = orUnknown(number(season.Index, inputs...), lacks)
	if err != nil && len(lacks) == 0 {
		ofMonths = unknown(Lack{monthsOfYear, "mean temperatures within the range of the formula: " + err.Error()})
	}
	if c := d.Site.Climate; c != nil && c.FreezingIndex.Given() {
		drawn := Input{Name: "freezing index", Pointer: climatePointer + "/freezing_index"}
		return number(c.FreezingIndex.Value, drawn), text(indexDrawn, drawn), ofMonths
	}
	if !ofMonths.Known() {
		v := unknown(Lack{climatePointer + "/freezing_index", "freezing_index of the site's climate, or the mean_temperature of every month"})
		return v, v, ofMonths
	}
	return ofMonths, text(indexOfMonths, inputs...), ofMonths
}

// meansOfYear gives the mean temperature of every month.
func (d *drawing) meansOfYear() (means [climate.Months]float64, inputs []Input, lacks []Lack) {
	months, lacks := d.monthlyMeans()
	for i, m := range months {
		means[i] = m.temperature.Number
	}
	return means, []Input{{Name: "mean temperature of every month", Pointer: monthsOfYear}}, lacks
}

// freezingDays is how long the months that freeze last, in s.
func (d *drawing) freezingDays() Value {
	f := freezing(d.Site.Climate)
	days := 0
	for _, m := range f.months {
		days += year[m].days
	}
	return orUnknown(number(float64(days)*day, f.inputs...), f.lacks)
}

func (d *drawing) annualMean() Value {
	if c := d.Site.Climate; c != nil && c.MeanAnnualTemperature.Given() {
		return number(c.MeanAnnualTemperature.Value, Input{Name: "mean annual temperature", Pointer: climatePointer + "/mean_annual_temperature"})
	}
	means, inputs, lacks := d.meansOfYear()
	if len(lacks) > 0 {
		return unknown(Lack{climatePointer + "/mean_annual_temperature", "mean_annual_temperature of the site's climate, or the mean_temperature of every month"})
	}
	return worked(Lack{monthsOfYear, "mean temperatures"}, func() (float64, error) { return climate.MeanOfYear(means) }, Value{Inputs: inputs})
}

// groundKind is the kind of ground that the soil's texture is read as.
func (d *drawing) groundKind() Value {
	s := d.Site.Soil
	if s == nil || s.Texture == "" {
		return unknown(soilEntry("texture"))
	}
	return text(groundOf[s.Texture], Input{Name: "texture", Pointer: soilPointer + "/texture"})
}

// ground is what soils of the kind weigh and hold.
func (f *frost) ground() climate.SoilRange {
	r := climate.SoilRanges[slices.IndexFunc(climate.SoilRanges, func(r climate.SoilRange) bool { return r.Soil == f.soil.Text })]
	if r.Fine {
		r.LeastMoisture = max(r.LeastMoisture, leastFineMoisture)
	}
	return r
}

func (f *frost) assumed() Value {
	if !f.soil.Known() {
		return f.soil
	}
	r := f.ground()
	percent := func(share float64) string { return strconv.FormatFloat(100*share, 'g', 3, 64) + " %" }
	return text(fmt.Sprintf("%s: dry density %.0f to %.0f kg/m³, moisture %s to %s of the dry mass, surface from %s (factor %g) to %s (factor %g)",
		r.Soil, r.LeastDensity, r.MostDensity, percent(r.LeastMoisture), percent(r.MostMoisture),
		frozenSurfaces[0], surfaceFactor(frozenSurfaces[0]), frozenSurfaces[1], surfaceFactor(frozenSurfaces[1])), f.soil.Inputs...)
}

func surfaceFactor(surface string) float64 {
	i := slices.IndexFunc(climate.SurfaceFactors, func(s climate.SurfaceFactor) bool { return s.Surface == surface })
	return climate.SurfaceFactors[i].Freeze
}

// over gives the least and the greatest depth over the values assumed and some
// forms of λ.
func (f *frost) over(w climate.Winter, forms []climate.Lambda, depth func(climate.Ground, climate.Winter, climate.Lambda) (float64, error), from ...Value) depths {
	inputs, lacks := gathered(from)
	if len(lacks) > 0 {
		return noDepths(lacks...)
	}
	d := depths{least: number(math.Inf(1), inputs...), greatest: number(math.Inf(-1), inputs...)}
	for _, g := range f.grounds() {
		for _, surface := range frozenSurfaces {
			w.SurfaceFactor = surfaceFactor(surface)
			for _, form := range forms {
				x, err := depth(g, w, form)
				if err != nil {
					return noDepths(Lack{climatePointer, "climate of the site within the range of the formula: " + err.Error()})
				}
				d.take(x, text(form.Name+": "+form.Source, inputs...))
			}
		}
	}
	return d
}

func noDepths(lacks ...Lack) depths {
	v := unknown(lacks...)
	return depths{least: v, greatest: v, leastBy: v, greatestBy: v}
}

func (d *depths) take(x float64, by Value) {
	if x < d.least.Number {
		d.least.Number, d.leastBy = x, by
	}
	if x > d.greatest.Number {
		d.greatest.Number, d.greatestBy = x, by
	}
}

// grounds are the soils at the ends of the ranges, but for the densest with the
// most water, which its pores could not hold.
func (f *frost) grounds() []climate.Ground {
	r := f.ground()
	return []climate.Ground{
		soilOf(r, r.LeastDensity, r.LeastMoisture), soilOf(r, r.LeastDensity, r.MostMoisture), soilOf(r, r.MostDensity, r.LeastMoisture),
	}
}

func soilOf(r climate.SoilRange, density, moisture float64) climate.Ground {
	frozen, thawed, err := climate.Kersten(density, moisture, r.Fine)
	if err != nil {
		panic(err) // the table of soils is wrong
	}
	return climate.Ground{DryDensity: density, Moisture: moisture, Conductivity: (frozen + thawed) / 2}
}
