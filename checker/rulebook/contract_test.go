package rulebook

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/rules"
)

// The contract of the rule book, held against every rule of the base: nothing
// that goes missing ever yields a pass. For each rule a grid of subjects is made
// from the fields that it reads, with values on both sides of each limit; then
// each field is renamed and made unknown, each limit dropped, the list emptied
// and renamed. A subject may then pass only where it passes whatever the missing
// value is: toilet waste that never enters the train passes without saying how
// much there is of it.

func baseBook(t testing.TB) *Book {
	t.Helper()
	return load(t, Layer{Name: BaseName, FS: rules.FS})
}

func TestEveryLimitOfTheBaseBookIsUsed(t *testing.T) {
	for _, l := range baseBook(t).UnusedLimits() {
		t.Errorf("no rule compares with the limit %s", l.Name)
	}
}

func TestNothingMissingEverYieldsAPass(t *testing.T) {
	b := baseBook(t)
	require.NotEmpty(t, b.Rules())
	changes := 0
	for i, r := range b.rules {
		t.Run(r.ID, func(t *testing.T) {
			g := newGrid(t, b, i)
			require.NotEmpty(t, g.proved, "no subject of the grid passes, so that there is nothing to change")
			g.margins(t)
			g.unknownFigures(t)
			g.renamedFields(t)
			g.withoutFields(t)
			g.droppedLimits(t)
			g.withoutList(t)
			g.editedText(t)
			changes += g.changes
		})
	}
	t.Logf("%d changes to the input, the limits and the text of %d rules; none yields a pass", changes, len(b.rules))
}

// grid is a list of subjects that differ in the fields that one rule reads.
type grid struct {
	book    *Book
	rule    *Rule
	index   int
	values  map[string][]any // of each field that the rule reads
	points  []map[string]any
	proved  map[string]bool // by the key of the point
	changes int
}

// most bounds the subjects of one grid.
const most = 20000

func newGrid(t *testing.T, b *Book, index int) *grid {
	g := &grid{book: b, rule: b.rules[index], index: index, values: map[string][]any{}, points: []map[string]any{{}}}
	for _, name := range g.rule.reads {
		field := fieldOf(g.rule.Subjects, name)
		g.values[name] = g.candidates(t, field)
		var next []map[string]any
		for _, p := range g.points {
			for _, v := range g.values[name] {
				next = append(next, with(p, name, v))
			}
		}
		g.points = next
		require.LessOrEqual(t, len(g.points), most)
	}
	g.proved = g.ask(t, g.points, g.rule.Subjects)
	return g
}

