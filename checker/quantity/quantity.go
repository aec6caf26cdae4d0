// Package quantity reads and writes physical quantities the way the trade
// spells them: "24 in", "2 ft 6 in", "1/4 in/ft", "250 gal/d", "4 °C".
//
// A quantity in memory is a float64 in the coherent SI unit of its dimension
// (temperatures in °C, angles in degrees). The unit as written is not kept:
// reports show every quantity in the system asked for.
package quantity

import "encoding/json"

// Quantity is a quantity as a document gives it: the value in the SI unit of
// its dimension, and the text as written. The zero Quantity is one that the
// document does not give.
type Quantity struct {
	Value float64
	Text  string
}

// Given reports whether the document gives the quantity.
func (q Quantity) Given() bool { return q.Text != "" }

// UnmarshalJSON reads a JSON string of any dimension. It checks neither the
// dimension nor the range: whoever knows the dimension does that with Parse.
func (q *Quantity) UnmarshalJSON(text []byte) error {
	if string(text) == "null" {
		return nil
	}
	var s string
	if err := json.Unmarshal(text, &s); err != nil {
		return found("%s is not a quantity", text).do(`write a string with the unit, such as "24 in"`)
	}
	read, _, err := ParseAny(s)
	if err != nil {
		return err
	}
	*q = read
	return nil
}

// System is a system of units to show quantities in.
type System string

// The systems of units.
const (
	US System = "us" // US customary
	SI System = "si"
)
