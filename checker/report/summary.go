package report

import (
	"fmt"
	"strings"

	"greysill/checker/rulebook"
)

// between parts the reports on two designs.
func (l *letter) between() {
	l.blank()
	l.blank()
	l.put(0, ink, strings.Repeat("-", l.width))
	l.blank()
}

// problems lists what kept a file from being judged, each with its place.
func (l *letter) problems() {
	l.blank()
	l.put(0, red, "This file could not be read as a design, so it was not judged.")
	for _, p := range l.judged.Problems {
		l.blank()
		l.put(1, bold, p.Position.String())
		l.put(2, ink, sentence(p.Sentence()))
		if caret := strings.Split(p.Caret, "\n"); p.Caret != "" && l.fits(2, caret) {
			l.blank()
			for _, line := range caret {
				l.verbatim(2, line)
			}
		}
	}
}

// summary lists every file of a run, worst first, when there are several.
func (p *page) summary(tallies []tally, skipped []string) {
	if len(tallies) > 1 {
		p.heading("All designs, worst first")
		for _, status := range worstFirst {
			for i := range tallies {
				if t := &tallies[i]; t.status == status {
					p.put(0, ink, t.name)
					p.hang(1, ink, t.said())
				}
			}
		}
	}
	if len(skipped) > 0 {
		p.heading("Skipped, since they are no greywater designs")
		for _, name := range skipped {
			p.put(0, ink, name)
		}
	}
}

// said gives what a check came to and its counts in one line.
func (t *tally) said() string { return statusWords[t.status] + ": " + t.words() + "." }

var worstFirst = []rulebook.Status{rulebook.Unjudged, rulebook.Fail, rulebook.Warn, rulebook.Pass}

var statusWords = map[rulebook.Status]string{
	rulebook.Unjudged: "Not judged", rulebook.Fail: "Fails", rulebook.Warn: "Passes with warnings", rulebook.Pass: "Passes",
}

// words counts what was found, leaving out what there is none of.
func (t *tally) words() string {
	if t.problems > 0 {
		return plural(t.problems, "problem") + " with the file"
	}
	var said []string
	for _, c := range []struct {
		count int
		words string
	}{
		{t.Broken, plural(t.Broken, "rule") + " not judged"},
		{t.Fail, plural(t.Fail, "failure")},
		{t.Warn + t.Remarks, plural(t.Warn+t.Remarks, "warning")},
		{t.NotShown, fmt.Sprintf("%d of these not shown on the design", t.NotShown)},
		{t.Varied, plural(t.Varied, "departure") + " allowed"},
		{t.Pass, plural(t.Pass, "passing finding")},
	} {
		if c.count > 0 {
			said = append(said, c.words)
		}
	}
	return strings.Join(said, ", ")
}
