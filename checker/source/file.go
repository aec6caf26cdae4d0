package source

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
)

// ReadFile reads and parses a file. Whatever keeps the file from being read is
// one Problem. Only regular files are opened, so that it never waits on a pipe
// or a device.
func ReadFile(path string) (*Document, Problems) {
	text, problems := ReadBytes(path)
	if problems != nil {
		return nil, problems
	}
	return Parse(path, text)
}

// ReadBytes reads a regular file of at most MaxSize.
func ReadBytes(path string) ([]byte, Problems) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, unread(path, err)
	}
	if !info.Mode().IsRegular() {
		return nil, notRegular(path, info.Mode())
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, unread(path, err)
	}
	defer f.Close()
	return readAll(path, f, info.Size())
}

// ReadAll reads at most MaxSize; the name is for the problem.
func ReadAll(name string, r io.Reader) ([]byte, Problems) { return readAll(name, r, 0) }

// readAll makes room beforehand for the size that is expected.
func readAll(name string, r io.Reader, size int64) ([]byte, Problems) {
	var text bytes.Buffer
	text.Grow(int(min(size, MaxSize)) + bytes.MinRead)
	if _, err := text.ReadFrom(io.LimitReader(r, MaxSize+1)); err != nil {
		return nil, unread(name, err)
	}
	if text.Len() > MaxSize {
		return nil, Problems{tooLarge(name)}
	}
	return text.Bytes(), nil
}

func unread(path string, err error) Problems {
	problem := Problem{Position: Position{File: path}, Found: "the file cannot be read"}
	var where *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		problem.Found, problem.Remedy = "there is no such file", "check the name and the folder"
	case errors.Is(err, fs.ErrPermission):
		problem.Found, problem.Remedy = "no permission to read the file", "give yourself leave to read it, or ask its owner"
	case errors.As(err, &where):
		problem.Found += ": " + where.Err.Error()
	default:
		problem.Found += ": " + err.Error()
	}
	return Problems{problem}
}

func notRegular(path string, mode fs.FileMode) Problems {
	problem := Problem{Position: Position{File: path}, Found: "not a regular file but a pipe, a socket or a device", Remedy: "name a file"}
	if mode.IsDir() {
		problem.Found, problem.Remedy = "a folder, not a file", "name a file in it"
	}
	return Problems{problem}
}
