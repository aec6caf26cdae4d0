package figures

import (
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var pipeTable = tabulate(
	List{Name: "pipes", Doc: "Every drain pipe and overflow pipe as a whole.", Subject: "a pipe"},
	(*drawing).drainsAndOverflows, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The pipe's kind.", Words: []string{drainPipe, overflowPipe}}, func(p *part) Value { return p.kind() }},
		{Field{Name: "diameter", Kind: Number, Dimension: quantity.Length, Doc: "Inside diameter."}, func(p *part) Value { return p.diameter() }},
		{Field{Name: "marked", Kind: Truth, Doc: "Whether it is marked along its length as carrying water that is not fit to drink."},
			func(p *part) Value { return p.yesNo("marked", p.Marked) }},
		{Field{Name: "leads_to_train", Kind: Truth,
			Doc: "Whether its water goes on to a part that stores, treats or takes up greywater; else it leads to the sewer like any drain of the house."},
			(*part).leadsToTrain},
		{Field{Name: "under_driveway", Kind: Truth, Doc: "Whether it passes under a driveway."}, (*part).underDriveway},
		{Field{Name: "cased", Kind: Truth, Doc: "Whether it runs in a casing that bears the wheels, where it passes under a driveway."},
			func(p *part) Value { return p.yesNo("cased", p.Cased) }},
	},
)

func (d *drawing) drainsAndOverflows() []*part { return d.ofKind(drainPipe, overflowPipe) }

func (p *part) yesNo(entry string, given *bool) Value {
	if given == nil {
		return unknown(p.lack(entry))
	}
	return truth(*given, p.drawn(entry))
}

func (p *part) leadsToTrain() Value {
	leads, lacks := p.drawing.network.meets(p.node, everSeason, nil, inTrain)
	return orUnknown(truth(leads, p.given("to", len(p.To))...), lacks)
}

func (p *part) underDriveway() Value {
	lacks := p.pathless()
	if p.shape.Empty() {
		return unknown(lacks...)
	}
	for _, t := range only(p.drawing.features, "driveway") {
		if !t.outlined {
			lacks = append(lacks, t.unplaced()...)
		} else if geometry.Distance(p.shape, t.shape) == 0 {
			return truth(true, p.drawn("path"), Input{Name: t.id, Pointer: t.lies})
		}
	}
	return orUnknown(truth(false, p.drawn("path")), lacks)
}
