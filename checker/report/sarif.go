package report

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"io"
	"net/url"
	"path"
	"path/filepath"
	"strings"

	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// sarif is the report in SARIF 2.1.0, the OASIS standard, with one run for each
// rule book that designs were held against. What the readers of such files are
// known to do with them (common practice, no source) decides the rest:
//
//   - Code hosts show every result as an alert, passes and suppressed ones among
//     them. A report of alerts therefore holds only what is wrong now.
//   - Messages are shown as plain text, so that they say all there is to say.
//   - Columns are counted in code points; bytes are not allowed.
//   - A result is known again by its partial fingerprint, which must not change
//     when lines move: rule and subject.
type sarif struct {
	w       io.Writer
	options Options
	alerts  bool
	runs    []*sarifRun
	places  map[Book]*sarifRun
}

func newSARIF(w io.Writer, o Options, alerts bool) *sarif {
	return &sarif{w: w, options: o, alerts: alerts, places: map[Book]*sarifRun{}}
}

const (
	sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	// variancesRule stands for the check of variances, which is no rule of a book.
	variancesRule = "variances"
	fingerprint   = "ruleAndSubject/v1"
)

// Design adds what was found for one design.
func (s *sarif) Design(j *Judged) error {
	run := s.run(j.Book)
	for _, p := range j.Problems {
		run.notify(sentence(p.Sentence()), at(p.Position))
	}
	if j.Verdict == nil {
		return nil
	}
	for _, b := range j.Verdict.Broken {
		run.notify("The rule "+b.Rule.ID+" could not be judged: "+b.Err.Error(), at(source.Position{File: j.Name}))
	}
	a := &account{Judged: j, speaker: speaker{s.options.units(j.Design)}, alerts: s.alerts}
	for _, r := range a.results() {
		r.RuleIndex = run.rule(r.RuleID)
		run.Results = append(run.Results, r)
	}
	return nil
}

// Close writes the log.
func (s *sarif) Close([]string) error {
	if len(s.runs) == 0 {
		s.run(nil)
	}
	text, err := json.MarshalIndent(sarifLog{sarifSchema, "2.1.0", s.runs}, "", "  ")
	if err != nil {
		return err
	}
	_, err = s.w.Write(append(visible(text), '\n'))
	return err
}

// run gives the run of a rule book.
func (s *sarif) run(b Book) *sarifRun {
	if run := s.places[b]; run != nil {
		return run
	}
	run := &sarifRun{
		Tool: sarifTool{sarifDriver{Name: "greysill", Version: s.options.Version, Rules: []sarifRule{}}}, Invocations: []sarifInvocation{{ExecutionSuccessful: true}},
		ColumnKind: "unicodeCodePoints", Results: []sarifResult{}, index: map[string]int{},
	}
	if b != nil {
		for _, r := range b.Rules() {
			run.add(ruleSARIF(b, r))
		}
		run.Properties = &sarifBelonging{InForce: inForce(b, nil)}
	}
	s.places[b] = run
	s.runs = append(s.runs, run)
	return run
}

func (run *sarifRun) add(r sarifRule) {
	run.index[r.ID] = len(run.Tool.Driver.Rules)
	run.Tool.Driver.Rules = append(run.Tool.Driver.Rules, r)
}

// rule gives the place of a rule among the run's rules; the check of variances
// is added where it has something to say.
func (run *sarifRun) rule(id string) int {
	if _, known := run.index[id]; !known {
		run.add(sarifRule{
			ID: id, ShortDescription: sarifText{Text: "Every variance of the design is in force and covers a finding."},
			FullDescription:      sarifText{Text: "A variance that has expired, or that names nothing, gives no leave."},
			Help:                 sarifText{Text: localCode},
			DefaultConfiguration: sarifLevel{sarifLevels[rulebook.Warn]},
		})
	}
	return run.index[id]
}

// notify says what kept a design or a rule from being judged.
func (run *sarifRun) notify(message string, where sarifLocation) {
	told := &run.Invocations[0]
	told.ExecutionSuccessful = false
	told.Notifications = append(told.Notifications, sarifNotification{"error", sarifText{Text: message}, []sarifLocation{where}})
}

var sarifLevels = map[rulebook.Status]string{rulebook.Fail: "error", rulebook.Warn: "warning"}

// ruleSARIF describes a rule, with all that somebody needs who sees a result and
// has not got the rule book at hand.
func ruleSARIF(b Book, r *rulebook.Rule) sarifRule {
	m := &markdown{}
	m.paragraph(escaped(r.Reason))
	m.paragraph("**What to do:** " + escaped(unfilled(r.Remedy)))
	m.limits(b, r)
	text := []string{r.Reason, "What to do: " + unfilled(r.Remedy)}
	for _, c := range r.Sources {
		m.item("Source: " + escaped(citation(c)))
		text = append(text, "Source: "+citation(c)+".")
	}
	m.end()
	if caution, ok := b.Caution(r.Caution); ok {
		m.paragraph("**Take care:** " + escaped(caution))
		text = append(text, "Take care: "+caution)
	}
	m.WriteString(localCode)
	help := sarifText{strings.Join(append(text, localCode), "\n\n"), m.String()}
	return sarifRule{
		ID: r.ID, ShortDescription: sarifText{Text: r.Title}, FullDescription: sarifText{Text: r.Reason}, Help: help,
		DefaultConfiguration: sarifLevel{sarifLevels[rulebook.Status(r.Level)]},
		Properties:           &sarifRuleBelonging{Tags: []string{topicOf(r)}, SetBy: r.SetBy},
	}
}

// at gives a place in a file.
func at(p source.Position) sarifLocation {
	l := sarifLocation{Physical: sarifPhysical{Artifact: sarifArtifact{artifactURI(p.File)}}}
	if p.Line > 0 {
		l.Physical.Region = &sarifRegion{p.Line, p.Column}
	}
	return l
}

// artifactURI gives a file's name as a URI reference (RFC 3986): relative to
// where the program ran, unless the name is absolute.
func artifactURI(name string) string {
	name = filepath.ToSlash(filepath.Clean(name))
	u := url.URL{Path: name}
	if path.IsAbs(name) {
		u.Scheme = "file"
	}
	return u.String()
}

// mark makes the partial fingerprint by which a result is known again.
func mark(rule, subject string) map[string]string {
	sum := sha256.Sum256([]byte(rule + "\x00" + subject))
	return map[string]string{fingerprint: hex.EncodeToString(sum[:16])}
}
