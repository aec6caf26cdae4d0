package report

import (
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/figures"
)

// PairsView is a list of pairs of a part and something else as a table, parts down
// and the others across, with the distance between the two in each cell.
type PairsView struct {
	Title, Doc string
	Terms      []ColumnView
	Tables     []PairsTable
	From       string
	LeftOut    string // what is left out for want of room, "" when nothing is
}

// PairsTable is as much of it as fits across the page.
type PairsTable struct {
	Heads  []Named
	Rows   []PairsRow
	Broken bool // whether it has names that are too long for a line
}

// PairsRow has one part's distance from each thing, "" where the two are no pair.
type PairsRow struct {
	Named
	Cells []string
}

// Named is a name with its place in the file.
type Named struct{ Name, Place string }

// thingsAcross is how many things stand side by side on a page.
const thingsAcross = 10

// pairs reports whether a list is of pairs of which the distance is the one number.
func pairs(l figures.Items) bool {
	numbers := 0
	for _, f := range l.List.Fields {
		if f.Kind == figures.Number {
			numbers++
		}
	}
	return numbers == 1 && fieldNamed(l.List, "distance") != nil &&
		!slices.ContainsFunc(l.Items, func(it *figures.Item) bool { return len(it.Subject.IDs) != 2 || len(it.Subject.Pointers) != 2 })
}

// Pairs gives the lists of pairs: what parts keep clear of, all together, and every
// other on its own.
func (p *paper) Pairs() []PairsView {
	var views []PairsView
	var clear []*figures.Item
	for _, l := range p.Figures.Lists {
		switch {
		case len(l.Items) == 0 || !pairs(l):
		case strings.HasPrefix(l.List.Name, clearancePrefix):
			clear = append(clear, l.Items...)
		default:
			views = append(views, p.pairsView(listTitle(l.List), l.List.Doc, l.Items))
		}
	}
	if len(clear) > 0 {
		views = append(views, p.pairsView("Clearances", "Every part paired with everything on and near the site that it may have to keep clear of.", clear))
	}
	return views
}

func (p *paper) pairsView(title, doc string, items []*figures.Item) PairsView {
	v := PairsView{Title: title, Doc: doc}
	for _, f := range items[0].List.Fields {
		if f.Kind != figures.Text || f.Name == "works" {
			v.Terms = append(v.Terms, p.column(f))
		}
	}
	grid := map[[2]string]*figures.Item{}
	var rows, columns []*figures.Item
	var from []figures.Input
	for _, it := range items {
		grid[[2]string(it.Subject.Pointers)] = it
		rows, columns = withNew(rows, it, 0), withNew(columns, it, 1)
		from = append(from, except(inputsOf(it), from)...)
	}
	rows, v.LeftOut = p.foremost(rows)
	for across := range slices.Chunk(columns, thingsAcross) {
		v.Tables = append(v.Tables, p.pairsTable(grid, rows, across))
	}
	v.From = p.inputs(from, nil)
	return v
}

// withNew adds an item whose part or thing is not among the others yet.
func withNew(items []*figures.Item, it *figures.Item, side int) []*figures.Item {
	if slices.ContainsFunc(items, func(other *figures.Item) bool { return other.Subject.Pointers[side] == it.Subject.Pointers[side] }) {
		return items
	}
	return append(items, it)
}

func (p *paper) pairsTable(grid map[[2]string]*figures.Item, rows, columns []*figures.Item) PairsTable {
	var t PairsTable
	for _, it := range columns {
		t.Heads = append(t.Heads, p.side(it, 1))
		t.Broken = t.Broken || widest(strings.Fields(t.Heads[len(t.Heads)-1].Name)) > widestCell
	}
	for _, row := range rows {
		r := PairsRow{Named: p.side(row, 0)}
		t.Broken = t.Broken || uniseg.StringWidth(r.Name) > 2*widestCell
		for _, column := range columns {
			r.Cells = append(r.Cells, p.pairCell(grid[[2]string{row.Subject.Pointers[0], column.Subject.Pointers[1]}]))
		}
		t.Rows = append(t.Rows, r)
	}
	return t
}

// side names one of a pair, with what its list says of it.
func (p *paper) side(it *figures.Item, side int) Named {
	n := Named{it.Subject.IDs[side], p.lineColumn(it.Subject.Pointers[side])}
	for i, f := range it.List.Fields {
		of := 1
		if strings.HasPrefix(f.Name, "part") || f.Name == "works" {
			of = 0
		}
		if v := &it.Values[i]; of == side && f.Kind == figures.Text && v.Known() && f.Name != "part_kind" && v.Text != n.Name {
			n.Name += ", " + v.Text
		}
	}
	return n
}

// pairCell words the distance of a pair and whatever else is true of it.
func (p *paper) pairCell(it *figures.Item) string {
	if it == nil {
		return ""
	}
	said := unknownCell
	for i, f := range it.List.Fields {
		switch v := &it.Values[i]; {
		case !v.Known():
		case f.Kind == figures.Number:
			said = p.value(f, v)
		case f.Kind == figures.Truth && v.Truth:
			said += ", " + strings.ToLower(label(f))
		}
	}
	return said
}
