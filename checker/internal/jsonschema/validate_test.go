package jsonschema_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/schema"
)

// What a value violates is required to be what a general library finds.
func TestKeywords(t *testing.T) {
	for _, test := range []struct {
		schema, value string
		violated      []string
	}{
		{`{"type": "integer"}`, `3.0`, nil},
		{`{"type": "integer"}`, `3.5`, []string{"type "}},
		{`{"type": "number"}`, `3`, nil},
		{`{"type": ["string", "array"]}`, `{}`, []string{"type "}},
		{`{"type": ["string", "array"]}`, `[]`, nil},
		{`{"type": "boolean"}`, `null`, []string{"type "}},
		{`{"type": "null"}`, `null`, nil},
		{`{"type": "string", "minLength": 2}`, `1`, []string{"type "}}, // and nothing more
		{`{"const": "a"}`, `"a"`, nil},
		{`{"const": "a"}`, `1`, []string{"const "}},
		{`{"enum": ["a", "b"]}`, `"c"`, []string{"enum "}},
		{`{"enum": ["a", "b"]}`, `["a"]`, []string{"enum "}},
		{`{"minLength": 2, "maxLength": 3}`, `"éé"`, nil},
		{`{"minLength": 2, "maxLength": 3}`, `"é"`, []string{"minLength "}},
		{`{"minLength": 2, "maxLength": 3}`, `"éééé"`, []string{"maxLength "}},
		{`{"maxLength": 3}`, `12345`, nil}, // no text
		{`{"pattern": "b"}`, `"abc"`, nil},
		{`{"pattern": "^b"}`, `"abc"`, []string{"pattern "}},
		{`{"format": "length"}`, `"2 ft 6 in"`, nil},
		{`{"format": "length"}`, `"2 gal"`, []string{"format "}},
		{`{"format": "length"}`, `2`, nil},
		{`{"format": "date"}`, `"2025-02-29"`, []string{"format "}},
		{`{"minimum": 0.5, "maximum": 1e2}`, `0.5`, nil},
		{`{"minimum": 0.5, "maximum": 1e2}`, `100`, nil},
		{`{"minimum": 0.5, "maximum": 1e2}`, `0.4999`, []string{"minimum "}},
		{`{"minimum": 0.5, "maximum": 1e2}`, `1.001E2`, []string{"maximum "}},
		{`{"minimum": 0.5}`, `"0"`, nil},
		{`{"minItems": 1, "maxItems": 2}`, `[]`, []string{"minItems "}},
		{`{"minItems": 1, "maxItems": 2}`, `[1, 2]`, nil},
		{`{"minItems": 1, "maxItems": 2}`, `[1, 2, 3]`, []string{"maxItems "}},
		{`{"uniqueItems": true}`, `["a", "b", 1]`, nil},
		{`{"uniqueItems": true}`, `["a", "b", "a"]`, []string{"uniqueItems "}},
		{`{"items": {"type": "string"}}`, `["a", 1, "b", 2]`, []string{"type /1", "type /3"}},
		{`{"required": ["a", "b"]}`, `{"b": null}`, []string{"required /a"}},
		{`{"properties": {"a/b~": {"type": "string"}}}`, `{"a/b~": 1, "c": 1}`, []string{"type /a~1b~0"}},
		{`{"properties": {"a": {}}, "additionalProperties": false}`, `{"a": 1, "b/c": 1, "": 1}`, []string{"additionalProperties /", "additionalProperties /b~1c"}},
		{`{"properties": {"a": {}}, "additionalProperties": true}`, `{"b": 1}`, nil},
		{`{"$ref": "#/$defs/a", "minLength": 3, "$defs": {"a": {"pattern": "^a"}}}`, `"b"`, []string{"minLength ", "pattern "}},
		{`{"allOf": [{"required": ["a"]}, {"required": ["b"]}]}`, `{}`, []string{"required /a", "required /b"}},
		{`{"oneOf": [{"required": ["a"]}, {"required": ["b"]}]}`, `{}`, []string{"oneOf "}},
		{`{"oneOf": [{"required": ["a"]}, {"required": ["b"]}]}`, `{"a": 1, "b": 1}`, []string{"oneOf "}},
		{`{"oneOf": [{"required": ["a"]}, {"required": ["b"]}]}`, `{"b": 1}`, nil},
		{`{"if": {"required": ["a"]}, "then": {"required": ["b"]}}`, `{"a": 1}`, []string{"required /b"}},
		{`{"if": {"required": ["a"]}, "then": {"required": ["b"]}}`, `{}`, nil},
		{`{"if": {"oneOf": [{"required": ["a"]}]}, "then": {"required": ["b"]}}`, `{"a": 1}`, []string{"required /b"}},
		{`{"if": {"oneOf": [{"required": ["a"]}]}, "then": {"required": ["b"]}}`, `{}`, nil},
	} {
		found := loadBoth(t, []byte(test.schema)).requireAgreement(t, decoded(t, test.value), test.schema)
		require.Equal(t, test.violated, found, "%s %s", test.schema, test.value)
	}
}

