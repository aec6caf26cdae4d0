package rulebook

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRulesThatGuardHealthComeFirst(t *testing.T) {
	ids := []string{"winter/ice", "bed/media_depth", "flow/tier", "clearances/well", "bed/floor_level", "sources/toilet_waste", "art/colour"}
	slices.SortFunc(ids, inOrder)
	require.Equal(t, []string{"sources/toilet_waste", "clearances/well", "bed/floor_level", "bed/media_depth", "flow/tier", "art/colour", "winter/ice"}, ids)
}

func TestEveryRuleIsFoundByItsID(t *testing.T) {
	b := load(t, wellLayer(), layer("county", map[string]string{
		"art/colour.rego": ruleText("art.colour", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.area > 1\n}\n"),
		"flow/b.rego":     ruleText("flow.b", "beds", "proved contains b.subject if {\n\tsome b in input.beds\n\tb.area > 1\n}\n"),
	}))
	var ids []string
	for _, r := range b.Rules() {
		ids = append(ids, r.ID)
		found, ok := b.Rule(r.ID)
		require.True(t, ok, r.ID)
		require.Same(t, r, found)
	}
	require.Equal(t, []string{"clearances/well", "flow/b", "art/colour"}, ids)
}
