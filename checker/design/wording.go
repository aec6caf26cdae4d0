package design

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"greysill/checker/quantity"
	"greysill/checker/source"
)

// schema notes every violation of the design schema.
func (f *faults) schema() {
	for _, v := range designSchema().violations(f.doc.Value()) {
		f.wrong[v.pointer] = true
		f.outsize = f.outsize || v.keyword == "maxItems"
		if v.keyword == "additionalProperties" {
			f.atName(v.pointer, func() words { return f.unknown(v) })
		} else {
			f.at(v.pointer, func() words { return f.violated(v) })
		}
	}
}

// tooLong notes the main lists that are longer than they may be. To judge all
// of their items would take the memory of a hundred designs, so that nothing
// else is said of such a document.
func (f *faults) tooLong(s *jsonschema.Schema, v any, pointer string) (found bool) {
	for ; s.Ref != nil; s = s.Ref {
	}
	switch v := v.(type) {
	case map[string]any:
		for name, below := range s.Properties {
			if item, is := v[name]; is && f.tooLong(below, item, pointer+"/"+source.Escape(name)) {
				found = true
			}
		}
	case []any:
		if found = s.MaxItems >= 0 && len(v) > s.MaxItems; found {
			f.at(pointer, func() words { return f.violated(violation{pointer, "maxItems", s}) })
		}
	}
	return found
}

// violated words one violation by its keyword.
func (f *faults) violated(v violation) words {
	what, s := f.what(v.pointer), v.schema
	written := f.written(v.pointer)
	switch v.keyword {
	case "required":
		return f.missing(v)
	case "type":
		return f.wrongType(v)
	case "format":
		return f.wrongFormat(v)
	case "enum":
		return f.wrongWord(v, texts(s.Enum))
	case "const":
		return f.wrongWord(v, texts(s.Constant))
	case "pattern":
		return words{what + " is " + written, "text such as " + example(s), firstSentence(s.Description)}
	case "minimum", "maximum":
		return words{what + " is " + written, "a number " + between(s.Minimum, s.Maximum), nearer(s)}
	case "maxLength":
		return words{what + " is too long", fmt.Sprintf("at most %d characters", s.MaxLength), ""}
	case "minItems", "maxItems":
		list, _ := value(f.doc.Value(), v.pointer).([]any)
		return words{fmt.Sprintf("%s has %s", what, count(len(list), "item")), items(s), ""}
	case "uniqueItems":
		return words{what + " says the same thing twice", "", "take one of the two out"}
	case "oneOf":
		return f.oneShape(v)
	}
	return words{what + " is not as the schema has it", v.keyword + " as in the schema", ""}
}

// nearer says what to do about coordinates out of bounds, as those of a map
// grid far from its origin are; of other numbers there is nothing to say.
func nearer(s *jsonschema.Schema) string {
	if !strings.HasSuffix(s.Location, "/coordinate") {
		return ""
	}
	return "subtract one round number from every x on the drawing, and another from every y"
}

// written gives a value as the document has it, cut when it is long.
func (f *faults) written(pointer string) string {
	if text, isText := value(f.doc.Value(), pointer).(string); isText {
		return source.Quote(text)
	}
	return source.Cut(f.doc.Raw(pointer))
}

// missing words that an entry is not there, and shows what it looks like.
func (f *faults) missing(v violation) words {
	parent, name := cut(v.pointer)
	owner := f.ownerOr(parent)
	name = source.Unescape(name)
	w := words{found: fmt.Sprintf("%s has no %q", owner, name)}
	if p := property(v.schema, name); p != nil {
		w.remedy = fmt.Sprintf("add it here, such as %q: %s", name, example(p))
	}
	return w
}

// unknown words that there is no entry of a name, with the nearest that there
// is.
func (f *faults) unknown(v violation) words {
	parent, token := cut(v.pointer)
	name, known := source.Unescape(token), slices.Sorted(maps.Keys(v.schema.Properties))
	kind := kindOf(v.schema)
	w := words{found: source.Quote(name) + " is no entry of " + f.holder(parent, kind)}
	if near := source.Nearest(name, known); near != "" {
		w.remedy = fmt.Sprintf("did you mean %q?", near)
	} else if others := designSchema().kindsWith(name); kind != "" && len(others) > 0 {
		w.remedy = "only parts of kind " + strings.Join(others, ", ") + " have it: take it out, or correct the kind"
	} else {
		w.expected = "one of " + quoted(known)
	}
	return w
}

// holder names an object by its id and kind.
func (f *faults) holder(pointer, kind string) string {
	name := f.ownerOr(pointer)
	if kind != "" {
		name += ", a part of kind " + kind
	}
	return name
}

