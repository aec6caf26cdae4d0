package quantity

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// Unit is a unit to show quantities of one dimension in, and how many decimals
// to show.
type Unit struct {
	Symbol   string  // "in", "gal/d", "" for plain numbers
	size     float64 // of one unit, in the unit that values have in memory
	zero     float64 // of a temperature scale: its zero, in °C
	decimals int     // at most; zeros at the end are not shown
}

// choice is one of the units to show a dimension in.
type choice struct {
	symbol   string
	decimals int
	below    string // used for quantities smaller than this; "" for any size
}

// choices lists, for each dimension, the units of each system, for the smallest
// quantities first.
var choices = map[Dimension]map[System][]choice{
	Length:       {US: {{"in", 3, "0.1 in"}, {"in", 2, "1 in"}, {"in", 1, "3 ft"}, {"ft", 2, ""}}, SI: {{"mm", 1, "10 mm"}, {"mm", 0, "1 m"}, {"m", 2, ""}}},
	Level:        {US: {{"ft", 2, ""}}, SI: {{"m", 3, ""}}},
	GrainSize:    {US: {{"µm", 1, "100 um"}, {"mm", 2, "1/8 in"}, {"in", 3, ""}}, SI: {{"µm", 1, "100 um"}, {"mm", 1, ""}}},
	Area:         {US: {{"ft²", 1, ""}}, SI: {{"m²", 2, ""}}},
	Volume:       {US: {{"gal", 1, ""}}, SI: {{"L", 1, "1 m3"}, {"m³", 2, ""}}},
	EarthVolume:  {US: {{"yd³", 2, ""}}, SI: {{"m³", 2, ""}}},
	Flow:         {US: {{"gal/d", 1, "5000 gal/d"}, {"gal/min", 1, ""}}, SI: {{"L/d", 1, "20000 L/d"}, {"L/s", 2, ""}}},
	PeakFlow:     {US: {{"gal/min", 1, ""}}, SI: {{"L/s", 2, ""}}},
	Velocity:     {US: {{"ft/s", 2, ""}}, SI: {{"m/s", 2, ""}}},
	RainRate:     {US: {{"in/h", 2, ""}}, SI: {{"mm/h", 1, ""}}},
	Loading:      {US: {{"gal/d/ft²", 2, ""}}, SI: {{"L/d/m²", 1, ""}}},
	Load:         {US: {{"lb/ac/d", 1, ""}}, SI: {{"g/m²/d", 2, ""}}},
	Percolation:  {US: {{"min/in", 1, ""}}, SI: {{"min/cm", 1, ""}}},
	Slope:        {US: {{"in/ft", 3, ""}}, SI: {{"%", 2, ""}}},
	Share:        {US: {{"%", 1, ""}}, SI: {{"%", 1, ""}}},
	Duration:     {US: durations, SI: durations},
	Temperature:  {US: {{"°F", 1, ""}}, SI: {{"°C", 1, ""}}},
	DegreeDays:   {US: {{"°F·d", 0, ""}}, SI: {{"°C·d", 0, ""}}},
	Angle:        {US: {{"°", 1, ""}}, SI: {{"°", 1, ""}}},
	Mass:         {US: {{"lb", 1, "100 lb"}, {"lb", 0, ""}}, SI: {{"kg", 1, "100 kg"}, {"kg", 0, "1 t"}, {"t", 2, ""}}},
	Density:      {US: {{"mg/L", 2, "10 g/L"}, {"lb/ft³", 1, ""}}, SI: {{"mg/L", 2, "10 g/L"}, {"kg/m³", 0, ""}}},
	Radiation:    {US: {{"MJ/m²/d", 1, ""}}, SI: {{"MJ/m²/d", 1, ""}}},
	Conductivity: {US: {{"ft/d", 1, ""}}, SI: {{"m/d", 1, ""}}},
	Number:       {US: numbers, SI: numbers},
}

var durations = []choice{{"s", 0, "2 min"}, {"min", 1, "2 h"}, {"h", 1, "2 d"}, {"d", 1, "100 d"}, {"d", 0, "2 yr"}, {"yr", 1, ""}}

var numbers = []choice{{"", 3, "10"}, {"", 1, ""}}

// maxDecimals keeps the noise of computing out of sight: float64 has 15 to 17
// significant digits.
const maxDecimals = 12

const thousandths = 3 // decimals

// UnitFor chooses the unit in which all the values, which are read together,
// are shown: a measurement, its limit and the margin between them. It has
// enough decimals that no value but zero is shown as zero and that different
// values are shown as different; what differs by less than 10⁻⁸ of the
// greatest value counts as equal.
func UnitFor(d Dimension, s System, values ...float64) Unit {
	return chosen(d, s, greatest(values)).telling(values)
}

