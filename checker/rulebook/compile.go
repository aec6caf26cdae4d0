package rulebook

import (
	"cmp"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"

	"greysill/checker/source"
)

// newCompiler gives a strict compiler that holds every module to the rule
// input's schema. The schema stands at the root, so that it needs no annotation:
// OPA drops the annotations of modules that it parses itself.
func newCompiler() *ast.Compiler {
	schemas := ast.NewSchemaSet()
	schemas.Put(ast.SchemaRootRef, inputSchema())
	c := ast.NewCompiler().WithCapabilities(ruleCapabilities()).WithStrict(true).WithSchemas(schemas).WithUseTypeCheckAnnotations(true)
	return c.SetErrorLimit(0)
}

// compile compiles the rules in one go. When that fails each is compiled by
// itself, so that what is wrong in one hides nothing in another, up to as many
// problems as anybody mends at once.
func compile(modules []*module) (*ast.Compiler, source.Problems) {
	parsed := map[string]*ast.Module{}
	for _, m := range modules {
		parsed[m.name()] = m.parsed
	}
	c := newCompiler()
	if c.Compile(parsed); !c.Failed() {
		return c, nil
	}
	var problems source.Problems
	for _, m := range modules {
		if problems = append(problems, m.compileAlone()...); len(problems) >= source.MaxProblems {
			break
		}
	}
	return c, problems
}

// compileAlone compiles one rule twice, the second time without what stops the
// compiler before it looks at types: strictness and functions that there are not.
func (m *module) compileAlone() source.Problems {
	strict := newCompiler()
	if strict.Compile(map[string]*ast.Module{m.name(): m.parsed}); !strict.Failed() {
		return nil
	}
	allowed := *ruleCapabilities()
	allowed.Builtins = slices.Clone(allowed.Builtins)
	for _, e := range strict.Errors {
		if name, ok := undefinedFunction(e); ok {
			allowed.Builtins = append(allowed.Builtins, m.standIn(name))
		}
	}
	lenient := newCompiler().WithStrict(false).WithCapabilities(&allowed)
	lenient.Compile(map[string]*ast.Module{m.name(): m.parsed})
	return append(m.refusals(strict.Errors), m.refusals(lenient.Errors)...)
}

// standIn declares a function that there is not, as the rule calls it.
func (m *module) standIn(name string) *ast.Builtin {
	operands := 0
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Expr:
			if x.IsCall() && x.Operator().String() == name {
				operands = len(x.Operands())
			}
		case ast.Call:
			if x[0].String() == name {
				operands = len(x) - 1
			}
		}
		return false
	}).Walk(m.parsed)
	takes := make([]types.Type, operands)
	for i := range takes {
		takes[i] = types.A
	}
	return &ast.Builtin{Name: name, Decl: types.NewFunction(takes, types.A)}
}

// tidy sorts problems by place and leaves out what is said twice.
func tidy(problems source.Problems) source.Problems {
	slices.SortStableFunc(problems, func(a, b source.Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	return slices.CompactFunc(problems, func(a, b source.Problem) bool {
		return a.Position == b.Position && a.Found == b.Found
	})
}

// besides gives those of the problems that stand where nothing else was found.
func besides(problems, known source.Problems) source.Problems {
	return slices.DeleteFunc(problems, func(p source.Problem) bool {
		return slices.ContainsFunc(known, func(k source.Problem) bool { return k.Position == p.Position })
	})
}
