package rulebook

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

// Each test here is a way in which OPA turns a mistake into silence. None may
// ever end in a pass.

// OPA drops "schemas:" annotations of modules that it parses itself. The schema
// here needs none: a rule without a word on schemas is held to it.
func TestTrapAnnotationsDropped(t *testing.T) {
	require.NotContains(t, wellRule, "schemas:")
	problems := refused(t, layer(BaseName, map[string]string{
		"clearances/well.rego": strings.ReplaceAll(wellRule, "c.distance", "c.distanse"), "limits.json": wellLimits, "cautions.json": wellCautions,
	}))
	require.Contains(t, problems.Error(), `base/clearances/well.rego:21:4: there is no "distanse" in c`)
	require.Contains(t, problems.Error(), `did you mean "distance"?`)
}

// "not" over a missing field holds, so a rule that proves by negation would pass
// what the design does not show.
func TestTrapNotOverAMissingField(t *testing.T) {
	body := "proved contains w.subject if {\n\tsome w in input.open_water\n\tnot w.receives_wastewater\n}\n"
	problems := refused(t, layer(BaseName, map[string]string{"a/b.rego": ruleText("a.b", "open_water", body)}))
	require.Contains(t, problems.Error(), "base/a/b.rego:15:2: a rule may not use not")

	stated := strings.Replace(body, "not w.receives_wastewater", "w.receives_wastewater == false", 1)
	v := judged(t, "open_water", stated, item("open_water", "pond-1", nil), item("open_water", "pond-2", map[string]any{"receives_wastewater": false}))
	require.Equal(t, Warn, v.Findings[0].Status)
	require.True(t, v.Findings[0].NotShown())
	require.Equal(t, Pass, v.Findings[1].Status)
}

// A negation inside a function or a set of the rule's own would leak as well.
func TestTrapNegationByDetour(t *testing.T) {
	for note, body := range map[string]string{
		"counting":      "bad contains w.subject if {\n\tsome w in input.open_water\n\tw.receives_wastewater\n}\n\nproved contains w.subject if {\n\tsome w in input.open_water\n\tbad == set()\n}\n",
		"in a function": "dry(w) if not w.receives_wastewater\n\nproved contains w.subject if {\n\tsome w in input.open_water\n\tdry(w)\n}\n",
		"by default":    "default wet(w) := false\n\nwet(w) if w.receives_wastewater\n\nproved contains w.subject if {\n\tsome w in input.open_water\n\twet(w) == false\n}\n",
		"in a sentence": "wet(w) := $\"{w.receives_wastewater}\"\n\nproved contains w.subject if {\n\tsome w in input.open_water\n\twet(w) != \"true\"\n}\n",
	} {
		problems := refused(t, layer(BaseName, map[string]string{"a/b.rego": ruleText("a.b", "open_water", body)}))
		require.Contains(t, problems.Error(), "a rule may not use", note)
	}
}

// A misspelt reference into data is undefined and never an error in OPA.
func TestTrapDanglingReferences(t *testing.T) {
	problems := refused(t, layer(BaseName, map[string]string{
		"clearances/well.rego": strings.ReplaceAll(wellRule, `c.works == "tank"`, `data.greysill.clearances.wel.proved[c.subject]`), "limits.json": wellLimits, "cautions.json": wellCautions,
	}))
	require.Contains(t, problems.Error(), "base/clearances/well.rego:26:2: data.greysill.clearances.wel.proved[c.subject] is nothing that a rule may read")
}

// One query over all rules dies whole when one rule divides by zero.
func TestTrapOneErrorTakesAllDown(t *testing.T) {
	b := load(t, wellLayer(), layer("county", map[string]string{
		"a/b.rego": ruleText("a.b", "clearances.well", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\t1 / (c.distance - c.distance) > 1\n}\n"),
	}))
	v := b.Judge(t.Context(), figuresOf(near("bed-1", "field", 99)), day)
	require.Len(t, v.Broken, 1)
	require.Equal(t, "a/b", v.Broken[0].Rule.ID)
	require.ErrorContains(t, v.Broken[0].Err, "divide by zero")
	require.Len(t, v.Findings, 1)
	require.Equal(t, "clearances/well", v.Findings[0].Rule.ID)
	require.Equal(t, Pass, v.Findings[0].Status)
	require.Equal(t, Unjudged, v.Status())
}

