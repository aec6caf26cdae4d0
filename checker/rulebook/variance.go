package rulebook

import (
	"fmt"
	"slices"
	"time"

	"greysill/checker/design"
	"greysill/checker/source"
)

// vary marks the findings that a variance in force covers, and remarks on the
// variances that cover none.
func (v *Verdict) vary(b *Book, asOf time.Time) {
	d := v.Figures.Design
	if d == nil {
		return
	}
	for i := range d.Variances {
		variance := &d.Variances[i]
		found, remedy := v.apply(b, variance, asOf)
		if found != "" {
			v.Variances = append(v.Variances, VarianceRemark{
				Variance: variance, Pointer: fmt.Sprintf("/variances/%d", i), Found: found, Remedy: remedy,
			})
		}
	}
}

// apply marks what the variance covers; it says what is wrong when there is
// something.
func (v *Verdict) apply(b *Book, variance *design.Variance, asOf time.Time) (found, remedy string) {
	if _, ok := b.Rule(variance.Rule); !ok {
		_, near := suggestion(variance.Rule, b.ids())
		return "the variance names the rule " + source.Quote(variance.Rule) + ", which is not in force", near
	}
	ids := drawn(v.Figures.Design)
	if !slices.Contains(ids, variance.Part) {
		_, near := suggestion(variance.Part, ids)
		return "the variance names " + source.Quote(variance.Part) + ", which is not drawn", near
	}
	expires, err := time.Parse(time.DateOnly, variance.Expires)
	if err != nil {
		return "the variance does not say when it expires", "give the day as YYYY-MM-DD; until then it does not count"
	}
	if asOf.Format(time.DateOnly) > expires.Format(time.DateOnly) {
		return "the variance expired on " + variance.Expires + " and does not count", "ask the authority to renew it, or put the design right"
	}
	if !v.mark(variance) && !v.broke(variance.Rule) {
		return "the variance covers no finding", "take it out of the design"
	}
	return "", ""
}

// mark gives the variance to the findings that it covers and reports whether
// there are any.
func (v *Verdict) mark(variance *design.Variance) bool {
	marked := false
	for i := range v.Findings {
		f := &v.Findings[i]
		if f.Status != Pass && f.Rule.ID == variance.Rule && slices.Contains(f.Item.Subject.IDs, variance.Part) {
			f.Variance, marked = variance, true
		}
	}
	return marked
}

// broke reports whether the rule could not be judged.
func (v *Verdict) broke(rule string) bool {
	return slices.ContainsFunc(v.Broken, func(b Broken) bool { return b.Rule.ID == rule })
}

func (b *Book) ids() []string {
	var ids []string
	for _, r := range b.rules {
		ids = append(ids, r.ID)
	}
	return ids
}

// drawn gives the ids of everything that the design draws.
func drawn(d *design.Design) []string {
	var ids []string
	for i := range d.Sources {
		ids = append(ids, d.Sources[i].ID)
	}
	for i := range d.Parts {
		ids = append(ids, d.Parts[i].ID)
	}
	for i := range d.Site.Features {
		ids = append(ids, d.Site.Features[i].ID)
	}
	for i := range d.Site.Services {
		ids = append(ids, d.Site.Services[i].ID)
	}
	return ids
}
