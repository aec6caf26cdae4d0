package jsonschema

import (
	"encoding/json"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"greysill/checker/source"
)

// Violation is what one keyword has against one value.
type Violation struct {
	Pointer string // RFC 6901, of the value, or of the member that is missing or unknown
	Keyword string
	Schema  *Schema // that the keyword stands in
}

// Validate gives every violation. Of a value of the wrong type nothing more is
// said, and of oneOf only that it does not hold. The value is made of
// map[string]any, []any, string, bool, nil and json.Number; numbers are compared
// as float64. The function tells whether a text has a format.
func (s *Schema) Validate(value any, has func(format, text string) bool) []Violation {
	v := &validation{has: has}
	v.value(s, value)
	return v.found
}

// validation is the validating of one document.
type validation struct {
	has    func(format, text string) bool
	found  []Violation
	way    []string // names and indexes that lead to the value in hand
	trying int      // how many oneOf and if are being tried, which find nothing
	failed bool
}

func (v *validation) value(s *Schema, value any) {
	if s.Types != nil && !s.Types.have(value) {
		v.fail(s, "type")
		return
	}
	text, isText := value.(string)
	if s.Const != nil && (!isText || text != *s.Const) {
		v.fail(s, "const")
	}
	if s.Enum != nil && (!isText || !slices.Contains(s.Enum, text)) {
		v.fail(s, "enum")
	}
	switch value := value.(type) {
	case string:
		v.text(s, value)
	case json.Number:
		v.number(s, value)
	case []any:
		v.list(s, value)
	case map[string]any:
		v.object(s, value)
	}
	v.others(s, value)
}

// others holds the value against the schemas that are joined to this one.
func (v *validation) others(s *Schema, value any) {
	if s.Ref != nil {
		v.value(s.Ref, value)
	}
	for _, each := range s.AllOf {
		v.value(each, value)
	}
	if s.OneOf != nil && v.holding(s.OneOf, value) != 1 {
		v.fail(s, "oneOf")
	}
	if s.If != nil && s.Then != nil && v.holding([]*Schema{s.If}, value) == 1 {
		v.value(s.Then, value)
	}
}

// holding counts the schemas that the value accords with.
func (v *validation) holding(schemas []*Schema, value any) (n int) {
	before := v.failed
	v.trying++
	for _, s := range schemas {
		v.failed = false
		if v.value(s, value); !v.failed {
			n++
		}
	}
	v.trying--
	v.failed = before
	return n
}

// have reports whether a value is of one of the types.
func (t Types) have(value any) bool {
	switch value := value.(type) {
	case string:
		return slices.Contains(t, "string")
	case json.Number:
		return slices.Contains(t, "number") || slices.Contains(t, "integer") && whole(value)
	case []any:
		return slices.Contains(t, "array")
	case map[string]any:
		return slices.Contains(t, "object")
	case bool:
		return slices.Contains(t, "boolean")
	default:
		return slices.Contains(t, "null")
	}
}

func whole(n json.Number) bool {
	x, _ := n.Float64()
	return x == math.Trunc(x)
}

func (v *validation) text(s *Schema, text string) {
	if s.Format != "" && !v.has(s.Format, text) {
		v.fail(s, "format")
	}
	if s.pattern != nil && !s.pattern.MatchString(text) {
		v.fail(s, "pattern")
	}
	if len(text) < s.MinLength || utf8.RuneCountInString(text) < s.MinLength {
		v.fail(s, "minLength")
	}
	if s.MaxLength != nil && len(text) > *s.MaxLength && utf8.RuneCountInString(text) > *s.MaxLength {
		v.fail(s, "maxLength")
	}
}

func (v *validation) number(s *Schema, n json.Number) {
	if s.Minimum == nil && s.Maximum == nil {
		return
	}
	x, _ := n.Float64()
	if s.Minimum != nil && x < *s.Minimum {
		v.fail(s, "minimum")
	}
	if s.Maximum != nil && x > *s.Maximum {
		v.fail(s, "maximum")
	}
}

func (v *validation) list(s *Schema, list []any) {
	if len(list) < s.MinItems {
		v.fail(s, "minItems")
	}
	if s.MaxItems != nil && len(list) > *s.MaxItems {
		v.fail(s, "maxItems")
	}
	if s.UniqueItems && repeats(list) {
		v.fail(s, "uniqueItems")
	}
	if s.Items == nil {
		return
	}
	for i, item := range list {
		v.at(strconv.Itoa(i), func() { v.value(s.Items, item) })
	}
}

// repeats reports whether a text is in the list twice.
func repeats(list []any) bool {
	seen := map[string]bool{}
	for _, item := range list {
		if text, isText := item.(string); isText {
			if seen[text] {
				return true
			}
			seen[text] = true
		}
	}
	return false
}

func (v *validation) object(s *Schema, object map[string]any) {
	for _, name := range s.Required {
		if _, is := object[name]; !is {
			v.at(name, func() { v.fail(s, "required") })
		}
	}
	known := 0
	for name, property := range s.Properties {
		if member, is := object[name]; is {
			known++
			v.at(name, func() { v.value(property, member) })
		}
	}
	if s.Additional == nil || *s.Additional || known == len(object) {
		return
	}
	for name := range object {
		if s.Properties[name] == nil {
			v.at(name, func() { v.fail(s, "additionalProperties") })
		}
	}
}

// at does something one step further down.
func (v *validation) at(step string, do func()) {
	v.way = append(v.way, step)
	do()
	v.way = v.way[:len(v.way)-1]
}

func (v *validation) fail(s *Schema, keyword string) {
	v.failed = true
	if v.trying == 0 {
		v.found = append(v.found, Violation{v.pointer(), keyword, s})
	}
}

func (v *validation) pointer() string {
	var b strings.Builder
	for _, step := range v.way {
		b.WriteByte('/')
		b.WriteString(source.Escape(step))
	}
	return b.String()
}
