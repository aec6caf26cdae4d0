package report

import (
	"io"
	"strings"

	"greysill/checker/figures"
)

// Reference writes the page that says what rules may read: every list of the rule
// input with its fields, in CommonMark. unit gives the unit in which rules see a
// field.
func Reference(w io.Writer, lists []*figures.List, unit func(*figures.Field) string) error {
	m := &markdown{}
	m.heading(1, "What a rule may read")
	m.paragraph("Written from the same declarations as [rule-input.schema.json](../schema/rule-input.schema.json) and held against them by the tests: " +
		"`GREYSILL_UPDATE=1 go test ./checker/report` writes it anew. `greysill figures FILE` shows what a design has, with formula and source. " +
		"A rule takes one list as its subjects; every item has `subject` besides, which is what `proved` and `excused` hold. " +
		"A field that the drawing does not show is left out of its item.")
	for _, l := range lists {
		m.heading(2, code("input."+l.Name))
		m.paragraph(escaped(l.Doc) + " One item: " + escaped(l.Subject) + ".")
		m.table("Field", "Is", "Says")
		for _, f := range l.Fields {
			m.row(code(f.Name), reading(f, unit), escaped(f.Doc))
		}
		m.end()
	}
	_, err := io.WriteString(w, strings.TrimRight(m.String(), "\n")+"\n")
	return err
}

// reading says how a rule sees a field.
func reading(f *figures.Field, unit func(*figures.Field) string) string {
	switch {
	case f.Kind == figures.Truth:
		return "true or false"
	case f.Kind == figures.Number:
		return "number, " + escaped(unit(f))
	case len(f.Words) > 0:
		words := make([]string, len(f.Words))
		for i, w := range f.Words {
			words[i] = code(w)
		}
		return "one of " + strings.Join(words, ", ")
	}
	return "text"
}
