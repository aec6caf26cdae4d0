package source

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestPeek(t *testing.T) {
	for text, want := range map[string]string{
		`{"format": "a/1"}`:                         "a/1",
		`{"x": {"format": "b"}, "format": "a/1", ]`: "a/1",
		`{"format": "a", "format": "b"}`:            "a",
		`{"formát": "é", "format": "\u0061"}`:       "a",
		`{"format": 1, "format": "a"}`:              "",
		`{}`:                                        "",
		`["format", "a"]`:                           "",
		`"format"`:                                  "",
	} {
		found, err := Peek([]byte(text), "format")
		require.NoError(t, err, text)
		require.Equal(t, want, found, text)
	}
	for _, text := range []string{"", "{", `{"x": 01, "format": "a"}`, `{"format"`, `{"format": "a`, `{"format": }`, "[}", "\xEF\xBB\xBF{}", "\xFF\xFE{\x00"} {
		found, err := Peek([]byte(text), "format")
		require.Error(t, err, text)
		require.Empty(t, found, text)
	}
}

// Peek finds what Parse finds.
func TestPeekAgreesWithParse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		object := rapid.MapOfN(rapid.SampledFrom([]string{"a", "b", "format", "z"}), anyValue(), 0, 4).Draw(t, "object")
		text, err := json.Marshal(object)
		require.NoError(t, err)
		found, err := Peek(text, "format")
		require.NoError(t, err)
		want, _ := object["format"].(string)
		require.Equal(t, want, found)
	})
}