// kindOf gives the kind of part that a schema is for, "" when it is for none.
func kindOf(s *jsonschema.Schema) string {
	if kind := s.Properties["kind"]; kind != nil && len(kind.Constant) > 0 {
		return fmt.Sprint(kind.Constant[0])
	}
	return ""
}

// kindsWith lists the kinds of part that have an entry of the name.
func (c *compiled) kindsWith(name string) []string {
	var kinds []string
	for _, s := range c.pieces {
		if kind := kindOf(s); kind != "" && s.Properties[name] != nil {
			kinds = append(kinds, kind)
		}
	}
	slices.Sort(kinds)
	return slices.Compact(kinds)
}

// wrongType words a value of the wrong JSON type.
func (f *faults) wrongType(v violation) words {
	is := value(f.doc.Value(), v.pointer)
	w := words{found: f.what(v.pointer) + " is " + inWords(is), expected: f.form(v.schema)}
	if number, isNumber := is.(json.Number); isNumber && v.schema.Format != "" {
		w.found = f.what(v.pointer) + " is the bare number " + source.Cut(number.String())
		w.remedy = "put it in quotes with its unit"
	}
	if is == nil {
		w.remedy = "leave the entry out when it is not known"
	}
	return w
}

// inWords names a value's JSON type, and the value where it is short.
func inWords(v any) string {
	switch v := v.(type) {
	case string:
		return "the text " + source.Quote(v)
	case bool:
		return fmt.Sprint(v)
	case []any:
		return "a list"
	case map[string]any:
		return "an object in { }"
	case json.Number:
		return "the number " + source.Cut(v.String())
	default:
		return "null"
	}
}

var typeWords = map[string]string{
	"string": "text in quotes", "number": "a number", "integer": "a whole number",
	"boolean": "true or false", "array": "a list in [ ]", "object": "an object in { }",
}

// form says what a value that the schema takes looks like.
func (f *faults) form(s *jsonschema.Schema) string {
	if expected := quantity.Examples(quantity.Dimension(s.Format)); expected != "" {
		if slices.Contains(s.Types, "array") {
			return expected + ", or a list of such"
		}
		return expected
	}
	if words := texts(slices.Concat(s.Enum, s.Constant)); len(words) > 0 {
		return "one of " + quoted(words)
	}
	var forms []string
	for _, t := range s.Types {
		forms = append(forms, typeWords[t])
	}
	return strings.Join(forms, " or ")
}

// wrongFormat words a quantity that cannot be read, or a date.
func (f *faults) wrongFormat(v violation) words {
	text, _ := value(f.doc.Value(), v.pointer).(string)
	return words{f.what(v.pointer) + " is " + source.Quote(text), "a day that the calendar has, as YYYY-MM-DD", ""}
}

// quantity reads a quantity and notes what it is refused for, unless the schema
// refused the value already.
func (f *faults) quantity(from any, pointer string, d quantity.Dimension) (quantity.Quantity, bool) {
	text, isText := from.(string)
	if !isText {
		return quantity.Quantity{}, false
	}
	q, err := quantity.Parse(text, d)
	if refused := (*quantity.Error)(nil); errors.As(err, &refused) && !f.wrong[pointer] {
		f.wrong[pointer] = true
		f.at(pointer, func() words { return words{f.what(pointer) + ": " + refused.Found, refused.Expected, refused.Remedy} })
	}
	return q, err == nil
}

// wrongWord words a word that is none of those known, the nearest first.
func (f *faults) wrongWord(v violation, known []string) words {
	text, isText := value(f.doc.Value(), v.pointer).(string)
	if !isText {
		return f.wrongType(v)
	}
	w := words{found: f.what(v.pointer) + " is " + source.Quote(text), expected: "one of " + quoted(source.ByDistance(text, known))}
	if len(known) == 1 {
		w.expected = quoted(known)
	}
	if near := source.Nearest(text, known); near != "" {
		w.remedy = fmt.Sprintf("did you mean %q?", near)
	}
	return w
}

// oneShape words that of several entries one must be there and no other.
func (f *faults) oneShape(v violation) words {
	object, _ := value(f.doc.Value(), v.pointer).(map[string]any)
	var choices, given []string
	for _, choice := range v.schema.OneOf {
		for _, name := range choice.Required {
			choices = append(choices, name)
			if _, is := object[name]; is {
				given = append(given, name)
			}
		}
	}
	w := words{expected: "exactly one of " + quoted(choices)}
	if len(given) == 0 {
		w.found, w.remedy = f.holder(v.pointer, "")+" has no place on the drawing", "add one"
	} else {
		w.found, w.remedy = f.holder(v.pointer, "")+" has its place drawn twice, as "+quoted(given), "take one out"
	}
	return w
}
