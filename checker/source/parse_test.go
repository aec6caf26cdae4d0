package source

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// anyValue draws a JSON value as encoding/json has it.
func anyValue() *rapid.Generator[any] {
	return rapid.Deferred(func() *rapid.Generator[any] {
		return rapid.OneOf(
			rapid.Just[any](nil),
			rapid.Bool().AsAny(),
			rapid.String().AsAny(),
			rapid.Custom(func(t *rapid.T) any {
				return json.Number(fmt.Sprint(float32(rapid.Float64Range(-1e9, 1e9).Draw(t, "number"))))
			}),
			rapid.SliceOfN(anyValue(), 0, 4).AsAny(),
			rapid.MapOfN(rapid.String(), anyValue(), 0, 4).AsAny(),
		)
	})
}

// Whatever encoding/json writes is read as the same value, and every place
// leads back to the text of its value.
func TestPositionsCoverTheInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		written, err := json.MarshalIndent(anyValue().Draw(t, "value"), "", rapid.SampledFrom([]string{"", "  ", "\t"}).Draw(t, "indent"))
		require.NoError(t, err)
		end := rapid.SampledFrom([]string{"\n", "\r\n", "\r"}).Draw(t, "line end")
		text := strings.ReplaceAll(string(written), "\n", end)
		d, problems := Parse("x.json", []byte(text))
		require.Empty(t, problems)
		requireCovered(t, d, "", d.Value(), func(p Position) string {
			lines := strings.SplitN(text, end, p.Line)
			return string([]rune(lines[p.Line-1])[p.Column-1:])
		})
	})
}

// requireCovered compares each value with what encoding/json reads at its
// place; from gives the text from a position on, found in another way.
func requireCovered(t require.TestingT, d *Document, pointer string, value any, from func(Position) string) {
	raw, at := d.Raw(pointer), d.Position(pointer)
	var again any
	decoder := json.NewDecoder(strings.NewReader(raw))
	decoder.UseNumber()
	require.NoError(t, decoder.Decode(&again))
	require.Equal(t, value, again, pointer)
	require.True(t, strings.HasPrefix(from(at), raw), "%s: %q is not at %s", pointer, raw, at)
	switch v := value.(type) {
	case []any:
		for i, item := range v {
			requireCovered(t, d, fmt.Sprintf("%s/%d", pointer, i), item, from)
		}
	case map[string]any:
		for name, item := range v {
			below := pointer + "/" + Escape(name)
			requireCovered(t, d, below, item, from)
			var written string
			require.NoError(t, json.NewDecoder(strings.NewReader(from(d.NamePosition(below)))).Decode(&written))
			require.Equal(t, name, written)
		}
	}
}

func TestBounds(t *testing.T) {
	deep := func(n int) string { return strings.Repeat("[", n) + strings.Repeat("]", n) }
	list := func(n int) string { return "[" + strings.TrimSuffix(strings.Repeat("0,", n), ",") + "]" }
	object := func(n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, `,"n%d":0`, i)
		}
		return "{" + strings.TrimPrefix(b.String(), ",") + "}"
	}
	blank := func(n int) string { return strings.Repeat(" ", n-1) + "0" }
	for _, tc := range []struct {
		name     string
		text     func(int) string
		greatest int
		problem  string
	}{
		{"depth", deep, MaxDepth, "lists and objects inside one another more than 32 deep"},
		{"values", func(n int) string { return list(n - 1) }, MaxValues, "the file holds more than 200000 values"},
		{"members", object, MaxMembers, "an object with more than 1000 members"},
		{"size", blank, MaxSize, "the file is larger than 4 MiB"},
		{"digits", func(n int) string { return strings.Repeat("9", n) }, MaxDigits, "the number 99999999999999999999999999999999999999999 is out of bounds"},
		{"exponent", func(n int) string { return fmt.Sprintf("1e%d", n) }, MaxExponent, "the number 1e101 is out of bounds"},
		{"negative exponent", func(n int) string { return fmt.Sprintf("1E-%d", n) }, MaxExponent, "the number 1E-101 is out of bounds"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, problems := Parse("x.json", []byte(tc.text(tc.greatest)))
			require.Empty(t, problems)
			d, problems := Parse("x.json", []byte(tc.text(tc.greatest+1)))
			require.Nil(t, d)
			require.Len(t, problems, 1)
			require.Equal(t, tc.problem, problems[0].Found)
		})
	}
}

func TestManyProblemsAreCounted(t *testing.T) {
	text := "[" + strings.Repeat(`{"id":1,"id":2},`, 5_000) + "0]"
	d, problems := Parse("x.json", []byte(text))
	require.Nil(t, d)
	require.Len(t, problems, MaxProblems+1)
	require.Equal(t, "4900 more problems are not listed", problems[MaxProblems].Found)
}

func TestNamesTwiceKeepTheFirst(t *testing.T) {
	d, problems := Parse("x.json", []byte(`{"id": [1, 2], "id": {"deep": [3]}, "after": 4}`))
	require.Len(t, problems, 1)
	require.Equal(t, map[string]any{"id": []any{json.Number("1"), json.Number("2")}, "after": json.Number("4")}, d.Value())
	require.Equal(t, "2", d.Raw("/id/1"))
	require.Equal(t, "4", d.Raw("/after"))
}

func FuzzParse(f *testing.F) {
	for _, folder := range []string{"json", "design"} {
		files, err := filepath.Glob(filepath.Join("../../testdata/broken", folder, "*.json"))
		require.NoError(f, err)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(f, err)
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		d, problems := Parse("x.json", text)
		for _, p := range problems {
			requireInside(t, p, text)
		}
		if d == nil {
			require.NotEmpty(t, problems)
			return
		}
		require.True(t, json.Valid(text), "encoding/json refuses what was accepted")
		if len(problems) == 0 {
			requireSameValue(t, d, text)
		}
	})
}

// requireInside requires that a problem says something and lies in the text.
func requireInside(t *testing.T, p Problem, text []byte) {
	require.NotEmpty(t, p.Found)
	lines := strings.Split(strings.ReplaceAll(strings.ReplaceAll(string(text), "\r\n", "\n"), "\r", "\n"), "\n")
	require.LessOrEqual(t, p.Line, len(lines))
	if p.Line > 0 {
		require.LessOrEqual(t, p.Column, utf8.RuneCountInString(lines[p.Line-1])+1)
	}
}

func requireSameValue(t *testing.T, d *Document, text []byte) {
	var want any
	decoder := json.NewDecoder(bytes.NewReader(text))
	decoder.UseNumber()
	require.NoError(t, decoder.Decode(&want))
	require.Equal(t, want, d.Value())
}

func BenchmarkParse(b *testing.B) {
	text, err := os.ReadFile("../../testdata/broken/sound.json")
	require.NoError(b, err)
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		_, problems := Parse("sound.json", text)
		require.Empty(b, problems)
	}
}
