package rulebook

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/quantity"
)

func TestLoad(t *testing.T) {
	b := load(t, wellLayer())
	require.Len(t, b.Rules(), 1)
	r, ok := b.Rule("clearances/well")
	require.True(t, ok)
	require.Equal(t, "base/clearances/well.rego", r.File)
	require.Equal(t, "Greywater works keep their distance from every well.", r.Title)
	require.Equal(t, "Soil between the two is what cleans the water.", r.Reason)
	require.Equal(t, LevelFail, r.Level)
	require.Equal(t, LevelWarn, r.NotShown)
	require.Equal(t, "clearances.well", r.Subjects.Name)
	require.Equal(t, "base", r.SetBy)
	require.Empty(t, r.Replaces)
	require.Equal(t, "germs", r.Caution)
	require.Equal(t, []figures.Citation{{Title: "A county's code", Place: "Table 1", Standing: figures.FromMemory}}, r.Sources)
	require.Equal(t, []string{"distance", "works"}, r.reads)
	require.Equal(t, Measure{Field: fieldOf(r.Subjects, "distance"), Bound: AtLeast, Limit: "from_tank", Where: map[string]string{"works": "tank"}}, r.Measures[1])

	limit, ok := b.Limit("from_field")
	require.True(t, ok)
	require.Equal(t, "100 ft", limit.Text)
	require.InDelta(t, 100*0.3048, limit.Value, 1e-9) // the foot is 0.3048 m exactly: NIST Handbook 44, Appendix C
	require.Equal(t, quantity.Length, limit.Dimension)

	words, ok := b.Caution("germs")
	require.True(t, ok)
	require.Equal(t, "Greywater carries germs.", words)
	_, ok = b.Rule("clearances/moon")
	require.False(t, ok)
}

