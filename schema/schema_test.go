package schema_test

import (
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
	"greysill/schema"
)

const address = "https://greysill.invalid/schema/"

// ours are the schemas written by hand; the generated ones are tested where
// they are made.
var ours = []string{"design.schema.json", "limits.schema.json", "cautions.schema.json", "prices.schema.json"}

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

// TestSchemaRefuses shows that the shapes bite: each row takes a valid thing
// of the schema's own examples and spoils one entry.
func TestSchemaRefuses(t *testing.T) {
	tests := []struct{ note, definition, change string }{
		{"a pipe without a path", "drain_pipe", `{"path": null}`},
		{"a pipe of one point", "drain_pipe", `{"path": [[1, 2]]}`},
		{"a pipe with media", "part", `{"kind": "drain pipe", "path": [[1, 2], [3, 4]], "outline": null, "depth": null, "cover": null, "media": []}`},
		{"an outline of two corners", "planted_gravel_bed", `{"outline": [[1, 2], [3, 4]]}`},
		{"a part of an unknown kind", "part", `{"kind": "cesspool"}`},
		{"a tank drawn twice", "surge_tank", `{"at": [1, 2]}`},
		{"a tank drawn nowhere", "surge_tank", `{"outline": null}`},
		{"a feature drawn twice", "feature", `{"path": [[1, 2], [3, 4]]}`},
		{"a service at a point", "service", `{"path": null, "at": [1, 2]}`},
		{"a bare number for a quantity", "mulch_basin", `{"depth": 12}`},
		{"a level in text without a unit of length", "planted_gravel_bed", `{"water_level": "20 min"}`},
		{"a point of three numbers", "diverter", `{"at": [1, 2, 3]}`},
		{"a coordinate out of all bounds", "diverter", `{"at": [1, 10000001]}`},
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
