package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

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

// replacement is a file that is written whole or not at all: into a temporary
// file beside it, which takes its place in the end.
type replacement struct {
	*os.File
	name string
}

func replace(name string) (*replacement, error) {
	temp, err := os.CreateTemp(filepath.Dir(name), ".greysill-*")
	if err != nil {
		return nil, err
	}
	return &replacement{temp, name}, nil
}

// commit puts what was written in the file's place.
func (r *replacement) commit() error {
	if err := r.Chmod(0o644); err != nil {
		return err
	}
	if err := r.Sync(); err != nil {
		return err
	}
	if err := r.Close(); err != nil {
		return err
	}
	return os.Rename(r.File.Name(), r.name)
}

// discard leaves the file as it was. After commit it does nothing.
func (r *replacement) discard() {
	r.Close()
	os.Remove(r.File.Name())
}

// replaceFile writes a file whole or not at all.
func replaceFile(name string, text []byte) error {
	r, err := replace(name)
	if err != nil {
		return err
	}
	defer r.discard()
	if _, err := r.Write(text); err != nil {
		return err
	}
	return r.commit()
}