// Every fault stands alone in a copy of the rule that is otherwise in order, and
// has to be named with its line and, for a misspelling, the nearest name.
func TestRefusedRules(t *testing.T) {
	for _, c := range []struct {
		note, old, with string
		line, column    int
		found, remedy   string
	}{
		{"misspelt field", "\tc.distance >= data.limits.from_field", "\tc.distnce >= data.limits.from_field", 21, 4, `there is no "distnce" in c`, `did you mean "distance"?`},
		{"misspelt limit", "data.limits.from_field", "data.limits.from_feild", 21, 28, `there is no limit "from_feild"`, `did you mean "from_field"?`},
		{"misspelt list", "input.clearances.well\n\tc.works == \"field\"", "input.clearances.wel\n\tc.works == \"field\"", 19, 29, `there is no list "clearances.wel"`, `did you mean "clearances.well"?`},
		{"misspelt group of lists", "input.clearances.well\n\tc.works == \"field\"", "input.clearance.well\n\tc.works == \"field\"", 19, 18, `there is no list "clearance.well"`, `did you mean "clearances.well"?`},
		{"misspelt function", "\tc.works == \"field\"", "\tstart_with(c.works, \"field\")", 20, 2, `there is no function "start_with"`, `did you mean "startswith"?`},
		{"misspelt rule of its own", "\tc.works == \"field\"", "\tbuffered", 20, 2, `nothing gives "buffered" a value`, ""},
		{"misspelt word", `c.works == "field"`, `c.works == "feild"`, 20, 13, `works is never "feild"`, `did you mean "field"?`},
		{"misspelt word in a set", `{"pipe", "fitting"}`, `{"pipe", "fiting"}`, 32, 22, `works is never "fiting"`, `did you mean "fitting"?`},
		{"misspelt word that differs", `c.works == "field"`, `"feild" != c.works`, 20, 2, `works is never "feild"`, `did you mean "field"?`},
		{"limit without its value", "data.limits.from_field.value", "data.limits.from_field", 21, 28, "is not the value of the limit", ""},
		{"limit by a variable", "c.distance >= data.limits.from_field.value", "some k in [\"from_field\"]\n\tc.distance >= data.limits[k].value", 22, 16, "the limit is not named", ""},
		{"all limits", "c.distance >= data.limits.from_field.value", "c.distance >= data.limits.from_field.value\n\tdata.limits", 22, 2, "the limit is not named", ""},
		{"dangling reference", `c.works == "field"`, "data.greysill.lib.field[c.works]", 20, 2, "data.greysill.lib.field[c.works] is nothing that a rule may read", ""},
		{"all of data", `c.works == "field"`, "data[c.works]", 20, 2, "data[c.works] is nothing that a rule may read", ""},
		{"every", `c.works == "field"`, "every d in input.clearances.well { d.wrks == \"field\" }", 20, 2, "may not use every", ""},
		{"not", `c.works == "field"`, "not c.works == \"tank\"", 20, 2, "may not use not", ""},
		{"with", `c.works == "field"`, `c.works == "field" with input as {}`, 20, 2, "may not use with", ""},
		{"comprehension", `c.works == "field"`, `{"field"} == {w | w := c.works}`, 20, 15, "may not use a comprehension", ""},
		{"template string", `c.works == "field"`, `$"{c.works}" != "tank"`, 20, 2, "may not use a template string", ""},
		{"a set of its own", "excused contains {", "near contains c.subject if some c in input.clearances.well\n\nexcused contains {", 30, 1, "may not use a set or object of its own", ""},
		{"default", "excused contains {", "default far := 1000\n\nexcused contains {", 30, 1, "may not use default", ""},
		{"else", "excused contains {", "far := 1 if { false } else := 2\n\nexcused contains {", 30, 23, "may not use else", ""},
		{"reads what it proves", `c.works in {"pipe", "fitting"}`, `c.works in {"pipe", "fitting"}` + "\n\tproved != set()", 33, 2, "may not use the set proved", ""},
		{"text compared with a number", `c.works == "field"`, `c.works > 3`, 20, 2, "gt: invalid argument(s)", ""},
		{"text compared with a number by a variable", `c.works == "field"`, "w := c.works\n\tw > 3", 21, 2, "gt: invalid argument(s)", ""},
		{"number equal to text", `c.distance >= data.limits.from_field.value`, "c.distance >= data.limits.from_field.value\n\tc.distance == \"3\"", 22, 2, "match error", ""},
		{"clock", `c.works == "field"`, "time.now_ns() > 0", 20, 2, `there is no function "time.now_ns"`, ""},
		{"network", `c.works == "field"`, `http.send({"url": "x", "method": "get"}).status_code == 200`, 20, 2, `there is no function "http.send"`, ""},
		{"environment", `c.works == "field"`, "opa.runtime().env.HOME", 20, 2, `there is no function "opa.runtime"`, ""},
		{"chance", `c.works == "field"`, `rand.intn("a", 2) == 1`, 20, 2, `there is no function "rand.intn"`, ""},
		{"sprintf", `c.works == "field"`, `sprintf("%s", [c.works]) == "field"`, 20, 2, `there is no function "sprintf"`, ""},
		{"a value for a missing one", `c.distance >= data.limits.from_field.value`, `object.get(c, "distnce", 1000) >= data.limits.from_field.value`, 21, 2, `there is no function "object.get"`, ""},
		{"unused variable", `c.works == "field"`, "c.works == \"field\"\n\tx := 1", 21, 2, "assigned var x unused", ""},
		{"syntax", "some c in input", "some c inn input", 19, 9, "unexpected identifier token", ""},
		{"package", "package greysill.clearances.well", "package greysill.clearances.wells", 14, 1, "the package is greysill.clearances.wells", ""},
		{"no rego.v2", "import rego.v2", "", 14, 1, "does not import rego.v2", ""},
		{"another import", "import rego.v2", "import rego.v2\nimport data.limits", 17, 1, "may not import data.limits", ""},
		{"proved is no set", "proved contains c.subject if {\n\tsome c in input.clearances.well\n\tc.works == \"field\"", "proved := \"x\" if {\n\tsome c in input.clearances.well\n\tc.works == \"field\"", 18, 1, `"proved" is not a set`, ""},

		{"no metadata", "# METADATA\n", "#\n", 14, 1, "declares nothing of itself", ""},
		{"metadata that is no YAML", "# title: Greywater", "# title: [Greywater", 2, 1, "", ""},
		{"metadata twice", "proved contains", "# METADATA\n# schemas: [{input: {type: object}}]\nproved contains", 18, 1, "a second METADATA block", ""},
		{"titel", "# title:", "# titel:", 2, 3, `there is no entry "titel" here`, `did you mean "title"?`},
		{"schemas", "# custom:", "# schemas: [{input: {type: object}}]\n# custom:", 4, 3, `there is no entry "schemas" here`, ""},
		{"unknown entry of custom", "#   level: fail", "#   levl: fail", 6, 5, `there is no entry "levl" here`, `did you mean "level"?`},
		{"no title", "# title: Greywater works keep their distance from every well.\n", "", 2, 3, `the entry "title" is missing`, ""},
		{"empty reason", "Soil between the two is what cleans the water.", `" "`, 3, 16, "the text is empty", ""},
		{"no sources", "#   sources:\n#     - {title: A county's code, place: Table 1, standing: from memory}\n", "", 5, 5, `the entry "sources" is missing`, ""},
		{"empty sources", "#   sources:\n#     - {title: A county's code, place: Table 1, standing: from memory}\n", "#   sources: []\n", 12, 14, "the rule names no source", ""},
		{"sources that are no list", "#   sources:\n#     - {title", "#   sources:\n#     {title", 13, 7, "this is a set of names and values", ""},
		{"unknown list of subjects", "subjects: clearances.well", "subjects: clearances.wells", 5, 15, `there is no list "clearances.wells"`, `did you mean "clearances.well"?`},
		{"level", "level: fail", "level: failure", 6, 12, `there is no level "failure"`, ""},
		{"level that is no text", "level: fail", "level: 3", 6, 12, "this is neither text", ""},
		{"level that is an alias", "level: fail", "level: &a fail\n#   not_shown: *a", 7, 16, "this is neither text", ""},
		{"not_shown", "level: fail", "level: fail\n#   not_shown: pass", 7, 16, `there is no level "pass"`, ""},
		{"measured field", "{field: distance, bound: at least, limit: from_field", "{field: distnce, bound: at least, limit: from_field", 8, 17, `there is no field of clearances.well "distnce"`, `did you mean "distance"?`},
		{"measured limit", "limit: from_field,", "limit: from_feild,", 8, 51, `there is no limit "from_feild"`, `did you mean "from_field"?`},
		{"limit of a text", "{field: distance, bound: at least, limit: from_field", "{field: works, bound: at least, limit: from_field", 8, 48, `"works" is no number`, ""},
		{"limit that does not decide", "{field: distance, bound: at least, limit: from_field", "{field: distance, bound: at least, limit: from_tank", 14, 1, `the limit "from_field", which no measure names`, ""},
		{"bound", "bound: at least, limit: from_field", "bound: above, limit: from_field", 8, 34, `there is no bound "above"`, ""},
		{"limit without a bound", "bound: at least, limit: from_field", "limit: from_field", 8, 9, `the entry "bound" is missing`, ""},
		{"bound without a limit", "bound: at least, limit: from_field", "bound: at least", 8, 34, "has a bound but no limit", ""},
		{"where: word", "where: {works: field}", "where: {works: feild}", 8, 78, `works is never "feild"`, `did you mean "field"?`},
		{"where: field", "where: {works: field}", "where: {work: field}", 8, 77, `there is no field of clearances.well "work"`, `did you mean "works"?`},
		{"where: free text", "where: {works: field}", "where: {part: field}", 8, 77, `"part" does not hold one of a few fixed words`, ""},
		{"placeholder", "{short}", "{shorts}", 10, 13, `there is no placeholder "shorts"`, `did you mean "short"?`},
		{"brace", "{short}", "{short", 10, 13, "a brace stands alone", ""},
		{"caution", "caution: germs", "caution: germ", 11, 14, `there is no caution "germ"`, `did you mean "germs"?`},
		{"standing", "standing: from memory", "standing: remembered", 13, 60, `there is no standing "remembered"`, ""},
		{"source without title", "title: A county's code, ", "", 13, 9, `the entry "title" is missing`, ""},
	} {
		t.Run(c.note, func(t *testing.T) {
			rule := replacedIn(t, wellRule, c.old, c.with)
			problems := refused(t, layer(BaseName, map[string]string{"clearances/well.rego": rule, "limits.json": wellLimits, "cautions.json": wellCautions}))
			for _, p := range problems {
				if p.Line == c.line && p.Column == c.column && strings.Contains(p.Found, c.found) && strings.Contains(p.Remedy, c.remedy) {
					require.Equal(t, "base/clearances/well.rego", p.File)
					require.NotContains(t, problems.Error(), "__local")
					require.Contains(t, p.Caret, strings.Split(rule, "\n")[c.line-1])
					return
				}
			}
			require.Failf(t, "not among the problems", "%d:%d %s (%s) in\n%s", c.line, c.column, c.found, c.remedy, problems.Error())
		})
	}
}

