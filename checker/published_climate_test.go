package checker_test

import (
	"fmt"
	"math"

	"greysill/checker/climate"
)

// Units of the sources, in SI.
const (
	kilopascal  = 1000.0
	mjPerM2Day  = 1e6 / 86400       // W/m²
	mmADay      = 1e-3 / 86400      // m/s
	mmOfMercury = 133.322387415     // Pa
	btuPerHFtF  = 1.730734666371391 // W/m·°C for 1 Btu/h·ft·°F
	lbPerFt3    = 0.45359237 / 0.028316846592
	footInM     = 0.3048
)

// The computations of the weather, of evapotranspiration and of frost.
var (
	_ = register("air", computation(airAt))
	_ = register("wind at 2 m", computation(windAt2m))
	_ = register("vapour pressure", computation(vapourPressure))
	_ = register("vapour pressure by wet bulb", computation(wetBulb))
	_ = register("sun", computation(sunOnDay))
	_ = register("solar radiation", computation(solarRadiation))
	_ = register("net radiation", computation(netRadiation))
	_ = register("monthly soil heat", computation(soilHeat))
	_ = register("Penman-Monteith", computation(penmanMonteith))
	_ = register("reference evapotranspiration", computation(referenceET))
	_ = register("Hargreaves", computation(hargreaves))
	_ = register("Makkink", computation(makkink))
	_ = register("evaporation by pan", computation(panEvaporation))
	_ = register("Meyer", computation(meyer))
	_ = register("water balance", computation(waterBalance))
	_ = register("cover", computation(coverEntry))
	_ = register("frost depth", computation(frostDepth))
	_ = register("soil conductivity", computation(soilConductivity))
	_ = register("conduction frost line", computation(conductionFrostLine))
	_ = register("surface factor", computation(surfaceFactor))
	_ = register("frost below cover", computation(frostBelowCover))
	_ = register("moist density", computation(moistDensity))
	_ = register("ice", computation(iceThickness))
	_ = register("leaching", computation(leaching))
	_ = register("soil store", computation(soilStore))
)

type airInputs struct{ Elevation float64 }

func airAt(in airInputs, r *results) map[string]float64 {
	p := r.of(climate.Pressure(in.Elevation))
	return map[string]float64{"P kPa": p / kilopascal, "psychrometric kPa/°C": r.of(climate.Psychrometric(p)) / kilopascal}
}

type windInputs struct{ Wind, Height float64 }

func windAt2m(in windInputs, r *results) map[string]float64 {
	return map[string]float64{"m/s": r.of(climate.WindAt2m(in.Wind, in.Height))}
}

// humidityInputs has temperatures in °C and humidities in %.
type humidityInputs struct{ Least, Greatest, Driest, Dampest float64 }

func vapourPressure(in humidityInputs, r *results) map[string]float64 {
	return map[string]float64{
		"es kPa": r.of(climate.MeanSaturation(in.Least, in.Greatest)) / kilopascal,
		"ea kPa": r.of(climate.VapourFromHumidity(in.Least, in.Greatest, in.Driest/100, in.Dampest/100)) / kilopascal,
	}
}

// wetBulbInputs has temperatures in °C and the pressure in kPa.
type wetBulbInputs struct{ Dry, Wet, Pressure float64 }

func wetBulb(in wetBulbInputs, r *results) map[string]float64 {
	return map[string]float64{
		"e wet kPa": r.of(climate.Saturation(in.Wet)) / kilopascal,
		"ea kPa":    r.of(climate.VapourFromWetBulb(in.Dry, in.Wet, in.Pressure*kilopascal, climate.VentilatedPsychrometer)) / kilopascal,
	}
}

// sunInputs has the latitude in degrees.
type sunInputs struct {
	Latitude float64
	Day      int
}

func sunOnDay(in sunInputs, r *results) map[string]float64 {
	phi := r.of(climate.Latitude(in.Latitude))
	return map[string]float64{
		"distance":    r.of(climate.SunDistance(in.Day)),
		"declination": r.of(climate.Declination(in.Day)),
		"sunset":      r.of(climate.SunsetAngle(phi, in.Day)),
		"Ra MJ":       r.of(climate.Extraterrestrial(phi, in.Day)) / mjPerM2Day,
		"daylight h":  r.of(climate.Daylight(phi, in.Day)) / 3600,
	}
}

// solarInputs has sunshine and daylight in h, radiation in MJ/m² a day. Without
// daylight the temperatures are used.
type solarInputs struct{ Sunshine, Daylight, Ra, Least, Greatest float64 }

