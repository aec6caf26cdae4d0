package report

import (
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/source"
)

// The widths that a page may have, in columns.
const (
	leastWidth    = 40
	usualWidth    = 80
	greatestWidth = 120
)

// pen is what a paragraph is written with, as the parameter of the terminal's
// SELECT GRAPHIC RENDITION control of ECMA-48 (from memory). A drawing office
// marks what is wrong in red pencil and what to do in blue.
type pen string

const (
	ink    pen = ""
	bold   pen = "1"
	red    pen = "31"
	blue   pen = "94"
	column     = 5 // columns that each step of indentation takes
)

// page lays paragraphs out in lines of a given width. Everything put on it is
// cleaned, so that no text from a file can command the terminal.
type page struct {
	strings.Builder
	width  int
	colour bool
}

func newPage(o Options) *page {
	width := o.Width
	if width == 0 {
		width = usualWidth
	}
	return &page{width: min(max(width, leastWidth), greatestWidth), colour: o.Colour}
}

// put writes a paragraph indented by a number of steps.
func (p *page) put(steps int, with pen, text string) {
	p.lines(steps*column, steps*column, with, text)
}

// hang writes a paragraph whose second and further lines are indented by one
// step more than the first.
func (p *page) hang(steps int, with pen, text string) {
	p.lines(steps*column, (steps+1)*column, with, text)
}

// number writes a numbered paragraph, the number in the margin.
func (p *page) number(label, text string) {
	first := label + strings.Repeat(nbsp, max(1, column-uniseg.StringWidth(label)))
	p.lines(0, column, bold, first+text)
}

// heading writes the title of a section, with a line of dashes under it and
// room around.
func (p *page) heading(text string) {
	p.blank()
	p.blank()
	p.put(0, bold, text)
	p.put(0, ink, strings.Repeat("-", min(uniseg.StringWidth(text), p.width)))
	p.blank()
}

func (p *page) blank() { p.WriteByte('\n') }

// lines writes a paragraph with its first line and its further lines indented
// by the given columns.
func (p *page) lines(first, further int, with pen, text string) {
	indent := first
	for _, line := range wrap(source.Clean(text), p.width-first, p.width-further) {
		if line = strings.TrimRight(strings.ReplaceAll(line, nbsp, " "), " "); line != "" {
			p.WriteString(strings.Repeat(" ", indent) + p.written(line, with))
		}
		p.blank()
		indent = further
	}
}

// verbatim writes one line as it is, cleaned and indented but not wrapped.
func (p *page) verbatim(steps int, text string) {
	p.WriteString(strings.TrimRight(strings.Repeat(" ", steps*column)+source.Clean(text), " "))
	p.WriteByte('\n')
}

// fits reports whether every line, indented, fits on the page.
func (p *page) fits(steps int, lines []string) bool {
	return !slices.ContainsFunc(lines, func(line string) bool { return steps*column+uniseg.StringWidth(line) > p.width })
}

// written gives a line with the pen's colour, when the page has colours at all.
func (p *page) written(line string, with pen) string {
	if !p.colour || with == ink {
		return line
	}
	return "\x1b[" + string(with) + "m" + line + "\x1b[0m"
}

// nbsp keeps a value and its unit on one line. It is printed as a space.
const nbsp = "\u00a0"

// wrap breaks text into lines of at most the given columns, the first line
// having its own room. A word wider than that has a line to itself.
func wrap(text string, first, further int) []string {
	var lines []string
	var line strings.Builder
	used, room := 0, first
	for _, word := range words(text) {
		wide := uniseg.StringWidth(strings.TrimRight(word, " "))
		if used > 0 && used+wide > room {
			lines = append(lines, strings.TrimRight(line.String(), " "))
			line.Reset()
			used, room = 0, further
		}
		line.WriteString(word)
		used += wide + len(word) - len(strings.TrimRight(word, " "))
	}
	return append(lines, strings.TrimRight(line.String(), " "))
}

// words splits text where a line may end: after spaces, and beside wide
// characters, whose scripts write no spaces. Ids, rules and file names stay
// whole so that they can be copied, unless they are wider than any page.
func words(text string) []string {
	var words []string
	word, state := "", -1
	for text != "" {
		var segment string
		segment, text, _, state = uniseg.FirstLineSegmentInString(text, state)
		word += segment
		if text == "" || strings.HasSuffix(segment, " ") || wideEnd(segment) || wideStart(text) {
			for part := range strings.SplitAfterSeq(word, " ") { // the standard keeps a space before a comma in the line
				if part != "" {
					words = append(words, pieces(part)...)
				}
			}
			word = ""
		}
	}
	return words
}

func wideStart(text string) bool {
	_, _, width, _ := uniseg.FirstGraphemeClusterInString(text, -1)
	return width > 1
}

func wideEnd(text string) bool {
	width := 0
	for state := -1; text != ""; {
		_, text, width, state = uniseg.FirstGraphemeClusterInString(text, state)
	}
	return width > 1
}

// pieces cuts a word that is wider than any page.
func pieces(word string) []string {
	if len(word) <= greatestWidth || uniseg.StringWidth(word) <= greatestWidth {
		return []string{word}
	}
	var pieces []string
	piece, used := "", 0
	for state := -1; word != ""; {
		var cluster string
		var width int
		cluster, word, width, state = uniseg.FirstGraphemeClusterInString(word, state)
		if used += width; used > leastWidth-3*column {
			pieces, piece, used = append(pieces, piece), "", width
		}
		piece += cluster
	}
	return append(pieces, piece)
}
