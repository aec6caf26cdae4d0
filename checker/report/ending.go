package report

import (
	"slices"
	"strconv"
	"strings"

	"greysill/checker/rulebook"
)

// opening says in a few plain sentences how the design stands.
func (l *letter) opening(t tally) {
	var said []string
	if t.rules[failed] > 0 {
		said = append(said, plural(t.rules[failed], "rule")+" failed, in "+plural(t.findings[failed], "place")+".")
	} else {
		said = append(said, "Nothing that is drawn fails a rule.")
	}
	if t.rules[warned] > 0 {
		said = append(said, plural(t.rules[warned], "rule")+" gave a warning, in "+plural(t.findings[warned], "place")+".")
	}
	if t.rules[notShown] > 0 {
		said = append(said, "For "+plural(t.rules[notShown], "rule")+" the design does not show enough; "+counting(remarks(l.judged.Verdict, notShown))+".")
	}
	if t.rules[varied] > 0 {
		said = append(said, "An authority has allowed "+plural(t.findings[varied], "departure")+".")
	}
	if t.Remarks > 0 {
		said = append(said, plural(t.Remarks, "variance")+" on the design does not count.")
	}
	if t.Broken > 0 {
		said = append(said, plural(t.Broken, "rule")+" could not be judged, so the check is not complete.")
	}
	if t.Fail == 0 {
		said = append(said, "This is not an approval; see the note at the end.")
	}
	l.blank()
	l.put(0, ink, strings.Join(said, " "))
}

// counting says how many of the rules that were not shown count as failed.
func counting(rs []remark) string {
	fails := 0
	for _, r := range rs {
		if slices.ContainsFunc(r.findings, func(f *rulebook.Finding) bool { return f.Status == rulebook.Fail }) {
			fails++
		}
	}
	switch fails {
	case 0:
		return "that counts as a warning"
	case len(rs):
		return "that counts as a failure"
	}
	return "for " + strconv.Itoa(fails) + " of them that counts as a failure, else as a warning"
}

// ending counts what held and gives the cautions and the local-code note.
func (l *letter) ending(t tally) {
	l.heading("What holds")
	l.held(t)
	if l.judged.Book != nil {
		l.amendments(l.judged.Book, false)
	}
	if cautions := l.judged.cautions(); len(cautions) > 0 {
		l.heading("Take care")
		for i, c := range cautions {
			if i > 0 {
				l.blank()
			}
			l.put(0, ink, c)
		}
	}
	l.heading("Who decides")
	l.put(0, ink, localCode)
}

// held says in one line what passes and what does not apply, and names the
// latter.
func (l *letter) held(t tally) {
	whole := 0
	for _, r := range remarks(l.judged.Verdict, held) {
		if !slices.ContainsFunc(l.judged.Verdict.Findings, func(f rulebook.Finding) bool { return f.Rule == r.rule && kindOf(&f) != held }) {
			whole++
		}
	}
	said := verb(whole, "rule holds wherever it applies", "rules hold wherever they apply") + "; " + verb(t.Pass, "check passes", "checks pass") + " in all"
	if t.Excused > 0 {
		said += ", and " + verb(t.Excused, "is excused, since the rule does not concern it", "are excused, since the rule does not concern them")
	}
	if t.NotApplicable > 0 {
		said += "; " + verb(t.NotApplicable, "rule does not apply", "rules do not apply") + " to this design"
	}
	l.put(0, ink, said+".")
	if t.NotApplicable > 0 {
		var ids []string
		for _, r := range l.judged.Verdict.NotApplicable {
			ids = append(ids, r.ID)
		}
		l.hang(0, ink, "Not applicable: "+strings.Join(ids, ", "))
	}
}

// cautions gives the cautions of the rules that had subjects, each once.
func (j *Judged) cautions() []string {
	if j.Verdict == nil || j.Book == nil {
		return nil
	}
	var keys []string
	for _, f := range j.Verdict.Findings {
		keys = append(keys, f.Rule.Caution)
	}
	for _, e := range j.Verdict.Excused {
		keys = append(keys, e.Rule.Caution)
	}
	slices.Sort(keys)
	var cautions []string
	for _, key := range slices.Compact(keys) {
		if text, ok := j.Book.Caution(key); ok {
			cautions = append(cautions, text)
		}
	}
	return cautions
}
