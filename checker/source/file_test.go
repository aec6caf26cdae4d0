package source

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestReadFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "bed.json")
	require.NoError(t, os.WriteFile(path, []byte(`{"id": "bed-1"}`), 0o600))
	d, problems := ReadFile(path)
	require.Empty(t, problems)
	require.Equal(t, path, d.Name())
	require.Equal(t, `"bed-1"`, d.Raw("/id"))
}

func TestFilesThatCannotBeRead(t *testing.T) {
	folder := t.TempDir()
	large := filepath.Join(folder, "large.json")
	require.NoError(t, os.WriteFile(large, nil, 0o600))
	require.NoError(t, os.Truncate(large, 1<<30))
	for _, tc := range []struct{ name, path, found, remedy string }{
		{"missing", filepath.Join(folder, "nothing.json"), "there is no such file", "check the name and the folder"},
		{"folder", folder, "a folder, not a file", "name a file in it"},
		{"device", os.DevNull, "not a regular file but a pipe, a socket or a device", "name a file"},
		{"too large", large, "the file is larger than 4 MiB", "leave out what is no part of the design"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			d, problems := ReadFile(tc.path)
			require.Nil(t, d)
			require.Equal(t, Problems{{Position: Position{File: tc.path}, Found: tc.found, Remedy: tc.remedy}}, problems)
		})
	}
}

// No file can be made unreadable for a user who may read everything, so the
// error itself stands for it.
func TestNoPermission(t *testing.T) {
	problems := unread("bed.json", &fs.PathError{Op: "open", Path: "bed.json", Err: fs.ErrPermission})
	require.Equal(t, "bed.json: no permission to read the file; give yourself leave to read it, or ask its owner", problems.Error())
}

func TestReadAllIsBounded(t *testing.T) {
	text, problems := ReadAll("-", strings.NewReader("{}"))
	require.Empty(t, problems)
	require.Equal(t, "{}", string(text))
	endless := &counting{}
	_, problems = ReadAll("-", endless)
	require.Equal(t, "-: the file is larger than 4 MiB; leave out what is no part of the design", problems.Error())
	require.LessOrEqual(t, endless.read, 2*MaxSize)
	_, problems = ReadAll("-", failing{})
	require.Equal(t, "-: the file cannot be read: the disk is gone", problems.Error())
}

type counting struct{ read int }

func (c *counting) Read(p []byte) (int, error) {
	c.read += len(p)
	return len(p), nil
}

type failing struct{}

func (failing) Read([]byte) (int, error) { return 0, errors.New("the disk is gone") }
