package drawing

import (
	"fmt"
	"math"

	"greysill/checker/quantity"
)

// The paper that a drawing may take, so that it prints whole, at the scale that
// it states, on Letter (216 × 279 mm), A4 (210 × 297 mm) and A3 (297 × 420 mm).
const (
	paperWidth  = 184.0
	paperHeight = 226.0
)

const foot = 0.3048 // m, exactly

// siteScales are the reductions of site drawings. In US units: feet to one inch of
// paper, as on an engineer's scale (common practice, no source). Else N of 1:N,
// after ISO 5455 with 25 and 40 between (from memory).
var (
	feetToInch = []float64{0.5, 1, 2, 4, 5, 10, 20, 30, 40, 50, 60, 80, 100, 200, 300, 400, 500}
	ratios     = []float64{5, 10, 20, 25, 50, 100, 200, 250, 400, 500}
)

// The paper that a drawing may take on A3, with room for its caption.
const (
	a3Width  = 271.0
	a3Height = 355.0
)

// fit gives the least reduction in use at which a width and a height in metres
// fit on so much paper, given in millimetres.
func fit(units quantity.System, width, height, paperWidth, paperHeight float64) Scale {
	return reduced(units, max(width/paperWidth, height/paperHeight, 1e-6)*1000)
}

// reduced gives the least reduction in use that is not below 1:N.
func reduced(units quantity.System, n float64) Scale {
	n *= 1 - 1e-9
	for power := 1.0; ; power *= 10 {
		if units == quantity.US {
			for _, feet := range feetToInch {
				if ratio := feet * power * 12; ratio >= n {
					return Scale{Ratio: ratio, Words: fmt.Sprintf("1 in = %s ft (1:%s)", mm(feet*power), mm(ratio)), units: units}
				}
			}
			continue
		}
		for _, ratio := range ratios {
			if ratio*power >= n {
				return Scale{Ratio: ratio * power, Words: "1:" + mm(ratio*power), units: units}
			}
		}
	}
}

// unitOf is the length of a foot or a metre in metres, with its symbol.
func unitOf(units quantity.System) (size float64, symbol string) {
	if units == quantity.US {
		return foot, "ft"
	}
	return 1, "m"
}

// round gives a round length in feet or metres.
func round(length float64, units quantity.System) string {
	size, symbol := unitOf(units)
	return mm(length/size) + " " + symbol
}

// roundBelow gives 1, 2 or 5 times a power of ten, the greatest that is not above a
// number.
func roundBelow(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, step := range []float64{5, 2} {
		if step*power <= x*(1+1e-9) {
			return step * power
		}
	}
	return power
}

// roundAbove is the least of 1, 2 or 5 times a power of ten that is not below a
// number.
func roundAbove(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, step := range []float64{1, 2, 5} {
		if step*power >= x*(1-1e-9) {
			return step * power
		}
	}
	return 10 * power
}

// scaleBar draws a bar of four lengths, alternately filled, with its left end at
// a place, at most so wide.
func (c *canvas) scaleBar(units quantity.System, ratio float64, at point, width float64) {
	size, symbol := unitOf(units)
	each := roundBelow(width / 4 / 1000 * ratio / size)
	wide := each * size / ratio * 1000
	for i := range 4 {
		x := at.x + float64(i)*wide
		c.rect([]string{"solid", "paper"}[i%2], box{x, at.y, x + wide, at.y + 1.2})
		c.text("note", mm(each*float64(i)), point{x, at.y - 0.8}, middle, smallLettering)
	}
	c.rect("fine", box{at.x, at.y, at.x + 4*wide, at.y + 1.2})
	c.text("note", mm(4*each)+" "+symbol, point{at.x + 4*wide, at.y - 0.8}, middle, smallLettering)
}

// northArrow draws an arrow to north, which lies an angle in degrees clockwise
// from the top of the paper.
func (c *canvas) northArrow(at point, degrees float64) {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	turn := func(x, y float64) point { return point{at.x + x*cos - y*sin, at.y + x*sin + y*cos} }
	c.circle("fine", at, 5)
	c.ring("solid", []point{turn(0, -5), turn(-1.8, 3), turn(0, 1.6)})
	c.ring("fine", []point{turn(0, -5), turn(1.8, 3), turn(0, 1.6)})
	c.text("id", "N", turn(0, -6.7).plus(0, 0.85), middle, lettering)
}
