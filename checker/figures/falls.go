package figures

import (
	"slices"
	"strings"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var fallTable = tabulate(
	List{Name: "falls", Subject: "a route of greywater",
		Doc: "Every route from a part that greywater sources drain straight into, to each end of the water, in the warm season and in the bypass season. Where ways join, the first drawn counts."},
	(*drawing).falls, (*fall).subject,
	[]column[*fall]{
		{Field{Name: "season", Kind: Text, Doc: "When water takes it.", Words: []string{inEverySeason, inWarmSeason, inBypassSeason}}, func(f *fall) Value { return text(f.season) }},
		{Field{Name: "route", Kind: Text, Doc: "The parts in the water's order."}, (*fall).route},
		{Field{Name: "source_level", Kind: Number, Dimension: quantity.Level, Doc: "Lowest outlet of the greywater sources that drain straight into its first part."},
			(*fall).sourceLevel},
		{Field{Name: "first_level", Kind: Number, Dimension: quantity.Level,
			Doc: "Invert where it begins: the upper invert of a pipe, the invert of a diverter, or that of another part's inlet."}, func(f *fall) Value { return f.first }},
		{Field{Name: "last_level", Kind: Number, Dimension: quantity.Level,
			Doc: "Level where it ends: the invert of a connection, the water in ordinary flow of a part, the floor of what lets it into soil, else the lower invert of the last pipe."},
			func(f *fall) Value { return f.last }},
		{Field{Name: "fall_had", Kind: Number, Dimension: quantity.Length, Doc: "All the fall that there is.", Formula: "first level − last level"},
			func(f *fall) Value { return f.had }},
		{Field{Name: "pipe_length", Kind: Number, Dimension: quantity.Length, Doc: "Length in plan of all its pipes.", Formula: "Σ √(Δx² + Δy²) from point to point of the paths"},
			func(f *fall) Value { return f.length }},
		{Field{Name: "pipe_fall", Kind: Number, Dimension: quantity.Length, Doc: "Fall of all its pipes as drawn.", Formula: "Σ (upper invert − lower invert)"},
			(*fall).ofPipes},
		{Field{Name: "drops", Kind: Number, Dimension: quantity.Length, Doc: "Fall that the parts between its pipes take up, from inlet to outlet; the last part's is left out.",
			Formula: "Σ (inlet level − outlet level)"}, (*fall).ofParts},
		{Field{Name: "slope_available", Kind: Number, Dimension: quantity.Slope,
			Doc:     "Mean slope that its pipes could have if all fall that the parts leave were theirs; negative where the parts take up more than there is.",
			Formula: "(fall had − Σ drops) ÷ length of pipe"}, (*fall).slope},
	},
)

// When water takes a route.
const (
	inEverySeason  = "every season"
	inWarmSeason   = "warm season"
	inBypassSeason = "bypass season"
)

// fall is a way of the water from its first part to its end.
type fall struct {
	*drawing
	season              string
	parts               []*part
	end                 *node
	first, last, length Value
	had, drops          Value
}

func (d *drawing) falls() []*fall {
	var all []*fall
	for _, from := range d.entrances() {
		routes := d.fallsFrom(from, warm)
		for _, r := range d.fallsFrom(from, bypassing) {
			i := slices.IndexFunc(routes, r.is)
			if i >= 0 {
				routes[i].season = inEverySeason
			} else {
				r.season = inBypassSeason
				routes = append(routes, r)
			}
		}
		all = append(all, routes...)
	}
	for _, f := range all {
		f.measure()
	}
	return all
}

// entrances gives the parts that greywater sources drain straight into.
func (d *drawing) entrances() []*part {
	var all []*part
	for i := range d.Sources {
		n := &d.network.nodes[i]
		if waterOf[n.kind] != greywater {
			continue
		}
		for _, w := range n.ways[warm] {
			if p := d.partAt(w.to); p != nil && !leaves(p.Kind) && !slices.Contains(all, p) {
				all = append(all, p)
			}
		}
	}
	return all
}

// fallsFrom follows the water from a part to each of its ends.
func (d *drawing) fallsFrom(from *part, s season) []*fall {
	var all []*fall
	met := map[int]bool{from.node: true}
	var visit func(node int, parts []*part)
	visit = func(i int, parts []*part) {
		ways := d.network.nodes[i].ways[s]
		if len(ways) == 0 {
			all = append(all, &fall{drawing: d, season: inWarmSeason, parts: parts, end: &d.network.nodes[i]})
		}
		for _, w := range ways {
			if met[w.to] {
				continue
			}
			met[w.to] = true
			next := slices.Clip(parts)
			if to := d.partAt(w.to); to != nil {
				next = append(next, to)
			}
			visit(w.to, next)
		}
	}
	visit(from.node, []*part{from})
	return all
}

func (f *fall) measure() {
	f.first, f.last = f.parts[0].head(), f.lastLevel()
	var lengths []Value
	for _, p := range f.pipes() {
		lengths = append(lengths, p.inPlan())
	}
	f.length = sum(lengths...)
	f.had, f.drops = outOf(f.first.Number-f.last.Number, f.first, f.last), f.ofParts()
}

func (f *fall) is(other *fall) bool {
	return f.end == other.end && slices.Equal(f.parts, other.parts)
}

func (f *fall) subject() Subject {
	first := f.parts[0]
	name := first.ID + " to " + f.end.id
	if f.season == inBypassSeason {
		name += " in the bypass season"
	}
	return Subject{name, []string{first.ID}, []string{first.Pointer}}
}

func (f *fall) route() Value {
	names := make([]string, len(f.parts), len(f.parts)+1)
	for i, p := range f.parts {
		names[i] = p.ID
	}
	if f.end.part == nil {
		names = append(names, f.end.id)
	}
	return text(strings.Join(names, " → "), f.parts[0].drawn("to"))
}

func (f *fall) pipes() []*part {
	return slices.DeleteFunc(slices.Clone(f.parts), func(p *part) bool { return works(p.Kind) != pipe })
}

func (f *fall) sourceLevel() Value {
	var levels []Value
	lowest := 0.0
	for i := range f.Sources {
		n := &f.network.nodes[i]
		into := func(w way) bool { return w.to == f.parts[0].node }
		if waterOf[n.kind] == greywater && slices.ContainsFunc(n.ways[warm], into) {
			level := fixture{Source: &f.Sources[i]}.entry("level", f.Sources[i].Level)
			if len(levels) == 0 || level.Number < lowest {
				lowest = level.Number
			}
			levels = append(levels, level)
		}
	}
	return outOf(lowest, levels...)
}

// head is where water comes into the part or pipe.
func (p *part) head() Value {
	if leadsOn(p.Kind) {
		return p.lowest()
	}
	return p.takes()
}

func (f *fall) lastLevel() Value {
	last := f.parts[len(f.parts)-1]
	switch {
	case leadsOn(last.Kind):
		return last.foot()
	case f.end.part == nil:
		return last.lets()
	default:
		level, _ := last.water()
		return level
	}
}

func (f *fall) ofPipes() Value {
	var falls []Value
	for _, p := range f.pipes() {
		upper, lower := p.lowest(), p.lowerInvert()
		falls = append(falls, outOf(upper.Number-lower.Number, upper, lower))
	}
	return sum(falls...)
}

func (f *fall) ofParts() Value {
	var drops []Value
	for _, p := range f.parts[:len(f.parts)-1] {
		if !leadsOn(p.Kind) && p.Kind != diverter {
			inlet, outlet := p.takes(), p.lets()
			drops = append(drops, outOf(inlet.Number-outlet.Number, inlet, outlet))
		}
	}
	return sum(drops...)
}

func (f *fall) slope() Value {
	if f.length.Known() && f.length.Number <= geometry.Resolution {
		return unknown(Lack{"/parts", "a drain pipe on the way from " + f.parts[0].ID + " to " + f.end.id})
	}
	return outOf((f.had.Number-f.drops.Number)/f.length.Number, f.had, f.drops, f.length)
}
