package figures

import (
	"slices"
	"strings"

	"greysill/checker/quantity"
)

var openWaterTable = tabulate(
	List{Name: "open_water", Subject: "water that may lie open",
		Doc: "Every part whose water may lie open: ponds, spillways, settling basins, surge tanks, filters."},
	func(d *drawing) []*part { return d.ofKind(pond, spillway, settlingBasin, surgeTank, filter) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, (*part).kind},
		{Field{Name: "lies_open", Kind: Truth, Doc: "Whether its water lies open: always in a pond and on a spillway, elsewhere unless it is covered."}, (*part).open},
		{Field{Name: "receives_wastewater", Kind: Truth,
			Doc: "Whether any water used in the house reaches it, treated or not, in any season or by any overflow: greywater, toilet waste, kitchen waste or brine."},
			(*part).receivesWastewater},
		{Field{Name: "treated_first", Kind: Truth,
			Doc: "Whether all water used in the house that reaches it, in any season or by any overflow, has passed through a planted gravel bed; " +
				"what a bed overflows has not. True when none reaches it. On a spillway water that only overflows brings does not count."}, (*part).treatedFirst},
		{Field{Name: "untreated_sources", Kind: Text,
			Doc: "The sources in the house whose water reaches it untreated; \"none\" where none does."}, (*part).untreatedSources},
		{Field{Name: "screened", Kind: Truth, Doc: "Whether insect screen closes its vent and every other opening; false of a pond or spillway."}, (*part).screened},
		{Field{Name: "childproof", Kind: Truth, Doc: "Whether a small child can neither lift nor slide its lid, as stated; false of a pond or spillway."}, (*part).childproof},
		{Field{Name: "water_depth", Kind: Number, Dimension: quantity.Length, Doc: "Greatest depth of its water; 0 of a spillway, on which none stands.",
			Formula: "water level − lowest level of the floor"}, (*part).standingDepth},
		{Field{Name: "barrier_height", Kind: Number, Dimension: quantity.Length,
			Doc: "Height of the fence or wall round it; 0 of what a lid closes and no barrier: a surge tank, a filter, a covered basin."}, (*part).barrierHeight},
		{Field{Name: "gate_latches_itself", Kind: Truth, Doc: "Whether every gate in that barrier shuts and latches by itself; false where there can be none."}, (*part).gateLatches},
		{Field{Name: "has_permit", Kind: Truth, Doc: "Whether the drawing names a permit of its own."}, (*part).hasPermit},
	},
)

func (p *part) open() Value {
	switch {
	case p.Kind == pond || p.Kind == spillway:
		return truth(true)
	case p.Covered == nil:
		return unknown(p.lack("covered"))
	default:
		return truth(!*p.Covered, p.drawn("covered"))
	}
}

func (p *part) receivesWastewater() Value {
	names, lacks := p.wastewaterIn(everSeason)
	if len(names) > 0 {
		return truth(true)
	}
	return orUnknown(truth(false), lacks)
}

func (p *part) treatedFirst() Value {
	names, lacks := p.untreated()
	if len(names) > 0 {
		return truth(false)
	}
	return orUnknown(truth(true), lacks)
}

func (p *part) untreatedSources() Value {
	names, lacks := p.untreated()
	return orUnknown(text(listed(names)), lacks)
}

// untreated names the sources whose water meets the part untreated. Overflows
// are what a spillway is for: it runs with them for some hours in a storm.
func (p *part) untreated() (names []string, lacks []Lack) {
	if p.Kind == spillway {
		return p.wastewaterIn(untreatedWarm, untreatedBypassing)
	}
	return p.wastewaterIn(untreated)
}

// wastewaterIn names the sources in the house whose water meets the part in any
// of some seasons.
func (p *part) wastewaterIn(seasons ...season) (names []string, lacks []Lack) {
	n := p.drawing.network
	var open []int
	for i, source := range p.drawing.Sources {
		if !isWastewater(waterOf[source.Kind]) {
			continue
		}
		for _, s := range seasons {
			met := n.downstream(i, s, nil)
			open = append(open, n.openEnds(i, met, nil)...)
			if met[p.node] && !slices.Contains(names, source.ID) {
				names = append(names, source.ID)
			}
		}
	}
	return names, n.lacks(n.above(p.node, open))
}

func (p *part) hasPermit() Value {
	return truth(strings.TrimSpace(p.Permit) != "", p.given("permit", len(p.Permit))...)
}

func (p *part) screened() Value {
	switch {
	case p.Kind == pond || p.Kind == spillway:
		return truth(false)
	case p.Screened == nil:
		return unknown(p.lack("screened"))
	default:
		return truth(*p.Screened, p.drawn("screened"))
	}
}

func (p *part) childproof() Value {
	if p.Kind == pond || p.Kind == spillway {
		return truth(false)
	}
	return stated(p.Childproof, p.Pointer, "childproof", p.ID)
}

func (p *part) standingDepth() Value {
	if p.Kind == spillway {
		return number(0)
	}
	return p.greatestWaterDepth()
}

// fenced reports whether a barrier is what keeps children from the part: a lid
// keeps them from a tank.
func (p *part) fenced() bool {
	return p.Kind == pond || p.Kind == settlingBasin && (p.Covered == nil || !*p.Covered)
}

func (p *part) barrierHeight() Value {
	switch {
	case !p.fenced():
		return number(0)
	case p.Barrier == nil || !p.Barrier.Height.Given():
		return unknown(Lack{p.Pointer + "/barrier/height", "height of the barrier round " + p.ID})
	default:
		return number(p.Barrier.Height.Value, Input{Name: "height of the barrier", Pointer: p.Pointer + "/barrier/height"})
	}
}

func (p *part) gateLatches() Value {
	switch {
	case !p.fenced():
		return truth(false)
	case p.Barrier == nil || p.Barrier.SelfLatches == nil:
		return unknown(Lack{p.Pointer + "/barrier/self_latching_gate", "self_latching_gate of the barrier round " + p.ID})
	default:
		return truth(*p.Barrier.SelfLatches, Input{Name: "self-latching gate", Pointer: p.Pointer + "/barrier/self_latching_gate"})
	}
}
