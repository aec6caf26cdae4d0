package figures

import "slices"

// settledColumns are the figures of what lies between the house and a bed.
var settledColumns = []column[*bed]{
	{Field{Name: "settled_first", Kind: Truth,
		Doc: "Whether all water used in the house that reaches it, in any season or by any overflow, has passed through a settling basin, a surge tank or a filter."}, (*bed).settledFirst},
	{Field{Name: "unsettled_sources", Kind: Text,
		Doc: "The sources in the house whose water reaches it without that; \"none\" where none does."}, (*bed).unsettledSources},
}

func (b *bed) settledFirst() Value {
	names, lacks := b.unsettled()
	if len(names) > 0 {
		return truth(false)
	}
	return orUnknown(truth(true), lacks)
}

func (b *bed) unsettledSources() Value {
	names, lacks := b.unsettled()
	return orUnknown(text(listed(names)), lacks)
}

// unsettled names the sources in the house whose water meets the bed before it
// has settled.
func (b *bed) unsettled() (names []string, lacks []Lack) {
	n := b.drawing.network
	var open []int
	for i, source := range b.drawing.Sources {
		if !isWastewater(waterOf[source.Kind]) {
			continue
		}
		met := n.downstream(i, everSeason, settles)
		open = append(open, n.openEnds(i, met, settles)...)
		if met[b.node] {
			names = append(names, source.ID)
		}
	}
	return names, n.lacks(n.above(b.node, open))
}

// settles reports whether a kind of part holds back what sinks or is coarse.
func settles(kind string) bool {
	return slices.Contains([]string{settlingBasin, surgeTank, filter}, kind)
}
