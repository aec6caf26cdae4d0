package report_test

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker"
	"greysill/checker/figures"
	"greysill/checker/geometry"
	"greysill/checker/internal/golden"
	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/checker/rulebook"
)

// sheetOf gives the sheet of a design file of the tree, and what it was made of.
func sheetOf(t *testing.T, file string) (string, report.Judged) {
	t.Helper()
	check := checker.New(checker.AsOf(time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)))
	t.Chdir(filepath.Join("..", ".."))
	r := check.Check(t.Context(), file)
	require.Empty(t, r.Problems)
	j := report.Judged{Name: r.Name, Design: r.Design, Figures: r.Figures, Verdict: r.Verdict, Book: r.Book}
	var b bytes.Buffer
	require.NoError(t, ofRun{designs: []report.Judged{j}}.write("sheet", &b, report.Options{Version: "1.0", AsOf: "2026-06-01"}))
	return b.String(), j
}

var examples = []string{"passing-bed", "faulty-bed", "cold-climate", "mulch-basins", "si-bed"}

func onExamples(t *testing.T, test func(t *testing.T, page string, j report.Judged)) {
	for _, name := range examples {
		t.Run(name, func(t *testing.T) {
			page, j := sheetOf(t, "examples/"+name+".json")
			test(t, page, j)
		})
	}
}

func TestSheetIsAsRead(t *testing.T) {
	dir, err := filepath.Abs(filepath.Join(goldenDir, "examples"))
	require.NoError(t, err)
	page, _ := sheetOf(t, "examples/faulty-bed.json")
	golden.Equal(t, filepath.Join(dir, "faulty-bed.html"), []byte(page))
}

// shape is one drawn element: its group's name and data, and its coordinates in
// millimetres.
type shape struct {
	group  string
	data   map[string]string
	class  string
	points []geometry.Point
}

// drawn reads the drawing of a name back: its shapes and the metres that a
// millimetre stands for.
func drawn(t *testing.T, page, name string) (shapes []shape, metres float64) {
	t.Helper()
	_, after, found := strings.Cut(page, `data-drawing="`+name+`"`)
	require.True(t, found, name)
	body, _, _ := strings.Cut(after, "</svg>")
	ratio, body, _ := strings.Cut(strings.TrimPrefix(body, ` data-ratio="`), `">`)
	n, err := strconv.ParseFloat(ratio, 64)
	require.NoError(t, err)
	d := xml.NewDecoder(strings.NewReader("<svg>" + body + "</svg>"))
	var groups []map[string]string
	for {
		token, err := d.Token()
		if err != nil {
			require.ErrorContains(t, err, "EOF")
			return shapes, n / 1000
		}
		switch token := token.(type) {
		case xml.StartElement:
			attributes := map[string]string{}
			for _, a := range token.Attr {
				attributes[a.Name.Local] = a.Value
			}
			if groups = append(groups, attributes); token.Name.Local == "path" {
				within := groups[len(groups)-2]
				if strings.HasPrefix(attributes["class"], "of-") {
					continue // a filling
				}
				shapes = append(shapes, shape{within["class"], within, attributes["class"], coordinates(t, attributes["d"])})
			}
		case xml.EndElement:
			groups = groups[:len(groups)-1]
		}
	}
}

