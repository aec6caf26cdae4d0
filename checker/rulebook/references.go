package rulebook

import (
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// references finds what the rule's module reads, and refuses what is not there.
// OPA takes a reference to nothing as undefined and says nothing of it.
func (m *module) references(limits map[string]*Limit) source.Problems {
	var problems source.Problems
	m.eachRef(func(r ast.Ref) {
		var problem source.Problem
		ok := true
		switch {
		case r.HasPrefix(ast.InputRootRef):
			problem, ok = m.input(r)
		case r.HasPrefix(ast.DefaultRootRef):
			problem, ok = m.data(r, limits)
		}
		if !ok {
			problems = append(problems, problem)
		}
		if !r.HasPrefix(ast.DefaultRootRef) {
			m.fields(r)
		}
	})
	for _, names := range []*[]string{&m.rule.reads, &m.rule.limits, &m.rule.lists} {
		*names = slices.Compact(slices.Sorted(slices.Values(*names)))
	}
	return problems
}

// eachRef calls the function for each reference in a rule's body and in what a
// head says.
func (m *module) eachRef(visit func(ast.Ref)) {
	for _, r := range m.parsed.Rules {
		for _, part := range parts(r) {
			ast.WalkRefs(part, func(ref ast.Ref) bool {
				visit(ref)
				return false
			})
		}
	}
}

// parts gives the parts of a rule that can refer to something.
func parts(r *ast.Rule) []any {
	var all []any
	for ; r != nil; r = r.Else {
		all = append(all, r.Head.Args, r.Body)
		if r.Head.Key != nil {
			all = append(all, r.Head.Key)
		}
		if r.Head.Value != nil {
			all = append(all, r.Head.Value)
		}
	}
	return all
}

// input requires the reference to name a list of the rule input.
func (m *module) input(r ast.Ref) (source.Problem, bool) {
	names := words(r[1:])
	for _, l := range figures.Catalogue {
		path := strings.Split(l.Name, ".")
		if len(names) >= len(path) && slices.Equal(names[:len(path)], path) {
			m.rule.lists = append(m.rule.lists, l.Name)
			return source.Problem{}, true
		}
	}
	written := strings.Join(names[:min(2, len(names))], ".")
	at := r[min(len(names), 2)].Location
	if len(names) == 2 && !slices.ContainsFunc(figures.Catalogue, func(l *figures.List) bool { return strings.HasPrefix(l.Name, names[0]+".") }) {
		at = r[1].Location
	}
	expected, remedy := suggestion(written, listNames())
	return m.problemAt(at, "there is no list "+source.Quote(written)+" in the rule input", expected, remedy), false
}

// data requires the reference to read the value of a limit.
func (m *module) data(r ast.Ref, limits map[string]*Limit) (source.Problem, bool) {
	const expected = "data.limits.NAME.value; a rule reads its input, the limits, and what its own file defines"
	names := words(r[1:])
	if len(names) == 0 || names[0] != "limits" {
		return m.problemAt(r[0].Location, r.String()+" is nothing that a rule may read", expected, ""), false
	}
	if len(names) < 2 {
		return m.problemAt(r[0].Location, "the limit is not named: "+r.String(), expected, "write the limit's name out"), false
	}
	if limits[names[1]] == nil {
		_, remedy := suggestion(names[1], slices.Collect(maps.Keys(limits)))
		return m.problemAt(r[2].Location, "there is no limit "+source.Quote(names[1])+" in limits.json", "", remedy), false
	}
	if len(r) != 4 || len(names) != 3 || names[2] != "value" {
		return m.problemAt(r[2].Location, r.String()+" is not the value of the limit", "data.limits."+names[1]+".value", ""), false
	}
	m.rule.limits = append(m.rule.limits, names[1])
	return source.Problem{}, true
}

// fields notes the fields of the rule's subjects that the reference names.
func (m *module) fields(r ast.Ref) {
	if m.rule.Subjects == nil {
		return
	}
	for _, term := range r[1:] {
		if name, ok := term.Value.(ast.String); ok && fieldOf(m.rule.Subjects, string(name)) != nil {
			m.rule.reads = append(m.rule.reads, string(name))
		}
	}
}

// words gives the leading names of a reference, up to the first that is not
// written out.
func words(r ast.Ref) []string {
	var names []string
	for _, term := range r {
		name, ok := term.Value.(ast.String)
		if !ok {
			break
		}
		names = append(names, string(name))
	}
	return names
}

// declared compares what the rule reads with what it declares to measure: a
// limit that decides has to be shown, and one that is shown has to decide. A
// measure without a limit is only shown.
func (m *module) declared() source.Problems {
	var problems source.Problems
	at := m.parsed.Package.Location
	shown := map[string]bool{}
	for _, measure := range m.rule.Measures {
		if measure.Limit == "" {
			continue
		}
		shown[measure.Limit] = true
		if measure.Field != nil && !slices.Contains(m.rule.reads, measure.Field.Name) {
			problems = append(problems, m.problemAt(at, "a measure names the field "+source.Quote(measure.Field.Name)+", which the rule does not read", "", ""))
		}
		if !slices.Contains(m.rule.limits, measure.Limit) {
			problems = append(problems, m.problemAt(at, "a measure names the limit "+source.Quote(measure.Limit)+", which the rule does not compare with", "data.limits."+measure.Limit+".value in the rule", ""))
		}
	}
	for _, name := range m.rule.limits {
		if !shown[name] {
			problems = append(problems, m.problemAt(at, "the rule compares with the limit "+source.Quote(name)+", which no measure names", "a measure with limit: "+name, ""))
		}
	}
	return problems
}

// Dangling finds the references of a module, such as a rule's tests, to rules
// and packages that are not there. The compiler must have compiled all that
// should be. OPA takes such a reference as undefined, so that a test of
// "not p.misspelt" passes for ever.
func Dangling(c *ast.Compiler, m *ast.Module) []ast.Ref {
	var dangling []ast.Ref
	ast.WalkRefs(m, func(r ast.Ref) bool {
		if !r.HasPrefix(ast.DefaultRootRef) || len(r) < 2 || r[1].Value.Compare(ast.String("limits")) == 0 {
			return false
		}
		ground := r.GroundPrefix()
		if len(c.GetRulesForVirtualDocument(ground)) == 0 && len(c.GetRulesWithPrefix(ground)) == 0 {
			dangling = append(dangling, r)
		}
		return false
	})
	return dangling
}
