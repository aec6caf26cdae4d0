package report

import (
	"io"
	"maps"
	"slices"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
)

// Rules writes the list of the rules in force.
func Rules(w io.Writer, book Book, o Options) error {
	p := newPage(o)
	p.put(0, bold, "The rule book in force")
	p.put(0, ink, plural(len(book.Rules()), "rule")+". A rule that a design does not prove to hold fails the design or gives a warning, as said beside its id.")
	for _, r := range book.Rules() {
		p.blank()
		p.put(0, bold, r.ID+" ("+consequence(r.Level)+")")
		p.put(1, ink, r.Title)
		if r.SetBy != rulebook.BaseName {
			p.put(1, ink, capital(ruleOrigin(r))+".")
		}
	}
	p.amendments(book, true)
	_, err := io.WriteString(w, p.String())
	return err
}

// Rule writes all that a book says of one rule.
func Rule(w io.Writer, book Book, r *rulebook.Rule, o Options) error {
	p := newPage(o)
	p.put(0, bold, r.ID)
	p.put(0, bold, r.Title)
	p.blank()
	p.hang(0, ink, "Why it matters: "+r.Reason)
	p.hang(0, ink, "What it looks at: "+r.Subjects.Doc+" (List "+r.Subjects.Name+" of the figures.)")
	p.hang(0, ink, "Where it is not proved to hold: "+consequence(r.Level)+".")
	p.hang(0, ink, "Where the design does not show enough: "+consequence(r.NotShown)+".")
	for _, c := range r.Changes {
		p.hang(0, ink, "Changed by "+c.SetBy+": "+levelled(c))
	}
	p.hang(0, ink, "What to do, with what each finding puts for the brackets: "+unfilled(r.Remedy))
	speaker{o.units(nil)}.measures(p, book, r)
	p.sources(r.Sources)
	if text, ok := book.Caution(r.Caution); ok {
		p.heading("Take care")
		p.put(0, ink, text)
	}
	p.heading("Where it comes from")
	p.put(0, ink, capital(ruleOrigin(r))+", in the file "+r.File+".")
	p.heading("Who decides")
	p.put(0, ink, localCode)
	_, err := io.WriteString(w, p.String())
	return err
}

// measures writes what a rule measures and the limits in force for it.
func (s speaker) measures(p *page, book Book, r *rulebook.Rule) {
	if len(r.Measures) == 0 {
		return
	}
	p.heading("What it measures, and the limits in force")
	p.meanings(r)
	for i := range r.Measures {
		m := &r.Measures[i]
		if l, ok := book.Limit(m.Limit); ok {
			p.blank()
			p.put(0, bold, label(m.Field)+where(m)+": "+string(m.Bound)+" "+s.asWritten(m.Field, l))
			p.put(1, ink, l.Meaning)
			p.limit(l)
		}
	}
}

// meanings says once of every field that a rule measures, or measures by, what
// it is.
func (p *page) meanings(r *rulebook.Rule) {
	var names []string
	for _, m := range r.Measures {
		names = append(names, slices.Sorted(maps.Keys(m.Where))...)
		names = append(names, m.Field.Name)
	}
	for _, f := range r.Subjects.Fields {
		if slices.Contains(names, f.Name) {
			p.hang(0, ink, label(f)+": "+f.Doc)
		}
	}
}

// limit writes who set a limit, on what ground, and what it stands in place of.
func (p *page) limit(l *rulebook.Limit) {
	p.hang(1, ink, "Name: "+l.Name+", "+setBy(l.SetBy))
	p.hang(1, ink, "Source: "+citation(l.Source))
	if l.Note != "" {
		p.hang(1, ink, "Note: "+l.Note)
	}
	for old := l.Replaced; old != nil; old = old.Replaced {
		p.hang(1, ink, "In place of: "+together(old.Text)+", "+setBy(old.SetBy)+", "+citation(old.Source))
	}
}

func (p *page) sources(sources []figures.Citation) {
	p.heading("Sources of the rule")
	for _, c := range sources {
		p.hang(0, ink, citation(c))
	}
}

// asWritten gives a limit as its file has it, and in the units asked for where
// that reads otherwise.
func (s speaker) asWritten(f *figures.Field, l *rulebook.Limit) string {
	written, shown := together(l.Text), together(quantity.UnitAs(l.Text, f.Dimension, s.units, l.Value).Format(l.Value))
	if written == shown {
		return written
	}
	return written + " (" + shown + ")"
}
