package design

import (
	"cmp"
	"fmt"
	"slices"

	"greysill/checker/source"
)

// named is a thing of the document that has an id.
type named struct {
	id, sort, pointer string
	at                source.Position
}

// named lists the things that share one set of ids, in the order of the file.
func (d *Design) named() []named {
	var all []named
	add := func(id, sort, pointer string) {
		all = append(all, named{id, sort, pointer, d.Position(pointer)})
	}
	for _, s := range d.Sources {
		add(s.ID, "source", s.Pointer)
	}
	for _, p := range d.Parts {
		add(p.ID, "part", p.Pointer)
	}
	for _, f := range d.Site.Features {
		add(f.ID, "feature", f.Pointer)
	}
	for _, s := range d.Site.Services {
		add(s.ID, "service", s.Pointer)
	}
	slices.SortStableFunc(all, func(a, b named) int {
		return cmp.Or(cmp.Compare(a.at.Line, b.at.Line), cmp.Compare(a.at.Column, b.at.Column))
	})
	return all
}

// references notes ids that are given twice, ways and tasks that lead to
// nothing, and shares that do not add up.
func (f *faults) references(d *Design) {
	sortOf := f.ids(d.named())
	for _, s := range d.Sources {
		f.outlets(s.To, s.Pointer+"/to", sortOf)
	}
	for _, p := range d.Parts {
		f.outlets(p.To, p.Pointer+"/to", sortOf)
		f.outlets(p.BypassTo, p.Pointer+"/bypass_to", sortOf)
		f.outlets(p.OverflowTo, p.Pointer+"/overflow_to", sortOf)
	}
	if d.Operation == nil {
		return
	}
	for i, t := range d.Operation.Tasks {
		f.reference(t.Part, fmt.Sprintf("/operation/tasks/%d/part", i), sortOf, "part")
	}
}

// ids notes each id that was given before, and gives what each id is of.
func (f *faults) ids(all []named) map[string]string {
	sortOf, first := map[string]string{}, map[string]named{}
	for _, n := range all {
		before, twice := first[n.id]
		switch {
		case n.id == "":
		case twice:
			f.at(n.pointer+"/id", func() words {
				at := f.doc.Position(before.pointer + "/id")
				return words{
					found:    fmt.Sprintf("the id %s of this %s is that of a %s at line %d, column %d already", source.Quote(n.id), n.sort, before.sort, at.Line, at.Column),
					expected: "an id of its own for each source, part, feature and service",
					remedy:   "rename one of the two, and what refers to it",
				}
			})
		default:
			sortOf[n.id], first[n.id] = n.sort, n
		}
	}
	return sortOf
}

func (f *faults) outlets(outlets []Outlet, pointer string, sortOf map[string]string) {
	for _, o := range outlets {
		f.reference(o.Target, f.target(o), sortOf, "part", "feature")
	}
	f.shares(outlets, pointer)
}

// target leads to the text that names an outlet's target.
func (f *faults) target(o Outlet) string {
	if _, isText := value(f.doc.Value(), o.Pointer).(string); isText {
		return o.Pointer
	}
	return o.Pointer + "/target"
}

// reference notes an id that belongs to nothing, or to something of a sort
// that cannot be meant.
func (f *faults) reference(id, pointer string, sortOf map[string]string, sorts ...string) {
	is := sortOf[id]
	if id == "" || slices.Contains(sorts, is) {
		return
	}
	f.at(pointer, func() words {
		var ids []string
		for known, sort := range sortOf {
			if slices.Contains(sorts, sort) {
				ids = append(ids, known)
			}
		}
		slices.Sort(ids)
		w := words{found: f.what(pointer) + " names " + source.Quote(id) + ", which is nothing in this document", expected: "the id of a " + sorts[0]}
		if len(sorts) > 1 {
			w.expected += " or " + sorts[1]
		}
		if is != "" {
			w.found = f.what(pointer) + " names " + source.Quote(id) + ", which is a " + is
		}
		if near := source.Nearest(id, ids); near != "" {
			w.remedy = fmt.Sprintf("did you mean %q?", near)
		} else {
			w.remedy = "correct the id, or draw what it means"
		}
		return w
	})
}

// Shares are written to a tenth of a per cent at best: three thirds of
// 33.3 % are meant to be the whole.
const shareTolerance = 0.01

// shares notes ways that together take more than all of the water, or that
// leave some without a way.
func (f *faults) shares(outlets []Outlet, pointer string) {
	sum, stated := 0.0, 0
	for _, o := range outlets {
		if o.Share.Given() {
			sum, stated = sum+o.Share.Value, stated+1
		}
	}
	tooMuch := sum > 1+1e-9
	tooLittle := stated > 0 && stated == len(outlets) && sum < 1-shareTolerance
	if !tooMuch && !tooLittle {
		return
	}
	f.at(pointer, func() words {
		w := words{fmt.Sprintf("the shares in %s add up to %.4g %%", f.what(pointer), sum*100), "100 % in all", "lower some of them"}
		if tooLittle {
			w.remedy = "raise some of them, or leave one share out for the rest of the water"
		}
		return w
	})
}
