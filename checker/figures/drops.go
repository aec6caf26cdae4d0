package figures

import (
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var dropTable = tabulate(
	List{Name: "drops", Subject: "two parts of which one drains into the other",
		Doc: "Every part that holds water, and every diverter, paired with each part of those kinds, sewer and septic connection that its water comes to next, by its ordinary outlets, its second route or its overflow."},
	(*drawing).drops, (*drop).subject,
	[]column[*drop]{
		{Field{Name: "upstream", Kind: Text, Doc: "The upper part's id."}, func(p *drop) Value { return text(p.up.ID) }},
		{Field{Name: "downstream", Kind: Text, Doc: "The lower part's id."}, func(p *drop) Value { return text(p.down.ID) }},
		{Field{Name: "into_soil", Kind: Truth, Doc: "Whether the lower part is a mulch basin or infiltration trench."},
			func(p *drop) Value { return truth(takesUp(p.down.Kind)) }},
		{Field{Name: "by", Kind: Text, Doc: "The pipes and spillways between them; \"none\" where none is drawn."}, (*drop).between},
		{Field{Name: "outlet", Kind: Number, Dimension: quantity.Level,
			Doc: "Where water leaves the upper part: the upper invert of the first pipe, or the crest of the first spillway; where there is none the invert of its outlet."},
			func(p *drop) Value { return p.outlet }},
		{Field{Name: "inlet", Kind: Number, Dimension: quantity.Level,
			Doc: "Where water comes into the lower part: the lower invert of the last pipe, or the crest of the last spillway; where there is none the invert of its inlet."},
			func(p *drop) Value { return p.inlet }},
		{Field{Name: "fall_available", Kind: Number, Dimension: quantity.Length, Doc: "Fall from the one to the other; negative where the water would have to rise.",
			Formula: "outlet − inlet"}, func(p *drop) Value { return outOf(p.outlet.Number-p.inlet.Number, p.outlet, p.inlet) }},
		{Field{Name: "dry_drop", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far the water stands lower in the lower part in ordinary flow; of a diverter or connection the invert counts for the water.",
			Formula: "dry_surface of the upper − dry_surface of the lower part"}, func(p *drop) Value { return p.drop(p.dry) }},
		{Field{Name: "storm_drop", Kind: Number, Dimension: quantity.Length, Doc: "The same in the design storm.",
			Formula: "storm_surface of the upper − storm_surface of the lower part"}, func(p *drop) Value { return p.drop(p.storm) }},
		{Field{Name: "drowned_dry", Kind: Truth,
			Doc: "Whether the water in the lower part stands over the outlet of the upper one in ordinary flow, so that it backs up into it."},
			func(p *drop) Value { return p.drowned(p.dry) }},
		{Field{Name: "drowned_in_storm", Kind: Truth, Doc: "The same in the design storm."}, func(p *drop) Value { return p.drowned(p.storm) }},
	},
)

// drop is a part with one that its water comes to next.
type drop struct {
	up, down      *part
	by            []*part // pipes and spillways, in the water's order
	outlet, inlet Value
	dry, storm    waterOfBoth
}

// waterOfBoth is the level of the water in the upper and in the lower part.
type waterOfBoth struct{ up, down Value }

func (d *drawing) drops() []*drop {
	var all []*drop
	for _, p := range d.parts {
		if slices.Contains(holdsWater, p.Kind) || p.Kind == diverter {
			all = append(all, d.dropsFrom(p)...)
		}
	}
	return all
}

// dropsFrom follows the pipes and spillways that lead on from a part; where they
// join again, what lies beyond is met once.
func (d *drawing) dropsFrom(up *part) []*drop {
	var all []*drop
	met := map[int]bool{up.node: true}
	var visit func(node int, by []*part)
	visit = func(node int, by []*part) {
		for _, w := range d.network.nodes[node].ways[everSeason] {
			to := d.partAt(w.to)
			switch {
			case to == nil || met[w.to]:
				continue
			case leadsOn(to.Kind):
				met[w.to] = true
				visit(w.to, append(slices.Clip(by), to))
			case to.Kind != stormInflow:
				met[w.to] = true
				all = append(all, newDrop(up, to, by))
			}
		}
	}
	visit(up.node, nil)
	return all
}

// leadsOn reports whether a kind of part only leads water on.
func leadsOn(kind string) bool { return works(kind) == pipe || kind == spillway }

func newDrop(up, down *part, by []*part) *drop {
	d := &drop{up: up, down: down, by: by, outlet: up.lets(), inlet: down.takes()}
	if len(by) > 0 {
		d.outlet, d.inlet = by[0].lowest(), by[len(by)-1].foot()
	}
	upDry, upStorm := up.water()
	downDry, downStorm := down.water()
	d.dry, d.storm = waterOfBoth{upDry, downDry}, waterOfBoth{upStorm, downStorm}
	return d
}

// foot is where water leaves a pipe or spillway.
func (p *part) foot() Value {
	if p.Kind == spillway {
		return p.lowest()
	}
	return p.lowerInvert()
}

// lets is where water leaves the part itself.
func (p *part) lets() Value {
	switch {
	case p.Kind == diverter:
		return p.entry("level", p.Level)
	case takesUp(p.Kind):
		return unknown(Lack{p.Pointer + "/to", "a drain pipe that " + p.ID + " drains into"})
	default:
		return p.entry("outlet_level", p.OutletLevel)
	}
}

// takes is where water comes into the part itself.
func (p *part) takes() Value {
	switch {
	case p.Kind == diverter || leaves(p.Kind):
		return p.entry("level", p.Level)
	case takesUp(p.Kind):
		return unknown(Lack{p.Pointer, "a drain pipe that drains into " + p.ID})
	default:
		return p.entry("inlet_level", p.InletLevel)
	}
}

// water is the level of the water in the part in ordinary flow and in the storm.
func (p *part) water() (dry, storm Value) {
	if s := p.drawing.surfaces().of[p.node]; s != nil {
		return s.dry, s.storm
	}
	level := p.entry("level", p.Level)
	return level, level
}

func (p *drop) subject() Subject {
	return Subject{p.up.ID + " and " + p.down.ID, []string{p.up.ID, p.down.ID}, []string{p.up.Pointer, p.down.Pointer}}
}

func (p *drop) between() Value {
	names, inputs := make([]string, len(p.by)), make([]Input, len(p.by))
	for i, q := range p.by {
		names[i], inputs[i] = q.ID, Input{Name: q.ID, Pointer: q.Pointer}
	}
	return text(listed(names), inputs...)
}

func (p *drop) drop(water waterOfBoth) Value {
	return outOf(water.up.Number-water.down.Number, water.up, water.down)
}

func (p *drop) drowned(water waterOfBoth) Value {
	inputs, lacks := gathered([]Value{water.down, p.outlet})
	return orUnknown(truth(water.down.Number > p.outlet.Number+geometry.Resolution, inputs...), lacks)
}
