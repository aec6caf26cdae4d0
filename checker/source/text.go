package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Clean makes text from a file safe to show: control characters, line and
// paragraph separators, marks that turn the direction of writing, and bytes
// that are not UTF-8 are shown as escapes, so that text can neither drive a
// terminal nor read other than it is.
func Clean(text string) string {
	if strings.IndexFunc(text, hidden) < 0 && utf8.ValidString(text) {
		return text
	}
	var b strings.Builder
	for i, r := range text {
		switch {
		case r == utf8.RuneError && !strings.HasPrefix(text[i:], "\uFFFD"):
			fmt.Fprintf(&b, `\x%02x`, text[i])
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(`\t`)
		case hidden(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

func hidden(r rune) bool {
	return unicode.In(r, unicode.Cc, unicode.Zl, unicode.Zp, unicode.Bidi_Control) || r == '\uFEFF'
}

// quoteLength bounds the characters of a file's text that a message repeats.
const quoteLength = 60

// Quote gives text from a file in quotes for a message: clean, and cut when it
// is long.
func Quote(text string) string { return `"` + Cut(text) + `"` }

// Cut is Quote without the quotes.
func Cut(text string) string {
	count := 0
	for i := range text {
		if count == quoteLength {
			return Clean(text[:i]) + "…"
		}
		count++
	}
	return Clean(text)
}
