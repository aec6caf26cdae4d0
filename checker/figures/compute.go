package figures

import "greysill/checker/design"

// Compute works out every figure of a design. It is pure: the same design
// gives the same figures, and designs can be computed at the same time.
//
// The design is taken as design.Read gives it: ids unique, references
// resolved, no circle of water, outlines that do not cross themselves, and
// numbers within the format's bounds, so that every number that comes out is
// finite.
func Compute(d *design.Design) *Figures {
	drawn := read(d)
	f := &Figures{Design: d, Lists: make([]Items, len(tables))}
	for i, t := range tables {
		f.Lists[i] = Items{t.list, t.fill(drawn)}
	}
	return f
}

// table is a list with what fills it.
type table struct {
	list *List
	fill func(*drawing) []*Item
}

// column declares one field together with how it is worked out for a row.
type column[T any] struct {
	Field
	of func(T) Value
}

// tabulate makes a table: one item for each row, one figure for each column.
func tabulate[T any](list List, rows func(*drawing) []T, subject func(T) Subject, columns []column[T]) table {
	for i := range columns {
		list.Fields = append(list.Fields, &columns[i].Field)
	}
	fill := func(d *drawing) []*Item {
		all := rows(d)
		items, values := make([]Item, len(all)), make([]Value, len(all)*len(columns))
		pointers := make([]*Item, len(all))
		for i, row := range all {
			mine := values[i*len(columns) : (i+1)*len(columns) : (i+1)*len(columns)]
			for k := range columns {
				mine[k] = columns[k].of(row)
			}
			items[i] = Item{&list, subject(row), mine}
			pointers[i] = &items[i]
		}
		return pointers
	}
	return table{&list, fill}
}

func number(x float64, inputs ...Input) Value { return Value{Number: x, Inputs: inputs} }

func text(s string, inputs ...Input) Value { return Value{Text: s, Inputs: inputs} }

func truth(yes bool, inputs ...Input) Value { return Value{Truth: yes, Inputs: inputs} }

func unknown(lacks ...Lack) Value { return Value{Lacks: lacks} }

// orUnknown gives the value, or what it lacks when anything is lacking.
func orUnknown(v Value, lacks []Lack) Value {
	if len(lacks) > 0 {
		return Value{Lacks: lacks}
	}
	return v
}

// none is the text of a figure that names what there is, where there is
// nothing.
const none = "none"
