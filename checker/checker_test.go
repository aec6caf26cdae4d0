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

func TestOutcome(t *testing.T) {
	c := checker.New()
	for path, want := range map[string]rulebook.Status{
		passing:          rulebook.Pass,
		faulty:           rulebook.Fail,
		"no-such-design": rulebook.Unjudged,
	} {
		r := c.Check(t.Context(), path)
		require.Equal(t, want, r.Status(), path)
		require.Equal(t, path, r.Name)
		require.Equal(t, want == rulebook.Unjudged, len(r.Problems) > 0, path)
		require.Equal(t, want == rulebook.Unjudged, r.Verdict == nil, path)
	}
}

func TestCheckBytesIsCheck(t *testing.T) {
	c := checker.New()
	text, err := os.ReadFile(faulty)
	require.NoError(t, err)
	fromFile, fromText := c.Check(t.Context(), faulty), c.CheckBytes(t.Context(), "in memory", text)
	require.Equal(t, fromFile.Verdict.Counts(), fromText.Verdict.Counts())
	require.Equal(t, "in memory", fromText.Name)
}

func TestFindingsStandInTheDocument(t *testing.T) {
	r := checker.New().Check(t.Context(), faulty)
	for i := range r.Verdict.Findings {
		f := &r.Verdict.Findings[i]
		at := r.Verdict.Position(f.Item)
		require.Equal(t, faulty, at.File, "%s %s", f.Rule.ID, f.Item.Subject.Name)
		require.NotZero(t, at.Line)
	}
}

const county = `{"amendment": {"format": "greysill-amendment/1", "name": "Harrow County", "authority": "Harrow County", "edition": "2021", "checked": "2026-05-31"}}`

func TestRefusedRules(t *testing.T) {
	bad := rulebook.Layer{Name: "county", FS: fstest.MapFS{"amendment.json": {Data: []byte(county)}, "a/b.rego": {Data: []byte("package x")}}}
	r := checker.New(checker.WithLayers(bad)).Check(t.Context(), passing)
	var problems source.Problems
	require.ErrorAs(t, r.Rules, &problems)
	require.Equal(t, "county/a/b.rego", problems[0].File)
	require.Equal(t, rulebook.Unjudged, r.Status())
	require.Nil(t, r.Verdict)
}

func TestRuleThatCannotBeJudged(t *testing.T) {
	broken := rulebook.Layer{Name: "county", FS: fstest.MapFS{"amendment.json": {Data: []byte(county)}, "a/b.rego": {Data: []byte(`# METADATA
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
	r := checker.New(checker.WithLayers(broken)).Check(t.Context(), passing)
	require.Equal(t, rulebook.Unjudged, r.Status())
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
	var outcomes []rulebook.Status
	files := filesOf(paths)
	text, err := os.ReadFile(passing)
	require.NoError(t, err)
	files[30] = checker.File{Name: "-", Read: true, Text: text}
	files[31] = checker.File{Name: "-", Read: true, Problems: source.Problems{{Found: "the file is too large"}}}
	paths[30], paths[31] = "-", "-"
	err = checker.New().CheckAll(t.Context(), files, func(r *checker.Result) error {
		names, outcomes = append(names, r.Name), append(outcomes, r.Status())
		return nil
	})
	require.NoError(t, err)
	require.Equal(t, paths, names)
	require.Equal(t, rulebook.Fail, outcomes[7])
	require.Equal(t, rulebook.Unjudged, outcomes[20])
	require.Equal(t, rulebook.Pass, outcomes[30])
	require.Equal(t, rulebook.Unjudged, outcomes[31])
	require.Equal(t, rulebook.Pass, outcomes[49])
}

func TestCheckAllEndsEarly(t *testing.T) {
	c, files := checker.New(), filesOf(copies(t, passing, 20))
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
	c := checker.New(checker.AsOf(time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)))
	for _, r := range []*checker.Result{
		c.Check(context.Background(), "../examples/passing-bed.json"),
		c.CheckBytes(context.Background(), "sketch.json", []byte(`{"format": "greywater-design/1"}`)),
	} {
		fmt.Println(filepath.Base(r.Name), r.Status())
	}
	// Output:
	// passing-bed.json pass
	// sketch.json unjudged
}
