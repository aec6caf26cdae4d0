package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"strings"

	"greysill/checker/rulebook"
	"greysill/checker/rulebook/ruletest"
	"greysill/checker/source"
)

const tryHelp = `greysill try [flags] DIR tries the amendment in a folder, or a rule book of its own
where the folder has no amendment.json:

  its files are read as for a review, and everything wrong is named with its place;
  its tests run, have to be there for every outcome and to reach every line;
  every limit that it sets has to be of use;
  figures, limits and lists are taken away one by one, and none of that may yield
  a pass.

Exit status: 0 nothing is wrong, 1 something is, 2 it could not be tried.
`

func try(ctx context.Context, c console, args []string) int {
	flags := newFlags("try", tryHelp)
	common := addCommon(flags)
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	if err == nil && len(operands) != 1 {
		err = errors.New("try takes one folder")
	}
	if err == nil {
		err = common.check()
	}
	if err != nil {
		return badUsage(c, "try", err)
	}
	layers, err := common.under(operands[0])
	if err != nil {
		return unusable(c, err)
	}
	trial, err := ruletest.Try(ctx, layers...)
	if err != nil {
		return unusable(c, fmt.Errorf("greysill: %w", err))
	}
	return tried(c, operands[0], trial)
}

// under gives the layers to try a folder with: the folder alone when it is a base,
// else upon the rules in force.
func (f *common) under(dir string) ([]rulebook.Layer, error) {
	layer, err := folder("try", dir)
	if err != nil {
		return nil, err
	}
	if _, err := fs.Stat(layer.FS, "amendment.json"); errors.Is(err, fs.ErrNotExist) {
		return []rulebook.Layer{layer}, nil
	}
	books, err := f.books()
	if err != nil {
		return nil, err
	}
	return append(books.Layers(f.region), layer), nil
}

// tried says what came of a trial.
func tried(c console, dir string, t *ruletest.Trial) int {
	for _, p := range t.Problems {
		fmt.Fprintln(c.out, source.Problems{p})
		if p.Caret != "" {
			fmt.Fprintln(c.out, "    "+strings.ReplaceAll(p.Caret, "\n", "\n    "))
		}
	}
	if len(t.Problems) > 0 {
		fmt.Fprintf(c.out, "%s: %d wrong\n", dir, len(t.Problems))
		return exitFail
	}
	said := fmt.Sprintf("%s of its own, %d tests pass and reach every line, %d changes tried, none yields a pass", count(len(t.Rules), "rule"), t.Tests, t.Changes)
	if t.Amendment != nil {
		said = fmt.Sprintf("%s, sets %s and has ", source.Clean(t.Amendment.Name), count(len(t.Amendment.Limits), "limit")) + said
	}
	fmt.Fprintf(c.out, "%s: %s\n", dir, said)
	return exitPass
}

// count gives a number with its noun: "1 rule", "3 rules".
func count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
