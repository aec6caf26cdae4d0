package quantity

import "math/big"

// Dimension is what a quantity measures. Two quantities can be compared only
// when their dimensions agree.
type Dimension string

// The dimensions, each with the unit that its values have in memory.
const (
	Length       Dimension = "length"                 // m; a text of it is never negative, a figure may be
	Level        Dimension = "level"                  // m above the site's datum, any sign
	GrainSize    Dimension = "grain size"             // m, written mm or µm
	Area         Dimension = "area"                   // m²
	Volume       Dimension = "volume"                 // m³
	EarthVolume  Dimension = "earth volume"           // m³ of soil, stone or mulch, written yd³
	Flow         Dimension = "flow"                   // m³/s, of a day's water
	PeakFlow     Dimension = "peak flow"              // m³/s while it lasts, written gal/min or L/s
	Velocity     Dimension = "velocity"               // m/s
	RainRate     Dimension = "rain rate"              // m/s, written in/h or mm/h
	Loading      Dimension = "loading"                // m/s, written gal/d/ft² or L/d/m²
	Load         Dimension = "load"                   // kg/m² a second, written g/m²/d or lb/ac/d
	Percolation  Dimension = "percolation"            // s/m, written min/in
	Slope        Dimension = "slope"                  // fall over length, a ratio
	Share        Dimension = "share"                  // a ratio from 0 to 1, written %
	Duration     Dimension = "time span"              // s
	Temperature  Dimension = "temperature"            // °C
	DegreeDays   Dimension = "degree days"            // °C·d of frost
	Angle        Dimension = "angle"                  // degrees
	Mass         Dimension = "mass"                   // kg
	Density      Dimension = "density"                // kg/m³, also mg/L
	Radiation    Dimension = "radiation"              // J/m² a day, written MJ/m²/d
	Conductivity Dimension = "hydraulic conductivity" // m/s, written m/d or ft/d
	Number       Dimension = "number"                 // a plain count or ratio without unit
)

// Dimensions lists every dimension.
var Dimensions = []Dimension{
	Length, Level, GrainSize, Area, Volume, EarthVolume, Flow, PeakFlow, Velocity, RainRate, Loading, Load, Percolation, Slope,
	Share, Duration, Temperature, DegreeDays, Angle, Mass, Density, Radiation, Conductivity, Number,
}

var examples = map[Dimension]string{
	Length:       `a length such as "24 in", "2 ft 6 in" or "0.6 m"`,
	Level:        `a level such as "98.5 ft" or "-0.4 m"`,
	GrainSize:    `a grain size such as "3/8 in", "2 mm" or "20 um"`,
	Area:         `an area such as "300 ft2" or "28 m2"`,
	Volume:       `a volume such as "50 gal", "190 L" or "2 yd3"`,
	EarthVolume:  `a volume of earth such as "2 yd3" or "1.5 m3"`,
	Flow:         `a flow such as "160 gal/d", "4.5 gal/min" or "600 L/d"`,
	PeakFlow:     `a flow such as "4.5 gal/min" or "0.3 L/s"`,
	Velocity:     `a velocity such as "2 ft/s" or "0.6 m/s"`,
	RainRate:     `a rain rate such as "1.5 in/h" or "38 mm/h"`,
	Loading:      `a loading such as "0.8 gal/d/ft2" or "33 L/d/m2"`,
	Load:         `a load such as "8 g/m2/d" or "70 lb/ac/d"`,
	Percolation:  `a percolation rate such as "20 min/in" or "8 min/cm"`,
	Slope:        `a slope such as "1/4 in/ft", "2 %" or "1:50"`,
	Share:        `a share from "0 %" to "100 %"`,
	Duration:     `a duration such as "90 d", "6 mo" or "24 h"`,
	Temperature:  `a temperature such as "39 °F" or "4 °C"`,
	DegreeDays:   `degree days such as "900 °F·d" or "500 °C·d"`,
	Angle:        `an angle such as "12 deg"`,
	Mass:         `a mass such as "40 lb" or "18 kg"`,
	Density:      `a density or concentration such as "100 lb/ft3", "1600 kg/m3" or "2 mg/L"`,
	Radiation:    `radiation such as "18 MJ/m2/d"`,
	Conductivity: `a hydraulic conductivity such as "3000 ft/d" or "900 m/d"`,
	Number:       `a plain number such as "3"`,
}

// Examples says in words what a text of the dimension looks like, to follow
// "expected": a length such as "24 in".
func Examples(d Dimension) string { return examples[d] }

// narrower has the dimensions that are kinds of another, whose values may be
// compared with it.
var narrower = map[Dimension]Dimension{Level: Length, GrainSize: Length, EarthVolume: Volume, PeakFlow: Flow}

// Comparable reports whether quantities of the two dimensions can be compared:
// a level is a length that may be negative, a peak flow is a flow.
func Comparable(a, b Dimension) bool { return a.widest() == b.widest() }

func (d Dimension) widest() Dimension {
	if of, is := narrower[d]; is {
		return of
	}
	return d
}

// kind is what one measure can be in a design.
type kind struct {
	noun       string // what a text of it is: "a length"
	dimensions []Dimension
	inMemory   *big.Rat // size of the unit in memory, in the SI unit of the measure; nil for 1
}

// kinds lists the measures that a design can use. Several dimensions may share
// one; the value in memory is the same for all of them.
var kinds = map[measure]kind{
	{}:                             {"a number without a unit", []Dimension{Number}, nil},
	length:                         {"a length", []Dimension{Length, Level, GrainSize}, nil},
	area:                           {"an area", []Dimension{Area}, nil},
	volume:                         {"a volume", []Dimension{Volume, EarthVolume}, nil},
	flow:                           {"a flow", []Dimension{Flow, PeakFlow}, nil},
	speed:                          {"a length per time", []Dimension{Velocity, RainRate, Loading, Conductivity}, nil},
	load:                           {"a mass per area and time", []Dimension{Load}, nil},
	measure{}.times(speed, -1):     {"a time per length", []Dimension{Percolation}, nil},
	grade:                          {"a slope", []Dimension{Slope}, nil},
	percent:                        {"a percentage", []Dimension{Slope, Share}, nil},
	duration:                       {"a duration", []Dimension{Duration}, nil},
	temperature:                    {"a temperature", []Dimension{Temperature}, nil},
	temperature.times(duration, 1): {"a number of degree days", []Dimension{DegreeDays}, exact("86400")},
	angle:                          {"an angle", []Dimension{Angle}, nil},
	mass:                           {"a mass", []Dimension{Mass}, nil},
	density:                        {"a density", []Dimension{Density}, nil},
	power.times(area, -1):          {"radiation", []Dimension{Radiation}, exact("1/86400")},
}
