package design

import (
	"time"

	"greysill/checker/quantity"
)

// quantities are those of one document, each read once: the schema asks whether
// a text is a quantity of a dimension, and the decoder which.
type quantities map[written]understood

type written struct {
	text      string
	dimension quantity.Dimension
}

// understood is a quantity, ok when the text is one. Why it is not is worked
// out anew when it is told, since a document can have a hundred thousand.
type understood struct {
	quantity.Quantity
	ok bool
}

func (q quantities) read(text string, d quantity.Dimension) (quantity.Quantity, bool) {
	key := written{text, d}
	known, before := q[key]
	if !before {
		read, err := quantity.Parse(text, d)
		known = understood{read, err == nil}
		q[key] = known
	}
	return known.Quantity, known.ok
}

// has reports whether a text has one of the schema's formats: a dimension, or
// the full-date of RFC 3339.
func (q quantities) has(format, text string) bool {
	if format == "date" {
		_, err := time.Parse(time.DateOnly, text)
		return err == nil
	}
	_, ok := q.read(text, quantity.Dimension(format))
	return ok
}