// candidates gives values of a field: on, above and below every limit of the
// rule, every word that it may have or that the rule names, yes and no.
func (g *grid) candidates(t *testing.T, f *figures.Field) []any {
	switch f.Kind {
	case figures.Truth:
		return []any{true, false}
	case figures.Text:
		words := append(g.literals(t), f.Words...)
		slices.Sort(words)
		values := []any{"another word"}
		for _, w := range slices.Compact(words) {
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

// literals gives every text that the rule compares with.
func (g *grid) literals(t *testing.T) []string {
	module := ast.MustParseModule(ruleSource(t, g.rule))
	var words []string
	for _, r := range module.Rules {
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

func ruleSource(t *testing.T, r *Rule) string {
	text, err := fs.ReadFile(rules.FS, r.ID+".rego")
	require.NoError(t, err)
	return string(text)
}

// ask gives the points that the rule proves, by their keys, when the points are
// the items of a list that may differ from the rule's own.
func (g *grid) ask(t *testing.T, points []map[string]any, l *figures.List) map[string]bool {
	return g.askBook(t, g.book, g.input(t, points, l))
}

func (g *grid) askBook(t *testing.T, b *Book, input ast.Value) map[string]bool {
	j := &judgement{book: b, rule: g.rule, query: &b.queries[g.index]}
	said, err := j.ask(t.Context(), input)
	require.NoError(t, err)
	return said.proved
}

// input is the rule input with the points in place of the rule's list.
func (g *grid) input(t *testing.T, points []map[string]any, l *figures.List) ast.Value {
	var items []*figures.Item
	for _, p := range points {
		items = append(items, pointItem(l, p))
	}
	listed, err := texts{}.list(items)
	require.NoError(t, err)
	return inputWith(t, l.Name, listed)
}

// inputWith is an empty input with one list.
func inputWith(t *testing.T, name string, listed *ast.Array) ast.Value {
	input, unfit := Input(figuresOf())
	require.Empty(t, unfit)
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

// whatever reports whether the point passes whatever the field's value.
func (g *grid) whatever(point map[string]any, name string) bool {
	for _, v := range g.values[name] {
		if !g.proved[key(with(point, name, v))] {
			return false
		}
	}
	return true
}

// open gives each point once with the field taken out.
func (g *grid) open(name string) []map[string]any {
	var open []map[string]any
	seen := map[string]bool{}
	for _, p := range g.points {
		if p = without(p, name); !seen[key(p)] {
			seen[key(p)] = true
			open = append(open, p)
		}
	}
	return open
}

// margins requires the measures to agree with what the rule proves: a subject
// that passes lies on the right side of every limit that counts for it.
func (g *grid) margins(t *testing.T) {
	j := &judgement{book: g.book, rule: g.rule}
	for _, p := range g.points {
		if !g.proved[key(p)] {
			continue
		}
		for _, m := range j.measured(pointItem(g.rule.Subjects, p)) {
			require.GreaterOrEqual(t, m.Margin, 0.0, "%s passes with %s on the wrong side", key(p), m.Measure.Field.Name)
		}
	}
}

// unknownFigures makes each figure unknown and judges as a design is judged.
func (g *grid) unknownFigures(t *testing.T) {
	for _, name := range g.rule.reads {
		f := figuresOf()
		group := &f.Lists[listIndex(g.rule.Subjects.Name)]
		open := map[string]map[string]any{}
		for _, p := range g.open(name) {
			open[key(p)] = p
			group.Items = append(group.Items, pointItem(g.rule.Subjects, p))
		}
		own := &Book{rules: []*Rule{g.rule}, queries: g.book.queries[g.index : g.index+1], limits: g.book.limits, deadline: g.book.deadline}
		v := own.Judge(t.Context(), f, day)
		require.Empty(t, v.Broken)
		require.Equal(t, len(open), len(v.Findings)+len(v.Excused))
		for _, finding := range v.Findings {
			g.changes++
			if finding.Status == Pass {
				require.True(t, g.whatever(open[finding.Item.Subject.Name], name), "%s passes without %s", finding.Item.Subject.Name, name)
			}
		}
	}
}

// renamedFields gives each field another name in the rule input.
func (g *grid) renamedFields(t *testing.T) {
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
		var points []map[string]any
		for _, p := range g.points {
			points = append(points, with(without(p, name), name+"_renamed", p[name]))
		}
		proved := g.ask(t, points, &renamed)
		for _, p := range points {
			g.changes++
			if proved[key(p)] {
				require.True(t, g.whatever(without(p, name+"_renamed"), name), "%s passes though %s is renamed", key(p), name)
			}
		}
		require.Less(t, len(proved), len(g.points))
	}
}

// withoutFields takes all fields away: nothing may pass then, and each field
// that the rule measures has to matter to somebody.
func (g *grid) withoutFields(t *testing.T) {
	g.changes++
	require.Empty(t, g.ask(t, []map[string]any{{}}, g.rule.Subjects), "a subject of which nothing is known passes")
	for _, m := range g.rule.Measures {
		if m.Limit == "" {
			continue
		}
		matters := slices.ContainsFunc(g.points, func(p map[string]any) bool {
			return g.proved[key(p)] && !g.whatever(p, m.Field.Name)
		})
		require.True(t, matters, "%s makes no difference to any subject", m.Field.Name)
	}
}

// droppedLimits takes each limit out of the store, and out of limits.json.
func (g *grid) droppedLimits(t *testing.T) {
	input := g.input(t, g.points, g.rule.Subjects)
	for _, name := range g.rule.limits {
		proved := g.askBook(t, g.bookWith(t, name, nil), input)
		require.Less(t, len(proved), len(g.proved), "the limit %s makes no difference", name)
		whatever := maps.Clone(g.proved)
		for _, value := range []float64{-1e9, 0, 1e9} {
			held := g.askBook(t, g.bookWith(t, name, &value), input)
			maps.DeleteFunc(whatever, func(key string, _ bool) bool { return !held[key] })
		}
		for _, p := range g.points {
			g.changes++
			if proved[key(p)] {
				require.True(t, whatever[key(p)], "%s passes without the limit %s", key(p), name)
			}
		}
		g.changes++
		require.Contains(t, refused(t, g.edited(t, "limits.json", `"`+name+`": {`, `"`+name+`_dropped": {`)).Error(), `there is no limit "`+name+`"`)
	}
}

// bookWith is the book with one limit changed, or left out when value is nil.
func (g *grid) bookWith(t *testing.T, name string, value *float64) *Book {
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
	b := *g.book
	b.queries = slices.Clone(g.book.queries)
	b.queries[g.index] = prepared(t, g.rule, storeOf(limits))
	return &b
}

// withoutList empties the list, renames it and leaves it out.
func (g *grid) withoutList(t *testing.T) {
	g.changes += 3
	name := g.rule.Subjects.Name
	empty, _ := texts{}.list(nil)
	require.Empty(t, g.askBook(t, g.book, inputWith(t, name, empty)))
	require.Empty(t, g.askBook(t, g.book, ast.NewObject()))

	var items []*figures.Item
	for _, p := range g.points {
		items = append(items, pointItem(g.rule.Subjects, p))
	}
	listed, err := texts{}.list(items)
	require.NoError(t, err)
	require.Empty(t, g.askBook(t, g.book, inputWith(t, name+"_renamed", listed)))
}

// editedText misspells each field and the list in the rule's own text: the book
// is refused.
func (g *grid) editedText(t *testing.T) {
	file := g.rule.ID + ".rego"
	for _, name := range g.rule.reads {
		g.changes++
		require.Contains(t, refused(t, g.edited(t, file, "."+name, "."+name+"_renamed")).Error(), `"`+name+`_renamed"`)
	}
	g.changes++
	list := "input." + g.rule.Subjects.Name
	require.Contains(t, refused(t, g.edited(t, file, list, list+"_renamed")).Error(), "there is no list")
}

// edited is the rule alone with the limits and cautions of the base, one text
// replaced wherever it stands in one of the files, the METADATA of a rule apart.
func (g *grid) edited(t *testing.T, name, old, with string) Layer {
	files := map[string]string{}
	for _, file := range []string{g.rule.ID + ".rego", "limits.json", "cautions.json"} {
		text, err := fs.ReadFile(rules.FS, file)
		require.NoError(t, err)
		files[file] = string(text)
	}
	head, code, found := strings.Cut(files[name], "\npackage ")
	if found {
		head += "\npackage "
	} else {
		head, code = "", files[name]
	}
	require.Contains(t, code, old)
	files[name] = head + strings.ReplaceAll(code, old, with)
	return layer(BaseName, files)
}

// prepared prepares the rule of the base alone against another store.
func prepared(t *testing.T, r *Rule, store storage.Store) query {
	m, problems := parse(&file{layer: Layer{Name: BaseName}, path: r.ID + ".rego", text: []byte(ruleSource(t, r))})
	require.Empty(t, problems)
	c, refusals := compile([]*module{m})
	require.Empty(t, refusals)
	return newQuery(c, store, r)
}
