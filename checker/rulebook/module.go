package rulebook

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/source"
)

// module is one rule's file as parsed, with what it declares.
type module struct {
	*file
	id      string
	parsed  *ast.Module
	rule    *Rule
	excuses bool // whether it defines excused
}

// position gives OPA's place in the file as ours.
func (f *file) position(at *ast.Location) source.Position {
	if at == nil {
		return source.Position{File: f.name()}
	}
	return source.Position{File: f.name(), Line: at.Row, Column: at.Col}
}

func (f *file) problemAt(at *ast.Location, found, expected, remedy string) source.Problem {
	p := f.position(at)
	return source.Problem{Position: p, Found: found, Expected: expected, Remedy: remedy, Caret: f.caret(p)}
}

// parse reads the file as a rule and refuses what is wrong with its place, its
// package and its imports. It gives no rule where compiling it might not end.
func parse(f *file) (*module, source.Problems) {
	id, ok := f.id()
	if !ok {
		return nil, source.Problems{f.whole("a rule cannot lie here", "TOPIC/RULE.rego, both in small letters, digits and underscores", "")}
	}
	parsed, err := ast.ParseModuleWithOpts(f.name(), string(f.text), ast.ParserOptions{Capabilities: ruleCapabilities(), ProcessAnnotation: true})
	if err != nil {
		return nil, f.refusals(err)
	}
	m := &module{file: f, id: id, parsed: parsed}
	if problems := m.restraints(); len(problems) > 0 {
		return nil, problems
	}
	var problems source.Problems
	if got, want := parsed.Package.Path.String()[len("data."):], packageOf(id); got != want {
		problems = append(problems, f.problemAt(parsed.Package.Location, "the package is "+got, want+", after the file's place", ""))
	}
	problems = append(problems, m.imports()...)
	return m, append(problems, m.definitions()...)
}

// packageOf gives the package of the rule with the id.
func packageOf(id string) string { return "greysill." + strings.ReplaceAll(id, "/", ".") }

// imports requires rego.v2, whose not holds for missing values too, and refuses
// any other: a name for a document would hide what a rule reads.
func (m *module) imports() source.Problems {
	var (
		problems source.Problems
		v2       bool
	)
	for _, i := range m.parsed.Imports {
		if path := i.Path.String(); path == "rego.v2" {
			v2 = true
		} else {
			problems = append(problems, m.problemAt(i.Location, "a rule may not import "+path, "import rego.v2 alone; input and data.limits are there without", ""))
		}
	}
	if !v2 {
		problems = append(problems, m.problemAt(m.parsed.Package.Location, "the rule does not import rego.v2", "import rego.v2 below the package", ""))
	}
	return problems
}

// definitions requires proved to be a set, and excused where there is one.
func (m *module) definitions() source.Problems {
	var problems source.Problems
	defined := map[string]bool{}
	for _, r := range m.parsed.Rules {
		name := r.Head.Ref().String()
		defined[name] = true
		if (name == "proved" || name == "excused") && r.Head.RuleKind() != ast.MultiValue {
			problems = append(problems, m.problemAt(r.Location, source.Quote(name)+" is not a set", name+" contains … if { … }", ""))
		}
	}
	m.excuses = defined["excused"]
	if !defined["proved"] {
		problems = append(problems, m.problemAt(m.parsed.Package.Location, "the rule never defines proved", "proved contains SUBJECT if { … }", ""))
	}
	return problems
}

// declare reads what the file declares of its rule.
func (m *module) declare(around surroundings) source.Problems {
	block, problems := metadataEntry(m.file, m.parsed)
	m.rule = &Rule{}
	if block != nil {
		s := &strict{problems: problems}
		m.rule = s.rule(block, around)
		problems = s.problems
	}
	m.rule.ID, m.rule.File, m.rule.SetBy, m.rule.excuses = m.id, m.name(), m.setBy(), m.excuses
	m.rule.words = literals(m.parsed)
	for _, a := range m.parsed.Annotations {
		if a.Location.Row > m.parsed.Package.Location.Row {
			problems = append(problems, m.problemAt(a.Location, "a second METADATA block", "one, above the package", ""))
		}
	}
	return problems
}
