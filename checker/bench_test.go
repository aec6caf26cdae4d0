package checker_test

import (
	"fmt"
	"os"
	"runtime"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/design"
	"greysill/checker/figures"
)

// BenchmarkStages times each thing that a review does. Loading the schema is
// timed in package design.
func BenchmarkStages(b *testing.B) {
	text, err := os.ReadFile(passing)
	require.NoError(b, err)
	d, problems := design.Read(passing, text)
	require.Empty(b, problems)
	f := figures.Compute(d)
	book, err := checker.New().Book(b.Context(), "")
	require.NoError(b, err)
	for _, stage := range []struct {
		name string
		do   func()
	}{
		{"load the rules", func() { _, _ = checker.New().Book(b.Context(), "") }},
		{"read", func() { design.Read(passing, text) }},
		{"compute", func() { figures.Compute(d) }},
		{"judge", func() { book.Judge(b.Context(), f, time.Now()) }},
	} {
		b.Run(stage.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				stage.do()
			}
		})
	}
}

// BenchmarkCheck checks so many designs of a folder by rules that are loaded
// already.
func BenchmarkCheck(b *testing.B) {
	c := checker.New()
	for _, n := range []int{1, 1000} {
		b.Run(fmt.Sprint("designs=", n), func(b *testing.B) {
			files := filesOf(copies(b, passing, n))
			b.ReportAllocs()
			for b.Loop() {
				require.NoError(b, c.CheckAll(b.Context(), files, func(*checker.Result) error { return nil }))
			}
			b.ReportMetric(float64(n*b.N)/b.Elapsed().Seconds(), "designs/s")
			b.ReportMetric(peak(), "peak-MiB")
		})
	}
}

// peak is the most memory that the process has had from the system so far: run
// one benchmark alone for its own.
func peak() float64 {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return float64(m.Sys) / (1 << 20)
}
