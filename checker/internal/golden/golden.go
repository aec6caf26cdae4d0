// Package golden compares what a test made with a file that a person has read.
// GREYSILL_UPDATE=1 in the environment rewrites the files; read the diff.
package golden

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// Equal requires got to equal the file's content, or writes it when updating.
func Equal(t *testing.T, file string, got []byte) {
	t.Helper()
	if os.Getenv("GREYSILL_UPDATE") == "1" {
		require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
		require.NoError(t, os.WriteFile(file, got, 0o644))
		return
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "no such golden file: run the tests once with GREYSILL_UPDATE=1 and read what they wrote")
	require.Equal(t, string(want), string(got), "%s is out of date: run the tests once with GREYSILL_UPDATE=1 and read the diff", file)
}
