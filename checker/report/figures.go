package report

import (
	"cmp"
	"encoding/json"
	"io"
	"math"
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/source"
)

// Figures writes the computed figures of a design as a calculation sheet: each
// with its value, formula, inputs as drawn and source, so that a reviewer can
// follow it by hand.
func Figures(w io.Writer, f *figures.Figures, o Options) error {
	s := &sheet{page: newPage(o), speaker: speaker{o.units(f.Design)}, document: f.Design.Document}
	s.put(0, bold, "Computed figures")
	s.title(f.Design, f.Design.Document.Name())
	s.blank()
	s.put(0, ink, "Places in the file are given as line:column.")
	var empty []string
	for _, items := range f.Lists {
		switch {
		case len(items.Items) == 0:
			empty = append(empty, items.List.Name)
		case strings.HasPrefix(items.List.Name, "clearances."):
			s.clearances(items)
		default:
			s.list(items)
		}
	}
	if len(empty) > 0 {
		s.heading("Nothing on the design for these")
		s.put(0, ink, strings.Join(empty, ", "))
	}
	s.heading("Who decides")
	s.put(0, ink, localCode)
	_, err := io.WriteString(w, s.String())
	return err
}

// sheet is the calculation sheet of one design.
type sheet struct {
	*page
	speaker
	document *source.Document
}

// list writes the subjects of one list. What a figure is, how it is worked out
// and where that comes from is said at the first subject only.
func (s *sheet) list(items figures.Items) {
	s.heading(listTitle(items.List))
	s.put(0, ink, items.List.Doc)
	for i, it := range items.Items {
		s.blank()
		s.put(0, bold, it.Subject.Name+s.places(it.Subject.Pointers))
		for k, f := range items.List.Fields {
			s.figure(f, &it.Values[k], i == 0)
		}
	}
}

// figure writes one figure.
func (s *sheet) figure(f *figures.Field, v *figures.Value, explain bool) {
	if explain {
		s.blank()
	}
	if v.Known() {
		s.hang(1, bold, label(f)+": "+s.value(f, v))
	} else {
		s.hang(1, red, label(f)+": not known. Add "+entries(v.Lacks)+".")
	}
	if explain {
		s.put(2, ink, f.Doc)
	}
	if explain && f.Formula != "" {
		s.hang(2, ink, "Formula: "+f.Formula)
	}
	if len(v.Inputs) > 0 {
		s.hang(2, ink, "From: "+s.inputs(v.Inputs))
	}
	if explain && f.Source.Title != "" {
		s.hang(2, ink, "Source: "+citation(f.Source))
	}
}

// inputs words what a figure was worked out from, as drawn.
func (s *sheet) inputs(inputs []figures.Input) string {
	var said []string
	for _, in := range inputs {
		value := in.Value
		if in.Pointer != "" {
			value = asDrawn(s.document.Raw(in.Pointer)) + s.places([]string{in.Pointer})
		}
		said = append(said, strings.TrimSpace(in.Name+" "+value))
	}
	return strings.Join(said, "; ")
}

// asDrawn gives a value of the document as its author wrote it, on one line and
// cut when it is long.
func asDrawn(raw string) string {
	var text string
	if json.Unmarshal([]byte(raw), &text) == nil {
		return together(source.Cut(text))
	}
	return source.Cut(strings.Join(strings.Fields(raw), " "))
}

// places gives where values stand, "" when they stand nowhere.
func (s *sheet) places(pointers []string) string {
	var at []string
	for _, p := range pointers {
		at = append(at, lineColumn(s.document.Position(p)))
	}
	if len(at) == 0 {
		return ""
	}
	return " (" + strings.Join(at, ", ") + ")"
}

// clearances writes a list of distances as a table, the nearest first.
func (s *sheet) clearances(items figures.Items) {
	s.heading(listTitle(items.List))
	s.put(0, ink, items.List.Doc+" The nearest first.")
	if f := distanceOf(items.Items[0]).field; f.Formula != "" {
		s.put(0, ink, "Distance: "+f.Formula+".")
	}
	s.blank()
	rows := s.rows(items.Items)
	wide := 0
	for _, r := range rows {
		wide = max(wide, uniseg.StringWidth(r.distance))
	}
	for _, r := range rows {
		gap := strings.Repeat(nbsp, wide-uniseg.StringWidth(r.distance)+2)
		s.lines(column, column+wide+2, ink, r.distance+gap+r.what)
	}
}

type row struct{ distance, what string }

// rows gives the table's rows in one unit, the unknown distances last.
func (s *sheet) rows(items []*figures.Item) []row {
	items = slices.Clone(items)
	slices.SortStableFunc(items, func(a, b *figures.Item) int {
		return cmp.Compare(distanceOf(a).sortKey(), distanceOf(b).sortKey())
	})
	var known []float64
	for _, it := range items {
		if d := distanceOf(it); d.Known() {
			known = append(known, d.Number)
		}
	}
	unit := quantity.UnitFor(quantity.Length, s.units, known...)
	rows := make([]row, len(items))
	for i, it := range items {
		rows[i] = row{"not known", s.pair(it) + "; add " + entries(distanceOf(it).Lacks)}
		if d := distanceOf(it); d.Known() {
			rows[i] = row{together(unit.Format(d.Number)), s.pair(it)}
		}
	}
	return rows
}

// pair words the two things that a clearance lies between.
func (s *sheet) pair(it *figures.Item) string {
	works, _ := s.named(it, "works")
	return it.Subject.Name + ", " + works + s.places(it.Subject.Pointers)
}

// distance is the figure that a clearance is about.
type distance struct {
	*figures.Value
	field *figures.Field
}

func distanceOf(it *figures.Item) distance {
	i := slices.IndexFunc(it.List.Fields, func(f *figures.Field) bool { return f.Name == "distance" })
	return distance{&it.Values[i], it.List.Fields[i]}
}

func (d distance) sortKey() float64 {
	if !d.Known() {
		return math.Inf(1)
	}
	return d.Number
}

// listTitle gives a list's name as words: "Clearances: surface water".
func listTitle(l *figures.List) string {
	return capital(strings.NewReplacer(".", ": ", "_", " ").Replace(l.Name))
}
