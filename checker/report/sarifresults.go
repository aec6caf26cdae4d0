package report

import (
	"slices"
	"strings"

	"greysill/checker/compare"
	"greysill/checker/figures"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// account is what one design comes to, as results of a SARIF log.
type account struct {
	*Judged
	speaker
	alerts bool // only what is wrong now
}

func (a *account) results() []sarifResult {
	var all []sarifResult
	for i := range a.Verdict.Findings {
		if f := &a.Verdict.Findings[i]; !a.alerts || f.Status != rulebook.Pass && f.Variance == nil {
			all = append(all, a.finding(f))
		}
	}
	for _, v := range a.Verdict.Variances {
		all = append(all, a.variance(v))
	}
	if a.alerts {
		return all
	}
	for _, e := range a.Verdict.Excused {
		all = append(all, a.result(e.Rule.ID, "notApplicable", sentence(e.Item.Subject.Name+": "+e.Reason), e.Item.Subject))
	}
	return append(all, a.withoutSubject()...)
}

// finding gives the result of a finding: what the design does not show is open,
// in the standard's words, but an alert where only alerts are wanted.
func (a *account) finding(f *rulebook.Finding) sarifResult {
	r := a.result(f.Rule.ID, "fail", a.message(f), f.Item.Subject)
	switch {
	case f.Status == rulebook.Pass:
		r.Kind = "pass"
	case f.NotShown() && !a.alerts:
		r.Kind = "open"
	default:
		r.Level = sarifLevels[f.Status]
	}
	r.Baseline = a.baseline(f)
	if v := f.Variance; v != nil {
		r.Suppressions = []sarifSuppression{{"external", "accepted", v.Reason, sarifSuppressing{v.Authority, v.Reference, v.Expires}}}
	}
	return r
}

// baseline says in the standard's words how a finding stands to an earlier report,
// "" where there is none or nothing is wrong.
func (a *account) baseline(f *rulebook.Finding) string {
	if a.Since == nil || f.Status == rulebook.Pass || f.Variance != nil {
		return ""
	}
	if slices.Contains(a.Since.Appeared, f) {
		return "new"
	}
	if slices.ContainsFunc(slices.Concat(a.Since.Worse, a.Since.Better), func(c compare.Change) bool { return c.Finding == f }) {
		return "updated"
	}
	return "unchanged"
}

// result gives a result of a kind about a subject.
func (a *account) result(rule, kind, message string, s figures.Subject) sarifResult {
	r := sarifResult{RuleID: rule, Kind: kind, Level: "none", Message: sarifText{Text: message}, Fingerprints: mark(rule, s.Name)}
	for i, pointer := range s.Pointers {
		if i == 0 {
			r.Locations = []sarifLocation{a.locate(s, i, pointer)}
		} else {
			r.RelatedLocations = append(r.RelatedLocations, a.locate(s, i, pointer))
		}
	}
	if len(r.Locations) == 0 {
		r.Locations = []sarifLocation{at(source.Position{File: a.Name})}
	}
	return r
}

// locate gives a place in the design by line and column and as a JSON Pointer.
func (a *account) locate(s figures.Subject, i int, pointer string) sarifLocation {
	name := s.Name
	if i < len(s.IDs) {
		name = s.IDs[i]
	}
	l := at(a.Design.Document.Position(pointer))
	l.Logical = []sarifLogical{{name, pointer, "object"}}
	if i > 0 {
		l.Message = &sarifText{Text: name}
	}
	return l
}

// verdicts says of a rule's assertion how it stands with a subject.
var verdicts = map[kind]string{held: "Holds", failed: "Does not hold", warned: "Does not hold", notShown: "Not shown to hold", varied: "Does not hold, by leave"}

// message says in plain words what was found and what to do.
func (a *account) message(f *rulebook.Finding) string {
	said := []string{verdicts[kindOf(f)] + ": " + f.Rule.Title, f.Item.Subject.Name + ":"}
	for i := range f.Measured {
		said = append(said, a.measure(&f.Measured[i]))
	}
	switch {
	case f.Variance != nil:
		said = append(said, sentence(leave(f.Variance)))
	case f.NotShown():
		said = append(said, "Not shown on the design: "+entries(f.Lacks)+".", countsAs(f.Status))
	case f.Status != rulebook.Pass:
		said = append(said, "What to do: "+a.remedy(f))
	}
	return plainly(strings.Join(said, " "))
}

// plainly gives text without the spaces that keep a value and its unit together.
func plainly(text string) string { return source.Clean(strings.ReplaceAll(text, nbsp, " ")) }

func (a *account) variance(v rulebook.VarianceRemark) sarifResult {
	subject := figures.Subject{Name: v.Variance.Rule + " " + v.Variance.Part, Pointers: []string{v.Pointer}}
	message := sentence("variance from "+v.Variance.Rule+": "+v.Found) + " "
	if v.Remedy != "" {
		message += "What to do: " + sentence(v.Remedy)
	}
	r := a.result(variancesRule, "fail", plainly(strings.TrimSpace(message)), subject)
	r.Level = sarifLevels[rulebook.Warn]
	return r
}

// withoutSubject gives a result for every rule that has nothing to judge on the
// design, unless its subjects say so themselves.
func (a *account) withoutSubject() []sarifResult {
	excused := map[*rulebook.Rule]bool{}
	for _, e := range a.Verdict.Excused {
		excused[e.Rule] = true
	}
	var all []sarifResult
	for _, r := range a.Verdict.NotApplicable {
		if !excused[r] {
			all = append(all, a.result(r.ID, "notApplicable", "The design has nothing that the rule is about. It looks at: "+r.Subjects.Doc, figures.Subject{Name: a.Name}))
		}
	}
	return all
}
