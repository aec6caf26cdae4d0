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
	{"boundary", pen(0.5, "4.5 1 0.8 1 0.8 1")},
	{"building", "fill:#fff;" + strokeOf(0.5, "")},
	{"thing", pen(0.25, "")},
	{"water", pen(0.35, "7 1 1 1")},
	{"ground-form", pen(0.35, "1.6 0.8")},
	{"extent", pen(0.25, "2.4 1")},
	{"service", pen(0.25, "5 1.4")},
	{"contour", pen(0.13, "") + ";stroke:" + grey},
	{"contour main", pen(0.25, "") + ";stroke:" + grey},
	{"zone", pen(0.25, "0.5 0.9")},
	{"zone missed", pen(0.35, "0.6 0.8") + ";stroke:" + accent},
	{"part", "fill:#fff;" + strokeOf(0.5, "")},
	{"bed", "fill:#fff;" + strokeOf(0.5, "")},
	{"bed-edge", pen(0.5, "")},
	{"mulch", "fill:#fff;" + strokeOf(0.5, "")},
	{"open-water", "fill:#fff;" + strokeOf(0.5, "")},
	{"trench", "fill:#fff;" + strokeOf(0.35, "")},
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
	{"layer-gravel", "fill:#fff;" + strokeOf(0.18, "")},
	{"layer-coarse", "fill:#fff;" + strokeOf(0.18, "")},
	{"layer-sand", "fill:#fff;" + strokeOf(0.18, "")},
	{"layer-bark", "fill:#fff;" + strokeOf(0.18, "")},
	{"axis", pen(0.25, "")},
	{"grid", pen(0.13, "0.4 1") + ";stroke:" + grey},
	{"bar", "fill:#333;" + strokeOf(0.18, "")},
	{"bar second", "fill:#bbb;" + strokeOf(0.25, "")},
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
	b.WriteString(".drawing{font-size:" + mm(smallLettering) + "px}\n.drawing text{fill:#000;font-family:Arial,Helvetica,\"Liberation Sans\",sans-serif;text-anchor:middle}\n.drawing .start{text-anchor:start}\n.drawing .end{text-anchor:end}\n")
	for _, t := range lineTypes {
		b.WriteString(".drawing ." + strings.ReplaceAll(t.class, " ", ".") + "{" + t.css + "}\n")
	}
	for _, f := range []filling{hatch, gravel, stones, sand, bark, ripples, upright} {
		b.WriteString(".drawing ." + f.class + "{" + f.css() + "}\n")
	}
	return b.String()
}
