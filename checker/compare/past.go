// Package compare holds what a check found against what an earlier one had found,
// by rule and subject and never by line, so that a repository with known faults can
// refuse new ones.
package compare

import (
	"encoding/json"
	"slices"
	"strings"

	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// formats are the values of the format entry of the files that Read reads: whole
// reports, and what is known to be wrong alone.
var formats = []string{"greysill-report/1", "greysill-known/1"}

// Past is what an earlier JSON report says of each design, by its file.
type Past struct {
	Name    string // of the report's file
	designs map[string][]Then
}

// Then is a finding of an earlier report.
type Then struct {
	Rule, Subject string
	Status        rulebook.Status
	Allowed       bool               // by a variance
	Margins       map[string]float64 // by the measured figure, in SI units
}

// pastReport is what Read needs of a report; schema/known.schema.json describes it,
// and schema/report.schema.json a whole one.
type pastReport struct {
	Format  string `json:"format"`
	Designs []struct {
		File     string `json:"file"`
		Findings []struct {
			Rule     string          `json:"rule"`
			Status   rulebook.Status `json:"status"`
			Subject  struct{ Name string }
			Measured []struct {
				Figure string
				Margin *float64
			}
			Variance *struct{} `json:"variance"`
		}
	}
}

// Read reads what an earlier run wrote: known faults, or a whole JSON report. The
// problems say why it is neither.
func Read(name string, text []byte) (*Past, source.Problems) {
	if _, problems := source.Parse(name, text); len(problems) > 0 {
		return nil, problems
	}
	var report pastReport
	if err := json.Unmarshal(text, &report); err != nil || !slices.Contains(formats, report.Format) {
		return nil, source.Problems{{
			Position: source.Position{File: name, Line: 1, Column: 1}, Found: "neither known faults nor a report (format " + strings.Join(formats, ", ") + ")",
			Expected: "a file that greysill review --report known=FILE or --report json=FILE wrote",
		}}
	}
	p := &Past{Name: name, designs: map[string][]Then{}}
	for _, d := range report.Designs {
		then := []Then{}
		for _, f := range d.Findings {
			t := Then{Rule: f.Rule, Subject: f.Subject.Name, Status: f.Status, Allowed: f.Variance != nil, Margins: map[string]float64{}}
			for _, m := range f.Measured {
				if m.Margin != nil {
					t.Margins[m.Figure] = *m.Margin
				}
			}
			then = append(then, t)
		}
		p.designs[d.File] = then
	}
	return p, nil
}
