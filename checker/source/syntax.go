package source

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"unicode/utf8"

	"github.com/go-json-experiment/json/jsontext"
)

// expecting is what may stand at the place where reading stopped.
type expecting string

const (
	aValue     expecting = "a value"
	aName      expecting = "a name in quotes"
	aColon     expecting = "a colon"
	aSeparator expecting = "a comma or the closing bracket"
)

// stop is the place where reading stopped, with what is needed to say why.
type stop struct {
	*parser
	at       int // offset of the character at fault
	start    int // offset of the token that it is part of
	expected expecting
	rest     string // the text from at on, a little of it
}

// syntax words the decoder's error for the person who wrote the file.
func (p *parser) syntax(err error) Problem {
	at := len(p.text)
	var fault *jsontext.SyntacticError
	if errors.As(err, &fault) {
		at = min(int(fault.ByteOffset), len(p.text))
	}
	s := stop{parser: p, at: at, start: min(p.skip(" \t\r\n,:"), at), expected: p.expected(at)}
	s.rest = string(p.text[at:min(at+quoteLength, len(p.text))])
	if errors.Is(err, io.ErrUnexpectedEOF) || at == len(p.text) {
		return s.cutOff()
	}
	for _, try := range []func() (found, expected, remedy string){s.comment, s.inString, s.comma, s.number, s.quote, s.word, s.bracket} {
		if found, expected, remedy := try(); found != "" {
			return s.say(s.showAt(), found, expected, remedy)
		}
	}
	return s.say(s.at, s.character()+" cannot stand here", string(s.expected), "")
}

// expected tells from the decoder's state and the separators since the last
// token what may stand at the offset.
func (p *parser) expected(at int) expecting {
	kind, count := p.dec.StackIndex(p.dec.StackDepth())
	between := p.text[min(int(p.dec.InputOffset()), at):at]
	switch {
	case kind == '{' && count%2 == 1 && !bytes.Contains(between, []byte(":")):
		return aColon
	case kind == 0 || kind == '{' && count%2 == 1:
		return aValue
	case count > 0 && !bytes.Contains(between, []byte(",")):
		return aSeparator
	case kind == '{':
		return aName
	default:
		return aValue
	}
}

func (s stop) say(at int, found, expected, remedy string) Problem {
	return s.problem(s.Document.at(at), string(s.dec.StackPointer()), found, expected, remedy)
}

// showAt is the place to show: the start of a number or a word, the character
// itself within text in quotes.
func (s stop) showAt() int {
	if s.text[s.start] == '"' {
		return s.at
	}
	return s.start
}

func (s stop) character() string {
	r, size := utf8.DecodeRuneInString(s.rest)
	return "the character " + Quote(s.rest[:size]) + fmt.Sprintf(" (U+%04X)", r)
}

func (s stop) cutOff() Problem {
	if s.start < len(s.text) && s.text[s.start] == '"' {
		return s.say(s.start, "the text in quotes that begins here never ends", "", `close it with "`)
	}
	if len(s.open) == 0 {
		return s.say(s.at, "the file ends too early", string(s.expected), "")
	}
	var begins Position
	kind, _ := s.dec.StackIndex(s.dec.StackDepth())
	for _, n := range s.open {
		if open := s.nodes[n]; open.end == 0 && s.text[open.start] == byte(kind) {
			begins = s.Document.at(int(open.start))
		}
	}
	what, closing := "object", "}"
	if kind == '[' {
		what, closing = "list", "]"
	}
	return s.say(s.at, fmt.Sprintf("the file ends inside the %s that begins at line %d, column %d", what, begins.Line, begins.Column), "", "close it with "+closing)
}

func (s stop) comment() (found, expected, remedy string) {
	if s.text[s.start] == '"' || !strings.HasPrefix(s.rest, "//") && !strings.HasPrefix(s.rest, "/*") && !strings.HasPrefix(s.rest, "#") {
		return "", "", ""
	}
	return "a comment; JSON has none", "", `take it out, or put its words into a "note" entry`
}

func (s stop) inString() (found, expected, remedy string) {
	if s.text[s.start] != '"' || s.at == s.start {
		return "", "", ""
	}
	switch {
	case s.rest[0] == '\n' || s.rest[0] == '\r':
		return "the line ends inside text in quotes", "", `close the text with ", or write \n for a new line in it`
	case s.rest[0] == '\t':
		return "a tab inside text in quotes", "", `write \t, or a space`
	case s.rest[0] < ' ':
		return fmt.Sprintf("a control character (U+%04X) inside text in quotes", s.rest[0]), "", fmt.Sprintf(`write \u%04x, or take it out`, s.rest[0])
	case surrogate.MatchString(s.rest):
		return "half of a surrogate pair, " + s.rest[:6] + ", without the other half", "", "write the character itself"
	case s.rest[0] == '\\':
		_, size := utf8.DecodeRuneInString(s.rest[1:])
		return "the escape " + Cut(s.rest[:1+size]) + " is none that JSON has", `\" \\ \/ \b \f \n \r \t or \u and four hexadecimal digits`, `write \\ for a backslash`
	}
	return "", "", ""
}

