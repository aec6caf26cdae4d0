package compare

import (
	"math"

	"greysill/checker/rulebook"
)

// Comparison is how a design stands to an earlier report.
type Comparison struct {
	With     string // the report's file
	Known    bool   // whether the report has the design at all
	Appeared []*rulebook.Finding
	Worse    []Change // still a finding, by a smaller margin
	Better   []Change // still a finding, by a greater margin
	Gone     []Then
	Same     int // findings that are as they were
}

// Change is a finding whose margin has changed.
type Change struct {
	Finding  *rulebook.Finding
	Measured *rulebook.Measured // the measure that has changed most against its limit
	Before   float64            // its margin then, SI
}

// With holds the findings of a design against the report.
func (p *Past) With(file string, v *rulebook.Verdict) *Comparison {
	then, known := p.designs[file]
	c := &Comparison{With: p.Name, Known: known}
	before := map[[2]string]*Then{}
	for i := range then {
		before[[2]string{then[i].Rule, then[i].Subject}] = &then[i]
	}
	now := map[[2]string]bool{}
	for i := range v.Findings {
		f := &v.Findings[i]
		if !wrong(f.Status, f.Variance != nil) {
			continue
		}
		key := [2]string{f.Rule.ID, f.Item.Subject.Name}
		now[key] = true
		c.add(f, before[key])
	}
	for _, t := range then {
		if wrong(t.Status, t.Allowed) && !now[[2]string{t.Rule, t.Subject}] {
			c.Gone = append(c.Gone, t)
		}
	}
	return c
}

func wrong(s rulebook.Status, allowed bool) bool { return s != rulebook.Pass && !allowed }

// add notes how a finding stands to what it was. A warning that fails now has
// appeared.
func (c *Comparison) add(f *rulebook.Finding, then *Then) {
	if then == nil || !wrong(then.Status, then.Allowed) || then.Status == rulebook.Warn && f.Status == rulebook.Fail {
		c.Appeared = append(c.Appeared, f)
		return
	}
	change, ok := changed(f, then)
	switch {
	case !ok:
		c.Same++
	case change.Measured.Margin < change.Before:
		c.Worse = append(c.Worse, change)
	default:
		c.Better = append(c.Better, change)
	}
}

// resolution is the change of a margin that counts, as a share of the limit; a
// report has its numbers to 9 digits.
const resolution = 1e-6

// changed gives the measure whose margin has changed most, ok=false where none has.
func changed(f *rulebook.Finding, then *Then) (change Change, ok bool) {
	most := 0.0
	for i := range f.Measured {
		m := &f.Measured[i]
		before, known := then.Margins[m.Measure.Field.Name]
		if m.Limit == nil || !known {
			continue
		}
		size := math.Max(math.Abs(m.Limit.Value), 1e-3)
		if by := math.Abs(m.Margin-before) / size; by > resolution && by > most {
			most, change, ok = by, Change{f, m, before}, true
		}
	}
	return change, ok
}

// Fails reports whether something has appeared that fails, or with strict also that
// warns.
func (c *Comparison) Fails(strict bool) bool {
	for _, f := range c.Appeared {
		if strict || f.Status == rulebook.Fail {
			return true
		}
	}
	return false
}
