package report

import (
	"slices"
	"strconv"
	"strings"

	"greysill/checker/rulebook"
)

// TopicView is what the rules of one topic found.
type TopicView struct {
	Name          string
	Rules         []RuleView
	NotApplicable string // rules that concern nothing on the design
}

// RuleView is a rule with its verdict on every subject: what does not hold in full,
// of what holds the thinnest margin of each measure.
type RuleView struct {
	Rule, Title string
	Sources     []string // numbers in the list of sources
	Verdicts    []VerdictView
	Holds       string // for what it holds that it has no measure of
	Excused     []string
}

// VerdictView is one measure of one subject, or what is missing to take it.
type VerdictView struct {
	Subject, Measured, Limit, Margin, Verdict string
	Source                                    string // of the limit, its number
	Span                                      int    // rows that the subject has, 0 in all but its first
}

// Topics gives every verdict of the rule book, topic by topic.
func (p *paper) Topics() []TopicView {
	var topics []TopicView
	for _, r := range p.Book.Rules() {
		name, id, _ := strings.Cut(r.ID, "/")
		if n := len(topics); n == 0 || topics[n-1].Name != capital(name) {
			topics = append(topics, TopicView{Name: capital(name)})
		}
		t := &topics[len(topics)-1]
		if slices.Contains(p.Verdict.NotApplicable, r) {
			t.NotApplicable = strings.TrimPrefix(t.NotApplicable+", "+id, ", ")
		} else if v := p.ruleView(r); len(v.Verdicts)+len(v.Holds)+len(v.Excused) > 0 {
			t.Rules = append(t.Rules, v)
		}
	}
	return topics
}

func (p *paper) ruleView(r *rulebook.Rule) RuleView {
	v := RuleView{Rule: ofBase(ruleLine(r)), Title: r.Title, Sources: p.numbers(r.Sources), Excused: p.excused(r)}
	var passes []*rulebook.Finding
	for i := range p.Verdict.Findings {
		switch f := &p.Verdict.Findings[i]; {
		case f.Rule != r:
		case kindOf(f) == held:
			passes = append(passes, f)
		default:
			v.Verdicts = append(v.Verdicts, p.verdicts(f)...)
		}
	}
	rows, names := p.holding(passes)
	v.Verdicts = append(v.Verdicts, rows...)
	if len(names) > 0 {
		v.Holds = counted(len(names)) + strings.Join(names, ", ")
	}
	return v
}

// ofBase leaves out of a line that the base rule book sets it, which most are.
func ofBase(line string) string { return strings.TrimSuffix(line, ", "+setBy(rulebook.BaseName)) }

// holding gives of every measure that holds the subject nearest to the limit, and
// the names of those that hold without a measure.
func (p *paper) holding(passes []*rulebook.Finding) (rows []VerdictView, names []string) {
	type nearest struct {
		of    *rulebook.Finding
		m     *rulebook.Measured
		count int
	}
	var all []*nearest
	for _, f := range passes {
		measured := false
		for i := range f.Measured {
			m := &f.Measured[i]
			if m.Limit == nil {
				continue
			}
			measured = true
			at := slices.IndexFunc(all, func(n *nearest) bool { return n.m.Measure == m.Measure && n.m.Limit == m.Limit })
			if at < 0 {
				at, all = len(all), append(all, &nearest{of: f, m: m})
			}
			n := all[at]
			if n.count++; m.Margin < n.m.Margin {
				n.of, n.m = f, m
			}
		}
		if !measured {
			names = append(names, f.Item.Subject.Name)
		}
	}
	for _, n := range all {
		row := p.held(n.m)
		row.Subject, row.Span, row.Verdict = n.of.Item.Subject.Name, 1, "holds"
		if n.count > 1 {
			row.Subject += ", nearest of" + nbsp + strconv.Itoa(n.count)
		}
		rows = append(rows, row)
	}
	return rows, names
}

// counted begins a list of several names with how many they are.
func counted(n int) string {
	if n == 1 {
		return ""
	}
	return strconv.Itoa(n) + ": "
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
	rows[0].Subject, rows[0].Span = f.Item.Subject.Name, len(rows)
	rows[0].Verdict = verdictWord(f) + nbsp + "(" + strconv.Itoa(p.numberOf(f)) + ")"
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
	case varied:
		return "allowed, " + f.Variance.Reference
	case notShown:
		return "not shown, " + string(f.Status)
	}
	return string(f.Status)
}

// fewExcused is up to how many excused subjects are named.
const fewExcused = 4

// excused says how many subjects a rule does not concern, and why.
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
		who := names[reason]
		reasons[i] = strconv.Itoa(len(who)) + " excused"
		if len(who) <= fewExcused {
			reasons[i] += " (" + strings.Join(who, ", ") + ")"
		}
		reasons[i] += ": " + sentence(reason)
	}
	return reasons
}

func listing(names []string) string { return strings.Join(names, "; ") }
