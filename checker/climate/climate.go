// Package climate has the formulas of the weather that a bed or a pond stands
// in: reference evapotranspiration, the monthly water balance, frost in the
// ground and ice on open water. It knows nothing of the design document and
// holds no limit.
//
// Units are those of the SI: m, s, Pa, W/m², kg/m³; evaporation is a rate in
// m/s, radiation the mean over the whole day in W/m², humidity and soil
// moisture are ratios. Exceptions, each said where it occurs: temperatures are
// in °C, freezing indices in °C·d, seasons in whole days or d. Many equations
// hold only in the units of their source (kPa, MJ/m² a day, mm a day, Btu); they
// stand here with the source's own coefficients, between conversions.
//
// A value outside the range that a function states is an error; no function
// returns NaN or silently moves a value into range.
//
// The equations of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes,
// Smith: Crop evapotranspiration, Rome 1998) are written from memory, with its
// numbering, and reproduce its worked examples, which were read as open
// evapotranspiration libraries quote them.
package climate

// Units of the sources, in SI.
const (
	kPa      = 1000.0
	mmHg     = 133.322387415 // Pa, conventional
	mmPerDay = 0.001 / day   // m/s
	mjPerDay = 1e6 / day     // W/m² for 1 MJ/m² a day
	kmPerH   = 1000.0 / 3600
	day      = 86400.0 // s
)
