package rulebook

import (
	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/source"
)

// Status is what a rule found for one subject, or what a whole check comes to.
type Status string

// The statuses. Unjudged is a whole check's alone.
const (
	Pass     Status = "pass"
	Warn     Status = "warn"
	Fail     Status = "fail"
	Unjudged Status = "unjudged" // a rule could not be judged, so that the check could not be made
)

// Finding is one rule's verdict on one subject. It holds plain data; wording
// and units are the report's business.
type Finding struct {
	Rule     *Rule
	Status   Status
	Item     *figures.Item    // the subject with its figures
	Measured []Measured       // the measures that count for this subject and are known, the one with the least margin first
	Lacks    []figures.Lack   // entries that the design would have to give; not empty means "not shown on the design"
	Variance *design.Variance // an authority's leave that is in force, nil when none; the status stays but does not count
}

// NotShown reports whether the design does not show what the rule needs.
func (f *Finding) NotShown() bool { return len(f.Lacks) > 0 }

// Measured is one measure taken of one subject.
type Measured struct {
	Measure *Measure
	Value   *figures.Value
	Limit   *Limit  // nil when the measure has none
	Margin  float64 // how far on the right side of the limit, negative when on the wrong side; SI
}

// Excused is a subject that a rule proved that it does not concern.
type Excused struct {
	Rule   *Rule
	Item   *figures.Item
	Reason string
}

// Broken is a rule that could not be judged.
type Broken struct {
	Rule *Rule
	Err  error
}

// VarianceRemark is something wrong with one of the design's variances. Each
// counts as a warning.
type VarianceRemark struct {
	Variance *design.Variance
	Pointer  string // where the variance stands in the document
	Found    string
	Remedy   string
}

// Verdict is everything that a book found for one design, in a stable order:
// findings by rule, then in the order of the document.
type Verdict struct {
	Figures       *figures.Figures
	Findings      []Finding
	Excused       []Excused
	NotApplicable []*Rule          // rules without a subject, or with every subject excused
	Broken        []Broken         // not empty: the check could not be made
	Variances     []VarianceRemark // in the order of the document
}

// Counts says how many there are of each.
type Counts struct {
	Pass, Warn, Fail int // findings that count, those not shown among them
	NotShown         int // of the warnings and failures
	Varied           int // warnings and failures that a variance covers; not counted above
	Excused          int
	NotApplicable    int // rules
	Broken           int // rules
	Remarks          int // on variances
}

// Counts counts what was found.
func (v *Verdict) Counts() Counts {
	c := Counts{Excused: len(v.Excused), NotApplicable: len(v.NotApplicable), Broken: len(v.Broken), Remarks: len(v.Variances)}
	for i := range v.Findings {
		f := &v.Findings[i]
		switch {
		case f.Status == Pass:
			c.Pass++
			continue
		case f.Variance != nil:
			c.Varied++
			continue
		case f.Status == Warn:
			c.Warn++
		default:
			c.Fail++
		}
		if f.NotShown() {
			c.NotShown++
		}
	}
	return c
}

// Status gives what the check comes to: the worst of its findings and of the
// remarks on its variances.
func (v *Verdict) Status() Status {
	c := v.Counts()
	switch {
	case c.Broken > 0:
		return Unjudged
	case c.Fail > 0:
		return Fail
	case c.Warn+c.Remarks > 0:
		return Warn
	}
	return Pass
}

// Position gives the place of an item's subject in the design's document, the
// zero Position when the design was not read from one.
func (v *Verdict) Position(item *figures.Item) source.Position {
	d := v.Figures.Design
	if d == nil || d.Document == nil {
		return source.Position{}
	}
	return d.Document.Position(place(item))
}
