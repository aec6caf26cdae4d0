package report

import (
	"io"
	"slices"
	"strings"

	"greysill/checker/rulebook"
)

// Catalogue writes the page that lists every rule of a book with its limits and
// sources, in CommonMark.
func Catalogue(w io.Writer, book Book) error {
	m := &markdown{}
	m.heading(1, "The base rule book, rule by rule")
	m.paragraph("Written from the rules and limits themselves, and held against them by the tests: `GREYSILL_UPDATE=1 go test ./checker/report` writes it anew. " +
		"[README.md](README.md) says how to change a rule. Limits are shown as `limits.json` has them.")
	m.paragraph(localCode)
	m.contents(book)
	topic := ""
	for _, r := range book.Rules() {
		if t := topicOf(r); t != topic {
			topic = t
			m.heading(2, capital(topic))
		}
		m.rule(book, r)
	}
	_, err := io.WriteString(w, strings.TrimRight(m.String(), "\n")+"\n")
	return err
}

func topicOf(r *rulebook.Rule) string {
	topic, _, _ := strings.Cut(r.ID, "/")
	return topic
}

// contents counts the rules of each topic.
func (m *markdown) contents(book Book) {
	var topics []string
	count := map[string]int{}
	for _, r := range book.Rules() {
		t := topicOf(r)
		if count[t] == 0 {
			topics = append(topics, t)
		}
		count[t]++
	}
	m.paragraph(plural(len(book.Rules()), "rule") + " and " + plural(len(book.Limits()), "limit") + ":")
	for _, t := range topics {
		m.item("[" + t + "](#" + t + "): " + plural(count[t], "rule"))
	}
	m.end()
}

// rule writes what a plan reviewer asks of a rule: what it asserts, why, what
// comes of it, its limits and who says so.
func (m *markdown) rule(book Book, r *rulebook.Rule) {
	m.heading(3, r.ID)
	m.paragraph("**" + escaped(r.Title) + "**")
	m.paragraph(escaped(r.Reason))
	m.paragraph("Looks at the list " + code(r.Subjects.Name) + ". Not proved to hold: " + consequence(r.Level) + ". Not shown on the design: " + consequence(r.NotShown) + ".")
	m.limits(book, r)
	for _, c := range r.Sources {
		m.item("Source: " + escaped(citation(c)))
	}
	m.end()
}

// limits writes the limits that a rule compares with, and what other sources say
// of them.
func (m *markdown) limits(book Book, r *rulebook.Rule) {
	var notes []string
	for i := range r.Measures {
		measure := &r.Measures[i]
		l, ok := book.Limit(measure.Limit)
		if !ok {
			continue
		}
		if len(notes) == 0 {
			m.table("Measured", "Limit", "Value", "Source")
		}
		m.row(label(measure.Field)+escaped(where(measure)), code(l.Name), string(measure.Bound)+" "+together(l.Text), escaped(citation(l.Source)))
		notes = append(notes, l.Note)
	}
	if len(notes) > 0 {
		m.end()
	}
	for _, note := range slices.Compact(notes) {
		if note != "" {
			m.item("Elsewhere: " + escaped(note))
		}
	}
}
