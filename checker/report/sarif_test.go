package report_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/report"
	"greysill/checker/source"
)

// oasis is the schema that OASIS publishes for SARIF 2.1.0.
func oasis(t *testing.T) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "testdata", "standards", "sarif-schema-2.1.0.json"))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	require.NoError(t, c.AddResource("sarif.json", bytes.NewReader(text)))
	compiled, err := c.Compile("sarif.json")
	require.NoError(t, err)
	return compiled
}

// sarifResult is what the tests look at of a result.
type sarifResult struct {
	RuleID       string
	RuleIndex    int
	Kind, Level  string
	Message      struct{ Text string }
	Fingerprints map[string]string `json:"partialFingerprints"`
	Suppressions []struct{ Kind, Status, Justification string }
	Locations    []struct {
		PhysicalLocation struct {
			ArtifactLocation struct{ URI string }
			Region           *struct{ StartLine, StartColumn int }
		}
	}
}

type sarifRun struct {
	Results []sarifResult
	Tool    struct {
		Driver struct{ Rules []struct{ ID string } }
	}
	Invocations []struct {
		ExecutionSuccessful        bool
		ToolExecutionNotifications []struct{ Message struct{ Text string } }
	}
}

// sarifOf gives the runs of a report that the standard's schema finds valid.
func sarifOf(t *testing.T, kind string, run ofRun) []sarifRun {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, run.write(kind, &b, report.Options{Version: "1.0"}))
	var value any
	require.NoError(t, json.Unmarshal(b.Bytes(), &value))
	require.NoError(t, oasis(t).Validate(value))
	var log struct{ Runs []sarifRun }
	require.NoError(t, json.Unmarshal(b.Bytes(), &log))
	return log.Runs
}

func allResults(runs []sarifRun) []sarifResult {
	var all []sarifResult
	for _, r := range runs {
		all = append(all, r.Results...)
	}
	return all
}

func TestSARIFIsValidByTheStandardsSchema(t *testing.T) {
	for _, kind := range []string{"sarif", "alerts"} {
		sarifOf(t, kind, everything(t))
		sarifOf(t, kind, ofRun{})
	}
}

// The standard wants level "none" of every result whose kind is not "fail"
// (SARIF 2.1.0, 3.27.10, from memory), which its schema does not check.
func TestSARIFResultsHaveALevelOnlyWhereTheyFail(t *testing.T) {
	for _, run := range sarifOf(t, "sarif", everything(t)) {
		for _, r := range run.Results {
			require.Equal(t, r.Kind != "fail", r.Level == "none", r.Message.Text)
			require.Equal(t, run.Tool.Driver.Rules[r.RuleIndex].ID, r.RuleID)
			require.NotEmpty(t, r.Locations)
			require.NotEmpty(t, r.Fingerprints)
		}
	}
}

func TestSARIFSaysWhatEachFindingIs(t *testing.T) {
	kinds := map[string]int{}
	suppressed := 0
	for _, r := range allResults(sarifOf(t, "sarif", everything(t))) {
		kinds[r.Kind+" "+r.Level]++
		suppressed += len(r.Suppressions)
	}
	for _, k := range []string{"pass none", "fail error", "fail warning", "open none", "notApplicable none"} {
		require.Positive(t, kinds[k], k)
	}
	require.Positive(t, suppressed)
}

func TestAlertsHoldOnlyWhatIsWrongNow(t *testing.T) {
	wrong := 0
	for _, r := range allResults(sarifOf(t, "sarif", everything(t))) {
		if len(r.Suppressions) == 0 && slices.Contains([]string{"fail", "open"}, r.Kind) {
			wrong++
		}
	}
	alerts := allResults(sarifOf(t, "alerts", everything(t)))
	require.Len(t, alerts, wrong)
	for _, r := range alerts {
		require.Equal(t, "fail", r.Kind)
		require.Empty(t, r.Suppressions)
	}
}

func TestSARIFSaysThatTheCheckWasNotMade(t *testing.T) {
	runs := sarifOf(t, "sarif", ofRun{designs: []report.Judged{unread()}})
	require.False(t, runs[0].Invocations[0].ExecutionSuccessful)
	require.NotEmpty(t, runs[0].Invocations[0].ToolExecutionNotifications[0].Message.Text)
	runs = sarifOf(t, "sarif", ofRun{designs: []report.Judged{sound(t)}})
	require.True(t, runs[0].Invocations[0].ExecutionSuccessful)
}

// File names become URI references as RFC 3986 has them: section 4.2 on the
// colon in a first segment, section 2.1 on percent-encoding.
func TestSARIFNamesFilesByURIReferences(t *testing.T) {
	for name, want := range map[string]string{
		"designs/a.json":        "designs/a.json",
		"./designs/../a b.json": "a%20b.json",
		"a:b.json":              "./a:b.json",
		"/home/é.json":          "file:///home/%C3%A9.json",
		"50%.json":              "50%25.json",
	} {
		j := report.Judged{Name: name, Problems: source.Problems{{Position: source.Position{File: name, Line: 1, Column: 1}, Found: "nothing", Expected: "a design"}}}
		var b bytes.Buffer
		require.NoError(t, ofRun{designs: []report.Judged{j}}.write("sarif", &b, report.Options{}))
		require.Contains(t, b.String(), `"uri": "`+want+`"`)
		sarifOf(t, "sarif", ofRun{designs: []report.Judged{j}})
	}
}

// A result is known again when lines have moved.
func TestSARIFFingerprintsOutliveMovedLines(t *testing.T) {
	before := allResults(sarifOf(t, "sarif", ofRun{designs: []report.Judged{faulty(t)}}))
	moved := faulty(t)
	document, problems := source.Parse(moved.Name, []byte(strings.Repeat("\n", 7)+drawing))
	require.Empty(t, problems)
	moved.Design.Document = document
	after := allResults(sarifOf(t, "sarif", ofRun{designs: []report.Judged{moved}}))
	require.Len(t, after, len(before))
	seen := map[string]bool{}
	for i := range before {
		require.Equal(t, before[i].Fingerprints, after[i].Fingerprints)
		for _, mark := range before[i].Fingerprints {
			require.False(t, seen[mark], "two results have one fingerprint")
			seen[mark] = true
		}
		if region := before[i].Locations[0].PhysicalLocation.Region; region != nil {
			require.Equal(t, region.StartLine+7, after[i].Locations[0].PhysicalLocation.Region.StartLine)
		}
	}
}
