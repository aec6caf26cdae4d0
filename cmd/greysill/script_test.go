package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"greysill": main})
}

// TestScripts runs every command-line script with the examples and the hostile
// amendments at hand.
// GREYSILL_UPDATE=1 rewrites the output that the scripts compare with.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 filepath.Join("..", "..", "testdata", "scripts"),
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       os.Getenv("GREYSILL_UPDATE") == "1",
		Setup: func(env *testscript.Env) error {
			env.Setenv("NO_COLOR", "")
			if err := os.CopyFS(filepath.Join(env.WorkDir, "examples"), os.DirFS(filepath.Join("..", "..", "examples"))); err != nil {
				return err
			}
			return os.CopyFS(filepath.Join(env.WorkDir, "hostile"), os.DirFS(filepath.Join("..", "..", "testdata", "hostile")))
		},
	})
}
