package quantity

import (
	"math/big"
	"regexp"
	"strings"
)

// A number is a fraction (1/4), a whole number and a fraction (1 1/2, 1-1/2),
// or a decimal number (1,250.5).
var (
	numberPattern = regexp.MustCompile(`^(?:(\d+)/(\d+)|([\d,]*\d)[ -](\d+)/(\d+)|([\d,]*\d(?:\.\d+)?|\.\d+))`)
	thousands     = regexp.MustCompile(`^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$`)
	exponent      = regexp.MustCompile(`^[eE][-+]?\d`)
)

// number reads a number without a sign.
func (r *reader) number() (*big.Rat, *Error) {
	m := numberPattern.FindStringSubmatch(r.rest)
	if m == nil {
		return nil, found("%q has no number where one should stand", r.text).do("write the number first, then its unit")
	}
	r.rest = r.rest[len(m[0]):]
	if exponent.MatchString(r.rest) {
		return nil, found("%q has an exponent", r.text).do("write the number out")
	}
	n, err := r.decimal(m[3] + m[6])
	if err != nil {
		return nil, err
	}
	if over, under := m[1]+m[4], m[2]+m[5]; over != "" {
		part, ok := new(big.Rat).SetString(over + "/" + under)
		if !ok {
			return nil, found("%q divides by zero", r.text)
		}
		if m[3] != "" && part.Cmp(big.NewRat(1, 1)) >= 0 {
			return nil, found("%q has a whole number and a fraction of one or more", r.text).do("check the fraction")
		}
		n.Add(n, part)
	}
	if n.Cmp(new(big.Rat).SetFloat64(MaxSize)) > 0 {
		return nil, tooLarge(r.text)
	}
	return n, nil
}

// decimal gives the value of a decimal number, of 0 when there are no digits.
// Commas may part the thousands, as is written in the US.
func (r *reader) decimal(digits string) (*big.Rat, *Error) {
	if digits == "" {
		return new(big.Rat), nil
	}
	if strings.Contains(digits, ",") && !thousands.MatchString(digits) {
		return nil, found("%q has a comma that parts no thousands", r.text).
			do(`write a decimal point, as in "1.5", or part the thousands, as in "1,250"`)
	}
	n, _ := new(big.Rat).SetString(strings.ReplaceAll(digits, ",", ""))
	return n, nil
}
