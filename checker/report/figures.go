package report

import (
	"encoding/json"
	"io"
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/cost"
	"greysill/checker/figures"
	"greysill/checker/source"
)

// Figures writes the computed figures of a design as a calculation sheet, so
// that a reviewer can follow them with the drawing and a calculator. At the
// first subject of a list every number has its meaning, formula, inputs as
// drawn and source; at the others its value and what it has inputs of its own.
// Words and yes or no have one line.
func Figures(w io.Writer, f *figures.Figures, o Options) error {
	s := &calculation{page: newPage(o), speaker: speaker{o.units(f.Design)}, document: f.Design.Document}
	s.put(0, bold, "Computed figures")
	s.title(f.Design, f.Design.Document.Name())
	s.blank()
	s.put(0, ink, "Places in the file are given as line:column. Formulas, inputs and sources stand at the first figure of their kind.")
	s.unknown(f)
	var empty []string
	var clearances []*figures.Item
	for _, items := range f.Lists {
		switch {
		case len(items.Items) == 0:
			empty = append(empty, listTitle(items.List))
		case strings.HasPrefix(items.List.Name, "clearances."):
			clearances = append(clearances, items.Items...)
		default:
			s.list(items)
		}
	}
	if o.Prices != nil {
		s.costs(cost.Of(f, o.Prices))
	}
	s.clearances(clearances)
	if len(empty) > 0 {
		s.heading("Nothing on the design for these")
		s.put(0, ink, strings.Join(empty, "; ")+".")
	}
	s.heading("Who decides")
	s.put(0, ink, localCode)
	_, err := io.WriteString(w, s.String())
	return err
}

// calculation is the calculation sheet of one design.
type calculation struct {
	*page
	speaker
	document *source.Document
	last     map[string]string // what a list said last of a figure's formula, inputs and source
}

// unknown lists the entries that the design would have to give for every figure
// to be known.
func (s *calculation) unknown(f *figures.Figures) {
	var lacks []figures.Lack
	for _, list := range f.Lists {
		for _, it := range list.Items {
			for i := range it.Values {
				for _, lack := range it.Values[i].Lacks {
					if !slices.Contains(lacks, lack) {
						lacks = append(lacks, lack)
					}
				}
			}
		}
	}
	if len(lacks) == 0 {
		return
	}
	s.heading("To be added to the design")
	s.put(0, ink, "Without these entries the figures marked NOT KNOWN cannot be worked out.")
	for _, lack := range lacks {
		s.hang(1, red, lack.Entry+s.places([]string{lack.Pointer}))
	}
}

// list writes the subjects of one list.
func (s *calculation) list(items figures.Items) {
	s.heading(listTitle(items.List))
	s.put(0, ink, items.List.Doc)
	s.last = map[string]string{}
	first := items.Items[0]
	for _, it := range items.Items {
		s.blank()
		kind, named := s.named(it, "kind")
		if strings.HasPrefix(it.Subject.Name, kind+" ") {
			kind = ""
		}
		s.put(0, bold, it.Subject.Name+following(kind)+s.places(it.Subject.Pointers))
		var said []figures.Input
		for k, f := range items.List.Fields {
			v := &it.Values[k]
			switch {
			case f.Name == "kind" && named, inName(it, f, v):
			case it == first:
				s.figure(f, v)
			case f.Kind != figures.Number || slices.Equal(v.Inputs, first.Values[k].Inputs):
				s.line(f, v, nil)
			default:
				s.line(f, v, except(v.Inputs, said))
				said = append(said, v.Inputs...)
			}
		}
	}
}

// naming are the fields that tell subjects of one list apart.
var naming = []string{"part", "bed", "month", "basis", "pipe", "service"}

// inName reports whether the subject's name says the figure already.
func inName(it *figures.Item, f *figures.Field, v *figures.Value) bool {
	return slices.Contains(naming, f.Name) && v.Known() && strings.Contains(" "+it.Subject.Name+" ", " "+v.Text+" ")
}

// figure writes one figure with all that it takes to follow it.
func (s *calculation) figure(f *figures.Field, v *figures.Value) {
	s.line(f, v, nil)
	if f.Kind != figures.Number {
		return
	}
	s.put(2, ink, f.Doc)
	s.once("Formula", f.Formula)
	s.once("From", s.inputs(v.Inputs))
	if f.Source.Title != "" {
		s.once("Source", citation(f.Source))
	}
}

// once writes a text under its label, and the same text a second time in two
// words.
func (s *calculation) once(label, text string) {
	switch {
	case text == "":
		return
	case s.last[label] == text:
		text = "the same"
	default:
		s.last[label] = text
	}
	s.hang(2, ink, label+": "+text)
}

// line writes a figure's value, and what it was worked out from where that is
// given.
func (s *calculation) line(f *figures.Field, v *figures.Value, inputs []figures.Input) {
	switch {
	case !v.Known():
		s.hang(1, red, label(f)+": NOT KNOWN. Add "+entries(v.Lacks)+".")
	case len(inputs) > 0:
		s.hang(1, ink, label(f)+": "+s.value(f, v)+", from "+s.inputs(inputs))
	default:
		s.hang(1, ink, label(f)+": "+s.value(f, v))
	}
}

// except gives the inputs without those said already.
func except(inputs, said []figures.Input) []figures.Input {
	return slices.DeleteFunc(slices.Clone(inputs), func(in figures.Input) bool { return slices.Contains(said, in) })
}

// inputs words what a figure was worked out from: the name, the value where it
// is short, and the place.
func (s *calculation) inputs(inputs []figures.Input) string {
	var said []string
	for _, in := range inputs {
		value := in.Value
		if in.Pointer != "" {
			value = asDrawn(s.document.Raw(in.Pointer)) + s.places([]string{in.Pointer})
		}
		said = append(said, in.Name+" "+strings.TrimSpace(value))
	}
	return strings.Join(said, "; ")
}

// longestInput is how many columns of a list of levels are worth copying from
// the drawing.
const longestInput = 50

// asDrawn gives a quantity, a word or a short list of them as its author wrote
// it, and nothing of outlines and whatever else is long.
func asDrawn(raw string) string {
	var text string
	var texts []string
	var number json.Number
	switch {
	case json.Unmarshal([]byte(raw), &text) == nil:
		return together(source.Cut(text))
	case json.Unmarshal([]byte(raw), &number) == nil:
		return number.String()
	case json.Unmarshal([]byte(raw), &texts) == nil && uniseg.StringWidth(strings.Join(texts, ", ")) <= longestInput:
		for i := range texts {
			texts[i] = together(source.Cut(texts[i]))
		}
		return strings.Join(texts, ", ")
	}
	return ""
}

// places gives where values stand, "" when they stand nowhere.
func (s *calculation) places(pointers []string) string {
	var at []string
	for _, p := range pointers {
		at = append(at, lineColumn(s.document.Position(p)))
	}
	if len(at) == 0 {
		return ""
	}
	return nbsp + "(" + strings.Join(at, ", ") + ")"
}

// following puts a word after a name.
func following(word string) string {
	if word == "" {
		return ""
	}
	return ", " + word
}

// listTitle gives a list's name as words: "Clearances: surface water".
func listTitle(l *figures.List) string {
	return capital(strings.NewReplacer(".", ": ", "_", " ").Replace(l.Name))
}
