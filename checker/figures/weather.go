package figures

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"greysill/checker/climate"
	"greysill/checker/design"
	"greysill/checker/quantity"
)

// What the reference evapotranspiration of a month is known from.
const (
	drawnET        = "drawn"
	penmanMonteith = "Penman–Monteith"
	hargreaves     = "Hargreaves"
)

const (
	latitudePointer = "/location/latitude"
	altitudePointer = "/location/altitude"
)

// monthWeather is the weather of one month.
type monthWeather struct {
	rain, et Value // m in the month
	by       Value // what et is known from
}

// weather gives every month's rain and reference evapotranspiration.
func (d *drawing) weather() []monthWeather {
	all := make([]monthWeather, len(year))
	fao := d.penmanMonteith()
	for i := range year {
		w := monthWeather{rain: d.ofMonth(i, "rain", func(m *design.Month) quantity.Quantity { return m.Rain })}
		w.et, w.by = d.referenceET(i, fao)
		all[i] = w
	}
	return all
}

// monthGiven finds a month among those that the climate gives, -1 where it gives
// none.
func (d *drawing) monthGiven(m int) int {
	if d.Site.Climate == nil {
		return -1
	}
	return slices.IndexFunc(d.Site.Climate.Months, func(given design.Month) bool { return given.Month == year[m].code })
}

// ofMonth gives an entry of a month's weather. What lacks it in one month lacks it
// in all the months that do not give it, so that a year without it is one lack.
func (d *drawing) ofMonth(m int, entry string, of func(*design.Month) quantity.Quantity) Value {
	i := d.monthGiven(m)
	if i < 0 || !of(&d.Site.Climate.Months[i]).Given() {
		return unknown(Lack{monthsOfYear, entry + " of " + monthsText(d.monthsWithout(of)) + " in the site's climate"})
	}
	return number(of(&d.Site.Climate.Months[i]).Value,
		Input{Name: strings.ReplaceAll(entry, "_", " ") + " of " + year[m].name, Pointer: fmt.Sprintf("%s/%d/%s", monthsOfYear, i, entry)})
}

// monthsWithout gives the months that do not give an entry.
func (d *drawing) monthsWithout(of func(*design.Month) quantity.Quantity) []int {
	var without []int
	for m := range year {
		if i := d.monthGiven(m); i < 0 || !of(&d.Site.Climate.Months[i]).Given() {
			without = append(without, m)
		}
	}
	return without
}

func (d *drawing) minimum(m int) Value {
	return d.ofMonth(m, "minimum_temperature", func(m *design.Month) quantity.Quantity { return m.MinimumTemperature })
}

func (d *drawing) maximum(m int) Value {
	return d.ofMonth(m, "maximum_temperature", func(m *design.Month) quantity.Quantity { return m.MaximumTemperature })
}

func (d *drawing) mean(m int) Value {
	return d.ofMonth(m, "mean_temperature", func(m *design.Month) quantity.Quantity { return m.MeanTemperature })
}

func (d *drawing) latitude() Value {
	if !d.Location.Latitude.Given() {
		return unknown(Lack{latitudePointer, "latitude of the location"})
	}
	return number(d.Location.Latitude.Value, Input{Name: "latitude", Pointer: latitudePointer})
}

func (d *drawing) altitude() Value {
	if !d.Location.Altitude.Given() {
		return unknown(Lack{altitudePointer, "altitude of the location"})
	}
	return number(d.Location.Altitude.Value, Input{Name: "altitude", Pointer: altitudePointer})
}

// referenceET gives what is drawn, else what the fullest weather gives.
func (d *drawing) referenceET(m int, fao *fullYear) (et, by Value) {
	et = d.ofMonth(m, "reference_et", func(m *design.Month) quantity.Quantity { return m.ReferenceET })
	if et.Known() {
		return et, text(drawnET, et.Inputs...)
	}
	if fao != nil {
		et = fao.et(m)
		return et, orUnknown(text(penmanMonteith, et.Inputs...), et.Lacks)
	}
	least, greatest, mean, latitude := d.minimum(m), d.maximum(m), d.mean(m), d.latitude()
	if _, lacks := gathered([]Value{least, greatest, mean, latitude}); len(lacks) > 0 {
		return unknown(et.Lacks...), unknown(et.Lacks...)
	}
	et = worked(Lack{monthsOfYear, "temperatures of " + year[m].name + " and the latitude"}, func() (float64, error) {
		return hargreavesET(time.Month(m+1), latitude.Number, mean.Number, least.Number, greatest.Number)
	}, mean, least, greatest, latitude)
	return et, orUnknown(text(hargreaves, et.Inputs...), et.Lacks)
}

