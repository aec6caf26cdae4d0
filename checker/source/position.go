package source

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/rivo/uniseg"
)

// mark is an offset whose line and column are known. There is one at the start
// of each line and one in every stretch of markEvery bytes, so that the column
// of a place on a line of megabytes is as cheap as any other.
type mark struct{ offset, line, column int32 }

const markEvery = 512

// marksOf finds the lines of a text. A line ends at LF, CRLF or a lone CR.
func marksOf(text []byte) []mark {
	marks := []mark{{0, 1, 1}}
	here := marks[0]
	for i := 0; i < len(text); {
		if i-int(marks[len(marks)-1].offset) >= markEvery {
			here.offset = int32(i)
			marks = append(marks, here)
		}
		size := runeSize(text[i:])
		here.column++
		if text[i] == '\n' || text[i] == '\r' && (i+1 == len(text) || text[i+1] != '\n') {
			here = mark{int32(i + 1), here.line + 1, 1}
			marks = append(marks, here)
		}
		i += size
	}
	return marks
}

func runeSize(text []byte) int {
	if text[0] < utf8.RuneSelf {
		return 1
	}
	_, size := utf8.DecodeRune(text)
	return size
}

// at gives the position of an offset.
func (d *Document) at(offset int) Position {
	i, found := slices.BinarySearchFunc(d.marks, offset, func(m mark, o int) int { return cmp.Compare(int(m.offset), o) })
	if !found {
		i--
	}
	m := d.marks[i]
	return Position{d.name, int(m.line), int(m.column) + utf8.RuneCount(d.text[m.offset:offset])}
}

// offset is the reverse of at, for a position inside the text.
func (d *Document) offset(p Position) int {
	i, found := slices.BinarySearchFunc(d.marks, p, func(m mark, p Position) int {
		return cmp.Or(cmp.Compare(int(m.line), p.Line), cmp.Compare(int(m.column), p.Column))
	})
	if !found {
		i--
	}
	offset := int(d.marks[i].offset)
	for column := int(d.marks[i].column); column < p.Column && offset < len(d.text); column++ {
		offset += runeSize(d.text[offset:])
	}
	return offset
}

// caretBefore and caretAfter bound how many characters of a long line are
// shown on the two sides of the caret.
const caretBefore, caretAfter = 40, 30

// Caret gives the line of the file that the position is on, and under it a
// caret below the column. A long line is cut at both ends, and control
// characters are shown as escapes. It is empty for the file as a whole.
func (d *Document) Caret(p Position) string {
	if p.Line == 0 {
		return ""
	}
	here := d.offset(p)
	before, after := d.lineBefore(here), d.lineAfter(here)
	return before + after + "\n" + strings.Repeat(" ", uniseg.StringWidth(before)) + "^"
}

func (d *Document) lineBefore(here int) string {
	from, count := here, 0
	for from > 0 && !lineEnd(d.text[from-1]) && count < caretBefore {
		_, size := utf8.DecodeLastRune(d.text[:from])
		from, count = from-size, count+1
	}
	line := strings.TrimLeft(string(d.text[from:here]), " \t")
	if count == caretBefore && from > 0 && !lineEnd(d.text[from-1]) {
		line = "…" + line
	}
	return Clean(strings.ReplaceAll(line, "\t", " "))
}

func (d *Document) lineAfter(here int) string {
	to, count := here, 0
	for to < len(d.text) && !lineEnd(d.text[to]) && count < caretAfter {
		to, count = to+runeSize(d.text[to:]), count+1
	}
	line := strings.TrimRight(string(d.text[here:to]), " \t")
	if count == caretAfter && to < len(d.text) && !lineEnd(d.text[to]) {
		line += "…"
	}
	return Clean(strings.ReplaceAll(line, "\t", " "))
}

func lineEnd(b byte) bool { return b == '\n' || b == '\r' }
