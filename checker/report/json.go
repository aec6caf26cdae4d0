package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"unicode"
	"unicode/utf16"

	"github.com/go-json-experiment/json/jsontext"

	"greysill/checker/compare"
	"greysill/checker/rulebook"
)

// Format is the value of a JSON report's format entry.
const Format = "greysill-report/1"

// jsonReport is the report for another program: one object for the whole run,
// as schema/report.schema.json describes it. Numbers are in SI units, texts in
// those asked for. It keeps the first error.
type jsonReport struct {
	encoder *jsontext.Encoder
	options Options
	books   []jsonBook   // that designs were held against, each once
	places  map[Book]int // of the books in the list
	err     error
}

func newJSON(w io.Writer, o Options) *jsonReport {
	r := &jsonReport{
		encoder: jsontext.NewEncoder(w, jsontext.WithIndent("  "), jsontext.PreserveRawStrings(true)),
		options: o, books: []jsonBook{}, places: map[Book]int{},
	}
	r.token(jsontext.BeginObject)
	r.member("format", Format)
	r.member("tool", jsonTool{"greysill", o.Version})
	if o.AsOf != "" {
		r.member("as_of", o.AsOf)
	}
	r.token(jsontext.String("designs"))
	r.token(jsontext.BeginArray)
	return r
}

// Design writes one design's part.
func (w *jsonReport) Design(j *Judged) error {
	w.value(designJSON(j, w.book(j.Book), w.options))
	return w.err
}

// Close writes the rule books and ends the object.
func (w *jsonReport) Close(skipped []string) error {
	w.token(jsontext.EndArray)
	w.member("rule_books", w.books)
	w.member("skipped", orEmpty(skipped))
	w.member("note", localCode)
	w.token(jsontext.EndObject)
	return w.err
}

// book gives the place of a rule book in the list, nil when a design has none.
func (w *jsonReport) book(b Book) *int {
	if b == nil {
		return nil
	}
	place, known := w.places[b]
	if !known {
		place = len(w.books)
		w.books, w.places[b] = append(w.books, bookJSON(b)), place
	}
	return &place
}

func (w *jsonReport) token(t jsontext.Token) {
	if w.err == nil {
		w.err = w.encoder.WriteToken(t)
	}
}

func (w *jsonReport) member(name string, value any) {
	w.token(jsontext.String(name))
	w.value(value)
}

func (w *jsonReport) value(value any) {
	text, err := json.Marshal(value)
	if err == nil && w.err == nil {
		err = w.encoder.WriteValue(visible(text))
	}
	if w.err == nil {
		w.err = err
	}
}

// visible spells out the characters that JSON allows as they are and a
// terminal would obey or not show: DEL, C1 controls, separators, bidirectional
// marks. They stand in strings only, so the report says the same.
func visible(text []byte) []byte {
	var b bytes.Buffer
	for _, r := range string(text) {
		if r < unicode.MaxASCII || !unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) {
			b.WriteRune(r)
		} else if high, low := utf16.EncodeRune(r); high == unicode.ReplacementChar {
			fmt.Fprintf(&b, `\u%04x`, r)
		} else {
			fmt.Fprintf(&b, `\u%04x\u%04x`, high, low)
		}
	}
	return b.Bytes()
}

// designJSON gives one design's part of the report, book being the place of
// its rule book.
func designJSON(j *Judged, book *int, o Options) jsonDesign {
	d := jsonDesign{
		File: j.Name, RuleBook: book, Outcome: j.Status(), Findings: []jsonFinding{}, Excused: []jsonExcused{}, NotApplicable: []string{},
		Variances: []jsonVarianceRemark{}, Unjudged: []jsonBroken{}, Problems: []jsonProblem{},
		Cautions: orEmpty(j.cautions()),
	}
	for _, p := range j.Problems {
		d.Problems = append(d.Problems, jsonProblem{p.Line, p.Column, p.Pointer, p.Found, p.Expected, p.Remedy})
	}
	if j.Design != nil {
		d.Title, d.Region, d.Place, d.Revision, d.Units = j.Design.Title, j.Design.Location.Region, j.Design.Location.Place, j.Design.Prepared.Revision, o.units(j.Design)
	}
	if j.Verdict != nil {
		verdictJSON(&d, j, speaker{o.units(j.Design)})
	}
	if j.Since != nil {
		d.Since = sinceJSON(j.Since)
	}
	if o.Figures && j.Figures != nil {
		d.Figures = figuresJSON(j.Figures, speaker{o.units(j.Design)})
	}
	return d
}

func sinceJSON(c *compare.Comparison) *jsonSince {
	since := &jsonSince{Report: c.With, Known: c.Known, Appeared: []jsonNamed{}, Gone: []jsonNamed{}, Changed: []jsonChangedMargin{}, Same: c.Same}
	for _, f := range c.Appeared {
		since.Appeared = append(since.Appeared, jsonNamed{f.Rule.ID, f.Item.Subject.Name})
	}
	for _, t := range c.Gone {
		since.Gone = append(since.Gone, jsonNamed{t.Rule, t.Subject})
	}
	for _, ch := range slices.Concat(c.Worse, c.Better) {
		named := jsonNamed{ch.Finding.Rule.ID, ch.Finding.Item.Subject.Name}
		since.Changed = append(since.Changed, jsonChangedMargin{named, ch.Measured.Measure.Field.Name, nine(ch.Before), nine(ch.Measured.Margin)})
	}
	return since
}

