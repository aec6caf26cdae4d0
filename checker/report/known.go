package report

import (
	"encoding/json"
	"io"

	"greysill/checker/rulebook"
)

// KnownFormat is the value of the format entry of a file of known faults.
const KnownFormat = "greysill-known/1"

// known is the report of what is wrong and nothing else, for a later run to be held
// against; schema/known.schema.json describes it. It is kept beside the designs and
// is short, so that a change of it can be read.
type known struct {
	w   io.Writer
	log knownLog
}

type knownLog struct {
	Format  string        `json:"format"`
	Designs []knownDesign `json:"designs"`
}

type knownDesign struct {
	File     string         `json:"file"`
	Findings []knownFinding `json:"findings"`
}

type knownFinding struct {
	Rule     string          `json:"rule"`
	Subject  knownSubject    `json:"subject"`
	Status   rulebook.Status `json:"status"`
	Measured []knownMargin   `json:"measured"`
}

type knownSubject struct {
	Name string `json:"name"`
}

type knownMargin struct {
	Figure string  `json:"figure"`
	Margin float64 `json:"margin"`
}

// Design adds what is wrong with one design.
func (k *known) Design(j *Judged) error {
	d := knownDesign{j.Name, []knownFinding{}}
	if j.Verdict != nil {
		for i := range j.Verdict.Findings {
			if f := &j.Verdict.Findings[i]; f.Status != rulebook.Pass && f.Variance == nil {
				d.Findings = append(d.Findings, knownFault(f))
			}
		}
	}
	k.log.Designs = append(k.log.Designs, d)
	return nil
}

func knownFault(f *rulebook.Finding) knownFinding {
	known := knownFinding{f.Rule.ID, knownSubject{f.Item.Subject.Name}, f.Status, []knownMargin{}}
	for i := range f.Measured {
		if m := &f.Measured[i]; m.Limit != nil {
			known.Measured = append(known.Measured, knownMargin{m.Measure.Field.Name, nine(m.Margin)})
		}
	}
	return known
}

// Close writes the file.
func (k *known) Close([]string) error {
	text, err := json.MarshalIndent(k.log, "", "  ")
	if err != nil {
		return err
	}
	_, err = k.w.Write(append(visible(text), '\n'))
	return err
}
