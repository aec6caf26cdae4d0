package report_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/rivo/uniseg"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/figures"
	"greysill/checker/internal/golden"
	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/checker/rulebook"
)

const goldenDir = "../../testdata/golden/"

func textOf(t require.TestingT, run ofRun, o report.Options) string {
	var b bytes.Buffer
	require.NoError(t, run.write("text", &b, o))
	return b.String()
}

func TestTextIsAsRead(t *testing.T) {
	for _, c := range []struct {
		file string
		run  ofRun
		o    report.Options
	}{
		{"report-faulty.txt", ofRun{designs: []report.Judged{faulty(t)}}, report.Options{}},
		{"report-faulty-si-40.txt", ofRun{designs: []report.Judged{faulty(t)}}, report.Options{Units: quantity.SI, Width: 40}},
		{"report-allowed.txt", ofRun{designs: []report.Judged{allowed(t)}}, report.Options{}},
		{"report-sound.txt", ofRun{designs: []report.Judged{sound(t)}}, report.Options{}},
		{"report-several.txt", ofRun{designs: []report.Judged{sound(t), unread(), halfJudged(t), faulty(t), allowed(t)}, skipped: []string{"designs/package.json"}}, report.Options{}},
	} {
		t.Run(c.file, func(t *testing.T) { golden.Equal(t, goldenDir+c.file, []byte(textOf(t, c.run, c.o))) })
	}
}

func TestTextPutsTheWorstFirst(t *testing.T) {
	text := textOf(t, ofRun{designs: []report.Judged{sound(t), unread(), faulty(t)}}, report.Options{})
	last := -1
	for _, heading := range []string{"\nWhat fails\n", "\nWarnings\n", "\nNot shown on the design\n", "\nWhat holds\n", "\nTake care\n", "\nWho decides\n"} {
		at := strings.LastIndex(text, heading)
		require.Greater(t, at, last, heading)
		last = at
	}
	summary := text[strings.Index(text, "All designs, worst first"):]
	require.Less(t, strings.Index(summary, "broken.json"), strings.Index(summary, "quillwater.json"))
	require.Less(t, strings.Index(summary, "quillwater.json"), strings.Index(summary, "sound.json"))
}

func TestCautionsAreThoseOfRulesWithSubjects(t *testing.T) {
	text := textOf(t, ofRun{designs: []report.Judged{faulty(t)}}, report.Options{})
	require.Equal(t, 1, strings.Count(text, "Greywater carries germs."))
	require.NotContains(t, text, "Children drown", "nothing on the design holds water in the open")
}

func TestColourOnlyWhenAsked(t *testing.T) {
	run := ofRun{designs: []report.Judged{faulty(t), unread()}}
	plain, coloured := textOf(t, run, report.Options{}), textOf(t, run, report.Options{Colour: true})
	require.NotContains(t, plain, "\x1b")
	require.Contains(t, coloured, "\x1b[31m")
	for _, code := range []string{"\x1b[1m", "\x1b[31m", "\x1b[94m", "\x1b[0m"} {
		coloured = strings.ReplaceAll(coloured, code, "")
	}
	require.Equal(t, plain, coloured, "colour may add nothing to what the words say")
}

// hostile is text as an ill-meaning document might have it.
var hostile = []string{
	"\x1b[2J\x1b]0;owned\x07", "bed\u202e1-deb", "a\u2066b\u2069", "line\r\nbreak\ttab", "\u009b31m", "\x7f", "\u2028", "bad \xff byte",
	strings.Repeat("endless", 400), strings.Repeat("水", 300), "水槽の前の庭", "👩‍🌾", "e\u0301tang", "שלום", "{short} {part}", "",
}

func TestHostileTextIsSpelledOut(t *testing.T) {
	for _, name := range hostile {
		j := faulty(t)
		j.Name = "designs/" + name
		j.Design.Title, j.Design.Location.Place, j.Design.Prepared.Revision = name, name, name
		for _, f := range j.Verdict.Findings {
			f.Item.Subject.Name = name
		}
		j.Verdict.Findings[0].Item.Value("least_depth_at").Text = name
		run := ofRun{designs: []report.Judged{j}, skipped: []string{name}}
		requirePrintable(t, textOf(t, run, report.Options{}))
		var b bytes.Buffer
		require.NoError(t, report.Figures(&b, j.Figures, report.Options{}))
		requirePrintable(t, b.String())
	}
}

