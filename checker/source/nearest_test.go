package source

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestNearest(t *testing.T) {
	names := []string{"at", "depth", "inlet", "outlet", "outline", "overflow_to", "to"}
	for written, want := range map[string]string{
		"outlien":    "outline",
		"Outline":    "outline",
		"overflowTo": "overflow_to",
		"dpeth":      "depth",
		"it":         "at",
		"mesh":       "",
		"":           "",
	} {
		require.Equal(t, want, Nearest(written, names), written)
	}
	require.Empty(t, Nearest("depth", nil))
}
