package figures

import (
	"slices"
	"strconv"

	"greysill/checker/design"
)

// householdFlow is where the occupants and their flow come from.
var householdFlow = Citation{
	Title:    "California Plumbing Code",
	Place:    "section 1503.8.1; the same figures in the International Green Construction Code, section 708.14.1",
	Standing: Published,
}

// gallonADay is 1 US gallon a day in m³/s; the gallon is 231 in³ exactly.
const gallonADay = 231 * 0.0254 * 0.0254 * 0.0254 / 86400

// Greywater that one occupant gives (California Plumbing Code, section
// 1503.8.1).
const (
	bathingFlow = 25 * gallonADay
	laundryFlow = 15 * gallonADay
)

// OccupantsByBedrooms is the number of occupants that the California Plumbing
// Code, section 1503.8.1, counts: 2 for the first bedroom and 1 for each
// further one. A dwelling without a bedroom counts as having one.
func OccupantsByBedrooms(bedrooms int) int { return 1 + max(bedrooms, 1) }

// DailyFlow is the greywater that a household gives, in m³/s, by the California
// Plumbing Code, section 1503.8.1: 25 US gallons a day for each occupant when
// showers, bathtubs or washbasins are on the system, and 15 when clothes
// washers or laundry tubs are.
func DailyFlow(occupants int, bathing, laundry bool) float64 {
	flow := 0.0
	if bathing {
		flow += bathingFlow
	}
	if laundry {
		flow += laundryFlow
	}
	return float64(occupants) * flow
}

// occupants is the number that the flow is worked out for.
func occupants(d design.Dwelling) int { return max(OccupantsByBedrooms(d.Bedrooms), d.Occupants) }

// streams is the greywater that comes onto the system, and from which sources.
type streams struct {
	bathing, laundry []int // the sources of each stream
	byOccupants      float64
	total            float64 // that, or the flow stated where it is more
	inputs           []Input // of both
	lacks            []Lack  // not empty: it cannot be told which sources are on the system
}

func newStreams(d *design.Design, n *network) *streams {
	s := &streams{}
	var open []int
	for i := range d.Sources {
		kind := d.Sources[i].Kind
		if waterOf[kind] != greywater {
			continue
		}
		met := n.downstream(i, everSeason, nil)
		switch {
		case !n.anyOf(met, inTrain):
			open = append(open, n.openEnds(i, met, nil)...)
		case laundry[kind]:
			s.laundry = append(s.laundry, i)
		default:
			s.bathing = append(s.bathing, i)
		}
	}
	s.lacks = n.lacks(open)
	s.byOccupants = DailyFlow(occupants(d.Dwelling), len(s.bathing) > 0, len(s.laundry) > 0)
	s.total = s.byOccupants
	s.inputs = append(s.inputs, Input{Name: "occupants", Value: strconv.Itoa(occupants(d.Dwelling))})
	for _, i := range slices.Concat(s.bathing, s.laundry) {
		s.inputs = append(s.inputs, Input{Name: d.Sources[i].ID, Pointer: d.Sources[i].Pointer + "/kind"})
	}
	if stated := d.Dwelling.StatedFlow.Value; stated > s.total && s.total > 0 {
		s.total = stated
		s.inputs = append(s.inputs, Input{Name: "stated flow", Pointer: "/dwelling/stated_flow"})
	}
	return s
}

// from gives the flow of each source on the system: its flow by occupants, or as
// much more as the flow stated is.
func (s *streams) from(d *design.Design) map[int]float64 {
	flow := s.shared(d)
	for i := range flow {
		flow[i] *= s.total / s.byOccupants
	}
	return flow
}

// shared gives the flow by occupants of each source on the system, each stream
// shared evenly among its fixtures.
func (s *streams) shared(d *design.Design) map[int]float64 {
	flow := make(map[int]float64, len(s.bathing)+len(s.laundry))
	people := occupants(d.Dwelling)
	for _, i := range s.bathing {
		flow[i] = DailyFlow(people, true, false) / float64(len(s.bathing))
	}
	for _, i := range s.laundry {
		flow[i] = DailyFlow(people, false, true) / float64(len(s.laundry))
	}
	return flow
}
