package quantity

import (
	"math/big"
	"regexp"
	"strings"
)

// spellings brings what typesetting makes of a quantity back to plain text.
var spellings = strings.NewReplacer(
	"½", " 1/2", "⅓", " 1/3", "⅔", " 2/3", "¼", " 1/4", "¾", " 3/4",
	"⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⁄", "/",
	"''", `"`, "′′", `"`, "″", `"`, "“", `"`, "”", `"`, "′", "'", "‘", "'", "’", "'",
	"⋅", "·", "•", "·", "*", "·",
	"−", "-", "–", "-", "‑", "-", "∶", ":",
	"º", "°", "˚", "°", "℃", "°C", "℉", "°F", "µ", "u", "μ", "u",
	"° C", "°C", "° F", "°F", "deg C", "°C", "deg F", "°F", "degrees C", "°C", "degrees F", "°F",
)

// normalize also makes every run of white space one blank.
func normalize(text string) string {
	return strings.Join(strings.Fields(spellings.Replace(text)), " ")
}

// reader reads one quantity from the front of rest.
type reader struct {
	text string // as written, for messages
	rest string // what is left to read, normalized
}

// quantity reads the whole text, and gives the value in the SI unit of its
// measure (temperatures in °C).
func (r *reader) quantity() (*big.Rat, measure, *Error) {
	negative := r.take("-")
	n, err := r.number()
	if err != nil {
		return nil, measure{}, err
	}
	value, m := n, measure{}
	switch {
	case r.take(":"):
		value, err = r.oneIn(n)
		m = grade
	case r.rest != "":
		value, m, err = r.measured(n, negative)
	}
	if err != nil {
		return nil, measure{}, err
	}
	if r.rest != "" {
		return nil, measure{}, r.trailing()
	}
	if negative && m != temperature {
		value.Neg(value)
	}
	return value, m, nil
}

// measured reads the unit of the number n, and the inches after feet.
func (r *reader) measured(n *big.Rat, negative bool) (*big.Rat, measure, *Error) {
	u, err := r.unit()
	if err != nil {
		return nil, measure{}, err
	}
	if u.zero != nil {
		return celsius(n, negative, u), temperature, nil
	}
	value := n.Mul(n, u.size)
	if u.measure == length && u.size.Cmp(units["ft"].size) == 0 && startsInches(r.rest) {
		inches, err := r.inches()
		if err != nil {
			return nil, measure{}, err
		}
		value.Add(value, inches)
	}
	return value, u.measure, nil
}

// celsius gives the temperature n on the scale u in °C. A scale's zero is not
// nothing, so the sign belongs to the number and not to the quantity.
func celsius(n *big.Rat, negative bool, u unit) *big.Rat {
	if negative {
		n.Neg(n)
	}
	kelvin := n.Mul(n, u.size)
	kelvin.Add(kelvin, u.zero)
	return kelvin.Sub(kelvin, units["°C"].zero)
}

var inchesAhead = regexp.MustCompile(`^[ -]*[\d.]`)

func startsInches(rest string) bool { return inchesAhead.MatchString(rest) }

// inches reads the inches that follow feet: 2 ft 6 in, 2'-6".
func (r *reader) inches() (*big.Rat, *Error) {
	r.rest = strings.TrimLeft(r.rest, " -")
	n, err := r.number()
	if err != nil {
		return nil, err
	}
	u, err := r.unit()
	if err != nil {
		return nil, err
	}
	if u.measure != length || u.size.Cmp(units["in"].size) != 0 {
		return nil, found("%q has feet followed by something other than inches", r.text).do(`write feet and inches as "2 ft 6 in"`)
	}
	if n.Cmp(big.NewRat(12, 1)) >= 0 {
		return nil, found("%q has 12 inches or more beside the feet", r.text).do("check the inches")
	}
	return n.Mul(n, u.size), nil
}

// oneIn reads what follows the colon of a slope written 1:50, a fall of one in
// so many. The other way round is refused: 3:1 is three along in one up to
// some, three up in one along to others.
func (r *reader) oneIn(n *big.Rat) (*big.Rat, *Error) {
	along, err := r.number()
	if err != nil {
		return nil, err
	}
	one := big.NewRat(1, 1)
	if n.Cmp(one) != 0 || along.Cmp(one) < 0 {
		return nil, found("the slope %q is not one in so many", r.text).do(`write "1:3" for a fall of one in three, or the slope in %%`)
	}
	return one.Quo(one, along), nil
}

// take takes a prefix from the rest, if it is there, and the blank after it.
func (r *reader) take(prefix string) bool {
	rest, ok := strings.CutPrefix(strings.TrimLeft(r.rest, " "), prefix)
	if ok {
		r.rest = strings.TrimLeft(rest, " ")
	}
	return ok
}

func (r *reader) trailing() *Error {
	e := found("cannot read %q at the end of %q", strings.TrimSpace(r.rest), r.text)
	if strings.HasPrefix(normalize(r.text), "1 in ") {
		return e.do(`write a fall of one in fifty as "1:50"`)
	}
	return e.do("write one number and its unit")
}
