package report

import (
	"cmp"
	"slices"
	"strings"

	"greysill/checker/figures"
)

// ListView is one list of figures as a table.
type ListView struct {
	Title, Doc string
	Columns    []ColumnView // what its figures are and how they are worked out
	Upright    bool         // figures down, subjects across: for few subjects
	Subjects   []SubjectFigures
	From       string  // what the first subject's figures were worked out from, of a list across
	Origins    bool    // whether other subjects have inputs of their own
	Parts      [][]int // the figures that each of its tables has, when they do not all fit side by side
}

// ColumnView is one figure of a list.
type ColumnView struct{ Name, Doc, Formula, Source string }

// SubjectFigures is one subject with its figures.
type SubjectFigures struct {
	Name, Place, From string
	Cells             []CellView
}

// CellView is one figure of one subject.
type CellView struct {
	Value, From string
	Known       bool
}

const (
	uprightSubjects = 3 // as many subjects stand side by side at most
	sideBySide      = 6 // as many figures
)

// The groups of lists, by the beginning of their names.
const (
	quantitiesGroup  = "quantities"
	costGroup        = "cost"
	maintenanceGroup = "maintenance"
	clearancesGroup  = "clearances"
)

// Lists gives the lists of figures that belong to no group of their own.
func (p *paper) Lists() []ListView {
	return p.group(func(group string) bool {
		return group != quantitiesGroup && group != costGroup && group != maintenanceGroup && group != clearancesGroup
	})
}

// Quantities gives what is to be bought, dug and laid, and what it costs.
func (p *paper) Quantities() []ListView {
	return p.group(func(group string) bool { return group == quantitiesGroup || group == costGroup })
}

// MaintenanceLists gives what was worked out of upkeep.
func (p *paper) MaintenanceLists() []ListView {
	return p.group(func(group string) bool { return group == maintenanceGroup })
}

func (p *paper) group(wanted func(group string) bool) []ListView {
	var views []ListView
	for _, l := range p.Figures.Lists {
		group, _, _ := strings.Cut(l.List.Name, ".")
		if len(l.Items) > 0 && wanted(group) {
			views = append(views, p.listView(l))
		}
	}
	return views
}

func (p *paper) listView(l figures.Items) ListView {
	v := ListView{Title: listTitle(l.List), Doc: l.List.Doc, Upright: len(l.Items) <= uprightSubjects}
	var shown []int
	for i, f := range l.List.Fields {
		if f.Name != "kind" {
			shown = append(shown, i)
			v.Columns = append(v.Columns, ColumnView{label(f), f.Doc, f.Formula, p.number(f.Source)})
		}
	}
	var said []figures.Input
	for _, it := range l.Items {
		v.Subjects = append(v.Subjects, p.subjectFigures(it, shown, said))
		if said == nil {
			said = inputsOf(l.Items[0])
		}
	}
	v.From, v.Subjects[0].From = v.Subjects[0].From, ""
	v.Origins = slices.ContainsFunc(v.Subjects, func(s SubjectFigures) bool { return s.From != "" })
	all := make([]int, len(shown))
	for i := range all {
		all[i] = i
	}
	v.Parts = slices.Collect(slices.Chunk(all, sideBySide))
	return v
}

// inputsOf gives everything that a subject's figures were worked out from, once.
func inputsOf(it *figures.Item) []figures.Input {
	var inputs []figures.Input
	for i := range it.Values {
		inputs = append(inputs, except(it.Values[i].Inputs, inputs)...)
	}
	return inputs
}

// subjectFigures words the figures of a subject; what they were worked out from
// stands beside each, and together for the subject, without what was said at the
// first of its list.
func (p *paper) subjectFigures(it *figures.Item, shown []int, said []figures.Input) SubjectFigures {
	kind, _ := p.named(it, "kind")
	s := SubjectFigures{Name: it.Subject.Name + following(kind), Place: p.places(it.Subject)}
	c := &calculation{speaker: p.speaker, document: p.Design.Document}
	for _, i := range shown {
		v := &it.Values[i]
		cell := CellView{Known: v.Known(), From: c.inputs(v.Inputs)}
		if cell.Value = "not known"; v.Known() {
			cell.Value = p.value(it.List.Fields[i], v)
		} else {
			cell.From = "Add " + entries(v.Lacks) + "."
		}
		s.Cells = append(s.Cells, cell)
	}
	s.From = c.inputs(except(inputsOf(it), said))
	return s
}

// Pick gives some of the cells.
func (s SubjectFigures) Pick(columns []int) []CellView {
	var cells []CellView
	for _, i := range columns {
		cells = append(cells, s.Cells[i])
	}
	return cells
}

// PickColumns gives some of the columns.
func (v ListView) PickColumns(columns []int) []ColumnView {
	var picked []ColumnView
	for _, i := range columns {
		picked = append(picked, v.Columns[i])
	}
	return picked
}

// KeptClear is one thing that parts keep clear of, with the distance of every part,
// the nearest first.
type KeptClear struct {
	Name, Place string
	Parts       []string
}

// Clearances gives everything that parts keep clear of.
func (p *paper) Clearances() []KeptClear {
	var views []KeptClear
	for _, l := range p.Figures.Lists {
		if !strings.HasPrefix(l.List.Name, clearancePrefix) {
			continue
		}
		for i, it := range l.Items {
			if first := sameFeature(l.Items, it)[0]; first == l.Items[i] {
				views = append(views, p.keptClear(it, sameFeature(l.Items, it)))
			}
		}
	}
	return views
}

func (p *paper) keptClear(one *figures.Item, items []*figures.Item) KeptClear {
	kind, _ := p.named(one, "feature_kind")
	v := KeptClear{Name: one.Subject.IDs[1] + following(kind), Place: p.lineColumn(one.Subject.Pointers[1])}
	slices.SortStableFunc(items, func(a, b *figures.Item) int { return cmp.Compare(distance(a).Number, distance(b).Number) })
	for _, it := range items {
		words := "not known, add " + entries(distance(it).Lacks)
		if distance(it).Known() {
			words = p.value(distanceField(it), distance(it))
		}
		v.Parts = append(v.Parts, it.Subject.IDs[0]+nbsp+words)
	}
	return v
}
