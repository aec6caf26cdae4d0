package rulebook

import (
	"bytes"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/internal/golden"
)

func TestInputSchemaIsCurrent(t *testing.T) {
	text, err := WriteInputSchema()
	require.NoError(t, err)
	golden.Equal(t, "../../schema/rule-input.schema.json", text)
}

func TestInputSchemaIsASchema(t *testing.T) {
	text, err := WriteInputSchema()
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("rule-input.schema.json", bytes.NewReader(text))) // the library holds it to draft-07 itself
	_, err = c.Compile("rule-input.schema.json")
	require.NoError(t, err)
}

func TestEveryNumberHasAUnit(t *testing.T) {
	for _, l := range figures.Catalogue {
		for _, f := range l.Fields {
			if f.Kind == figures.Number {
				require.NotEmpty(t, unit(f.Dimension), "%s.%s", l.Name, f.Name)
			}
		}
	}
}
