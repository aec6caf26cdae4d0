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
	maxFileSize  = 256 << 10 // bytes
	maxLayerSize = 1 << 20   // bytes of all its files
	maxRules     = 2000
	maxEntries   = 20000 // files and folders, whatever is in them
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
	line := []rune(strings.TrimRight(lines[p.Line-1], "\r"))
	at := max(0, min(p.Column-1, len(line)))
	before, after := shown(line[max(0, at-maxCaret):at]), shown(line[at:min(len(line), at+maxCaret)])
	indent := strings.Map(func(r rune) rune {
		if r == '\t' {
			return r
		}
		return ' '
	}, before)
	return before + after + "\n" + indent + "^"
}

// maxCaret bounds the characters shown on each side of a caret.
const maxCaret = 200

// shown makes a part of a line safe to show, its tabs left as they are.
func shown(line []rune) string {
	parts := strings.Split(string(line), "\t")
	for i := range parts {
		parts[i] = source.Clean(parts[i])
	}
	return strings.Join(parts, "\t")
}

// files are the files of one layer that the rule book is made of. Tests are
// kept out: they are no part of the rules in force.
type files struct {
	rules            []*file
	limits, cautions *file
}

// readLayer reads the layer's files. Folders named amendments hold layers of
// their own. It ends early where there is more than a layer may hold.
func readLayer(layer Layer) (files, source.Problems) {
	r := &reading{layer: layer}
	if err := fs.WalkDir(layer.FS, ".", r.visit); err != nil {
		r.refuse("cannot be read: "+err.Error(), "", "")
	}
	return r.files, r.problems
}

// reading is a layer as far as it has been read.
type reading struct {
	files
	layer    Layer
	problems source.Problems
	entries  int
	size     int // bytes
}

// refuse reports what is wrong with the layer as a whole.
func (r *reading) refuse(found, expected, remedy string) {
	r.problems = append(r.problems, (&file{layer: r.layer}).whole(found, expected, remedy))
}

func (r *reading) visit(name string, entry fs.DirEntry, err error) error {
	f := &file{layer: r.layer, path: name}
	if r.entries++; r.entries > maxEntries {
		r.refuse(fmt.Sprintf("holds more than %d files and folders", maxEntries), "a folder that holds rules alone", "name the folder of the rules, not one above it")
		return fs.SkipAll
	}
	switch {
	case err != nil:
		r.problems = append(r.problems, f.whole("cannot be read: "+err.Error(), "", ""))
		return nil
	case entry.IsDir() && name == "amendments":
		return fs.SkipDir
	case entry.Type()&fs.ModeSymlink != 0 && f.isFolder():
		r.problems = append(r.problems, f.whole("is a link to a folder or to a place outside, and rules behind it would not be read", "a folder of its own", "put the rules into it"))
		return nil
	case entry.IsDir() || !wanted(name):
		return nil
	}
	return r.take(f)
}

// take reads a file and puts it where it belongs.
func (r *reading) take(f *file) error {
	if problem, ok := f.read(); !ok {
		r.problems = append(r.problems, problem)
		return nil
	}
	switch f.path {
	case "limits.json":
		r.limits = f
	case "cautions.json":
		r.cautions = f
	default:
		r.rules = append(r.rules, f)
	}
	r.size += len(f.text)
	switch {
	case len(r.rules) > maxRules:
		r.refuse(fmt.Sprintf("holds more than %d rules", maxRules), "", "leave some out")
		return fs.SkipAll
	case r.size > maxLayerSize:
		r.refuse(fmt.Sprintf("holds files of more than %d MiB in all", maxLayerSize>>20), "", "leave some out")
		return fs.SkipAll
	}
	return nil
}

func wanted(name string) bool {
	return name == "limits.json" || name == "cautions.json" || strings.HasSuffix(name, ".rego") && !isTest(name)
}

// isTest reports whether the file holds tests of a rule.
func isTest(name string) bool { return strings.HasSuffix(name, "_test.rego") }

// Read gives a file of the layer, which has to be a regular one and not too large.
// An error is source.Problems.
func (l Layer) Read(name string) ([]byte, error) {
	f := &file{layer: l, path: name}
	if problem, ok := f.read(); !ok {
		return nil, source.Problems{problem}
	}
	return f.text, nil
}

// isFolder reports whether a link leads to a folder, or to where it may not lead.
func (f *file) isFolder() bool {
	info, err := fs.Stat(f.layer.FS, f.path)
	return !wanted(f.path) && (err != nil || info.IsDir())
}

// read reads a regular file: opening a pipe could wait for ever.
func (f *file) read() (source.Problem, bool) {
	text, found, err := readBounded(f.layer.FS, f.path)
	switch {
	case err != nil:
		return f.whole("cannot be read: "+err.Error(), "", ""), false
	case found != "":
		return f.whole(found, fmt.Sprintf("a file of at most %d KiB", maxFileSize>>10), ""), false
	}
	f.text = text
	return source.Problem{}, true
}

// readBounded reads a regular file that is not too large; found says what else it
// is.
func readBounded(from fs.FS, name string) (text []byte, found string, err error) {
	info, err := fs.Stat(from, name)
	switch {
	case err != nil:
		return nil, "", err
	case !info.Mode().IsRegular():
		return nil, "is no regular file", nil
	}
	opened, err := from.Open(name)
	if err != nil {
		return nil, "", err
	}
	defer opened.Close()
	text, err = io.ReadAll(io.LimitReader(opened, maxFileSize+1))
	if len(text) > maxFileSize {
		return nil, fmt.Sprintf("is larger than %d KiB", maxFileSize>>10), err
	}
	return text, "", err
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
