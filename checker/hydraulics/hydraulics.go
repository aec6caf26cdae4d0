// Package hydraulics has the formulas by which water runs: in drains and
// channels, over weirs, through orifices, off roofs and land, through a pond's
// storage and through gravel.
//
// The package knows no design document and sets no limit. Every value is in a
// coherent SI unit: metres, seconds, m³/s; a slope is a fall over a length in
// plan, an angle is in radians. A value outside a formula's range gives a
// *RangeError that names it, never NaN and never the nearest value that would
// do; so does a size under 10⁻¹⁵ or over 10¹⁵ of its unit, which nothing has.
//
// Each formula and coefficient names its source. Where sources disagree, each
// is a named value of its own and the caller chooses.
package hydraulics

import (
	"cmp"
	"fmt"
)

// Gravity is the standard acceleration of free fall, m/s², exact by
// definition (3rd General Conference on Weights and Measures, 1901; from
// memory). Textbooks take 9.8, 9.81 or 32.2 ft/s², which changes a flow by
// less than 0.05 %.
const Gravity = 9.80665

// Standing says how the value of a source is known.
type Standing string

// The standings.
const (
	Published      Standing = "published"       // read in the text named
	CommonPractice Standing = "common practice" // a fact of the trade, no source
	FromMemory     Standing = "from memory"     // the text named was not read
)

// Source is where a value comes from.
type Source struct {
	Title    string // document, year, clause, table or example
	Standing Standing
}

// Span is the range that a source gives for a value. A source that gives one
// value has Low equal to High.
type Span struct{ Low, High float64 }

// RangeError says that a value lies outside the range in which a formula holds.
type RangeError struct {
	Quantity string  // what the value is: "slope"
	Value    float64 // as given
	Needs    string  // what it has to be: "more than 0"
}

func (e *RangeError) Error() string {
	return fmt.Sprintf("the %s is %g; it must be %s", e.Quantity, e.Value, e.Needs)
}

// valid passes a result on when all checks of what it came from are nil.
func valid(result float64, checks ...error) (float64, error) {
	if err := cmp.Or(checks...); err != nil {
		return 0, err
	}
	return result, nil
}

func outside(quantity string, value float64, needs string) error {
	return &RangeError{quantity, value, needs}
}

// Nothing that is built or flows lies beyond these, in any SI unit. Within
// them no formula overflows.
const (
	smallest = 1e-15
	greatest = 1e15
)

func positive(quantity string, value float64) error {
	if value > 0 {
		return within(quantity, value, smallest, greatest)
	}
	return outside(quantity, value, "a number more than 0")
}

func notNegative(quantity string, value float64) error {
	if value >= 0 {
		return within(quantity, value, 0, greatest)
	}
	return outside(quantity, value, "a number of 0 or more")
}

func within(quantity string, value, low, high float64) error {
	if low <= value && value <= high {
		return nil
	}
	return outside(quantity, value, fmt.Sprintf("from %g to %g", low, high))
}

// bisect finds where a function that never falls reaches a value, to the last
// bit, given that it does so between low and high.
func bisect(value, low, high float64, f func(float64) float64) float64 {
	for {
		middle := low + (high-low)/2
		if middle <= low || middle >= high {
			return high
		}
		if f(middle) < value {
			low = middle
		} else {
			high = middle
		}
	}
}
