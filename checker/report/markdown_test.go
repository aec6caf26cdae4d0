package report

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The expected texts follow CommonMark 0.31 on escapes, code spans and raw HTML
// (from memory), and what forges are known to make links of (common practice, no
// source).
func TestEscapedShowsTextAsItIsWritten(t *testing.T) {
	for text, want := range map[string]string{
		"plain text, 10 ft":       "plain text, 10 ft",
		"a_b *c* `d`":             `a\_b \*c\* ` + "\\`d\\`",
		"<script>&lt;":            `&lt;script&gt;&amp;lt;`,
		"![p](http://x.example)":  `!\[p\](http:<!-- -->//x.example)`,
		"@team #12 $x$":           `@<!-- -->team #<!-- -->12 $<!-- -->x$<!-- -->`,
		"www.x.example":           `www<!-- -->.x.example`,
		"1. first":                `1\. first`,
		"- item":                  `\- item`,
		"a|b ~~c~~":               `a\|b \~\~c\~\~`,
		"two\nlines\x1b[31m":      `two\\nlines\\u001b\[31m`,
		"R317-401-5: Table 3 :up": `R317-401-5: Table 3 :<!-- -->up`,
	} {
		require.Equal(t, want, escaped(text))
	}
}

func TestCodeIsFencedByMoreThanItHolds(t *testing.T) {
	require.Equal(t, "`bed-1`", code("bed-1"))
	require.Equal(t, "`` a`b ``", code("a`b"))
	require.Equal(t, "``` `` ```", code("``"))
	require.Equal(t, "`a\\|b`", code("a|b"))
}
