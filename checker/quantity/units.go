package quantity

import (
	"math/big"
	"strings"
)

// measure is what a unit measures, as exponents of the base measures. Slopes
// written as a length over a length, percentages and angles have no unit in
// the SI; they are told apart here because a design means different things by
// them.
type measure struct {
	length, mass, time, temperature, angle, percent, grade int
}

// times gives the measure of a product, m · n^power.
func (m measure) times(n measure, power int) measure {
	return measure{
		m.length + power*n.length,
		m.mass + power*n.mass,
		m.time + power*n.time,
		m.temperature + power*n.temperature,
		m.angle + power*n.angle,
		m.percent + power*n.percent,
		m.grade + power*n.grade,
	}
}

var (
	length      = measure{length: 1}
	area        = measure{length: 2}
	volume      = measure{length: 3}
	mass        = measure{mass: 1}
	duration    = measure{time: 1}
	speed       = measure{length: 1, time: -1}
	flow        = measure{length: 3, time: -1}
	density     = measure{mass: 1, length: -3}
	load        = measure{mass: 1, length: -2, time: -1}
	energy      = measure{mass: 1, length: 2, time: -2}
	power       = measure{mass: 1, length: 2, time: -3}
	temperature = measure{temperature: 1}
	angle       = measure{angle: 1}
	percent     = measure{percent: 1}
	grade       = measure{grade: 1}
)

// unit is a unit as the trade spells it, or a product of such units. Its size
// is exact, so that every spelling of a quantity gives the same number.
type unit struct {
	measure
	size *big.Rat // of one unit, in the SI unit of its measure
	zero *big.Rat // of a temperature scale: its zero, in K; nil for all else
}

// spelled lists the units, the usual symbol first, then other spellings.
//
// The US units are exact by definition: the international inch, foot, yard and
// mile (1959), the US gallon of 231 in³, the avoirdupois pound, the acre of
// 43,560 ft². Source: NIST Handbook 44, Appendix C, General Tables of Units of
// Measurement. The US survey foot, out of use since 2023, is not among them. A
// year is 365 days, a month the twelfth part of it: common practice for
// intervals of upkeep, no source.
var spelled = []struct {
	spellings string
	size      string // exact, in the SI unit of the measure; may be a quotient
	measure   measure
}{
	{`m metre metres meter meters`, `1`, length},
	{`mm millimetre millimetres millimeter millimeters`, `0.001`, length},
	{`cm centimetre centimetres centimeter centimeters`, `0.01`, length},
	{`km kilometre kilometres kilometer kilometers`, `1000`, length},
	{`um micron microns`, `0.000001`, length},
	{`in " inch inches`, `0.0254`, length},
	{`ft ' foot feet`, `0.3048`, length},
	{`yd yard yards`, `0.9144`, length},
	{`mi mile miles`, `1609.344`, length},
	{`mil mils`, `0.0000254`, length},

	{`ac acre acres`, `4046.8564224`, area},
	{`ha hectare hectares`, `10000`, area},
	{`sf`, `0.09290304`, area},

	{`L l litre litres liter liters`, `0.001`, volume},
	{`mL ml`, `0.000001`, volume},
	{`gal gals gallon gallons`, `0.003785411784`, volume},
	{`cf`, `0.028316846592`, volume},
	{`cy`, `0.764554857984`, volume},

	{`s sec second seconds`, `1`, duration},
	{`min mins minute minutes`, `60`, duration},
	{`h hr hrs hour hours`, `3600`, duration},
	{`d day days`, `86400`, duration},
	{`wk week weeks`, `604800`, duration},
	{`mo month months`, `2628000`, duration},
	{`yr year years`, `31536000`, duration},

	{`gpd GPD`, `0.003785411784/86400`, flow},
	{`gpm GPM`, `0.003785411784/60`, flow},
	{`cfs CFS`, `0.028316846592`, flow},
	{`mph`, `0.44704`, speed},

	{`kg kilogram kilograms`, `1`, mass},
	{`g gram grams`, `0.001`, mass},
	{`mg`, `0.000001`, mass},
	{`ug`, `0.000000001`, mass},
	{`t tonne tonnes`, `1000`, mass},
	{`lb lbs pound pounds`, `0.45359237`, mass},
	{`pcf`, `0.45359237/0.028316846592`, density},

	{`J`, `1`, energy},
	{`kJ`, `1000`, energy},
	{`MJ`, `1000000`, energy},
	{`W`, `1`, power},

	{`° deg degree degrees`, `1`, angle},
	{`% percent`, `1/100`, percent},
}

// scales lists the temperature scales in the same way, each with its zero in
// kelvin: 0 °C is 273.15 K, 0 °F is 459.67 × 5/9 K, by definition.
var scales = []struct{ spellings, size, zero string }{
	{`°C C degC Celsius °Celsius`, `1`, `273.15`},
	{`°F F degF Fahrenheit °Fahrenheit`, `5/9`, `45967/180`},
	{`K`, `1`, `0`},
}

// refused lists words that are left out because they could mean more than one
// unit, with what to write in their place.
var refused = map[string]string{
	"ton":      `a ton has 2,000 lb, 2,240 lb or 1,000 kg; write "lb", "kg" or "t" (1,000 kg)`,
	"tons":     `a ton has 2,000 lb, 2,240 lb or 1,000 kg; write "lb", "kg" or "t" (1,000 kg)`,
	"oz":       `an ounce may be a mass or a volume; write "lb" or "gal"`,
	"imp":      `only the US gallon is understood; write an imperial gallon as 4.54609 L`,
	"imperial": `only the US gallon is understood; write an imperial gallon as 4.54609 L`,
	"UK":       `only the US gallon is understood; write an imperial gallon as 4.54609 L`,
	"ppm":      `parts per million may be by mass or by volume; write "mg/L"`,
	"mpi":      `write "min/in"`,
	"US":       `write "gal" alone; every gallon is the US gallon`,
	"M":        `write "m" for metres, "mo" for months, "min" for minutes`,
}

// units has every unit by each of its spellings; names lists the spellings in
// the order of the tables.
var units, names = unitTable()

func unitTable() (map[string]unit, []string) {
	table := make(map[string]unit)
	var names []string
	enter := func(spellings string, u unit) {
		for _, name := range strings.Fields(spellings) {
			table[name] = u
			names = append(names, name)
		}
	}
	for _, s := range spelled {
		enter(s.spellings, unit{measure: s.measure, size: exact(s.size)})
	}
	for _, s := range scales {
		enter(s.spellings, unit{measure: temperature, size: exact(s.size), zero: exact(s.zero)})
	}
	return table, names
}

// exact reads a decimal number, or a quotient of two.
func exact(text string) *big.Rat {
	over, under, quotient := strings.Cut(text, "/")
	r, _ := new(big.Rat).SetString(over)
	if quotient {
		by, _ := new(big.Rat).SetString(under)
		r.Quo(r, by)
	}
	return r
}
