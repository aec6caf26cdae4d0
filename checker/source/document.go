package source

import (
	"strconv"
	"strings"
)

// Document is a JSON file that was read whole, with the place of every value
// and of every member's name. It is safe for concurrent use.
type Document struct {
	name  string
	text  []byte
	marks []mark
	value any
	nodes []node
	kids  []int32 // the children of each container, side by side
}

// node is one value of the document. Offsets are in bytes.
type node struct {
	name       string // of a member of an object
	nameAt     int32
	start, end int32
	kidsFrom   int32
	kidsTo     int32
	list       bool
}

// Name gives the file's name as it was given to Parse.
func (d *Document) Name() string { return d.name }

// Text gives the file's bytes as they were read. They must not be changed.
func (d *Document) Text() []byte { return d.text }

// Value gives the document as map[string]any, []any, string, bool, nil and
// json.Number. It must not be changed.
func (d *Document) Value() any { return d.value }

// Position gives the place of the value that the RFC 6901 pointer leads to, or
// of the nearest enclosing value when it leads nowhere.
func (d *Document) Position(pointer string) Position {
	n, _ := d.find(pointer)
	return d.at(int(n.start))
}

// NamePosition gives the place of a member's name, and of the value itself
// when it is not a member of an object.
func (d *Document) NamePosition(pointer string) Position {
	n, found := d.find(pointer)
	if !found || n.nameAt < 0 {
		return d.at(int(n.start))
	}
	return d.at(int(n.nameAt))
}

// Raw gives the value's text as written, "" when the pointer leads nowhere.
func (d *Document) Raw(pointer string) string {
	n, found := d.find(pointer)
	if !found {
		return ""
	}
	return string(d.text[n.start:n.end])
}

// Problem words a problem with the value that the pointer leads to.
func (d *Document) Problem(pointer, found, expected, remedy string) Problem {
	return d.problem(d.Position(pointer), pointer, found, expected, remedy)
}

// NameProblem words a problem with the name of the member that the pointer
// leads to.
func (d *Document) NameProblem(pointer, found, expected, remedy string) Problem {
	return d.problem(d.NamePosition(pointer), pointer, found, expected, remedy)
}

func (d *Document) problem(p Position, pointer, found, expected, remedy string) Problem {
	return Problem{Position: p, Pointer: pointer, Found: found, Expected: expected, Remedy: remedy, Caret: d.Caret(p)}
}

// find follows the pointer as far as it leads, and says whether that was all
// the way.
func (d *Document) find(pointer string) (node, bool) {
	n := d.nodes[0]
	if pointer == "" {
		return n, true
	}
	for token := range strings.SplitSeq(strings.TrimPrefix(pointer, "/"), "/") {
		kid, found := d.kid(n, Unescape(token))
		if !found {
			return n, false
		}
		n = kid
	}
	return n, true
}

func (d *Document) kid(n node, token string) (node, bool) {
	kids := d.kids[n.kidsFrom:n.kidsTo]
	if n.list {
		i, err := strconv.Atoi(token)
		if err != nil || i < 0 || i >= len(kids) {
			return node{}, false
		}
		return d.nodes[kids[i]], true
	}
	for _, k := range kids {
		if d.nodes[k].name == token {
			return d.nodes[k], true
		}
	}
	return node{}, false
}

var (
	escaper   = strings.NewReplacer("~", "~0", "/", "~1")
	unescaper = strings.NewReplacer("~1", "/", "~0", "~")
)

// Escape writes a member's name as a token of an RFC 6901 pointer.
func Escape(name string) string { return escaper.Replace(name) }

// Unescape reads a token of an RFC 6901 pointer.
func Unescape(token string) string {
	if !strings.Contains(token, "~") {
		return token
	}
	return unescaper.Replace(token)
}
