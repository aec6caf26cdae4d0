package main

import (
	"context"
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"greysill/schema"
)

// starter is a small design that passes, for people to draw over.
//
//go:embed starter.json
var starter []byte

// localStarter is an amendment with one rule, for people to write over.
//
//go:embed amendment
var localStarter embed.FS

const startHelp = `greysill start [DIR] writes two files into DIR (default: the folder you are in):

  design.json                   a small design that passes, to draw over
  greywater-design.schema.json  the schema that design.json points at: an editor
                                that knows JSON Schema explains and completes
                                every entry from it, offline

greysill start --amendment DIR writes a local amendment instead, with a limit of
the base changed, a limit and a rule of its own, and the tests of that rule.

Nothing is overwritten.
`

func start(_ context.Context, c console, args []string) int {
	flags := newFlags("start", startHelp)
	amendment := flags.Bool("amendment", false, "write a local amendment to change, in place of a design")
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	if err == nil && len(operands) > 1 {
		err = fmt.Errorf("start takes one folder, not %d", len(operands))
	}
	if err == nil && len(operands) == 1 && operands[0] == "" {
		err = errors.New("the folder's name is empty")
	}
	if err == nil && *amendment && len(operands) == 0 {
		err = errors.New("name the folder that the amendment is to lie in")
	}
	if err != nil {
		return badUsage(c, "start", err)
	}
	files, next := designFiles, "draw your own site over it, then greysill review %s\n"
	if *amendment {
		files, next = amendmentFiles, "change it, then greysill try %s\n"
	}
	if err := lay(append(operands, ".")[0], files, next, c); err != nil {
		fmt.Fprintf(c.err, "greysill: %v\n", err)
		return exitUnjudged
	}
	return exitPass
}

// fresh is a file to be written, by its path in the folder.
type fresh struct {
	name string
	text []byte
}

// designFiles gives the files of a design, and the one to go on with.
func designFiles() ([]fresh, string, error) {
	text, err := schema.FS.ReadFile("design.schema.json")
	return []fresh{{"design.json", starter}, {"greywater-design.schema.json", text}}, "design.json", err
}

// amendmentFiles gives the files of a local amendment. Its schema lies in a folder
// of its own, where the stock OPA tools keep it apart.
func amendmentFiles() ([]fresh, string, error) {
	text, err := schema.FS.ReadFile("amendment.schema.json")
	if err != nil {
		return nil, "", err
	}
	files := []fresh{{"schema/amendment.schema.json", text}}
	err = fs.WalkDir(localStarter, "amendment", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := localStarter.ReadFile(name)
		files = append(files, fresh{strings.TrimPrefix(name, "amendment/"), text})
		return err
	})
	return files, "", err
}

// lay writes files into a folder, all of them or, when one is there already,
// none.
func lay(dir string, list func() ([]fresh, string, error), next string, c console) error {
	files, first, err := list()
	if err != nil {
		return err
	}
	if info, err := os.Stat(dir); err == nil && !info.IsDir() {
		return fmt.Errorf("%s is a file, not a folder; name a folder", dir)
	}
	for _, f := range files {
		if name := filepath.Join(dir, f.name); there(name) {
			return fmt.Errorf("%s is there already; nothing was written: name another folder, or move it away", name)
		}
	}
	for _, f := range files {
		name := filepath.Join(dir, f.name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return err
		}
		if err := writeNew(name, f.text); err != nil {
			return err
		}
		fmt.Fprintf(c.out, "wrote %s\n", name)
	}
	fmt.Fprintf(c.out, "Next: "+next, filepath.Join(dir, first))
	return nil
}

func there(name string) bool {
	_, err := os.Lstat(name)
	return !errors.Is(err, fs.ErrNotExist)
}
