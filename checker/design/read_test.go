package design

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"greysill/checker/source"
)

func sound(t testing.TB) string {
	text, err := os.ReadFile(filepath.Join(broken, "sound.json"))
	require.NoError(t, err)
	return string(text)
}

// with is the sound design with one text replaced.
func with(t testing.TB, old, new string) string {
	text := sound(t)
	require.Equal(t, 1, strings.Count(text, old), old)
	return strings.Replace(text, old, new, 1)
}

func read(t testing.TB, text string) *Design {
	d, problems := Read("x.json", []byte(text))
	require.Empty(t, problems)
	return d
}

// The foot is 0.3048 m and the inch 0.0254 m exactly (NIST Handbook 44,
// Appendix C).
func TestRead(t *testing.T) {
	ft := func(x float64) float64 { return x * 0.3048 }
	d := read(t, sound(t))
	require.Equal(t, "US-CO", d.Location.Region)
	require.Equal(t, 3, d.Dwelling.Bedrooms)
	require.Equal(t, []Point{{0, 0}, {ft(100), 0}, {ft(100), ft(150)}, {0, ft(150)}}, d.Site.Boundary)
	require.Equal(t, &Point{ft(95), ft(145)}, d.Feature("well-1").At)
	require.Equal(t, []Outlet{{Target: "diverter-1", Pointer: "/sources/0/to"}}, d.Sources[0].To)
	pipe := d.Part("pipe-1")
	require.Equal(t, "/parts/1", pipe.Pointer)
	require.Len(t, pipe.Inverts, 2)
	require.InDelta(t, 97*0.3048, pipe.Inverts[0].Value, 1e-12)
	require.InDelta(t, 2*0.0254, pipe.Diameter.Value, 1e-12)
	require.Equal(t, "2 in", pipe.Diameter.Text)
	require.False(t, pipe.Insulation.Given())
	require.Nil(t, pipe.Marked)
	require.Equal(t, source.Position{File: "x.json", Line: 22, Column: 5}, d.Position(pipe.Pointer))
	require.Nil(t, d.Part("well-1"))
	require.Nil(t, d.Feature("pipe-1"))
}

func TestReadInMetres(t *testing.T) {
	d := read(t, with(t, `"unit": "ft"`, `"unit": "m"`))
	require.Equal(t, &Point{95, 145}, d.Feature("well-1").At)
}

func TestReadWhatMayBeOneOrMany(t *testing.T) {
	d := read(t, with(t, `"depth": "12 in"`, `"floor": "9 m", "surface": ["10 m", "10 m", "10.5 m", "10 m"],
		"overflow_to": [{"target": "sewer-1", "share": "25 %"}, {"target": "well-1"}]`))
	basin := d.Part("basin-1")
	require.Len(t, basin.Floor, 1)
	require.InDelta(t, 9, basin.Floor[0].Value, 1e-12)
	require.Len(t, basin.Surface, 4)
	require.InDelta(t, 10.5, basin.Surface[2].Value, 1e-12)
	require.Len(t, basin.OverflowTo, 2)
	require.Equal(t, "/parts/2/overflow_to/1", basin.OverflowTo[1].Pointer)
	require.InDelta(t, 0.25, basin.OverflowTo[0].Share.Value, 1e-12)
	require.False(t, basin.OverflowTo[1].Share.Given())
}

// No month freezes is another thing than not knowing.
func TestFreezingMonths(t *testing.T) {
	require.Nil(t, read(t, with(t, `"unit": "ft"}`, `"unit": "ft"}, "climate": {}`)).Site.Climate.FreezingMonths)
	none := read(t, with(t, `"unit": "ft"}`, `"unit": "ft"}, "climate": {"freezing_months": []}`)).Site.Climate.FreezingMonths
	require.NotNil(t, none)
	require.Empty(t, *none)
}

// A variance for a part that is not there is for the rules to find.
func TestDanglingVarianceIsRead(t *testing.T) {
	d := read(t, with(t, `"units": "us",`, `"units": "us", "variances": [{"rule": "clearances/well", "part": "gone",
		"reason": "r", "authority": "a", "reference": "1", "expires": "2027-06-30"}],`))
	require.Equal(t, "gone", d.Variances[0].Part)
}

// 29 February is in some years, and the shares of three thirds are the whole.
func TestWhatIsNoFault(t *testing.T) {
	read(t, with(t, `"sources": [`, `"operation": {"bypass_season": {"from": "11-01", "to": "02-29"}}, "sources": [`))
	read(t, with(t, `"to": "pipe-1"`, `"to": [{"target": "pipe-1", "share": "33.3 %"}, {"target": "well-1", "share": "33.3 %"}, {"target": "sewer-1", "share": "33.3 %"}]`))
	read(t, strings.ReplaceAll(sound(t), "\n", "\r\n"))
}

// The schema library gives its errors in random order, and its pointers
// percent-encoded.
func TestOrderIsThatOfTheFile(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(broken, "design", "*.json"))
	require.NoError(t, err)
	for _, file := range files {
		_, first := ReadFile(file)
		for range 40 {
			_, again := ReadFile(file)
			require.Equal(t, first, again, file)
		}
	}
}

