package rulebook

import (
	"slices"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"
)

// ruleBuiltins are the built-in functions that a rule may call. It is a list of
// what is allowed, so that a new release of OPA adds nothing by itself. Nothing
// here reaches the network, the clock, the environment or chance, nothing here
// makes a value out of a missing one, as object.get does, and nothing gives a
// value of a size or takes a time that its operands do not bound, as concat and
// regular expressions do.
var ruleBuiltins = []string{
	"eq", "equal", "neq", "assign", "gt", "gte", "lt", "lte", "internal.member_2", "internal.member_3",
	"plus", "minus", "mul", "div", "rem", "abs", "ceil", "floor", "round", "max", "min", "sum",
	"contains", "endswith", "lower", "startswith", "substring", "trim", "trim_space", "upper",
	"internal.print", "internal.template_string",
}

// testBuiltins are those that the tests of rules may call besides.
var testBuiltins = []string{
	"and", "array.concat", "count", "internal.test_case", "json.patch", "json.remove",
	"object.get", "object.keys", "object.remove", "object.union", "or", "sort", "union",
}

// ruleCapabilities gives what the language offers to rules. It must not be changed.
var ruleCapabilities = sync.OnceValue(func() *ast.Capabilities { return capabilities(ruleBuiltins) })

// TestCapabilities gives what the language offers to the tests of rules.
func TestCapabilities() *ast.Capabilities { return capabilities(ruleBuiltins, testBuiltins) }

func capabilities(allowed ...[]string) *ast.Capabilities {
	names := slices.Concat(allowed...)
	c := ast.CapabilitiesForThisVersion()
	c.AllowNet = []string{} // nil would mean any host
	var builtins []*ast.Builtin
	for _, b := range c.Builtins {
		if slices.Contains(names, b.Name) {
			builtins = append(builtins, numeric(b))
		}
	}
	c.Builtins = builtins
	return c
}

// numeric declares the orderings to be between numbers. OPA orders values of
// different types too, so that "3" >= 100 holds of every text.
func numeric(b *ast.Builtin) *ast.Builtin {
	switch b.Name {
	case "gt", "gte", "lt", "lte":
		numbers := *b
		numbers.Decl = types.NewFunction(types.Args(types.N, types.N), types.B)
		return &numbers
	}
	return b
}
