package drawing

import (
	"encoding/xml"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"greysill/checker/source"
)

// point is a place on the paper, in millimetres from the upper left corner.
type point struct{ x, y float64 }

func (p point) plus(dx, dy float64) point { return point{p.x + dx, p.y + dy} }

func (p point) to(q point) float64 { return math.Hypot(q.x-p.x, q.y-p.y) }

// canvas collects SVG elements.
type canvas struct{ strings.Builder }

// open begins an element with attributes given as names and values in turn.
func (c *canvas) open(tag string, attributes ...string) {
	c.WriteString("<" + tag)
	c.attributes(attributes)
	c.WriteString(">")
}

func (c *canvas) close(tag string) { c.WriteString("</" + tag + ">\n") }

func (c *canvas) attributes(attributes []string) {
	for i := 0; i+1 < len(attributes); i += 2 {
		c.WriteString(" " + attributes[i] + `="` + escaped(attributes[i+1]) + `"`)
	}
}

// empty writes an element without content.
func (c *canvas) empty(tag string, attributes ...string) {
	c.WriteString("<" + tag)
	c.attributes(attributes)
	c.WriteString("/>\n")
}

// word writes an element that holds text.
func (c *canvas) word(tag, text string, attributes ...string) {
	c.open(tag, attributes...)
	c.WriteString(escaped(text))
	c.close(tag)
}

func escaped(text string) string {
	var b strings.Builder
	xml.EscapeText(&b, []byte(source.Clean(text))) // a Builder takes everything
	return b.String()
}

// line writes an open line through the points.
func (c *canvas) line(class string, points []point, attributes ...string) {
	c.empty("path", append([]string{"class", class, "d", through(points)}, attributes...)...)
}

// ring writes a closed line through the points.
func (c *canvas) ring(class string, points []point, attributes ...string) {
	c.empty("path", append([]string{"class", class, "d", through(points) + "Z"}, attributes...)...)
	if f, filled := fillings[class]; filled {
		c.fill(f, points)
	}
}

func (c *canvas) circle(class string, at point, r float64) {
	c.empty("circle", "class", class, "cx", mm(at.x), "cy", mm(at.y), "r", mm(r))
}

func (c *canvas) rect(class string, b box) {
	c.empty("rect", "class", class, "x", mm(b.left), "y", mm(b.top), "width", mm(b.right-b.left), "height", mm(b.bottom-b.top))
	if f, filled := fillings[class]; filled {
		c.fill(f, []point{{b.left, b.top}, {b.right, b.top}, {b.right, b.bottom}, {b.left, b.bottom}})
	}
}

// straightness is how far off a line a point may lie, in millimetres, to be left out.
const straightness = 0.002

// straightened leaves out the points of a line that lie straight between their
// neighbours.
func straightened(points []point) []point {
	var kept []point
	for i, p := range points {
		if i > 0 && i+1 < len(points) {
			s := stroke{kept[len(kept)-1], points[i+1]}
			if long := s.a.to(s.b); long > 0 && s.off(p) < straightness && s.a.to(p) < long && s.b.to(p) < long {
				continue
			}
		}
		kept = append(kept, p)
	}
	return kept
}

// through gives the path data of a line through the points.
func through(points []point) string {
	var b strings.Builder
	for i, p := range straightened(points) {
		b.WriteString([]string{"M", "L"}[min(i, 1)] + mm(p.x) + " " + mm(p.y))
	}
	return b.String()
}

// Where a text lies by its place.
const (
	left   = "start"
	middle = "middle"
	right  = "end"
)

// shortText is up to how many letters a text is not fitted to a width, which hardly
// differs from face to face then.
const shortText = 3

// text writes one line of lettering of a height, its baseline at a place. It is
// fitted to the width that letters are taken to have, whatever face the reader's
// machine draws it in.
func (c *canvas) text(class, text string, at point, anchor string, size float64) {
	if text == "" {
		return
	}
	if anchor != middle {
		class += " " + anchor
	}
	attributes := []string{"class", class, "x", hundredths(at.x), "y", hundredths(at.y)}
	if size != smallLettering {
		attributes = append(attributes, "font-size", mm(size))
	}
	if utf8.RuneCountInString(text) > shortText {
		attributes = append(attributes, "textLength", hundredths(textWidth(text, size)), "lengthAdjust", "spacingAndGlyphs")
	}
	c.word("text", text, attributes...)
}

// hundredths writes a length in millimetres to a hundredth, where nothing is to be
// measured.
func hundredths(v float64) string { return mm(math.Round(v*100) / 100) }

// mm writes a length in millimetres, or a plain number, to a thousandth.
func mm(v float64) string {
	text := strconv.FormatFloat(v, 'f', 3, 64)
	text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}
