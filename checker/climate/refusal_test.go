package climate_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/climate"
)

// Whatever a function refuses, it gives 0 and an error: never a NaN that goes on,
// never a value moved into range.
func TestOutOfRange(t *testing.T) {
	nan := math.NaN()
	type result struct {
		value float64
		err   error
	}
	of := func(value float64, err error) result { return result{value, err} }
	winter := climate.Winter{FreezingIndex: nan, SurfaceFactor: 1, Days: 90, MeanAnnual: 8}
	for name, r := range map[string]result{
		"elevation":          of(climate.Pressure(50000)),
		"elevation NaN":      of(climate.Pressure(nan)),
		"pressure":           of(climate.Psychrometric(101.3)), // kPa for Pa
		"Makkink's pressure": of(climate.MakkinkPsychrometric(0)),
		"wind":               of(climate.WindAt2m(-1, 10)),
		"height of wind":     of(climate.WindAt2m(1, 0.05)),
		"height of a wind":   of(climate.WindAt(1, 0, 2)),
		"kelvin":             of(climate.Saturation(293)),
		"slope":              of(climate.VapourSlope(nan)),
		"extremes":           of(climate.MeanSaturation(20, 10)),
		"percent":            of(climate.VapourFromHumidity(10, 20, 40, 80)),
		"humidities":         of(climate.VapourFromHumidity(10, 20, 0.8, 0.4)),
		"mean humidity":      of(climate.VapourFromMeanHumidity(10, 20, 60)),
		"wet bulb":           of(climate.VapourFromWetBulb(20, 21, 101300, climate.VentilatedPsychrometer)),
		"too dry":            of(climate.VapourFromWetBulb(40, 0, 101300, climate.VentilatedPsychrometer)),
		"degrees":            of(climate.Latitude(91)),
		"latitude":           of(climate.Extraterrestrial(45, 100)), // degrees for rad
		"day":                of(climate.Extraterrestrial(0.5, 0)),
		"daylight":           of(climate.Daylight(0.5, 367)),
		"declination":        of(climate.Declination(-1)),
		"distance of sun":    of(climate.SunDistance(400)),
		"sunshine":           of(climate.SolarFromSunshine(50000, 40000, 300, climate.FAOAngstrom)),
		"no daylight":        of(climate.SolarFromSunshine(0, 0, 300, climate.FAOAngstrom)),
		"adjustment":         of(climate.SolarFromTemperature(10, 20, 300, 1)),
		"clear sky":          of(climate.ClearSky(100, nan)),
		"albedo":             of(climate.NetShortwave(200, 1.2)),
		"no clear sky":       of(climate.NetLongwave(10, 20, 1000, 0, 0)),
		"soil heat":          of(climate.MonthlySoilHeat(nan, 10)),
		"soil heat so far":   of(climate.MonthlySoilHeatSoFar(10, 100)),
		"terms":              of(climate.PenmanMonteith(climate.Terms{})),
		"depth of month":     of(climate.DepthOfMonth(math.Inf(1), time.May)),
		"no month":           of(climate.DepthOfMonth(1e-8, 0)),
		"Hargreaves":         of(climate.Hargreaves(nan, 10, 20, 300)),
		"Samani":             of(climate.HargreavesSamani(15, 20, 10, 300)),
		"Makkink":            of(climate.Makkink.ET(0, 66, 200)),
		"pan":                of(climate.PanEvaporation(0, 0, -1, 0)),
		"pan coefficient":    of(climate.LakeFromPan(0.01, 0)),
		"Meyer":              of(climate.Meyer(3000, 1000, 5, 36)),
		"Rohwer":             of(climate.Rohwer(3000, 1000, 101.3, 5)),
		"leaching":           of(climate.LeachingRequirement(1, 0)),
		"all leaching":       of(climate.IrrigationDepth(10, 1)),
		"wilting":            of(climate.SoilStore(1500, 0.1, 0.3, 1)),
		"moist density":      of(climate.MoistDensity(1600, 15)), // % for a ratio
		"latent heat":        of(climate.Ground{DryDensity: 1600, Moisture: nan, Conductivity: 1}.LatentHeat()),
		"heat capacity":      of(climate.Ground{DryDensity: 1, Moisture: 0.1, Conductivity: 1}.HeatCapacity()),
		"Stefan":             of(climate.Stefan(silt, winter)),
		"lambda":             of(climate.Neumann.At(-1, 0.2)),
		"fusion":             of(climate.Neumann.At(1, nan)),
		"cover":              of(climate.UncoveredFrost(1, -1)),
		"insulation":         of(climate.InsulatedCover(1, -1)),
		"cover to insulate":  of(climate.InsulatedCover(-1, 1)),
		"diffusivity":        of(climate.Diffusivity(0, 1, 1)),
		"argument":           of(climate.ConductionArgument(nan, -5, 0)),
		"conduction":         of(climate.ConductionDepth(0.3, 0, 1)),
		"damping":            of(climate.DampingDepth(-1)),
		"ground wave":        of(climate.GroundWave{Mean: 9, Swing: 12}.At(-1, 10, 7e-7)),
		"ice":                of(climate.IceThickness(0.6, 100)), // in/√(°F·d) for SI
		"mean of year":       of(climate.MeanOfYear([12]float64{nan})),
	} {
		require.Error(t, r.err, name)
		require.Zero(t, r.value, name)
	}
}

func TestRefusalSaysWhatWasExpected(t *testing.T) {
	_, err := climate.Saturation(293)
	require.EqualError(t, err, "the temperature is 293 °C: expected -60 to 60")
	_, err = climate.VapourFromMeanHumidity(10, 20, 60)
	require.EqualError(t, err, "the mean humidity is 60: expected 0 to 1")
	_, err = climate.MeanSaturation(20, 10)
	require.EqualError(t, err, "the minimum temperature, 20 °C, is above the maximum, 10 °C")
}
