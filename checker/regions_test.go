package checker_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
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

// TestRegionsDifferByTheirAmendmentsAlone judges one design under five regions: what is
// found differs from what the base finds for the rules that the region's amendment
// touches, and for no others.
func TestRegionsDifferByTheirAmendmentsAlone(t *testing.T) {
	base := verdictIn(t, "")
	for _, code := range []string{"US-UT", "US-WA", "US-NV", "US-MA", "CA-ON"} {
		t.Run(code, func(t *testing.T) {
			book, err := regionalBooks().In(t.Context(), code)
			require.NoError(t, err)
			touched := touchedBy(book)
			there := verdictIn(t, code)
			differ := 0
			for key, found := range there {
				if base[key] != found {
					differ++
					require.Contains(t, touched, key[0], "%s %s: %s, by the base %s", key[0], key[1], found, base[key])
				}
			}
			for key := range base {
				if _, still := there[key]; !still {
					require.Contains(t, touched, key[0])
				}
			}
			require.Positive(t, differ)
		})
	}
}

// touchedBy gives the rules that the amendments of a book set, change or set aside, or
// whose limits they set.
func touchedBy(b *rulebook.Book) []string {
	var touched []string
	for _, a := range b.Amendments() {
		for _, r := range b.Rules() {
			byLimit := slices.ContainsFunc(r.Measures, func(m rulebook.Measure) bool { return slices.Contains(a.Limits, m.Limit) })
			if r.SetBy == a.Name || len(r.Changes) > 0 || byLimit {
				touched = append(touched, r.ID)
			}
		}
	}
	for _, s := range b.SetAside() {
		touched = append(touched, s.Rule)
	}
	return touched
}

// verdictIn words every finding on the passing example in a region, by rule and
// subject, with its margins.
func verdictIn(t *testing.T, code string) map[[2]string]string {
	t.Helper()
	text, err := os.ReadFile(passing)
	require.NoError(t, err)
	d, problems := design.Read(passing, text)
	require.Empty(t, problems)
	book, err := regionalBooks().In(t.Context(), code)
	require.NoError(t, err)
	found := map[[2]string]string{}
	for _, f := range book.Judge(t.Context(), figures.Compute(d), time.Time{}).Findings {
		said := string(f.Status)
		for _, m := range f.Measured {
			said += fmt.Sprintf(" %s %.9g", m.Measure.Field.Name, m.Margin)
		}
		found[[2]string{f.Rule.ID, f.Item.Subject.Name}] = said
	}
	return found
}
