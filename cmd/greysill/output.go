package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"greysill/checker/report"
)

// target is one report wanted: its kind and where it goes.
type target struct {
	kind string
	file string // "-" for standard output
}

// parseTargets reads the values of --report, KIND[=FILE] each. Without any, the
// text report goes to standard output.
func parseTargets(values []string) ([]target, error) {
	if len(values) == 0 {
		return []target{{kind: "text", file: "-"}}, nil
	}
	var targets []target
	for _, value := range values {
		kind, file, given := strings.Cut(value, "=")
		if !slices.Contains(report.Kinds, kind) {
			return nil, fmt.Errorf("--report: no such kind of report: %q; the kinds are %s", kind, strings.Join(report.Kinds, ", "))
		}
		if given && file == "" {
			return nil, fmt.Errorf("--report %s: a file name is missing after the equals sign", value)
		}
		if !given {
			file = "-"
		}
		targets = append(targets, target{kind, file})
	}
	return targets, distinct(targets)
}

// distinct refuses two reports for one place: the second would destroy the
// first.
func distinct(targets []target) error {
	seen := map[string]string{}
	for _, t := range targets {
		place := t.file
		if place != "-" {
			place = filepath.Clean(place)
		}
		if other, taken := seen[place]; taken {
			where := "the file " + t.file
			if t.file == "-" {
				where = "standard output"
			}
			return fmt.Errorf("--report: %s and %s would both go to %s; name a file for one of them: --report %s=FILE", other, t.kind, where, t.kind)
		}
		seen[place] = t.kind
	}
	return nil
}

// writable is a report's place: something to write to that is finished or given
// up.
type writable interface {
	io.Writer
	commit() error
	discard()
}

// openTarget opens a file to write to. A regular file, or one that is not there
// yet, is replaced whole or not at all, through any links that lead to it; a
// pipe or a device is written to as it is.
func openTarget(name string) (writable, error) {
	if target, err := filepath.EvalSymlinks(name); err == nil {
		name = target
	}
	info, err := os.Stat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return replace(name, 0o666, false)
	case err != nil:
		return nil, err
	case info.IsDir():
		return nil, fmt.Errorf("%s is a folder; name a file in it", name)
	case !info.Mode().IsRegular():
		file, err := os.OpenFile(name, os.O_WRONLY, 0)
		return stream{file}, err
	case info.Mode().Perm()&0o222 == 0:
		return nil, fmt.Errorf("%s is read-only; it was left as it is", name)
	}
	return replace(name, info.Mode().Perm(), true)
}

// stream is a pipe or a device.
type stream struct{ *os.File }

func (s stream) commit() error { return s.Close() }
func (s stream) discard()      { s.Close() }

// replacement is a file that is written whole or not at all: into a temporary
// file beside it, which takes its place in the end.
type replacement struct {
	*os.File
	name string
}

// unfinished are the temporary files that are being written, to be removed when
// the program is interrupted.
var unfinished sync.Map

// replace begins the new content of a file. The mode of one that is there
// already stays; a new one's is what the system gives.
func replace(name string, mode fs.FileMode, there bool) (*replacement, error) {
	for try := 0; ; try++ {
		temp := fmt.Sprintf("%s.%d-%d.new", name, os.Getpid(), try)
		file, err := os.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if errors.Is(err, fs.ErrExist) && try < 100 {
			continue
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, plain(err))
		}
		unfinished.Store(temp, true)
		if there {
			err = file.Chmod(mode)
		}
		return &replacement{file, name}, err
	}
}

// plain takes the temporary file's name out of an error, which means nothing to
// the person who reads it.
func plain(err error) error {
	var where *fs.PathError
	if errors.As(err, &where) {
		return where.Err
	}
	return err
}

// commit puts what was written in the file's place.
func (r *replacement) commit() error {
	if err := r.Sync(); err != nil {
		return fmt.Errorf("%s: %w", r.name, plain(err))
	}
	if err := r.Close(); err != nil {
		return fmt.Errorf("%s: %w", r.name, plain(err))
	}
	unfinished.Delete(r.File.Name())
	return os.Rename(r.File.Name(), r.name)
}

// discard leaves the file as it was. After commit it does nothing.
func (r *replacement) discard() {
	if _, open := unfinished.LoadAndDelete(r.File.Name()); open {
		r.Close()
		os.Remove(r.File.Name())
	}
}

// removeUnfinished clears away what an interruption would leave behind.
func removeUnfinished() {
	unfinished.Range(func(name, _ any) bool {
		os.Remove(name.(string))
		return true
	})
}

// writeNew writes a file that is not there yet, whole or not at all.
func writeNew(name string, text []byte) error {
	r, err := replace(name, 0o666, false)
	if err != nil {
		return err
	}
	defer r.discard()
	if _, err := r.Write(text); err != nil {
		return fmt.Errorf("%s: %w", name, plain(err))
	}
	return r.commit()
}
