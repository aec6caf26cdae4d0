package quantity

// Quantity is a quantity as a document gives it: the value in the SI unit of
// its dimension, and the text as written. The zero Quantity is one that the
// document does not give.
type Quantity struct {
	Value float64
	Text  string
}

// Given reports whether the document gives the quantity.
func (q Quantity) Given() bool { return q.Text != "" }

// System is a system of units to show quantities in.
type System string

// The systems of units.
const (
	US System = "us" // US customary
	SI System = "si"
)
