package rulebook

import (
	"maps"
	"slices"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/figures"
)

// whatever reports whether the point passes whatever the field's value.
func (g *grid) whatever(point map[string]any, name string) bool {
	for _, v := range g.values[name] {
		if !g.proved[key(with(point, name, v))] {
			return false
		}
	}
	return true
}

// open gives each point once with the field taken out, by its key.
func (g *grid) open(name string) map[string]map[string]any {
	open := map[string]map[string]any{}
	for _, p := range g.points {
		p = without(p, name)
		open[key(p)] = p
	}
	return open
}

// margins requires the measures to agree with what the rule proves: a subject
// that passes lies on the right side of every limit that counts for it.
func (g *grid) margins() {
	j := &judgement{book: g.book, rule: g.rule}
	for _, p := range g.points {
		if !g.proved[key(p)] {
			continue
		}
		for _, m := range j.measured(pointItem(g.rule.Subjects, p)) {
			if m.Limit != nil && m.Margin < 0 {
				g.fault("a subject passes though its %s lies on the wrong side of the limit %s: the measure and the Rego do not agree", m.Measure.Field.Name, m.Limit.Name)
			}
		}
	}
}

// unknownFigures makes each figure unknown and judges as a design is judged.
func (g *grid) unknownFigures() {
	own := *g.book
	own.rules, own.queries = []*Rule{g.rule}, g.book.queries[g.index:g.index+1]
	for _, name := range g.rule.reads {
		open := g.open(name)
		v := own.Judge(g.ctx, g.figures(open), time.Time{})
		for _, b := range v.Broken {
			g.fault("the rule could not be judged without %s: %v", name, b.Err)
		}
		for _, f := range v.Findings {
			if g.changes++; f.Status == Pass && !g.whatever(open[f.Item.Subject.Name], name) {
				g.fault("a subject passes whose %s is unknown, though it does not pass whatever that is", name)
			}
		}
	}
}

// figures gives figures whose only items are the points.
func (g *grid) figures(points map[string]map[string]any) *figures.Figures {
	items := make([]*figures.Item, 0, len(points))
	for _, k := range slices.Sorted(maps.Keys(points)) {
		items = append(items, pointItem(g.rule.Subjects, points[k]))
	}
	return figuresWith(g.rule.Subjects, items)
}

// renamedFields gives each field another name in the rule input.
func (g *grid) renamedFields() {
	for _, name := range g.rule.reads {
		renamed := *g.rule.Subjects
		renamed.Fields = nil
		for _, f := range g.rule.Subjects.Fields {
			other := *f
			if f.Name == name {
				other.Name += "_renamed"
			}
			renamed.Fields = append(renamed.Fields, &other)
		}
		points := make([]map[string]any, len(g.points))
		for i, p := range g.points {
			points[i] = with(without(p, name), name+"_renamed", p[name])
		}
		proved := g.ask(points, &renamed)
		for _, p := range points {
			if g.changes++; proved[key(p)] && !g.whatever(without(p, name+"_renamed"), name) {
				g.fault("a subject passes though %s has another name in the rule input", name)
			}
		}
	}
}

// withoutFields takes all fields away: nothing may pass then, and each field
// that the rule measures has to matter to somebody.
func (g *grid) withoutFields() {
	g.changes++
	if len(g.ask([]map[string]any{{}}, g.rule.Subjects)) > 0 {
		g.fault("a subject of which nothing is known passes")
	}
	for _, m := range g.rule.Measures {
		if m.Limit == "" {
			continue
		}
		name := m.Field.Name
		if !slices.ContainsFunc(g.points, func(p map[string]any) bool { return g.proved[key(p)] && !g.whatever(p, name) }) {
			g.fault("%s makes no difference to any subject, though it is measured against the limit %s", name, m.Limit)
		}
	}
}

// droppedLimits takes each limit away.
func (g *grid) droppedLimits() {
	input := pointsInput(g.points, g.rule.Subjects)
	for _, name := range g.rule.limits {
		proved := g.askQuery(g.withLimit(name, nil), input)
		if len(proved) >= len(g.proved) {
			g.fault("the limit %s makes no difference", name)
		}
		whatever := maps.Clone(g.proved)
		for _, value := range []float64{-1e9, 0, 1e9} {
			held := g.askQuery(g.withLimit(name, &value), input)
			maps.DeleteFunc(whatever, func(key string, _ bool) bool { return !held[key] })
		}
		for _, p := range g.points {
			if g.changes++; proved[key(p)] && !whatever[key(p)] {
				g.fault("a subject passes without the limit %s", name)
			}
		}
	}
}

// withLimit is the rule's query with one limit changed, or left out when value
// is nil.
func (g *grid) withLimit(name string, value *float64) *query {
	var limits []*Limit
	for _, l := range g.book.limits {
		switch {
		case l.Name != name:
			limits = append(limits, l)
		case value != nil:
			changed := *l
			changed.Value = *value
			limits = append(limits, &changed)
		}
	}
	q := newQuery(g.book.queries[g.index].compiler, storeOf(limits), g.rule)
	return &q
}

// withoutList empties the list, renames it and leaves it out.
func (g *grid) withoutList() {
	g.changes += 3
	name, q := g.rule.Subjects.Name, &g.book.queries[g.index]
	empty, _ := texts{}.list(nil)
	renamed := *g.rule.Subjects
	renamed.Name += "_renamed"
	for what, input := range map[string]ast.Value{
		"is empty": inputWith(name, empty), "is left out": ast.NewObject(), "has another name": pointsInput(g.points, &renamed),
	} {
		if len(g.askQuery(q, input)) > 0 {
			g.fault("something passes though the list %s %s", name, what)
		}
	}
}
