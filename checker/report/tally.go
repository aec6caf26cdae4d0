package report

import (
	"fmt"

	"greysill/checker/rulebook"
)

// tally counts what a check of one design found.
type tally struct {
	name     string // of the file
	status   rulebook.Status
	problems int
	findings map[kind]int
	rules    map[kind]int // rules that the findings are of
	rulebook.Counts
}

func tallyOf(j *Judged) tally {
	t := tally{name: j.Name, status: j.Status(), problems: len(j.Problems)}
	if j.Verdict == nil {
		return t
	}
	t.findings, t.rules = map[kind]int{}, map[kind]int{}
	for k := held; k <= varied; k++ {
		rs := remarks(j.Verdict, k)
		t.rules[k] = len(rs)
		for _, r := range rs {
			t.findings[k] += len(r.findings)
		}
	}
	t.Counts = j.Verdict.Counts()
	return t
}

// Line gives what a check of one design came to, in one line: the file, the
// outcome and the counts.
func Line(j *Judged) string {
	t := tallyOf(j)
	return t.name + ": " + t.said()
}

// verb gives a count with the words that fit one or several.
func verb(n int, one, several string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, several)
}

// plural gives a count with its noun: "1 rule", "3 rules".
func plural(n int, noun string) string { return verb(n, noun, noun+"s") }
