package rulebook

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/source"
)

// Whatever a layer's files hold, loading ends in a book or in problems that each
// name a file of the layer.
func FuzzLoad(f *testing.F) {
	f.Add(wellRule, wellLimits, wellCautions)
	f.Add("# METADATA\n# a: &a [*a]\npackage greysill.clearances.well\n", "{", "[]")
	f.Add("# METADATA\n#\ttitle: x\npackage x\n\nimport data\n\nproved contains input if data", `{"limits": {"a": {"value": "1e400 ft", "dimension": "length"}}}`, `{"cautions": []}`)
	f.Add("package greysill.clearances.well\nimport rego.v2\nproved contains x.y if some x in input[_]; f(data.limits)\nf(_) if true", wellLimits, wellCautions)
	f.Fuzz(func(t *testing.T, rule, limits, cautions string) {
		b, err := Load(t.Context(), layer(BaseName, map[string]string{"clearances/well.rego": rule, "limits.json": limits, "cautions.json": cautions}))
		if err == nil {
			require.NotNil(t, b)
			return
		}
		var problems source.Problems
		require.ErrorAs(t, err, &problems)
		require.NotEmpty(t, problems)
		for _, p := range problems {
			require.Contains(t, []string{"base/clearances/well.rego", "base/limits.json", "base/cautions.json"}, p.File)
			require.NotEmpty(t, p.Found)
		}
	})
}
