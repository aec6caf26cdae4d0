package jsonschema_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"

	library "github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/internal/jsonschema"
	"greysill/checker/quantity"
	"greysill/checker/source"
)

// both is one schema in this package and in a general library of JSON Schema.
type both struct {
	ours   *jsonschema.Schema
	theirs *library.Schema
	parts  map[string]*library.Schema // theirs by their places
}

func loadBoth(t testing.TB, text []byte) *both {
	b := &both{parts: map[string]*library.Schema{}}
	names := []string{"date"}
	c := library.NewCompiler()
	c.AssertFormat = true
	c.LoadURL = func(url string) (io.ReadCloser, error) { return nil, errors.New("a schema reaches out to " + url) }
	for _, d := range quantity.Dimensions {
		names = append(names, string(d))
		c.Formats[string(d)] = func(v any) bool {
			text, isText := v.(string)
			return !isText || has(string(d), text)
		}
	}
	require.NoError(t, c.AddResource("x.json", bytes.NewReader(text)))
	var err error
	b.theirs, err = c.Compile("x.json")
	require.NoError(t, err)
	b.index(b.theirs)
	b.ours, err = jsonschema.Load(text, names...)
	require.NoError(t, err)
	return b
}

func has(format, text string) bool {
	if format == "date" {
		_, err := time.Parse(time.DateOnly, text)
		return err == nil
	}
	_, err := quantity.Parse(text, quantity.Dimension(format))
	return err == nil
}

func (b *both) index(s *library.Schema) {
	if s == nil || b.parts[s.Location] != nil {
		return
	}
	b.parts[s.Location] = s
	for _, below := range slices.Concat([]*library.Schema{s.Ref, s.If, s.Then, s.Items2020}, s.AllOf, s.OneOf) {
		b.index(below)
	}
	for _, below := range s.Properties {
		b.index(below)
	}
}

// requireAgreement requires the two to find the same in a value, whatever their
// order, and gives what they find, sorted.
func (b *both) requireAgreement(t require.TestingT, value any, about string) []string {
	theirs := map[string]bool{}
	if err, failed := b.theirs.Validate(value).(*library.ValidationError); failed {
		b.leaves(err, value, theirs)
	}
	ours := map[string]bool{}
	for _, v := range b.ours.Validate(value, has) {
		ours[v.Keyword+" "+v.Pointer] = true
	}
	require.Equal(t, theirs, ours, about)
	var found []string
	for v := range ours {
		found = append(found, v)
	}
	slices.Sort(found)
	return found
}

// leaves takes from the library's tree of errors those that have none below
// them, and one for each member that is missing or unknown.
func (b *both) leaves(e *library.ValidationError, root any, found map[string]bool) {
	i := strings.LastIndexByte(e.AbsoluteKeywordLocation, '/')
	location, keyword := e.AbsoluteKeywordLocation[:i], e.AbsoluteKeywordLocation[i+1:]
	if len(e.Causes) > 0 && keyword != "oneOf" {
		for _, cause := range e.Causes {
			b.leaves(cause, root, found)
		}
		return
	}
	pointer, err := url.PathUnescape(e.InstanceLocation)
	if err != nil {
		panic(err)
	}
	schema, object := b.parts[location], objectAt(root, pointer)
	switch keyword {
	case "required":
		for _, name := range schema.Required {
			if _, is := object[name]; !is {
				found[keyword+" "+pointer+"/"+source.Escape(name)] = true
			}
		}
	case "additionalProperties":
		for name := range object {
			if schema.Properties[name] == nil {
				found[keyword+" "+pointer+"/"+source.Escape(name)] = true
			}
		}
	default:
		found[keyword+" "+pointer] = true
	}
}

func objectAt(v any, pointer string) map[string]any {
	for _, token := range strings.Split(pointer, "/")[1:] {
		switch at := v.(type) {
		case map[string]any:
			v = at[source.Unescape(token)]
		case []any:
			var i int
			if _, err := fmt.Sscan(token, &i); err != nil {
				panic(err)
			}
			v = at[i]
		}
	}
	object, _ := v.(map[string]any)
	return object
}

func decoded(t require.TestingT, text string) any {
	d := json.NewDecoder(strings.NewReader(text))
	d.UseNumber()
	var v any
	require.NoError(t, d.Decode(&v))
	return v
}
