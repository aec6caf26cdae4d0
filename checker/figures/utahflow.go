package figures

import "slices"

var utahFlow = Citation{Title: "Utah Administrative Code R317-401 (2024)", Place: "Table 1; of a part of the fixtures, Table 2", Standing: Published}

// UtahFlow is the greywater of a dwelling with all its fixtures on the system, in
// m³/s, by Utah Administrative Code R317-401 (2024), Table 1: 160 US gallons a day for
// two bedrooms, 240 for three and 40 for each further one. The table begins at two
// bedrooms, so a smaller dwelling counts as having two.
func UtahFlow(bedrooms int) float64 {
	if bedrooms <= 2 {
		return 160 * gallonADay
	}
	return float64(240+40*(bedrooms-3)) * gallonADay
}

// utahFixtures has the greywater of each bedroom in US gallons a day by Table 2 of
// the same rule. A laundry tub counts as the washer that it stands in for.
var utahFixtures = []struct {
	kinds []string
	flow  float64
}{
	{[]string{"clothes washer", "laundry tub"}, 30},
	{[]string{"shower", "bathtub"}, 50},
	{[]string{"washbasin"}, 5},
}

// UtahFlowOf is the greywater of a dwelling with some kinds of fixture on the
// system, in m³/s, by Utah Administrative Code R317-401 (2024), Table 2. Fewer than
// two bedrooms count as two.
func UtahFlowOf(bedrooms int, kinds []string) float64 {
	flow := 0.0
	for _, f := range utahFixtures {
		if slices.ContainsFunc(f.kinds, func(kind string) bool { return slices.Contains(kinds, kind) }) {
			flow += f.flow
		}
	}
	return float64(max(bedrooms, 2)) * flow * gallonADay
}

func (d *drawing) utahFlow() Value {
	inputs, kinds := []Input{bedroomsDrawn}, []string{}
	for _, i := range d.streams.all() {
		inputs = append(inputs, Input{Name: d.Sources[i].ID, Pointer: d.Sources[i].Pointer + "/kind"})
		kinds = append(kinds, d.Sources[i].Kind)
	}
	flow := UtahFlow(d.Dwelling.Bedrooms)
	if len(d.streams.bathing) == 0 || len(d.streams.laundry) == 0 {
		flow = UtahFlowOf(d.Dwelling.Bedrooms, kinds)
	}
	return orUnknown(number(flow, inputs...), d.streams.lacks)
}

func (d *drawing) utahFlowShare() Value {
	counted, wanted := d.dailyFlow(), d.utahFlow()
	if wanted.Known() && wanted.Number == 0 {
		return unknown(Lack{"/sources", "a source of greywater that is on the system"})
	}
	return outOf(counted.Number/wanted.Number, counted, wanted)
}