// designs are the examples and the broken designs of the project.
func designs(t testing.TB) []string {
	var texts []string
	for _, pattern := range []string{"examples/*.json", "testdata/broken/*.json", "testdata/broken/design/*.json"} {
		files, err := filepath.Glob(filepath.Join("../../..", pattern))
		require.NoError(t, err)
		require.NotEmpty(t, files)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			texts = append(texts, string(text))
		}
	}
	return texts
}

func designSchema(t testing.TB) *both {
	text, err := schema.FS.ReadFile("design.schema.json")
	require.NoError(t, err)
	return loadBoth(t, text)
}

func TestDesigns(t *testing.T) {
	s, violations := designSchema(t), 0
	for _, text := range designs(t) {
		violations += len(s.requireAgreement(t, decoded(t, text), text))
	}
	require.NotZero(t, violations)
}

// Designs with something spoilt anywhere in them.
func TestSpoiltDesigns(t *testing.T) {
	s, texts := designSchema(t), designs(t)
	rapid.Check(t, func(t *rapid.T) {
		design := decoded(t, rapid.SampledFrom(texts).Draw(t, "design"))
		for range rapid.IntRange(1, 4).Draw(t, "times") {
			design = spoilt(t, design)
		}
		text, err := json.MarshalIndent(design, "", " ")
		require.NoError(t, err)
		s.requireAgreement(t, design, string(text))
	})
}

// spoilt changes one value, takes it out, or puts another beside it, somewhere
// in the value.
func spoilt(t *rapid.T, value any) any {
	switch v := value.(type) {
	case map[string]any:
		if name := rapid.SampledFrom(append(names(v), "")).Draw(t, "name"); name != "" {
			return spoiltMember(t, v, name)
		}
		v[rapid.SampledFrom([]string{"depth", "kind", "at", "outline", "note", "a/b", "é %"}).Draw(t, "new name")] = another(t)
		return v
	case []any:
		if len(v) > 0 && rapid.Bool().Draw(t, "inside") {
			i := rapid.IntRange(0, len(v)-1).Draw(t, "item")
			v[i] = spoilt(t, v[i])
			return v
		}
		return append(v, another(t))
	}
	return another(t)
}

func spoiltMember(t *rapid.T, object map[string]any, name string) any {
	if rapid.IntRange(0, 4).Draw(t, "take out") == 0 {
		delete(object, name)
	} else {
		object[name] = spoilt(t, object[name])
	}
	return object
}

func another(t *rapid.T) any {
	return decoded(t, rapid.SampledFrom([]string{
		`null`, `true`, `0`, `-1.5`, `7.0`, `1e7`, `""`, `"2 in"`, `"12 gal"`, `"pond"`, `"x y"`, `"2025-02-30"`, `[]`, `{}`, `[1, 2]`, `[[1, 2], [3]]`,
		`{"id": "p", "kind": "pond"}`, `{"target": "p", "share": "50 %"}`, `"` + strings.Repeat("é", 80) + `"`,
	}).Draw(t, "another"))
}

func names(object map[string]any) []string {
	var names []string
	for name := range object {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}
