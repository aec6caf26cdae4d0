// Package jsonschema holds JSON values against a schema written in a part of
// JSON Schema, draft 2020-12: the keywords that the design schema uses. A schema
// with any other keyword is refused when it is loaded.
//
// A general library makes an error of every "if" that does not hold, and holds
// the schema itself against the schema of schemas at each start: most of the
// time of a review. The tests hold this package against such a library.
package jsonschema

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Schema is one schema with its keywords.
type Schema struct {
	Description string           `json:"description"`
	Examples    []jsontext.Value `json:"examples"`

	// Of any value.
	Types Types     `json:"type"`
	Const *string   `json:"const"`
	Enum  []string  `json:"enum"`
	AllOf []*Schema `json:"allOf"`
	OneOf []*Schema `json:"oneOf"`
	If    *Schema   `json:"if"`
	Then  *Schema   `json:"then"`
	To    string    `json:"$ref"` // #/$defs/NAME
	Ref   *Schema   `json:"-"`    // what To leads to

	// Of text. Lengths are in characters.
	Format    string `json:"format"`
	Pattern   string `json:"pattern"`
	MinLength int    `json:"minLength"`
	MaxLength *int   `json:"maxLength"`
	pattern   *regexp.Regexp

	// Of numbers.
	Minimum *float64 `json:"minimum"`
	Maximum *float64 `json:"maximum"`

	// Of lists. Items are compared when they are texts.
	Items       *Schema `json:"items"`
	MinItems    int     `json:"minItems"`
	MaxItems    *int    `json:"maxItems"`
	UniqueItems bool    `json:"uniqueItems"`

	// Of objects.
	Properties map[string]*Schema `json:"properties"`
	Required   []string           `json:"required"`
	Additional *bool              `json:"additionalProperties"`

	// Of the document as a whole.
	Dialect string             `json:"$schema"`
	ID      string             `json:"$id"`
	Title   string             `json:"title"`
	Defs    map[string]*Schema `json:"$defs"`
}

// Types are the JSON types that a schema takes, written as one or as a list.
type Types []string

// UnmarshalJSON reads one type or a list of types.
func (t *Types) UnmarshalJSON(text []byte) error {
	if text[0] == '[' {
		return json.Unmarshal(text, (*[]string)(t))
	}
	*t = make(Types, 1)
	return json.Unmarshal(text, &(*t)[0])
}

// Load reads a schema document, which may name only the formats that are given.
// Its references must not lead round in a circle.
func Load(text []byte, formats ...string) (*Schema, error) {
	root := &Schema{}
	if err := json.Unmarshal(text, root, json.RejectUnknownMembers(true)); err != nil {
		return nil, fmt.Errorf("cannot read the schema: %w", err)
	}
	l := loader{defs: root.Defs, formats: formats, patterns: map[string]*regexp.Regexp{"": nil}}
	for _, s := range root.All() {
		if err := l.resolve(s); err != nil {
			return nil, err
		}
	}
	return root, nil
}

// loader finds what schemas name. Many have one pattern in common.
type loader struct {
	defs     map[string]*Schema
	formats  []string
	patterns map[string]*regexp.Regexp
}

func (l *loader) resolve(s *Schema) (err error) {
	if s.To != "" {
		if s.Ref = l.defs[strings.TrimPrefix(s.To, "#/$defs/")]; s.Ref == nil {
			return fmt.Errorf("the schema refers to %s, which is not there", s.To)
		}
	}
	if s.Format != "" && !slices.Contains(l.formats, s.Format) {
		return fmt.Errorf("the schema names the format %q, which is not known", s.Format)
	}
	pattern, known := l.patterns[s.Pattern]
	if !known {
		if pattern, err = regexp.Compile(s.Pattern); err != nil {
			return fmt.Errorf("the schema has a pattern that cannot be used: %w", err)
		}
		l.patterns[s.Pattern] = pattern
	}
	s.pattern = pattern
	return nil
}

// All gives the schema and every one written inside it.
func (s *Schema) All() []*Schema {
	if s == nil {
		return nil
	}
	all := []*Schema{s}
	inside := slices.Concat(s.AllOf, s.OneOf, []*Schema{s.If, s.Then, s.Items})
	inside = slices.AppendSeq(inside, maps.Values(s.Properties))
	inside = slices.AppendSeq(inside, maps.Values(s.Defs))
	for _, below := range inside {
		all = append(all, below.All()...)
	}
	return all
}
