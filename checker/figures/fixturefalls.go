package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var fixtureFallTable = tabulate(
	List{Name: "fixture_falls", Subject: "a fixture and the part that it drains into",
		Doc: "Every fixture that gives greywater with every part that it leads straight into and whose levels are drawn: mulch basins and trenches have none."},
	(*drawing).fixtureFalls, (*fixtureFall).subject,
	[]column[*fixtureFall]{
		{Field{Name: "fixture", Kind: Text, Doc: "The fixture's id."}, func(f *fixtureFall) Value { return text(f.ID) }},
		{Field{Name: "next", Kind: Text, Doc: "The part's id."}, func(f *fixtureFall) Value { return text(f.to.ID) }},
		{Field{Name: "drop", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far the fixture's outlet lies above the part; negative where the water would have to rise.",
			Formula: "level of the fixture − level of the part's inlet; of a pipe its lower invert, since the fixture may join it anywhere"}, (*fixtureFall).drop},
		{Field{Name: "falls", Kind: Truth, Doc: "Whether the fixture's outlet lies no lower than the part."}, (*fixtureFall).falls},
	},
)

// fixtureFall is a fixture with a part that it leads into.
type fixtureFall struct {
	fixture
	to *part
}

func (d *drawing) fixtureFalls() []*fixtureFall {
	var all []*fixtureFall
	for _, f := range d.fixtures() {
		for i, o := range f.To {
			to := d.part(o.Target)
			met := slices.ContainsFunc(f.To[:i], func(earlier design.Outlet) bool { return earlier.Target == o.Target })
			if to != nil && !takesUp(to.Kind) && !met {
				all = append(all, &fixtureFall{f, to})
			}
		}
	}
	return all
}

func (f *fixtureFall) subject() Subject {
	return Subject{f.ID + " to " + f.to.ID, []string{f.ID, f.to.ID}, []string{f.Pointer, f.to.Pointer}}
}

func (f *fixtureFall) drop() Value {
	level, enters := f.entry("level", f.Level), f.to.entersAt()
	if f.to.isPipe() {
		enters = f.to.invert(max(len(f.to.Inverts)-1, 0))
	}
	return outOf(level.Number-enters.Number, level, enters)
}

func (f *fixtureFall) falls() Value {
	drop := f.drop()
	return orUnknown(truth(drop.Number >= -geometry.Resolution, drop.Inputs...), drop.Lacks)
}
