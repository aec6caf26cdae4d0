package figures

import (
	"slices"

	"greysill/checker/climate"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var pipeTable = tabulate(
	List{Name: "pipes", Doc: "Every drain pipe and overflow pipe as a whole.", Subject: "a pipe"},
	(*drawing).wholePipes, (*wholePipe).subject,
	[]column[*wholePipe]{
		{Field{Name: "kind", Kind: Text, Doc: "The pipe's kind.", Words: []string{drainPipe, overflowPipe}}, func(p *wholePipe) Value { return p.kind() }},
		{Field{Name: "diameter", Kind: Number, Dimension: quantity.Length, Doc: "Inside diameter."}, func(p *wholePipe) Value { return p.diameter() }},
		{Field{Name: "marked", Kind: Truth, Doc: "Whether it is marked along its length as carrying water that is not fit to drink."},
			func(p *wholePipe) Value { return p.yesNo("marked", p.Marked) }},
		{Field{Name: "leads_to_train", Kind: Truth,
			Doc: "Whether its water goes on to a part that stores, treats or takes up greywater; else it leads to the sewer like any drain of the house."},
			(*wholePipe).leadsToTrain},
		{Field{Name: "indoors", Kind: Truth, Doc: "Whether all of it lies inside the outline of a building."}, (*wholePipe).indoors},
		{Field{Name: "under_driveway", Kind: Truth, Doc: "Whether it passes under a driveway."}, (*wholePipe).underDriveway},
		{Field{Name: "cased", Kind: Truth, Doc: "Whether it runs in a casing that bears the wheels, where it passes under a driveway."},
			func(p *wholePipe) Value { return p.yesNo("cased", p.Cased) }},
		{Field{Name: "runs_in_winter", Kind: Truth,
			Doc: "Whether any source's water runs in it in the months that freeze, diverters turned to their second route; false when no month freezes."},
			(*wholePipe).runsInWinter},
		{Field{Name: "least_cover", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least depth of ground over the inside top of the pipe, over all its reaches; negative where it stands out of the ground.",
			Formula: coverFormula}, func(p *wholePipe) Value { return p.cover }},
		{Field{Name: "cover_below_frost", Kind: Number, Dimension: quantity.Length,
			Doc:     "How much more cover it has than the ground freezes deep, its insulation counted as soil; negative where the frost reaches it.",
			Formula: "least cover + 12 × insulation (0 where none is drawn) − frost depth",
			Source:  Citation{Title: climate.InsulationSource, Standing: Published}}, (*wholePipe).belowFrost},
	},
)

// wholePipe is a pipe with the least cover of all its reaches.
type wholePipe struct {
	*part
	cover  Value
	winter *seasonFlow
}

func (d *drawing) wholePipes() []*wholePipe {
	var all []*wholePipe
	winter := d.inSeason(bypassing)
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		all = append(all, &wholePipe{p, p.leastCover(), &winter})
	}
	return all
}

func (p *part) leastCover() Value {
	reaches := p.reaches()
	covers := make([]Value, len(reaches))
	least := 0.0
	for i, r := range reaches {
		c := newCover(r)
		covers[i] = c.of(c.least.depth)
		if i == 0 || covers[i].Number < least {
			least = covers[i].Number
		}
	}
	inputs, lacks := gathered(covers)
	return orUnknown(number(least, inputs...), lacks)
}

func (p *part) yesNo(entry string, given *bool) Value {
	if given == nil {
		return unknown(p.lack(entry))
	}
	return truth(*given, p.drawn(entry))
}

func (p *wholePipe) leadsToTrain() Value {
	leads, lacks := p.drawing.network.meets(p.node, everSeason, nil, inTrain)
	return orUnknown(truth(leads, p.given("to", len(p.To))...), lacks)
}

func (p *wholePipe) indoors() Value {
	return p.amongst("building", func(building geometry.Shape) bool { return geometry.Inside(p.shape, building) })
}

func (p *wholePipe) underDriveway() Value {
	return p.amongst("driveway", func(driveway geometry.Shape) bool { return geometry.Distance(p.shape, driveway) == 0 })
}

// amongst reports whether the pipe lies in some way to a feature of a kind.
func (p *wholePipe) amongst(kind string, lies func(geometry.Shape) bool) Value {
	lacks := p.pathless()
	if p.shape.Empty() {
		return unknown(lacks...)
	}
	for _, t := range only(p.drawing.features, kind) {
		if !t.outlined {
			lacks = append(lacks, t.unplaced()...)
		} else if lies(t.shape) {
			return truth(true, p.drawn("path"), Input{Name: t.id, Pointer: t.lies})
		}
	}
	return orUnknown(truth(false, p.drawn("path")), lacks)
}

func (p *wholePipe) runsInWinter() Value {
	freezes := p.drawing.anyMonthFreezes()
	if !freezes.Known() || !freezes.Truth {
		return freezes
	}
	comes := slices.ContainsFunc(p.winter.from, func(met []bool) bool { return met[p.node] })
	if comes {
		return truth(true, freezes.Inputs...)
	}
	return orUnknown(truth(false, freezes.Inputs...), p.drawing.network.lacks(p.drawing.network.above(p.node, p.winter.open)))
}

func (p *wholePipe) belowFrost() Value {
	insulation, frost := Value{}, p.drawing.frostDepth()
	if p.Insulation.Given() {
		insulation = number(p.Insulation.Value, p.drawn("insulation"))
	}
	return worked(p.lack("insulation"), func() (float64, error) {
		soil, err := climate.SoilForInsulation(insulation.Number)
		return p.cover.Number + soil - frost.Number, err
	}, p.cover, insulation, frost)
}