// hargreavesET is the depth of a month by Hargreaves's formula, from a latitude in
// degrees.
func hargreavesET(m time.Month, latitude, mean, least, greatest float64) (float64, error) {
	phi, err := climate.Latitude(latitude)
	if err != nil {
		return 0, err
	}
	middle, err := climate.MiddleDay(m)
	if err != nil {
		return 0, err
	}
	above, err := climate.Extraterrestrial(phi, middle)
	if err != nil {
		return 0, err
	}
	rate, err := climate.Hargreaves(mean, least, greatest, above)
	if err != nil {
		return 0, err
	}
	return climate.DepthOfMonth(rate, m)
}

// fullYear is a year whose weather is given in full.
type fullYear struct {
	place  climate.Place
	months [climate.Months]climate.Weather
	inputs []Input
	err    error // of the weather
}

// penmanMonteith puts together what the equation takes, nil where anything is
// lacking: it takes the months before and after each.
func (d *drawing) penmanMonteith() *fullYear {
	latitude, altitude := d.latitude(), d.altitude()
	from := []Value{latitude, altitude}
	f := &fullYear{place: climate.Place{Elevation: altitude.Number}}
	f.place.Latitude, f.err = climate.Latitude(latitude.Number)
	for i := range year {
		least, greatest := d.minimum(i), d.maximum(i)
		damp := d.ofMonth(i, "humidity", func(m *design.Month) quantity.Quantity { return m.Humidity })
		wind := d.ofMonth(i, "wind", func(m *design.Month) quantity.Quantity { return m.Wind })
		sun, shines := d.sun(i)
		from = append(from, least, greatest, damp, wind, sun)
		if v := outOf(0, least, greatest, damp, wind, sun); !v.Known() {
			return nil
		}
		f.add(i, climate.Weather{Least: least.Number, Greatest: greatest.Number, Wind: wind.Number}, damp.Number, sun.Number, shines)
	}
	inputs, lacks := gathered(from)
	if len(lacks) > 0 {
		return nil
	}
	f.inputs = inputs
	return f
}

// sun is the radiation of a month in J/m² a day, else how long the sun shines in
// s a day.
func (d *drawing) sun(m int) (v Value, shines bool) {
	v = d.ofMonth(m, "radiation", func(m *design.Month) quantity.Quantity { return m.Radiation })
	if v.Known() {
		return v, false
	}
	return d.ofMonth(m, "sunshine", func(m *design.Month) quantity.Quantity { return m.Sunshine }), true
}

// add puts in a month, by its mean humidity and its radiation or sunshine.
func (f *fullYear) add(m int, w climate.Weather, damp, sun float64, shines bool) {
	vapour, err := climate.VapourFromMeanHumidity(w.Least, w.Greatest, damp)
	w.Vapour, w.Solar = vapour, sun/day
	if err == nil && shines {
		w.Solar, err = f.solar(time.Month(m+1), sun)
	}
	if f.err == nil {
		f.err = err
	}
	f.months[m] = w
}

func (f *fullYear) solar(m time.Month, sunshine float64) (float64, error) {
	middle, err := climate.MiddleDay(m)
	if err != nil {
		return 0, err
	}
	daylight, err := climate.Daylight(f.place.Latitude, middle)
	if err != nil {
		return 0, err
	}
	above, err := climate.Extraterrestrial(f.place.Latitude, middle)
	if err != nil {
		return 0, err
	}
	return climate.SolarFromSunshine(sunshine, daylight, above, climate.FAOAngstrom)
}

// et is the depth of a month. Dew, of a dark month, counts as none.
func (f *fullYear) et(m int) Value {
	return worked(Lack{monthsOfYear, "weather of " + year[m].name}, func() (float64, error) {
		if f.err != nil {
			return 0, f.err
		}
		terms, err := climate.ReferenceETOfMonth(f.place, time.Month(m+1), f.months)
		if err != nil {
			return 0, err
		}
		return climate.DepthOfMonth(max(terms.ET, 0), time.Month(m+1))
	}, Value{Inputs: f.inputs})
}
