package checker

import (
	"context"
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/rulebook"
	"greysill/checker/source"
	"greysill/rules"
)

func BenchmarkStages(b *testing.B) {
	text, _ := os.ReadFile("../examples/passing-bed.json")
	doc, _ := source.Parse("x", text)
	d, _ := design.Read("x", text)
	f := figures.Compute(d)
	book, err := rulebook.Load(context.Background(), rulebook.Layer{Name: "base", FS: rules.FS})
	require.NoError(b, err)
	in, _ := rulebook.Input(f)
	_ = in
	b.Run("parse", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { source.Parse("x", text) } })
	b.Run("from", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { design.From(doc) } })
	b.Run("compute", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { figures.Compute(d) } })
	b.Run("input", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { rulebook.Input(f) } })
	b.Run("judge", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { book.Judge(context.Background(), f, time.Now()) } })
	b.Run("load", func(b *testing.B) { b.ReportAllocs(); for b.Loop() { rulebook.Load(context.Background(), rulebook.Layer{Name: "base", FS: rules.FS}) } })
}
