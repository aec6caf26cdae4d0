package figures

import "strings"

var inflowTable = tabulate(
	List{Name: "inflows", Doc: "Every source, and every storm inflow among the parts.", Subject: "something that drains in"},
	(*drawing).inflows, inflow.subject,
	[]column[inflow]{
		{Field{Name: "kind", Kind: Text, Doc: "The source's kind."}, inflow.kind},
		{Field{Name: "water", Kind: Text, Doc: "The class of its water.",
			Words: []string{greywater, toiletWaste, kitchenWaste, clearWater, brine}}, inflow.water},
		{Field{Name: "soiled_nappies", Kind: Truth, Doc: "Whether soiled nappies are washed in it; false of a fixture that is not for laundry, unless stated."},
			inflow.soiledNappies},
		{Field{Name: "hazardous_chemicals", Kind: Truth, Doc: "Whether chemicals that poison soil or water go down it, as stated; false of storm water that runs in from outside."}, inflow.hazardousChemicals},
		{Field{Name: "enters_train", Kind: Truth,
			Doc: "Whether any of its water reaches a part that stores, treats or takes up greywater, in any season or by any overflow."}, inflow.entersTrain},
		{Field{Name: "joins_untreated", Kind: Truth,
			Doc: "Whether any of its water, in any season or by any overflow, reaches a planted gravel bed, or another part that stores, treats or takes up " +
				"greywater and that greywater reaches without having passed through a bed; what a bed overflows has not."}, inflow.joinsUntreated},
		{Field{Name: "settles_first", Kind: Truth,
			Doc: "Whether whatever of its water reaches a planted gravel bed, mulch basin, infiltration trench or pond, in any season or by any overflow, " +
				"has passed through a settling basin or a filter; true when none reaches one."}, inflow.settlesFirst},
		{Field{Name: "joins_in_soil", Kind: Truth,
			Doc: "Whether any of its water, in any season or by any overflow, reaches a mulch basin or infiltration trench that greywater reaches too, treated or not."}, inflow.joinsInSoil},
		{Field{Name: "ends_safely", Kind: Truth,
			Doc: "Whether every way that its water can take, in any season or by any overflow, ends in a sewer or septic connection, " +
				"or in a mulch basin or infiltration trench that drains no further."}, inflow.endsSafely},
		{Field{Name: "ends_in_sewer", Kind: Truth,
			Doc: "Whether every way that its water can take, in any season or by any overflow, ends in a sewer or septic connection."}, inflow.endsInSewer},
		{Field{Name: "reaches_sewer", Kind: Truth, Doc: "Whether any of its water, in any season or by any overflow, reaches a sewer or septic connection."}, inflow.reachesSewer},
		{Field{Name: "ends", Kind: Text,
			Doc: "The parts and features where its water ends, by every way that it can take in any season or by any overflow."}, inflow.ends},
		{Field{Name: "unsafe_ends", Kind: Text,
			Doc: "Those of its ends that are neither a sewer or septic connection nor a mulch basin or infiltration trench; \"none\" where there is none."}, inflow.unsafeEnds},
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

func (f inflow) soiledNappies() Value {
	if f.at().part != nil || f.Sources[f.node].SoiledNappies == nil && !laundry[f.at().kind] {
		return truth(false)
	}
	return stated(f.Sources[f.node].SoiledNappies, f.at().pointer, "soiled_nappies", f.at().id)
}

func (f inflow) hazardousChemicals() Value {
	if f.at().part != nil {
		return truth(false)
	}
	return stated(f.Sources[f.node].Hazardous, f.at().pointer, "hazardous_chemicals", f.at().id)
}

// stated gives a yes or no that the document gives, at an entry of the thing at
// a pointer.
func stated(says *bool, pointer, entry, of string) Value {
	at := pointer + "/" + entry
	if says == nil {
		return unknown(Lack{at, entry + " of " + of})
	}
	return truth(*says, Input{Name: strings.ReplaceAll(entry, "_", " "), Pointer: at})
}

func (f inflow) entersTrain() Value {
	enters, lacks := f.network.meets(f.node, everSeason, nil, inTrain)
	return orUnknown(truth(enters, f.drawn()), lacks)
}

// joinsUntreated holds what the water reaches against what untreated greywater
// reaches. Where greywater goes on in a way not drawn, it may reach every part
// of the train that this water does.
func (f inflow) joinsUntreated() Value {
	met := f.network.downstream(f.node, everSeason, nil)
	open := f.network.openEnds(f.node, met, nil)
	if !f.network.anyOf(met, inTrain) {
		return orUnknown(truth(false, f.drawn()), f.network.lacks(open))
	}
	for i, reached := range met {
		if kind := f.network.nodes[i].kind; reached && (kind == plantedBed || inTrain(kind) && f.untreated.met[i]) {
			return truth(true, f.drawn())
		}
	}
	return orUnknown(truth(false, f.drawn()), f.network.lacks(append(open, f.untreated.open...)))
}

// settlesFirst does not count a surge tank, which water runs through too fast.
func (f inflow) settlesFirst() Value {
	holdsBack := func(kind string) bool { return kind == settlingBasin || kind == filter }
	meets, lacks := f.network.meets(f.node, everSeason, holdsBack, func(kind string) bool { return inTrain(kind) && !settles(kind) })
	return orUnknown(truth(!meets, f.drawn()), lacks)
}

func (f inflow) joinsInSoil() Value {
	met := f.network.downstream(f.node, everSeason, nil)
	grey := f.network.from(everSeason, isGreywater)
	for i, reached := range met {
		if reached && grey.met[i] && takesUp(f.network.nodes[i].kind) {
			return truth(true, f.drawn())
		}
	}
	open := f.network.openEnds(f.node, met, nil)
	if f.network.anyOf(met, takesUp) {
		open = append(open, grey.open...)
	}
	return orUnknown(truth(false, f.drawn()), f.network.lacks(open))
}

func (f inflow) endsSafely() Value { return f.allEnd(mayEnd) }

func (f inflow) endsInSewer() Value { return f.allEnd(leaves) }

func (f inflow) reachesSewer() Value {
	reaches, lacks := f.network.meets(f.node, everSeason, nil, leaves)
	return orUnknown(truth(reaches, f.drawn()), lacks)
}

func (f inflow) allEnd(end func(kind string) bool) Value {
	if f.at().open() {
		return unknown(f.at().lack())
	}
	safe, lacks := f.network.allEnd(f.at().ways[everSeason], end, never)
	return orUnknown(truth(safe, f.drawn()), lacks)
}

func (f inflow) ends() Value { return f.endsBut(never) }

func (f inflow) unsafeEnds() Value { return f.endsBut(mayEnd) }

// endsBut names the ends of the water's ways, those of some kinds left out.
func (f inflow) endsBut(out func(kind string) bool) Value {
	met := f.network.downstream(f.node, everSeason, nil)
	var names []string
	for i, reached := range met {
		if here := &f.network.nodes[i]; reached && len(here.ways[everSeason]) == 0 && !out(here.kind) {
			names = append(names, here.id)
		}
	}
	return orUnknown(text(listed(names), f.drawn()), f.network.lacks(f.network.openEnds(f.node, met, nil)))
}

func (f inflow) drawn() Input { return Input{Name: "to", Pointer: f.at().pointer + "/to"} }

func (f inflow) route() Value {
	if f.at().open() {
		return unknown(f.at().lack())
	}
	return text(f.network.trail(f.node, f.at().ways[warm], warm), f.drawn())
}
