package quantity_test

import (
	"encoding/json"
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
)

var quotedPattern = regexp.MustCompile(`"([^"]+)"`)

// quoted lists what stands between quotation marks.
func quoted(text string) []string {
	var texts []string
	for _, m := range quotedPattern.FindAllStringSubmatch(text, -1) {
		texts = append(texts, m[1])
	}
	return texts
}

func TestUnmarshalJSON(t *testing.T) {
	var got struct{ Depth, Flow, Width, Height quantity.Quantity }
	require.NoError(t, json.Unmarshal([]byte(`{"Depth": "24 in", "Flow": "160 gal/d", "Width": null}`), &got))
	require.InDelta(t, 24*in, got.Depth.Value, 1e-15)
	require.Equal(t, "24 in", got.Depth.Text)
	require.InEpsilon(t, 160*gal/day, got.Flow.Value, 1e-14)
	require.False(t, got.Width.Given())
	require.False(t, got.Height.Given())
}

func TestUnmarshalJSONRefuses(t *testing.T) {
	tests := map[string]string{
		`24`:         `24 is not a quantity; write a string with the unit, such as "24 in"`,
		`true`:       `true is not a quantity; write a string with the unit, such as "24 in"`,
		`"24 inchs"`: `unknown unit "inchs" in "24 inchs"; did you mean "inch"?`,
		`""`:         `the quantity is empty; write a number and its unit, or leave the entry out`,
	}
	for text, want := range tests {
		var q quantity.Quantity
		require.EqualError(t, json.Unmarshal([]byte(text), &q), want)
		require.False(t, q.Given())
	}
}