func TestRefusedLimits(t *testing.T) {
	for _, c := range []struct {
		note, old, with string
		line, column    int
		found           string
	}{
		{"not JSON", `"format"`, `format`, 3, 3, ""},
		{"format", "greysill-limits/1", "greysill-limits/2", 3, 13, `there is no format "greysill-limits/2"`},
		{"wrong dimension of the value", "100 ft", "100 gal", 6, 16, "gal"},
		{"bare number", `"100 ft"`, `100`, 6, 16, "this is neither text"},
		{"unknown dimension", `"dimension": "length",` + "\n" + `      "meaning": "Least distance from a well to a field."`, `"dimension": "lenght",` + "\n" + `      "meaning": "Least distance from a well to a field."`, 7, 20, `there is no dimension "lenght"`},
		{"unknown entry", `"meaning"`, `"meening"`, 8, 7, `there is no entry "meening" here`},
		{"missing entry", `"meaning": "Least distance from a well to a field.",` + "\n", "", 5, 19, `the entry "meaning" is missing`},
		{"name", `"from_field"`, `"From field"`, 5, 5, `"From field" cannot name a limit`},
		{"name twice", `"from_tank"`, `"from_field"`, 11, 5, "from_field"},
		{"no limits", `"limits": {`, `"limit": {`, 1, 1, `the entry "limits" is missing`},
		{"dimension that the measured field has not", `"value": "100 ft",` + "\n" + `      "dimension": "length"`, `"value": "100 ft2",` + "\n" + `      "dimension": "area"`, 8, 51, `"distance" measures length, but "from_field" is of dimension area`},
	} {
		t.Run(c.note, func(t *testing.T) {
			problems := refused(t, layer(BaseName, map[string]string{
				"clearances/well.rego": wellRule, "limits.json": replacedIn(t, wellLimits, c.old, c.with), "cautions.json": wellCautions,
			}))
			for _, p := range problems {
				if p.Line == c.line && p.Column == c.column && strings.Contains(p.Found, c.found) {
					return
				}
			}
			require.Failf(t, "not among the problems", "%d:%d %s in\n%s", c.line, c.column, c.found, problems.Error())
		})
	}
}

