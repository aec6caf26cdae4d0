package rulebook

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

const hostileFolder = "../../testdata/hostile"

func hostile(name string) Layer {
	return Layer{Name: name, FS: os.DirFS(filepath.Join(hostileFolder, name))}
}

// refusedHostile is what is said first of each folder of testdata/hostile that is
// refused before any design is read.
var refusedHostile = map[string]string{
	"network":            `bed/odd.rego:22:10: there is no function "http.send" for rules`,
	"name-lookup":        `bed/odd.rego:22:10: there is no function "net.lookup_ip_addr" for rules`,
	"environment":        `bed/odd.rego:22:10: there is no function "opa.runtime" for rules`,
	"clock":              `bed/odd.rego:22:10: there is no function "time.now_ns" for rules`,
	"chance":             `bed/odd.rego:22:10: there is no function "rand.intn" for rules`,
	"other-data":         "bed/odd.rego:22:2: data.system.environment.HOME is nothing that a rule may read",
	"growing-text":       `bed/odd.rego:22:8: there is no function "concat" for rules`,
	"growing-number":     "bed/odd.rego:22:8: a rule may not use a product or quotient of two values that it reads or works out",
	"growing-list":       "bed/odd.rego:21:8: a rule may not use an object, or a list or set of anything but words and numbers",
	"growing-answer":     "bed/odd.rego:24:51: a rule may not use a reason that is put together of what is not the subject's",
	"calls-in-calls":     "bed/odd.rego:21:10: a rule may not use a function inside a function",
	"pattern":            `bed/odd.rego:21:2: there is no function "regex.match" for rules`,
	"large-number":       "bed/odd.rego:21:11: number too big",
	"nested-condition":   "bed/odd.rego:21:12510: max parsing recursion depth exceeded",
	"nested-declaration": "bed/odd.rego:1:1: the METADATA block cannot be read: exceeded max depth of 10000",
	"nested-json":        "amendment.json:5:48: lists and objects inside one another more than 32 deep",
	"alias-bomb":         "bed/odd.rego:2:1: the METADATA block cannot be read: unmarshal errors: line 2: cannot unmarshal !!seq into string",
	"alias-circle":       "bed/odd.rego:1:1: the METADATA block cannot be read: anchor 'round' value contains itself",
	"twice-declared":     `bed/odd.rego:8:1: the METADATA block cannot be read: unmarshal errors: line 8: mapping key "level" already defined at line 7`,
	"twice-named":        `limits.json:5:5: the name "well_from_field" is given a second time in the same object; the first is at line 4, column 5`,
	"not-utf8":           `amendment.json:5:24: the byte \xff is not UTF-8`,
	"not-utf8-rule":      "bed/odd.rego:4:1: illegal utf-8 character",
	"nul":                "bed/odd.rego:4:1: illegal null character",
}

// acceptedHostile are the folders that load; the tests below say what comes of them.
var acceptedHostile = []string{"slow", "words"}

func TestHostileAmendments(t *testing.T) {
	entries, err := os.ReadDir(hostileFolder)
	require.NoError(t, err)
	for _, e := range entries {
		if !e.IsDir() {
			continue
		}
		t.Run(e.Name(), func(t *testing.T) {
			said, known := refusedHostile[e.Name()]
			if !known {
				require.Contains(t, acceptedHostile, e.Name(), "a folder without a test")
				return
			}
			problems := refused(t, wellLayer(), hostile(e.Name()))
			require.True(t, strings.HasPrefix(problems.Error(), e.Name()+"/"+said), problems.Error())
		})
	}
}

// A rule that takes long is stopped, and the others are judged all the same.
func TestHostileRuleThatTakesLong(t *testing.T) {
	b := load(t, wellLayer(), hostile("slow"))
	b.deadline = 50 * time.Millisecond
	items := []*figures.Item{near("bed-1", "field", 99)}
	for i := range 20 {
		items = append(items, item("parts", fmt.Sprintf("pipe-%d", i), map[string]any{"kind": "drain pipe", "area": 0.0, "drains_on": true}))
	}
	v := b.Judge(t.Context(), figuresOf(items...), day)
	require.Len(t, v.Broken, 1)
	require.ErrorContains(t, v.Broken[0].Err, "rule bed/odd could not be judged: it took longer than the limit of 50ms")
	require.Equal(t, Unjudged, v.Status())
	require.Len(t, v.Findings, 1)
	require.Equal(t, Pass, v.Findings[0].Status)

	_, problems := b.Contract(t.Context(), func(r *Rule) bool { return r.ID == "bed/odd" })
	require.Len(t, problems, 1, "nothing more is tried once a rule could not be judged")
	require.Contains(t, problems.Error(), "slow/bed/odd.rego: the rule could not be judged: it took longer than the limit of 50ms")
}

