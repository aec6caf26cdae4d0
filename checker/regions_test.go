package checker_test

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
	"greysill/checker/rulebook"
	"greysill/checker/rulebook/ruletest"
	"greysill/rules"
)

func regionalBooks() *rulebook.Books {
	return rulebook.NewBooks(rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS})
}

// TestEveryRegionIsClean tries every amendment of a region as greysill try does.
func TestEveryRegionIsClean(t *testing.T) {
	books := regionalBooks()
	for _, code := range books.Regions() {
		t.Run(code, func(t *testing.T) {
			trial, err := ruletest.Try(t.Context(), books.Layers(code)...)
			require.NoError(t, err)
			require.Empty(t, trial.Problems)
			require.Equal(t, code, trial.Amendment.Region)
			require.NotEmpty(t, trial.Amendment.NotCovered, "no amendment covers all of the law")
		})
	}
}

// regionText is what the texts of a region say; see testdata/regions/README.md.
type regionText struct {
	Region string `json:"region"`
	Values []struct {
		Limit    string `json:"limit"`
		Value    string `json:"value"`
		Text     string `json:"text"`
		Standing string `json:"standing"`
	} `json:"values"`
}

// TestRegionsSayWhatTheirTextsSay holds every limit of every region against the
// table or clause that it comes from, as written down from there.
func TestRegionsSayWhatTheirTextsSay(t *testing.T) {
	books := regionalBooks()
	for _, code := range books.Regions() {
		t.Run(code, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("..", "testdata", "regions", code+".json"))
			require.NoError(t, err)
			var written regionText
			require.NoError(t, json.Unmarshal(text, &written))
			require.Equal(t, code, written.Region)
			book, err := books.In(t.Context(), code)
			require.NoError(t, err)
			checkRegion(t, book, written)
		})
	}
}

func checkRegion(t *testing.T, book *rulebook.Book, written regionText) {
	t.Helper()
	var named []string
	for _, v := range written.Values {
		require.NotEmpty(t, v.Text, v.Limit)
		l, ok := book.Limit(v.Limit)
		require.True(t, ok, "no limit %s", v.Limit)
		q, err := quantity.Parse(v.Value, l.Dimension)
		require.NoError(t, err, v.Limit)
		require.InDelta(t, q.Value, l.Value, 1e-6*math.Abs(q.Value), "%s: the text has %s, the amendment %s", v.Limit, v.Value, l.Text)
		require.Equal(t, v.Standing, string(l.Source.Standing), v.Limit)
		named = append(named, v.Limit)
	}
	require.ElementsMatch(t, book.Amendments()[0].Limits, named, "every limit of the amendment is held against a text")
}