var pair = regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`)

func coordinates(t *testing.T, data string) []geometry.Point {
	var points []geometry.Point
	for _, m := range pair.FindAllStringSubmatch(data, -1) {
		x, err := strconv.ParseFloat(m[1], 64)
		require.NoError(t, err)
		y, err := strconv.ParseFloat(m[2], 64)
		require.NoError(t, err)
		points = append(points, geometry.Point{X: x, Y: y})
	}
	return points
}

// Coordinates are written to a thousandth of a millimetre, so that a length on the
// paper is within two of them.
const paperRounding = 0.002

// Every distance that fails is dimensioned on the plan, and the dimension, by the
// drawing's own coordinates and scale, is as long as the figure.
func TestDimensionsAreTheFigures(t *testing.T) {
	page, j := sheetOf(t, "examples/faulty-bed.json")
	shapes, metres := drawn(t, page, "plan")
	dimensioned := map[string]float64{}
	for _, s := range shapes {
		if s.group == "dimension-of" && s.class == "dimension" {
			dimensioned[s.data["data-part"]+" and "+s.data["data-thing"]] = math.Hypot(s.points[1].X-s.points[0].X, s.points[1].Y-s.points[0].Y) * metres
		}
	}
	failing := 0
	for _, f := range j.Verdict.Findings {
		if f.Status != rulebook.Pass && strings.HasPrefix(f.Rule.ID, "clearances/") && f.Measured[0].Limit != nil && f.Measured[0].Value.Number > 0 {
			failing++
			require.InDelta(t, f.Measured[0].Value.Number, dimensioned[f.Item.Subject.Name], paperRounding*metres, f.Item.Subject.Name)
		}
	}
	require.Equal(t, 6, failing, "examples/README.md: tank and house, bed and well, basin and water service, basin and boundary, basin and tile drain, trench and apple tree")
	require.Len(t, dimensioned, failing)
}

// The areas of parts, by the plan's own coordinates and scale, are the figures, and
// so is a bed's area by the drawing of the bed.
func TestAreasAreTheFigures(t *testing.T) {
	onExamples(t, func(t *testing.T, page string, j report.Judged) {
		shapes, metres := drawn(t, page, "plan")
		areas := map[string]float64{}
		for _, s := range shapes {
			if s.group == "part-of" && s.class != "arrow" && len(s.points) > 3 {
				areas[s.data["data-id"]] += geometry.Outline(s.points).Area() * metres * metres
			}
		}
		for i, it := range j.Figures.List("parts") {
			if area := it.Value("area"); area.Known() && area.Number > 0 {
				require.InEpsilon(t, area.Number, areas[it.Subject.IDs[0]], 0.003, j.Design.Parts[i].ID)
			}
		}
		for i, it := range j.Figures.List("beds") {
			shapes, metres := drawn(t, page, "bed-plan-"+strconv.Itoa(i+1))
			require.Equal(t, "bed-edge", shapes[1].class)
			require.InEpsilon(t, it.Value("area").Number, geometry.Outline(shapes[1].points).Area()*metres*metres, 0.0005)
		}
	})
}

// Lettering has its box by the placement's own measure; no two overlap.
func TestLabelsDoNotOverlap(t *testing.T) {
	boxes := regexp.MustCompile(`data-label="([^"]*)" data-box="([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+)"`)
	onExamples(t, func(t *testing.T, page string, _ report.Judged) {
		drawings := strings.Split(page, `data-drawing="`)
		for _, d := range drawings[1:] {
			found := boxes.FindAllStringSubmatch(d, -1)
			for i := range found {
				for k := range i {
					require.False(t, overlap(t, found[i][2:], found[k][2:]), "%s: %s and %s", d[:8], found[i][1], found[k][1])
				}
			}
		}
	})
}

func overlap(t *testing.T, a, b []string) bool {
	number := func(text string) float64 {
		v, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err)
		return v
	}
	apart := func(a, b string) bool { return number(a) <= number(b) }
	return !apart(a[2], b[0]) && !apart(b[2], a[0]) && !apart(a[3], b[1]) && !apart(b[3], a[1])
}

// A drawing that is no larger than what is left of the smallest page prints whole:
// Letter is 279.4 mm high and A4 210 mm wide; the margins are those of the style
// sheet, and a caption has three lines.
func TestDrawingsFitOnEveryPaper(t *testing.T) {
	const room, wide, caption = 279.4 - 14 - 19, 210 - 12 - 14, 14.0
	sizes := regexp.MustCompile(`--wide:([\d.]+)mm;--widest:([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"`)
	onExamples(t, func(t *testing.T, page string, _ report.Judged) {
		found := sizes.FindAllStringSubmatch(page, -1)
		require.NotEmpty(t, found)
		for _, m := range found {
			var size [4]float64
			for i := range size {
				size[i], _ = strconv.ParseFloat(m[i+1], 64)
			}
			require.LessOrEqual(t, size[0], float64(wide))
			require.LessOrEqual(t, size[3]+caption, float64(room))
			require.LessOrEqual(t, size[1], 297.0-12-14)
			require.LessOrEqual(t, size[3]*size[1]/size[0]+caption, 420.0-14-19)
		}
	})
}