// Many rules that each take a little less than their time are stopped together.
func TestHostileRulesThatTakeLongTogether(t *testing.T) {
	b := load(t, wellLayer(), hostile("slow"))
	b.patience = 50 * time.Millisecond
	items := []*figures.Item{near("bed-1", "field", 99)}
	for i := range 20 {
		items = append(items, item("parts", fmt.Sprintf("pipe-%d", i), map[string]any{"kind": "drain pipe", "area": 0.0, "drains_on": true}))
	}
	v := b.Judge(t.Context(), figuresOf(items...), day)
	require.NotEmpty(t, v.Broken)
	require.ErrorContains(t, v.Broken[0].Err, "all rules together took longer than the limit of 50ms")
	_, problems := b.Contract(t.Context(), nil)
	require.Contains(t, problems.Error(), "trying all rules took longer than the limit of 500ms")
}

// What is large is made here.
func TestHostileSizes(t *testing.T) {
	rule := func(id, body string) string { return ruleText(id, "beds", body) }
	const sound = "proved contains b.subject if {\n\tsome b in input.beds\n\tb.area > 0\n}\n"
	many, heavy, crowd := map[string]string{}, map[string]string{}, map[string]string{}
	for i := range maxRules + 1 {
		many[fmt.Sprintf("a/r%d.rego", i)] = "# no rule"
	}
	for i := range maxLayerSize/maxFileSize + 1 {
		heavy[fmt.Sprintf("a/r%d.rego", i)] = strings.Repeat("#", maxFileSize)
	}
	for i := range maxEntries {
		crowd[fmt.Sprintf("b/f%d.txt", i)] = ""
	}
	for note, c := range map[string]struct {
		files map[string]string
		said  string
	}{
		"a file":       {map[string]string{"a/b.rego": strings.Repeat("#", maxFileSize+1)}, "county/a/b.rego: is larger than 256 KiB; expected a file of at most 256 KiB"},
		"the limits":   {map[string]string{"limits.json": strings.Repeat(" ", maxFileSize+1)}, "county/limits.json: is larger than 256 KiB"},
		"rules":        {many, "county: holds more than 2000 rules; leave some out"},
		"all files":    {heavy, "county: holds files of more than 1 MiB in all; leave some out"},
		"other files":  {crowd, "county: holds more than 20000 files and folders; expected a folder that holds rules alone"},
		"a rule":       {map[string]string{"a/b.rego": rule("a.b", strings.Replace(sound, "> 0", "> 0"+strings.Repeat(" + 1", maxSize), 1))}, "county/a/b.rego:9:1: the rule is too large: its syntax has "},
		"a reason":     {map[string]string{"a/b.rego": rule("a.b", sound+"\nexcused contains {\"subject\": b.subject, \"reason\": $\""+strings.Repeat("{b.subject}-", maxQuotes+2)+"\"} if {\n\tsome b in input.beds\n\tb.area < 0\n}\n")}, "a rule may not use a reason that is put together"},
		"an excuse":    {map[string]string{"a/b.rego": rule("a.b", sound+"\nexcused contains {\"subject\": b.subject, \"reason\": \"R.\", \"more\": p.subject} if {\n\tsome b in input.beds\n\tsome p in input.parts\n}\n")}, "a rule may not use an excuse of more than a subject and a reason"},
		"subjects":     {map[string]string{"a/b.rego": rule("a.b", "proved contains [b.subject, p.subject] if {\n\tsome b in input.beds\n\tsome p in input.parts\n}\n")}, "a rule may not use a subject that is put together"},
		"a quotient":   {map[string]string{"a/b.rego": rule("a.b", strings.Replace(sound, "b.area > 0", "b.area / b.mulch > 0", 1))}, "a rule may not use a product or quotient of two values that it reads or works out"},
		"an object":    {map[string]string{"a/b.rego": rule("a.b", strings.Replace(sound, "b.area > 0", "x := {\"a\": b.area}\n\tx.a > 0", 1))}, "a rule may not use an object"},
		"wide objects": {map[string]string{"amendment.json": `{"a":` + strings.Repeat("[", 40) + strings.Repeat("]", 40) + "}"}, "county/amendment.json:1:37: lists and objects inside one another more than 32 deep"},
	} {
		t.Run(note, func(t *testing.T) {
			require.Contains(t, refused(t, wellLayer(), amending("", c.files)).Error(), c.said)
		})
	}
}

