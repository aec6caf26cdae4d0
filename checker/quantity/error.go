package quantity

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/agnivade/levenshtein"
)

// Error says why a text is not the quantity that was wanted, in words for the
// person who wrote it.
type Error struct {
	Found    string // what is wrong, with what was found
	Expected string // what was expected, may be empty
	Remedy   string // what to do, may be empty
}

// Error joins what was found, what was expected and what to do.
func (e *Error) Error() string {
	text := e.Found
	if e.Expected != "" {
		text += "; expected " + e.Expected
	}
	if e.Remedy != "" {
		text += "; " + e.Remedy
	}
	return text
}

// found begins an Error with what was found.
func found(format string, args ...any) *Error {
	return &Error{Found: fmt.Sprintf(format, args...)}
}

// do adds what to do.
func (e *Error) do(format string, args ...any) *Error {
	e.Remedy = fmt.Sprintf(format, args...)
	return e
}

// unknownUnit says that a word is no unit, and what may have been meant.
func unknownUnit(name, text string) *Error {
	e := found("unknown unit %q in %q", name, text)
	if remedy, ok := refused[name]; ok {
		return e.do("%s", remedy)
	}
	if near := nearest(name); near != "" {
		return e.do("did you mean %q?", near)
	}
	return e
}

// nearest gives the spelling of a unit that is closest to a name, "" when none
// is close: a third of its letters may differ, one at least.
func nearest(name string) string {
	best, least := "", len(name)+1
	for _, known := range names {
		long := utf8.RuneCountInString(known)
		far := levenshtein.ComputeDistance(strings.ToLower(name), strings.ToLower(known))
		if far < long && far <= max(1, long/3) && far < least {
			best, least = known, far
		}
	}
	return best
}
