package rulebook

import (
	"slices"
	"strings"

	"greysill/checker/source"
)

// strict reads entries and collects what is wrong with them.
type strict struct{ problems source.Problems }

func (s *strict) fail(e *entry, found, expected, remedy string) {
	s.problems = append(s.problems, e.problem(e.at, found, expected, remedy))
}

// unknown reports that what is written is none of the names that there are.
func (s *strict) unknown(e *entry, what, written string, names []string) {
	expected, remedy := suggestion(written, names)
	s.fail(e, "there is no "+what+" "+source.Quote(written), expected, remedy)
}

// record requires names and values, with no name that is not known.
func (s *strict) record(e *entry, known ...string) bool {
	if e.shape != record {
		s.fail(e, "this is "+string(e.shape), "names and values: "+strings.Join(known, ", "), "")
		return false
	}
	for _, name := range e.names {
		if !slices.Contains(known, name) {
			expected, remedy := suggestion(name, known)
			s.problems = append(s.problems, e.problem(e.record[name].nameAt, "there is no entry "+source.Quote(name)+" here", expected, remedy))
		}
	}
	return true
}

// entries gives the members of a record that may have any names.
func (s *strict) entries(e *entry) map[string]*entry {
	if e.shape != record {
		s.fail(e, "this is "+string(e.shape), string(record), "")
	}
	return e.record
}

// required gives the member of that name, nil with a problem when there is none.
func (s *strict) required(e *entry, name string) *entry {
	member := e.record[name]
	if member == nil {
		s.fail(e, "the entry "+source.Quote(name)+" is missing", "", "")
	}
	return member
}

// text gives a member that must be there and say something.
func (s *strict) text(e *entry, name string) string {
	if member := s.required(e, name); member != nil {
		return s.words(member)
	}
	return ""
}

// optional gives a member that may be left out.
func (s *strict) optional(e *entry, name string) string {
	if member := e.record[name]; member != nil {
		return s.words(member)
	}
	return ""
}

func (s *strict) words(e *entry) string {
	if e.shape != text || strings.TrimSpace(e.text) == "" {
		found := "this is " + string(e.shape)
		if e.shape == text {
			found = "the text is empty"
		}
		s.fail(e, found, "some words", "")
		return ""
	}
	return strings.TrimSpace(e.text)
}

// list gives the items of a member, none when it is left out.
func (s *strict) list(e *entry, name string) []*entry {
	member := e.record[name]
	if member == nil {
		return nil
	}
	if member.shape != list {
		s.fail(member, "this is "+string(member.shape), string(list), "")
	}
	return member.list
}

// choice reads a word that must be one of a few.
func choice[W ~string](s *strict, e *entry, what string, words ...W) W {
	written := s.words(e)
	if written == "" || slices.Contains(words, W(written)) {
		return W(written)
	}
	names := make([]string, len(words))
	for i, w := range words {
		names[i] = string(w)
	}
	s.unknown(e, what, written, names)
	return ""
}