func TestRefusedLayers(t *testing.T) {
	for _, c := range []struct {
		note  string
		files map[string]string
		found string
	}{
		{"a rule too high", map[string]string{"well.rego": wellRule, "limits.json": wellLimits}, "base/well.rego: a rule cannot lie here"},
		{"a rule too deep", map[string]string{"a/b/well.rego": wellRule, "limits.json": wellLimits}, "base/a/b/well.rego: a rule cannot lie here"},
		{"a rule of a bad name", map[string]string{"a/Well.rego": wellRule, "limits.json": wellLimits}, "base/a/Well.rego: a rule cannot lie here"},
		{"a huge rule", map[string]string{"a/well.rego": strings.Repeat("#\n", maxFileSize/2+1)}, "base/a/well.rego: is larger than 256 KiB"},
		{"never defines proved", map[string]string{"a/b.rego": ruleText("a.b", "beds", "far := 3\n")}, "base/a/b.rego:9:1: the rule never defines proved"},
		{"no limits", map[string]string{"clearances/well.rego": wellRule}, "base: holds no limits.json, and its rules compare with limits"},
		{"no rules", map[string]string{"limits.json": wellLimits}, "base: holds no rule; expected TOPIC/RULE.rego"},
		{"bad cautions", map[string]string{"cautions.json": `{"cautions": {"a": ""}}`}, "base/cautions.json:1:20: the text is empty"},
	} {
		t.Run(c.note, func(t *testing.T) {
			require.Contains(t, refused(t, layer(BaseName, c.files)).Error(), c.found)
		})
	}
}

