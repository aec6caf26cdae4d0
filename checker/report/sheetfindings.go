package report

import (
	"slices"
	"strings"

	"greysill/checker/drawing"
	"greysill/checker/figures"
	"greysill/checker/rulebook"
)

// numbered is a remark with its number, the same as in the text report.
type numbered struct {
	remark
	Number int
	kind   kind
}

// numbered gives the remarks of every kind in the order of the text report.
func (p *paper) numbered() []numbered {
	var all []numbered
	for _, k := range []kind{failed, warned, notShown, varied} {
		for _, r := range remarks(p.Verdict, k) {
			all = append(all, numbered{r, len(all) + 1, k})
		}
	}
	return all
}

// draw makes the drawings.
func (p *paper) draw() []*drawing.Drawing {
	r := drawing.Review{Figures: p.Figures, Units: p.units}
	for _, n := range p.remarks {
		for _, f := range n.findings {
			r.Marks = append(r.Marks, drawing.Mark{Number: n.Number, Of: markStandings[n.kind], IDs: f.Item.Subject.IDs})
		}
	}
	for i := range p.Verdict.Findings {
		r.Clearances = append(r.Clearances, p.clearancesOf(&p.Verdict.Findings[i])...)
	}
	return drawing.All(r)
}

var markStandings = map[kind]drawing.Standing{
	failed: drawing.Fails, warned: drawing.Warns, notShown: drawing.NotShown, varied: drawing.Allowed,
}

// clearancesOf gives the distances in plan that a finding held against a limit.
func (p *paper) clearancesOf(f *rulebook.Finding) []drawing.Clearance {
	if !strings.HasPrefix(f.Item.List.Name, clearancePrefix) {
		return nil
	}
	var all []drawing.Clearance
	for i := range f.Measured {
		m := &f.Measured[i]
		if m.Limit == nil || m.Measure.Bound != rulebook.AtLeast || m.Measure.Field != distanceField(f.Item) {
			continue
		}
		unit := measureUnit(m, p.units)
		measured, limit := unit.Format(m.Value.Number), unit.Format(m.Limit.Value)
		c := drawing.Clearance{Item: f.Item, Distance: m.Value.Number, Limit: m.Limit.Value, LimitWords: limit, Words: measured + " (least " + limit + ")"}
		if m.Margin < 0 {
			c.Number = p.numberOf(f)
		}
		all = append(all, c)
	}
	return all
}

const clearancePrefix = "clearances."

// numberOf gives the number of the remark that a finding is in, 0 when none.
func (p *paper) numberOf(f *rulebook.Finding) int {
	for _, n := range p.remarks {
		if slices.Contains(n.findings, f) {
			return n.Number
		}
	}
	return 0
}

// Section is one section of findings.
type Section struct {
	Heading string
	Remarks []RemarkView
}

// RemarkView is a rule with what it found at each of its subjects.
type RemarkView struct {
	Number                      int
	Title, Rule, Reason, Remedy string   // Remedy where all subjects share one
	Limits, Sources             []string // of sources the numbers
	Subjects                    []SubjectView
}

// SubjectView is what was found at one subject.
type SubjectView struct {
	Name, Place, Remedy string
	Found               []string
}

var sectionHeadings = []struct {
	kind kind
	text string
}{
	{failed, "What fails"}, {warned, "Warnings"}, {notShown, "Not shown on the design"}, {varied, "Departures that an authority has allowed"},
}

// Sections gives the findings that are not passes.
func (p *paper) Sections() []Section {
	var sections []Section
	for _, h := range sectionHeadings {
		s := Section{Heading: h.text}
		for _, n := range p.remarks {
			if n.kind == h.kind {
				s.Remarks = append(s.Remarks, p.remarkView(n))
			}
		}
		if len(s.Remarks) > 0 {
			sections = append(sections, s)
		}
	}
	return sections
}

func (p *paper) remarkView(n numbered) RemarkView {
	v := RemarkView{Number: n.Number, Title: n.rule.Title, Rule: ofBase(ruleLine(n.rule)), Reason: n.rule.Reason, Remedy: p.sharedRemedy(n.remark), Sources: p.numbers(n.sources())}
	for _, l := range n.limits() {
		v.Limits = append(v.Limits, ofBase(limitLine(l)))
	}
	for _, f := range n.findings {
		s := SubjectView{Name: f.Item.Subject.Name, Place: p.places(f.Item.Subject), Found: p.found(f)}
		if f.Variance == nil && !f.NotShown() && v.Remedy == "" {
			s.Remedy = p.remedy(f)
		}
		v.Subjects = append(v.Subjects, s)
	}
	if n.kind == notShown {
		v.Remedy = countsAs(n.findings[0].Status)
	}
	return v
}

// found words what was measured, what is not shown and what is allowed.
func (p *paper) found(f *rulebook.Finding) []string {
	var said []string
	for i := range f.Measured {
		said = append(said, p.measure(&f.Measured[i]))
	}
	for _, l := range f.Lacks {
		if entry := "Add " + l.Entry + ", at " + p.lineColumn(l.Pointer) + "."; !slices.Contains(said, entry) {
			said = append(said, entry)
		}
	}
	if f.Variance != nil {
		said = append(said, leave(f.Variance)+".")
	}
	return said
}

// places gives where the parts of a subject stand in the file, by line and column.
func (p *paper) places(s figures.Subject) string {
	var at []string
	for _, pointer := range s.Pointers {
		at = append(at, p.lineColumn(pointer))
	}
	return strings.Join(at, ", ")
}

func (p *paper) lineColumn(pointer string) string {
	return lineColumn(p.Design.Document.Position(pointer))
}
