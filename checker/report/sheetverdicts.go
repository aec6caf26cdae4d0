package report

import (
	"slices"
	"strconv"
	"strings"

	"greysill/checker/figures"
	"greysill/checker/rulebook"
)

// RuleView is a rule with its verdict on every subject.
type RuleView struct {
	Rule, Title, SetBy string
	Sources            []string // numbers in the list of sources
	Verdicts           []VerdictView
	Excused            []string
}

// VerdictView is one measure of one subject, or what is missing to take it.
type VerdictView struct {
	Subject, Measured, Limit, Margin, Verdict string
	Source                                    string // of the limit, its number
	Span                                      int    // rows that the subject has, 0 in all but its first
}

// Verdicts gives every verdict of the rule book, rule by rule, those that hold
// too.
func (p *paper) Verdicts() []RuleView {
	var views []RuleView
	for _, r := range p.Book.Rules() {
		v := RuleView{Rule: r.ID, Title: r.Title, SetBy: ruleOrigin(r), Sources: p.numbers(r.Sources)}
		for i := range p.Verdict.Findings {
			if f := &p.Verdict.Findings[i]; f.Rule == r {
				v.Verdicts = append(v.Verdicts, p.verdicts(f)...)
			}
		}
		v.Excused = p.excused(r)
		if len(v.Verdicts)+len(v.Excused) > 0 {
			views = append(views, v)
		}
	}
	return views
}

// verdicts gives a row for each measure that a finding holds against a limit, and
// one for what it only shows.
func (p *paper) verdicts(f *rulebook.Finding) []VerdictView {
	var rows []VerdictView
	var shown []string
	for i := range f.Measured {
		if m := &f.Measured[i]; m.Limit == nil {
			shown = append(shown, label(m.Measure.Field)+": "+p.value(m.Measure.Field, m.Value))
		} else {
			rows = append(rows, p.held(m))
		}
	}
	if f.NotShown() {
		shown = append(shown, "Not shown: "+entries(f.Lacks))
	}
	if len(shown) > 0 || len(rows) == 0 {
		rows = append(rows, VerdictView{Measured: listing(shown)})
	}
	rows[0].Subject, rows[0].Span, rows[0].Verdict = f.Item.Subject.Name, len(rows), verdictWord(f)
	return rows
}

// held words a measure with its limit.
func (p *paper) held(m *rulebook.Measured) VerdictView {
	unit := measureUnit(m, p.units)
	return VerdictView{
		Measured: label(m.Measure.Field) + ": " + together(unit.Format(m.Value.Number)),
		Limit:    string(m.Measure.Bound) + " " + together(unit.Format(m.Limit.Value)) + ", " + m.Limit.Name,
		Margin:   margin(m, unit), Source: p.number(m.Limit.Source),
	}
}

func verdictWord(f *rulebook.Finding) string {
	switch kindOf(f) {
	case held:
		return "holds"
	case varied:
		return "allowed, " + f.Variance.Reference
	case notShown:
		return "not shown, " + string(f.Status)
	}
	return string(f.Status)
}

// excused says which subjects a rule does not concern, and why.
func (p *paper) excused(r *rulebook.Rule) []string {
	var reasons []string
	names := map[string][]string{}
	for _, e := range p.Verdict.Excused {
		if e.Rule != r {
			continue
		}
		if len(names[e.Reason]) == 0 {
			reasons = append(reasons, e.Reason)
		}
		names[e.Reason] = append(names[e.Reason], e.Item.Subject.Name)
	}
	for i, reason := range reasons {
		reasons[i] = sentence(reason) + " Excused: " + listing(names[reason]) + "."
	}
	return reasons
}

func listing(names []string) string { return strings.Join(names, "; ") }

// NotApplicable gives the rules that concern nothing on the design.
func (p *paper) NotApplicable() string {
	var ids []string
	for _, r := range p.Verdict.NotApplicable {
		ids = append(ids, r.ID)
	}
	return listing(ids)
}

// number gives the number of a source in the list of sources, "" for no source.
func (p *paper) number(c figures.Citation) string {
	if c.Title == "" {
		return ""
	}
	i := slices.Index(p.sources, c)
	if i < 0 {
		p.sources = append(p.sources, c)
		i = len(p.sources) - 1
	}
	return "S" + strconv.Itoa(i+1)
}

func (p *paper) numbers(sources []figures.Citation) []string {
	var numbers []string
	for _, c := range sources {
		numbers = append(numbers, p.number(c))
	}
	return numbers
}

// Sources gives every source that the tables before it number, in full.
func (p *paper) Sources() []string {
	var all []string
	for _, c := range p.sources {
		all = append(all, citation(c))
	}
	return all
}