// One file: no request, no script, and small enough to be sent.
func TestSheetStandsAlone(t *testing.T) {
	refers := regexp.MustCompile(`(?i)<(script|link|img|iframe|object|embed|base|form)|\s(src|srcset|action|on[a-z]+)=|@import|url\((?:"|'|[^#])|href="[^#]`)
	onExamples(t, func(t *testing.T, page string, _ report.Judged) {
		require.Less(t, len(page), 1_000_000)
		require.Empty(t, refers.FindString(page))
		require.Contains(t, page, `content="default-src 'none'; style-src 'unsafe-inline'"`)
	})
}

// What a reader who does not see the page needs: the language, headings that leave
// no level out, a scope for every table heading, words for every drawing.
func TestSheetIsAccessible(t *testing.T) {
	headings, scopes := regexp.MustCompile(`<h([1-6])`), regexp.MustCompile(`<th[ >]`)
	ids := regexp.MustCompile(` id="([^"]*)"`)
	onExamples(t, func(t *testing.T, page string, _ report.Judged) {
		require.Contains(t, page, `<html lang="en">`)
		last := 0
		for _, h := range headings.FindAllStringSubmatch(page, -1) {
			level := int(h[1][0] - '0')
			require.LessOrEqual(t, level, last+1)
			last = level
		}
		require.Equal(t, len(scopes.FindAllString(page, -1)), strings.Count(page, "<th scope="))
		seen := map[string]bool{}
		for _, id := range ids.FindAllStringSubmatch(page, -1) {
			require.False(t, seen[id[1]], "the id %s twice", id[1])
			seen[id[1]] = true
		}
		for _, to := range regexp.MustCompile(`(?:href="#|url\(#|aria-labelledby=")([^" )]+)`).FindAllStringSubmatch(page, -1) {
			require.True(t, seen[to[1]], to[1])
		}
		drawings := strings.Count(page, `role="img"`)
		require.Equal(t, drawings, strings.Count(page, `-desc">`))
		require.Equal(t, drawings, strings.Count(page, "<title id="))
	})
}

// Text that would be markup, turn the direction of writing or command something is
// shown as text, in every entry that a design has for words.
func TestHostileTextIsText(t *testing.T) {
	page, j := sheetOf(t, "testdata/hostile.json")
	require.Empty(t, regexp.MustCompile(`(?i)<(script|img)|\{\{`).FindString(strings.ReplaceAll(page, "{{.}}", "")))
	require.Empty(t, regexp.MustCompile(`[\x00-\x08\x0b-\x1f\x7f-\x{9f}\x{200e}\x{200f}\x{202a}-\x{202e}\x{2066}-\x{2069}\x{feff}]`).FindString(page))
	require.Equal(t, 1, strings.Count(page, "</style>"))
	shown := map[string]string{
		"title": j.Design.Title, "place": j.Design.Location.Place, "role": j.Design.Prepared.Role, "revision": j.Design.Prepared.Revision,
		"operator": j.Design.Operation.Operator, "task": j.Design.Operation.Tasks[0].Task, "who": j.Design.Operation.Tasks[0].Who,
		"datum": j.Design.Site.Grid.Datum, "authority": j.Design.Variances[0].Authority, "reference": j.Design.Variances[0].Reference,
		"reason": j.Design.Variances[0].Reason, "species": j.Design.Part("bed-1").Plants[0].Species, "liner": j.Design.Part("bed-1").Liner.Material,
		"pipe": j.Design.Part("pipe-1").Material,
	}
	for entry, text := range shown {
		number, _, _ := strings.Cut(strings.TrimPrefix(text, "no. "), " ")
		require.Contains(t, page, "no. "+number+" &lt;script&gt;alert("+number+")", entry)
	}
	require.Contains(t, page, strings.Repeat("W", 9000))
	require.Contains(t, page, `\u202eright to left\u2069 \u0007\u0085\ufeff`)
}

