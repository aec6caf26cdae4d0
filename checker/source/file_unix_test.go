//go:build unix

package source

import (
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// A pipe that nobody writes to would be waited on for ever.
func TestPipeIsNotOpened(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pipe.json")
	require.NoError(t, syscall.Mkfifo(path, 0o600))
	_, problems := ReadFile(path)
	require.Equal(t, path+": not a regular file but a pipe, a socket or a device; name a file", problems.Error())
}