var surrogate = regexp.MustCompile(`^\\u[dD][89a-fA-F][0-9a-fA-F]{2}`)

func (s stop) comma() (found, expected, remedy string) {
	switch {
	case s.rest[0] == ',' && s.expected == aSeparator:
		return "a comma with nothing after it", "", "take it out: the last entry has none"
	case s.rest[0] == ',':
		return "a comma with nothing before it", string(s.expected), "take it out, or put in what is missing"
	case s.expected == aSeparator && s.at > 0 && strings.HasPrefix(s.rest, `"`) && s.text[s.at-1] == '"':
		return "two quotation marks side by side", string(aSeparator), `write \" for a quotation mark inside the text, or in for inches`
	case s.expected == aSeparator && strings.IndexByte(`"{[`, s.rest[0]) >= 0:
		return "no comma between this and what stands before it", "", "put one in"
	case s.expected == aColon:
		return "no colon after a name", "", "put : between the name and its value"
	}
	return "", "", ""
}

func (s stop) quote() (found, expected, remedy string) {
	if r, _ := utf8.DecodeRuneInString(s.rest); strings.ContainsRune("'‘’‚“”„«»`´", r) {
		return s.character() + " used as a quotation mark", `the straight double quotation mark "`, ""
	}
	return "", "", ""
}

var numberFaults = []struct {
	written       *regexp.Regexp
	found, remedy string
}{
	{regexp.MustCompile(`^-?0[0-9]`), "a number with a zero in front", "take the zero out"},
	{regexp.MustCompile(`^-?0[xXoObB]`), "a number that is not decimal", "write it in decimal digits"},
	{regexp.MustCompile(`^-?\.[0-9]`), "a number that begins with the decimal point", "write a zero before the point"},
	{regexp.MustCompile(`^-?[0-9]+\.($|[^0-9])`), "a number that ends with the decimal point", "write digits after the point, or leave it out"},
	{regexp.MustCompile(`^-?[0-9.]+[eE]`), "a number whose exponent has no digits", "write digits after the e"},
	{regexp.MustCompile(`^\+`), "a number with a plus sign", "take the sign out"},
	{regexp.MustCompile(`^-?[0-9.]+ *[\pL%°"'/]`), "something after a number; a quantity stands in quotes with its unit", `write it like "24 in"`},
	{regexp.MustCompile(`^-?[0-9.]+\s+[-0-9.]`), "no comma between a number and the next", "put one in"},
	{regexp.MustCompile(`^-[^\pL]`), "a minus sign without digits", "write the number after it"},
}

// number looks at the number that the fault is in or follows.
func (s stop) number() (found, expected, remedy string) {
	from := s.start
	if s.expected == aSeparator {
		from = s.lastStart()
	}
	if from < 0 || strings.IndexByte("+-.0123456789", s.text[from]) < 0 {
		return "", "", ""
	}
	written := s.text[from:min(from+100, len(s.text))]
	for _, fault := range numberFaults {
		if fault.written.Match(written) {
			return fault.found, "", fault.remedy
		}
	}
	return "", "", ""
}

// lastStart is the offset of the value read last, -1 when it was none.
func (s stop) lastStart() int {
	if len(s.open) == 0 {
		return -1
	}
	return int(s.nodes[s.open[len(s.open)-1]].start)
}

var (
	bareWord = regexp.MustCompile(`^[-+]?[\pL_$][\pL\pN_$-]*`)
	meant    = map[string]string{"true": "true", "false": "false", "null": "null", "none": "null", "nil": "null", "undefined": "null", "yes": "true", "no": "false"}
	noNumber = map[string]bool{"nan": true, "infinity": true, "inf": true}
)

func (s stop) word() (found, expected, remedy string) {
	word := bareWord.FindString(string(s.text[s.start:min(s.start+quoteLength, len(s.text))]))
	lower := strings.ToLower(strings.TrimLeft(word, "-+"))
	switch {
	case word == "":
		return "", "", ""
	case s.expected == aName:
		return Quote(word) + " without quotation marks", "", `write names as "name"`
	case s.expected == aSeparator:
		return Cut(word) + " after the end of a value", string(aSeparator), "put the whole text in quotes"
	case noNumber[lower]:
		return Cut(word) + " is no number that JSON has", "", "leave the entry out when its value is not known"
	case meant[lower] != "":
		return Cut(word) + " is no word that JSON has", "true, false or null in lower case", "write " + meant[lower] + ", or leave the entry out"
	}
	return Cut(word) + " without quotation marks", string(s.expected), "put text in quotes"
}

func (s stop) bracket() (found, expected, remedy string) {
	kind, count := s.dec.StackIndex(s.dec.StackDepth())
	closes := s.rest[0] == '}' || s.rest[0] == ']'
	switch {
	case !closes:
		return "", "", ""
	case s.expected == aValue && kind == '{':
		return "a name without a value", "", "put the value after the colon, or take the name out"
	case kind == 0:
		return "a closing bracket that nothing opened", "", "take it out"
	case count > 0 || kind == '{':
		return s.rest[:1] + " closes what " + string(rune(kind)) + " opened", "", "put the right bracket, or the one that is missing before it"
	}
	return "", "", ""
}
