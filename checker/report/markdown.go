package report

import (
	"html"
	"regexp"
	"strings"

	"greysill/checker/source"
)

// markdown is a text in CommonMark, paragraph by paragraph. Everything that comes
// from a file goes through escaped or code.
type markdown struct {
	strings.Builder
}

func (m *markdown) heading(level int, text string) {
	m.paragraph(strings.Repeat("#", level) + " " + text)
}

func (m *markdown) paragraph(text string) { m.WriteString(text + "\n\n") }

func (m *markdown) item(text string) { m.WriteString("- " + text + "\n") }

// table writes a heading row and begins a table; rows follow.
func (m *markdown) table(heads ...string) {
	m.row(heads...)
	m.WriteString(strings.Repeat("| --- ", len(heads)) + "|\n")
}

func (m *markdown) row(cells ...string) {
	m.WriteString("| " + strings.Join(cells, " | ") + " |\n")
}

func (m *markdown) end() { m.WriteByte('\n') }

var (
	// marks are what CommonMark reads as markup anywhere in a line.
	marks = regexp.MustCompile("[\\\\`*_\\[\\]|~<>&]")
	// links are what forges turn into mentions, references, formulas, pictures and
	// addresses even where it is written plainly.
	links = regexp.MustCompile(`[@#$]|:[a-z/+-]|(?i:www)\.`)
	// beginnings are what begins a list, a heading or a line under one.
	beginnings = regexp.MustCompile(`^([-+=]|\d+[.)])`)
)

// parted stands inside what a forge would make a link of: a comment, which shows
// nothing.
const parted = "<!-- -->"

// escaped gives a text from a file on one line, so that it shows as it is
// written and nothing in it becomes markup, a link or a mention.
func escaped(text string) string {
	text = strings.Join(strings.Fields(strings.ReplaceAll(source.Clean(text), nbsp, " ")), " ")
	text = marks.ReplaceAllStringFunc(text, func(mark string) string {
		if strings.ContainsAny(mark, "<>&") {
			return html.EscapeString(mark)
		}
		return `\` + mark
	})
	text = links.ReplaceAllStringFunc(text, func(link string) string {
		if strings.HasSuffix(link, ".") {
			return link[:len(link)-1] + parted + "."
		}
		return link[:1] + parted + link[1:]
	})
	return beginnings.ReplaceAllStringFunc(text, func(begin string) string {
		last := len(begin) - 1
		return begin[:last] + `\` + begin[last:]
	})
}

// code gives a name, a place or a quantity in the type of code, where nothing is
// markup; the fence is longer than any run of backticks inside.
func code(text string) string {
	text = source.Clean(text)
	fence := "`"
	for strings.Contains(text, fence) {
		fence += "`"
	}
	if fence != "`" {
		text = " " + text + " "
	}
	return fence + strings.ReplaceAll(text, "|", `\|`) + fence
}
