package rulebook

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
)

func withVariances(variances ...design.Variance) *figures.Figures {
	f := figuresOf(near("bed-1 and well-1", "field", 10), near("bed-2 and well-1", "field", 99))
	f.Design = &design.Design{
		Parts:     []design.Part{{ID: "bed-1"}, {ID: "bed-2"}},
		Site:      design.Site{Features: []design.Feature{{ID: "well-1"}}, Services: []design.Service{{ID: "gas-1"}}},
		Variances: variances,
	}
	return f
}

func TestVariances(t *testing.T) {
	b := load(t, wellLayer())
	live := design.Variance{Rule: "clearances/well", Part: "bed-1", Expires: "2026-06-01"}
	for _, c := range []struct {
		note   string
		change func(*design.Variance)
		status Status
		found  string
		remedy string
	}{
		{"in force on its last day", func(*design.Variance) {}, Pass, "", ""},
		{"by the feature", func(v *design.Variance) { v.Part = "well-1" }, Fail, `the variance names "well-1", which is a feature; a variance is for a part or a source`, "the first that it names"},
		{"by a service", func(v *design.Variance) { v.Part = "gas-1" }, Fail, `the variance names "gas-1", which is a service; a variance is for a part or a source`, "the first that it names"},
		{"by no part", func(v *design.Variance) { v.Part = "" }, Fail, "the variance does not say which part or source it is for", "name it in the entry part"},
		{"expired", func(v *design.Variance) { v.Expires = "2026-05-31" }, Fail, "the variance expired on 2026-05-31 and does not count", ""},
		{"no date", func(v *design.Variance) { v.Expires = "" }, Fail, "the variance does not say when it expires", ""},
		{"unknown rule", func(v *design.Variance) { v.Rule = "clearances/wel" }, Fail, `the variance names the rule "clearances/wel", which is not in force`, `did you mean "clearances/well"?`},
		{"unknown part", func(v *design.Variance) { v.Part = "bed-9" }, Fail, `the variance names "bed-9", which is not drawn`, `did you mean "bed-1"?`},
		{"nothing to cover", func(v *design.Variance) { v.Part = "bed-2" }, Fail, "the variance covers no finding", "take it out of the design"},
	} {
		t.Run(c.note, func(t *testing.T) {
			variance := live
			c.change(&variance)
			v := b.Judge(t.Context(), withVariances(variance), day)
			require.Equal(t, c.status, v.Status())
			require.Equal(t, Fail, v.Findings[0].Status, "a varied finding still shows")
			require.Equal(t, c.found == "", v.Findings[0].Variance != nil)
			require.Nil(t, v.Findings[1].Variance, "a pass needs no variance")
			if c.found == "" {
				require.Empty(t, v.Variances)
				require.Equal(t, Counts{Pass: 1, Varied: 1}, v.Counts())
				return
			}
			require.Len(t, v.Variances, 1)
			require.Equal(t, "/variances/0", v.Variances[0].Pointer)
			require.Equal(t, c.found, v.Variances[0].Found)
			require.Contains(t, v.Variances[0].Remedy, c.remedy)
		})
	}
}

func TestVarianceOfTheSystemAsAWhole(t *testing.T) {
	b := load(t, layer(BaseName, map[string]string{"flow/tier.rego": ruleText("flow.tier", "system", "proved contains s.subject if {\n\tsome s in input.system\n\ts.region == \"US-OR\"\n}\n")}))
	for _, c := range []struct{ part, found string }{
		{"", ""},
		{"bed-1", `the variance is for "bed-1", but flow/tier is about the system as a whole`},
		{"well-1", `the variance is for "well-1", but flow/tier is about the system as a whole`},
	} {
		system := item("system", "the system", map[string]any{"region": "US-UT"})
		system.Subject.IDs = nil
		f := figuresOf(system)
		f.Design = &design.Design{
			Parts:     []design.Part{{ID: "bed-1"}},
			Site:      design.Site{Features: []design.Feature{{ID: "well-1"}}},
			Variances: []design.Variance{{Rule: "flow/tier", Part: c.part, Expires: "2027-01-01"}},
		}
		v := b.Judge(t.Context(), f, day)
		require.Equal(t, c.found == "", v.Findings[0].Variance != nil)
		if c.found == "" {
			require.Empty(t, v.Variances)
			continue
		}
		require.Equal(t, c.found, v.Variances[0].Found)
		require.Equal(t, "leave the entry part out", v.Variances[0].Remedy)
	}
}

func TestUnusedVarianceIsAWarning(t *testing.T) {
	f := withVariances(design.Variance{Rule: "clearances/well", Part: "bed-2", Expires: "2027-01-01"})
	f.Lists[listIndex("clearances.well")].Items = f.List("clearances.well")[1:]
	require.Equal(t, Warn, load(t, wellLayer()).Judge(t.Context(), f, day).Status())
}

func TestVarianceOfARuleThatCouldNotBeJudged(t *testing.T) {
	b := load(t, layer(BaseName, map[string]string{"clearances/well.rego": ruleText("clearances.well", "clearances.well", "proved contains \"x\" if true\n")}))
	v := b.Judge(t.Context(), withVariances(design.Variance{Rule: "clearances/well", Part: "bed-1", Expires: "2027-01-01"}), day)
	require.Len(t, v.Broken, 1)
	require.Empty(t, v.Variances, "nobody knows what it would have covered")
}

func TestAsOfCountsByTheDay(t *testing.T) {
	late := time.Date(2026, 6, 1, 23, 59, 0, 0, time.UTC)
	f := withVariances(design.Variance{Rule: "clearances/well", Part: "bed-1", Expires: "2026-06-01"})
	require.NotNil(t, load(t, wellLayer()).Judge(t.Context(), f, late).Findings[0].Variance)
}

func listIndex(name string) int {
	for i, l := range figures.Catalogue {
		if l.Name == name {
			return i
		}
	}
	return -1
}
