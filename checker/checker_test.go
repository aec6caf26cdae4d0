package checker_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

const (
	passing = "../examples/passing-bed.json"
	faulty  = "../examples/faulty-bed.json"
)

func newChecker(t testing.TB, options ...checker.Option) *checker.Checker {
	t.Helper()
	c, err := checker.New(options...)
	require.NoError(t, err)
	return c
}

func TestOutcome(t *testing.T) {
	c := newChecker(t)
	for path, want := range map[string]checker.Outcome{
		passing:          checker.Pass,
		faulty:           checker.Fail,
		"no-such-design": checker.Unjudged,
	} {
		r := c.Check(t.Context(), path)
		require.Equal(t, want, r.Outcome(), path)
		require.Equal(t, path, r.Name)
		require.Equal(t, want == checker.Unjudged, len(r.Problems) > 0, path)
		require.Equal(t, want == checker.Unjudged, r.Verdict == nil, path)
	}
}

func TestCheckBytesIsCheck(t *testing.T) {
	c := newChecker(t)
	text, err := os.ReadFile(faulty)
	require.NoError(t, err)
	fromFile, fromText := c.Check(t.Context(), faulty), c.CheckBytes(t.Context(), "in memory", text)
	require.Equal(t, fromFile.Verdict.Counts(), fromText.Verdict.Counts())
	require.Equal(t, "in memory", fromText.Name)
}

func TestFindingsStandInTheDocument(t *testing.T) {
	r := newChecker(t).Check(t.Context(), faulty)
	for i := range r.Verdict.Findings {
		f := &r.Verdict.Findings[i]
		at := r.Verdict.Position(f.Item)
		require.Equal(t, faulty, at.File, "%s %s", f.Rule.ID, f.Item.Subject.Name)
		require.NotZero(t, at.Line)
	}
}

func TestRefusedRules(t *testing.T) {
	bad := rulebook.Layer{Name: "county", FS: fstest.MapFS{"a/b.rego": {Data: []byte("package x")}}}
	_, err := checker.New(checker.WithLayers(bad))
	var problems source.Problems
	require.ErrorAs(t, err, &problems)
	require.Equal(t, "county/a/b.rego", problems[0].File)
}

func TestRuleThatCannotBeJudged(t *testing.T) {
	broken := rulebook.Layer{Name: "county", FS: fstest.MapFS{"a/b.rego": {Data: []byte(`# METADATA
# title: T.
# description: D.
# custom:
#   subjects: system
#   level: fail
#   remedy: R.
#   sources: [{title: S, standing: common practice}]
package greysill.a.b

import rego.v2

proved contains "nobody" if true
`)}}}
	r := newChecker(t, checker.WithLayers(broken)).Check(t.Context(), passing)
	require.Equal(t, checker.Unjudged, r.Outcome())
	require.Len(t, r.Verdict.Broken, 1)
}

// copies writes so many copies of a design and gives their paths.
func copies(t testing.TB, of string, n int) []string {
	text, err := os.ReadFile(of)
	require.NoError(t, err)
	dir := t.TempDir()
	var paths []string
	for i := range n {
		path := filepath.Join(dir, fmt.Sprintf("%04d.json", i))
		require.NoError(t, os.WriteFile(path, text, 0o644))
		paths = append(paths, path)
	}
	return paths
}

func filesOf(paths []string) []checker.File {
	var files []checker.File
	for _, path := range paths {
		files = append(files, checker.File{Name: path})
	}
	return files
}

func TestCheckAllKeepsTheOrder(t *testing.T) {
	paths := copies(t, passing, 50)
	paths[7] = faulty
	paths[20] = "no-such-design"
	var names []string
	var outcomes []checker.Outcome
	files := filesOf(paths)
	text, err := os.ReadFile(passing)
	require.NoError(t, err)
	files[30] = checker.File{Name: "-", Read: true, Text: text}
	files[31] = checker.File{Name: "-", Read: true, Problems: source.Problems{{Found: "the file is too large"}}}
	paths[30], paths[31] = "-", "-"
	err = newChecker(t).CheckAll(t.Context(), files, func(r *checker.Result) error {
		names, outcomes = append(names, r.Name), append(outcomes, r.Outcome())
		return nil
	})
	require.NoError(t, err)
	require.Equal(t, paths, names)
	require.Equal(t, checker.Fail, outcomes[7])
	require.Equal(t, checker.Unjudged, outcomes[20])
	require.Equal(t, checker.Pass, outcomes[30])
	require.Equal(t, checker.Unjudged, outcomes[31])
	require.Equal(t, checker.Pass, outcomes[49])
}

func TestCheckAllEndsEarly(t *testing.T) {
	c, files := newChecker(t), filesOf(copies(t, passing, 20))
	full := errors.New("the disk is full")
	seen := 0
	require.ErrorIs(t, c.CheckAll(t.Context(), files, func(*checker.Result) error {
		seen++
		return full
	}), full)
	require.Equal(t, 1, seen)

	ctx, cancel := context.WithCancel(t.Context())
	seen = 0
	require.ErrorIs(t, c.CheckAll(ctx, files, func(*checker.Result) error {
		seen++
		cancel()
		return nil
	}), context.Canceled)
	require.Equal(t, 1, seen)
}

func ExampleChecker() {
	c, err := checker.New(checker.AsOf(time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range []*checker.Result{
		c.Check(context.Background(), "../examples/passing-bed.json"),
		c.CheckBytes(context.Background(), "sketch.json", []byte(`{"format": "greywater-design/1"}`)),
	} {
		fmt.Println(filepath.Base(r.Name), r.Outcome())
	}
	// Output:
	// passing-bed.json pass
	// sketch.json unjudged
}

func BenchmarkNew(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, err := checker.New()
		require.NoError(b, err)
	}
}

func BenchmarkCheckOne(b *testing.B) {
	c := newChecker(b)
	b.ReportAllocs()
	for b.Loop() {
		c.Check(b.Context(), passing)
	}
	b.ReportMetric(float64(b.N)/b.Elapsed().Seconds(), "designs/s")
}

func BenchmarkCheck1000(b *testing.B) {
	c, files := newChecker(b), filesOf(copies(b, passing, 1000))
	b.ReportAllocs()
	for b.Loop() {
		require.NoError(b, c.CheckAll(b.Context(), files, func(*checker.Result) error { return nil }))
	}
	b.ReportMetric(float64(1000*b.N)/b.Elapsed().Seconds(), "designs/s")
}
