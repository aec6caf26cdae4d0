package rulebook

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// Input gives the figures as rules see them: every list of the catalogue, also
// when it is empty, numbers rounded to 9 significant digits, and unknown figures
// left out. Of each list that rules must not see, the map says why: OPA would take a
// number that is not finite, two subjects of one name would be proved together,
// and a list that was not worked out would pass for one without subjects. Such
// lists are empty in the input.
func Input(f *figures.Figures) (ast.Value, map[string]error) {
	return inputOf(f, func(*figures.List) bool { return true })
}

// inputOf leaves lists empty that nothing reads.
func inputOf(f *figures.Figures, read func(*figures.List) bool) (ast.Value, map[string]error) {
	unfit := map[string]error{}
	groups := map[string]ast.Object{}
	root := ast.NewObject()
	texts := texts{}
	for _, l := range figures.Catalogue {
		var items []*figures.Item
		if read(l) {
			items = f.List(l.Name)
		}
		listed, err := texts.list(items)
		if !worked(f, l) {
			err = fmt.Errorf("the list %s was not worked out", l.Name)
		}
		if err != nil {
			unfit[l.Name] = err
		}
		at, name := root, l.Name
		if group, rest, nested := strings.Cut(l.Name, "."); nested {
			if groups[group] == nil {
				groups[group] = ast.NewObject()
				root.Insert(ast.StringTerm(group), ast.NewTerm(groups[group]))
			}
			at, name = groups[group], rest
		}
		at.Insert(ast.StringTerm(name), ast.NewTerm(listed))
	}
	return root, unfit
}

// worked reports whether the figures have the list, empty or not.
func worked(f *figures.Figures, l *figures.List) bool {
	return slices.ContainsFunc(f.Lists, func(items figures.Items) bool { return items.List.Name == l.Name })
}

func (t texts) list(items []*figures.Item) (*ast.Array, error) {
	terms := make([]*ast.Term, 0, len(items))
	names := make(map[string]bool, len(items))
	for _, item := range items {
		if names[item.Subject.Name] {
			return ast.NewArray(), fmt.Errorf("two items of %s are named %s", item.List.Name, source.Quote(item.Subject.Name))
		}
		names[item.Subject.Name] = true
		object, err := t.item(item)
		if err != nil {
			return ast.NewArray(), err
		}
		terms = append(terms, ast.NewTerm(object))
	}
	return ast.NewArray(terms...), nil
}

func (t texts) item(item *figures.Item) (ast.Object, error) {
	pairs := make([][2]*ast.Term, 0, len(item.Values)+1)
	pairs = append(pairs, ast.Item(t.term("subject"), ast.StringTerm(item.Subject.Name)))
	for i, field := range item.List.Fields {
		value := &item.Values[i]
		if !value.Known() {
			continue
		}
		term, err := t.value(field, value)
		if err != nil {
			return nil, fmt.Errorf("%s of %s %w", field.Name, source.Quote(item.Subject.Name), err)
		}
		pairs = append(pairs, ast.Item(t.term(field.Name), term))
	}
	return ast.NewObject(pairs...), nil
}

// texts are the terms of one input's texts and names. Most stand in it many
// times over, since every part is paired with every feature.
type texts map[string]*ast.Term

func (t texts) term(text string) *ast.Term {
	if t[text] == nil {
		t[text] = ast.StringTerm(text)
	}
	return t[text]
}

func (t texts) value(field *figures.Field, value *figures.Value) (*ast.Term, error) {
	switch field.Kind {
	case figures.Text:
		return t.term(value.Text), nil
	case figures.Truth:
		return ast.InternedTerm(value.Truth), nil
	}
	if !finite(value.Number) {
		return nil, fmt.Errorf("is worked out as %v, which is no finite number", value.Number)
	}
	return ast.NumberTerm(number(value.Number)), nil
}
