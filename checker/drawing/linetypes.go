package drawing

import "strings"

// lineType is how lines of one meaning are drawn. Widths are those of ISO 128
// (0.13, 0.18, 0.25, 0.35, 0.5, 0.7 mm, from memory).
type lineType struct {
	class string
	css   string
}

const (
	solid  = "stroke-linecap:butt"
	accent = "#9c1c1c"
	grey   = "#555"
)

// lineTypes has every class of line, filling and lettering that drawings use.
var lineTypes = []lineType{
	{"boundary", pen(0.5, "9 1.6 1.2 1.6 1.2 1.6")},
	{"building", "fill:url(#hatch);" + strokeOf(0.5, "")},
	{"thing", pen(0.25, "")},
	{"water", pen(0.35, "7 1 1 1")},
	{"ground-form", pen(0.35, "1.6 0.8")},
	{"extent", pen(0.25, "2.4 1")},
	{"service", pen(0.25, "5 1.4")},
	{"contour", pen(0.13, "") + ";stroke:" + grey},
	{"contour main", pen(0.25, "") + ";stroke:" + grey},
	{"zone", pen(0.25, "0.25 1.1") + ";stroke-linecap:round"},
	{"zone missed", pen(0.35, "0.35 0.9") + ";stroke:" + accent + ";stroke-linecap:round"},
	{"part", "fill:#fff;" + strokeOf(0.5, "")},
	{"bed", "fill:url(#gravel);" + strokeOf(0.5, "")},
	{"bed-edge", pen(0.5, "")},
	{"mulch", "fill:url(#bark);" + strokeOf(0.5, "")},
	{"open-water", "fill:url(#waves);" + strokeOf(0.5, "")},
	{"trench", "fill:url(#crosses);" + strokeOf(0.35, "")},
	{"drain", pen(0.5, "")},
	{"overflow", pen(0.5, "3 1.2")},
	{"header", pen(0.35, "1 0.6")},
	{"arrow", "fill:#000;stroke:none"},
	{"dimension", pen(0.25, "") + ";stroke:" + accent},
	{"dimension-end", "fill:" + accent + ";stroke:none"},
	{"leader", pen(0.13, "")},
	{"frame", pen(0.35, "")},
	{"fine", pen(0.18, "")},
	{"heavy", pen(0.5, "")},
	{"ground", pen(0.7, "")},
	{"dug", pen(0.5, "")},
	{"frost", pen(0.25, "4 1 0.5 1 0.5 1")},
	{"surface", pen(0.25, "")},
	{"storm", pen(0.35, "3 0.8")},
	{"storm-mark", pen(0.7, "") + ";stroke:" + accent},
	{"layer-gravel", "fill:url(#gravel);" + strokeOf(0.18, "")},
	{"layer-coarse", "fill:url(#stones);" + strokeOf(0.18, "")},
	{"layer-sand", "fill:url(#sand);" + strokeOf(0.18, "")},
	{"layer-bark", "fill:url(#bark);" + strokeOf(0.18, "")},
	{"axis", pen(0.25, "")},
	{"grid", pen(0.13, "0.4 1") + ";stroke:" + grey},
	{"bar", "fill:#333;" + strokeOf(0.18, "")},
	{"bar second", "fill:url(#hatch);" + strokeOf(0.25, "")},
	{"bar third", "fill:#fff;" + strokeOf(0.25, "")},
	{"band", "fill:#bbb;stroke:none"},
	{"solid", "fill:#000;stroke:none"},
	{"paper", "fill:#fff;stroke:none"},
	{"mark", strokeOf(0.25, "") + ";fill:#fff"},
	{"mark fails", "fill:" + accent + ";stroke:" + accent},
	{"mark gap", "stroke-dasharray:0.7 0.5"},
	{"mark allowed", "stroke:" + grey},
	{"mark-fails", "fill:#fff;font-weight:bold"},
	{"mark-warns", "fill:#000"},
	{"mark-gap", "fill:#000"},
	{"mark-allowed", "fill:" + grey},
	{"id", halo + ";font-weight:bold"},
	{"note", halo},
	{"figure", halo + ";fill:" + accent + ";font-weight:bold"},
	{"level", halo + ";fill:#333"},
	{"service-letter", halo},
}

// halo keeps lettering readable where it lies over lines.
const halo = "paint-order:stroke;stroke:#fff;stroke-width:0.7;stroke-linejoin:round"

func pen(width float64, dashes string) string { return "fill:none;" + strokeOf(width, dashes) }

func strokeOf(width float64, dashes string) string {
	css := "stroke:#000;stroke-width:" + mm(width)
	if dashes != "" {
		css += ";stroke-dasharray:" + dashes
	}
	return css
}

// Stylesheet gives the styles of every line type for elements of the class
// drawing. It holds nothing that comes from a design.
func Stylesheet() string {
	var b strings.Builder
	b.WriteString(".drawing text{fill:#000;font-family:sans-serif}\n")
	for _, t := range lineTypes {
		b.WriteString(".drawing ." + strings.ReplaceAll(t.class, " ", ".") + "{" + t.css + "}\n")
	}
	return b.String()
}

// Patterns gives the fillings that drawings refer to, to stand once in a
// document before the drawings.
func Patterns() string {
	return `<svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false"><defs>` + strings.Join([]string{
		pattern("hatch", 1.6, `<path d="M-.4 2 2 -.4M.8 2 2 .8M-.4 .4 .4 -.4"/>`),
		pattern("gravel", 2, `<circle cx=".5" cy=".5" r=".28"/><circle cx="1.5" cy="1.4" r=".36"/>`),
		pattern("stones", 3, `<circle cx=".8" cy=".8" r=".55"/><circle cx="2.2" cy="2.2" r=".65"/>`),
		pattern("bark", 2, `<path d="M.2 .6 .9 .3M1.1 1.5 1.8 1.8"/>`),
		pattern("waves", 2.4, `<path d="M0 .8q.6-.6 1.2 0t1.2 0"/>`),
		pattern("crosses", 2, `<path d="M.6 1H1.4M1 .6V1.4"/>`),
		pattern("sand", 1, `<circle cx=".3" cy=".3" r=".12" style="fill:#000"/>`),
	}, "") + "</defs></svg>"
}

func pattern(id string, size float64, marks string) string {
	return `<pattern id="` + id + `" width="` + mm(size) + `" height="` + mm(size) + `" patternUnits="userSpaceOnUse">` +
		`<rect width="` + mm(size) + `" height="` + mm(size) + `" fill="#fff"/><g fill="none" stroke="#000" stroke-width=".13">` + marks + "</g></pattern>"
}
