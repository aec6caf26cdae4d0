package earthwork

import "slices"

// SoilsSource names where the factors of the soils stand.
const SoilsSource = "U.S. Army FM 5-434, Earthmoving Operations, soil conversion factors, as tabulated in a review course for the PE examination"

// Soil has the volumes that a unit of soil in its natural place comes to when it is
// dug and when it is compacted. They are typical; a soil's own densities, where
// measured, go before them (Swell, Shrinkage).
type Soil struct {
	Name             string
	Loose, Compacted float64 // volume per volume in bank
}

// The soils of the table that SoilsSource names (published). Blasted rock stays
// bulkier than it was however it is compacted.
var (
	Clay        = Soil{"clay", 1.27, 0.90}
	CommonEarth = Soil{"common earth", 1.25, 0.90}
	BlastedRock = Soil{"rock, blasted", 1.50, 1.30}
	Sand        = Soil{"sand", 1.12, 0.95}
)

// SoilOf gives the soil of the table that a soil texture of the USDA is read as:
// sands and loamy sands as sand, clays with sandy and silty clay as clay, loams and
// silts as common earth (our reading, common practice, no source). ok is false for
// any other word; the table has no gravel.
func SoilOf(texture string) (soil Soil, ok bool) {
	for _, reading := range readings {
		if slices.Contains(reading.textures, texture) {
			return reading.soil, true
		}
	}
	return Soil{}, false
}

var readings = []struct {
	soil     Soil
	textures []string
}{
	{Sand, []string{"coarse sand", "sand", "fine sand", "loamy sand"}},
	{CommonEarth, []string{"sandy loam", "loam", "silt loam", "silt", "sandy clay loam", "clay loam", "silty clay loam"}},
	{Clay, []string{"sandy clay", "silty clay", "clay"}},
}

// State is how soil lies.
type State int

// The states of soil.
const (
	Bank      State = iota // in its natural place
	Loose                  // dug, on the heap or the truck
	Compacted              // placed and compacted
)

// Convert gives the volume of the same soil in another state, ok=false for a
// negative volume.
func (s Soil) Convert(volume float64, from, to State) (converted float64, ok bool) {
	return result(volume*s.perBank(to)/s.perBank(from), volume)
}

func (s Soil) perBank(state State) float64 {
	switch state {
	case Loose:
		return s.Loose
	case Compacted:
		return s.Compacted
	default:
		return 1
	}
}

// Swell is the share by which soil grows when it is dug, from its densities in
// place and loose: γ bank / γ loose − 1. Its reciprocal with 1 added, γ loose / γ
// bank, is the load factor. ok is false unless both densities are positive. Source:
// as worked in the page that SoilsSource names.
func Swell(bankDensity, looseDensity float64) (share float64, ok bool) {
	if looseDensity == 0 || bankDensity == 0 {
		return 0, false
	}
	return result(bankDensity/looseDensity-1, bankDensity, looseDensity)
}

// Shrinkage is what a volume in bank comes to when placed, as a share of it: the
// shrinkage factor. ok is false unless the volume in bank is positive and the one
// placed not negative. Source: as worked in the page that SoilsSource names.
func Shrinkage(bank, placed float64) (factor float64, ok bool) {
	if bank == 0 {
		return 0, false
	}
	return result(placed/bank, bank, placed)
}

// SettlementSource names where Settlement stands.
const SettlementSource = "Moving the Earth: The Workbook of Excavation, p. 2.51"

// Settlement is how far a fill that is not compacted settles in time, by a rule of
// thumb: half of its depth times the share by which the soil shrinks. ok is false
// for a negative depth and for a share outside 0 to 1. Source: SettlementSource
// (published).
func Settlement(depth, shrink float64) (settlement float64, ok bool) {
	if shrink > 1 {
		return 0, false
	}
	return result(depth*shrink/2, depth, shrink)
}
