package design

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"greysill/checker/internal/jsonschema"
	"greysill/checker/source"
)

// example shows a value that the schema takes, as JSON with its names sorted.
func example(s *jsonschema.Schema) string {
	if len(s.Examples) == 0 {
		return "null"
	}
	var value any
	if err := json.Unmarshal(s.Examples[0], &value); err != nil {
		return "null"
	}
	text, err := json.Marshal(value)
	if err != nil {
		return "null"
	}
	return source.Cut(string(text))
}

func items(s *jsonschema.Schema) string {
	switch {
	case s.MaxItems == nil:
		return fmt.Sprintf("at least %d", s.MinItems)
	case s.MinItems == *s.MaxItems:
		return fmt.Sprintf("exactly %d", s.MinItems)
	case s.MinItems == 0:
		return fmt.Sprintf("at most %d", *s.MaxItems)
	default:
		return fmt.Sprintf("%d to %d", s.MinItems, *s.MaxItems)
	}
}

func between(least, greatest *float64) string {
	switch {
	case least == nil:
		return "of at most " + decimal(*greatest)
	case greatest == nil:
		return "of at least " + decimal(*least)
	default:
		return "from " + decimal(*least) + " to " + decimal(*greatest)
	}
}

func decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// count writes a number of things.
func count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

// firstSentence gives the first sentence of a description, to go on with after
// a semicolon.
func firstSentence(description string) string {
	sentence, _, _ := strings.Cut(description, ". ")
	_, size := utf8.DecodeRuneInString(sentence)
	return strings.ToLower(sentence[:size]) + strings.TrimSuffix(sentence[size:], ".")
}

func quoted(names []string) string {
	marked := make([]string, len(names))
	for i, n := range names {
		marked[i] = source.Quote(n)
	}
	return strings.Join(marked, ", ")
}
