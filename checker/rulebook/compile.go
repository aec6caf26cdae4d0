package rulebook

import (
	"cmp"
	"context"
	"fmt"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
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
// itself, so that what is wrong in one hides nothing in another.
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
		problems = append(problems, m.compileAlone()...)
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
	allowed := ruleCapabilities()
	for _, e := range strict.Errors {
		if name, ok := undefinedFunction(e); ok {
			allowed.Builtins = append(allowed.Builtins, m.standIn(name))
		}
	}
	lenient := newCompiler().WithStrict(false).WithCapabilities(allowed)
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

// prepare makes one query for each rule, so that a rule that errs takes no
// other with it. A query that asked for more than the two sets could err for
// what does not decide.
func prepare(ctx context.Context, c *ast.Compiler, store storage.Store, r *Rule) (rego.PreparedEvalQuery, error) {
	query := "proved = data." + packageOf(r.ID) + ".proved"
	if r.excuses {
		query += "; excused = data." + packageOf(r.ID) + ".excused"
	}
	body, err := ast.ParseBody(query)
	if err != nil {
		return rego.PreparedEvalQuery{}, fmt.Errorf("rule %s: %w", r.ID, err)
	}
	return rego.New(rego.ParsedQuery(body), rego.Compiler(c), rego.Store(store), rego.StrictBuiltinErrors(true)).PrepareForEval(ctx)
}

// storeOf holds the limits for rules to read.
func storeOf(limits []*Limit) storage.Store {
	all := map[string]any{}
	for _, l := range limits {
		all[l.Name] = map[string]any{"value": number(l.Value)}
	}
	data := map[string]any{"limits": all}
	return inmem.NewFromObjectWithOpts(data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
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
