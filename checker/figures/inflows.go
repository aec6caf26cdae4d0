package figures

var inflowTable = tabulate(
	List{Name: "inflows", Doc: "Every source, and every storm inflow among the parts.", Subject: "something that drains in"},
	(*drawing).inflows, inflow.subject,
	[]column[inflow]{
		{Field{Name: "kind", Kind: Text, Doc: "The source's kind."}, inflow.kind},
		{Field{Name: "water", Kind: Text, Doc: "The class of its water.",
			Words: []string{greywater, toiletWaste, kitchenWaste, clearWater, brine}}, inflow.water},
		{Field{Name: "enters_train", Kind: Truth,
			Doc: "Whether any of its water reaches a part that stores, treats or takes up greywater, in any season or by any overflow."}, inflow.entersTrain},
		{Field{Name: "enters_at_or_above_bed", Kind: Truth,
			Doc: "Whether any of its water reaches a planted gravel bed or anything that drains to one, or mulch basins and trenches where there is no bed."}, inflow.entersAtOrAboveBed},
		{Field{Name: "route", Kind: Text, Doc: "Where its water goes, part by part, in the warm season."}, inflow.route},
	},
)

// inflow is a source, or a part through which storm water comes in.
type inflow struct {
	*drawing
	node int
}

func (d *drawing) inflows() []inflow {
	var all []inflow
	for i := range d.Sources {
		all = append(all, inflow{d, i})
	}
	for _, p := range d.ofKind(stormInflow) {
		all = append(all, inflow{d, p.node})
	}
	return all
}

func (f inflow) at() *node { return &f.network.nodes[f.node] }

func (f inflow) subject() Subject {
	return Subject{f.at().id, []string{f.at().id}, []string{f.at().pointer}}
}

func (f inflow) kind() Value { return text(f.at().kind) }

func (f inflow) water() Value { return text(waterOf[f.at().kind]) }

func (f inflow) entersTrain() Value { return f.reaches(inTrain) }

// entersAtOrAboveBed need look for the bed alone: what drains to a bed passes
// the water on to it.
func (f inflow) entersAtOrAboveBed() Value {
	if len(f.ofKind(plantedBed)) == 0 {
		return f.reaches(takesUp)
	}
	return f.reaches(func(kind string) bool { return kind == plantedBed })
}

func (f inflow) reaches(wanted func(kind string) bool) Value {
	reached, lacks := f.network.meets(f.node, everSeason, nil, wanted)
	return orUnknown(truth(reached, f.drawn()), lacks)
}

func (f inflow) drawn() Input { return Input{Name: "to", Pointer: f.at().pointer + "/to"} }

func (f inflow) route() Value {
	if f.at().open() {
		return unknown(f.at().lack())
	}
	return text(f.network.trail(f.node, f.at().ways[warm], warm), f.drawn())
}
