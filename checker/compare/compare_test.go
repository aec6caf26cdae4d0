package compare_test

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/compare"
	"greysill/checker/report"
)

// judged gives what a check finds for the text, and the JSON report of it.
func judged(t *testing.T, text string) (*checker.Result, []byte) {
	t.Helper()
	r := checker.New().CheckBytes(t.Context(), "design.json", []byte(text))
	require.Empty(t, r.Problems)
	var b bytes.Buffer
	w, err := report.New("json", &b, report.Options{})
	require.NoError(t, err)
	require.NoError(t, w.Design(&report.Judged{Name: r.Name, Design: r.Design, Figures: r.Figures, Verdict: r.Verdict, Book: r.Book}))
	require.NoError(t, w.Close(nil))
	return r, b.Bytes()
}

func faulty(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile("../../examples/faulty-bed.json")
	require.NoError(t, err)
	return string(text)
}

func TestNothingChangesBetweenEqualRuns(t *testing.T) {
	r, text := judged(t, faulty(t))
	past, problems := compare.Read("report.json", text)
	require.Empty(t, problems)
	c := past.With("design.json", r.Verdict)
	require.True(t, c.Known)
	require.Empty(t, c.Appeared)
	require.Empty(t, c.Gone)
	require.Empty(t, c.Worse)
	require.Empty(t, c.Better)
	counts := r.Verdict.Counts()
	require.Equal(t, counts.Fail+counts.Warn, c.Same)
	require.False(t, c.Fails(true))
}

// The well of the faulty design lies about 70 ft from its bed. Moved 1 ft nearer it
// is worse; moved away far enough it is gone, and with the old report upside down it
// has appeared.
func TestWhatChangesWhenAWellMoves(t *testing.T) {
	moved := func(by string) string {
		const well = `"at": [147.4, 137.8]`
		text := faulty(t)
		require.Contains(t, text, well)
		return strings.Replace(text, well, by, 1)
	}
	before, report := judged(t, faulty(t))
	past, problems := compare.Read("report.json", report)
	require.Empty(t, problems)

	nearer, _ := judged(t, moved(`"at": [146.4, 137.8]`))
	c := past.With("design.json", nearer.Verdict)
	require.NotEmpty(t, c.Worse)
	require.Equal(t, "clearances/well", c.Worse[0].Finding.Rule.ID)
	require.False(t, c.Fails(false))

	away, awayReport := judged(t, moved(`"at": [160, 243]`))
	c = past.With("design.json", away.Verdict)
	require.Contains(t, names(c.Gone), "clearances/well")

	past, problems = compare.Read("away.json", awayReport)
	require.Empty(t, problems)
	c = past.With("design.json", before.Verdict)
	require.True(t, c.Fails(false))
	require.Equal(t, "clearances/well", c.Appeared[0].Rule.ID)
	require.False(t, past.With("other.json", before.Verdict).Known)
}

func names(gone []compare.Then) []string {
	var rules []string
	for _, g := range gone {
		rules = append(rules, g.Rule)
	}
	return rules
}

func TestWhatIsNoReport(t *testing.T) {
	for text, said := range map[string]string{
		`{`:                               "report.json:1:",
		`[]`:                              `neither known faults nor a report`,
		`{"format": "greysill-report/9"}`: `neither known faults nor a report`,
	} {
		_, problems := compare.Read("report.json", []byte(text))
		require.Contains(t, problems.Error(), said)
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(`{"format": "greysill-report/1", "designs": [{"file": "a", "findings": [{"rule": "a/b", "status": "fail", "subject": {"name": "x"}, "measured": [{"figure": "f", "margin": 1}]}]}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		if past, problems := compare.Read("report.json", text); len(problems) == 0 {
			require.NotNil(t, past)
		}
	})
}
