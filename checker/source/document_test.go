package source

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"
)

// The document and the pointers of RFC 6901, section 5 (from memory).
const pointers = `{
  "foo": ["bar", "baz"],
  "": 0,
  "a/b": 1,
  "c%d": 2,
  "e^f": 3,
  "g|h": 4,
  "i\\j": 5,
  "k\"l": 6,
  " ": 7,
  "m~n": 8
}`

func TestPointers(t *testing.T) {
	d, problems := Parse("pointers.json", []byte(pointers))
	require.Empty(t, problems)
	for pointer, want := range map[string]string{
		"":       pointers,
		"/foo":   `["bar", "baz"]`,
		"/foo/0": `"bar"`,
		"/":      "0",
		"/a~1b":  "1",
		"/c%d":   "2",
		"/e^f":   "3",
		"/g|h":   "4",
		`/i\j`:   "5",
		`/k"l`:   "6",
		"/ ":     "7",
		"/m~0n":  "8",
	} {
		require.Equal(t, want, d.Raw(pointer), "%q", pointer)
	}
}

func TestPositions(t *testing.T) {
	d, problems := Parse("bed.json", []byte("{\n  \"é\": {\"media\": [1,\r\n 2,\r\t\"三\", 4]}\n}"))
	require.Empty(t, problems)
	at := func(line, column int) Position { return Position{"bed.json", line, column} }
	for _, tc := range []struct {
		pointer     string
		value, name Position
	}{
		{"", at(1, 1), at(1, 1)},
		{"/é", at(2, 8), at(2, 3)},
		{"/é/media", at(2, 18), at(2, 9)},
		{"/é/media/0", at(2, 19), at(2, 19)},
		{"/é/media/1", at(3, 2), at(3, 2)},
		{"/é/media/2", at(4, 2), at(4, 2)},
		{"/é/media/3", at(4, 7), at(4, 7)},
		{"/é/media/4", at(2, 18), at(2, 18)},
		{"/é/media/x", at(2, 18), at(2, 18)},
		{"/é/depth", at(2, 8), at(2, 8)},
		{"/é/media/0/deeper/still", at(2, 19), at(2, 19)},
		{"/nothing", at(1, 1), at(1, 1)},
	} {
		require.Equal(t, tc.value, d.Position(tc.pointer), tc.pointer)
		require.Equal(t, tc.name, d.NamePosition(tc.pointer), tc.pointer)
	}
	require.Equal(t, "bed.json:4:2", d.Position("/é/media/2").String())
	require.Empty(t, d.Raw("/é/depth"))
}

func TestValue(t *testing.T) {
	d, problems := Parse("bed.json", []byte(`{"a": [true, null, "x\u00e9", 1.50, {}, []]}`))
	require.Empty(t, problems)
	require.Equal(t, map[string]any{"a": []any{true, nil, "xé", json.Number("1.50"), map[string]any{}, []any{}}}, d.Value())
}

func TestProblemPointsAtItsValue(t *testing.T) {
	d, problems := Parse("bed.json", []byte("{\n\t\"depth\": 24\n}"))
	require.Empty(t, problems)
	p := d.Problem("/depth", "a bare number", "a length", "add the unit")
	require.Equal(t, Problem{Position{"bed.json", 2, 11}, "/depth", "a bare number", "a length", "add the unit", "\"depth\": 24\n         ^"}, p)
	require.Equal(t, "bed.json:2:11: a bare number; expected a length; add the unit", Problems{p}.Error())
	require.Equal(t, Position{"bed.json", 2, 2}, d.NameProblem("/depth", "", "", "").Position)
}
