package hydraulics

// Roughness is Manning's n of one kind of wall, s/m^(1/3).
type Roughness struct {
	Wall   string
	Usual  float64 // what a table gives for ordinary work
	Range  Span
	Source Source
}

// Manning's n by wall. Clean water in a new pipe has the low end of the range; a
// drain with slime, joints and bends the high end.
var (
	PlasticPipe        = Roughness{"smooth plastic pipe", 0.011, Span{0.009, 0.013}, mixedPlastic}
	UPVCPipe           = Roughness{"uPVC pipe", 0.011, Span{0.011, 0.011}, Source{"Urban Stormwater Management Manual for Malaysia (MSMA), 2012, Table 2.3, as quoted in a summary", Published}}
	OldDrain           = Roughness{"concrete pipe or an old drain", 0.013, Span{0.013, 0.015}, Source{"drainage handbooks", FromMemory}}
	DrainTablePipe     = Roughness{"pipe of the plumbing handbooks' tables of sloping drains", 0.015, Span{0.015, 0.015}, Source{"ASPE Data Book, volume 2, table of approximate discharge rates and velocities in sloping drains", FromMemory}}
	VitrifiedClayPipe  = Roughness{"vitrified clay sewer", 0.014, Span{0.011, 0.017}, chow}
	CorrugatedPipe     = Roughness{"corrugated metal pipe", 0.024, Span{0.021, 0.030}, chow}
	CorrugatedPlastic  = Roughness{"corrugated plastic pipe, corrugated inside too", 0.020, Span{0.018, 0.025}, Source{"makers' tables for single-wall pipe", FromMemory}}
	CleanEarth         = Roughness{"straight, clean earth channel", 0.022, Span{0.018, 0.025}, chow}
	GravelBottomStones = Roughness{"channel with a gravel bottom and sides of random stone", 0.023, Span{0.020, 0.026}, chow}
	ShortGrassChannel  = Roughness{"straight earth channel with short grass and few weeds", 0.027, Span{0.022, 0.033}, chow}
)

var (
	mixedPlastic = Source{"0.009 in the laboratory, 0.011 as commonly taken, 0.013 on the safe side", FromMemory}
	chow         = Source{"V. T. Chow, Open-Channel Hydraulics, 1959, Table 5-6", FromMemory}
)
