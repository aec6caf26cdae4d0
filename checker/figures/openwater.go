package figures

var openWaterTable = tabulate(
	List{Name: "open_water", Subject: "open water",
		Doc: "Every part whose water lies open: ponds, settling basins that are not drawn as covered, and tanks and filters drawn as uncovered."},
	(*drawing).openWaters, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "receives_greywater", Kind: Truth,
			Doc: "Whether greywater reaches it, treated or not, in any season or by any overflow."}, (*part).receivesGreywater},
		{Field{Name: "treated_first", Kind: Truth,
			Doc: "Whether all greywater that reaches it, in any season or by any overflow, has passed through a planted gravel bed; true when none reaches it."}, (*part).treatedFirst},
		{Field{Name: "untreated_sources", Kind: Text,
			Doc: "The greywater sources whose water reaches it untreated; \"none\" where none does."}, (*part).untreatedSources},
		{Field{Name: "has_permit", Kind: Truth, Doc: "Whether the drawing names a permit of its own."}, (*part).hasPermit},
	},
)

func (d *drawing) openWaters() []*part {
	var open []*part
	for _, p := range d.ofKind(pond, settlingBasin, surgeTank, filter) {
		covered := p.Covered != nil && *p.Covered
		uncovered := p.Covered != nil && !*p.Covered
		if p.Kind == pond || p.Kind == settlingBasin && !covered || uncovered {
			open = append(open, p)
		}
	}
	return open
}

// greywaterFrom names the greywater sources whose water meets the part without
// passing what stops it.
func (p *part) greywaterFrom(stop func(kind string) bool) (names []string, lacks []Lack) {
	n := p.drawing.network
	var open []int
	for i := range p.drawing.Sources {
		if waterOf[n.nodes[i].kind] != greywater {
			continue
		}
		met := n.downstream(i, everSeason, stop)
		if met[p.node] {
			names = append(names, n.nodes[i].id)
		}
		open = append(open, n.openEnds(i, met, stop)...)
	}
	return names, n.lacks(n.above(p.node, open))
}

func isBed(kind string) bool { return kind == plantedBed }

func (p *part) receivesGreywater() Value {
	names, lacks := p.greywaterFrom(nil)
	if len(names) > 0 {
		return truth(true)
	}
	return orUnknown(truth(false), lacks)
}

func (p *part) treatedFirst() Value {
	names, lacks := p.greywaterFrom(isBed)
	if len(names) > 0 {
		return truth(false)
	}
	return orUnknown(truth(true), lacks)
}

func (p *part) untreatedSources() Value {
	names, lacks := p.greywaterFrom(isBed)
	return orUnknown(text(listed(names)), lacks)
}

func (p *part) hasPermit() Value { return truth(p.Permit != "", p.given("permit", len(p.Permit))...) }
