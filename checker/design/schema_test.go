package design

import (
	"reflect"
	"slices"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
)

// Every entry of the schema has a field of the same name and dimension, and
// every field an entry, so that nothing that is drawn is lost on the way.
func TestSchemaAndTypesAgree(t *testing.T) {
	requireAgree(t, "", reflect.TypeFor[Design](), []*jsonschema.Schema{compile(published()).Schema})
}

func requireAgree(t *testing.T, where string, of reflect.Type, schemas []*jsonschema.Schema) {
	for of.Kind() == reflect.Pointer || of.Kind() == reflect.Slice {
		of = of.Elem()
	}
	if of.Kind() != reflect.Struct || slices.Contains([]reflect.Type{reflect.TypeFor[quantity.Quantity](), reflect.TypeFor[Point](), reflect.TypeFor[Spot]()}, of) {
		return
	}
	entriesOf := properties(schemas)
	fields := map[string]bool{}
	for _, field := range entries(of) {
		fields[field.name] = true
		here := where + "/" + field.name
		if len(field.index) > 1 && len(entriesOf[field.name]) == 0 {
			continue // a shape has entries for a point, a line and a ring, and not every thing may be all three
		}
		require.NotEmpty(t, entriesOf[field.name], "%s is in the Go type and not in the schema", here)
		for _, s := range formatted(entriesOf[field.name]) {
			require.Equal(t, field.dimension, s, here)
		}
		requireAgree(t, here, of.FieldByIndex(field.index).Type, entriesOf[field.name])
	}
	for name := range entriesOf {
		require.True(t, fields[name], "%s/%s is in the schema and not in the Go type", where, name)
	}
}

// spread gives the schemas with all that they refer to, and the items of lists.
func spread(schemas []*jsonschema.Schema) []*jsonschema.Schema {
	var all []*jsonschema.Schema
	for _, s := range schemas {
		if s != nil && !slices.Contains(all, s) {
			below := append([]*jsonschema.Schema{s.Ref, s.Then, itemsOf(s)}, s.AllOf...)
			all = append(append(all, s), spread(below)...)
		}
	}
	return all
}

func properties(schemas []*jsonschema.Schema) map[string][]*jsonschema.Schema {
	found := map[string][]*jsonschema.Schema{}
	for _, s := range spread(schemas) {
		for name, p := range s.Properties {
			found[name] = append(found[name], p)
		}
	}
	return found
}

// formatted lists the dimensions that schemas name as their format.
func formatted(schemas []*jsonschema.Schema) []string {
	var formats []string
	for _, s := range spread(schemas) {
		if slices.Contains(quantity.Dimensions, quantity.Dimension(s.Format)) {
			formats = append(formats, s.Format)
		}
	}
	return formats
}

// The examples in the schema are put into messages and shown by editors.
func TestExamplesAreValid(t *testing.T) {
	for _, s := range compile(published()).pieces {
		for _, example := range s.Examples {
			require.NoError(t, s.Validate(example), s.Location)
		}
	}
}
