// Package treatment has the formulas of the water's own way through a greywater
// system: its strength and the load on a bed, what leaves the bed, how the water
// cools and freezes in winter, what settles in a basin, and the ammonia and
// oxygen of a pond. It knows nothing of the design document and holds no limit.
//
// Units are those of the SI: m, m², m³, s, m³/s, kg/m³ (1 mg/L is 0.001), rates
// per s or in m/s, loads in kg/s or kg/(m²·s), W, Pa. Temperatures are in °C.
// A flow of 0.4 m³/d is 0.4/86400.
//
// A value outside the range that a function states is an error; no function
// returns NaN or silently moves a value into range.
//
// Sources of treatment constants disagree, on one house by a factor of fifty.
// Every set of constants therefore carries its own name, source and standing,
// none is a default, and whoever shows a result shows the name of its set.
package treatment

// How a named value is known.
const (
	Published      = "published"       // read in the text named
	CommonPractice = "common practice" // a fact of the trade, no source
	FromMemory     = "from memory"     // remembered, the text not read
)

// Origin says where a named value comes from.
type Origin struct {
	Source   string // document and place in it
	Standing string // Published, CommonPractice or FromMemory
}

// Units of the sources, in SI.
const (
	day              = 86400.0
	year             = 365 * day // of rate constants in m/yr
	milligramPerL    = 1e-3      // kg/m³
	gramPerDay       = 1e-3 / day
	foot             = 0.3048
	gallon           = 0.003785411784
	celsiusToKelvin  = 273.15
	standardGravity  = 9.80665
	standardPressure = 101325.0
)
