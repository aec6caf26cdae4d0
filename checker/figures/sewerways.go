package figures

import "greysill/checker/quantity"

var sewerWayTable = tabulate(
	List{Name: "sewer_ways", Subject: "a way into the sewer",
		Doc: "Every diverter, and every part that stores, treats or takes up greywater, paired with each sewer or septic connection that it drains into, " +
			"straight or through pipes, in any season or by its overflow."},
	(*drawing).sewerWays, (*sewerWay).subject,
	[]column[*sewerWay]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(w *sewerWay) Value { return text(w.part.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(w *sewerWay) Value { return w.part.kind() }},
		{Field{Name: "connection", Kind: Text, Doc: "The connection's id."}, func(w *sewerWay) Value { return text(w.end.ID) }},
		{Field{Name: "backwater", Kind: Text,
			Doc:   "What stops sewage that comes back before it reaches the part, by every way: at the connection, in a pipe, or at the part itself.",
			Words: []string{valveOrGap, none}}, (*sewerWay).backwater},
		{Field{Name: "upper_level", Kind: Number, Dimension: quantity.Level,
			Doc: "Level to which sewage has to rise to reach the part: the invert at the upper end of the pipe; " +
				"where no pipe is drawn, the level of the diverter or of the part's outlet."}, func(w *sewerWay) Value { return w.upper }},
		{Field{Name: "surcharge_level", Kind: Number, Dimension: quantity.Level, Doc: "Level to which the sewer can back up, as drawn."},
			(*sewerWay).surcharge},
		{Field{Name: "above_surcharge", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far that level lies above the one to which the sewer can back up; negative where sewage can reach the part.",
			Formula: "upper level − surcharge level"}, (*sewerWay).aboveSurcharge},
	},
)

const valveOrGap = "valve or air gap"

// sewerWay is a part that drains into a connection, by one way or more.
type sewerWay struct {
	part, end *part
	guarded   bool  // a valve stands on every way
	upper     Value // the lowest of the ways
}

func (d *drawing) sewerWays() []*sewerWay {
	var all []*sewerWay
	for _, p := range d.parts {
		if p.Kind == diverter || inTrain(p.Kind) {
			all = append(all, p.sewerWays()...)
		}
	}
	return all
}

// sewerWays follows every way of the part.
func (p *part) sewerWays() []*sewerWay {
	var all []*sewerWay
	for _, w := range p.drawing.network.nodes[p.node].ways[everSeason] {
		next := p.drawing.partAt(w.to)
		if next == nil {
			continue
		}
		p.drawing.toSewer(next, yes(p.BackwaterValve) || yes(p.AirGap), map[passed]bool{}, func(end *part, guarded bool) {
			all = reached(all, p, end, guarded, p.upperEnd(next))
		})
	}
	return all
}

// passed is a part that was passed, with or without a valve before it.
type passed struct {
	part    *part
	guarded bool
}

// toSewer tells of every connection that water comes to through pipes, and
// whether a valve stands on the way. A part that is a subject by itself has ways
// of its own.
func (d *drawing) toSewer(at *part, guarded bool, seen map[passed]bool, tell func(end *part, guarded bool)) {
	if at == nil || at.Kind == diverter || inTrain(at.Kind) || seen[passed{at, guarded}] {
		return
	}
	seen[passed{at, guarded}] = true
	guarded = guarded || yes(at.BackwaterValve) || yes(at.AirGap)
	if leaves(at.Kind) {
		tell(at, guarded)
		return
	}
	for _, w := range d.network.nodes[at.node].ways[everSeason] {
		d.toSewer(d.partAt(w.to), guarded, seen, tell)
	}
}

// reached adds a way to a connection to those known, which are one subject when
// part and connection are the same.
func reached(all []*sewerWay, p, end *part, guarded bool, upper Value) []*sewerWay {
	for _, w := range all {
		if w.end == end {
			w.guarded = w.guarded && guarded
			if len(upper.Lacks) > 0 || len(w.upper.Lacks) == 0 && upper.Number < w.upper.Number {
				w.upper = upper
			}
			return all
		}
	}
	return append(all, &sewerWay{p, end, guarded, upper})
}

func yes(says *bool) bool { return says != nil && *says }

// upperEnd is the level at which water leaves the part towards the next.
func (p *part) upperEnd(next *part) Value {
	switch {
	case works(next.Kind) == pipe && len(next.Inverts) > 0:
		return number(next.Inverts[0].Value, Input{Name: "upper invert of " + next.ID, Pointer: member(next.Pointer+"/inverts", 0)})
	case works(next.Kind) == pipe:
		return unknown(next.lack("inverts"))
	case p.Kind == diverter:
		return p.entry("level", p.Level)
	default:
		return p.entry("outlet_level", p.OutletLevel)
	}
}

func (w *sewerWay) subject() Subject {
	return Subject{w.part.ID + " and " + w.end.ID, []string{w.part.ID, w.end.ID}, []string{w.part.Pointer, w.end.Pointer}}
}

// backwater need not be stated of the connection where a valve is drawn before
// it.
func (w *sewerWay) backwater() Value {
	if w.guarded {
		return text(valveOrGap)
	}
	says := stated(w.end.BackwaterValve, w.end.Pointer, "backwater_valve", w.end.ID)
	return orUnknown(text(none, says.Inputs...), says.Lacks)
}

func (w *sewerWay) surcharge() Value { return w.end.entry("surcharge_level", w.end.Surcharge) }

func (w *sewerWay) aboveSurcharge() Value {
	level := w.surcharge()
	return outOf(w.upper.Number-level.Number, w.upper, level)
}
