package report

import (
	"slices"

	"greysill/checker/figures"
	"greysill/checker/rulebook"
)

// remark is everything that one rule has to say on one account, so that its
// reason and sources are said once.
type remark struct {
	rule     *rulebook.Rule
	findings []*rulebook.Finding
}

// remarks groups the findings that are of one kind by rule, in their order.
func remarks(v *rulebook.Verdict, of kind) []remark {
	var rs []remark
	for i := range v.Findings {
		f := &v.Findings[i]
		if kindOf(f) != of {
			continue
		}
		if n := len(rs); n == 0 || rs[n-1].rule != f.Rule {
			rs = append(rs, remark{rule: f.Rule})
		}
		last := &rs[len(rs)-1]
		last.findings = append(last.findings, f)
	}
	return rs
}

// limits gives the limits that the findings were held against, each once.
func (r *remark) limits() []*rulebook.Limit {
	var limits []*rulebook.Limit
	for _, f := range r.findings {
		for _, m := range f.Measured {
			if m.Limit != nil && !slices.Contains(limits, m.Limit) {
				limits = append(limits, m.Limit)
			}
		}
	}
	return limits
}

// sources gives the sources of the rule and of the limits, each once.
func (r *remark) sources() []figures.Citation {
	sources := slices.Clone(r.rule.Sources)
	for _, l := range r.limits() {
		if !slices.Contains(sources, l.Source) {
			sources = append(sources, l.Source)
		}
	}
	return sources
}

// kind is the section of a report that a finding belongs to.
type kind int

const (
	held kind = iota
	failed
	warned
	notShown
	varied
)

func kindOf(f *rulebook.Finding) kind {
	switch {
	case f.Status == rulebook.Pass:
		return held
	case f.Variance != nil:
		return varied
	case f.NotShown():
		return notShown
	case f.Status == rulebook.Fail:
		return failed
	}
	return warned
}
