package report

import (
	"regexp"
	"strings"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
)

var blanks = regexp.MustCompile(`\{[a-z_]+\}`)

// remedy words what to do about a finding: the rule's remedy with its blanks
// filled in.
func (s speaker) remedy(f *rulebook.Finding) string {
	return blanks.ReplaceAllStringFunc(f.Rule.Remedy, func(blank string) string {
		return s.fill(f, strings.Trim(blank, "{}"))
	})
}

// sharedRemedy gives the remedy when it reads the same for every one of
// several subjects, else "".
func (s speaker) sharedRemedy(r remark) string {
	if len(r.findings) < 2 {
		return ""
	}
	first := s.remedy(r.findings[0])
	for _, f := range r.findings[1:] {
		if s.remedy(f) != first {
			return ""
		}
	}
	return first
}

// fill gives the words for one blank of a remedy.
func (s speaker) fill(f *rulebook.Finding, name string) string {
	switch name {
	case "subject":
		return f.Item.Subject.Name
	case "limit":
		return s.limitMissed(f)
	case "short":
		return s.shortfall(f)
	}
	if m := heldAgainst(f, name); m != nil {
		return together(measureUnit(m, s.units).Format(m.Value.Number))
	}
	if text, ok := s.named(f.Item, name); ok {
		return text
	}
	ids := f.Item.Subject.IDs
	switch {
	case name == "part" && len(ids) > 0:
		return ids[0]
	case name == "feature" && len(ids) > 1:
		return ids[1]
	}
	return "the " + strings.ReplaceAll(name, "_", " ")
}

// unfilled words a remedy of no finding in particular, its blanks in brackets.
func unfilled(remedy string) string {
	return blanks.ReplaceAllStringFunc(remedy, func(blank string) string {
		name := strings.Trim(blank, "{}")
		if name == "short" {
			name = "shortfall"
		}
		return "[" + strings.ReplaceAll(name, "_", nbsp) + "]"
	})
}

// named gives a figure of the subject in words.
func (s speaker) named(it *figures.Item, field string) (string, bool) {
	for i, f := range it.List.Fields {
		if f.Name == field && it.Values[i].Known() {
			return s.value(f, &it.Values[i]), true
		}
	}
	return "", false
}

// heldAgainst gives the measure of a field that a limit stands against, nil when
// none does.
func heldAgainst(f *rulebook.Finding, field string) *rulebook.Measured {
	for i := range f.Measured {
		if m := &f.Measured[i]; m.Limit != nil && m.Measure.Field.Name == field {
			return m
		}
	}
	return nil
}

// missed gives the measure that misses its limit by the most, nil when none
// does.
func missed(f *rulebook.Finding) *rulebook.Measured {
	for i := range f.Measured {
		if m := &f.Measured[i]; m.Limit != nil && m.Margin < 0 {
			return m
		}
	}
	return nil
}

func (s speaker) limitMissed(f *rulebook.Finding) string {
	m := missed(f)
	if m == nil {
		return "what the rule wants"
	}
	return together(measureUnit(m, s.units).Format(m.Limit.Value))
}

// shortfall words how much is missing, rounded up so that doing what the remedy
// says is enough.
func (s speaker) shortfall(f *rulebook.Finding) string {
	m := missed(f)
	if m == nil {
		return "as much as the rule wants"
	}
	return together(roundedUp(-m.Margin, m.Measure.Field.Dimension, measureUnit(m, s.units)))
}

// roundedUp shows a difference, and the next greater one that the unit can show
// where rounding would make it less. Temperatures are rounded as usual, since a
// difference of them does not read back as one.
func roundedUp(amount float64, d quantity.Dimension, unit quantity.Unit) string {
	shown := func(v float64) (string, float64) {
		text := unit.FormatDifference(v)
		back, err := quantity.Parse(text, d)
		if err != nil || d == quantity.Temperature {
			return text, amount
		}
		return text, back.Value
	}
	text, value := shown(amount)
	for more := amount - value; amount-value > amount*1e-9; more *= 2 {
		text, value = shown(amount + more)
	}
	return text
}
