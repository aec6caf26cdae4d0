package report

import (
	"encoding/xml"
	"fmt"
	"io"
	"strings"

	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// junit is the report in the XML form of JUnit's results, which no standard
// fixes; it keeps to what the schemas in use agree on, so that strict readers take
// it (common practice, no source): one suite for each design, one case for each
// rule and subject. A case is a failure where the exit status says so too. There is
// no way to write a warning: it passes, and its output says what is wrong. Times
// are 0 and there is no date, so that the same input gives the same bytes.
type junit struct {
	w       io.Writer
	encoder *xml.Encoder
	options Options
}

var suites = xml.StartElement{Name: xml.Name{Local: "testsuites"}}

func newJUnit(w io.Writer, o Options) (*junit, error) {
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return nil, err
	}
	u := &junit{w, xml.NewEncoder(w), o}
	u.encoder.Indent("", "  ")
	return u, u.encoder.EncodeToken(suites)
}

type junitSuite struct {
	XMLName  xml.Name    `xml:"testsuite"`
	Name     string      `xml:"name,attr"`
	Tests    int         `xml:"tests,attr"`
	Failures int         `xml:"failures,attr"`
	Errors   int         `xml:"errors,attr"`
	Skipped  int         `xml:"skipped,attr"`
	Time     int         `xml:"time,attr"`
	Cases    []junitCase `xml:"testcase"`
	Output   string      `xml:"system-out"`
}

type junitCase struct {
	Class   string       `xml:"classname,attr"`
	Name    string       `xml:"name,attr"`
	Time    int          `xml:"time,attr"`
	Skipped string       `xml:"skipped,omitempty"`
	Error   *junitReason `xml:"error"`
	Failure *junitReason `xml:"failure"`
	Output  string       `xml:"system-out,omitempty"`
}

type junitReason struct {
	Message string `xml:"message,attr,omitempty"`
	Type    string `xml:"type,attr,omitempty"`
	Text    string `xml:",chardata"`
}

// Design writes one design's suite.
func (u *junit) Design(j *Judged) error {
	said := append(j.cautions(), localCode)
	if j.Book != nil {
		said = append([]string{inForce(j.Book, j.Design)}, said...)
	}
	s := &junitSuite{Name: source.Clean(j.Name), Output: plainly(strings.Join(said, " "))}
	for _, p := range j.Problems {
		s.add(junitCase{Class: "design", Name: "The file can be read as a design, " + lineColumn(p.Position), Error: reason("unreadable", p.Position.String()+": "+sentence(p.Sentence()))})
	}
	if j.Verdict != nil {
		s.judged(&account{Judged: j, speaker: speaker{u.options.units(j.Design)}}, u.options.Strict)
	}
	return u.encoder.Encode(s)
}

// Close ends the file.
func (u *junit) Close([]string) error {
	if err := u.encoder.EncodeToken(suites.End()); err != nil {
		return err
	}
	if err := u.encoder.Flush(); err != nil {
		return err
	}
	_, err := io.WriteString(u.w, "\n")
	return err
}

func (s *junitSuite) judged(a *account, strict bool) {
	for _, b := range a.Verdict.Broken {
		s.add(junitCase{Class: b.Rule.ID, Name: b.Rule.Title, Error: reason("unjudged", "The rule could not be judged: "+b.Err.Error())})
	}
	for i := range a.Verdict.Findings {
		s.add(a.junit(&a.Verdict.Findings[i], strict))
	}
	for _, v := range a.Verdict.Variances {
		r := a.variance(v)
		c := junitCase{Class: variancesRule, Name: fmt.Sprintf("The variance from %s counts, %s", v.Variance.Rule, lineColumn(a.Design.Document.Position(v.Pointer)))}
		s.add(c.with(r.Message.Text, strict))
	}
	for _, e := range a.Verdict.Excused {
		s.add(junitCase{Class: e.Rule.ID, Name: e.Rule.Title + " " + capital(e.Item.Subject.Name), Skipped: plainly(e.Reason)})
	}
	for _, r := range a.withoutSubject() {
		s.add(junitCase{Class: r.RuleID, Name: "Nothing to judge", Skipped: r.Message.Text})
	}
}

// junit gives the case of a finding.
func (a *account) junit(f *rulebook.Finding, strict bool) junitCase {
	c := junitCase{Class: f.Rule.ID, Name: f.Rule.Title + " " + capital(f.Item.Subject.Name)}
	if f.Status == rulebook.Pass {
		return c
	}
	return c.with(a.place(f)+": "+a.message(f), f.Variance == nil && (strict || f.Status == rulebook.Fail))
}

// with says what is wrong, as a failure or beside a pass.
func (c junitCase) with(message string, fails bool) junitCase {
	if fails {
		c.Failure = reason("unproved", message)
	} else {
		c.Output = message
	}
	return c
}

// reason says why a case did not pass.
func reason(kind, message string) *junitReason {
	message = plainly(message)
	return &junitReason{Message: message, Type: kind, Text: message}
}

// add adds a case and counts it.
func (s *junitSuite) add(c junitCase) {
	c.Name = plainly(c.Name)
	s.Cases = append(s.Cases, c)
	s.Tests++
	switch {
	case c.Failure != nil:
		s.Failures++
	case c.Error != nil:
		s.Errors++
	case c.Skipped != "":
		s.Skipped++
	}
}
