package report

import (
	"slices"
	"strings"

	"greysill/checker/figures"
)

// ListView is one list of figures, set as densely as it can be read: what its
// figures are and how they are worked out once, values in as few tables as fit
// side by side, and what they were worked out from once for each subject.
type ListView struct {
	Title, Doc string
	Columns    []ColumnView // the figures that are known of some subject
	Subjects   []SubjectFigures
	Tables     []FigureTable
	Abreast    int    // how many times its widest table fits side by side
	Unknown    string // the figures that are known of none
	LeftOut    string // what is left out for want of room, "" when nothing is
	From       Origins
}

// ColumnView is one figure of a list.
type ColumnView struct {
	Name, Doc, Formula, Source string
	Said                       string // its values in words, where all subjects have the same or they are long
}

// FigureTable has as many of a list's figures as a page has room for side by side.
type FigureTable struct {
	Columns []int
	Broken  bool // whether it has words that are too long for a line
}

// SubjectFigures is one subject with its figures, in the order of the columns.
type SubjectFigures struct {
	Name, Kind, Place string // Kind of what the list of parts does not have
	Cells             []string
}

const (
	pageColumns = 140 // letters of a table's size that a page has room for
	widestCell  = 26  // letters; what is longer is set on several lines
	mostAbreast = 3
	unknownCell = "\u2013" // an en dash
)

// The groups of lists, by the beginning of their names.
const (
	quantitiesGroup  = "quantities"
	costGroup        = "cost"
	maintenanceGroup = "maintenance"
)

// Lists gives the lists of figures that belong to no group of their own.
func (p *paper) Lists() []ListView {
	return p.group(func(l figures.Items) bool {
		group := groupOf(l)
		return group != quantitiesGroup && group != costGroup && group != maintenanceGroup && !pairs(l)
	})
}

// Quantities gives what is to be bought, dug and laid, and what it costs.
func (p *paper) Quantities() []ListView {
	return p.group(func(l figures.Items) bool { return groupOf(l) == quantitiesGroup || groupOf(l) == costGroup })
}

// MaintenanceLists gives what was worked out of upkeep.
func (p *paper) MaintenanceLists() []ListView {
	return p.group(func(l figures.Items) bool { return groupOf(l) == maintenanceGroup })
}

func groupOf(l figures.Items) string {
	group, _, _ := strings.Cut(l.List.Name, ".")
	return group
}

func (p *paper) group(wanted func(figures.Items) bool) []ListView {
	var views []ListView
	for _, l := range p.Figures.Lists {
		if len(l.Items) > 0 && wanted(l) {
			views = append(views, p.listView(l))
		}
	}
	return views
}

func (p *paper) listView(l figures.Items) ListView {
	v := ListView{Title: listTitle(l.List), Doc: l.List.Doc}
	l.Items, v.LeftOut = p.foremost(l.Items)
	v.From = p.origins(l.Items)
	for _, it := range l.Items {
		v.Subjects = append(v.Subjects, p.subject(it))
	}
	var unknown []string
	for i, f := range l.List.Fields {
		switch known := knownOf(l.Items, i); {
		case len(known) == 0:
			unknown = append(unknown, label(f))
		case l.List.Name == partsList || !slices.Contains(kinds, f.Name) && !named(known, i):
			v.add(p.column(f), p.cells(l.Items, i))
		}
	}
	v.Unknown = strings.Join(unknown, ", ")
	v.sideBySide()
	return v
}

// partsList is the list that says of every part of what kind it is.
const partsList = "parts"

// kinds are the figures that the list of parts says already.
var kinds = []string{"kind", "part_kind", "next_kind"}

// named reports whether the names of all subjects say a figure already.
func named(items []*figures.Item, field int) bool {
	return !slices.ContainsFunc(items, func(it *figures.Item) bool { return !inName(it, it.List.Fields[field], &it.Values[field]) })
}

func (p *paper) subject(it *figures.Item) SubjectFigures {
	s := SubjectFigures{Name: it.Subject.Name, Place: p.places(it.Subject)}
	if kind, known := p.named(it, "kind"); known && !p.isPart(it) && !strings.HasPrefix(s.Name, kind+" ") {
		s.Kind = following(kind)
	}
	return s
}

// isPart reports whether a subject is a part of the design.
func (p *paper) isPart(it *figures.Item) bool {
	return len(it.Subject.IDs) > 0 && p.Design.Part(it.Subject.IDs[0]) != nil
}

// knownOf gives the items of which a figure is known.
func knownOf(items []*figures.Item, field int) []*figures.Item {
	return slices.DeleteFunc(slices.Clone(items), func(it *figures.Item) bool { return !it.Values[field].Known() })
}

func (p *paper) column(f *figures.Field) ColumnView {
	return ColumnView{Name: label(f), Doc: f.Doc, Formula: f.Formula, Source: p.number(f.Source)}
}

// cells words one figure of every subject.
func (p *paper) cells(items []*figures.Item, field int) []string {
	var cells []string
	for _, it := range items {
		if v := &it.Values[field]; v.Known() {
			cells = append(cells, p.value(it.List.Fields[field], v))
		} else {
			cells = append(cells, unknownCell)
		}
	}
	return cells
}

// add puts a figure beside the others.
func (v *ListView) add(c ColumnView, cells []string) {
	switch {
	case len(slices.Compact(slices.Clone(cells))) == 1:
		c.Said = cells[0]
	case longest(cells) > widestCell:
		c.Said = v.inWords(cells)
	}
	c.Formula = v.saidBefore(c.Formula)
	v.Columns = append(v.Columns, c)
	for i := range cells {
		v.Subjects[i].Cells = append(v.Subjects[i].Cells, cells[i])
	}
}

// longFormula is from how many letters on a formula is said once only.
const longFormula = 40

// saidBefore refers to a figure before that is worked out by the same formula.
func (v *ListView) saidBefore(formula string) string {
	for _, c := range v.Columns {
		if len(formula) > longFormula && c.Formula == formula {
			return "as " + c.Name
		}
	}
	return formula
}

// inWords says the values of a figure one after the other, those that are the same
// together.
func (v *ListView) inWords(cells []string) string {
	var values []string
	of := map[string][]string{}
	for i, c := range cells {
		if of[c] == nil {
			values = append(values, c)
		}
		of[c] = append(of[c], v.Subjects[i].Name)
	}
	for i, value := range values {
		values[i] = strings.Join(of[value], ", ") + ": " + value
	}
	return listing(values)
}

// Pick gives some of the cells.
func (s SubjectFigures) Pick(columns []int) []string { return picked(s.Cells, columns) }

// PickColumns gives some of the columns.
func (v ListView) PickColumns(columns []int) []ColumnView { return picked(v.Columns, columns) }

func picked[T any](all []T, which []int) []T {
	var some []T
	for _, i := range which {
		some = append(some, all[i])
	}
	return some
}