func requirePrintable(t *testing.T, text string) {
	t.Helper()
	for _, r := range text {
		bad := r < ' ' && r != '\n' || r >= 0x7f && r < 0xa0 || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069 || r == 0x2028
		require.False(t, bad, "%U in the report", r)
	}
}

func TestNoLineIsWiderThanThePage(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		j := faulty(t)
		// A no-break space makes one word of two, but is printed as a space.
		whole := func(text string) string { return strings.ReplaceAll(text, "\u00a0", "-") }
		word := rapid.Map(rapid.OneOf(rapid.SampledFrom(hostile), rapid.StringN(0, 60, -1)), whole)
		j.Design.Title = word.Draw(r, "title")
		j.Verdict.Findings[0].Item.Subject.Name = word.Draw(r, "subject")
		width := rapid.IntRange(20, 140).Draw(r, "width")
		units := rapid.SampledFrom([]quantity.System{quantity.US, quantity.SI}).Draw(r, "units")
		run := ofRun{designs: []report.Judged{j, unread()}, skipped: []string{word.Draw(r, "skipped")}}
		room := min(max(width, 40), 120)
		for _, line := range strings.Split(textOf(r, run, report.Options{Width: width, Units: units}), "\n") {
			if uniseg.StringWidth(line) > room {
				require.NotContains(r, strings.TrimSpace(line), " ", "%d columns in a page of %d", uniseg.StringWidth(line), room)
			}
			require.Equal(r, strings.TrimRight(line, " "), line)
		}
	})
}

func TestWideCharactersTakeTwoColumns(t *testing.T) {
	j := sound(t)
	j.Design.Title = strings.Repeat("水", 50)
	lines := strings.Split(textOf(t, ofRun{designs: []report.Judged{j}}, report.Options{Width: 80}), "\n")
	require.Equal(t, strings.Repeat("水", 40), lines[0])
	require.Equal(t, strings.Repeat("水", 10), lines[1])
}

func TestStatus(t *testing.T) {
	warned := sound(t)
	f := warned.Verdict.Findings[0]
	f.Status = rulebook.Warn
	warned.Verdict = &rulebook.Verdict{Findings: []rulebook.Finding{f}}
	for _, c := range []struct {
		judged report.Judged
		want   rulebook.Status
	}{
		{faulty(t), rulebook.Fail}, {warned, rulebook.Warn}, {sound(t), rulebook.Pass}, {allowed(t), rulebook.Warn},
		{unread(), rulebook.Unjudged}, {halfJudged(t), rulebook.Unjudged},
	} {
		require.Equal(t, c.want, c.judged.Status(), c.judged.Name)
	}
}

// The remedy's shortfall is rounded up: who does just what it says has done
// enough.
func TestShortfallIsRoundedUp(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := harrow()
		distance := rapid.Float64Range(0, 30).Draw(r, "distance")
		units := rapid.SampledFrom([]quantity.System{quantity.US, quantity.SI}).Draw(r, "units")
		it := item(wellList, subject("a and b", "a", "/parts/1", "b", "/parts/2"), text("a"), text("field"), text("b"), figures.Value{Number: distance})
		j := sound(t)
		b.rules[1].Remedy = "<{short}>"
		j.Verdict = &rulebook.Verdict{Findings: []rulebook.Finding{b.finding(t, "clearances/well", rulebook.Fail, it, 0)}}
		said := textOf(r, ofRun{designs: []report.Judged{j}}, report.Options{Units: units, Width: 120})
		said = said[strings.Index(said, "<")+1 : strings.Index(said, ">")]
		short, err := quantity.Parse(said, quantity.Length)
		require.NoError(r, err, said)
		require.GreaterOrEqual(r, distance+short.Value, 30.48*(1-1e-9), said)
		require.InDelta(r, 30.48-distance, short.Value, 0.011, said)
	})
}
