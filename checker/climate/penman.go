package climate

import (
	"time"

	"greysill/checker/internal/bounds"
)

// PenmanMonteithSource is the reference evapotranspiration of grass.
const PenmanMonteithSource = "FAO 56 (1998), eq. 6; Examples 17 and 18"

// Terms are what the Penman–Monteith equation takes, and its result, so that a
// reviewer can follow every step.
type Terms struct {
	Temperature      float64 // mean of the least and the greatest, °C
	Wind             float64 // at 2 m, m/s
	Psychrometric    float64 // Pa/°C
	Slope            float64 // of the saturation vapour pressure curve, Pa/°C
	Saturation       float64 // mean saturation vapour pressure, Pa
	Vapour           float64 // actual vapour pressure, Pa
	Extraterrestrial float64 // W/m²
	ClearSky         float64 // W/m²
	NetShortwave     float64 // W/m²
	NetLongwave      float64 // outgoing, W/m²
	NetRadiation     float64 // W/m²
	SoilHeat         float64 // into the ground, W/m²
	ET               float64 // reference evapotranspiration, m/s
}

// PenmanMonteith gives the reference evapotranspiration in m/s from the first
// terms that the equation names: temperature, wind, psychrometric constant,
// slope, both vapour pressures, net radiation and soil heat. In a dark winter it
// can come out a little below 0: dew. An actual vapour pressure above saturation
// is dew too, never an error. Source: PenmanMonteithSource.
func PenmanMonteith(t Terms) (float64, error) {
	if err := bounds.Refuse(temperature("mean temperature", t.Temperature), speed(t.Wind),
		bounds.Positive("psychrometric constant", t.Psychrometric, "Pa/°C"), bounds.Positive("slope of the saturation vapour pressure", t.Slope, "Pa/°C"),
		vapour("saturation vapour pressure", t.Saturation), vapour("actual vapour pressure", t.Vapour),
		bounds.Given("net radiation", t.NetRadiation, -1000, 1000, "W/m²"), bounds.Given("soil heat flux", t.SoilHeat, -1000, 1000, "W/m²")); err != nil {
		return 0, err
	}
	slope, gamma := t.Slope/kPa, t.Psychrometric/kPa
	energy := 0.408 * slope * (t.NetRadiation - t.SoilHeat) / mjPerDay
	drying := gamma * 900 / (t.Temperature + 273) * t.Wind * (t.Saturation - t.Vapour) / kPa
	return (energy + drying) / (slope + gamma*(1+0.34*t.Wind)) * mmPerDay, nil
}

// Place is where the weather is, for the sun and the air.
type Place struct {
	Latitude  float64 // rad, north positive
	Elevation float64 // m above the sea
}

// Weather is the mean weather of a day or a month.
type Weather struct {
	Least, Greatest float64 // means of the daily extremes of temperature, °C
	Vapour          float64 // actual vapour pressure, Pa
	Wind            float64 // at 2 m, m/s
	Solar           float64 // radiation on the ground, W/m²
}

// Mean is the temperature that FAO 56 takes for the mean: the middle between
// the extremes, °C.
func (w Weather) Mean() float64 { return (w.Least + w.Greatest) / 2 }

// ReferenceET gives the reference evapotranspiration with every step before it,
// for a day of the year from 1 to 366 and a soil heat flux in W/m², 0 for a
// single day. A day on which the sun does not rise is an error. Source:
// PenmanMonteithSource and those of the steps.
func ReferenceET(p Place, day int, w Weather, soilHeat float64) (Terms, error) {
	var c chain
	t := Terms{Temperature: w.Mean(), Wind: w.Wind, Vapour: w.Vapour, SoilHeat: soilHeat}
	t.Psychrometric = c.take(Psychrometric(c.take(Pressure(p.Elevation))))
	t.Slope = c.take(VapourSlope(t.Temperature))
	t.Saturation = c.take(MeanSaturation(w.Least, w.Greatest))
	t.Extraterrestrial = c.take(Extraterrestrial(p.Latitude, day))
	t.ClearSky = c.take(ClearSky(p.Elevation, t.Extraterrestrial))
	t.NetShortwave = c.take(NetShortwave(w.Solar, GrassAlbedo))
	t.NetLongwave = c.take(NetLongwave(w.Least, w.Greatest, w.Vapour, w.Solar, t.ClearSky))
	t.NetRadiation = t.NetShortwave - t.NetLongwave
	t.ET = c.take(PenmanMonteith(t))
	if c.err != nil {
		return Terms{}, c.err
	}
	return t, nil
}

// ReferenceETOfMonth gives the reference evapotranspiration of one month of a
// mean year from January to December, mean of the month in m/s, with every step
// before it: by the middle day of the month, and with the soil heat that the
// months before and after it give. Source: as ReferenceET, SoilHeatSource.
func ReferenceETOfMonth(p Place, m time.Month, year [Months]Weather) (Terms, error) {
	day, err := MiddleDay(m)
	if err != nil {
		return Terms{}, err
	}
	at := int(m - time.January)
	before, after := year[(at+Months-1)%Months], year[(at+1)%Months]
	heat, err := MonthlySoilHeat(before.Mean(), after.Mean())
	if err != nil {
		return Terms{}, err
	}
	return ReferenceET(p, day, year[at], heat)
}

// DepthOfMonth turns a mean rate of a month in m/s into the depth of the whole
// month in m.
func DepthOfMonth(rate float64, m time.Month) (float64, error) {
	days, err := DaysIn(m)
	if err != nil {
		return 0, err
	}
	return unless(bounds.Refuse(bounds.Finite("rate", rate, "m/s")), rate*float64(days)*day)
}
