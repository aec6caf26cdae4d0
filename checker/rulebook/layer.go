package rulebook

import (
	"fmt"
	"io"
	"io/fs"
	"path"
	"regexp"
	"strings"

	"greysill/checker/source"
)

// BaseName is the name of the layer that the program brings along.
const BaseName = "base"

// Layer is one folder of rules, limits and cautions. A later layer's rule
// replaces an earlier one's with the same id whole, so that the two can never
// merge; a later limit or caution replaces the one of the same name.
type Layer struct {
	Name string // before its files' names in messages; of the base, said in reports too
	FS   fs.FS

	title string // of an amendment, said in reports of whatever it sets
}

// The bounds of a layer.
const (
	maxFileSize = 256 << 10 // bytes
	maxRules    = 2000
)

// file is one file of a layer as read.
type file struct {
	layer Layer
	path  string // within the layer
	text  []byte
}

func (f *file) name() string { return path.Join(f.layer.Name, f.path) }

// setBy gives the name by which reports say who set what the file holds.
func (f *file) setBy() string {
	if f.layer.title != "" {
		return f.layer.title
	}
	return f.layer.Name
}

func (f *file) whole(found, expected, remedy string) source.Problem {
	return source.Problem{Position: source.Position{File: f.name()}, Found: found, Expected: expected, Remedy: remedy}
}

// caret gives the line of the file with a caret under the column.
func (f *file) caret(p source.Position) string {
	lines := strings.Split(string(f.text), "\n")
	if p.Line < 1 || p.Line > len(lines) {
		return ""
	}
	line := strings.TrimRight(lines[p.Line-1], "\r")
	before := []rune(line)[:max(0, min(p.Column-1, len([]rune(line))))]
	indent := strings.Map(func(r rune) rune {
		if r == '\t' {
			return r
		}
		return ' '
	}, string(before))
	return line + "\n" + indent + "^"
}

// files are the files of one layer that the rule book is made of. Tests are
// kept out: they are no part of the rules in force.
type files struct {
	rules            []*file
	limits, cautions *file
}

// readLayer reads the layer's files. Folders named amendments hold layers of
// their own.
func readLayer(layer Layer) (files, source.Problems) {
	var (
		all      files
		problems source.Problems
	)
	walk := func(name string, entry fs.DirEntry, err error) error {
		f := &file{layer: layer, path: name}
		switch {
		case err != nil:
			problems = append(problems, f.whole("cannot be read: "+err.Error(), "", ""))
			return nil
		case entry.IsDir() && name == "amendments":
			return fs.SkipDir
		case entry.IsDir() || !wanted(name):
			return nil
		}
		if problem, ok := f.read(); !ok {
			problems = append(problems, problem)
			return nil
		}
		switch name {
		case "limits.json":
			all.limits = f
		case "cautions.json":
			all.cautions = f
		default:
			all.rules = append(all.rules, f)
		}
		return nil
	}
	if err := fs.WalkDir(layer.FS, ".", walk); err != nil {
		problems = append(problems, (&file{layer: layer}).whole("cannot be read: "+err.Error(), "", ""))
	}
	if len(all.rules) > maxRules {
		problems = append(problems, (&file{layer: layer}).whole(fmt.Sprintf("holds %d rules", len(all.rules)), fmt.Sprintf("at most %d", maxRules), ""))
	}
	return all, problems
}

func wanted(name string) bool {
	return name == "limits.json" || name == "cautions.json" || strings.HasSuffix(name, ".rego") && !isTest(name)
}

// isTest reports whether the file holds tests of a rule.
func isTest(name string) bool { return strings.HasSuffix(name, "_test.rego") }

func (f *file) read() (source.Problem, bool) {
	opened, err := f.layer.FS.Open(f.path)
	if err != nil {
		return f.whole("cannot be read: "+err.Error(), "", ""), false
	}
	defer opened.Close()
	f.text, err = io.ReadAll(io.LimitReader(opened, maxFileSize+1))
	if err != nil {
		return f.whole("cannot be read: "+err.Error(), "", ""), false
	}
	if len(f.text) > maxFileSize {
		return f.whole(fmt.Sprintf("is larger than %d KiB", maxFileSize>>10), fmt.Sprintf("at most %d KiB", maxFileSize>>10), "split it"), false
	}
	return source.Problem{}, true
}

var rulePath = regexp.MustCompile(`^([a-z][a-z0-9_]*)/([a-z][a-z0-9_]*)\.rego$`)

// id gives the id of the rule that the file holds, false when the file does not
// lie where a rule may.
func (f *file) id() (string, bool) {
	if !rulePath.MatchString(f.path) {
		return "", false
	}
	return strings.TrimSuffix(f.path, ".rego"), true
}