func TestAllProblemsInOneRun(t *testing.T) {
	first := strings.ReplaceAll(wellRule, "\tc.distance >= data.limits.from_tank", "\tc.distnce >= data.limits.from_tnk")
	first = strings.ReplaceAll(first, "# title:", "# titel:")
	second := ruleText("bed.depth", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.depth_leest > 1\n}\n")
	third := ruleText("bed.area", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tlook_up(b.area)\n\tx := b.aera\n}\n")
	problems := refused(t, layer(BaseName, map[string]string{
		"clearances/well.rego": first, "bed/depth.rego": second, "bed/area.rego": third, "bed/well.rego": "pakage x",
		"limits.json": replacedIn(t, wellLimits, "100 ft", "100"), "cautions.json": wellCautions,
	}))
	text := problems.Error()
	for _, want := range []string{
		"base/bed/area.rego:15:2: there is no function \"look_up\"",
		`base/bed/area.rego:16:2: assigned var x unused`,
		`base/bed/area.rego:16:9: there is no "aera" in b`,
		`base/bed/depth.rego:15:4: there is no "depth_leest" in b`,
		"base/bed/well.rego:1:1: ",
		`base/clearances/well.rego:2:3: there is no entry "titel" here`,
		`base/clearances/well.rego:27:4: there is no "distnce" in c`,
		`base/clearances/well.rego:27:27: there is no limit "from_tnk"`,
		"base/limits.json:6:16: ",
	} {
		require.Contains(t, text, want)
	}
}

func TestTestsAreNoPartOfTheBook(t *testing.T) {
	with := layer(BaseName, map[string]string{
		"clearances/well.rego": wellRule, "limits.json": wellLimits, "cautions.json": wellCautions,
		"clearances/well_test.rego":          "not even Rego",
		"amendments/US-ZZ/a/b.rego":          "another layer's",
		"README.md":                          "# Words",
		"amendments/US-ZZ/other/limits.json": "{",
	})
	require.Len(t, load(t, with).Rules(), 1)
}

func TestLaterLayersWin(t *testing.T) {
	region := layer("US-ZZ", map[string]string{
		"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "200 ft", "dimension": "length", "meaning": "M.", "source": {"title": "S", "standing": "published"}}}}`,
		"clearances/well.rego": ruleText("clearances.well", "clearances.well",
			"proved contains c.subject if {\n\tsome c in input.clearances.well\n\tc.works == \"pipe\"\n}\n"),
	})
	b := load(t, wellLayer(), region)
	limit, _ := b.Limit("from_field")
	require.Equal(t, "US-ZZ", limit.SetBy)
	require.Equal(t, "100 ft", limit.Replaced.Text)
	rule, _ := b.Rule("clearances/well")
	require.Equal(t, "US-ZZ", rule.SetBy)
	require.Equal(t, BaseName, rule.Replaces)

	area := layer("US-ZZ", map[string]string{
		"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "200 ft2", "dimension": "area", "meaning": "M.", "source": {"title": "S", "standing": "published"}}}}`,
	})
	require.Contains(t, refused(t, wellLayer(), area).Error(), "the limit is of dimension area; expected length, as the limit that it replaces")
}

func TestUnusedLimits(t *testing.T) {
	unused := replacedIn(t, wellLimits, `"limits": {`, `"limits": {"from_barn": {"value": "9 ft", "dimension": "length", "meaning": "M.", "source": {"title": "S", "standing": "published"}},`)
	b := load(t, layer(BaseName, map[string]string{"clearances/well.rego": wellRule, "limits.json": unused, "cautions.json": wellCautions}))
	require.Len(t, b.UnusedLimits(), 1)
	require.Equal(t, "from_barn", b.UnusedLimits()[0].Name)
}
