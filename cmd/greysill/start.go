package main

import (
	"context"
	_ "embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"greysill/schema"
)

// starter is a small design that passes, for people to draw over.
//
//go:embed starter.json
var starter []byte

const startHelp = `greysill start [DIR] writes two files into DIR (default: the folder you are in):

  design.json                   a small design that passes, to draw over
  greywater-design.schema.json  the schema that design.json points at: an editor
                                that knows JSON Schema explains and completes
                                every entry from it, offline

Nothing is overwritten.
`

func start(_ context.Context, c console, args []string) int {
	flags := newFlags("start", startHelp)
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
	if err != nil {
		return badUsage(c, "start", err)
	}
	if err := writeStarter(append(operands, ".")[0], c); err != nil {
		fmt.Fprintf(c.err, "greysill: %v\n", err)
		return exitUnjudged
	}
	return exitPass
}

// writeStarter writes the starter design and its schema, both or neither when
// one is there already.
func writeStarter(dir string, c console) error {
	designSchema, err := schema.FS.ReadFile("design.schema.json")
	if err != nil {
		return err
	}
	files := []struct {
		name string
		text []byte
	}{
		{filepath.Join(dir, "design.json"), starter},
		{filepath.Join(dir, "greywater-design.schema.json"), designSchema},
	}
	if info, err := os.Stat(dir); err == nil && !info.IsDir() {
		return fmt.Errorf("%s is a file, not a folder; name a folder", dir)
	}
	for _, f := range files {
		if _, err := os.Lstat(f.name); !errors.Is(err, fs.ErrNotExist) {
			return fmt.Errorf("%s is there already; nothing was written: name another folder, or move it away", f.name)
		}
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	for _, f := range files {
		if err := writeNew(f.name, f.text); err != nil {
			return err
		}
		fmt.Fprintf(c.out, "wrote %s\n", f.name)
	}
	fmt.Fprintf(c.out, "Next: draw your own site over it, then greysill review %s\n", files[0].name)
	return nil
}
