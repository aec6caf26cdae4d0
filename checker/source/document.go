package source

// Document is a JSON file that was read whole, with the place of every value.
// (Contract; the reader fills it in.)
//
//	Parse(name string, text []byte) (*Document, Problems)
//	ReadFile(path string) (*Document, Problems)     // missing, directory, permission, too large, binary: one Problem each
//	(*Document).Name() string
//	(*Document).Value() any                          // map[string]any, []any, string, bool, nil, json.Number: for the schema library
//	(*Document).Position(pointer string) Position    // of a value; of the nearest enclosing value when the pointer leads nowhere
//	(*Document).NamePosition(pointer string) Position // of a member's name
//	(*Document).Raw(pointer string) string           // the value's text as written, "" when there is none
//	(*Document).Caret(Position) string
//	(*Document).Problem(pointer, found, expected, remedy string) Problem
type Document struct {
	name string
	text []byte
}
