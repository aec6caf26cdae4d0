package figures

var routeTable = tabulate(
	List{Name: "routes", Doc: "Every greywater source that enters the train, or of which the drawing does not show whether it does.",
		Subject: "a greywater source on the system"},
	(*drawing).routes, inflow.subject,
	[]column[inflow]{
		{Field{Name: "kind", Kind: Text, Doc: "The source's kind."}, inflow.kind},
		{Field{Name: "diverter_on_every_way", Kind: Truth,
			Doc: "Whether its water meets a diverter on every way to the first part that stores, treats or takes up greywater."}, inflow.diverterOnEveryWay},
		{Field{Name: "diverters", Kind: Text,
			Doc: "The diverters that it meets before the first part that stores, treats or takes up greywater; \"none\" where it meets none."}, inflow.diverters},
		{Field{Name: "route", Kind: Text, Doc: "Where its water goes, part by part, in the warm season."}, inflow.route},
	},
)

func (d *drawing) routes() []inflow {
	var on []inflow
	for i := range d.Sources {
		f := inflow{d, i}
		if waterOf[f.at().kind] != greywater {
			continue
		}
		if enters := f.entersTrain(); enters.Truth || !enters.Known() {
			on = append(on, f)
		}
	}
	return on
}

// diverterOnEveryWay looks for a way to the train past every diverter.
func (f inflow) diverterOnEveryWay() Value {
	isDiverter := func(kind string) bool { return kind == diverter }
	undiverted, lacks := f.network.meets(f.node, everSeason, isDiverter, inTrain)
	return orUnknown(truth(!undiverted, f.drawn()), lacks)
}

func (f inflow) diverters() Value {
	met := f.network.downstream(f.node, everSeason, inTrain)
	var names []string
	for _, p := range f.ofKind(diverter) {
		if met[p.node] {
			names = append(names, p.ID)
		}
	}
	open := f.network.openEnds(f.node, met, inTrain)
	return orUnknown(text(listed(names), f.drawn()), f.network.lacks(open))
}
