package report_test

import (
	"bytes"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/internal/golden"
	"greysill/checker/report"
)

// TestCatalogueIsCurrent holds the page of rules in the rule book against the
// rules.
func TestCatalogueIsCurrent(t *testing.T) {
	book, err := checker.New().Book(t.Context(), "")
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, report.Catalogue(&b, book))
	golden.Equal(t, filepath.Join("..", "..", "rules", "CATALOGUE.md"), b.Bytes())
}
