package rulebook

import (
	"fmt"
	"maps"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// For every measure of every rule of the base that has a limit: moving the figure
// toward safety never turns a pass into a finding, and moving it away never a
// finding into a pass. Where the figure is bounded on both sides, it moves up to
// the other limit.
func TestMovingTowardSafetyNeverFails(t *testing.T) {
	b := baseBook(t)
	for i, r := range b.rules {
		for k := range r.Measures {
			m := &r.Measures[k]
			if m.Limit == "" {
				continue
			}
			t.Run(fmt.Sprintf("%s, %s %s %s", r.ID, m.Field.Name, m.Bound, m.Limit), func(t *testing.T) {
				s := newSafety(t, b, i, m)
				rapid.Check(t, s.holds)
				require.NotZero(t, s.crossed, "the limit has told no two subjects apart")
			})
		}
	}
}

// safety draws subjects of one rule and moves them by one measure.
type safety struct {
	*grid
	measure *Measure
	values  map[string][]any // of each field that the rule reads
	far     float64          // the least safe value that is drawn
	near    float64          // the safest
	crossed int              // subjects that a move has turned from a finding into a pass
}

func newSafety(t *testing.T, b *Book, index int, m *Measure) *safety {
	s := &safety{grid: &grid{ctx: t.Context(), book: b, rule: b.rules[index], index: index}, measure: m, values: map[string][]any{}}
	for _, name := range s.rule.reads {
		s.values[name] = s.candidates(fieldOf(s.rule.Subjects, name))
	}
	limit, _ := b.Limit(m.Limit)
	span := max(math.Abs(limit.Value), 1e-9)
	s.far, s.near = limit.Value-span, limit.Value+span
	if m.Bound == AtMost {
		s.far, s.near = s.near, s.far
	}
	for _, other := range s.rule.Measures {
		if opposite, bounded := b.Limit(other.Limit); bounded && other.Field == m.Field && other.Bound != m.Bound && maps.Equal(other.Where, m.Where) {
			s.near = opposite.Value
		}
	}
	return s
}

// holds judges some subjects drawn at random, each at two distances from safety.
func (s *safety) holds(t *rapid.T) {
	const subjects = 10
	points, farther, nearer := make([]map[string]any, 0, 2*subjects), make([]string, subjects), make([]string, subjects)
	for i := range subjects {
		p := s.draw(t)
		a, b := s.place(t), s.place(t)
		if (a > b) == (s.measure.Bound == AtLeast) {
			a, b = b, a
		}
		points = append(points, with(p, s.measure.Field.Name, a), with(p, s.measure.Field.Name, b))
		farther[i], nearer[i] = key(points[2*i]), key(points[2*i+1])
	}
	stand := s.standings(t, points)
	for i := range subjects {
		near, far := stand[nearer[i]], stand[farther[i]]
		require.False(t, near == found && far == passes, "%s is a finding, though %s passes", nearer[i], farther[i])
		if near == passes && far != passes {
			s.crossed++
		}
	}
}

// draw gives a subject of which every figure is known that the rule reads.
func (s *safety) draw(t *rapid.T) map[string]any {
	p := map[string]any{}
	for _, name := range s.rule.reads {
		p[name] = rapid.SampledFrom(s.values[name]).Draw(t, name)
	}
	for name, word := range s.measure.Where {
		p[name] = word
	}
	return p
}

// place gives a value of the figure: at the limit, or anywhere.
func (s *safety) place(t *rapid.T) float64 {
	if rapid.IntRange(0, 3).Draw(t, "at the limit") == 0 {
		limit, _ := s.book.Limit(s.measure.Limit)
		return limit.Value
	}
	return rapid.Float64Range(min(s.far, s.near), max(s.far, s.near)).Draw(t, s.measure.Field.Name)
}

// standing is how a rule stands with a subject. One that it excuses neither passes
// nor is a finding: another rule has its say there.
type standing int

const (
	found standing = iota
	excused
	passes
)

// standings judges points as a design is judged.
func (s *safety) standings(t *rapid.T, points []map[string]any) map[string]standing {
	f := figuresOf()
	group, seen := &f.Lists[listIndex(s.rule.Subjects.Name)], map[string]bool{}
	for _, p := range points {
		if !seen[key(p)] {
			seen[key(p)] = true
			group.Items = append(group.Items, pointItem(s.rule.Subjects, p))
		}
	}
	own := &Book{rules: []*Rule{s.rule}, queries: s.book.queries[s.index : s.index+1], limits: s.book.limits, deadline: s.book.deadline, patience: s.book.patience}
	v := own.Judge(t.Context(), f, day)
	require.Empty(t, v.Broken)
	stand := map[string]standing{}
	for _, finding := range v.Findings {
		if finding.Status == Pass {
			stand[finding.Item.Subject.Name] = passes
		}
	}
	for _, e := range v.Excused {
		stand[e.Item.Subject.Name] = excused
	}
	return stand
}
