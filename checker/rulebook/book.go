package rulebook

import (
	"bytes"
	"cmp"
	"context"
	"maps"
	"slices"
	"sync"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/source"
)

// Book is the rules in force with their limits and cautions, ready to judge
// designs. It does not change and is safe for concurrent use.
type Book struct {
	rules      []*Rule
	limits     []*Limit
	cautions   map[string]string
	amendments []*Amendment
	asides     []*SetAside
	queries    []query       // one for each rule
	deadline   time.Duration // for one rule and one design
	patience   time.Duration // for all rules and one design
}

// Rules gives the rules in force by topic, what can do the most harm first, and
// within a topic by id.
func (b *Book) Rules() []*Rule { return slices.Clone(b.rules) }

// Rule gives the rule with the id.
func (b *Book) Rule(id string) (*Rule, bool) {
	i, ok := slices.BinarySearchFunc(b.rules, id, func(r *Rule, id string) int { return inOrder(r.ID, id) })
	if !ok {
		return nil, false
	}
	return b.rules[i], true
}

// Limits gives the limits in force, sorted by name.
func (b *Book) Limits() []*Limit { return slices.Clone(b.limits) }

// Limit gives the limit of that name.
func (b *Book) Limit(name string) (*Limit, bool) {
	i, ok := slices.BinarySearchFunc(b.limits, name, func(l *Limit, name string) int { return cmp.Compare(l.Name, name) })
	if !ok {
		return nil, false
	}
	return b.limits[i], true
}

// Caution gives the words of warning that a rule names by their key.
func (b *Book) Caution(key string) (string, bool) {
	words, ok := b.cautions[key]
	return words, ok
}

// Amendments gives the amendments that are laid upon the base, in their order.
func (b *Book) Amendments() []*Amendment { return slices.Clone(b.amendments) }

// SetAside gives the rules that amendments take out of force, in their order.
func (b *Book) SetAside() []*SetAside { return slices.Clone(b.asides) }

// Load reads the layers, the base first and amendments upon it, and refuses the
// whole with every problem that there is, as source.Problems, before any design
// is read. Tests of rules (files named *_test.rego) are no part of the book.
func Load(ctx context.Context, layers ...Layer) (*Book, error) {
	a := newAssembly()
	for _, layer := range layers {
		if ctx.Err() != nil {
			return nil, context.Cause(ctx)
		}
		a.lay(layer)
	}
	if len(a.around.limits) == 0 && limitsWanted(a.inForce) {
		return nil, noLimits(layers, a.problems)
	}
	modules, problems := readRules(a.inForce, a.around)
	for _, m := range modules {
		a.changeLevels(m)
	}
	a.unusedLimits(modules)
	compiler, refused := compile(modules)
	problems = append(problems, besides(refused, problems)...)
	if problems = tidy(append(a.problems, problems...)); len(problems) > 0 {
		return nil, problems
	}
	if len(modules) == 0 {
		return nil, noRules(layers)
	}
	return a.book(compiler, modules), nil
}

func (a *assembly) book(compiler *ast.Compiler, modules []*module) *Book {
	b := &Book{deadline: deadline, patience: patience, cautions: a.around.cautions, limits: sortedLimits(a.around.limits), amendments: a.amendments, asides: a.asides}
	store := storeOf(b.limits)
	for _, m := range modules {
		m.rule.Replaces = a.replaced[m.path]
		b.rules, b.queries = append(b.rules, m.rule), append(b.queries, newQuery(compiler, store, m.rule))
	}
	return b
}

// limitsWanted reports whether any rule compares with a limit.
func limitsWanted(rules map[string]*file) bool {
	for _, f := range rules {
		if bytes.Contains(f.text, []byte("data.limits")) {
			return true
		}
	}
	return false
}

// noLimits says what is wrong with the limits alone: without them every rule
// would be refused for want of its own.
func noLimits(layers []Layer, problems source.Problems) source.Problems {
	if len(problems) > 0 {
		return tidy(problems)
	}
	return source.Problems{{
		Position: source.Position{File: layers[0].Name}, Found: "holds no limits.json, and its rules compare with limits",
		Expected: "limits.json beside the folders of rules", Remedy: "copy it from the base rule book, or write it",
	}}
}

// noRules refuses a book by which every design would pass.
func noRules(layers []Layer) source.Problems {
	var p source.Problem
	for _, layer := range layers {
		p.File = layer.Name
	}
	p.Found, p.Expected = "holds no rule", "TOPIC/RULE.rego"
	return source.Problems{p}
}

// readRules parses the files and checks each rule by itself, on all cores; the
// rules come out in their order.
func readRules(inForce map[string]*file, around surroundings) ([]*module, source.Problems) {
	paths := slices.Sorted(maps.Keys(inForce))
	read, faults := make([]*module, len(paths)), make([]source.Problems, len(paths))
	var wg sync.WaitGroup
	for i, path := range paths {
		wg.Go(func() { read[i], faults[i] = readRule(inForce[path], around) })
	}
	wg.Wait()
	modules := slices.DeleteFunc(read, func(m *module) bool { return m == nil })
	slices.SortFunc(modules, func(a, b *module) int { return inOrder(a.id, b.id) })
	return modules, slices.Concat(faults...)
}

// readRule parses a file and checks the rule by itself.
func readRule(f *file, around surroundings) (*module, source.Problems) {
	m, problems := parse(f)
	if m == nil {
		return nil, problems
	}
	return m, slices.Concat(problems, m.declare(around), m.references(around.limits), m.declared(), m.proofs(), m.vocabulary())
}

func sortedLimits(limits map[string]*Limit) []*Limit {
	return slices.SortedFunc(maps.Values(limits), func(a, b *Limit) int { return cmp.Compare(a.Name, b.Name) })
}
