package rulebook

import (
	"regexp"
	"time"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// Amendment is what a layer above the base says of itself in its amendment.json:
// whose rules it carries, and what it changes besides limits and rules of its own.
// schema/amendment.schema.json describes the file.
type Amendment struct {
	Name       string // said in reports of whatever it sets
	Region     string // ISO 3166-2, "" for a place smaller than that
	Authority  string // who enforces it
	Edition    string // of the texts that it was read from
	Checked    string // RFC 3339 full-date on which somebody held it against them
	About      string
	Levels     []*LevelChange
	SetAside   []*SetAside
	Replaced   []*Replacement
	NotCovered []*Gap
	Limits     []string // names of those that it sets, sorted
}

// LevelChange is a rule that amounts to something else in an amendment's place.
type LevelChange struct {
	Rule     string // id
	Level    Level  // "" leaves it
	NotShown Level  // "" leaves it
	Reason   string
	Source   figures.Citation
	SetBy    string // name of the amendment

	OldLevel, OldNotShown Level // what it was before

	at *entry
}

// SetAside is a rule that an amendment takes out of force.
type SetAside struct {
	Rule   string // id
	Reason string
	Source figures.Citation
	SetBy  string // name of the amendment

	at *entry
}

// Replacement announces a rule of an amendment that stands in place of one with
// the same id below it.
type Replacement struct {
	Rule   string // id
	Reason string

	at *entry
}

// Gap is something that an amendment does not say, so that the base, or nothing,
// holds there.
type Gap struct {
	Topic, Why string
}

// amendmentFormat is the value of the format entry of an amendment.json.
const amendmentFormat = "greysill-amendment/1"

var regionForm = regexp.MustCompile(`^[A-Z]{2}(-[A-Z0-9]{1,3})?$`)

// readAmendment reads what a layer says of itself.
func (s *strict) readAmendment(f *file) *Amendment {
	a := &Amendment{Name: f.layer.Name}
	root := s.document(f)
	if root == nil || !s.record(root, "$schema", "amendment") {
		return a
	}
	body := s.required(root, "amendment")
	if body == nil || !s.record(body, "format", "name", "region", "authority", "edition", "checked", "about", "levels", "set_aside", "replaced", "not_covered") {
		return a
	}
	if format := s.required(body, "format"); format != nil {
		choice(s, format, "format", amendmentFormat)
	}
	if name := s.text(body, "name"); name != "" {
		a.Name = name
	}
	a.Authority, a.Edition = s.text(body, "authority"), s.text(body, "edition")
	a.Region, a.Checked = s.region(body), s.date(body, "checked")
	a.About = s.optional(body, "about")
	for _, e := range s.list(body, "levels") {
		a.Levels = append(a.Levels, s.levelChange(e, a.Name))
	}
	for _, e := range s.list(body, "set_aside") {
		a.SetAside = append(a.SetAside, s.setAside(e, a.Name))
	}
	for _, e := range s.list(body, "replaced") {
		if s.record(e, "rule", "reason") {
			a.Replaced = append(a.Replaced, &Replacement{s.text(e, "rule"), s.text(e, "reason"), e})
		}
	}
	for _, e := range s.list(body, "not_covered") {
		if s.record(e, "topic", "why") {
			a.NotCovered = append(a.NotCovered, &Gap{s.text(e, "topic"), s.text(e, "why")})
		}
	}
	return a
}

func (s *strict) region(body *entry) string {
	region := s.optional(body, "region")
	if region != "" && !regionForm.MatchString(region) {
		s.fail(body.record["region"], source.Quote(region)+" is no region", "a code of ISO 3166-2 such as US-UT", "")
	}
	return region
}

func (s *strict) date(e *entry, name string) string {
	text := s.text(e, name)
	if _, err := time.Parse(time.DateOnly, text); text != "" && err != nil {
		s.fail(e.record[name], source.Quote(text)+" is no date", "a date such as 2026-05-31", "")
	}
	return text
}

func (s *strict) levelChange(e *entry, by string) *LevelChange {
	c := &LevelChange{SetBy: by, at: e}
	if !s.record(e, "rule", "level", "not_shown", "reason", "source") {
		return c
	}
	c.Rule, c.Reason = s.text(e, "rule"), s.text(e, "reason")
	if e.record["level"] == nil && e.record["not_shown"] == nil {
		s.fail(e, "neither level nor not_shown is changed", "at least one of them", "")
	}
	for name, to := range map[string]*Level{"level": &c.Level, "not_shown": &c.NotShown} {
		if e.record[name] != nil {
			*to = s.level(e, name)
		}
	}
	if citation := s.required(e, "source"); citation != nil {
		c.Source = s.citation(citation)
	}
	return c
}

func (s *strict) setAside(e *entry, by string) *SetAside {
	a := &SetAside{SetBy: by, at: e}
	if !s.record(e, "rule", "reason", "source") {
		return a
	}
	a.Rule, a.Reason = s.text(e, "rule"), s.text(e, "reason")
	if citation := s.required(e, "source"); citation != nil {
		a.Source = s.citation(citation)
	}
	return a
}
