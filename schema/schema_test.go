package schema_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/quantity"
	"greysill/schema"
)

const address = "https://greysill.invalid/schema/"

// ours are the schemas written by hand; the generated ones are tested where
// they are made.
var ours = []string{"design.schema.json", "limits.schema.json", "cautions.schema.json"}

func TestEverySchemaCompiles(t *testing.T) {
	names, err := fs.Glob(schema.FS, "*.schema.json")
	require.NoError(t, err)
	require.Subset(t, names, ours)
	for _, name := range names {
		t.Run(name, func(t *testing.T) {
			_, err := newCompiler(t, name).Compile(address + name)
			require.NoError(t, err)
		})
	}
}

func TestEveryPropertyExplainsItself(t *testing.T) {
	for _, name := range ours {
		root := read(t, name)
		walk(root, "", func(pointer string, node map[string]any) {
			for property, sub := range object(node["properties"]) {
				at := name + "#" + pointer + "/properties/" + property
				require.NotEmpty(t, keyword(root, sub, "description"), "%s has no description", at)
				require.NotEmpty(t, keyword(root, sub, "examples"), "%s has no examples", at)
			}
		})
	}
}

func TestEveryObjectRefusesUnknownNames(t *testing.T) {
	for _, name := range ours {
		walk(read(t, name), "", func(pointer string, node map[string]any) {
			if node["properties"] == nil || node["type"] != "object" {
				return
			}
			if name == "design.schema.json" && pointer == "/$defs/part" {
				require.NotEmpty(t, node["allOf"], "the kinds of part refuse them instead")
				return
			}
			require.Equal(t, false, node["additionalProperties"], "%s#%s", name, pointer)
		})
	}
}

func TestEveryFormatIsADimensionOrADate(t *testing.T) {
	for _, name := range ours {
		walk(read(t, name), "", func(pointer string, node map[string]any) {
			format, ok := node["format"].(string)
			if !ok || format == "date" {
				return
			}
			require.Contains(t, quantity.Dimensions, quantity.Dimension(format), "%s#%s", name, pointer)
			require.Equal(t, json.Number("64"), node["maxLength"], "%s#%s bounds the text of a quantity", name, pointer)
		})
	}
}

func TestLimitsNameEveryDimension(t *testing.T) {
	limit := object(object(read(t, "limits.schema.json")["$defs"])["limit"])
	words := object(object(limit["properties"])["dimension"])["enum"]
	var want []any
	for _, d := range quantity.Dimensions {
		want = append(want, string(d))
	}
	require.ElementsMatch(t, want, words)
}

func TestEveryExampleIsValid(t *testing.T) {
	for _, name := range ours {
		c := newCompiler(t, name)
		walk(read(t, name), "", func(pointer string, node map[string]any) {
			examples, ok := node["examples"].([]any)
			if !ok {
				return
			}
			s, err := c.Compile(address + name + "#" + pointer)
			require.NoError(t, err)
			for _, example := range examples {
				require.NoError(t, s.Validate(example), "%s#%s: example %v", name, pointer, example)
			}
		})
	}
}

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

// TestSchemaRefuses shows that the shapes bite: each row takes a valid thing
// of the schema's own examples and spoils one entry.
func TestSchemaRefuses(t *testing.T) {
	tests := []struct{ note, definition, change string }{
		{"a pipe without a path", "drain_pipe", `{"path": null}`},
		{"a pipe of one point", "drain_pipe", `{"path": [[1, 2]]}`},
		{"a pipe with media", "part", `{"kind": "drain pipe", "path": [[1, 2], [3, 4]], "outline": null, "depth": null, "cover": null, "media": []}`},
		{"an outline of two corners", "planted_gravel_bed", `{"outline": [[1, 2], [3, 4]]}`},
		{"a part of an unknown kind", "part", `{"kind": "cesspool"}`},
		{"a tank drawn twice", "surge_tank", `{"outline": [[1, 2], [3, 4], [5, 6]]}`},
		{"a tank drawn nowhere", "surge_tank", `{"at": null}`},
		{"a feature drawn twice", "feature", `{"path": [[1, 2], [3, 4]]}`},
		{"a service at a point", "service", `{"path": null, "at": [1, 2]}`},
		{"a bare number for a quantity", "mulch_basin", `{"depth": 12}`},
		{"a level in text without a unit of length", "planted_gravel_bed", `{"water_level": "20 min"}`},
		{"a point of three numbers", "diverter", `{"at": [1, 2, 3]}`},
		{"a coordinate out of all bounds", "diverter", `{"at": [1, 1000001]}`},
		{"an id that starts with a digit", "source", `{"id": "1-shower"}`},
		{"a way out without a target", "drain_pipe", `{"to": [{"share": "50 %"}]}`},
		{"a misspelt entry", "septic_connection", `{"levle": "28.6 m"}`},
	}
	root := read(t, "design.schema.json")
	c := newCompiler(t, "design.schema.json")
	for _, tt := range tests {
		t.Run(tt.note, func(t *testing.T) {
			s, err := c.Compile(address + "design.schema.json#/$defs/" + tt.definition)
			require.NoError(t, err)
			good := object(list(keyword(root, map[string]any{"$ref": "#/$defs/" + tt.definition}, "examples"))[0])
			require.NoError(t, s.Validate(good))
			require.Error(t, s.Validate(spoil(t, good, tt.change)))
		})
	}
}

