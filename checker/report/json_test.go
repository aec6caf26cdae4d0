package report_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/schema"
)

func jsonOf(t *testing.T, run ofRun, o report.Options) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, run.write("json", &b, o))
	return b.Bytes()
}

func everything(t *testing.T) ofRun {
	return ofRun{designs: []report.Judged{faulty(t), sound(t), unread(), halfJudged(t), allowed(t)}, skipped: []string{"designs/package.json"}}
}

// schemaNamed compiles one of the schemas that go out with the program.
func schemaNamed(t *testing.T, name string) *jsonschema.Schema {
	t.Helper()
	text, err := schema.FS.ReadFile(name)
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	require.NoError(t, c.AddResource(name, bytes.NewReader(text)))
	compiled, err := c.Compile(name)
	require.NoError(t, err)
	return compiled
}

func TestJSONIsAsRead(t *testing.T) {
	golden.Equal(t, goldenDir+"report-faulty.json", jsonOf(t, ofRun{designs: []report.Judged{faulty(t)}}, report.Options{Version: "1.0"}))
}

func TestJSONIsValidByItsSchema(t *testing.T) {
	compiled := schemaNamed(t, "report.schema.json")
	for name, c := range map[string]struct {
		run ofRun
		o   report.Options
	}{
		"nothing":      {ofRun{}, report.Options{}},
		"everything":   {everything(t), report.Options{Units: quantity.SI}},
		"with figures": {everything(t), report.Options{Figures: true, Version: "1.0", AsOf: "2026-06-01"}},
	} {
		var value any
		require.NoError(t, json.Unmarshal(jsonOf(t, c.run, c.o), &value), name)
		require.NoError(t, compiled.Validate(value), name)
	}
}

// The schema refuses what the report never says, so that the test above can
// fail.
func TestSchemaRefusesWhatIsNoReport(t *testing.T) {
	compiled := schemaNamed(t, "report.schema.json")
	for _, change := range [][2]string{
		{`"format": "greysill-report/1"`, `"format": "greysill-report/2"`},
		{`"status": "fail"`, `"status": "bad"`},
		{`"outcome": "fail"`, `"verdict": "fail"`},
		{`"margin": -`, `"margin": "1", "x": -`},
	} {
		text := string(jsonOf(t, everything(t), report.Options{}))
		require.Contains(t, text, change[0])
		var value any
		require.NoError(t, json.Unmarshal([]byte(strings.Replace(text, change[0], change[1], 1)), &value))
		require.Error(t, compiled.Validate(value), change[1])
	}
}

func TestJSONHasEveryFinding(t *testing.T) {
	var got struct {
		Designs []struct {
			Findings []struct {
				Rule, Status string
				Line, Column int
				Shown        bool
				Measured     []struct {
					Value  any
					Margin *float64
					Limit  *struct{ Value float64 }
				}
			}
		}
	}
	require.NoError(t, json.Unmarshal(jsonOf(t, ofRun{designs: []report.Judged{faulty(t)}}, report.Options{}), &got))
	findings := got.Designs[0].Findings
	require.Len(t, findings, 8)
	require.Equal(t, "pass", findings[3].Status)
	require.Equal(t, 14, findings[2].Line)
	require.Equal(t, 5, findings[2].Column)
	require.False(t, findings[6].Shown)
	// 56 ft and 100 ft with 0.3048 m to the foot, exact by NIST Handbook 44, App. C.
	require.Equal(t, 17.0688, findings[2].Measured[0].Value)
	require.Equal(t, 30.48, findings[2].Measured[0].Limit.Value)
	require.Equal(t, -13.4112, *findings[2].Measured[0].Margin)
}

func TestJSONSpellsOutHiddenCharactersAndKeepsThem(t *testing.T) {
	for _, title := range hostile {
		if title == "bad \xff byte" {
			continue // a document with it is refused before it gets here
		}
		j := sound(t)
		j.Design.Title = title
		text := jsonOf(t, ofRun{designs: []report.Judged{j}}, report.Options{})
		requirePrintable(t, string(text))
		var got struct{ Designs []struct{ Title string } }
		require.NoError(t, json.Unmarshal(text, &got))
		require.Equal(t, title, got.Designs[0].Title)
	}
}

func TestSameInputGivesTheSameBytes(t *testing.T) {
	for range 20 {
		require.Equal(t, jsonOf(t, everything(t), report.Options{Figures: true}), jsonOf(t, everything(t), report.Options{Figures: true}))
		require.Equal(t, textOf(t, everything(t), report.Options{}), textOf(t, everything(t), report.Options{}))
	}
}

// full is a disk without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left") }

func TestWritingErrorsAreReported(t *testing.T) {
	run, book := everything(t), harrow()
	require.ErrorContains(t, run.write("text", full{}, report.Options{}), "no space left")
	require.ErrorContains(t, run.write("json", full{}, report.Options{}), "no space left")
	require.ErrorContains(t, report.Figures(full{}, run.designs[0].Figures, report.Options{}), "no space left")
	require.ErrorContains(t, report.Rules(full{}, book, report.Options{}), "no space left")
	require.ErrorContains(t, report.Rule(full{}, book, book.rules[0], report.Options{}), "no space left")
}

func TestDesignsShareTheirRuleBook(t *testing.T) {
	one, two, other := faulty(t), sound(t), sound(t)
	two.Book = one.Book
	var got struct {
		Designs []struct {
			RuleBook int `json:"rule_book"`
		}
		RuleBooks []any `json:"rule_books"`
	}
	require.NoError(t, json.Unmarshal(jsonOf(t, ofRun{designs: []report.Judged{one, two, other}}, report.Options{}), &got))
	require.Len(t, got.RuleBooks, 2)
	require.Equal(t, []int{0, 0, 1}, []int{got.Designs[0].RuleBook, got.Designs[1].RuleBook, got.Designs[2].RuleBook})
}

func TestKnownFaultsAreValidByTheirSchema(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, everything(t).write("known", &b, report.Options{}))
	var value any
	require.NoError(t, json.Unmarshal(b.Bytes(), &value))
	require.NoError(t, schemaNamed(t, "known.schema.json").Validate(value))
	require.Contains(t, b.String(), `"rule": "bed/media_depth"`)
	require.NotContains(t, b.String(), `"pass"`)
}
