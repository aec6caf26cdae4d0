package rulebook

import (
	"fmt"
	"slices"
	"time"

	"greysill/checker/design"
	"greysill/checker/figures"
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
	rule, ok := b.Rule(variance.Rule)
	if !ok {
		_, near := suggestion(variance.Rule, b.ids())
		return "the variance names the rule " + source.Quote(variance.Rule) + ", which is not in force", near
	}
	if found, remedy := v.misdirected(variance, rule); found != "" {
		return found, remedy
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

// misdirected says what is wrong with the part that the variance is for. A
// variance is for one part or source, so that it lets nothing else of the same
// rule pass, now or after a change of the design.
func (v *Verdict) misdirected(variance *design.Variance, rule *Rule) (found, remedy string) {
	d, whole := v.Figures.Design, slices.ContainsFunc(v.Figures.List(rule.Subjects.Name), ofTheWhole)
	other, isOther := neither(d, variance.Part)
	switch {
	case whole && variance.Part == "":
		return "", ""
	case whole:
		return "the variance is for " + source.Quote(variance.Part) + ", but " + rule.ID + " is about the system as a whole", "leave the entry part out"
	case variance.Part == "":
		return "the variance does not say which part or source it is for", "name it in the entry part; each needs a variance of its own"
	case isOther:
		return "the variance names " + source.Quote(variance.Part) + ", which is a " + other + "; a variance is for a part or a source",
			"name the part or source that the finding is about, the first that it names"
	case !slices.Contains(drawn(d), variance.Part):
		_, near := suggestion(variance.Part, drawn(d))
		return "the variance names " + source.Quote(variance.Part) + ", which is not drawn", near
	}
	return "", ""
}

// ofTheWhole reports whether an item is about the system as a whole.
func ofTheWhole(item *figures.Item) bool { return len(item.Subject.IDs) == 0 }

// covers reports whether the variance is for the item: for its part or source,
// which it names first, or for the system as a whole.
func covers(variance *design.Variance, item *figures.Item) bool {
	if ofTheWhole(item) {
		return variance.Part == ""
	}
	return variance.Part == item.Subject.IDs[0]
}

// mark gives the variance to the findings that it covers and reports whether
// there are any.
func (v *Verdict) mark(variance *design.Variance) bool {
	marked := false
	for i := range v.Findings {
		f := &v.Findings[i]
		if f.Status != Pass && f.Rule.ID == variance.Rule && covers(variance, f.Item) {
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

// drawn gives the ids of every part and source that the design draws.
func drawn(d *design.Design) []string {
	var ids []string
	for i := range d.Sources {
		ids = append(ids, d.Sources[i].ID)
	}
	for i := range d.Parts {
		ids = append(ids, d.Parts[i].ID)
	}
	return ids
}

// neither says what an id is of that is neither a part's nor a source's.
func neither(d *design.Design, id string) (what string, ok bool) {
	switch {
	case d.Feature(id) != nil:
		return "feature", true
	case slices.ContainsFunc(d.Site.Services, func(s design.Service) bool { return s.ID == id }):
		return "service", true
	}
	return "", false
}
