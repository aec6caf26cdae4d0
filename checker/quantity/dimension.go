// Package quantity reads and writes physical quantities the way the trade
// spells them: "24 in", "2 ft 6 in", "1/4 in/ft", "250 gal/d", "4 °C".
//
// A quantity in memory is a float64 in the coherent SI unit of its dimension
// (temperatures in °C, angles in degrees). The unit as written is not kept:
// reports show every quantity in the system asked for.
package quantity

// Dimension is what a quantity measures. Two quantities can be compared only
// when their dimensions agree.
type Dimension string

// The dimensions, each with the unit that its values have in memory.
const (
	Length       Dimension = "length"                 // m, never negative
	Level        Dimension = "level"                  // m above the site's datum, any sign
	Area         Dimension = "area"                   // m²
	Volume       Dimension = "volume"                 // m³
	Flow         Dimension = "flow"                   // m³/s
	Velocity     Dimension = "velocity"               // m/s
	RainRate     Dimension = "rain rate"              // m/s, written in/h or mm/h
	Loading      Dimension = "loading"                // m/s, written gal/d/ft² or L/d/m²
	Percolation  Dimension = "percolation"            // s/m, written min/in
	Slope        Dimension = "slope"                  // fall over length, a ratio
	Share        Dimension = "share"                  // a ratio from 0 to 1, written %
	Duration     Dimension = "duration"               // s
	Temperature  Dimension = "temperature"            // °C
	DegreeDays   Dimension = "degree days"            // °C·d of frost
	Angle        Dimension = "angle"                  // degrees
	Mass         Dimension = "mass"                   // kg
	Density      Dimension = "density"                // kg/m³, also mg/L
	Radiation    Dimension = "radiation"              // J/m² a day, written MJ/m²/d
	Conductivity Dimension = "hydraulic conductivity" // m/s, written m/d or ft/d
	Number       Dimension = "number"                 // a plain count or ratio without unit
)