// The file of hostile text has it in every entry for words that its drawing has.
func TestHostileFileIsHostileThroughout(t *testing.T) {
	text, err := os.ReadFile(filepath.Join("..", "..", "testdata", "hostile.json"))
	require.NoError(t, err)
	var all any
	require.NoError(t, json.Unmarshal(text, &all))
	words := map[string]bool{"title": true, "place": true, "role": true, "revision": true, "datum": true, "note": true, "material": true, "species": true,
		"permit": true, "stocking_permit": true, "penetrations": true, "operator": true, "task": true, "who": true, "reason": true, "authority": true, "reference": true}
	var walk func(name string, v any)
	walk = func(name string, v any) {
		switch v := v.(type) {
		case map[string]any:
			for k, below := range v {
				walk(k, below)
			}
		case []any:
			for _, below := range v {
				walk(name, below)
			}
		case string:
			require.Equal(t, words[name], strings.Contains(v, "<script>"), "%s: %.40s", name, v)
		}
	}
	walk("", all)
}

func TestSheetOfSeveralDesignsIsRefused(t *testing.T) {
	err := ofRun{designs: []report.Judged{sound(t), sound(t)}}.write("sheet", &bytes.Buffer{}, report.Options{})
	require.ErrorContains(t, err, "one design")
	require.ErrorContains(t, ofRun{}.write("sheet", &bytes.Buffer{}, report.Options{}), "none was found")
}

// A file that is no design has a sheet that says so and where.
func TestSheetOfAFileThatIsNoDesign(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, ofRun{designs: []report.Judged{unread()}}.write("sheet", &b, report.Options{}))
	require.Contains(t, b.String(), "designs/broken.json:12:18")
	require.Contains(t, b.String(), "was not judged")
}

// Everything that the text report says of a design stands on its sheet too.
func TestSheetSaysWhatTheLetterSays(t *testing.T) {
	for _, j := range everything(t).designs {
		var b bytes.Buffer
		require.NoError(t, ofRun{designs: []report.Judged{j}}.write("sheet", &b, report.Options{Version: "1.0"}))
		if j.Verdict == nil {
			continue
		}
		for i := range j.Verdict.Findings {
			require.Contains(t, b.String(), escapedHTML(j.Verdict.Findings[i].Rule.Title))
		}
		for _, v := range j.Verdict.Variances {
			require.Contains(t, b.String(), escapedHTML(v.Found[1:]))
		}
		for _, broken := range j.Verdict.Broken {
			require.Contains(t, b.String(), escapedHTML(broken.Err.Error()[1:]))
		}
	}
}

func escapedHTML(text string) string {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", "'", "&#39;", `"`, "&#34;").Replace(text)
}

// The numbers of remarks are those of the text report, so that both can be read side
// by side.
func TestSheetNumbersLikeTheLetter(t *testing.T) {
	page, j := sheetOf(t, "examples/faulty-bed.json")
	var b bytes.Buffer
	require.NoError(t, ofRun{designs: []report.Judged{j}}.write("text", &b, report.Options{Width: 120}))
	numbered := regexp.MustCompile(`(?m)^(\d+)\. +(.{20})`).FindAllStringSubmatch(b.String(), -1)
	require.NotEmpty(t, numbered)
	for _, m := range numbered {
		require.Contains(t, page, `<b>`+m[1]+`</b> `+m[2])
	}
}

// listOf gives what a sheet says of one list of figures.
func listOf(t *testing.T, page, title string) string {
	_, after, found := strings.Cut(page, "<h3>"+title+".</h3>")
	require.True(t, found, title)
	list, _, _ := strings.Cut(after, "<h3>")
	list, _, _ = strings.Cut(list, "<h2>")
	return list
}

