package jsonschema_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/jsonschema"
)

func TestLoadRefuses(t *testing.T) {
	for text, want := range map[string]string{
		`{"anyOf": []}`:                          `"anyOf"`,
		`{"properties": {"a": {"minimun": 1}}}`:  `"minimun"`,
		`{"additionalProperties": {}}`:           "additionalProperties",
		`{"enum": [1]}`:                          "enum",
		`{"type": 1}`:                            "type",
		`{"$ref": "#/$defs/a"}`:                  "refers to #/$defs/a, which is not there",
		`{"$ref": "https://greysill.invalid/a"}`: "which is not there",
		`{"items": {"format": "colour"}}`:        `the format "colour", which is not known`,
		`{"pattern": "["}`:                       "a pattern that cannot be used",
		`{"type": "object"`:                      "cannot read the schema",
		`{"type": "object", "type": "array"}`:    "duplicate",
	} {
		_, err := jsonschema.Load([]byte(text), "date")
		require.ErrorContains(t, err, want, text)
	}
}

func TestAll(t *testing.T) {
	s, err := jsonschema.Load([]byte(`{"title": "1", "allOf": [{"title": "2"}], "oneOf": [{"title": "3"}], "if": {"title": "4"}, "then": {"title": "5"},
		"items": {"title": "6", "items": {"title": "7"}}, "properties": {"a": {"title": "8"}}, "$defs": {"b": {"title": "9", "properties": {"c": {"title": "10"}}}}}`))
	require.NoError(t, err)
	titles := map[string]int{}
	for _, below := range s.All() {
		titles[below.Title]++
	}
	require.Equal(t, map[string]int{"1": 1, "2": 1, "3": 1, "4": 1, "5": 1, "6": 1, "7": 1, "8": 1, "9": 1, "10": 1}, titles)
}
