package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"greysill/checker/compare"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// comment is the report in CommonMark, to be set under a change that somebody
// proposes: short, and worst first, so that it is written when all is known.
type comment struct {
	w       io.Writer
	options Options
	notes   []note
	caution []string // each once
}

// note is what is said of one design.
type note struct {
	tally
	text string
}

// most is how many findings of one kind are written out for one design; what is
// left is counted. Forges cut comments at some 65,000 characters (common practice,
// no source), which mostRead stays below.
const (
	most     = 20
	mostRead = 50_000
)

// Design takes down what is wrong with one design.
func (c *comment) Design(j *Judged) error {
	n := note{tally: tallyOf(j)}
	m := &markdown{}
	a := &account{Judged: j, speaker: speaker{c.options.units(j.Design)}}
	if n.status != rulebook.Pass || n.Varied > 0 {
		m.heading(3, statusWords[n.status]+": "+a.heading())
		m.paragraph(escaped(capital(n.words())) + ". " + code(j.Name))
		if j.Book != nil {
			m.paragraph(escaped(inForce(j.Book, j.Design)))
		}
		m.since(j.Since)
		m.problems(j.Problems)
		m.findings(a)
	}
	n.text = m.String()
	c.notes = append(c.notes, n)
	for _, words := range j.cautions() {
		if n.text != "" && !slices.Contains(c.caution, words) {
			c.caution = append(c.caution, words)
		}
	}
	return nil
}

func (a *account) heading() string {
	if a.Design == nil {
		return code(a.Name)
	}
	return escaped(a.Design.Title)
}

// Close writes the comment.
func (c *comment) Close(skipped []string) error {
	m := &markdown{}
	m.heading(2, "Greywater designs: "+c.summary())
	cut := 0
	for _, n := range c.worstFirst() {
		if m.Len()+len(n.text) > mostRead {
			cut++
			continue
		}
		m.WriteString(n.text)
	}
	if cut > 0 {
		m.paragraph("No room here for " + plural(cut, "further design") + "; the full report has them.")
	}
	m.list("Take care", c.caution)
	m.list("Skipped, since they are no greywater designs", skipped)
	m.WriteString(escaped(localCode) + "\n")
	_, err := io.WriteString(c.w, m.String())
	return err
}

// list writes a headed list, nothing when there is nothing on it.
func (m *markdown) list(heading string, items []string) {
	if len(items) == 0 {
		return
	}
	m.heading(3, heading)
	for _, i := range items {
		m.item(escaped(i))
	}
	m.end()
}

// summary counts the designs by what they come to.
func (c *comment) summary() string {
	counts := map[rulebook.Status]int{}
	for _, n := range c.notes {
		counts[n.status]++
	}
	var said []string
	for _, s := range worstFirst {
		if counts[s] > 0 {
			said = append(said, fmt.Sprintf("%d %s", counts[s], outcomes[s]))
		}
	}
	if len(said) == 0 {
		return "none"
	}
	return strings.Join(said, ", ")
}

var outcomes = map[rulebook.Status]string{
	rulebook.Unjudged: "not judged", rulebook.Fail: "failing", rulebook.Warn: "passing with warnings", rulebook.Pass: "passing",
}

func (c *comment) worstFirst() []note {
	notes := slices.Clone(c.notes)
	slices.SortStableFunc(notes, func(a, b note) int {
		return slices.Index(worstFirst, a.status) - slices.Index(worstFirst, b.status)
	})
	return notes
}

func (m *markdown) problems(problems source.Problems) {
	for i, p := range problems {
		if i == most {
			m.item(fmt.Sprintf("and %d more", len(problems)-most))
			break
		}
		m.item(code(p.Position.String()) + " " + escaped(sentence(p.Sentence())))
	}
	if len(problems) > 0 {
		m.end()
	}
}

// findings writes what is wrong, failures first.
func (m *markdown) findings(a *account) {
	if a.Verdict == nil {
		return
	}
	for _, b := range a.Verdict.Broken {
		m.item("**Not judged:** " + code(b.Rule.ID) + " " + escaped(sentence(b.Err.Error())))
	}
	left := most
	for _, k := range []kind{failed, warned, notShown, varied} {
		for _, r := range remarks(a.Verdict, k) {
			left = m.remark(a, k, r, left)
		}
	}
	if left < 0 {
		m.item(fmt.Sprintf("and %d more; the full report has them", -left))
	}
	for _, v := range a.Verdict.Variances {
		m.item("**Warning** at " + code(a.Design.Document.Position(v.Pointer).String()) + ": " + escaped(a.variance(v).Message.Text))
	}
	m.end()
}

// headings says what the remarks of a kind are.
var headings = map[kind]string{failed: "Fails", warned: "Warning", notShown: "Not shown", varied: "Allowed"}

// remark writes a rule once with every subject that it is not proved for, while
// there is room left, and gives the room that is left then.
func (m *markdown) remark(a *account, k kind, r remark, left int) int {
	if left > 0 {
		m.item("**" + headings[k] + ":** " + escaped(r.rule.Title) + " " + code(r.rule.ID))
	}
	for _, f := range r.findings {
		if left--; left >= 0 {
			m.WriteString("  - " + code(a.place(f)) + " " + escaped(plainly(f.Item.Subject.Name+". "+a.short(f))) + "\n")
		}
	}
	return left
}

// short says what is missed and what to do.
func (a *account) short(f *rulebook.Finding) string {
	if f.Variance != nil {
		return leave(f.Variance) + "."
	}
	if f.NotShown() {
		return "Add " + entries(f.Lacks) + ". " + countsAs(f.Status)
	}
	var said []string
	for i := range f.Measured {
		if m := &f.Measured[i]; m.Limit != nil && m.Margin < 0 {
			said = append(said, a.measure(m))
		}
	}
	return strings.Join(append(said, a.remedy(f)), " ")
}

// place gives where the first part of a finding's subject stands.
func (a *account) place(f *rulebook.Finding) string {
	if len(f.Item.Subject.Pointers) == 0 {
		return a.Name
	}
	return a.Design.Document.Position(f.Item.Subject.Pointers[0]).String()
}

// since says what is new since an earlier report.
func (m *markdown) since(c *compare.Comparison) {
	if c == nil {
		return
	}
	m.paragraph("Since " + code(c.With) + ": " + sinceWords(c))
	for _, f := range c.Appeared {
		m.item("**New:** " + code(f.Rule.ID) + " " + escaped(f.Item.Subject.Name))
	}
	for _, t := range c.Gone {
		m.item("Gone: " + code(t.Rule) + " " + escaped(t.Subject))
	}
	m.end()
}
