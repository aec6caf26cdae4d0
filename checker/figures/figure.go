// Package figures works out what a drawing implies: flows, distances, levels,
// depths, and where the water goes. It knows no limit and judges nothing.
//
// Every figure is declared once, as a Field of a List, with its meaning,
// formula and source; the declarations are also the description of the rule
// input, so that schema/rule-input.schema.json and the reference pages come
// from them.
package figures

import (
	"greysill/checker/design"
	"greysill/checker/quantity"
)

// Standing says how a fact is known.
type Standing string

// The standings.
const (
	Published  Standing = "published"       // read in the text named
	Practice   Standing = "common practice" // a fact of the trade, no source
	FromMemory Standing = "from memory"     // remembered, the text not read
)

// Citation names where a formula or a constant comes from.
type Citation struct {
	Title    string   `json:"title"`           // body, document, year
	Place    string   `json:"place,omitempty"` // clause, table or page
	Standing Standing `json:"standing"`
}

// Kind is what sort of value a field holds.
type Kind string

// The kinds of value.
const (
	Number Kind = "number"  // in the SI unit of the field's dimension
	Text   Kind = "string"  // a word or a sentence
	Truth  Kind = "boolean" // yes or no
)

// Field declares one entry of every item of a list.
type Field struct {
	Name      string             // as rules write it
	Kind      Kind               //
	Dimension quantity.Dimension // of a Number
	Doc       string             // one sentence: what it is
	Formula   string             // how it is worked out, "" for what is read straight off the drawing
	Source    Citation           // of the formula or its constants, zero when it is geometry or read off
	Words     []string           // every value that a Text may have, when they are few and fixed
}

// List declares one list of the rule input.
type List struct {
	Name    string // as rules write it after "input.": "beds", "clearances.well"
	Doc     string // one sentence: what the list holds
	Subject string // what one item is: "a planted gravel bed"
	Fields  []*Field
}

// Subject is what an item is about.
type Subject struct {
	Name     string   // unique in its list: "bed-1", "bed-1 and well-2"
	IDs      []string // of the parts, features and sources, the part first
	Pointers []string // where they stand in the document, in the same order
}

// Value is one figure: a field's value for one subject, or what is missing to
// work it out.
type Value struct {
	Number float64
	Text   string
	Truth  bool
	Inputs []Input // what it was worked out from
	Lacks  []Lack  // entries that the document would have to give; the value is unknown when there are any
}

// Known reports whether the figure could be worked out.
func (v *Value) Known() bool { return len(v.Lacks) == 0 }

// Input is one thing that a figure was worked out from.
type Input struct {
	Name    string // "floor"
	Pointer string // where it stands in the document, "" for a constant or another figure
	Value   string // of a constant or another figure; else the report reads the document
}

// Lack is an entry that the document does not give.
type Lack struct {
	Pointer string // where it would stand
	Entry   string // in words: "water_level of bed-1"
}

// Item is one subject with its figures, in the order of the list's fields.
type Item struct {
	List    *List
	Subject Subject
	Values  []Value
}

// Value gives the item's value for the named field, nil when the list has no
// such field.
func (it *Item) Value(field string) *Value {
	for i, f := range it.List.Fields {
		if f.Name == field {
			return &it.Values[i]
		}
	}
	return nil
}

// Figures is everything worked out for one design.
type Figures struct {
	Design *design.Design
	Lists  []Items // one for each List of Catalogue, in its order, also when empty
}

// Items is one list as filled for a design.
type Items struct {
	List  *List
	Items []*Item
}

// List gives the items of the named list.
func (f *Figures) List(name string) []*Item {
	for _, l := range f.Lists {
		if l.List.Name == name {
			return l.Items
		}
	}
	return nil
}
