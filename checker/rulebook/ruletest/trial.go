package ruletest

import (
	"context"
	"errors"
	"io/fs"
	"path"
	"slices"

	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// Trial is what came of trying a layer of rules.
type Trial struct {
	Amendment *rulebook.Amendment // nil of a base
	Rules     []*rulebook.Rule    // that the layer has of its own
	Tests     int                 // that ran
	Changes   int                 // of the input and the limits that were tried
	Problems  source.Problems     // everything that is wrong
}

// Try loads the last of the layers upon the others and tries it: its tests have to
// pass, to be there for every outcome, and to reach every line; each limit that it
// sets has to be of use; and nothing that goes missing may yield a pass by a rule
// of its own or by one whose limits it changes. An error means that nothing could
// be tried at all.
func Try(ctx context.Context, layers ...rulebook.Layer) (*Trial, error) {
	last := layers[len(layers)-1]
	book, err := rulebook.Load(ctx, layers...)
	var refused source.Problems
	if errors.As(err, &refused) {
		return &Trial{Problems: refused}, nil
	}
	if err != nil {
		return nil, err
	}
	t := &Trial{}
	name := last.Name
	if len(layers) > 1 {
		all := book.Amendments()
		t.Amendment = all[len(all)-1]
		name = t.Amendment.Name
	}
	for _, r := range book.Rules() {
		if r.SetBy == name {
			t.Rules = append(t.Rules, r)
		}
	}
	t.limits(book, name, path.Join(last.Name, "limits.json"))
	t.contract(ctx, book)
	return t, t.tests(ctx, last)
}

// limits finds those that the layer sets and no rule in force compares with.
func (t *Trial) limits(book *rulebook.Book, name, file string) {
	for _, l := range book.UnusedLimits() {
		if l.SetBy == name {
			t.Problems = append(t.Problems, source.Problem{Position: source.Position{File: file},
				Found: "no rule in force compares with the limit " + source.Quote(l.Name), Remedy: "take it out, or do not set its rule aside"})
		}
	}
}

func (t *Trial) contract(ctx context.Context, book *rulebook.Book) {
	changes, problems := book.Contract(ctx, func(r *rulebook.Rule) bool {
		return slices.Contains(t.Rules, r) || t.Amendment != nil && slices.ContainsFunc(r.Measures, func(m rulebook.Measure) bool {
			return slices.Contains(t.Amendment.Limits, m.Limit)
		})
	})
	t.Changes, t.Problems = changes, append(t.Problems, problems...)
}

func (t *Trial) tests(ctx context.Context, layer rulebook.Layer) error {
	if names, err := fs.Glob(layer.FS, "*/*.rego"); err != nil || len(names) == 0 {
		return err
	}
	r, err := Run(ctx, layer)
	if err != nil {
		t.Problems = append(t.Problems, source.Problem{Position: source.Position{File: layer.Name}, Found: "the tests cannot be run: " + err.Error()})
		return nil
	}
	t.Tests = r.Tests
	t.Problems = slices.Concat(t.Problems, r.Problems, r.Missed)
	return nil
}
