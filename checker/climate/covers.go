package climate

// Where the coefficients of this file are from.
const (
	Table12Source    = "FAO 56 (1998), Table 12, from memory"
	TyphaBedSource   = "Water Quality Research Journal 53(2):53 (2018), evapotranspiration and crop coefficient of Typha latifolia in horizontal subsurface flow wetlands, abstract"
	SicilyBedsSource = "Milani and others, Water 11:2159 (2019), horizontal subsurface flow beds in Sicily"
)

// CropCoefficient has what the evapotranspiration of a cover is multiplied by
// against the reference, at the beginning, in the middle and at the end of its
// season. It is for wide fields: a small bed among dry ground loses two to three
// times as much, see MeasuredCoefficients.
type CropCoefficient struct {
	Cover                string
	Initial, Middle, End float64
}

// CropCoefficients are those of wetland covers and open water, for a sub-humid
// climate. Source: Table12Source.
var CropCoefficients = []CropCoefficient{
	{"cattails or bulrushes, killing frost", 0.30, 1.20, 0.30},
	{"cattails or bulrushes, no frost", 0.60, 1.20, 0.60},
	{"short wetland vegetation, no frost", 1.05, 1.10, 1.10},
	{"reed swamp, standing water", 1.00, 1.20, 1.00},
	{"reed swamp, moist soil", 0.90, 1.20, 0.70},
	{"open water shallower than 2 m", 1.05, 1.05, 1.05},
}

// MeasuredCoefficient is the range of monthly crop coefficients measured on a
// small planted gravel bed, their mean, and the evapotranspiration measured in
// m/s: the mean of the months, the least and the greatest of a week.
type MeasuredCoefficient struct {
	Plant                       string
	Least, Mean, Most           float64
	MeanET, LeastWeek, MostWeek float64
}

// MeasuredCoefficients are those of small beds. Source: TyphaBedSource.
var MeasuredCoefficients = []MeasuredCoefficient{
	{"Typha latifolia", 2.03, 2.74, 3.68, 9.85 * mmPerDay, 4.9 * mmPerDay, 20.0 * mmPerDay},
}

// MeasuredLoss is the mean evapotranspiration of a small planted gravel bed over
// the warm season.
type MeasuredLoss struct {
	Plant string
	ET    float64 // m/s
}

// MeasuredLosses are those of beds in a Mediterranean climate. Source:
// SicilyBedsSource.
var MeasuredLosses = []MeasuredLoss{
	{"Phragmites australis", 17.31 * mmPerDay},
	{"Arundo donax", 11.23 * mmPerDay},
	{"Chrysopogon zizanioides (vetiver)", 8.56 * mmPerDay},
	{"Cyperus papyrus", 7.86 * mmPerDay},
	{"Miscanthus × giganteus", 7.35 * mmPerDay},
}
