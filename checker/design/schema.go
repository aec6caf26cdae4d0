package design

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"sync"

	"greysill/checker/internal/jsonschema"
	"greysill/checker/quantity"
	"greysill/checker/source"
	"greysill/schema"
)

const schemaFile = "design.schema.json"

// designSchema loads the schema once in a run.
var designSchema = sync.OnceValue(loadSchema)

func loadSchema() *jsonschema.Schema {
	text, err := schema.FS.ReadFile(schemaFile)
	if err != nil {
		panic(err) // it is embedded
	}
	formats := []string{"date"}
	for _, d := range quantity.Dimensions {
		formats = append(formats, string(d))
	}
	s, err := jsonschema.Load(text, formats...)
	if err != nil {
		panic(err)
	}
	return s
}

type violation = jsonschema.Violation

// violations validates a document. Whatever one keyword has against one value
// is given once. A part whose kind is misspelt is also held against the kind
// that is meant.
func violations(root any, q quantities) []violation {
	found := designSchema().Validate(root, q.has)
	if meant := withKinds(root, found); meant != nil {
		found = append(found, designSchema().Validate(meant, q.has)...)
	}
	slices.SortStableFunc(found, func(a, b violation) int {
		return cmp.Or(strings.Compare(a.Pointer, b.Pointer), strings.Compare(a.Keyword, b.Keyword))
	})
	return slices.CompactFunc(found, func(a, b violation) bool { return a.Pointer == b.Pointer && a.Keyword == b.Keyword })
}

// withKinds gives a copy of the document in which misspelt kinds of parts are
// put right, nil when there are none.
func withKinds(root any, found []violation) any {
	var parts []any
	for _, v := range found {
		at, last := cut(v.Pointer)
		if list, index := cut(at); list != "/parts" || last != "kind" || v.Keyword != "enum" {
			continue
		} else if i, err := strconv.Atoi(index); err == nil {
			if parts == nil {
				parts = slices.Clone(value(root, list).([]any))
			}
			part := maps.Clone(parts[i].(map[string]any))
			part["kind"] = nearest(fmt.Sprint(part["kind"]), v.Schema.Enum)
			parts[i] = part
		}
	}
	if parts == nil {
		return nil
	}
	document := maps.Clone(root.(map[string]any))
	document["parts"] = parts
	return document
}

// property gives what the schema says of a property, through references.
func property(s *jsonschema.Schema, name string) *jsonschema.Schema {
	p := s.Properties[name]
	for p != nil && p.Ref != nil && p.Examples == nil {
		p = p.Ref
	}
	return p
}

// otherFormat notes that the document says that it is something else, which
// makes every other fault beside the point.
func (f *faults) otherFormat() bool {
	object, _ := f.doc.Value().(map[string]any)
	format, isText := object["format"].(string)
	if !isText || format == Format {
		return false
	}
	f.list = nil
	f.at("/format", func() words {
		return words{"the document's format is " + source.Quote(format), source.Quote(Format), "name a design document, or correct its format"}
	})
	return true
}
