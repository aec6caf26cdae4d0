package rulebook

import (
	"regexp"
	"slices"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/source"
)

// limitsFormat is the value of the format entry of a limits.json.
const limitsFormat = "greysill-limits/1"

var nameForm = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// readLimits adds the limits of a layer to those that are there, replacing the
// ones of the same name, and gives their names. What is new is told.
func (s *strict) readLimits(f *file, limits map[string]*Limit, added func(name string, e *entry)) []string {
	root := s.document(f)
	if root == nil || !s.record(root, "$schema", "format", "limits") {
		return nil
	}
	if format := s.required(root, "format"); format != nil {
		choice(s, format, "format", limitsFormat)
	}
	all := s.required(root, "limits")
	if all == nil {
		return nil
	}
	members := s.entries(all)
	for _, name := range all.names {
		limit := s.limit(members[name], name, limits[name])
		limit.SetBy = f.setBy()
		if limits[name] == nil {
			added(name, members[name])
		}
		limits[name] = limit
	}
	return all.names
}

// document reads a JSON file, nil when it cannot be read.
func (s *strict) document(f *file) *entry {
	doc, problems := source.Parse(f.name(), f.text)
	if len(problems) > 0 {
		s.problems = append(s.problems, problems...)
		return nil
	}
	return jsonEntry(doc, "", doc.Value())
}

// limit reads one limit. One that replaces another measures the same, and may
// leave out what it means.
func (s *strict) limit(e *entry, name string, before *Limit) *Limit {
	limit := &Limit{Name: name, Replaced: before}
	if !nameForm.MatchString(name) {
		s.problems = append(s.problems, e.problem(e.nameAt, source.Quote(name)+" cannot name a limit", "small letters, digits and underscores, a letter first", ""))
	}
	if !s.record(e, "value", "dimension", "meaning", "source", "note") {
		return limit
	}
	if before == nil || e.record["meaning"] != nil {
		limit.Meaning = s.text(e, "meaning")
	} else {
		limit.Meaning = before.Meaning
	}
	limit.Note = s.optional(e, "note")
	limit.Dimension = s.dimension(e, before)
	if citation := s.required(e, "source"); citation != nil {
		limit.Source = s.citation(citation)
	}
	limit.Text = s.text(e, "value")
	if limit.Text != "" && limit.Dimension != "" {
		q, err := quantity.Parse(limit.Text, limit.Dimension)
		if err != nil {
			s.fail(e.record["value"], err.Error(), "", "")
		}
		limit.Value = rounded(q.Value)
	}
	return limit
}

func (s *strict) dimension(e *entry, before *Limit) quantity.Dimension {
	if before != nil && e.record["dimension"] == nil {
		return before.Dimension
	}
	written := s.required(e, "dimension")
	if written == nil {
		return ""
	}
	dimension := choice(s, written, "dimension", quantity.Dimensions...)
	if before != nil && dimension != "" && dimension != before.Dimension {
		s.fail(written, "the limit is of dimension "+string(dimension), string(before.Dimension)+", as the limit that it replaces", "")
	}
	return dimension
}

// citation reads where something comes from.
func (s *strict) citation(e *entry) figures.Citation {
	var c figures.Citation
	if !s.record(e, "title", "place", "standing") {
		return c
	}
	c.Title = s.text(e, "title")
	c.Place = s.optional(e, "place")
	if standing := s.required(e, "standing"); standing != nil {
		c.Standing = choice(s, standing, "standing", figures.Published, figures.Practice, figures.FromMemory)
	}
	return c
}

// readCautions adds the cautions of a layer to those that are there. None is ever
// replaced: an amendment may warn of more, not of less.
func (s *strict) readCautions(f *file, cautions map[string]string) {
	root := s.document(f)
	if root == nil || !s.record(root, "cautions") {
		return
	}
	all := s.required(root, "cautions")
	if all == nil {
		return
	}
	members := s.entries(all)
	for _, name := range all.names {
		if cautions[name] != "" {
			s.fail(members[name], "the caution "+source.Quote(name)+" is there already; its words stay", "a caution under a name of its own", "")
		}
		cautions[name] = s.text(all, name)
	}
}

// UnusedLimits gives the limits that no rule compares with, sorted by name.
func (b *Book) UnusedLimits() []*Limit {
	var unused []*Limit
	for _, limit := range b.limits {
		if !slices.ContainsFunc(b.rules, func(r *Rule) bool { return slices.Contains(r.limits, limit.Name) }) {
			unused = append(unused, limit)
		}
	}
	return unused
}
