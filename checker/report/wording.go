package report

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// speaker words what rules found, with quantities in one system of units.
type speaker struct {
	units quantity.System
}

// measure words one measure of a subject: "Distance: measured 62 ft; at least
// 100 ft is wanted; 38 ft short."
func (s speaker) measure(m *rulebook.Measured) string {
	field := m.Measure.Field
	if m.Limit == nil {
		return label(field) + ": " + s.value(field, m.Value) + "."
	}
	unit := measureUnit(m, s.units)
	measured, limit := together(unit.Format(m.Value.Number)), together(unit.Format(m.Limit.Value))
	wanted := "at least " + limit + " is wanted"
	if m.Measure.Bound == rulebook.AtMost {
		wanted = "at most " + limit + " is allowed"
	}
	return label(field) + ": measured " + measured + "; " + wanted + "; " + margin(m, unit) + "."
}

// margin words how far a measure lies from its limit.
func margin(m *rulebook.Measured, unit quantity.Unit) string {
	amount := together(unit.FormatDifference(math.Abs(m.Margin)))
	switch {
	case amount == together(unit.FormatDifference(0)):
		return "nothing to spare"
	case m.Margin > 0:
		return amount + " to spare"
	case m.Measure.Bound == rulebook.AtMost:
		return amount + " over"
	}
	return amount + " short"
}

// measureUnit chooses the one unit that a measurement, its limit and the margin
// are all shown in: that in which the limit is written, where the system has it.
func measureUnit(m *rulebook.Measured, s quantity.System) quantity.Unit {
	return quantity.UnitAs(m.Limit.Text, m.Measure.Field.Dimension, s, m.Value.Number, m.Limit.Value, m.Margin)
}

// value words a figure that is known.
func (s speaker) value(f *figures.Field, v *figures.Value) string {
	switch {
	case f.Kind == figures.Number:
		return s.quantity(v.Number, f.Dimension)
	case f.Kind == figures.Truth && v.Truth:
		return "yes"
	case f.Kind == figures.Truth:
		return "no"
	case v.Text == "":
		return "none"
	}
	return v.Text
}

func (s speaker) quantity(value float64, d quantity.Dimension) string {
	return together(quantity.Format(value, d, s.units))
}

// together keeps a value and its unit on one line.
func together(quantity string) string { return strings.ReplaceAll(quantity, " ", nbsp) }

// label gives a field's name as words: "Second route reaches sewer".
func label(f *figures.Field) string {
	words := strings.Split(f.Name, "_")
	for i, word := range words {
		if said, is := written[word]; is {
			words[i] = said
		}
	}
	return capital(strings.Join(words, " "))
}

// written has the words of figures' names that the trade writes otherwise:
// abbreviations, names of people.
var written = map[string]string{
	"bod": "BOD", "ipc": "IPC", "upc": "UPC", "et": "evapotranspiration", "unionized": "un-ionized",
	"berggren": "Berggren", "chicago": "Chicago", "emerson": "Emerson", "stefan": "Stefan", "stokes": "Stokes", "trussell": "Trussell",
}

// citation words a source with its standing, which the source of a formula may
// say itself, part by part.
func citation(c figures.Citation) string {
	text := c.Title
	if c.Place != "" {
		text += ", " + c.Place
	}
	if c.Standing != figures.Published && strings.HasSuffix(strings.TrimSuffix(text, ")"), standings[c.Standing]) {
		return text
	}
	return text + " (" + standing(c.Standing) + ")"
}

// standings has the words that a title ends with where it says itself how it is
// known.
var standings = map[figures.Standing]string{figures.Practice: "common practice, no source", figures.FromMemory: "from memory"}

// standing words how a fact is known.
func standing(s figures.Standing) string {
	switch s {
	case figures.Practice:
		return "common practice, no source"
	case figures.FromMemory:
		return "from memory, the text was not read"
	}
	return string(s)
}

// setBy words which layer of rules something comes from.
func setBy(layer string) string {
	if layer == rulebook.BaseName {
		return "set by the base rule book"
	}
	return "set by " + layer
}

// limitLine words a limit in force: as written, its name, who set it and what
// that stands in place of.
func limitLine(l *rulebook.Limit) string {
	text := together(l.Text) + " (" + l.Name + "), " + setBy(l.SetBy)
	for r := l.Replaced; r != nil; r = r.Replaced {
		text += ", in place of " + together(r.Text) + " " + setBy(r.SetBy)
	}
	return text
}

// ruleLine words a rule's id, who set it and what it stands in place of.
func ruleLine(r *rulebook.Rule) string {
	return r.ID + ", " + ruleOrigin(r)
}

// countsAs words what a finding amounts to that the design does not show.
func countsAs(s rulebook.Status) string {
	if s == rulebook.Fail {
		return "That counts as a failure."
	}
	return "That counts as a warning."
}

// leave words the leave that a variance gives.
func leave(v *design.Variance) string {
	return "Allowed by " + v.Authority + ", reference " + v.Reference + ", until " + v.Expires + ": " + v.Reason
}

// entries words the entries that a design lacks, each once.
func entries(lacks []figures.Lack) string {
	var names []string
	for _, l := range lacks {
		if !slices.Contains(names, l.Entry) {
			names = append(names, l.Entry)
		}
	}
	last := len(names) - 1
	if last < 1 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// lineColumn gives a position without its file, as line:column.
func lineColumn(p source.Position) string { return fmt.Sprintf("%d:%d", p.Line, p.Column) }

// consequence words what it means that a rule is not proved to hold.
func consequence(l rulebook.Level) string {
	if l == rulebook.LevelFail {
		return "fails the design"
	}
	return "gives a warning"
}

// where words for which subjects a measure counts, "" when for all.
func where(m *rulebook.Measure) string {
	var said []string
	for _, field := range slices.Sorted(maps.Keys(m.Where)) {
		said = append(said, strings.ReplaceAll(field, "_", " ")+" is "+m.Where[field])
	}
	if len(said) == 0 {
		return ""
	}
	return ", where " + strings.Join(said, " and ")
}

// capital begins a sentence with a capital letter.
func capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return ""
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// ruleOrigin words who set a rule and what it stands in place of.
func ruleOrigin(r *rulebook.Rule) string {
	if r.Replaces == "" {
		return setBy(r.SetBy)
	}
	return setBy(r.SetBy) + " in place of the rule " + setBy(r.Replaces)
}

// sentence begins a text with a capital letter and ends it with a full stop,
// unless it has an end of its own.
func sentence(text string) string {
	if strings.HasSuffix(text, ".") || strings.HasSuffix(text, "?") {
		return capital(text)
	}
	return capital(text) + "."
}
