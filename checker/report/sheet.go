package report

import (
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"errors"
	"fmt"
	"html/template"
	"io"
	"strings"

	"greysill/checker/design"
	"greysill/checker/drawing"
	"greysill/checker/figures"
	"greysill/checker/source"
)

//go:embed sheet/*.html sheet/style.css
var sheetFiles embed.FS

// sheetTemplates are read once; a template that cannot be read is a fault of the
// program.
var sheetTemplates = template.Must(template.New("").Funcs(template.FuncMap{"inc": func(i int) int { return i + 1 }}).ParseFS(sheetFiles, "sheet/*.html"))

// sheet is the report for the plan reviewer: one HTML file with drawings, to be
// printed and handed in with one design.
type sheet struct {
	w       io.Writer
	options Options
	written bool
}

// errOneDesign says that a sheet is of one design. It is handed in for one site,
// with one digest in its title block and that on every page.
var errOneDesign = errors.New("a sheet is handed in for one design; review the designs one by one to have a sheet of each")

// Design writes the sheet.
func (s *sheet) Design(j *Judged) error {
	if s.written {
		return errOneDesign
	}
	s.written = true
	var page strings.Builder
	if err := sheetTemplates.ExecuteTemplate(&page, "page.html", newPaper(j, s.options)); err != nil {
		return fmt.Errorf("sheet of %s: %w", j.Name, err)
	}
	_, err := io.WriteString(s.w, revealed(page.String()))
	return err
}

// Close refuses a run without a design.
func (s *sheet) Close([]string) error {
	if !s.written {
		return errors.New("a sheet needs a design, and none was found")
	}
	return nil
}

// revealed shows what a text from a design hides: control characters, marks that
// turn the direction of writing, bytes that are no UTF-8. The templates have none
// but line breaks.
func revealed(page string) string {
	lines := strings.Split(page, "\n")
	for i := range lines {
		lines[i] = source.Clean(lines[i])
	}
	return strings.Join(lines, "\n")
}

// paper is what the templates of a sheet are filled with.
type paper struct {
	speaker
	*Judged
	Options  Options
	Style    template.CSS
	Drawings []drawnSheet
	remarks  []numbered
	sources  []figures.Citation // in the order in which the tables name them
}

// drawnSheet is one drawing, ready to be set on the page.
type drawnSheet struct {
	*drawing.Drawing
	Picture template.HTML
}

func newPaper(j *Judged, o Options) *paper {
	p := &paper{speaker: speaker{o.units(j.Design)}, Judged: j, Options: o}
	p.Style = p.style()
	if p.Read() {
		p.remarks = p.numbered()
		for _, d := range p.draw() {
			p.Drawings = append(p.Drawings, drawnSheet{d, template.HTML(d.SVG())})
		}
	}
	return p
}

// Read reports whether the file could be read as a design and was judged.
func (p *paper) Read() bool { return p.Verdict != nil && len(p.Problems) == 0 }

// Title is the design's title, the file's name where there is none.
func (p *paper) Title() string {
	if p.Design == nil {
		return p.Name
	}
	return p.Design.Title
}

// Fact is one entry of the title block.
type Fact struct{ Name, Value string }

// Facts gives the title block.
func (p *paper) Facts() []Fact {
	facts := []Fact{{"File", p.Name}}
	if d := p.Design; d != nil {
		facts = []Fact{
			{"Place", d.Location.Place}, {"Region", d.Location.Region}, {"Revision", d.Prepared.Revision}, {"Date of the design", d.Prepared.Date},
			{"Prepared by", d.Prepared.Role}, {"File", p.Name}, {"SHA-256 of the file", digest(d.Document)},
		}
	}
	facts = append(facts, Fact{"Rules in force", p.inForce()}, Fact{"Variances held against", p.Options.AsOf}, Fact{"Checked by", "greysill " + p.Options.Version})
	given := facts[:0]
	for _, f := range facts {
		if f.Value != "" {
			given = append(given, f)
		}
	}
	return given
}

// digest gives the SHA-256 digest of a design's file, as sha256sum prints it.
func digest(d *source.Document) string {
	sum := sha256.Sum256(d.Text())
	return hex.EncodeToString(sum[:])
}

// Outcome says in one line what the check came to.
func (p *paper) Outcome() string {
	t := tallyOf(p.Judged)
	return t.said()
}

// LocalCode is the note of every page.
func (p *paper) LocalCode() string { return localCode }

// style gives the whole style sheet, with what runs at the head and the foot of
// every printed page.
func (p *paper) style() template.CSS {
	css, err := sheetFiles.ReadFile("sheet/style.css")
	if err != nil {
		panic(err) // it is embedded
	}
	head := source.Cut(p.Title())
	if p.Design != nil {
		head += ", " + runningHead(p.Design)
	}
	return template.CSS(string(css) + drawing.Stylesheet() +
		"@page{@top-left{content:" + cssString(head) + "}@bottom-left{content:" + cssString(localCode) + "}}\n")
}

// runningHead tells a loose page's design: its revision, date and digest.
func runningHead(d *design.Design) string {
	head := "SHA-256 " + digest(d.Document)[:16] + "…"
	if d.Prepared.Date != "" {
		head = "drawn " + source.Cut(d.Prepared.Date) + ", " + head
	}
	if d.Prepared.Revision != "" {
		head = "revision " + source.Cut(d.Prepared.Revision) + ", " + head
	}
	return head
}

// cssString writes a text as a string of CSS in which every character but plain
// letters and digits is escaped, so that nothing can end it.
func cssString(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range source.Clean(text) {
		if r < 128 && (r == ' ' || r == ',' || r == '.' || r >= '0' && r <= '9' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z') {
			b.WriteRune(r)
			continue
		}
		fmt.Fprintf(&b, `\%06x `, r)
	}
	b.WriteByte('"')
	return b.String()
}