func verdictJSON(d *jsonDesign, j *Judged, s speaker) {
	v := j.Verdict
	for i := range v.Findings {
		d.Findings = append(d.Findings, findingJSON(j, &v.Findings[i], s))
	}
	for _, e := range v.Excused {
		d.Excused = append(d.Excused, jsonExcused{e.Rule.ID, subjectJSON(e.Item), e.Reason})
	}
	for _, r := range v.NotApplicable {
		d.NotApplicable = append(d.NotApplicable, r.ID)
	}
	for _, r := range v.Variances {
		at := j.Design.Document.Position(r.Pointer)
		d.Variances = append(d.Variances, jsonVarianceRemark{r.Variance.Rule, r.Variance.Part, r.Pointer, at.Line, at.Column, r.Found, r.Remedy})
	}
	for _, b := range v.Broken {
		d.Unjudged = append(d.Unjudged, jsonBroken{b.Rule.ID, b.Rule.File, b.Err.Error()})
	}
}

func findingJSON(j *Judged, f *rulebook.Finding, s speaker) jsonFinding {
	finding := jsonFinding{
		Rule: f.Rule.ID, Assertion: f.Rule.Title, Status: f.Status, Shown: !f.NotShown(), Subject: subjectJSON(f.Item),
		Measured: []jsonMeasured{}, Lacks: []jsonLack{}, SetBy: f.Rule.SetBy, Replaces: f.Rule.Replaces,
	}
	if len(f.Item.Subject.Pointers) > 0 {
		at := j.Design.Document.Position(f.Item.Subject.Pointers[0])
		finding.Line, finding.Column = at.Line, at.Column
	}
	for i := range f.Measured {
		finding.Measured = append(finding.Measured, measuredJSON(&f.Measured[i], s))
	}
	for _, l := range f.Lacks {
		finding.Lacks = append(finding.Lacks, jsonLack{l.Pointer, l.Entry})
	}
	if v := f.Variance; v != nil {
		finding.Variance = &jsonVariance{v.Part, v.Reason, v.Authority, v.Reference, v.Expires}
	}
	if f.Status != rulebook.Pass { // of a pass, the rule book has them
		r := remark{f.Rule, []*rulebook.Finding{f}}
		finding.Why, finding.Sources = f.Rule.Reason, sourcesJSON(r.sources())
	}
	if f.Status != rulebook.Pass && !f.NotShown() {
		finding.Remedy = s.remedy(f)
	}
	return finding
}

func measuredJSON(m *rulebook.Measured, s speaker) jsonMeasured {
	measured := jsonMeasured{Figure: m.Measure.Field.Name, Value: valueJSON(m.Measure.Field, m.Value), Unit: unitJSON(m.Measure.Field), Text: s.measure(m)}
	if m.Limit != nil {
		measured.Limit = &jsonHeld{m.Limit.Name, m.Measure.Bound, nine(m.Limit.Value), m.Limit.Text, m.Limit.SetBy}
		margin := nine(m.Margin)
		measured.Margin = &margin
	}
	return measured
}

func bookJSON(b Book) jsonBook {
	book := jsonBook{Amendments: []jsonAmendment{}, Rules: []jsonRule{}, SetAside: []jsonAside{}, Limits: []jsonLimit{}}
	for _, a := range b.Amendments() {
		book.Amendments = append(book.Amendments, amendmentJSON(a))
	}
	for _, r := range b.Rules() {
		rule := jsonRule{ID: r.ID, Assertion: r.Title, Why: r.Reason, Sources: sourcesJSON(r.Sources), Level: r.Level, NotShown: r.NotShown, SetBy: r.SetBy, Replaces: r.Replaces}
		for _, c := range r.Changes {
			rule.Changes = append(rule.Changes, jsonChange{c.Level, c.NotShown, c.OldLevel, c.OldNotShown, c.Reason, jsonSource(c.Source), c.SetBy})
		}
		book.Rules = append(book.Rules, rule)
	}
	for _, a := range b.SetAside() {
		book.SetAside = append(book.SetAside, jsonAside{a.Rule, a.Reason, jsonSource(a.Source), a.SetBy})
	}
	for _, l := range b.Limits() {
		book.Limits = append(book.Limits, limitJSON(l))
	}
	return book
}

func amendmentJSON(a *rulebook.Amendment) jsonAmendment {
	amendment := jsonAmendment{a.Name, a.Region, a.Authority, a.Edition, a.Checked, a.About, orEmpty(a.Limits), []jsonGap{}}
	for _, g := range a.NotCovered {
		amendment.NotCovered = append(amendment.NotCovered, jsonGap{g.Topic, g.Why})
	}
	return amendment
}

func limitJSON(l *rulebook.Limit) jsonLimit {
	limit := jsonLimit{Name: l.Name, Value: nine(l.Value), Text: l.Text, Meaning: l.Meaning, Source: jsonSource(l.Source), Note: l.Note, SetBy: l.SetBy}
	if l.Replaced != nil {
		replaced := limitJSON(l.Replaced)
		limit.Replaced = &replaced
	}
	return limit
}
