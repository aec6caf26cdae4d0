// Package source reads JSON files strictly (RFC 8259, RFC 7493) and remembers
// where every value stands, so that whatever is said of a value later can
// point at its line and column.
package source

import (
	"fmt"
	"strings"
)

// Position is a place in a file. Lines and columns count from 1, columns in
// Unicode code points. Line 0 means the file as a whole.
type Position struct {
	File   string
	Line   int
	Column int
}

// String gives the position in the GNU form file:line:column.
func (p Position) String() string {
	if p.Line == 0 {
		return p.File
	}
	return fmt.Sprintf("%s:%d:%d", p.File, p.Line, p.Column)
}

// Problem is one thing that keeps a file from being used, in words for the
// person who wrote the file.
type Problem struct {
	Position
	Pointer  string // RFC 6901 pointer of the value, "" for the whole file
	Found    string // what is wrong, with what was found
	Expected string // what was expected, may be empty
	Remedy   string // what to do, may be empty
	Caret    string // the source line with a caret under the column, may be empty
}

// Problems is a list of problems in the order of the file.
type Problems []Problem

// Error gives each problem on a line of its own, as file:line:column: text. It
// can be shown on a terminal, whatever the file and its name hold.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = Clean(p.Position.String() + ": " + p.Sentence())
	}
	return strings.Join(lines, "\n")
}

// Sentence joins what was found, what was expected and what to do.
func (p Problem) Sentence() string {
	parts := []string{p.Found}
	if p.Expected != "" {
		parts = append(parts, "expected "+p.Expected)
	}
	if p.Remedy != "" {
		parts = append(parts, p.Remedy)
	}
	return strings.Join(parts, "; ")
}
