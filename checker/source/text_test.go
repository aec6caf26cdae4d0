package source

import (
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestClean(t *testing.T) {
	for text, want := range map[string]string{
		"Fennel Hollow":       "Fennel Hollow",
		"日本 é 👩‍🌾":            "日本 é 👩‍🌾",
		"a\nb\tc\rd":          `a\nb\tc\u000dd`,
		"\x1b[2Jgone":         `\u001b[2Jgone`,
		"\u009b31m\x7f":       `\u009b31m\u007f`,
		"abc\u202edcba":       `abc\u202edcba`,
		"\u2066x\u2069":       `\u2066x\u2069`,
		"line\u2028break":     `line\u2028break`,
		"\ufeffmark":          `\ufeffmark`,
		"half \xff of \uFFFD": `half \xff of ` + "\uFFFD",
	} {
		require.Equal(t, want, Clean(text), "%q", text)
	}
}

func TestCutBoundsText(t *testing.T) {
	require.Equal(t, strings.Repeat("é", quoteLength), Cut(strings.Repeat("é", quoteLength)))
	require.Equal(t, strings.Repeat("é", quoteLength)+"…", Cut(strings.Repeat("é", quoteLength+1)))
	require.Equal(t, `"bed-1"`, Quote("bed-1"))
}

func TestCleanHidesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		clean := Clean(string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes")) + rapid.String().Draw(t, "text"))
		require.True(t, utf8.ValidString(clean))
		for _, r := range clean {
			require.False(t, unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r), "%U", r)
		}
	})
}
