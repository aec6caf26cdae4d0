package hydraulics

import "cmp"

// Clogging is one source's way to count with a bed that has filled with roots,
// slime and solids. They lie thirty times apart; conductivities of 0 to
// 70 m/d measured in old beds (Pedescoll and others 2012) speak for the lower ones.
type Clogging struct {
	Source Source
	parts  []cloggedPart // from the inlet on
	flat   float64       // conductivity whatever the clean one is, m/s; 0 for none
}

type cloggedPart struct{ share, of float64 } // of the length, of the clean conductivity

// The ways to count with clogging.
var (
	CleanMedia   = Clogging{Source: Source{"no clogging, a new bed", CommonPractice}, parts: []cloggedPart{{1, 1}}}
	ReedThird    = Clogging{Source: Source{"S. C. Reed 1993 and 1995: a third of the clean conductivity", FromMemory}, parts: []cloggedPart{{1, 1.0 / 3}}}
	EPAZones     = Clogging{Source: Source{"U.S. EPA 625/R-99/010, 2000: 1 % of the clean conductivity over the first 30 % of the length, 10 % over the rest", FromMemory}, parts: []cloggedPart{{0.3, 0.01}, {0.7, 0.1}}}
	DevelopedBed = Clogging{Source: Source{"EC/EWPCA 1990 and UN-HABITAT 2008: 10⁻³ m/s (86 m/d) in a developed bed", FromMemory}, flat: 1e-3}
)

// Zones divides a bed of a length in m and a clean conductivity in m/s, both
// more than 0, into zones from the inlet on. A clean conductivity under that of
// a developed bed is a *RangeError for DevelopedBed: a bed doesn't open up with
// age.
func (c Clogging) Zones(length, clean float64) ([]Zone, error) {
	if err := cmp.Or(positive("length", length), positive("hydraulic conductivity", clean)); err != nil {
		return nil, err
	}
	if c.flat > 0 {
		if clean < c.flat {
			return nil, outside("clean hydraulic conductivity", clean, "at least that of a developed bed")
		}
		return []Zone{{length, c.flat}}, nil
	}
	zones := make([]Zone, len(c.parts))
	for i, part := range c.parts {
		zones[i] = Zone{part.share * length, part.of * clean}
	}
	return zones, nil
}