func solarRadiation(in solarInputs, r *results) map[string]float64 {
	ra := in.Ra * mjPerM2Day
	if in.Daylight == 0 {
		return map[string]float64{"Rs MJ": r.of(climate.SolarFromTemperature(in.Least, in.Greatest, ra, climate.InteriorAdjustment)) / mjPerM2Day}
	}
	return map[string]float64{"Rs MJ": r.of(climate.SolarFromSunshine(in.Sunshine*3600, in.Daylight*3600, ra, climate.FAOAngstrom)) / mjPerM2Day}
}

// netInputs has radiation in MJ/m² a day, the vapour pressure in kPa.
type netInputs struct{ Least, Greatest, Ea, Rs, Rso float64 }

func netRadiation(in netInputs, r *results) map[string]float64 {
	return map[string]float64{
		"Rns MJ": r.of(climate.NetShortwave(in.Rs*mjPerM2Day, climate.GrassAlbedo)) / mjPerM2Day,
		"Rnl MJ": r.of(climate.NetLongwave(in.Least, in.Greatest, in.Ea*kilopascal, in.Rs*mjPerM2Day, in.Rso*mjPerM2Day)) / mjPerM2Day,
	}
}

type soilHeatInputs struct{ Before, Itself, After float64 }

func soilHeat(in soilHeatInputs, r *results) map[string]float64 {
	return map[string]float64{
		"G MJ":        r.of(climate.MonthlySoilHeat(in.Before, in.After)) / mjPerM2Day,
		"so far G MJ": r.of(climate.MonthlySoilHeatSoFar(in.Before, in.Itself)) / mjPerM2Day,
	}
}

// termInputs has pressures in kPa and radiation in MJ/m² a day.
type termInputs struct{ Rn, G, T, U2, Es, Ea, Slope, Gamma float64 }

func penmanMonteith(in termInputs, r *results) map[string]float64 {
	et := r.of(climate.PenmanMonteith(climate.Terms{
		Temperature: in.T, Wind: in.U2, Psychrometric: in.Gamma * kilopascal, Slope: in.Slope * kilopascal, Saturation: in.Es * kilopascal,
		Vapour: in.Ea * kilopascal, NetRadiation: in.Rn * mjPerM2Day, SoilHeat: in.G * mjPerM2Day,
	}))
	return map[string]float64{"ETo mm/d": et / mmADay}
}

// weatherInputs has temperatures in °C, humidities in %, radiation in MJ/m² a
// day, wind in m/s.
type weatherInputs struct {
	Latitude, Elevation                     float64
	Day                                     int
	Least, Greatest, Driest, Dampest, Rs, G float64
	Wind, Height                            float64
}

func referenceET(in weatherInputs, r *results) map[string]float64 {
	place := climate.Place{Latitude: r.of(climate.Latitude(in.Latitude)), Elevation: in.Elevation}
	weather := climate.Weather{
		Least: in.Least, Greatest: in.Greatest, Wind: in.Wind, Solar: in.Rs * mjPerM2Day,
		Vapour: r.of(climate.VapourFromHumidity(in.Least, in.Greatest, in.Driest/100, in.Dampest/100)),
	}
	if in.Height != 0 {
		weather.Wind = r.of(climate.WindAt2m(in.Wind, in.Height))
	}
	t, err := climate.ReferenceET(place, in.Day, weather, in.G*mjPerM2Day)
	r.of(0, err)
	return map[string]float64{
		"u2 m/s": t.Wind, "psychrometric kPa/°C": t.Psychrometric / kilopascal, "slope kPa/°C": t.Slope / kilopascal,
		"es kPa": t.Saturation / kilopascal, "ea kPa": t.Vapour / kilopascal, "vpd kPa": (t.Saturation - t.Vapour) / kilopascal,
		"Ra MJ": t.Extraterrestrial / mjPerM2Day, "Rso MJ": t.ClearSky / mjPerM2Day, "Rnl MJ": t.NetLongwave / mjPerM2Day,
		"Rn MJ": t.NetRadiation / mjPerM2Day, "ETo mm/d": t.ET / mmADay,
	}
}

// hargreavesInputs has temperatures in °C, radiation in MJ/m² a day.
type hargreavesInputs struct{ Mean, Least, Greatest, Ra float64 }

func hargreaves(in hargreavesInputs, r *results) map[string]float64 {
	ra := in.Ra * mjPerM2Day
	return map[string]float64{
		"FAO 56 mm/d": r.of(climate.Hargreaves(in.Mean, in.Least, in.Greatest, ra)) / mmADay,
		"Samani mm/d": r.of(climate.HargreavesSamani(in.Mean, in.Least, in.Greatest, ra)) / mmADay,
	}
}

// makkinkInputs has the temperature in °C, radiation in MJ/m² a day.
type makkinkInputs struct{ T, Elevation, Rs float64 }

