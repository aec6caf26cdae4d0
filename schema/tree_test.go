package schema_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
	"greysill/schema"
)

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
