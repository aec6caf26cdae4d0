// Package drawing makes the drawings of a design as SVG: site plan, section
// along the train, bed details and charts. Each is a pure function of what was
// worked out and found for the design, so that the same design gives the same
// bytes.
//
// Drawings are laid out in millimetres of paper. Line widths and line types
// carry the meaning, as in conventional drafting, so that a drawing reads in
// black and white; colour only repeats what a line type says already.
package drawing

import (
	"slices"

	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// Review is what drawings are made of: the figures of a design and what was
// found for it.
type Review struct {
	Figures    *figures.Figures
	Units      quantity.System
	Marks      []Mark      // findings to number on the drawings
	Clearances []Clearance // distances that were held against a limit
}

// Mark is a finding that a drawing numbers.
type Mark struct {
	Number int
	Of     Standing
	IDs    []string // of what it is about, as figures.Subject has them
}

// Standing is what a finding amounts to.
type Standing string

// The standings.
const (
	Fails    Standing = "fails"
	Warns    Standing = "warns"
	NotShown Standing = "not shown"
	Allowed  Standing = "allowed"
)

// Clearance is a distance in plan that was held against the least that a limit
// allows, both in metres.
type Clearance struct {
	Number          int           // of the finding, 0 when the distance is enough
	Item            *figures.Item // of a clearance list: a part and what it keeps clear of
	Distance, Limit float64
	Words           string // the distance and the limit: "2.46 ft (least 5 ft)"
	LimitWords      string // "5 ft"
}

// missed reports whether the distance is to be dimensioned as too small.
func (c *Clearance) missed() bool { return c.Number > 0 }

// Drawing is one drawing.
type Drawing struct {
	Name   string // unique among a design's drawings, letters and hyphens: "plan", "bed-1"
	Title  string // "Site plan"
	Desc   string // what it shows, for somebody who cannot see it
	Width  float64
	Height float64 // both in millimetres on paper
	Scale  Scale
	Notes  []string // what the drawing leaves out, and how it is to be read
	body   string
}

// Scale says how a drawing is reduced; the zero Scale is that of a chart.
type Scale struct {
	Ratio float64 // N of 1:N, horizontally; 0 when not to scale
	Words string  // of that: "1 in = 30 ft (1:360)"
	Times float64 // how many times larger heights are drawn than lengths; 0 or 1 when alike
	units quantity.System
}

// All makes every drawing that the design gives enough for, in the order in which
// they are read.
func All(r Review) []*Drawing {
	all := []*Drawing{Plan(r)}
	if s := Section(r); s != nil {
		all = append(all, s)
	}
	return slices.Concat(all, Beds(r), Charts(r))
}

// SVG gives the drawing as an element of an HTML document, "" when there is nothing
// to draw. Everything that comes from the design is escaped.
func (d *Drawing) SVG() string {
	if d.body == "" {
		return ""
	}
	c := &canvas{}
	c.open("svg", "xmlns", "http://www.w3.org/2000/svg", "role", "img", "class", "drawing",
		"style", "--wide:"+mm(d.Width)+"mm;--widest:"+mm(d.Width*d.onA3())+"mm", "viewBox", "0 0 "+mm(d.Width)+" "+mm(d.Height), "width", mm(d.Width)+"mm", "height", mm(d.Height)+"mm",
		"aria-labelledby", d.Name+"-title "+d.Name+"-desc", "data-drawing", d.Name, "data-ratio", mm(d.Scale.Ratio))
	c.word("title", d.Title, "id", d.Name+"-title")
	c.word("desc", d.Desc, "id", d.Name+"-desc")
	c.WriteString(d.body)
	c.close("svg")
	return c.String()
}

// onA3 says how many times larger a drawing is printed on A3 than on Letter or A4:
// as large as it fits at a scale in use.
func (d *Drawing) onA3() float64 {
	most := max(1, min(a3Width/d.Width, a3Height/d.Height))
	if d.Scale.Ratio == 0 {
		return most
	}
	return d.Scale.Ratio / reduced(d.Scale.units, d.Scale.Ratio/most).Ratio
}

// ScaleWords says at what scale the drawing is on each paper, "" for a chart.
func (d *Drawing) ScaleWords() string {
	if d.Scale.Ratio == 0 {
		return ""
	}
	words := "Scale " + d.Scale.Words
	if times := d.onA3(); times > 1 {
		words += " on Letter and A4, " + reduced(d.Scale.units, d.Scale.Ratio/times).Words + " on A3"
	}
	if d.Scale.Times > 1 {
		words += ", heights drawn " + mm(d.Scale.Times) + " times as large"
	}
	return words + ". It holds when the page is printed at 100 %; the scale bar always does."
}
