package rulebook

import (
	"context"
	"fmt"
	"math"
	"slices"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/source"
)

// day is a date to judge by.
var day = time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)

func TestJudge(t *testing.T) {
	b := load(t, wellLayer())
	v := b.Judge(t.Context(), figuresOf(
		near("bed-1 and well-1", "field", 30.479),
		near("tank-1 and well-1", "tank", 20),
		near("pipe-1 and well-1", "pipe", 0),
		item("clearances.well", "bed-2 and well-1", map[string]any{"works": "field"}),
		near("bed-3 and well-1", "field", 30.48), // 100 ft
	), day)
	require.Empty(t, v.Broken)
	require.Len(t, v.Findings, 4)

	short := v.Findings[0]
	require.Equal(t, Fail, short.Status)
	require.Equal(t, "bed-1 and well-1", short.Item.Subject.Name)
	require.Len(t, short.Measured, 1, "the measure for tanks does not count for a field")
	require.Equal(t, "from_field", short.Measured[0].Limit.Name)
	require.InDelta(t, -0.001, short.Measured[0].Margin, 1e-12)
	require.False(t, short.NotShown())

	require.Equal(t, Pass, v.Findings[1].Status)
	require.InDelta(t, 20-50*0.3048, v.Findings[1].Measured[0].Margin, 1e-9)

	dark := v.Findings[2]
	require.Equal(t, Warn, dark.Status)
	require.True(t, dark.NotShown())
	require.Equal(t, []figures.Lack{{Pointer: "/distance", Entry: "distance of bed-2 and well-1"}}, dark.Lacks)
	require.Empty(t, dark.Measured)

	require.Equal(t, Pass, v.Findings[3].Status)
	require.Zero(t, v.Findings[3].Measured[0].Margin)

	require.Len(t, v.Excused, 1)
	require.Equal(t, "a pipe lets nothing out", v.Excused[0].Reason)
	require.Equal(t, Counts{Pass: 2, Warn: 1, Fail: 1, NotShown: 1, Excused: 1}, v.Counts())
	require.Equal(t, Fail, v.Status())
}

