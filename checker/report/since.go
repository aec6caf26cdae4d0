package report

import (
	"fmt"

	"greysill/checker/compare"
	"greysill/checker/rulebook"
)

// since writes how the design stands to an earlier report.
func (l *letter) since(c *compare.Comparison) {
	if c == nil {
		return
	}
	l.heading("Since the report " + c.With)
	if !c.Known {
		l.put(0, ink, "That report does not have this design, so that everything is new.")
	}
	l.put(0, ink, sinceWords(c))
	for _, f := range c.Appeared {
		l.hang(0, red, "New: "+namedFinding(f.Rule.ID, f.Item.Subject.Name)+" "+consequence(rulebook.Level(f.Status))+".")
	}
	for _, change := range c.Worse {
		l.hang(0, ink, "Worse: "+l.change(change))
	}
	for _, change := range c.Better {
		l.hang(0, ink, "Better: "+l.change(change))
	}
	for _, t := range c.Gone {
		l.hang(0, ink, "Gone: "+namedFinding(t.Rule, t.Subject)+".")
	}
}

// sinceWords counts what has changed.
func sinceWords(c *compare.Comparison) string {
	return fmt.Sprintf("%d new, %d gone, %d worse, %d better, %d as before.", len(c.Appeared), len(c.Gone), len(c.Worse), len(c.Better), c.Same)
}

func namedFinding(rule, subject string) string { return rule + ", " + subject }

// change words how a margin was and is.
func (s speaker) change(c compare.Change) string {
	unit := measureUnit(c.Measured, s.units)
	was := *c.Measured
	was.Margin = c.Before
	return namedFinding(c.Finding.Rule.ID, c.Finding.Item.Subject.Name) + ": " + label(c.Measured.Measure.Field) + " " + margin(&was, unit) + " before, " + margin(c.Measured, unit) + " now."
}
