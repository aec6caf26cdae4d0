package hydraulics

// Medium is a bed medium as one source gives it.
type Medium struct {
	Name         string
	Size         float64 // effective size D10, m; 0 where the source gives none
	Porosity     Span    // share of the volume; zero where the source gives none
	Conductivity Span    // clean unless the name says otherwise, m/s
	Source       Source
}

const (
	millimetre = 0.001
	day        = 86400 // s
)

var (
	epa1988   = Source{"U.S. EPA 625/1-88/022, Constructed Wetlands and Aquatic Plant Systems, 1988", FromMemory}
	epa1993   = Source{"U.S. EPA 832-R-93-008, Subsurface Flow Constructed Wetlands, 1993", FromMemory}
	region6   = Source{"U.S. EPA Region 6, Guidance for Design and Construction of a Subsurface Flow Constructed Wetland, 1993, Addendum 1", Published}
	crites98  = Source{"R. Crites and G. Tchobanoglous, Small and Decentralized Wastewater Management Systems, 1998", FromMemory}
	crites06  = Source{"R. W. Crites, E. J. Middlebrooks and S. C. Reed, Natural Wastewater Treatment Systems, 2006, chapter 7", FromMemory}
	epa2000   = Source{"U.S. EPA 625/R-99/010, Constructed Wetlands Treatment of Municipal Wastewaters, 2000", FromMemory}
	unHabitat = Source{"UN-HABITAT, Constructed Wetlands Manual, 2008", FromMemory}
	dwaA262   = Source{"DWA-A 262, 2006", FromMemory}
	pedescoll = Source{"A. Pedescoll and others, Water, Air & Soil Pollution 223:2263, 2012", Published}
	kadlec    = Source{"R. H. Kadlec and J. T. Watson, chapter on a gravel bed treatment wetland, 1993, abstract", Published}
)

// Media lists bed media by source. The sources disagree tenfold about the same
// sand, so that a design should have its own gravel's measured conductivity.
var Media = []Medium{
	{"medium sand", 1 * millimetre, one(0.42), perDay(420, 420), epa1988},
	{"coarse sand", 2 * millimetre, one(0.39), perDay(480, 480), epa1988},
	{"gravelly sand", 8 * millimetre, one(0.35), perDay(500, 500), epa1988},
	{"coarse sand", 2 * millimetre, one(0.32), perDay(1000, 1000), epa1993},
	{"gravelly sand", 8 * millimetre, one(0.35), perDay(5000, 5000), epa1993},
	{"fine gravel", 16 * millimetre, one(0.38), perDay(7500, 7500), epa1993},
	{"fine gravel", 16 * millimetre, Span{}, perDay(7500, 7500), region6},
	{"medium gravel", 32 * millimetre, one(0.40), perDay(10000, 10000), epa1993},
	{"coarse rock", 128 * millimetre, one(0.45), perDay(100000, 100000), epa1993},
	{"medium sand", 1 * millimetre, one(0.30), perDay(500, 500), crites98},
	{"coarse sand", 2 * millimetre, Span{0.28, 0.32}, perDay(100, 1000), crites06},
	{"gravelly sand", 8 * millimetre, Span{0.30, 0.35}, perDay(500, 5000), crites06},
	{"fine gravel", 16 * millimetre, Span{0.35, 0.38}, perDay(1000, 10000), crites06},
	{"medium gravel", 32 * millimetre, Span{0.36, 0.40}, perDay(10000, 50000), crites06},
	{"coarse rock", 128 * millimetre, Span{0.38, 0.45}, perDay(50000, 250000), crites06},
	{"gravel of 20 to 30 mm", 0, Span{}, perDay(100000, 100000), epa2000},
	{"fine rock", 0, Span{}, perDay(50000*foot, 50000*foot), kadlec},
	{"coarse rock", 0, Span{}, perDay(210000*foot, 210000*foot), kadlec},
	{"gravel of a developed bed", 0, Span{}, Span{1e-3, 3e-3}, unHabitat},
	{"sand of a filter bed", 0, Span{}, Span{1e-4, 1e-3}, dwaA262},
	{"media of clogged full-scale beds", 0, Span{}, perDay(0, 70), pedescoll},
}

func one(value float64) Span { return Span{value, value} }

func perDay(low, high float64) Span { return Span{low / day, high / day} }

// KozenySource names the ratio of conductivities by void ratio.
const KozenySource = "conductivity as e³/(1 + e) (B. M. Das, Principles of Geotechnical Engineering, Example 7.6, as worked in its Python companion)"

// KozenyRatio is how many times a medium's conductivity changes when its
// porosity does and its grains do not: the ratio of n³/(1 − n)², which is
// e³/(1 + e) of the void ratio. Porosities lie between 0 and 1.
func KozenyRatio(from, to float64) (float64, error) {
	shape := func(n float64) float64 { return n * n * n / ((1 - n) * (1 - n)) }
	return valid(shape(to)/shape(from), porosity(from), porosity(to))
}

// VoidRatio is the void ratio e = n/(1 − n) of a porosity between 0 and 1. The
// two are easily taken for each other: a void ratio of 0.4 is a porosity of 0.286.
func VoidRatio(n float64) (float64, error) { return valid(n/(1-n), porosity(n)) }

// Porosity is the porosity n = e/(1 + e) of a void ratio more than 0.
func Porosity(e float64) (float64, error) { return valid(e/(1+e), positive("void ratio", e)) }

func porosity(n float64) error {
	if smallest <= n && n <= 1-smallest {
		return nil
	}
	return outside("porosity", n, "more than 0 and less than 1")
}
