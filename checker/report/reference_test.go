package report_test

import (
	"bytes"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/internal/golden"
	"greysill/checker/report"
	"greysill/checker/rulebook"
)

// TestReferenceIsCurrent holds the page of what rules may read against the figures.
func TestReferenceIsCurrent(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.Reference(&b, figures.Catalogue, func(f *figures.Field) string { return rulebook.Unit(f.Dimension) }))
	golden.Equal(t, filepath.Join("..", "..", "rules", "INPUT.md"), b.Bytes())
}
