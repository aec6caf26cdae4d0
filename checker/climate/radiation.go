package climate

import (
	"errors"
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	SolarBySunshineSource    = "FAO 56 (1998), eq. 35; Example 10"
	SolarByTemperatureSource = "FAO 56 (1998), eq. 50; Example 15"
	ClearSkySource           = "FAO 56 (1998), eq. 37; Example 18"
	NetShortwaveSource       = "FAO 56 (1998), eq. 38; Example 12"
	NetLongwaveSource        = "FAO 56 (1998), eq. 39; Example 11"
	SoilHeatSource           = "FAO 56 (1998), eq. 43 and 44; Example 13"
)

// Angstrom has the shares of the sun's radiation that reach the ground under an
// overcast sky, and what a clear sky adds.
type Angstrom struct{ Overcast, Clear float64 }

// FAOAngstrom is for a place without a calibration. Source: SolarBySunshineSource.
var FAOAngstrom = Angstrom{Overcast: 0.25, Clear: 0.50}

// SolarFromSunshine gives the solar radiation on the ground in W/m² from the
// duration of bright sunshine and of daylight in s and the radiation above the
// air in W/m². More sunshine than daylight is an error. Source: SolarBySunshineSource.
func SolarFromSunshine(sunshine, daylight, extraterrestrial float64, a Angstrom) (float64, error) {
	if err := bounds.Refuse(radiation("extraterrestrial radiation", extraterrestrial), bounds.Given("daylight", daylight, 1, 86400, "s"),
		bounds.Given("sunshine", sunshine, 0, daylight, "s"), bounds.Share("Angstrom coefficient", a.Overcast), bounds.Share("Angstrom coefficient", a.Clear)); err != nil {
		return 0, err
	}
	return (a.Overcast + a.Clear*sunshine/daylight) * extraterrestrial, nil
}

// The adjustment of SolarFromTemperature, in 1/√°C. Source: SolarByTemperatureSource,
// the coastal one from memory.
const (
	InteriorAdjustment = 0.16 // where land masses dominate
	CoastalAdjustment  = 0.19 // on or near a coast
)

// SolarFromTemperature gives the solar radiation on the ground in W/m² from the
// least and greatest temperature in °C, the radiation above the air in W/m² and
// the adjustment, 0.1 to 0.25, where no sunshine is measured. A result above the
// clear sky's is left to the caller to judge. Source: SolarByTemperatureSource.
func SolarFromTemperature(least, greatest, extraterrestrial, adjustment float64) (float64, error) {
	if err := ordered(least, greatest); err != nil {
		return 0, err
	}
	if err := bounds.Refuse(radiation("extraterrestrial radiation", extraterrestrial), bounds.Given("adjustment", adjustment, 0.1, 0.25, "1/√°C")); err != nil {
		return 0, err
	}
	return adjustment * math.Sqrt(greatest-least) * extraterrestrial, nil
}

// ClearSky gives the solar radiation on the ground under a clear sky in W/m² at
// an elevation in m, from the radiation above the air. Source: ClearSkySource.
func ClearSky(elevation, extraterrestrial float64) (float64, error) {
	if err := bounds.Refuse(height(elevation), radiation("extraterrestrial radiation", extraterrestrial)); err != nil {
		return 0, err
	}
	return (0.75 + 2e-5*elevation) * extraterrestrial, nil
}

// GrassAlbedo is the share that the reference grass reflects. Source:
// NetShortwaveSource.
const GrassAlbedo = 0.23

// NetShortwave gives the solar radiation in W/m² that a surface keeps; its
// albedo is the share that it reflects. Source: NetShortwaveSource.
func NetShortwave(solar, albedo float64) (float64, error) {
	if err := bounds.Refuse(radiation("solar radiation", solar), bounds.Share("albedo", albedo)); err != nil {
		return 0, err
	}
	return (1 - albedo) * solar, nil
}

// stefanBoltzmann is 4.903e-9 MJ/(K⁴ m² day) in W/(K⁴ m²). Source:
// NetLongwaveSource.
const stefanBoltzmann = 4.903e-9 * mjPerDay

// NetLongwave gives the net outgoing longwave radiation in W/m² from the least
// and greatest temperature in °C, the actual vapour pressure in Pa, and the
// solar radiation on the ground and under a clear sky in W/m². The sky counts as
// clear when the former is the greater, as the source has it; a day without
// sun is an error. Source: NetLongwaveSource.
func NetLongwave(least, greatest, actual, solar, clearSky float64) (float64, error) {
	if err := ordered(least, greatest); err != nil {
		return 0, err
	}
	if err := bounds.Refuse(vapour("actual vapour pressure", actual), radiation("solar radiation", solar), radiation("clear-sky radiation", clearSky)); err != nil {
		return 0, err
	}
	if clearSky == 0 {
		return 0, errors.New("the sun does not rise: the clouds cannot be told from its radiation")
	}
	black := stefanBoltzmann * (math.Pow(greatest+273.16, 4) + math.Pow(least+273.16, 4)) / 2
	humidity := 0.34 - 0.14*math.Sqrt(actual/kPa)
	clouds := 1.35*math.Min(solar/clearSky, 1) - 0.35
	return black * humidity * clouds, nil
}

// MonthlySoilHeat gives the heat that goes into the ground in W/m² in a month,
// negative when it comes out, from the mean temperatures of the month before and
// the month after in °C. Source: SoilHeatSource, eq. 43.
func MonthlySoilHeat(before, after float64) (float64, error) {
	if err := bounds.Refuse(temperature("temperature of the month before", before), temperature("temperature of the month after", after)); err != nil {
		return 0, fmt.Errorf("soil heat: %w", err)
	}
	return 0.07 * mjPerDay * (after - before), nil
}

// MonthlySoilHeatSoFar is for when the next month is not known: from the mean
// temperatures of the month before and of the month itself in °C. Source:
// SoilHeatSource, eq. 44.
func MonthlySoilHeatSoFar(before, itself float64) (float64, error) {
	if err := bounds.Refuse(temperature("temperature of the month before", before), temperature("temperature of the month", itself)); err != nil {
		return 0, fmt.Errorf("soil heat: %w", err)
	}
	return 0.14 * mjPerDay * (itself - before), nil
}
