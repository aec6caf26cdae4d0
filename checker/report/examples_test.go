package report_test

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/cost"
	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/internal/golden"
	"greysill/checker/report"
)

// TestReportsOnExamples holds every kind of report on every example, judged by
// the base rules, against what a person has read.
func TestReportsOnExamples(t *testing.T) {
	golden := goldens(t)
	t.Chdir(filepath.Join("..", ".."))
	const asOf = "2026-06-01"
	day, err := time.Parse(time.DateOnly, asOf)
	require.NoError(t, err)
	check := checker.New(checker.AsOf(day))
	examples, err := filepath.Glob("examples/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, examples)
	for _, file := range examples {
		name := strings.TrimSuffix(filepath.Base(file), ".json")
		r := check.Check(t.Context(), file)
		judged := report.Judged{Name: r.Name, Design: r.Design, Figures: r.Figures, Verdict: r.Verdict, Problems: r.Problems, Book: r.Book}
		options := report.Options{Version: "1.0", AsOf: asOf}
		run := ofRun{designs: []report.Judged{judged}}
		golden(name+".txt", func(b *bytes.Buffer) error { return run.write("text", b, options) })
		golden(name+".json", func(b *bytes.Buffer) error { return run.write("json", b, options) })
		golden(name+".md", func(b *bytes.Buffer) error { return run.write("markdown", b, options) })
		golden(name+".figures.txt", func(b *bytes.Buffer) error { return report.Figures(b, r.Figures, options) })
	}
}

// TestCostsOfAnExample holds what the passing example costs by the example's price
// list against what a person has read.
func TestCostsOfAnExample(t *testing.T) {
	golden := goldens(t)
	t.Chdir(filepath.Join("..", ".."))
	prices, problems := cost.ReadFile("examples/prices/fennel-hollow.json")
	require.Empty(t, problems)
	d, problems := design.ReadFile("examples/passing-bed.json")
	require.Empty(t, problems)
	for width, name := range map[int]string{80: "passing-bed.cost.txt", 40: "passing-bed.cost-narrow.txt"} {
		golden(name, func(b *bytes.Buffer) error {
			var sheet bytes.Buffer
			err := report.Figures(&sheet, figures.Compute(d), report.Options{Width: width, Prices: prices})
			_, after, found := strings.Cut(sheet.String(), "\nCost\n")
			require.True(t, found)
			costs, _, found := strings.Cut(after, "\nClearances\n")
			require.True(t, found)
			b.WriteString("Cost\n" + costs)
			return err
		})
	}
}

// goldens gives a function that compares what a report writes with the golden
// file of that name, wherever the test stands by then.
func goldens(t *testing.T) func(name string, write func(*bytes.Buffer) error) {
	dir, err := filepath.Abs(filepath.Join(goldenDir, "examples"))
	require.NoError(t, err)
	return func(name string, write func(*bytes.Buffer) error) {
		t.Run(name, func(t *testing.T) {
			var b bytes.Buffer
			require.NoError(t, write(&b))
			golden.Equal(t, filepath.Join(dir, name), b.Bytes())
		})
	}
}

// The remark that the README shows is one that the report makes.
func TestReadmeShowsARealRemark(t *testing.T) {
	const file, before, after = "../../README.md", "examples/faulty-bed.json`:\n\n", "\n\nA rule that"
	readme, err := os.ReadFile(file)
	require.NoError(t, err)
	letter, err := os.ReadFile(filepath.Join(goldenDir, "examples", "faulty-bed.txt"))
	require.NoError(t, err)
	begin, rest, found := strings.Cut(string(readme), before)
	require.True(t, found)
	_, end, found := strings.Cut(rest, after)
	require.True(t, found)
	golden.Equal(t, file, []byte(begin+before+indented(remarkAbout(t, string(letter), "gravel bed is deep enough everywhere"))+after+end))
}

// remarkAbout gives the numbered remark of a letter whose title holds the words.
func remarkAbout(t *testing.T, letter, words string) string {
	t.Helper()
	before, after, found := strings.Cut(letter, words)
	require.True(t, found)
	rest := before[strings.LastIndex(before, "\n")+1:] + words + after
	next := regexp.MustCompile(`\n\n\n|\n\n\d+\. `).FindStringIndex(rest)
	require.NotNil(t, next)
	return rest[:next[0]]
}

// indented is a text as a code block of CommonMark has it.
func indented(text string) string {
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		if line != "" {
			lines[i] = "    " + line
		}
	}
	return strings.Join(lines, "\n")
}
