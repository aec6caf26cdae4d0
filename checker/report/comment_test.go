package report_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
	"greysill/checker/report"
)

func commentOf(t *testing.T, run ofRun) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, run.write("markdown", &b, report.Options{}))
	return b.String()
}

func TestCommentIsAsRead(t *testing.T) {
	golden.Equal(t, goldenDir+"report-everything.md", []byte(commentOf(t, everything(t))))
}

func TestCommentPutsTheWorstFirst(t *testing.T) {
	text := commentOf(t, ofRun{designs: []report.Judged{sound(t), faulty(t), unread()}})
	unjudged, fails := strings.Index(text, "### Not judged"), strings.Index(text, "### Fails")
	require.Positive(t, unjudged)
	require.Less(t, unjudged, fails)
	require.NotContains(t, text, "### Passes:")
}

// Forges refuse a comment of more than 65,536 characters (common practice, no
// source).
func TestCommentStaysShort(t *testing.T) {
	var run ofRun
	for i := range 500 {
		j := faulty(t)
		j.Name = fmt.Sprintf("designs/%d.json", i)
		run.designs = append(run.designs, j)
	}
	text := commentOf(t, run)
	require.Less(t, len(text), 65_536)
	require.Contains(t, text, "Greywater designs: 500 failing")
	require.Regexp(t, `No room here for \d+ further designs`, text)
}
