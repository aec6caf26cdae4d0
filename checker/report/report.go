// Package report puts what a check found in words for the person with the plan
// on the table, or in JSON for another program. It knows neither how a figure
// was computed nor how a rule was judged.
package report

import (
	"fmt"
	"io"

	"greysill/checker/compare"
	"greysill/checker/cost"
	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// Judged is one design with all that was found for it. Design, Figures and
// Verdict are nil when the file has problems that kept it from being judged.
type Judged struct {
	Name     string // of the file
	Design   *design.Design
	Figures  *figures.Figures
	Verdict  *rulebook.Verdict
	Problems source.Problems
	Book     Book // the rules that the design was held against

	Since *compare.Comparison // with an earlier report, nil where none was asked for
}

// Book is what reports need of a *rulebook.Book.
type Book interface {
	Rules() []*rulebook.Rule   // by topic, then by ID
	Limits() []*rulebook.Limit // sorted by name
	Limit(name string) (*rulebook.Limit, bool)
	Caution(key string) (string, bool)
	Amendments() []*rulebook.Amendment // upon the base, the last one winning
	SetAside() []*rulebook.SetAside    // rules that amendments take out of force
}

// Report is one report of a run, written design by design, so that a long run is
// never held in memory as a whole. Close ends it with the files that were
// skipped.
type Report interface {
	Design(j *Judged) error
	Close(skipped []string) error
}

// Kinds are the kinds of report that New makes.
var Kinds = []string{"text", "json", "sarif", "alerts", "junit", "markdown", "known", "sheet"}

// New begins a report of one of the Kinds.
func New(kind string, w io.Writer, o Options) (Report, error) {
	switch kind {
	case "text":
		return &text{w: w, options: o}, nil
	case "json":
		return newJSON(w, o), nil
	case "known":
		return &known{w: w, log: knownLog{Format: KnownFormat, Designs: []knownDesign{}}}, nil
	case "sarif":
		return newSARIF(w, o, false), nil
	case "alerts":
		return newSARIF(w, o, true), nil
	case "junit":
		return newJUnit(w, o)
	case "markdown":
		return &comment{w: w, options: o}, nil
	case "sheet":
		return &sheet{w: w, options: o}, nil
	}
	return nil, fmt.Errorf("no such kind of report: %q", kind)
}

// Options says how a report is to look. The zero Options give 80 columns
// without colour, in each design's own units.
type Options struct {
	Width   int             // columns, held to 40 to 120; 0 stands for 80
	Colour  bool            // colour for a terminal
	Units   quantity.System // "" stands for the design's own
	Figures bool            // JSON: every figure of every design too
	Strict  bool            // JUnit: a warning is a failure too
	Follow  bool            // sheet: an open page reads itself again every few seconds
	AsOf    string          // the date that variances were held against, RFC 3339 full-date, or ""
	Version string          // of the program, for JSON
	Prices  *cost.Prices    // the calculation sheet: what the quantities cost; nil for no costs
}

// units gives the system of units for a design's report.
func (o Options) units(d *design.Design) quantity.System {
	if o.Units == "" && d != nil && d.Units != "" {
		return d.Units
	}
	if o.Units == "" {
		return quantity.US
	}
	return o.Units
}

// Status gives what the check of the design comes to; Unjudged also for a file
// that could not be read as a design.
func (j *Judged) Status() rulebook.Status {
	if j.Verdict == nil || len(j.Problems) > 0 {
		return rulebook.Unjudged
	}
	return j.Verdict.Status()
}

// localCode ends every report.
const localCode = "The local code, the authority having jurisdiction and licensed professionals decide whether a system may be built. " +
	"These remarks and figures are aids to their work and approve nothing. The edition in force where the work is done may differ from the sources named here: " +
	"ask the authority before digging."
