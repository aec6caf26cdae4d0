package rulebook

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/rules"
)

func BenchmarkLoadBase(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, err := Load(b.Context(), Layer{Name: BaseName, FS: rules.FS})
		require.NoError(b, err)
	}
}

// BenchmarkJudge judges figures of so many items in each list of clearances.
func BenchmarkJudge(b *testing.B) {
	book := baseBook(b)
	for _, items := range []int{10, 100, 1000, 10000} {
		f := clearances(items)
		b.Run(fmt.Sprintf("%d items a list", items), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				require.Empty(b, book.Judge(b.Context(), f, day).Broken)
			}
			b.ReportMetric(float64(b.N)/b.Elapsed().Seconds(), "designs/s")
		})
	}
}

func BenchmarkInput(b *testing.B) {
	f := clearances(100)
	b.ReportAllocs()
	for b.Loop() {
		Input(f)
	}
}

func clearances(items int) *figures.Figures {
	f := figuresOf()
	works := []string{"field", "tank", "pipe", "fitting"}
	for i := range f.Lists {
		group := &f.Lists[i]
		if fieldOf(group.List, "distance") == nil {
			continue
		}
		for n := range items {
			name := fmt.Sprintf("part-%d and feature-%d", n/20, n%20)
			group.Items = append(group.Items, item(group.List.Name, name, map[string]any{
				"works": works[n%len(works)], "distance": float64(n) / 7, "part": "part", "part_kind": "pond", "feature": "feature", "feature_kind": "well",
			}))
		}
	}
	return f
}
