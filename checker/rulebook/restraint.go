package rulebook

import (
	"fmt"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/source"
)

// A rule may come from anywhere, and the time that it is given can only be called
// in between two steps of its evaluation. So nothing may be in it whose single
// step could take long or much memory: neither values that double from line to
// line, nor calls inside calls, nor a file that takes long to compile. What is
// refused here is not even compiled.

// The bounds of one rule.
const (
	maxSize   = 2000 // nodes of its syntax; the largest of the base rules has some 400
	maxQuotes = 10   // figures in one reason
)

// restraints refuses what could take long or much memory in one step.
func (m *module) restraints() source.Problems {
	if size := sizeOf(m.parsed); size > maxSize {
		return source.Problems{m.problemAt(m.parsed.Package.Location, fmt.Sprintf("the rule is too large: its syntax has %d nodes", size), fmt.Sprintf("at most %d", maxSize), "split it")}
	}
	var problems source.Problems
	refuse := func(at *ast.Location, what, instead string) {
		problems = append(problems, m.problemAt(at, "a rule may not use "+what, instead, ""))
	}
	own := map[string]bool{}
	for _, r := range m.parsed.Rules {
		own[r.Head.Ref().String()] = true
	}
	for _, r := range m.parsed.Rules {
		name := string(r.Head.Ref()[0].Value.(ast.Var))
		set := name == "proved" || name == "excused"
		if !set && len(r.Head.Args) > 0 {
			callsAlone(r, own, refuse)
		}
		for _, part := range parts(r) {
			restrain(part, set && part == any(r.Head.Key), refuse)
		}
	}
	if len(problems) > 0 {
		problems = append(problems, m.unknownFunctions(own)...)
	}
	return problems
}

// unknownFunctions names the functions that there are not, as compiling would.
func (m *module) unknownFunctions(own map[string]bool) source.Problems {
	var problems source.Problems
	eachCall(m.parsed, func(at *ast.Location, operator ast.Ref, _ []*ast.Term) {
		if name := operator.String(); !own[name] && !slices.Contains(ruleBuiltins, name) {
			problems = append(problems, m.noFunction(at, name))
		}
	})
	return problems
}

func sizeOf(m *ast.Module) int {
	size := 0
	ast.NewGenericVisitor(func(any) bool {
		size++
		return false
	}).Walk(m)
	return size
}

// callsAlone refuses a function that calls another of the file: each level of
// calls could double how often the innermost is run.
func callsAlone(r *ast.Rule, own map[string]bool, refuse func(at *ast.Location, what, instead string)) {
	eachCall(r, func(at *ast.Location, operator ast.Ref, _ []*ast.Term) {
		if own[operator.String()] {
			refuse(at, "a function inside a function", "a function that calls no other of the file")
		}
	})
}

// eachCall calls the function for each call with its operator and its operands.
func eachCall(part any, visit func(at *ast.Location, operator ast.Ref, operands []*ast.Term)) {
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Expr:
			if x.IsCall() {
				visit(x.Location, x.Operator(), x.Operands())
			}
		case *ast.Term:
			if call, ok := x.Value.(ast.Call); ok {
				visit(x.Location, call.Operator(), call.Operands())
			}
		}
		return false
	}).Walk(part)
}

// restrain refuses within one part of a rule. What proved and excused contain has
// to come as it is, so that there are never more of it than there are items.
func restrain(part any, contained bool, refuse func(at *ast.Location, what, instead string)) {
	eachCall(part, func(at *ast.Location, operator ast.Ref, operands []*ast.Term) {
		if slices.Contains([]string{"mul", "div"}, operator.String()) && !slices.ContainsFunc(operands, fixed) {
			refuse(at, "a product or quotient of two values that it reads or works out", "a number or a limit on one side; areas, ratios and the like are figures")
		}
	})
	if key, ok := part.(*ast.Term); ok && contained {
		restrainKey(key, refuse)
		return
	}
	ast.WalkTerms(part, func(t *ast.Term) bool {
		if !plainWords(t.Value) {
			refuse(t.Location, "an object, or a list or set of anything but words and numbers", `words and numbers, as {"well", "spring"}`)
		}
		return false
	})
}

// restrainKey refuses what is put together in what proved or excused contains. A
// reason may quote the figures of the subject that it is given for.
func restrainKey(key *ast.Term, refuse func(at *ast.Location, what, instead string)) {
	subject := key
	if excuse, ok := key.Value.(ast.Object); ok {
		subject = excuse.Get(ast.StringTerm("subject"))
		if excuse.Len() > 2 {
			refuse(key.Location, "an excuse of more than a subject and a reason", `{"subject": …, "reason": …}`)
		}
		if reason := excuse.Get(ast.StringTerm("reason")); reason != nil && subject != nil && !quotes(reason, subject) {
			refuse(reason.Location, "a reason that is put together of what is not the subject's", fmt.Sprintf("the reason written out, or a template string with at most %d figures of the subject", maxQuotes))
		}
	}
	if subject != nil && !asItComes(subject) {
		refuse(key.Location, "a subject that is put together", "the subject of an item, as c.subject")
	}
}

func asItComes(t *ast.Term) bool {
	switch t.Value.(type) {
	case ast.Var, ast.Ref:
		return true
	}
	return ast.IsScalar(t.Value)
}

// quotes reports whether a reason is written out, but for figures of the item
// that the subject is of.
func quotes(reason, subject *ast.Term) bool {
	if ast.IsScalar(reason.Value) {
		return true
	}
	template, ok := reason.Value.(*ast.TemplateString)
	of, isRef := subject.Value.(ast.Ref)
	if !ok || !isRef || len(template.Parts) > 2*maxQuotes+1 {
		return false
	}
	own := true
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case ast.Ref:
			own = own && x[0].Equal(of[0])
			return true
		case ast.Var, ast.Call:
			own = false
		}
		return false
	}).Walk(template)
	return own
}

// plainWords reports whether a value is no collection, or one of texts, numbers,
// yes and no alone.
func plainWords(v ast.Value) bool {
	all := true
	check := func(t *ast.Term) { all = all && ast.IsScalar(t.Value) }
	switch x := v.(type) {
	case *ast.Array:
		x.Foreach(check)
	case ast.Set:
		x.Foreach(check)
	case ast.Object:
		all = x.Len() == 0
	}
	return all
}

// fixed reports whether a term is a number or the value of a limit.
func fixed(t *ast.Term) bool {
	switch x := t.Value.(type) {
	case ast.Number:
		return true
	case ast.Ref:
		return x.HasPrefix(ast.DefaultRootRef)
	}
	return false
}