// From manyItems on rules are judged side by side; what they find and its order
// stay the same, also when several designs are judged at once.
func TestJudgeSideBySide(t *testing.T) {
	var more []Layer
	for _, name := range []string{"b", "c", "d"} {
		more = append(more, layer("county", map[string]string{"a/" + name + ".rego": ruleText("a."+name, "clearances.well", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\tc.distance > 20\n}\n")}))
	}
	b := load(t, append([]Layer{wellLayer()}, more...)...)
	var items []*figures.Item
	for i := range 2 * manyItems {
		items = append(items, near(fmt.Sprintf("bed-%d", i), []string{"field", "tank", "pipe"}[i%3], float64(i%50)))
	}
	verdicts := make([]*Verdict, 4)
	var wg sync.WaitGroup
	for i := range verdicts {
		wg.Go(func() { verdicts[i] = b.Judge(t.Context(), figuresOf(items...), day) })
	}
	wg.Wait()
	require.Len(t, verdicts[0].Findings, 4*len(items)-len(verdicts[0].Excused))
	require.True(t, slices.IsSortedFunc(verdicts[0].Findings, func(a, b Finding) int { return inOrder(a.Rule.ID, b.Rule.ID) }))
	for _, v := range verdicts[1:] {
		require.Equal(t, statuses(verdicts[0]), statuses(v))
	}
}

func statuses(v *Verdict) []string {
	var all []string
	for _, f := range v.Findings {
		all = append(all, f.Rule.ID+" "+f.Item.Subject.Name+" "+string(f.Status))
	}
	return all
}

func TestFindingsComeInTheOrderOfTheDocument(t *testing.T) {
	doc, problems := source.Parse("design.json", []byte(`{"parts": [{"id": "tank-1"}], "sources": [{"id": "shower"}, {"id": "toilet"}]}`))
	require.Empty(t, problems)
	shower, toilet, tank := near("shower", "field", 1), near("toilet", "field", 99), near("tank-1", "field", 99)
	shower.Subject.Pointers, toilet.Subject.Pointers, tank.Subject.Pointers = []string{"/sources/0"}, []string{"/sources/1"}, []string{"/parts/0"}
	f := figuresOf(toilet, shower, tank)
	f.Design = &design.Design{Document: doc}
	v := load(t, wellLayer()).Judge(t.Context(), f, day)
	require.Equal(t, []string{"clearances/well tank-1 pass", "clearances/well shower fail", "clearances/well toilet pass"}, statuses(v))
	require.Equal(t, source.Position{File: "design.json", Line: 1, Column: 43}, v.Position(v.Findings[1].Item))
}

func TestNotApplicable(t *testing.T) {
	b := load(t, wellLayer())
	for note, f := range map[string]*figures.Figures{
		"no subject":            figuresOf(),
		"every subject excused": figuresOf(near("pipe-1", "pipe", 1)),
	} {
		v := b.Judge(t.Context(), f, day)
		require.Empty(t, v.Findings, note)
		require.Len(t, v.NotApplicable, 1, note)
		require.Equal(t, Pass, v.Status(), note)
		require.Zero(t, v.Counts().Pass, note)
	}
}

// judged judges one item by a rule of its list.
func judged(t *testing.T, list, body string, items ...*figures.Item) *Verdict {
	t.Helper()
	return load(t, layer(BaseName, map[string]string{"a/b.rego": ruleText("a.b", list, body)})).Judge(t.Context(), figuresOf(items...), day)
}

func TestBrokenRules(t *testing.T) {
	pond := item("open_water", "pond-1", map[string]any{"kind": "pond", "water_depth": 0.0})
	for _, c := range []struct{ note, body, words string }{
		{"both proved and excused", "proved contains w.subject if some w in input.open_water\n\nexcused contains {\"subject\": w.subject, \"reason\": \"so\"} if some w in input.open_water\n", `it both proves and excuses "pond-1"`},
		{"a stranger proved", "proved contains \"pond-2\" if some w in input.open_water\n", `it speaks of "pond-2", which is no subject of open_water`},
		{"a stranger excused", "proved contains w.subject if {\n\tsome w in input.open_water\n\tw.kind == \"tank\"\n}\n\nexcused contains {\"subject\": \"pond-2\", \"reason\": \"so\"} if some w in input.open_water\n", `it speaks of "pond-2", which is no subject of open_water`},
		{"no names", "proved contains w if some w in input.open_water\n", "which is not the name of a subject"},
		{"no reason", "proved contains w.subject if {\n\tsome w in input.open_water\n\tw.kind == \"tank\"\n}\n\nexcused contains {\"subject\": w.subject, \"reason\": \"\"} if some w in input.open_water\n", "with some words for the reason"},
		{"excused by name alone", "proved contains w.subject if {\n\tsome w in input.open_water\n\tw.kind == \"tank\"\n}\n\nexcused contains w.subject if some w in input.open_water\n", `excused holds pond-1; expected {"subject": …, "reason": …}`},
		{"an error of a function", "proved contains w.subject if {\n\tsome w in input.open_water\n\t1 / w.water_depth > 1\n}\n", "eval_builtin_error"},
	} {
		t.Run(c.note, func(t *testing.T) {
			v := judged(t, "open_water", c.body, pond)
			require.Len(t, v.Broken, 1)
			require.ErrorContains(t, v.Broken[0].Err, "rule a/b could not be judged: ")
			require.ErrorContains(t, v.Broken[0].Err, c.words)
			require.Empty(t, v.Findings)
			require.Equal(t, Unjudged, v.Status())
		})
	}
}

func TestCheckCalledOff(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	v := load(t, wellLayer()).Judge(ctx, figuresOf(near("bed-1", "field", 99)), day)
	require.Len(t, v.Broken, 1)
	require.EqualError(t, v.Broken[0].Err, "rule clearances/well could not be judged: context canceled")
}

// The rule compares every pair of 3000 distances, far more than its time allows.
func TestDeadlineNamesRuleLimitAndElapsed(t *testing.T) {
	b := load(t, layer(BaseName, map[string]string{
		"a/b.rego": ruleText("a.b", "clearances.well", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\tsome d in input.clearances.well\n\tc.distance + d.distance < -1\n}\n"),
	}))
	b.deadline = 20 * time.Millisecond
	var items []*figures.Item
	for i := range 3000 {
		items = append(items, near(fmt.Sprintf("bed-%d", i), "field", 99))
	}
	v := b.Judge(t.Context(), figuresOf(items...), day)
	require.Len(t, v.Broken, 1)
	require.Regexp(t, `^rule a/b could not be judged: it took longer than the limit of 20ms \(stopped after [\d.]+m?s\)$`, v.Broken[0].Err.Error())
}

func TestKnownFailureIsNotHiddenByWhatIsNotShown(t *testing.T) {
	b := load(t, layer(BaseName, map[string]string{
		"limits.json": `{"format": "greysill-limits/1", "limits": {
			"least": {"value": "18 in", "dimension": "length", "meaning": "M.", "source": {"title": "S", "standing": "published"}},
			"greatest": {"value": "30 in", "dimension": "length", "meaning": "M.", "source": {"title": "S", "standing": "published"}}}}`,
		"bed/depth.rego": `# METADATA
# title: T.
# description: D.
# custom:
#   subjects: beds
#   level: fail
#   measures:
#     - {field: mean_depth}
#     - {field: greatest_depth, bound: at most, limit: greatest}
#     - {field: least_depth, bound: at least, limit: least}
#   remedy: R.
#   sources: [{title: S, standing: published}]
package greysill.bed.depth

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.least_depth >= data.limits.least.value
	b.greatest_depth <= data.limits.greatest.value
}
`,
	}))
	v := b.Judge(t.Context(), figuresOf(
		item("beds", "shallow", map[string]any{"least_depth": 0.3, "mean_depth": 0.5}),
		item("beds", "deep enough as far as shown", map[string]any{"least_depth": 0.5}),
		item("beds", "both", map[string]any{"least_depth": 0.3, "greatest_depth": 3.0, "mean_depth": 1.0}),
	), day)
	require.Equal(t, Fail, v.Findings[0].Status)
	require.False(t, v.Findings[0].NotShown())
	require.Equal(t, Warn, v.Findings[1].Status)
	require.True(t, v.Findings[1].NotShown())

	var fields []string
	for _, m := range v.Findings[2].Measured {
		fields = append(fields, m.Measure.Field.Name)
	}
	require.Equal(t, []string{"greatest_depth", "least_depth", "mean_depth"}, fields, "the worst in proportion first, what has no limit last")
}

func TestRoundedAgreesWithNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64().Draw(t, "v")
		text, err := number(v).Float64()
		require.NoError(t, err)
		require.Equal(t, rounded(v)+0, text+0)
		require.LessOrEqual(t, math.Abs(rounded(v)-v), math.Abs(v)*5e-9+math.SmallestNonzeroFloat64)
	})
}

// Whatever the figures, every subject is in exactly one place, and the margin
// agrees with the status.
func TestNoSubjectIsLost(t *testing.T) {
	b := load(t, wellLayer())
	rapid.Check(t, func(t *rapid.T) {
		var items []*figures.Item
		for i := range rapid.IntRange(0, 20).Draw(t, "items") {
			known := map[string]any{}
			if rapid.Bool().Draw(t, "works known") {
				known["works"] = rapid.SampledFrom([]string{"tank", "field", "pipe", "fitting", "other"}).Draw(t, "works")
			}
			if rapid.Bool().Draw(t, "distance known") {
				known["distance"] = rapid.Float64Range(0, 60).Draw(t, "distance")
			}
			items = append(items, item("clearances.well", string(rune('a'+i)), known))
		}
		v := b.Judge(context.Background(), figuresOf(items...), day)
		require.Empty(t, v.Broken)
		require.Equal(t, len(items), len(v.Findings)+len(v.Excused))
		for _, f := range v.Findings {
			if f.Status == Pass {
				require.Len(t, f.Measured, 1)
			}
			for _, m := range f.Measured {
				require.Equal(t, f.Status == Pass, m.Margin >= 0)
			}
		}
	})
}
