package rulebook

import (
	"bytes"
	"encoding/json"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/internal/golden"
)

// schemaText is the schema as its file holds it.
func schemaText(t *testing.T) []byte {
	text, err := json.MarshalIndent(inputSchema(), "", "  ")
	require.NoError(t, err)
	return append(text, '\n')
}

func TestInputSchemaIsCurrent(t *testing.T) {
	golden.Equal(t, "../../schema/rule-input.schema.json", schemaText(t))
}

func TestInputSchemaIsASchema(t *testing.T) {
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("rule-input.schema.json", bytes.NewReader(schemaText(t)))) // the library holds it to draft-07 itself
	_, err := c.Compile("rule-input.schema.json")
	require.NoError(t, err)
}

func TestEveryNumberHasAUnit(t *testing.T) {
	for _, l := range figures.Catalogue {
		for _, f := range l.Fields {
			if f.Kind == figures.Number {
				require.NotEmpty(t, Unit(f.Dimension), "%s.%s", l.Name, f.Name)
			}
		}
	}
}
