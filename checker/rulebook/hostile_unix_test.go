//go:build unix

package rulebook

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// A pipe that nobody writes to would be waited for.
func TestHostilePipe(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "amendment.json"), []byte(amendmentOf("Harrow County", "")), 0o600))
	require.NoError(t, syscall.Mkfifo(filepath.Join(dir, "limits.json"), 0o600))
	require.Contains(t, refused(t, wellLayer(), Layer{Name: "county", FS: os.DirFS(dir)}).Error(), "county/limits.json: is no regular file")
}
