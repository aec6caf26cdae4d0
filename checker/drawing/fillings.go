package drawing

import (
	"math"
	"strings"

	"greysill/checker/geometry"
)

// filling is what an area is filled with: parallel lines of a line type of its own,
// cut off at the edges. They are lines and no SVG pattern, since browsers print a
// pattern as a coarse picture as large as the page, one for each area.
type filling struct {
	class  string
	angle  float64 // of the lines to the right, in degrees
	apart  float64 // the lines
	period float64 // of their dashes, 0 for none; every other line is off by half of it
	dash   float64 // length of a dash, 0 for a dot
	pen    float64 // width of the line
}

// fillings has every filling by the class of the areas that have it.
var fillings = map[string]filling{
	"building": hatch, "bed": gravel, "layer-gravel": gravel, "layer-coarse": stones, "layer-sand": sand,
	"mulch": bark, "layer-bark": bark, "open-water": ripples, "trench": upright,
}

var (
	hatch   = filling{class: "of-hatch", angle: -45, apart: 1.4, pen: 0.13}
	gravel  = filling{class: "of-gravel", apart: 1.5, period: 2.1, pen: 0.5}
	stones  = filling{class: "of-stones", apart: 2.4, period: 3, pen: 1}
	sand    = filling{class: "of-sand", apart: 0.8, period: 1, pen: 0.22}
	bark    = filling{class: "of-bark", angle: -20, apart: 1.3, period: 2.2, dash: 0.9, pen: 0.18}
	ripples = filling{class: "of-ripples", apart: 1.6, period: 3.6, dash: 2, pen: 0.18}
	upright = filling{class: "of-upright", angle: 90, apart: 1.2, period: 2, dash: 0.9, pen: 0.18}
)

// css gives the line type of a filling.
func (f filling) css() string {
	if f.period == 0 {
		return pen(f.pen, "")
	}
	css := pen(f.pen, mm(f.dash)+" "+mm(f.period-f.dash))
	if f.dash == 0 {
		css += ";stroke-linecap:round"
	}
	return css
}

// edge is how far beyond the paper, from its upper left corner, an area is filled.
const edge = 450.0

// fill writes the lines that fill an area.
func (c *canvas) fill(f filling, ring []point) {
	sin, cos := math.Sincos(f.angle * math.Pi / 180)
	turned := make([]geometry.Point, len(ring))
	low, high := math.Inf(1), math.Inf(-1)
	for i, p := range ring {
		turned[i] = geometry.Point{X: p.x*cos + p.y*sin, Y: p.y*cos - p.x*sin}
		low, high = min(low, turned[i].Y), max(high, turned[i].Y)
	}
	var data strings.Builder
	for row := math.Ceil(max(low, -edge) / f.apart); row*f.apart < min(high, edge); row++ {
		y := row * f.apart
		cuts := levelCuts(turned, y)
		for i := 0; i+1 < len(cuts); i += 2 {
			from, to := f.begin(max(cuts[i], -edge)+f.inset(), row), min(cuts[i+1], edge)-f.inset()
			if from <= to {
				a, b := point{from*cos - y*sin, from*sin + y*cos}, point{to*cos - y*sin, to*sin + y*cos}
				data.WriteString(stepwise([]point{a, b}))
			}
		}
	}
	if data.Len() > 0 {
		c.empty("path", "class", f.class, "d", data.String())
	}
}

// inset keeps dots clear of the edges.
func (f filling) inset() float64 {
	if f.period > 0 {
		return f.pen / 2
	}
	return 0
}

// begin gives the first place from one on at which a dash of a row begins.
func (f filling) begin(from, row float64) float64 {
	if f.period == 0 {
		return from
	}
	shift := f.period / 2 * math.Mod(math.Abs(row), 2)
	return math.Ceil((from-shift)/f.period)*f.period + shift
}
