package design

import (
	"encoding/json"
	"fmt"
	"math/big"
	"strings"
	"unicode/utf8"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"greysill/checker/source"
)

// example shows a value that the schema takes, as JSON.
func example(s *jsonschema.Schema) string {
	if len(s.Examples) == 0 {
		return "null"
	}
	text, err := json.Marshal(s.Examples[0])
	if err != nil {
		return "null"
	}
	return source.Cut(string(text))
}

func items(s *jsonschema.Schema) string {
	switch {
	case s.MinItems == s.MaxItems:
		return fmt.Sprintf("exactly %d", s.MinItems)
	case s.MinItems < 0:
		return fmt.Sprintf("at most %d", s.MaxItems)
	case s.MaxItems < 0:
		return fmt.Sprintf("at least %d", s.MinItems)
	default:
		return fmt.Sprintf("%d to %d", s.MinItems, s.MaxItems)
	}
}

func between(least, greatest *big.Rat) string {
	switch {
	case least == nil:
		return "of at most " + greatest.RatString()
	case greatest == nil:
		return "of at least " + least.RatString()
	default:
		return "from " + least.RatString() + " to " + greatest.RatString()
	}
}

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

func texts(values []any) []string {
	var texts []string
	for _, v := range values {
		texts = append(texts, fmt.Sprint(v))
	}
	return texts
}

func quoted(names []string) string {
	marked := make([]string, len(names))
	for i, n := range names {
		marked[i] = source.Quote(n)
	}
	return strings.Join(marked, ", ")
}
