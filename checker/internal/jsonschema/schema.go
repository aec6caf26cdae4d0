// Package jsonschema holds JSON values against a schema written in a part of
// JSON Schema, draft 2020-12: the keywords that the design schema uses, and no
// other. A schema with any other keyword is refused when it is loaded.
//
// A general library builds an error for every "if" that does not hold, and checks the
// schema itself by the schema of schemas at each start; that was most of the time of
// a review. The tests hold this package against such a library.
package jsonschema

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"strings"
)

// Schema is one schema, with the keywords that it has.
type Schema struct {
	Description string            `json:"description"`
	Examples    []json.RawMessage `json:"examples"`

	Types  types     `json:"type"`
	Const  *string   `json:"const"`
	Enum   []string  `json:"enum"`
	AllOf  []*Schema `json:"allOf"`
	OneOf  []*Schema `json:"oneOf"`
	If     *Schema   `json:"if"`
	Then   *Schema   `json:"then"`
	Ref    *Schema   `json:"-"`
	Format string    `json:"format"`

	Pattern   string   `json:"pattern"`
	MinLength int      `json:"minLength"` // in characters
	MaxLength *int     `json:"maxLength"` // in characters
	Minimum   *float64 `json:"minimum"`
	Maximum   *float64 `json:"maximum"`

	Items       *Schema `json:"items"`
	MinItems    int     `json:"minItems"`
	MaxItems    *int    `json:"maxItems"`
	UniqueItems bool    `json:"uniqueItems"` // only among texts

	Properties map[string]*Schema `json:"properties"`
	Required   []string           `json:"required"`
	Additional *bool              `json:"additionalProperties"`

	Keywords // of the whole document

	RefTo   string `json:"$ref"` // #/$defs/NAME
	pattern *regexp.Regexp
	format  func(text string) bool
}

// Keywords are those of a schema document as a whole.
type Keywords struct {
	Dialect string             `json:"$schema"`
	ID      string             `json:"$id"`
	Title   string             `json:"title"`
	Defs    map[string]*Schema `json:"$defs"`
}

// types are the JSON types that a schema takes, written as one or as a list.
type types []string

func (t *types) UnmarshalJSON(text []byte) error {
	if text[0] == '[' {
		return json.Unmarshal(text, (*[]string)(t))
	}
	*t = types{""}
	return json.Unmarshal(text, &(*t)[0])
}

// Formats say of each format's name whether a text has it.
type Formats map[string]func(text string) bool

// Load reads a schema document. All formats that it names must be known.
func Load(text []byte, formats Formats) (*Schema, error) {
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	root := &Schema{}
	if err := d.Decode(root); err != nil {
		return nil, fmt.Errorf("cannot read the schema: %w", err)
	}
	for s := range root.All() {
		if err := s.resolve(root.Defs, formats); err != nil {
			return nil, err
		}
	}
	return root, nil
}

// resolve finds what the schema names: another schema, a pattern, a format.
func (s *Schema) resolve(defs map[string]*Schema, formats Formats) (err error) {
	if s.RefTo != "" {
		if s.Ref = defs[strings.TrimPrefix(s.RefTo, "#/$defs/")]; s.Ref == nil {
			return fmt.Errorf("the schema refers to %s, which is not there", s.RefTo)
		}
	}
	if s.Format != "" {
		if s.format = formats[s.Format]; s.format == nil {
			return fmt.Errorf("the schema names the format %s, which is not known", s.Format)
		}
	}
	if s.Pattern != "" {
		s.pattern, err = regexp.Compile(s.Pattern)
	}
	return err
}

// All gives the schema and every schema written inside it.
func (s *Schema) All() func(yield func(*Schema) bool) {
	return func(yield func(*Schema) bool) { s.walk(yield) }
}

func (s *Schema) walk(yield func(*Schema) bool) bool {
	if s == nil {
		return true
	}
	if !yield(s) {
		return false
	}
	for _, below := range [][]*Schema{s.AllOf, s.OneOf, {s.If, s.Then, s.Items}} {
		for _, b := range below {
			if !b.walk(yield) {
				return false
			}
		}
	}
	for _, named := range []map[string]*Schema{s.Properties, s.Defs} {
		for _, b := range named {
			if !b.walk(yield) {
				return false
			}
		}
	}
	return true
}
