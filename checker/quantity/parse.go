package quantity

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Limits on what is read as a quantity.
const (
	MaxText = 64   // bytes of text
	MaxSize = 1e12 // greatest number written, and greatest value in the SI unit
)

// Parse reads a quantity of the dimension d. An error is an *Error.
//
// Lengths and all else that cannot be less than nothing refuse a minus sign;
// levels, temperatures down to absolute zero, and angles within a full turn
// may have one. A share lies from 0 % to 100 %. A slope is a fall over a
// length ("1/4 in/ft", "20 mm/m"), a percentage, or one in so many ("1:50").
func Parse(text string, d Dimension) (Quantity, error) {
	q, k, err := parse(text)
	if err == nil && !slices.Contains(k.dimensions, d) {
		err = wrongDimension(text, k, d)
	}
	if err == nil {
		err = checkRange(q, d)
	}
	if err != nil {
		err.Expected = Examples(d)
		return Quantity{}, err
	}
	return q, nil
}

// ParseAny reads a quantity of any dimension, with the dimensions that its unit
// can have. The value does not depend on which of them is meant. The range is
// not checked. An error is an *Error.
func ParseAny(text string) (Quantity, []Dimension, error) {
	q, k, err := parse(text)
	if err != nil {
		return Quantity{}, nil, err
	}
	return q, slices.Clone(k.dimensions), nil
}

// parse reads a quantity of any kind.
func parse(text string) (Quantity, kind, *Error) {
	if err := checkText(text); err != nil {
		return Quantity{}, kind{}, err
	}
	r := reader{text: text, rest: normalize(text)}
	size, m, err := r.quantity()
	if err != nil {
		return Quantity{}, kind{}, err
	}
	k, ok := kinds[m]
	if !ok {
		return Quantity{}, kind{}, found("the units in %q multiply to nothing that a design has", text)
	}
	if k.inMemory != nil {
		size.Quo(size, k.inMemory)
	}
	value, _ := size.Float64()
	if value > MaxSize || value < -MaxSize {
		return Quantity{}, kind{}, tooLarge(text)
	}
	return Quantity{Value: value, Text: text}, k, nil
}

func checkText(text string) *Error {
	switch {
	case len(text) > MaxText:
		return found("a quantity of %d bytes is too long", len(text)).do("write it in at most %d", MaxText)
	case !utf8.ValidString(text):
		return found("%q is not valid UTF-8", text)
	case strings.ContainsFunc(text, unseen):
		return found("%q has a character that cannot be seen", text).do("write it anew with plain blanks")
	case strings.TrimSpace(text) == "":
		return found("the quantity is empty").do("write a number and its unit, or leave the entry out")
	}
	return nil
}

// unseen reports whether a character is neither printed nor a blank.
func unseen(r rune) bool { return !unicode.IsPrint(r) && !unicode.Is(unicode.Zs, r) }

func tooLarge(text string) *Error {
	return found("%q is larger than anything on a site", text).do("check the number and its unit")
}

func wrongDimension(text string, k kind, d Dimension) *Error {
	e := found("%q is %s", text, k.noun)
	switch {
	case k.dimensions[0] == Number:
		return found("%q has no unit", text).do("write the unit after the number")
	case d == Number:
		return e.do("leave the unit out")
	case d == Duration && strings.HasSuffix(text, "m"):
		return e.do(`"m" is metres; write "mo" for months, "min" for minutes`)
	case d == Percolation && k.dimensions[0] == Velocity:
		return e.do("write the time that the water takes to fall one inch, not how far it falls in an hour")
	}
	return e
}

// absoluteZero is 0 K in °C, by definition.
const absoluteZero = -273.15

func checkRange(q Quantity, d Dimension) *Error {
	switch d {
	case Level:
	case Temperature:
		if q.Value < absoluteZero {
			return found("%q is below absolute zero", q.Text)
		}
	case Angle:
		if q.Value < -360 || q.Value > 360 {
			return found("%q is more than a full turn", q.Text)
		}
	default:
		if q.Value < 0 {
			return found("%q is negative", q.Text).do("write it without the minus sign")
		}
		if d == Share && q.Value > 1 {
			return found("%q is more than the whole", q.Text)
		}
	}
	return nil
}
