package report_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
	"greysill/checker/quantity"
	"greysill/checker/report"
)

func TestFiguresAreAsRead(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.Figures(&b, faulty(t).Figures, report.Options{}))
	golden.Equal(t, goldenDir+"report-figures.txt", b.Bytes())
}

func TestFiguresShowInputsAsDrawnAndWhatIsMissing(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.Figures(&b, faulty(t).Figures, report.Options{Units: quantity.SI, Width: 120}))
	require.Contains(t, b.String(), "floor 97.4 ft (19:16)")
	require.Contains(t, b.String(), "Least depth: NOT KNOWN. Add floor of bed-2.")
}

func TestClearancesComeNearestFirst(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.Figures(&b, faulty(t).Figures, report.Options{}))
	last := -1
	for _, pair := range []string{"well-1 (8:7)", "41.76 ft tank-1", "56 ft bed-1", "59.46 ft bed-2", "diverter-1: NOT KNOWN", "well-2 (9:7)", "154 ft bed-1"} {
		at := strings.Index(b.String(), pair)
		require.Greater(t, at, last, pair)
		last = at
	}
}

func TestRulesAreAsRead(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.Rules(&b, harrow(), report.Options{}))
	golden.Equal(t, goldenDir+"report-rules.txt", b.Bytes())
}

func TestOneRuleIsAsRead(t *testing.T) {
	for id, file := range map[string]string{"clearances/well": "report-rule-well.txt", "diversion/second_route": "report-rule-route.txt"} {
		var b bytes.Buffer
		book := harrow()
		require.NoError(t, report.Rule(&b, book, book.rule(t, id), report.Options{}))
		golden.Equal(t, goldenDir+file, b.Bytes())
	}
}
