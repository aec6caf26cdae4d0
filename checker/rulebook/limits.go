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
// ones of the same name.
func (s *strict) readLimits(f *file, limits map[string]*Limit) {
	root := s.document(f)
	if root == nil || !s.record(root, "$schema", "format", "limits") {
		return
	}
	if format := s.required(root, "format"); format != nil {
		choice(s, format, "format", limitsFormat)
	}
	all := s.required(root, "limits")
	if all == nil {
		return
	}
	members := s.entries(all)
	for _, name := range all.names {
		limit := s.limit(members[name], name)
		limit.SetBy = f.layer.Name
		if before := limits[name]; before != nil {
			limit.Replaced = before
			if limit.Dimension != "" && limit.Dimension != before.Dimension {
				s.fail(members[name], "the limit is of dimension "+string(limit.Dimension), string(before.Dimension)+", as the limit that it replaces", "")
			}
		}
		limits[name] = limit
	}
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

func (s *strict) limit(e *entry, name string) *Limit {
	limit := &Limit{Name: name}
	if !nameForm.MatchString(name) {
		s.problems = append(s.problems, e.problem(e.nameAt, source.Quote(name)+" cannot name a limit", "small letters, digits and underscores, a letter first", ""))
	}
	if !s.record(e, "value", "dimension", "meaning", "source", "note") {
		return limit
	}
	limit.Meaning = s.text(e, "meaning")
	limit.Note = s.optional(e, "note")
	if dimension := s.required(e, "dimension"); dimension != nil {
		limit.Dimension = choice(s, dimension, "dimension", dimensions...)
	}
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

// readCautions adds the cautions of a layer to those that are there.
func (s *strict) readCautions(f *file, cautions map[string]string) {
	root := s.document(f)
	if root == nil || !s.record(root, "cautions") {
		return
	}
	if all := s.required(root, "cautions"); all != nil {
		s.entries(all)
		for _, name := range all.names {
			cautions[name] = s.text(all, name)
		}
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

var dimensions = []quantity.Dimension{
	quantity.Length, quantity.Level, quantity.Area, quantity.Volume, quantity.Flow, quantity.Velocity, quantity.RainRate,
	quantity.Loading, quantity.Load, quantity.Percolation, quantity.Slope, quantity.Share, quantity.Duration, quantity.Temperature,
	quantity.DegreeDays, quantity.Angle, quantity.Mass, quantity.Density, quantity.Radiation, quantity.Conductivity, quantity.Number,
}