// A number that makes the schema library panic or work for ever never reaches
// it.
func TestNumberBombs(t *testing.T) {
	for _, bomb := range []string{"1e1000001", "-1e1000001", "1E-1000001", strings.Repeat("9", 1<<17)} {
		_, problems := Read("x.json", []byte(with(t, `"bedrooms": 3`, `"bedrooms": `+bomb)))
		require.Len(t, problems, 1)
		require.Equal(t, "/dwelling/bedrooms", problems[0].Pointer)
		require.Contains(t, problems[0].Found, "is out of bounds")
	}
	_, problems := Read("x.json", []byte(with(t, `"bedrooms": 3`, `"bedrooms": 1e100`)))
	require.Len(t, problems, 1)
	require.Equal(t, "a number from 1 to 100", problems[0].Expected)
}

// However much is wrong with a file of 4 MiB, a hundred problems are told and
// the others counted.
func TestHostileFilesAreBounded(t *testing.T) {
	head, tail, _ := strings.Cut(sound(t), `"parts": [`)
	fill := func(item string, values int) string {
		n := min((source.MaxSize-len(head)-len(tail)-100)/(len(item)+1), (source.MaxValues-100)/values)
		return head + `"parts": [` + strings.Repeat(item+",", n) + strings.TrimLeft(tail, " \n")
	}
	for name, text := range map[string]string{
		"no parts":         fill("0", 1),
		"unknown names":    fill(`{"`+strings.Repeat("a", 90)+`": 1}`, 2),
		"dangling ways":    fill(`{"id": "p", "kind": "diverter", "at": [1, 1], "to": "nowhere"}`, 7),
		"bare numbers":     fill(`{"id": "p", "kind": "pond", "depth": 1, "volume": 1, "water_level": 1}`, 6),
		"bad points":       head + `"parts": [` + strings.Repeat(`{"id": "p", "kind": "pond", "outline": [`+strings.Repeat("[1],", 499)+`[1]]},`, 190) + strings.TrimLeft(tail, " \n"),
		"too many points":  head + `"parts": [` + strings.Repeat(`{"id": "p", "kind": "pond", "outline": [`+strings.Repeat("[1,1],", 329)+`[1,1]]},`, 190) + strings.TrimLeft(tail, " \n"),
		"many ways":        with(t, `"to": "pipe-1"`, `"to": [`+strings.TrimSuffix(strings.Repeat(`{"target": "diverter-1"},`, 90_000), ",")+`]`),
		"one line of text": with(t, `"place": "Fennel Hollow"`, `"place": "`+strings.Repeat("é", 2_000_000)+`"`),
		"deep":             strings.Repeat(`{"a":[`, source.MaxSize/6),
		"wide":             "{" + strings.Repeat(`"a":1,`, source.MaxSize/6-1) + `"b":1}`,
	} {
		t.Run(name, func(t *testing.T) {
			d, problems := Read("x.json", []byte(text))
			require.Nil(t, d)
			require.NotEmpty(t, problems)
			require.LessOrEqual(t, len(problems), source.MaxProblems+1)
			require.Less(t, len(problems.Error()), 200_000)
			if len(problems) > source.MaxProblems {
				require.Regexp(t, `^[0-9]+ more problems are not listed$`, problems[source.MaxProblems].Found)
			}
		})
	}
}

func TestTooManyPoints(t *testing.T) {
	var features []string
	for i := range 10 {
		var path []string
		for j := range 500 {
			path = append(path, fmt.Sprintf("[%d,%d]", j, i))
		}
		features = append(features, fmt.Sprintf(`{"id": "ditch-%d", "kind": "ditch", "path": [%s]}`, i, strings.Join(path, ",")))
	}
	at := `{"id": "well-1", "kind": "well", "at": [95, 145]}`
	_, problems := Read("x.json", []byte(with(t, at, at+","+strings.Join(features[:9], ","))))
	require.Empty(t, problems)
	_, problems = Read("x.json", []byte(with(t, at, at+","+strings.Join(features, ","))))
	require.Len(t, problems, 1)
	require.Equal(t, "at most 5000", problems[0].Expected)
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(sound(f)))
	files, err := filepath.Glob(filepath.Join(broken, "design", "*.json"))
	require.NoError(f, err)
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(f, err)
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		d, problems := Read("x.json", text)
		require.NotEqual(t, d == nil, len(problems) == 0, "a design or problems, never both")
		for _, p := range problems {
			requireInside(t, p, string(text))
		}
		if d != nil {
			requireSameAgain(t, d)
		}
	})
}

// requireInside requires that a problem says something and lies in the text.
func requireInside(t *testing.T, p source.Problem, text string) {
	require.NotEmpty(t, p.Found)
	lines := strings.Split(strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n"), "\n")
	require.LessOrEqual(t, p.Line, len(lines))
	if p.Line > 0 {
		require.LessOrEqual(t, p.Column, utf8.RuneCountInString(lines[p.Line-1])+1)
	}
}

// requireSameAgain writes the document out anew and requires the same design.
func requireSameAgain(t *testing.T, d *Design) {
	text, err := json.Marshal(d.Document.Value())
	require.NoError(t, err)
	again, problems := Read("x.json", text)
	require.Empty(t, problems)
	again.Document = d.Document
	require.Equal(t, d, again)
}
