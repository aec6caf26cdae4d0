package report_test

import (
	"bytes"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/rules"
)

// TestRegionsPageIsCurrent holds the page that compares the regions against their
// amendments.
func TestRegionsPageIsCurrent(t *testing.T) {
	books := rulebook.NewBooks(rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS})
	var regions []report.Region
	for _, code := range books.Regions() {
		book, err := books.In(t.Context(), code)
		require.NoError(t, err)
		regions = append(regions, report.Region{Code: code, Book: book})
	}
	var b bytes.Buffer
	require.NoError(t, report.RegionsPage(&b, regions))
	golden.Equal(t, filepath.Join("..", "..", "rules", "amendments", "REGIONS.md"), b.Bytes())
}