// OPA takes +Inf for a number, and every distance to a well that lies infinitely
// far would pass.
func TestTrapNumbersThatAreNotFinite(t *testing.T) {
	b := load(t, wellLayer(), layer("county", map[string]string{
		"a/b.rego": ruleText("a.b", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.area > 1\n}\n"),
		"a/c.rego": ruleText("a.c", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tsome c in input.clearances.well\n\tc.distance > b.area\n}\n"),
	}))
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		verdict := b.Judge(t.Context(), figuresOf(near("bed-1", "field", v), near("bed-2", "field", 99), item("beds", "bed-1", map[string]any{"area": 9.0})), day)
		require.Len(t, verdict.Broken, 2, "the rule of the list, and the one that reads it besides")
		require.Equal(t, "clearances/well", verdict.Broken[0].Rule.ID)
		require.Equal(t, "a/c", verdict.Broken[1].Rule.ID)
		require.ErrorContains(t, verdict.Broken[0].Err, `distance of "bed-1" is worked out as`)
		require.Len(t, verdict.Findings, 1, "the rule that does not read the list is judged")
		require.Equal(t, "a/b", verdict.Findings[0].Rule.ID)
	}
}

// A condition that meets a missing field leaves its subject out without a word.
// Here the subjects are listed in Go.
func TestTrapConditionThatLosesASubject(t *testing.T) {
	b := load(t, wellLayer())
	v := b.Judge(t.Context(), figuresOf(
		item("clearances.well", "bed-1", map[string]any{"distance": 99.0}), // what it does with greywater is not shown
		near("bed-2", "field", 99),
	), day)
	require.Len(t, v.Findings, 2)
	require.Equal(t, "bed-1", v.Findings[0].Item.Subject.Name)
	require.NotEqual(t, Pass, v.Findings[0].Status)
	require.True(t, v.Findings[0].NotShown())
}

// Two partial rules of one package merge, so that a layer could prove what the
// base does not. A later rule takes the earlier one's place whole, and a package
// lies in one place only.
func TestTrapPartialSetsMerge(t *testing.T) {
	lax := ruleText("clearances.well", "clearances.well", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\tc.works == \"pipe\"\n}\n")
	b := load(t, wellLayer(), layer("county", map[string]string{"clearances/well.rego": lax}))
	v := b.Judge(t.Context(), figuresOf(near("bed-1", "field", 99), near("pipe-1", "pipe", 0)), day)
	require.Equal(t, Fail, v.Findings[0].Status, "what the base would prove is not in force any more")
	require.Equal(t, Pass, v.Findings[1].Status)
	require.Empty(t, v.Excused)

	problems := refused(t, wellLayer(), layer("county", map[string]string{"clearances/more.rego": lax}))
	require.Contains(t, problems.Error(), "county/clearances/more.rego:9:1: the package is greysill.clearances.well")
}

// The body of "every" is not type-checked, and it holds of no items at all.
func TestTrapEvery(t *testing.T) {
	body := "proved contains \"the system\" if {\n\tevery b in input.beds { b.dpeth > 1 }\n}\n"
	problems := refused(t, layer(BaseName, map[string]string{"a/b.rego": ruleText("a.b", "system", body)}))
	require.Contains(t, problems.Error(), "base/a/b.rego:14:2: a rule may not use every")
}

// In OPA every text is greater than every number.
func TestTrapTextComparedWithANumber(t *testing.T) {
	for _, condition := range []string{`"far" > c.distance`, `c.works >= data.limits.from_tank.value`} {
		rule := strings.ReplaceAll(wellRule, "c.distance >= data.limits.from_tank.value", condition)
		problems := refused(t, layer(BaseName, map[string]string{"clearances/well.rego": rule, "limits.json": wellLimits, "cautions.json": wellCautions}))
		require.Contains(t, problems.Error(), "base/clearances/well.rego:27:2: ", condition)
		require.Contains(t, problems.Error(), "invalid argument(s); expected have: (", condition)
	}
}

// Two subjects of one name would be proved together.
func TestTrapTwoSubjectsOfOneName(t *testing.T) {
	v := load(t, wellLayer()).Judge(t.Context(), figuresOf(near("bed-1", "field", 99), near("bed-1", "field", 1)), day)
	require.Len(t, v.Broken, 1)
	require.ErrorContains(t, v.Broken[0].Err, `two items of clearances.well are named "bed-1"`)
	require.Empty(t, v.Findings)
}

// Every list that a rule might read is there, so that none is missing without a
// word; one that was not worked out is not taken for an empty one.
func TestTrapListsThatAreMissing(t *testing.T) {
	input, unfit := Input(figuresOf())
	require.Empty(t, unfit)
	for _, l := range figures.Catalogue {
		require.Contains(t, input.String(), `"`+l.Name[strings.LastIndex(l.Name, ".")+1:]+`": []`)
	}
	v := load(t, wellLayer()).Judge(t.Context(), &figures.Figures{}, day)
	require.Empty(t, v.NotApplicable)
	require.Len(t, v.Broken, 1)
	require.ErrorContains(t, v.Broken[0].Err, "the list clearances.well was not worked out")
}
