package rulebook

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// Contract holds rules to what they promise: nothing that goes missing ever
// yields a pass. For each rule a grid of subjects is made from the fields that it
// reads, with values on both sides of each limit; then each field is renamed and
// made unknown, each limit dropped, the list emptied and renamed. A subject may
// then pass only where it passes whatever the missing value is: toilet waste that
// never enters the train passes without saying how much there is of it.
//
// Only says which rules to try, all of them where it is nil. Changes is how many
// changes were tried, and problems what came of those that went wrong.
func (b *Book) Contract(ctx context.Context, only func(*Rule) bool) (changes int, problems source.Problems) {
	limit := 10 * b.patience
	ctx, cancel := context.WithTimeoutCause(ctx, limit, fmt.Errorf("trying all rules took longer than the limit of %v", limit))
	defer cancel()
	for i, r := range b.rules {
		if only != nil && !only(r) {
			continue
		}
		g := &grid{ctx: ctx, book: b, rule: r, index: i, values: map[string][]any{}, points: []map[string]any{{}}}
		g.try()
		changes += g.changes
		problems = append(problems, g.problems...)
	}
	return changes, problems
}

// grid is a list of subjects that differ in the fields that one rule reads.
type grid struct {
	ctx      context.Context
	book     *Book
	rule     *Rule
	index    int
	values   map[string][]any // of each field that the rule reads
	points   []map[string]any
	proved   map[string]bool // by the key of the point
	broken   bool            // the rule could not be judged; the rest would take as long or say the same
	changes  int
	problems source.Problems
}

// most bounds the subjects of one grid.
const most = 20000

// try tries every change.
func (g *grid) try() {
	if !g.lay() {
		return
	}
	g.margins()
	g.unknownFigures()
	g.renamedFields()
	g.withoutFields()
	g.droppedLimits()
	g.withoutList()
}

// fault notes that the rule breaks its promise.
func (g *grid) fault(format string, values ...any) {
	p := source.Problem{Position: source.Position{File: g.rule.File}, Found: fmt.Sprintf(format, values...)}
	if !slices.ContainsFunc(g.problems, func(known source.Problem) bool { return known.Found == p.Found }) {
		g.problems = append(g.problems, p)
	}
}

// lay makes the grid.
func (g *grid) lay() bool {
	for _, name := range g.rule.reads {
		g.values[name] = g.candidates(fieldOf(g.rule.Subjects, name))
		if len(g.points)*len(g.values[name]) > most {
			g.fault("the rule reads so many fields that its promise cannot be tried; split it")
			return false
		}
		var next []map[string]any
		for _, p := range g.points {
			for _, v := range g.values[name] {
				next = append(next, with(p, name, v))
			}
		}
		g.points = next
	}
	if g.proved = g.ask(g.points, g.rule.Subjects); g.broken {
		return false
	}
	if len(g.proved) == 0 {
		g.fault("nothing that the rule may meet is ever proved, so that every design would be refused")
		return false
	}
	return true
}

// candidates gives values of a field: on, above and below every limit of the
// rule, every word that it may have or that the rule names, yes and no.
func (g *grid) candidates(f *figures.Field) []any {
	switch f.Kind {
	case figures.Truth:
		return []any{true, false}
	case figures.Text:
		values := []any{"another word"}
		for _, w := range slices.Compact(slices.Sorted(slices.Values(slices.Concat(g.rule.words, f.Words)))) {
			values = append(values, w)
		}
		return values
	}
	numbers := []float64{0}
	for _, name := range g.rule.limits {
		limit, _ := g.book.Limit(name)
		step := 0.1 * limit.Value
		if step == 0 {
			step = 0.1
		}
		numbers = append(numbers, limit.Value-step, limit.Value, limit.Value+step)
	}
	slices.Sort(numbers)
	var values []any
	for _, n := range slices.Compact(numbers) {
		values = append(values, n)
	}
	return values
}

// literals gives every text that a rule compares with.
func literals(m *ast.Module) []string {
	var words []string
	for _, r := range m.Rules {
		ast.WalkExprs(r.Body, func(e *ast.Expr) bool {
			if e.IsCall() {
				ast.WalkTerms(e, func(term *ast.Term) bool {
					if s, ok := term.Value.(ast.String); ok {
						words = append(words, string(s))
					}
					_, ref := term.Value.(ast.Ref)
					return ref
				})
			}
			return false
		})
	}
	return words
}

// ask gives the points that the rule proves, by their keys, when the points are
// the items of a list that may differ from the rule's own.
func (g *grid) ask(points []map[string]any, l *figures.List) map[string]bool {
	return g.askQuery(&g.book.queries[g.index], pointsInput(points, l))
}

func (g *grid) askQuery(q *query, input ast.Value) map[string]bool {
	j := &judgement{book: g.book, rule: g.rule, query: q}
	if g.broken {
		return nil
	}
	said, err := j.ask(g.ctx, input)
	if err != nil {
		g.broken = true
		g.fault("the rule could not be judged: %v", err)
	}
	return said.proved
}

// pointsInput is the rule input with points as the items of a list.
func pointsInput(points []map[string]any, l *figures.List) ast.Value {
	items := make([]*figures.Item, len(points))
	for i, p := range points {
		items[i] = pointItem(l, p)
	}
	listed, err := texts{}.list(items)
	if err != nil {
		panic(err) // the values of a grid are finite, and its points differ
	}
	return inputWith(l.Name, listed)
}

// inputWith is an input whose lists are all empty but one.
func inputWith(name string, listed *ast.Array) ast.Value {
	input, _ := Input(figuresWith(nil, nil))
	at, path := input.(ast.Object), strings.Split(name, ".")
	for _, group := range path[:len(path)-1] {
		inner := at.Get(ast.StringTerm(group))
		if inner == nil {
			inner = ast.NewTerm(ast.NewObject())
			at.Insert(ast.StringTerm(group), inner)
		}
		at = inner.Value.(ast.Object)
	}
	at.Insert(ast.StringTerm(path[len(path)-1]), ast.NewTerm(listed))
	return input
}

// figuresWith gives figures of which one list has items.
func figuresWith(of *figures.List, items []*figures.Item) *figures.Figures {
	f := &figures.Figures{}
	for _, l := range figures.Catalogue {
		group := figures.Items{List: l}
		if l == of {
			group.Items = items
		}
		f.Lists = append(f.Lists, group)
	}
	return f
}

func pointItem(l *figures.List, point map[string]any) *figures.Item {
	it := &figures.Item{List: l, Subject: figures.Subject{Name: key(point)}, Values: make([]figures.Value, len(l.Fields))}
	for i, f := range l.Fields {
		switch v := point[f.Name].(type) {
		case nil:
			it.Values[i].Lacks = []figures.Lack{{Entry: f.Name}}
		case string:
			it.Values[i].Text = v
		case bool:
			it.Values[i].Truth = v
		case float64:
			it.Values[i].Number = v
		}
	}
	return it
}

// key names a point.
func key(point map[string]any) string {
	var b strings.Builder
	for _, name := range slices.Sorted(maps.Keys(point)) {
		fmt.Fprintf(&b, "%s=%v;", name, point[name])
	}
	return b.String()
}

func with(point map[string]any, name string, v any) map[string]any {
	p := maps.Clone(point)
	p[name] = v
	return p
}

func without(point map[string]any, name string) map[string]any {
	p := maps.Clone(point)
	delete(p, name)
	return p
}
