package figures

import (
	"math"

	"greysill/checker/treatment"
)

// The entries that an area may be worked out from.
const (
	sizingFlow = iota
	sizingInlet
	sizingCelsius
	sizingDepth
	sizingPorosity
	sizingPersons
	sizingBedrooms
	sizingEntries
)

// entriesRead tells which entries a basis reads.
type entriesRead [sizingEntries]bool

// sizing has the least and the greatest of every entry.
type sizing struct {
	bed    *running
	ranges [sizingEntries][2]Value
	from   map[entriesRead]origin
}

// origin is what some entries were worked out from and lack.
type origin struct {
	inputs []Input
	lacks  []Lack
}

func (r *running) sizing(warmest, coldest Value) *sizing {
	persons, bedrooms := r.drawing.occupants(), number(float64(r.drawing.Dwelling.Bedrooms), bedroomsDrawn)
	return &sizing{r, [sizingEntries][2]Value{
		sizingFlow: {r.flow, r.flow}, sizingInlet: {r.weakest.bod, r.strongest.bod}, sizingCelsius: {coldest, warmest}, sizingDepth: {r.depth, r.depth},
		sizingPorosity: {r.porosity(r.leastPores), r.porosity(r.greatestPores)},
		sizingPersons:  {persons, persons}, sizingBedrooms: {bedrooms, bedrooms},
	}, map[entriesRead]origin{}}
}

// porosity is the mean porosity below the water level.
func (r *running) porosity(pores Value) Value {
	return worked(r.lack("media"), func() (float64, error) { return pores.Number / (r.shape.Area() * r.depth.Number), nil }, pores, r.depth)
}

// of gives what the entries that a basis reads come from: the same for many
// bases.
func (s *sizing) of(read entriesRead) origin {
	o, known := s.from[read]
	if known {
		return o
	}
	var from []Value
	for i := range s.ranges {
		if read[i] {
			from = append(from, s.ranges[i][:]...)
		}
	}
	o.inputs, o.lacks = gathered(from)
	s.from[read] = o
	return o
}

// by gives the least and the greatest area by a basis, for an inlet from weak to
// strong, over all ranges.
func (s *sizing) by(basis *treatment.Basis, weak, strong float64) (least, greatest Value) {
	read := readBy[basis.Name]
	from := s.of(read)
	if len(from.lacks) > 0 {
		return unknown(from.lacks...), unknown(from.lacks...)
	}
	least.Number, greatest.Number = math.Inf(1), math.Inf(-1)
	for _, inlet := range ends(read[sizingInlet], weak, strong) {
		for _, celsius := range s.ends(read, sizingCelsius) {
			for _, porosity := range s.ends(read, sizingPorosity) {
				area, err := basis.Area(s.at(inlet, celsius, porosity))
				if err != nil {
					v := unknown(Lack{s.bed.Pointer + "/outline", "an area of " + s.bed.ID + " within the range of the formula: " + err.Error()})
					return v, v
				}
				least.Number, greatest.Number = min(least.Number, area), max(greatest.Number, area)
			}
		}
	}
	least.Inputs, greatest.Inputs = from.inputs, from.inputs
	return least, greatest
}

// ends gives both ends of a range, one where they are the same or do not count.
func ends(counts bool, least, greatest float64) []float64 {
	if counts && least != greatest {
		return []float64{least, greatest}
	}
	return []float64{least}
}

func (s *sizing) ends(read entriesRead, entry int) []float64 {
	return ends(read[entry], s.ranges[entry][0].Number, s.ranges[entry][1].Number)
}

func (s *sizing) at(inlet, celsius, porosity float64) treatment.Sizing {
	return treatment.Sizing{
		Flow: s.ranges[sizingFlow][0].Number, Inlet: inlet, Effluent: wantedEffluent, Celsius: celsius,
		Depth: s.ranges[sizingDepth][0].Number, Porosity: porosity,
		Persons: s.ranges[sizingPersons][0].Number, Bedrooms: s.ranges[sizingBedrooms][0].Number,
	}
}

// readBy tells, by the name of a basis, which entries it reads: those that its
// area changes with.
var readBy = readByBases()

func readByBases() map[string]entriesRead {
	all := map[string]entriesRead{}
	for _, basis := range sizingBases {
		trial := treatment.Sizing{Flow: 1e-5, Inlet: 0.1, Celsius: 10, Depth: 0.5, Porosity: 0.4, Persons: 4, Bedrooms: 3}
		if set := removalOf(basis.Name); set != nil && set.inletLeast > 0 {
			trial.Inlet = 1.2 * set.inletLeast
		}
		trial.Effluent = 0.9 * trial.Inlet
		area, _ := basis.Area(trial) // every basis takes the trial
		var read entriesRead
		for i := range read {
			other := trial
			*sizingEntry(&other, i) *= 2
			changed, err := basis.Area(other)
			read[i] = err != nil || changed != area
		}
		all[basis.Name] = read
	}
	return all
}

func sizingEntry(s *treatment.Sizing, i int) *float64 {
	return [sizingEntries]*float64{
		sizingFlow: &s.Flow, sizingInlet: &s.Inlet, sizingCelsius: &s.Celsius, sizingDepth: &s.Depth,
		sizingPorosity: &s.Porosity, sizingPersons: &s.Persons, sizingBedrooms: &s.Bedrooms,
	}[i]
}

// removalOf gives the set of constants that a basis is named after, nil where it
// is none.
func removalOf(basis string) *removal {
	for i := range removals {
		if removals[i].name == basis {
			return &removals[i]
		}
	}
	return nil
}
