package rulebook

import (
	"cmp"
	"math"
	"slices"

	"greysill/checker/figures"
)

// measured takes the measures that count for the item and are known, the one
// with the least margin in proportion to its limit first.
func (j *judgement) measured(item *figures.Item) []Measured {
	var all []Measured
	for i := range j.rule.Measures {
		m := &j.rule.Measures[i]
		value := item.Value(m.Field.Name)
		if !value.Known() || !m.counts(item) {
			continue
		}
		taken := Measured{Measure: m, Value: value}
		if m.Limit != "" {
			taken.Limit, _ = j.book.Limit(m.Limit)
			taken.Margin = m.margin(value.Number, taken.Limit.Value)
		}
		all = append(all, taken)
	}
	slices.SortStableFunc(all, func(a, b Measured) int { return cmp.Compare(a.relative(), b.relative()) })
	return all
}

// counts reports whether the item has the words that the measure is for.
func (m *Measure) counts(item *figures.Item) bool {
	for name, word := range m.Where {
		if value := item.Value(name); !value.Known() || value.Text != word {
			return false
		}
	}
	return true
}

// margin gives how far the value lies on the right side of the limit, worked out
// from the figures as the rule sees them, so that both agree at the limit.
func (m *Measure) margin(value, limit float64) float64 {
	if m.Bound == AtMost {
		return rounded(limit - rounded(value))
	}
	return rounded(rounded(value) - limit)
}

// relative gives the margin in proportion to the value or the limit, whichever
// is greater; measures without a limit come last.
func (m *Measured) relative() float64 {
	if m.Limit == nil {
		return 2 // no margin is more than twice the greater of the two
	}
	scale := max(math.Abs(rounded(m.Value.Number)), math.Abs(m.Limit.Value))
	if scale == 0 {
		return 0
	}
	return m.Margin / scale
}