func spoil(t *testing.T, good map[string]any, change string) map[string]any {
	t.Helper()
	bad := map[string]any{}
	for name, v := range good {
		bad[name] = v
	}
	for name, v := range object(decode(t, strings.NewReader(change))) {
		if bad[name] = v; v == nil {
			delete(bad, name)
		}
	}
	return bad
}

func TestFilesOfTheProjectAreValid(t *testing.T) {
	files := map[string]string{"../rules/limits.json": "limits.schema.json", "../rules/cautions.json": "cautions.schema.json"}
	designs, err := filepath.Glob("../examples/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, designs)
	for _, file := range designs {
		files[file] = "design.schema.json"
	}
	for file, name := range files {
		t.Run(file, func(t *testing.T) {
			s, err := newCompiler(t, name).Compile(address + name)
			require.NoError(t, err)
			f, err := os.Open(file)
			require.NoError(t, err)
			defer f.Close()
			require.NoError(t, s.Validate(decode(t, f)))
		})
	}
}

// newCompiler gives a compiler that knows the named schema and our formats, and
// that can reach nothing else.
func newCompiler(t *testing.T, name string) *jsonschema.Compiler {
	t.Helper()
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	c.LoadURL = func(url string) (io.ReadCloser, error) { return nil, errors.New("a schema reaches out to " + url) }
	for _, d := range quantity.Dimensions {
		c.Formats[string(d)] = func(v any) bool {
			s, ok := v.(string)
			return !ok || reads(s, d)
		}
	}
	file, err := schema.FS.ReadFile(name)
	require.NoError(t, err)
	require.NoError(t, c.AddResource(address+name, bytes.NewReader(file)))
	return c
}

func reads(s string, d quantity.Dimension) bool {
	_, err := quantity.Parse(s, d)
	return err == nil
}

func read(t *testing.T, name string) map[string]any {
	t.Helper()
	f, err := schema.FS.Open(name)
	require.NoError(t, err)
	defer f.Close()
	return object(decode(t, f))
}

func decode(t *testing.T, r io.Reader) any {
	t.Helper()
	d := json.NewDecoder(r)
	d.UseNumber()
	var v any
	require.NoError(t, d.Decode(&v))
	return v
}

// walk visits every schema of the tree that a document can be explained by: what
// stands in examples is no schema, and what stands in if only tells kinds apart.
func walk(v any, pointer string, visit func(pointer string, node map[string]any)) {
	switch v := v.(type) {
	case map[string]any:
		visit(pointer, v)
		for key, sub := range v {
			if key != "examples" && key != "if" {
				walk(sub, pointer+"/"+key, visit)
			}
		}
	case []any:
		for i, sub := range v {
			walk(sub, fmt.Sprint(pointer, "/", i), visit)
		}
	}
}

// keyword gives a schema's keyword, or that of what it refers to.
func keyword(root map[string]any, node any, key string) any {
	n := object(node)
	if v := n[key]; v != nil || n["$ref"] == nil {
		return v
	}
	return keyword(root, target(root, n), key)
}

func follow(root, node map[string]any) map[string]any {
	for node["$ref"] != nil {
		node = target(root, node)
	}
	return node
}

func target(root, node map[string]any) map[string]any {
	return object(object(root["$defs"])[strings.TrimPrefix(text(node["$ref"]), "#/$defs/")])
}

func object(v any) map[string]any { m, _ := v.(map[string]any); return m }
func list(v any) []any            { l, _ := v.([]any); return l }
func text(v any) string           { s, _ := v.(string); return s }

func names[V any](m map[string]V) []string {
	var names []string
	for name := range m {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}
