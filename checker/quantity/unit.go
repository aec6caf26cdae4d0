package quantity

import (
	"math/big"
	"regexp"
	"strings"
)

// A factor of a unit is a word, with a power before it (sq ft) or after it
// (ft2), or one of the signs for inches, feet and percent.
var factorPattern = regexp.MustCompile(`^(?:(square|sq|cubic|cu)\.? ?)?(?:([A-Za-z°]+)\.?(\^?[23]|[²³])?|(['"%]))`)

var powers = map[string]int{
	"":   1,
	"sq": 2, "square": 2, "2": 2, "^2": 2, "²": 2,
	"cu": 3, "cubic": 3, "3": 3, "^3": 3, "³": 3,
}

// unit reads a unit: factors one after the other, multiplied or divided.
func (r *reader) unit() (unit, *Error) {
	r.rest = strings.TrimLeft(r.rest, " ")
	product, err := r.factor()
	if err != nil {
		return unit{}, err
	}
	divided := false
	for power := r.operator(); power != 0; power = r.operator() {
		if power > 0 && divided {
			return unit{}, found("%q leaves open what is divided", r.text).do(`divide by one unit at a time, as in "gal/d/ft2"`)
		}
		next, err := r.factor()
		if err != nil {
			return unit{}, err
		}
		divided = divided || power < 0
		product = product.by(next, power)
	}
	if product.measure == (measure{}) {
		return unit{}, found("the units in %q cancel out", r.text)
	}
	return product, nil
}

// by multiplies a unit by another or divides it. A length over a length is a
// slope.
func (u unit) by(v unit, power int) unit {
	size := new(big.Rat)
	if power > 0 {
		size.Mul(u.size, v.size)
	} else {
		size.Quo(u.size, v.size)
	}
	m := u.times(v.measure, power)
	if u.measure == length && v.measure == length && power < 0 {
		m = grade
	}
	return unit{measure: m, size: size}
}

// factor reads one unit by its name, with its power.
func (r *reader) factor() (unit, *Error) {
	m := factorPattern.FindStringSubmatch(r.rest)
	if m == nil {
		return unit{}, r.noUnit()
	}
	name := m[2] + m[4]
	u, ok := units[name]
	if !ok {
		return unit{}, unknownUnit(name, r.text)
	}
	r.rest = r.rest[len(m[0]):]
	raised := u
	for range powers[m[1]]*powers[m[3]] - 1 {
		raised = raised.by(u, 1)
	}
	return raised, nil
}

var wordAhead = regexp.MustCompile(`^[A-Za-z°]`)

// operator reads what joins one factor to the next: 1 to multiply, -1 to
// divide, 0 when no factor follows.
func (r *reader) operator() int {
	if r.take("/") || r.take("per ") {
		return -1
	}
	if r.take("·") {
		return 1
	}
	joined := strings.TrimLeft(r.rest, " ")
	if hyphen, ok := strings.CutPrefix(joined, "-"); ok {
		joined = hyphen
	}
	if wordAhead.MatchString(joined) {
		r.rest = joined
		return 1
	}
	return 0
}

func (r *reader) noUnit() *Error {
	if r.rest == "" {
		return found("%q ends where a unit should stand", r.text)
	}
	return found("cannot read %q in %q", r.rest, r.text).do("write one number and its unit")
}
