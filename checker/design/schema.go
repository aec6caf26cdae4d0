package design

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"greysill/checker/source"
	"greysill/schema"
)

const schemaFile = "design.schema.json"

// compiled is the design schema, with every piece of it by its location and,
// for every kind of part, what holds of that kind.
type compiled struct {
	*jsonschema.Schema
	pieces map[string]*jsonschema.Schema
	kinds  map[string]*jsonschema.Schema
}

// designSchema compiles the schema once in a run.
var designSchema = sync.OnceValue(func() *compiled {
	s := compile(draft7.Replace(published()))
	for _, piece := range s.pieces {
		shorten(piece)
	}
	s.split(itemsOf(s.Properties["parts"]))
	return s
})

// draft7 makes a schema of draft 7 of one of draft 2020-12. The library holds a
// schema against that of its draft whenever it compiles one, which takes three
// times as long for the newer. The design schema has no keyword that draft 7
// lacks but $defs, and beside $ref, which in draft 7 stands alone, only words for
// people. The tests hold designs against the schema as it is published.
var draft7 = strings.NewReplacer("https://json-schema.org/draft/2020-12/schema", "http://json-schema.org/draft-07/schema", "$defs", "definitions")

// Prepare compiles the design schema, which takes a while at the first design,
// so that a program can have it done beside other work.
func Prepare() { designSchema() }

func published() string {
	text, err := schema.FS.ReadFile(schemaFile)
	if err != nil {
		panic(err) // it is embedded
	}
	return string(text)
}

func compile(text string) *compiled {
	c := jsonschema.NewCompiler()
	c.LoadURL = func(url string) (io.ReadCloser, error) { return nil, fmt.Errorf("schemas are never fetched: %s", url) }
	c.AssertFormat = true
	c.ExtractAnnotations = true
	if err := c.AddResource(schemaFile, strings.NewReader(text)); err != nil {
		panic(err)
	}
	s := &compiled{c.MustCompile(schemaFile), map[string]*jsonschema.Schema{}, map[string]*jsonschema.Schema{}}
	s.index(s.Schema)
	return s
}

// shorten puts what a bare reference leads to in its place, which spares the
// library half of its steps.
func shorten(s *jsonschema.Schema) {
	for name, property := range s.Properties {
		s.Properties[name] = target(property)
	}
	if each := itemsOf(s); each != nil {
		s.Items = target(each)
	}
}

// itemsOf gives what holds of each item of a list, in either draft, nil when
// nothing does.
func itemsOf(s *jsonschema.Schema) *jsonschema.Schema {
	if each, ok := s.Items.(*jsonschema.Schema); ok {
		return each
	}
	return s.Items2020
}

func target(s *jsonschema.Schema) *jsonschema.Schema {
	for s.Ref != nil {
		s = s.Ref
	}
	return s
}

// split takes the branches of the parts' schema, "if the kind is this, then
// that", out of it, so that a part is held against its own kind alone. The
// library would try every branch on every part and make an error of each that
// does not fit, which takes most of the time of reading a design.
func (c *compiled) split(part *jsonschema.Schema) {
	for _, branch := range part.AllOf {
		kind := branch.If.Properties["kind"].Constant[0].(string)
		c.kinds[kind] = branch.Then
	}
	part.AllOf = nil
}

// index notes the places of a schema and of all below it.
func (c *compiled) index(s *jsonschema.Schema) {
	if s == nil || c.pieces[s.Location] != nil {
		return
	}
	c.pieces[s.Location] = s
	for _, below := range slices.Concat([]*jsonschema.Schema{s.Ref, s.If, s.Then, itemsOf(s)}, s.AllOf, s.OneOf) {
		c.index(below)
	}
	for _, below := range s.Properties {
		c.index(below)
	}
}

// violation is one leaf of the schema library's tree of errors.
type violation struct {
	pointer string // of the value in the document, or of the member that is missing or unknown
	keyword string
	schema  *jsonschema.Schema // that the keyword stands in
}

// violations validates a document. Whatever one keyword has against one value
// is given once; the library's own order is random. A part whose kind is
// misspelt is also held against the kind that is meant.
func (c *compiled) violations(root any) []violation {
	found := c.check(root, nil)
	if meant := withKinds(root, found); meant != nil {
		found = c.check(meant, found)
	}
	slices.SortFunc(found, func(a, b violation) int {
		return cmp.Or(strings.Compare(a.pointer, b.pointer), strings.Compare(a.keyword, b.keyword), strings.Compare(a.schema.Location, b.schema.Location))
	})
	return slices.CompactFunc(found, func(a, b violation) bool { return a.pointer == b.pointer && a.keyword == b.keyword })
}

func (c *compiled) check(root any, found []violation) []violation {
	found = c.hold(c.Schema, root, "", found)
	document, _ := root.(map[string]any)
	parts, _ := document["parts"].([]any)
	for i := range parts {
		part, _ := parts[i].(map[string]any)
		kind, _ := part["kind"].(string)
		if schema := c.kinds[kind]; schema != nil {
			found = c.hold(schema, part, "/parts/"+strconv.Itoa(i), found)
		}
	}
	return found
}

// hold adds the violations of a value that stands at the pointer.
func (c *compiled) hold(schema *jsonschema.Schema, value any, pointer string, found []violation) []violation {
	if err, failed := schema.Validate(value).(*jsonschema.ValidationError); failed {
		first := len(found)
		c.leaves(err, value, &found)
		for i := range found[first:] {
			found[first+i].pointer = pointer + found[first+i].pointer
		}
	}
	return found
}

// withKinds gives a copy of the document in which misspelt kinds of parts are
// put right, nil when there are none.
func withKinds(root any, found []violation) any {
	var parts []any
	for _, v := range found {
		at, last := cut(v.pointer)
		if list, index := cut(at); list != "/parts" || last != "kind" || v.keyword != "enum" {
			continue
		} else if i, err := strconv.Atoi(index); err == nil {
			if parts == nil {
				parts = slices.Clone(value(root, list).([]any))
			}
			part := maps.Clone(parts[i].(map[string]any))
			part["kind"] = source.Nearest(fmt.Sprint(part["kind"]), texts(v.schema.Enum))
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

// leaves drops the errors that only say that there are errors below them.
func (c *compiled) leaves(e *jsonschema.ValidationError, root any, found *[]violation) {
	location, keyword := cut(e.AbsoluteKeywordLocation)
	if len(e.Causes) > 0 && keyword != "oneOf" {
		for _, cause := range e.Causes {
			c.leaves(cause, root, found)
		}
		return
	}
	v := violation{decoded(e.InstanceLocation), keyword, c.pieces[location]}
	switch keyword {
	case "required":
		for _, name := range v.schema.Required {
			v.addMember(root, name, false, found)
		}
	case "additionalProperties":
		object, _ := value(root, v.pointer).(map[string]any)
		for name := range object {
			if v.schema.Properties[name] == nil {
				v.addMember(root, name, true, found)
			}
		}
	default:
		*found = append(*found, v)
	}
}

// addMember adds a violation of its own for a member that is there or is not.
func (v violation) addMember(root any, name string, there bool, found *[]violation) {
	object, _ := value(root, v.pointer).(map[string]any)
	if _, is := object[name]; is == there {
		v.pointer += "/" + source.Escape(name)
		*found = append(*found, v)
	}
}

// decoded undoes the percent-encoding of the library's pointers.
func decoded(location string) string {
	tokens := strings.Split(location, "/")
	for i, t := range tokens {
		if plain, err := url.PathUnescape(t); err == nil {
			tokens[i] = plain
		}
	}
	return strings.Join(tokens, "/")
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