// Every figure that is known stands in its list, in the design's units, under the
// name of its subject.
func TestSheetHasEveryFigure(t *testing.T) {
	onExamples(t, func(t *testing.T, page string, j report.Judged) {
		for _, l := range j.Figures.Lists {
			title, _, _ := strings.Cut(l.List.Name, "clearances.")
			title = strings.ReplaceAll(strings.ReplaceAll(title, ".", ": "), "_", " ")
			if title == "" {
				title = "clearances"
			}
			for _, it := range l.Items {
				list := listOf(t, page, strings.ToUpper(title[:1])+title[1:])
				for _, name := range strings.Split(it.Subject.Name, " and ") {
					require.Contains(t, list, escapedHTML(name))
				}
				for i, f := range l.List.Fields {
					if v := &it.Values[i]; v.Known() && f.Kind == figures.Number {
						value := strings.ReplaceAll(quantity.Format(v.Number, f.Dimension, j.Design.Units), " ", "\u00a0")
						require.Regexp(t, `[>:] ?`+regexp.QuoteMeta(escapedHTML(value))+`[<,;\n]`, list, "%s: %s", it.Subject.Name, f.Name)
					}
				}
			}
		}
	})
}

// Of the passes of a rule the one nearest to the limit stands on the sheet, for
// every measure.
func TestVerdictsShowTheNearestPass(t *testing.T) {
	type measure struct {
		of    *rulebook.Measure
		limit *rulebook.Limit
	}
	onExamples(t, func(t *testing.T, page string, j report.Judged) {
		nearest := map[measure]rulebook.Measured{}
		subjects := map[measure][]string{}
		for _, f := range j.Verdict.Findings {
			for _, m := range f.Measured {
				if is := (measure{m.Measure, m.Limit}); f.Status == rulebook.Pass && m.Limit != nil {
					if other, seen := nearest[is]; !seen || m.Margin < other.Margin {
						nearest[is], subjects[is] = m, nil
					}
					if m.Margin == nearest[is].Margin {
						subjects[is] = append(subjects[is], f.Item.Subject.Name)
					}
				}
			}
		}
		require.NotEmpty(t, nearest)
		for is := range nearest {
			var rows []string
			for _, subject := range subjects[is] {
				rows = append(rows, regexp.QuoteMeta(escapedHTML(subject)))
			}
			require.Regexp(t, `<th scope=row>(`+strings.Join(rows, "|")+`)(, nearest of.\d+)?<td>[^<]*<td>[^<]*, `+is.limit.Name+`<td>[^<]*<td>S?\d*<td>holds`, page)
		}
	})
}

// Of a list that is too long for paper those subjects stand on the sheet that have
// findings, and it says how many do not.
func TestLongListsAreCut(t *testing.T) {
	j := sound(t)
	list := &figures.List{Name: "lengths", Doc: "Every length.", Fields: []*figures.Field{{Name: "fall", Kind: figures.Number, Dimension: quantity.Length, Doc: "Its fall."}}}
	long := figures.Items{List: list}
	for i := range 100 {
		id := "length-" + strconv.Itoa(i)
		long.Items = append(long.Items, &figures.Item{List: list, Subject: figures.Subject{Name: id, IDs: []string{id}}, Values: []figures.Value{{Number: float64(i)}}})
	}
	of := *j.Figures
	of.Lists = append(slices.Clone(of.Lists), long)
	verdict := *j.Verdict
	verdict.Findings = append(slices.Clone(verdict.Findings), rulebook.Finding{Rule: j.Book.Rules()[0], Item: long.Items[99], Status: rulebook.Fail})
	j.Figures, j.Verdict = &of, &verdict
	var b bytes.Buffer
	require.NoError(t, ofRun{designs: []report.Judged{j}}.write("sheet", &b, report.Options{}))
	lengths := listOf(t, b.String(), "Lengths")
	require.Contains(t, lengths, "60 of 100")
	require.Contains(t, lengths, "greysill figures")
	require.Equal(t, 60, strings.Count(lengths, "<th scope=row>length-"))
	require.Contains(t, lengths, "<th scope=row>length-99 ")
	require.NotContains(t, lengths, "length-60 ")
}