// A figure may be held against a multiple of another, or of a limit.
func TestProductsThatStaySmall(t *testing.T) {
	for _, condition := range []string{"c.distance >= 2 * data.limits.from_field.value", "c.distance / 2 >= data.limits.from_field.value"} {
		rule := strings.Replace(wellRule, "c.distance >= data.limits.from_field.value", condition, 1)
		load(t, layer(BaseName, map[string]string{"clearances/well.rego": rule, "limits.json": wellLimits, "cautions.json": wellCautions}))
	}
}

// A folder of rules is a world of its own: no link in it leads out, and none hides
// rules that would then not be in force.
func TestHostileLinks(t *testing.T) {
	outside := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(outside, "limits.json"), []byte(wellLimits), 0o600))
	for note, c := range map[string]struct{ name, target, said string }{
		"a file outside":   {"limits.json", filepath.Join(outside, "limits.json"), "county/limits.json: cannot be read: "},
		"a way up":         {"limits.json", "../limits.json", "county/limits.json: cannot be read: "},
		"a folder outside": {"clearances", outside, "county/clearances: is a link to a folder or to a place outside, and rules behind it would not be read"},
		"a folder inside":  {"clearances", "inside", "county/clearances: is a link to a folder"},
		"round in circles": {"limits.json", "limits.json", "county/limits.json: cannot be read: "},
		"the amendment":    {"amendment.json", filepath.Join(outside, "limits.json"), "county/amendment.json: cannot be read: "},
	} {
		t.Run(note, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, os.Mkdir(filepath.Join(dir, "inside"), 0o700))
			require.NoError(t, os.WriteFile(filepath.Join(dir, "amendment.json"), []byte(amendmentOf("Harrow County", "")), 0o600))
			if c.name == "amendment.json" {
				require.NoError(t, os.Remove(filepath.Join(dir, c.name)))
			}
			if err := os.Symlink(c.target, filepath.Join(dir, c.name)); err != nil {
				t.Fatalf("this system has no links: %v", err)
			}
			root, err := os.OpenRoot(dir)
			require.NoError(t, err)
			defer root.Close()
			require.Contains(t, refused(t, wellLayer(), Layer{Name: "county", FS: root.FS()}).Error(), c.said)
		})
	}
}

// Names of files and lines of rules come from whoever wrote them.
func TestHostileNamesInMessages(t *testing.T) {
	files := fstest.MapFS{
		"amendment.json":        {Data: []byte(amendmentOf("Harrow County", ""))},
		"a/\x1b[2J\u202e.rego":  {Data: []byte("package x\n")},
		"a/b.rego":              {Data: []byte("package greysill.a.b\n\nimport rego.v2\n\nproved contains 1 if \x1b[2J\n")},
		"clearances/other.rego": {Data: []byte(ruleText("clearances.other", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.aera > 0 # \x1b[2J\u202e\n}\n"))},
	}
	problems := refused(t, wellLayer(), Layer{Name: "county", FS: files})
	require.Contains(t, problems.Error(), `county/a/\u001b[2J\u202e.rego: a rule cannot lie here`)
	for _, p := range problems {
		require.NotContains(t, p.Caret+problems.Error(), "\x1b")
		require.NotContains(t, p.Caret+problems.Error(), "\u202e")
	}
	require.Contains(t, problems[len(problems)-1].Caret, `\u001b[2J\u202e`)
}
