package rulebook

import (
	"maps"
	"regexp"
	"slices"
	"strings"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/source"
)

// surroundings are what a rule's declaration may name.
type surroundings struct {
	limits   map[string]*Limit
	cautions map[string]string
}

// rule reads what a rule's METADATA block declares.
func (s *strict) rule(block *entry, around surroundings) *Rule {
	r := &Rule{}
	if !s.record(block, "title", "description", "custom") {
		return r
	}
	r.Title = s.text(block, "title")
	r.Reason = s.text(block, "description")
	custom := s.required(block, "custom")
	if custom == nil || !s.record(custom, "subjects", "level", "not_shown", "measures", "remedy", "caution", "sources") {
		return r
	}
	r.Subjects = s.subjects(custom)
	r.Level = s.level(custom, "level")
	r.NotShown = LevelWarn
	if custom.record["not_shown"] != nil {
		r.NotShown = s.level(custom, "not_shown")
	}
	for _, e := range s.list(custom, "measures") {
		r.Measures = append(r.Measures, s.measure(e, r.Subjects, around.limits))
	}
	r.Remedy = s.remedy(custom, r)
	r.Caution = s.caution(custom, around.cautions)
	r.Sources = s.sources(custom)
	return r
}

func (s *strict) subjects(custom *entry) *figures.List {
	name := s.text(custom, "subjects")
	if name == "" {
		return nil
	}
	for _, l := range figures.Catalogue {
		if l.Name == name {
			return l
		}
	}
	s.unknown(custom.record["subjects"], "list", name, listNames())
	return nil
}

func listNames() []string {
	var names []string
	for _, l := range figures.Catalogue {
		names = append(names, l.Name)
	}
	return names
}

func (s *strict) level(custom *entry, name string) Level {
	if e := s.required(custom, name); e != nil {
		return choice(s, e, "level", LevelWarn, LevelFail)
	}
	return ""
}

func (s *strict) caution(custom *entry, cautions map[string]string) string {
	key := s.optional(custom, "caution")
	if _, ok := cautions[key]; key != "" && !ok {
		s.unknown(custom.record["caution"], "caution", key, slices.Collect(maps.Keys(cautions)))
	}
	return key
}

func (s *strict) sources(custom *entry) []figures.Citation {
	e := s.required(custom, "sources")
	if e == nil {
		return nil
	}
	items := s.list(custom, "sources")
	if e.shape == list && len(items) == 0 {
		s.fail(e, "the rule names no source", "at least one, with title, place and standing", "")
	}
	var sources []figures.Citation
	for _, item := range items {
		sources = append(sources, s.citation(item))
	}
	return sources
}

// measure reads one measure; the list of subjects is nil when it is not known.
func (s *strict) measure(e *entry, subjects *figures.List, limits map[string]*Limit) Measure {
	var m Measure
	if !s.record(e, "field", "bound", "limit", "where") {
		return m
	}
	if name := s.text(e, "field"); name != "" && subjects != nil {
		m.Field = s.field(e.record["field"], subjects, name)
	}
	m.Limit = s.optional(e, "limit")
	if m.Limit != "" {
		s.measuredLimit(e, m.Field, m.Limit, limits)
		if bound := s.required(e, "bound"); bound != nil {
			m.Bound = choice(s, bound, "bound", AtLeast, AtMost)
		}
	} else if bound := e.record["bound"]; bound != nil {
		s.fail(bound, "the measure has a bound but no limit", "both or neither", "")
	}
	m.Where = s.where(e, subjects)
	return m
}

func (s *strict) field(e *entry, subjects *figures.List, name string) *figures.Field {
	field := fieldOf(subjects, name)
	if field == nil {
		s.unknown(e, "field of "+subjects.Name, name, fieldNames(subjects))
	}
	return field
}

func (s *strict) measuredLimit(e *entry, field *figures.Field, name string, limits map[string]*Limit) {
	limit := limits[name]
	switch {
	case limit == nil:
		s.unknown(e.record["limit"], "limit", name, slices.Collect(maps.Keys(limits)))
	case field == nil:
	case field.Kind != figures.Number:
		s.fail(e.record["limit"], source.Quote(field.Name)+" is no number and cannot be held against a limit", "a measure without limit and bound", "")
	case limit.Dimension != "" && !quantity.Comparable(field.Dimension, limit.Dimension):
		s.fail(e.record["limit"], source.Quote(field.Name)+" measures "+string(field.Dimension)+", but "+source.Quote(name)+" is of dimension "+string(limit.Dimension), "the same dimension", "")
	}
}

func (s *strict) where(e *entry, subjects *figures.List) map[string]string {
	conditions := e.record["where"]
	if conditions == nil {
		return nil
	}
	members, where := s.entries(conditions), map[string]string{}
	for _, name := range conditions.names {
		word := s.words(members[name])
		where[name] = word
		if subjects == nil || word == "" {
			continue
		}
		field := s.field(members[name], subjects, name)
		switch {
		case field == nil:
		case len(field.Words) == 0:
			s.fail(members[name], source.Quote(name)+" does not hold one of a few fixed words", "a field that does", "")
		case !slices.Contains(field.Words, word):
			expected, remedy := suggestion(word, field.Words)
			s.fail(members[name], name+" is never "+source.Quote(word), expected, remedy)
		}
	}
	return where
}

var (
	placeholder = regexp.MustCompile(`\{([a-z_]+)\}`)
	brace       = regexp.MustCompile(`[{}]`)
)

// remedy reads the remedy and refuses a placeholder that nothing can fill.
func (s *strict) remedy(custom *entry, r *Rule) string {
	remedy := s.text(custom, "remedy")
	if remedy == "" || r.Subjects == nil {
		return remedy
	}
	names := append(fieldNames(r.Subjects), "subject", "part")
	if slices.ContainsFunc(r.Measures, func(m Measure) bool { return m.Limit != "" }) {
		names = append(names, "limit", "short")
	}
	for _, found := range placeholder.FindAllStringSubmatch(remedy, -1) {
		if !slices.Contains(names, found[1]) {
			s.unknown(custom.record["remedy"], "placeholder", found[1], names)
		}
	}
	if brace.MatchString(placeholder.ReplaceAllString(remedy, "")) {
		s.fail(custom.record["remedy"], "a brace stands alone in the remedy", "placeholders like {"+strings.Join(names, "}, {")+"}", "")
	}
	return remedy
}

func fieldOf(l *figures.List, name string) *figures.Field {
	for _, f := range l.Fields {
		if f.Name == name {
			return f
		}
	}
	return nil
}

func fieldNames(l *figures.List) []string {
	var names []string
	for _, f := range l.Fields {
		names = append(names, f.Name)
	}
	return names
}
