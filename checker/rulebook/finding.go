package rulebook

import "greysill/checker/figures"

// Status is what a rule found for one subject.
type Status string

// The statuses.
const (
	Pass Status = "pass"
	Warn Status = "warn"
	Fail Status = "fail"
)

// Finding is one rule's verdict on one subject. It holds plain data; wording
// and units are the report's business.
type Finding struct {
	Rule     *Rule
	Status   Status
	Item     *figures.Item  // the subject with its figures
	Measured []Measured     // the measures that count for this subject, the one with the least margin first
	Lacks    []figures.Lack // entries that the design would have to give; not empty means "not shown on the design"
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

// Verdict is everything that a book found for one design, in a stable order:
// findings by rule, then by place in the document.
type Verdict struct {
	Findings      []Finding
	Excused       []Excused
	NotApplicable []*Rule  // rules without a subject, or with every subject excused
	Broken        []Broken // not empty: the check could not be made
}
