package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/quantity"
)

const constructionPointer = "/construction"

var constructionTable = tabulate(
	List{Name: "construction", Doc: "How the system is built: one item where anything is dug, else none.", Subject: "the building of the system"},
	(*drawing).buildings,
	func(*drawing) Subject {
		return Subject{Name: "the building of the system", Pointers: []string{constructionPointer}}
	},
	[]column[*drawing]{
		{Field{Name: "lines_called_in", Kind: Truth, Doc: "Whether the plan has buried lines called in, and private ones looked for, before the first dig."},
			func(d *drawing) Value { return d.stated("lines_called_in", construction.called) }},
		{Field{Name: "spoil_distance", Kind: Number, Dimension: quantity.Length, Doc: "How far what is dug out is kept from the edge of the cut."}, (*drawing).spoilDistance},
		{Field{Name: "bare_soil_held", Kind: Truth, Doc: "Whether the plan holds bare soil back in rain until it is grown over."},
			func(d *drawing) Value { return d.stated("bare_soil_held", construction.bareSoil) }},
	},
)

// construction is what a document says of the building of the system.
type construction design.Construction

func (c construction) called() *bool     { return c.LinesCalledIn }
func (c construction) protection() *bool { return c.CaveInProtection }
func (c construction) exits() *bool      { return c.TrenchExits }
func (c construction) bareSoil() *bool   { return c.BareSoilHeld }

// buildings is the drawing itself where anything is dug.
func (d *drawing) buildings() []*drawing {
	if len(d.cuts()) == 0 {
		return nil
	}
	return []*drawing{d}
}

func (d *drawing) construction() construction {
	if d.Construction == nil {
		return construction{}
	}
	return construction(*d.Construction)
}

// stated gives a yes or no of the construction.
func (d *drawing) stated(entry string, of func(construction) *bool) Value {
	given := of(d.construction())
	if given == nil {
		return unknown(ofConstruction(entry))
	}
	return truth(*given, Input{Name: entry, Pointer: constructionPointer + "/" + entry})
}

func ofConstruction(entry string) Lack {
	return Lack{constructionPointer + "/" + entry, entry + " of the construction"}
}

func (d *drawing) spoilDistance() Value {
	q := d.construction().SpoilDistance
	if !q.Given() {
		return unknown(ofConstruction("spoil_distance"))
	}
	return number(q.Value, Input{Name: "spoil distance", Pointer: constructionPointer + "/spoil_distance"})
}

var licensedTable = tabulate(
	List{Name: "licensed_work", Subject: "work for licensed people",
		Doc: "The kinds of work for licensed people that the drawing brings with it: sewer connections where one is drawn, " +
			"electrical, gas and drinking water where a line of that kind runs through a dig or is met by a pipe, and drinking water where a part is filled from it."},
	(*drawing).licensedWork, licensed.subject,
	[]column[licensed]{
		{Field{Name: "work", Kind: Text, Doc: "The kind of work.", Words: []string{"sewer connection", "electrical", gas, "drinking water"}},
			func(l licensed) Value { return text(l.work) }},
		{Field{Name: "because_of", Kind: Text, Doc: "The parts and services that bring it."}, func(l licensed) Value { return text(listed(l.ids)) }},
		{Field{Name: "named", Kind: Truth, Doc: "Whether the plan leaves it to licensed people."}, licensed.named},
	},
)

// licensed is a kind of work for licensed people.
type licensed struct {
	*drawing
	work string
	ids  []string // what brings it
}

// workOf has the kind of work on every kind of service that takes a licence.
var workOf = map[string]string{lineVoltage: "electrical", gas: gas, "water": "drinking water"}

func (d *drawing) licensedWork() []licensed {
	var all []licensed
	add := func(work, id string) {
		k := slices.IndexFunc(all, func(l licensed) bool { return l.work == work })
		if k < 0 {
			k, all = len(all), append(all, licensed{drawing: d, work: work})
		}
		if !slices.Contains(all[k].ids, id) {
			all[k].ids = append(all[k].ids, id)
		}
	}
	for _, p := range d.ofKind(sewerConnection, septicConnection) {
		add("sewer connection", p.ID)
	}
	for _, p := range d.madeUp() {
		if p.MakeUp.From == "drinking water" {
			add("drinking water", p.ID)
		}
	}
	for _, dig := range d.digs() {
		if work := workOf[dig.thing.kind]; work != "" && dig.meets().Truth {
			add(work, dig.thing.id)
		}
	}
	return all
}

func (l licensed) subject() Subject {
	return Subject{Name: l.work + " work", Pointers: []string{constructionPointer + "/licensed_work"}}
}

func (l licensed) named() Value {
	works := l.drawing.construction().LicensedWork
	if works == nil {
		return unknown(ofConstruction("licensed_work"))
	}
	return truth(slices.Contains(works, l.work), Input{Name: "licensed work", Pointer: constructionPointer + "/licensed_work"})
}
