package figures

// settledFirst looks at what may carry grit, lint or leaves. Condensate, sump
// pumps and foundation drains run clear.
func (p *part) settledFirst() Value {
	names, lacks := p.unsettled()
	if len(names) > 0 {
		return truth(false)
	}
	return orUnknown(truth(true), lacks)
}

func (p *part) unsettledSources() Value {
	names, lacks := p.unsettled()
	return orUnknown(text(listed(names)), lacks)
}

// unsettled names the sources and storm inflows whose water meets the part
// without coming through a settling basin or the gravel of a bed.
func (p *part) unsettled() (names []string, lacks []Lack) {
	n := p.drawing.network
	settles := func(kind string) bool { return kind == settlingBasin }
	var open []int
	for _, f := range p.drawing.inflows() {
		kind := f.at().kind
		if !isWastewater(waterOf[kind]) && kind != roofDrain && kind != stormInflow {
			continue
		}
		met := n.downstream(f.node, untreated, settles)
		open = append(open, n.openEnds(f.node, met, settles)...)
		if met[p.node] {
			names = append(names, f.at().id)
		}
	}
	return names, n.lacks(n.above(p.node, open))
}
