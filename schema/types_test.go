package schema_test

import (
	"encoding/json"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/quantity"
)

// TestSchemaAndTypesAgree holds the schema's names, types and dimensions against
// the Go types that a document is read into.
func TestSchemaAndTypesAgree(t *testing.T) {
	root := read(t, "design.schema.json")
	agree(t, root, root, reflect.StructField{Type: reflect.TypeFor[design.Design]()}, "")
}

func agree(t *testing.T, root, node map[string]any, field reflect.StructField, at string) {
	t.Helper()
	node = follow(root, node)
	typ := field.Type
	for typ.Kind() == reflect.Pointer {
		typ = typ.Elem()
	}
	switch {
	case typ == reflect.TypeFor[quantity.Quantity]():
		require.NotEmpty(t, field.Tag.Get("dimension"), "%s is a quantity", at)
		require.Equal(t, field.Tag.Get("dimension"), node["format"], at)
	case typ == reflect.TypeFor[design.Point]():
		requireLength(t, node, "2", at)
	case typ == reflect.TypeFor[design.Spot]():
		requireLength(t, node, "3", at)
	case typ.Kind() == reflect.Slice:
		require.NotNil(t, node["items"], "%s is a list", at)
		agree(t, root, object(node["items"]), reflect.StructField{Type: typ.Elem(), Tag: field.Tag}, at+"/*")
	case typ.Kind() == reflect.Struct:
		agreeOnStruct(t, root, node, typ, at)
	default:
		requireType(t, node, typ, at)
	}
}

func agreeOnStruct(t *testing.T, root, node map[string]any, typ reflect.Type, at string) {
	t.Helper()
	properties, fields := propertiesOf(root, node), fieldsOf(typ)
	if typ == reflect.TypeFor[design.Service]() { // a buried line has no other shape
		delete(fields, "at")
		delete(fields, "outline")
	}
	require.ElementsMatch(t, names(fields), names(properties), "entries of %s", at)
	for name, subs := range properties {
		for _, sub := range subs {
			agree(t, root, sub, fields[name], at+"/"+name)
		}
	}
}

func requireLength(t *testing.T, node map[string]any, length json.Number, at string) {
	t.Helper()
	require.Equal(t, length, node["minItems"], at)
	require.Equal(t, length, node["maxItems"], at)
}

func requireType(t *testing.T, node map[string]any, typ reflect.Type, at string) {
	t.Helper()
	want := map[reflect.Kind]string{
		reflect.String: "string", reflect.Bool: "boolean", reflect.Int: "integer", reflect.Float64: "number",
	}[typ.Kind()]
	require.NotEmpty(t, want, "%s has a Go type that no JSON type stands for: %s", at, typ)
	if constant, ok := node["const"]; ok {
		require.IsType(t, "", constant, at)
		require.Equal(t, "string", want, at)
		return
	}
	require.Equal(t, want, node["type"], at)
	require.NotContains(t, quantity.Dimensions, quantity.Dimension(text(node["format"])), "%s is no quantity in Go", at)
}

// propertiesOf gives the entries of an object: each name with every definition
// that it has, the kinds of part having their own.
func propertiesOf(root, node map[string]any) map[string][]map[string]any {
	all := map[string][]map[string]any{}
	for name, sub := range object(node["properties"]) {
		all[name] = append(all[name], object(sub))
	}
	for _, branch := range list(node["allOf"]) {
		for name, subs := range propertiesOf(root, follow(root, object(object(branch)["then"]))) {
			all[name] = append(all[name], subs...)
		}
	}
	return all
}

func fieldsOf(typ reflect.Type) map[string]reflect.StructField {
	fields := map[string]reflect.StructField{}
	for _, f := range reflect.VisibleFields(typ) {
		if name := f.Tag.Get("json"); name != "" && name != "-" {
			fields[name] = f
		}
	}
	return fields
}