func makkink(in makkinkInputs, r *results) map[string]float64 {
	slope := r.of(climate.VapourSlope(in.T))
	gamma := r.of(climate.MakkinkPsychrometric(r.of(climate.Pressure(in.Elevation))))
	return map[string]float64{"mm/d": r.of(climate.Makkink.ET(slope, gamma, in.Rs*mjPerM2Day)) / mmADay}
}

// panInputs has depths in mm.
type panInputs struct{ Before, After, Rain, Added, Coefficient float64 }

func panEvaporation(in panInputs, r *results) map[string]float64 {
	lost := r.of(climate.PanEvaporation(in.Before/1000, in.After/1000, in.Rain/1000, in.Added/1000))
	return map[string]float64{"pan mm": lost * 1000, "lake mm": r.of(climate.LakeFromPan(lost, in.Coefficient)) * 1000}
}

// meyerInputs has the saturation pressure in mm Hg, the humidity in %, the wind
// in km/h at a height in m, the area in km².
type meyerInputs struct{ Es, Humidity, Wind, Height, Area float64 }

func meyer(in meyerInputs, r *results) map[string]float64 {
	at9m := r.of(climate.WindAt(in.Wind/3.6, in.Height, 9))
	e := r.of(climate.Meyer(in.Es*mmOfMercury, in.Es*mmOfMercury*in.Humidity/100, at9m, climate.MeyerDeep)) / mmADay
	return map[string]float64{"mm/d": e, "mm/week": 7 * e, "ha-m/week": 7 * e / 1000 * in.Area * 100}
}

// balanceInputs has any units of length, area and volume that belong together:
// the balance has no constant with a unit.
type balanceInputs struct {
	Area, Full, Start, In, Rain, ET, Coefficient, Seepage float64
}

func waterBalance(in balanceInputs, r *results) map[string]float64 {
	basin := climate.Basin{Area: in.Area, Full: in.Full}
	b, err := basin.Step(in.Start, climate.Fluxes{In: in.In, Rain: in.Rain, ET: in.ET, Coefficient: in.Coefficient, Seepage: in.Seepage})
	r.of(0, err)
	return map[string]float64{
		"ET": b.ET, "out": b.Out, "short": b.Short, "change": b.End - b.Start, "rise": (b.End - b.Start) / in.Area,
	}
}

type coverInputs struct{ Cover, Plant, Soil string }

// coverEntry gives the entries of the tables of covers, by their names.
func coverEntry(in coverInputs, r *results) map[string]float64 {
	for _, c := range climate.CropCoefficients {
		if c.Cover == in.Cover {
			return map[string]float64{"initial": c.Initial, "middle": c.Middle, "end": c.End}
		}
	}
	for _, m := range climate.MeasuredCoefficients {
		if m.Plant == in.Plant {
			return map[string]float64{
				"least": m.Least, "mean": m.Mean, "most": m.Most, "mean mm/d": m.MeanET / mmADay,
				"least week mm/d": m.LeastWeek / mmADay, "most week mm/d": m.MostWeek / mmADay,
			}
		}
	}
	for _, l := range climate.MeasuredLosses {
		if l.Plant == in.Plant {
			return map[string]float64{"mm/d": l.ET / mmADay}
		}
	}
	for _, s := range climate.SoilRanges {
		if s.Soil == in.Soil {
			return map[string]float64{
				"least lb/ft3": s.LeastDensity / lbPerFt3, "most lb/ft3": s.MostDensity / lbPerFt3,
				"least moisture": s.LeastMoisture, "most moisture": s.MostMoisture,
			}
		}
	}
	r.of(0, fmt.Errorf("no table has %+v", in))
	return nil
}

// frostInputs has US units: lb/ft³, %, Btu/h·ft·°F, °F·d at the surface, d, °F.
type frostInputs struct{ Density, Moisture, Conductivity, SurfaceIndex, Days, MeanAnnual float64 }

func frostDepth(in frostInputs, r *results) map[string]float64 {
	g := climate.Ground{DryDensity: in.Density * lbPerFt3, Moisture: in.Moisture / 100, Conductivity: in.Conductivity * btuPerHFtF}
	w := climate.Winter{FreezingIndex: in.SurfaceIndex / 1.8, SurfaceFactor: 1, Days: in.Days, MeanAnnual: (in.MeanAnnual - 32) / 1.8}
	closed, err := climate.ModifiedBerggren(g, w, climate.AldrichPaynter)
	r.of(0, err)
	exact, err := climate.ModifiedBerggren(g, w, climate.Neumann)
	r.of(0, err)
	const btuPerFt3, btuPerFt3F = 1055.05585262 / 0.028316846592, 1055.05585262 / 0.028316846592 * 1.8
	return map[string]float64{
		"L Btu/ft3": r.of(g.LatentHeat()) / btuPerFt3, "C Btu/ft3°F": r.of(g.HeatCapacity()) / btuPerFt3F,
		"alpha": closed.ThermalRatio, "mu": closed.Fusion, "Stefan ft": closed.Stefan / footInM,
		"closed lambda": closed.Lambda, "closed ft": closed.Depth / footInM, "Neumann lambda": exact.Lambda, "Neumann ft": exact.Depth / footInM,
	}
}

