package source

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
)

const broken = "../../testdata/broken/json"

// Each file of testdata/broken/json breaks RFC 8259, RFC 7493 or a bound of
// ours in one way. Beside each stands what is said of it.
func TestBrokenFiles(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(broken, "*.json"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			_, problems := Parse(filepath.Base(file), text)
			require.NotEmpty(t, problems)
			golden.Equal(t, strings.TrimSuffix(file, ".json")+".txt", []byte(told(problems)))
		})
	}
}

func told(problems Problems) string {
	var b strings.Builder
	for _, p := range problems {
		fmt.Fprintf(&b, "%s: %s\n", p.Position, p.Sentence())
		if p.Caret != "" {
			fmt.Fprintf(&b, "%s\n", p.Caret)
		}
		fmt.Fprintf(&b, "pointer: %q\n\n", p.Pointer)
	}
	return b.String()
}
