package design

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The schema as it is published and the schema as it is compiled, each part held
// against its own kind, find the same in every design of the project.
func TestPublishedSchemaAgrees(t *testing.T) {
	whole, violated := compile(published()), 0
	for _, text := range designs(t) {
		violated += len(requireSameFound(t, whole, plain(t, text)))
	}
	require.NotZero(t, violated)
}

// The same of designs with something spoilt anywhere in them.
func TestPublishedSchemaAgreesOnSpoiltDesigns(t *testing.T) {
	whole, texts := compile(published()), designs(t)
	rapid.Check(t, func(t *rapid.T) {
		design := plain(t, rapid.SampledFrom(texts).Draw(t, "design"))
		for range rapid.IntRange(1, 4).Draw(t, "times") {
			design = spoilt(t, design)
		}
		requireSameFound(t, whole, design)
	})
}

func requireSameFound(t require.TestingT, whole *compiled, design any) map[string]bool {
	found := saysOf(designSchema(), design)
	require.Equal(t, saysOf(whole, design), found)
	return found
}

func saysOf(s *compiled, design any) map[string]bool {
	found := map[string]bool{}
	for _, v := range s.violations(design) {
		found[v.keyword+" "+v.pointer] = true
	}
	return found
}

// designs are the examples and the broken designs of the project.
func designs(t testing.TB) []string {
	var texts []string
	for _, pattern := range []string{"../../examples/*.json", broken + "/*.json", broken + "/design/*.json"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			texts = append(texts, string(text))
		}
	}
	return texts
}

func plain(t require.TestingT, text string) any {
	d := json.NewDecoder(strings.NewReader(text))
	d.UseNumber()
	var v any
	require.NoError(t, d.Decode(&v))
	return v
}

// spoilt changes one value, takes it out, or puts another beside it, somewhere
// in the value.
func spoilt(t *rapid.T, value any) any {
	switch v := value.(type) {
	case map[string]any:
		if name := rapid.SampledFrom(append(slices.Sorted(maps.Keys(v)), "")).Draw(t, "name"); name != "" {
			return spoiltMember(t, v, name)
		}
		v[rapid.SampledFrom([]string{"depth", "kind", "at", "outline", "note", "a/b", "é %"}).Draw(t, "new name")] = another(t)
		return v
	case []any:
		if len(v) > 0 && rapid.Bool().Draw(t, "inside") {
			i := rapid.IntRange(0, len(v)-1).Draw(t, "item")
			v[i] = spoilt(t, v[i])
			return v
		}
		return append(v, another(t))
	}
	return another(t)
}

func spoiltMember(t *rapid.T, object map[string]any, name string) any {
	if rapid.IntRange(0, 4).Draw(t, "take out") == 0 {
		delete(object, name)
	} else {
		object[name] = spoilt(t, object[name])
	}
	return object
}

func another(t *rapid.T) any {
	return plain(t, rapid.SampledFrom([]string{
		`null`, `true`, `0`, `-1.5`, `7.0`, `1e7`, `""`, `"2 in"`, `"pond"`, `"filtre"`, `"x y"`, `"2025-02-30"`, `[]`, `{}`, `[1, 2]`, `[[1, 2], [3]]`,
		`{"id": "p", "kind": "pond"}`, `{"id": "p", "kind": "filtre"}`, `{"target": "p", "share": "50 %"}`, `"` + strings.Repeat("é", 80) + `"`,
	}).Draw(t, "another"))
}
