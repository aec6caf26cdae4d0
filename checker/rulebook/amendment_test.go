package rulebook

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

const ordinance = `{"title": "Harrow County Greywater Ordinance (2021)", "place": "Table 4", "standing": "published"}`

func amended(t *testing.T, entries string, files map[string]string) *Book {
	t.Helper()
	return load(t, wellLayer(), amending(entries, files))
}

func amending(entries string, files map[string]string) Layer {
	all := map[string]string{"amendment.json": amendmentOf("Harrow County", entries)}
	for name, text := range files {
		all[name] = text
	}
	return layer("county", all)
}

func TestAmendmentSaysWhoItIs(t *testing.T) {
	b := amended(t, `, "region": "US-ZZ", "about": "Wells.", "not_covered": [{"topic": "frost", "why": "no number was found"}]`, nil)
	require.Len(t, b.Amendments(), 1)
	a := b.Amendments()[0]
	require.Equal(t, []string{"Harrow County", "US-ZZ", "2021", "2026-05-31", "Wells."}, []string{a.Name, a.Region, a.Edition, a.Checked, a.About})
	require.Equal(t, []*Gap{{"frost", "no number was found"}}, a.NotCovered)
}

// A limit of an amendment need only say its value and where it comes from.
func TestAmendmentChangesALimit(t *testing.T) {
	b := amended(t, "", map[string]string{"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "75 ft", "source": ` + ordinance + `}}}`})
	l, ok := b.Limit("from_field")
	require.True(t, ok)
	require.Equal(t, "Harrow County", l.SetBy)
	require.Equal(t, "75 ft", l.Text)
	require.Equal(t, "Least distance from a well to a field.", l.Meaning)
	require.Equal(t, "Table 4", l.Source.Place)
	require.Equal(t, BaseName, l.Replaced.SetBy)
	require.Equal(t, []string{"from_field"}, b.Amendments()[0].Limits)
}

func TestAmendmentChangesALevel(t *testing.T) {
	b := amended(t, `, "levels": [{"rule": "clearances/well", "level": "warn", "reason": "R.", "source": `+ordinance+`}]`, nil)
	r, _ := b.Rule("clearances/well")
	require.Equal(t, LevelWarn, r.Level)
	require.Equal(t, LevelWarn, r.NotShown)
	require.Len(t, r.Changes, 1)
	require.Equal(t, []Level{LevelFail, LevelWarn}, []Level{r.Changes[0].OldLevel, r.Changes[0].Level})
	require.Equal(t, "Harrow County", r.Changes[0].SetBy)
	v := b.Judge(t.Context(), figuresOf(near("bed-1", "field", 1)), day)
	require.Equal(t, Warn, v.Findings[0].Status)
}

func TestAmendmentSetsARuleAside(t *testing.T) {
	own := ruleText("a.b", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.area > 1\n}\n")
	b := amended(t, `, "set_aside": [{"rule": "clearances/well", "reason": "No wells here.", "source": `+ordinance+`}]`, map[string]string{"a/b.rego": own})
	_, in := b.Rule("clearances/well")
	require.False(t, in)
	require.Len(t, b.SetAside(), 1)
	require.Equal(t, "Harrow County", b.SetAside()[0].SetBy)
	require.Equal(t, "No wells here.", b.SetAside()[0].Reason)
	require.Equal(t, figures.Published, b.SetAside()[0].Source.Standing)
}

// The later of two amendments has the last word, and the book keeps what each
// changed.
func TestAmendmentUponAmendment(t *testing.T) {
	region := layer("US-ZZ", map[string]string{"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "200 ft", "source": ` + ordinance + `}}}`})
	local := amending("", map[string]string{"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "75 ft", "source": ` + ordinance + `}}}`})
	l, _ := load(t, wellLayer(), region, local).Limit("from_field")
	require.Equal(t, []string{"75 ft", "200 ft", "100 ft"}, []string{l.Text, l.Replaced.Text, l.Replaced.Replaced.Text})
}

// Whatever is wrong with an amendment is refused with its place and the nearest
// name; nothing is passed over.
func TestRefusedAmendments(t *testing.T) {
	lax := ruleText("clearances.well", "clearances.well", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\tc.works == \"pipe\"\n}\n")
	limit := func(entries string) map[string]string {
		return map[string]string{"limits.json": `{"format": "greysill-limits/1", "limits": {` + entries + `}}`}
	}
	for _, c := range []struct {
		note, entries string
		files         map[string]string
		said          string
	}{
		{"misspelt entry", `, "levls": []`, nil, `amendment.json:1:149: there is no entry "levls" here; expected one of about, authority, checked, edition, format, levels, name, not_covered, region, replaced, set_aside; did you mean "levels"?`},
		{"region", `, "region": "Utah"`, nil, `"Utah" is no region; expected a code of ISO 3166-2 such as US-UT`},
		{"level of an unknown rule", `, "levels": [{"rule": "clearances/wel", "level": "warn", "reason": "R.", "source": ` + ordinance + `}]`, nil, `there is no rule "clearances/wel"; expected one of clearances/well; did you mean "clearances/well"?`},
		{"no such level", `, "levels": [{"rule": "clearances/well", "level": "wann", "reason": "R.", "source": ` + ordinance + `}]`, nil, `there is no level "wann"; expected one of fail, warn; did you mean "warn"?`},
		{"a level that is so already", `, "levels": [{"rule": "clearances/well", "level": "fail", "reason": "R.", "source": ` + ordinance + `}]`, nil, "this changes nothing"},
		{"a level without either", `, "levels": [{"rule": "clearances/well", "reason": "R.", "source": ` + ordinance + `}]`, nil, "neither level nor not_shown is changed"},
		{"a level without a reason", `, "levels": [{"rule": "clearances/well", "level": "warn", "source": ` + ordinance + `}]`, nil, `the entry "reason" is missing`},
		{"a level without a source", `, "levels": [{"rule": "clearances/well", "level": "warn", "reason": "R."}]`, nil, `the entry "source" is missing`},
		{"set aside an unknown rule", `, "set_aside": [{"rule": "clearances/wells", "reason": "R.", "source": ` + ordinance + `}]`, nil, `there is no rule "clearances/wells"; expected one of clearances/well; did you mean "clearances/well"?`},
		{"set aside twice", `, "set_aside": [{"rule": "clearances/well", "reason": "R.", "source": ` + ordinance + `}, {"rule": "clearances/well", "reason": "R.", "source": ` + ordinance + `}]`, nil, `the rule "clearances/well" is set aside already by Harrow County; take it out here`},
		{"set aside without a reason", `, "set_aside": [{"rule": "clearances/well", "source": ` + ordinance + `}]`, nil, `the entry "reason" is missing`},
		{"replaced in silence", "", map[string]string{"clearances/well.rego": lax}, "this rule would replace the one base has, without saying so"},
		{"replaced what is not its own", `, "replaced": [{"rule": "clearances/well", "reason": "R."}]`, nil, `there is no rule of this amendment "clearances/well"`},
		{"replaced what was not there", `, "replaced": [{"rule": "a/b", "reason": "R."}]`, map[string]string{"a/b.rego": strings.ReplaceAll(lax, "clearances.well\n", "a.b\n")}, `there is no rule "a/b" below this amendment to replace`},
		{"misspelt limit", "", limit(`"from_feild": {"value": "75 ft", "dimension": "length", "meaning": "M.", "source": ` + ordinance + `}`), `limits.json:1:44: no rule compares with a limit "from_feild"; expected one of from_field, from_tank; did you mean "from_field"?`},
		{"unit", "", limit(`"from_field": {"value": "75 gal", "source": ` + ordinance + `}`), `"75 gal" is a volume`},
		{"bare number", "", limit(`"from_field": {"value": 75, "source": ` + ordinance + `}`), "this is neither text nor a list nor names and values"},
		{"limit without a source", "", limit(`"from_field": {"value": "75 ft"}`), `the entry "source" is missing`},
		{"a limit of another dimension", "", limit(`"from_field": {"value": "75 ft2", "dimension": "area", "source": ` + ordinance + `}`), "the limit is of dimension area; expected length, as the limit that it replaces"},
		{"weaker caution", "", map[string]string{"cautions.json": `{"cautions": {"germs": "Never mind."}}`}, `the caution "germs" is there already; its words stay`},
	} {
		t.Run(c.note, func(t *testing.T) {
			require.Contains(t, refused(t, wellLayer(), amending(c.entries, c.files)).Error(), c.said)
		})
	}
}

func TestAmendmentWithoutAnAmendmentFile(t *testing.T) {
	l := layer("county", nil)
	l.FS = wellLayer().FS
	require.Contains(t, refused(t, wellLayer(), l).Error(), "county: holds no amendment.json; expected a file that says whose rules these are")
	wrongDate := strings.Replace(amendmentOf("Harrow County", ""), "2026-05-31", "31 May", 1)
	require.Contains(t, refused(t, wellLayer(), layer("county", map[string]string{"amendment.json": wrongDate})).Error(), `"31 May" is no date`)
	require.Contains(t, refused(t, wellLayer(), layer("county", map[string]string{"amendment.json": "{"})).Error(), "county/amendment.json:1:")
}
