// Package bounds holds what formulas are given against the range in which they
// take it.
package bounds

import (
	"fmt"
	"strings"
)

// No drawing has a value beyond these; they keep products and quotients finite.
const (
	Tiny = 1e-15
	Huge = 1e15
)

// Value is a value with the range in which a formula takes it, both ends
// included.
type Value struct {
	what        string
	value       float64
	least, most float64
	unit        string
}

// Given names a value with its range and unit, "" for none.
func Given(what string, value, least, most float64, unit string) Value {
	return Value{what, value, least, most, unit}
}

// Positive allows every value above 0.
func Positive(what string, value float64, unit string) Value {
	return Value{what, value, Tiny, Huge, unit}
}

// NotNegative allows every value from 0.
func NotNegative(what string, value float64, unit string) Value {
	return Value{what, value, 0, Huge, unit}
}

// Finite allows every value but NaN and what no drawing has.
func Finite(what string, value float64, unit string) Value {
	return Value{what, value, -Huge, Huge, unit}
}

// Share allows ratios from 0 to 1.
func Share(what string, ratio float64) Value { return Value{what, ratio, 0, 1, ""} }

// Refuse names the first of the values that lies outside its range.
func Refuse(values ...Value) error {
	for _, v := range values {
		if !(v.value >= v.least && v.value <= v.most) {
			return fmt.Errorf("the %s is %s: expected %s", v.what, strings.TrimSpace(fmt.Sprintf("%g %s", v.value, v.unit)), v.expected())
		}
	}
	return nil
}

func (v Value) expected() string {
	switch {
	case v.value > Huge || v.most < Huge:
		return fmt.Sprintf("%g to %g", v.least, v.most)
	case v.least == Tiny:
		return "more than 0"
	case v.least == -Huge:
		return "a finite number"
	default:
		return fmt.Sprintf("%g or more", v.least)
	}
}

// Result passes a value on when everything that it was worked out from lies in
// its range, else 0 and the error.
func Result(value float64, from ...Value) (float64, error) {
	if err := Refuse(from...); err != nil {
		return 0, err
	}
	return value, nil
}