// UnitAs chooses the unit that a text is written in, where the system shows the
// dimension in it, and else as UnitFor does: what is held against "30 in" reads
// best in inches. The quantity that the text gives is shown to a thousandth of
// the unit where it is that fine.
func UnitAs(text string, d Dimension, s System, values ...float64) Unit {
	one, _, err := ParseAny("1 " + strings.TrimLeft(text, "0123456789.,/+- "))
	written, _, amiss := ParseAny(text)
	if err == nil && amiss == nil {
		for _, c := range shownIn(d, s) {
			if one.Value == c.one {
				return c.unit.exact(written.Value).telling(values)
			}
		}
	}
	return UnitFor(d, s, values...)
}

// ready has the choices with their sizes worked out.
var ready = sync.OnceValue(func() map[Dimension]map[System][]sized {
	all := make(map[Dimension]map[System][]sized)
	for d, systems := range choices {
		all[d] = make(map[System][]sized)
		for s, list := range systems {
			for _, c := range list {
				all[d][s] = append(all[d][s], c.sized())
			}
		}
	}
	return all
})

// sized is a choice with its sizes worked out.
type sized struct {
	unit  Unit
	one   float64 // the quantity that reads 1 in the unit
	below float64
}

func (c choice) sized() sized {
	s := sized{Unit{Symbol: c.symbol, size: 1, decimals: c.decimals}, 1, math.Inf(1)}
	if c.below != "" {
		s.below = amount(c.below)
	}
	if c.symbol != "" {
		s.unit.zero = amount("0 " + c.symbol)
		s.one = amount("1 " + c.symbol)
		s.unit.size = s.one - s.unit.zero
	}
	return s
}

// amount is the value of a text of the table above.
func amount(text string) float64 {
	q, _, err := ParseAny(text)
	if err != nil {
		panic(err) // the table is wrong
	}
	return q.Value
}

// shownIn lists the units that a system shows a dimension in. What is not US is
// SI.
func shownIn(d Dimension, s System) []sized {
	if s != US {
		s = SI
	}
	return ready()[d][s]
}

// chosen gives the unit for values up to a size.
func chosen(d Dimension, s System, size float64) Unit {
	list := shownIn(d, s)
	for _, c := range list[:len(list)-1] {
		if size < c.below {
			return c.unit
		}
	}
	return list[len(list)-1].unit
}

func greatest(values []float64) float64 {
	size := 0.0
	for _, v := range values {
		size = math.Max(size, math.Abs(v))
	}
	return size
}

// telling adds the decimals that it takes to tell the values apart.
func (u Unit) telling(values []float64) Unit {
	for u.decimals < maxDecimals && !u.tellsApart(values) {
		u.decimals++
	}
	return u
}

// exact adds the decimals that it takes to show a value as it is, when
// thousandths are enough for that.
func (u Unit) exact(v float64) Unit {
	scaled := (v - u.zero) / u.size
	for decimals, power := 0, 1.0; decimals <= thousandths; decimals, power = decimals+1, power*10 {
		if math.Abs(math.Round(scaled*power)-scaled*power) <= 1e-9*power {
			u.decimals = max(u.decimals, decimals)
			return u
		}
	}
	return u
}

// tellsApart reports whether values that differ read differently. In order, it
// is enough to look at neighbours.
func (u Unit) tellsApart(values []float64) bool {
	noise := greatest(values) * 1e-8 // rules see 9 digits
	ordered := slices.Sorted(slices.Values(values))
	for i, v := range ordered {
		if math.Abs(v) > noise && u.digits(v) == "0" {
			return false
		}
		if i > 0 && v-ordered[i-1] > noise && u.digits(v) == u.digits(ordered[i-1]) {
			return false
		}
	}
	return true
}

// Format shows a value.
func (u Unit) Format(v float64) string { return u.FormatDifference(v - u.zero) }

// FormatDifference shows a difference between two values. It differs from
// Format for temperatures, of which 1 °C more is 1.8 °F more and not 33.8 °F.
func (u Unit) FormatDifference(v float64) string {
	switch u.Symbol {
	case "":
		return u.digits(v)
	case "°":
		return u.digits(v) + "°"
	}
	return u.digits(v) + " " + u.Symbol
}

// digits shows a difference without the unit.
func (u Unit) digits(v float64) string {
	text := strconv.FormatFloat(v/u.size, 'f', u.decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}

// Format shows one value by itself.
func Format(v float64, d Dimension, s System) string { return UnitFor(d, s, v).Format(v) }
