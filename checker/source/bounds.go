package source

import (
	"bytes"
	"fmt"
	"unicode/utf8"
)

// MaxProblems is how many problems of a file are told one by one.
const MaxProblems = 100

// AndMore adds to the problems of a file that there are so many more.
func (ps Problems) AndMore(file string, more int) Problems {
	if more <= 0 {
		return ps
	}
	return append(ps, Problem{
		Position: Position{File: file},
		Found:    fmt.Sprintf("%d more problems are not listed", more),
		Remedy:   "correct those above first",
	})
}

var byteOrderMark = []byte("\xEF\xBB\xBF")

// unreadable finds what makes a text no JSON text before any token is read.
func (d *Document) unreadable() (Problem, bool) {
	whole := Position{File: d.name}
	switch {
	case len(bytes.TrimLeft(d.text, " \t\r\n")) == 0:
		return Problem{Position: whole, Found: "the file is empty", Expected: "a JSON object"}, true
	case bytes.HasPrefix(d.text, byteOrderMark):
		return Problem{Position: d.at(0), Found: "the file begins with a byte order mark (U+FEFF)", Expected: "UTF-8 without one", Remedy: "save the file as UTF-8 without a byte order mark"}, true
	case bytes.HasPrefix(d.text, []byte("\xFF\xFE")), bytes.HasPrefix(d.text, []byte("\xFE\xFF")):
		return Problem{Position: whole, Found: "the file is in UTF-16", Expected: "UTF-8", Remedy: "save the file as UTF-8"}, true
	case bytes.IndexByte(d.text, 0) >= 0:
		return Problem{Position: whole, Found: "the file is not text: it holds NUL bytes", Expected: "a JSON text in UTF-8"}, true
	}
	return d.invalidUTF8()
}

func (d *Document) invalidUTF8() (Problem, bool) {
	if utf8.Valid(d.text) {
		return Problem{}, false
	}
	at := 0
	for {
		r, size := utf8.DecodeRune(d.text[at:])
		if r == utf8.RuneError && size == 1 {
			break
		}
		at += size
	}
	return d.problem(d.at(at), "", fmt.Sprintf(`the byte \x%02x is not UTF-8`, d.text[at]), "a JSON text in UTF-8", "save the file as UTF-8"), true
}

func (d *Document) trailing(at int) Problem {
	return d.problem(d.at(at), "", "more text after the end of the document", "the end of the file", "take it out, or put it inside the document")
}

func (d *Document) tooDeep(at int) Problem {
	return d.problem(d.at(at), "", fmt.Sprintf("lists and objects inside one another more than %d deep", MaxDepth), "", "")
}

func (d *Document) tooMany(at int) Problem {
	return d.problem(d.at(at), "", fmt.Sprintf("the file holds more than %d values", MaxValues), "", "")
}

func (d *Document) tooWide(at int) Problem {
	return d.problem(d.at(at), "", fmt.Sprintf("an object with more than %d members", MaxMembers), "", "")
}

func tooLarge(name string) Problem {
	return Problem{Position: Position{File: name}, Found: fmt.Sprintf("the file is larger than %d MiB", MaxSize>>20), Remedy: "leave out what is no part of the design"}
}
