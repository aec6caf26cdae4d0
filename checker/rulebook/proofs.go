package rulebook

import (
	"fmt"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/source"
)

// A rule proves that something holds only if taking facts away from the input
// can never prove more. So a rule is made of comparisons that hold of what is
// there; whatever also holds of what is missing is refused here: negation,
// "every" (which holds of no items, and whose body OPA does not type-check),
// comprehensions (which leave out what is missing), a value in place of a
// missing one, and sets of the rule's own that could be counted.

// proofs refuses what could turn something missing into a proof.
func (m *module) proofs() source.Problems {
	var problems source.Problems
	refuse := func(at *ast.Location, what, instead string) {
		problems = append(problems, m.problemAt(at, "a rule may not use "+what+": it also holds of what the design does not show", instead, ""))
	}
	for _, r := range m.parsed.Rules {
		name := r.Head.Ref()[0].Value.String()
		set := name == "proved" || name == "excused"
		switch {
		case r.Default:
			refuse(r.Location, "default", "conditions that hold of what is there")
		case r.Else != nil:
			refuse(r.Else.Location, "else", "one rule for each case, each with its own condition")
		case !set && (len(r.Head.Ref()) > 1 || r.Head.DocKind() != ast.CompleteDoc):
			refuse(r.Location, "a set or object of its own", "a function of the subject, or a plain value")
		}
		for _, part := range parts(r) {
			m.walkProof(part, set && part == any(r.Head.Key), refuse)
		}
	}
	return problems
}

// walkProof refuses within one part of a rule. A reason may quote what is
// missing: quoting proves nothing.
func (m *module) walkProof(part any, reason bool, refuse func(at *ast.Location, what, instead string)) {
	at := m.parsed.Package.Location
	ast.NewGenericVisitor(func(x any) bool {
		if n, ok := x.(ast.Node); ok && n.Loc() != nil {
			at = n.Loc()
		}
		switch x := x.(type) {
		case *ast.Expr:
			if x.Negated {
				refuse(at, "not", "a comparison that holds of what is there, as == false or !=")
			}
			if len(x.With) > 0 {
				refuse(at, "with", "the input and the limits as they are")
			}
		case *ast.Not:
			refuse(at, "not", "a comparison that holds of what is there, as == false or !=")
		case *ast.Every:
			refuse(at, "every", "a figure of the subject; each subject is judged by itself")
		case *ast.ArrayComprehension, *ast.SetComprehension, *ast.ObjectComprehension:
			refuse(at, "a comprehension", "a figure of the subject")
		case *ast.TemplateString:
			if !reason {
				refuse(at, "a template string", "a template string in the reason of excused alone")
			}
		case ast.Var:
			if x == "proved" || x == "excused" {
				refuse(at, fmt.Sprintf("the set %s", x), "conditions on the input and the limits")
			}
		}
		return false
	}).Walk(part)
}

// vocabulary refuses the comparison of a field with a word that it never has,
// which would always hold with != and never with ==.
func (m *module) vocabulary() source.Problems {
	var problems source.Problems
	m.eachComparison(func(a, b *ast.Term) {
		ref, ok := a.Value.(ast.Ref)
		if !ok || len(ref) < 2 || m.rule.Subjects == nil {
			return
		}
		name, ok := ref[len(ref)-1].Value.(ast.String)
		if !ok {
			return
		}
		field := fieldOf(m.rule.Subjects, string(name))
		if field == nil || len(field.Words) == 0 {
			return
		}
		ast.WalkTerms(b, func(t *ast.Term) bool {
			if word, ok := t.Value.(ast.String); ok && !slices.Contains(field.Words, string(word)) {
				expected, remedy := suggestion(string(word), field.Words)
				problems = append(problems, m.problemAt(t.Location, fmt.Sprintf("%s is never %s", field.Name, source.Quote(string(word))), expected, remedy))
			}
			_, nested := t.Value.(ast.Ref)
			return nested
		})
	})
	return problems
}

var equalities = []string{"equal", "eq", "neq", "internal.member_2"}

// eachComparison calls the function with both sides of each test for equality
// or membership, either way round.
func (m *module) eachComparison(visit func(a, b *ast.Term)) {
	for _, r := range m.parsed.Rules {
		for _, part := range parts(r) {
			ast.WalkExprs(part, func(e *ast.Expr) bool {
				if e.IsCall() && slices.Contains(equalities, e.Operator().String()) && len(e.Operands()) == 2 {
					visit(e.Operand(0), e.Operand(1))
					visit(e.Operand(1), e.Operand(0))
				}
				return false
			})
		}
	}
}