type conductivityInputs struct {
	Density, Moisture float64 // lb/ft³, %
	Fine              bool
}

func soilConductivity(in conductivityInputs, r *results) map[string]float64 {
	frozen, thawed, err := climate.Kersten(in.Density*lbPerFt3, in.Moisture/100, in.Fine)
	r.of(0, err)
	return map[string]float64{"mean Btu/h·ft·°F": (frozen + thawed) / 2 / btuPerHFtF}
}

// conductionInputs has SI units, or US ones (Btu/h·ft·°F, lb/ft³, Btu/lb·°F, °F,
// depth in ft) when US is set. An argument, where given, takes the place of the
// exact one.
type conductionInputs struct {
	US                                  bool
	Conductivity, Density, SpecificHeat float64
	First, Surface, Freezing            float64
	Days                                float64
	Argument                            float64
}

func conductionFrostLine(in conductionInputs, r *results) map[string]float64 {
	unit := 1.0
	if in.US {
		in.Conductivity *= btuPerHFtF
		in.Density *= lbPerFt3
		in.SpecificHeat *= 4186.8
		in.First, in.Surface, in.Freezing = (in.First-32)/1.8, (in.Surface-32)/1.8, (in.Freezing-32)/1.8
		unit = footInM
	}
	argument := in.Argument
	if argument == 0 {
		argument = r.of(climate.ConductionArgument(in.First, in.Surface, in.Freezing))
	}
	alpha := r.of(climate.Diffusivity(in.Conductivity, in.Density, in.SpecificHeat))
	return map[string]float64{"argument": argument, "depth": r.of(climate.ConductionDepth(argument, alpha, in.Days*86400)) / unit}
}

type surfaceInputs struct{ Surface string }

func surfaceFactor(in surfaceInputs, r *results) map[string]float64 {
	for _, f := range climate.SurfaceFactors {
		if f.Surface == in.Surface {
			return map[string]float64{"freeze": f.Freeze}
		}
	}
	r.of(0, fmt.Errorf("no surface %q", in.Surface))
	return nil
}

// frostCoverInputs has mm.
type frostCoverInputs struct{ Frost, Cover float64 }

func frostBelowCover(in frostCoverInputs, r *results) map[string]float64 {
	below := r.of(climate.UncoveredFrost(in.Frost/1000, in.Cover/1000))
	return map[string]float64{"mm": below * 1000, "in": below / 0.0254}
}

// moistInputs has lb/ft³ and %.
type moistInputs struct{ Dry, Moisture float64 }

func moistDensity(in moistInputs, r *results) map[string]float64 {
	return map[string]float64{"lb/ft3": r.of(climate.MoistDensity(in.Dry*lbPerFt3, in.Moisture/100)) / lbPerFt3}
}

// iceInputs has in/√(°F·d) and °F·d. Water, where given, names a row of the table.
type iceInputs struct {
	Water             string
	Coefficient, AFDD float64
}

func iceThickness(in iceInputs, r *results) map[string]float64 {
	unit := 0.0254 * math.Sqrt(1.8)
	for _, c := range climate.IceCoefficients {
		if c.Water == in.Water {
			return map[string]float64{"least": c.Least / unit, "most": c.Most / unit}
		}
	}
	return map[string]float64{"in": r.of(climate.IceThickness(in.Coefficient*unit, in.AFDD/1.8)) / 0.0254}
}

// leachingInputs has electrical conductivities in one unit and mm.
type leachingInputs struct{ Water, Drainage, ET float64 }

func leaching(in leachingInputs, r *results) map[string]float64 {
	lr := r.of(climate.LeachingRequirement(in.Water, in.Drainage))
	return map[string]float64{"mm": r.of(climate.IrrigationDepth(in.ET, lr))}
}

// storeInputs has the unit weight in kN/m³, moistures as ratios, the depth in m.
type storeInputs struct{ UnitWeight, FieldCapacity, Wilting, Depth float64 }

func soilStore(in storeInputs, r *results) map[string]float64 {
	dry := in.UnitWeight * 1000 / 9.81
	return map[string]float64{"mm": r.of(climate.SoilStore(dry, in.FieldCapacity, in.Wilting, in.Depth)) * 1000}
}
