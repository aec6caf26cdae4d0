package checker

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
)

const example = "../examples/passing-bed.json"

// BenchmarkStages times each thing that a review does. The schema's loading is
// timed in package design.
func BenchmarkStages(b *testing.B) {
	text, err := os.ReadFile(example)
	require.NoError(b, err)
	d, problems := design.Read(example, text)
	require.Empty(b, problems)
	f := figures.Compute(d)
	c, err := New()
	require.NoError(b, err)
	for _, stage := range []struct {
		name string
		do   func()
	}{
		{"load the rules", func() { New() }},
		{"read", func() { design.Read(example, text) }},
		{"compute", func() { figures.Compute(d) }},
		{"judge", func() { c.book.Judge(b.Context(), f, c.asOf) }},
	} {
		b.Run(stage.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				stage.do()
			}
		})
	}
}

// BenchmarkReview checks so many designs of a folder with rules that are loaded
// already.
func BenchmarkReview(b *testing.B) {
	c, err := New()
	require.NoError(b, err)
	text, err := os.ReadFile(example)
	require.NoError(b, err)
	for _, n := range []int{1, 1000} {
		b.Run(fmt.Sprintf("%d designs", n), func(b *testing.B) {
			files := copies(b, text, n)
			b.ReportAllocs()
			for b.Loop() {
				require.NoError(b, c.CheckAll(b.Context(), files, func(r *Result) error {
					require.Equal(b, Pass, r.Outcome())
					return nil
				}))
			}
			b.ReportMetric(float64(n*b.N)/b.Elapsed().Seconds(), "designs/s")
			b.ReportMetric(peak(), "peak-MiB")
		})
	}
}

func copies(b *testing.B, text []byte, n int) []File {
	dir, files := b.TempDir(), make([]File, n)
	for i := range files {
		files[i].Name = filepath.Join(dir, fmt.Sprintf("%04d.json", i))
		require.NoError(b, os.WriteFile(files[i].Name, text, 0o600))
	}
	return files
}

// peak is the memory that the process has had from the system since it began:
// run one benchmark alone for its own.
func peak() float64 {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return float64(m.Sys) / (1 << 20)
}
