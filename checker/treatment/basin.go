package treatment

import "greysill/checker/internal/bounds"

// SettlingAreaSource is the source of SettlingArea.
const SettlingAreaSource = "A = 1.2·Q/v: U.S. EPA 1992 and Washington State Department of Ecology, construction stormwater, as applied in a consultant's calculation"

// SettlingAreaFactor is what that method multiplies the ideal area with.
const SettlingAreaFactor = 1.2

// MediumSiltVelocity is the settling velocity in m/s that the same method gives
// for 0.02 mm medium silt, 0.00096 ft/s: a rounded cold-water value for design,
// which Stokes' law does not give to better than 10 %.
const MediumSiltVelocity = 0.00096 * foot

// SettlingArea gives the surface in m² that keeps whatever settles at a velocity
// in m/s, from the flow in m³/s and a factor, 1 to 10, over the ideal basin's
// area. Source: SettlingAreaSource.
func SettlingArea(flow, velocity, factor float64) (float64, error) {
	return bounds.Result(factor*flow/velocity, bounds.Positive("flow", flow, "m³/s"), bounds.Positive("settling velocity", velocity, "m/s"),
		bounds.Given("factor over the ideal area", factor, 1, 10, ""))
}

// SludgeRate is how fast settled sludge gathers.
type SludgeRate struct {
	Name  string
	Water string
	Rate  float64 // m³/s per person
	Origin
}

// SludgeRates lists the rates. Sludge packs with time, so the yearly rate falls
// with the interval; all are of whole sewage, an upper bound for greywater.
var SludgeRates = []SludgeRate{
	{"Gray 1995, first 6 months", "whole household sewage", 0.254e-3 / day, gray1995},
	{"Gray 1995, at 60 months", "whole household sewage", 0.178e-3 / day, gray1995},
	{"Gray 1995, mean", "whole household sewage", 0.234e-3 / day, gray1995},
}

var gray1995 = Origin{"N. F. Gray, Environmental Technology 16 (1995) 795, abstract", Published}

// SludgeVolume gives the sludge in m³ that gathers in a time in s from a number
// of persons at a rate in m³/s per person. Definition, no source.
func SludgeVolume(persons, rate, time float64) (float64, error) {
	return bounds.Result(persons*rate*time, bounds.NotNegative("number of persons", persons, ""),
		bounds.NotNegative("sludge rate", rate, "m³/s"), bounds.NotNegative("time", time, "s"))
}

// CleanOutInterval gives the time in s in which sludge fills a storage volume in
// m³, the inverse of SludgeVolume.
func CleanOutInterval(storage, persons, rate float64) (float64, error) {
	return bounds.Result(storage/(persons*rate), bounds.NotNegative("sludge storage", storage, "m³"),
		bounds.Positive("number of persons", persons, ""), bounds.Positive("sludge rate", rate, "m³/s"))
}
