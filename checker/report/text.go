package report

import (
	"io"
	"slices"
	"strconv"
	"strings"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/rulebook"
)

// text is the report for a person: for each design what failed, then the
// warnings, then what the design does not show, and last what held. With
// several files a list of all of them, worst first, ends it.
type text struct {
	w       io.Writer
	options Options
	tallies []tally
}

// Design writes the letter about one design.
func (t *text) Design(j *Judged) error {
	l := &letter{page: newPage(t.options), speaker: speaker{t.options.units(j.Design)}, judged: j}
	if len(t.tallies) > 0 {
		l.between()
	}
	l.write()
	t.tallies = append(t.tallies, tallyOf(j))
	_, err := io.WriteString(t.w, l.String())
	return err
}

// Close writes the list of all designs.
func (t *text) Close(skipped []string) error {
	p := newPage(t.options)
	p.summary(t.tallies, skipped)
	_, err := io.WriteString(t.w, p.String())
	return err
}

// letter is the report on one design, as a plan reviewer would type it:
// numbered remarks, each with its place, reason and source.
type letter struct {
	*page
	speaker
	judged *Judged
	count  int // of the remarks so far
}

func (l *letter) write() {
	l.title(l.judged.Design, l.judged.Name)
	if l.judged.Verdict == nil || len(l.judged.Problems) > 0 {
		l.problems()
		return
	}
	v := l.judged.Verdict
	l.opening(tallyOf(l.judged))
	if l.judged.Book != nil {
		l.put(0, ink, inForce(l.judged.Book, l.judged.Design))
	}
	l.since(l.judged.Since)
	l.section("What fails", remarks(v, failed), l.remark)
	l.section("Warnings", remarks(v, warned), l.remark)
	l.section("Not shown on the design", remarks(v, notShown), l.missing)
	l.section("Departures that an authority has allowed", remarks(v, varied), l.remark)
	l.variances(v.Variances)
	l.broken(v.Broken)
	l.ending(tallyOf(l.judged))
}

// title says which design this is.
func (p *page) title(d *design.Design, file string) {
	if d == nil {
		p.put(0, bold, file)
		return
	}
	place := []string{d.Location.Region}
	if d.Location.Place != "" {
		place = []string{d.Location.Place, d.Location.Region}
	}
	if d.Prepared.Revision != "" {
		place = append(place, "revision "+d.Prepared.Revision)
	}
	if d.Prepared.Date != "" {
		place = append(place, "drawn "+d.Prepared.Date)
	}
	p.put(0, bold, d.Title)
	p.put(0, ink, strings.Join(place, ", "))
	p.put(0, ink, file)
}

// section writes one section of remarks, nothing when there are none.
func (l *letter) section(heading string, rs []remark, write func(remark)) {
	if len(rs) == 0 {
		return
	}
	l.heading(heading)
	for i, r := range rs {
		if i > 0 {
			l.blank()
		}
		l.count++
		l.number(strconv.Itoa(l.count)+".", r.rule.Title)
		write(r)
	}
}

// remark writes what a rule found at each of its subjects, and then once why
// it matters and who says so.
func (l *letter) remark(r remark) {
	shared := l.sharedRemedy(r)
	for _, f := range r.findings {
		l.blank()
		l.put(1, ink, f.Item.Subject.Name+", at "+l.place(f.Item.Subject))
		l.found(f)
		if f.Variance == nil && shared == "" {
			l.hang(2, blue, "What to do: "+l.remedy(f))
		}
	}
	l.blank()
	if shared != "" {
		l.hang(1, blue, "What to do: "+shared)
	}
	l.hang(1, ink, "Why it matters: "+r.rule.Reason)
	l.authority(r)
}

// found writes what was measured, in red where it misses its limit, and what an
// authority has allowed.
func (l *letter) found(f *rulebook.Finding) {
	for i := range f.Measured {
		m := &f.Measured[i]
		with := ink
		if m.Limit != nil && m.Margin < 0 {
			with = red
		}
		l.hang(2, with, l.measure(m))
	}
	if f.NotShown() {
		l.hang(2, ink, "Not shown on the design: "+entries(f.Lacks)+".")
	}
	if f.Variance != nil {
		l.hang(2, ink, leave(f.Variance))
	}
}

// authority writes the limits with who set them, the sources and the rule.
func (l *letter) authority(r remark) {
	for _, limit := range r.limits() {
		l.hang(1, ink, "Limit: "+limitLine(limit))
	}
	for _, s := range r.sources() {
		l.hang(1, ink, "Source: "+citation(s))
	}
	l.hang(1, ink, "Rule: "+ruleLine(r.rule))
}

// missing writes which entries the design would have to give for a rule to be
// judged.
func (l *letter) missing(r remark) {
	var said []string
	for _, f := range r.findings {
		for _, lack := range f.Lacks {
			entry := lack.Entry + ", at " + l.judged.Design.Document.Position(lack.Pointer).String() + "."
			if !slices.Contains(said, entry) {
				said = append(said, entry)
				l.hang(1, blue, "Add "+entry)
			}
		}
	}
	l.put(1, ink, countsAs(r.findings[0].Status))
	l.hang(1, ink, "Rule: "+ruleLine(r.rule))
}

// place gives where a subject stands in the file: its first part in full, the
// others by line and column.
func (l *letter) place(s figures.Subject) string {
	if len(s.Pointers) == 0 {
		return l.judged.Name
	}
	document := l.judged.Design.Document
	at := document.Position(s.Pointers[0]).String()
	var others []string
	for i := 1; i < len(s.Pointers) && i < len(s.IDs); i++ {
		others = append(others, s.IDs[i]+" at "+lineColumn(document.Position(s.Pointers[i])))
	}
	if len(others) == 0 {
		return at
	}
	return at + " (" + strings.Join(others, ", ") + ")"
}

// variances lists the variances that do not count.
func (l *letter) variances(remarks []rulebook.VarianceRemark) {
	if len(remarks) == 0 {
		return
	}
	l.heading("Variances that do not count")
	for i, v := range remarks {
		if i > 0 {
			l.blank()
		}
		l.count++
		of := "Variance from " + v.Variance.Rule
		if v.Variance.Part != "" {
			of += " for " + v.Variance.Part
		}
		l.number(strconv.Itoa(l.count)+".", of+", at "+l.judged.Design.Document.Position(v.Pointer).String())
		l.put(1, red, sentence(v.Found))
		if v.Remedy != "" {
			l.hang(1, blue, "What to do: "+sentence(v.Remedy))
		}
	}
}

// broken lists the rules that could not be judged.
func (l *letter) broken(rules []rulebook.Broken) {
	if len(rules) == 0 {
		return
	}
	l.heading("Rules that could not be judged")
	for _, b := range rules {
		l.hang(1, red, capital(b.Err.Error())+" (file "+b.Rule.File+").")
	}
}
