package design

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/golden"
	"greysill/checker/source"
)

const broken = "../../testdata/broken"

// Each file of testdata/broken/design is testdata/broken/sound.json with one
// kind of fault. Beside each stands what is said of it.
func TestBrokenDesigns(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(broken, "design", "*.json"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			design, problems := Read(filepath.Base(file), text)
			require.NotEmpty(t, problems)
			require.Nil(t, design)
			golden.Equal(t, strings.TrimSuffix(file, ".json")+".txt", []byte(told(problems)))
		})
	}
}

func TestSoundDesign(t *testing.T) {
	design, problems := ReadFile(filepath.Join(broken, "sound.json"))
	require.Empty(t, problems)
	require.NotNil(t, design)
}

func told(problems source.Problems) string {
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
