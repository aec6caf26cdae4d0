package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRootDepthsOf(t *testing.T) {
	for name, want := range map[string]int{
		"Typha latifolia": 2, "cattail": 2, "Phragmites australis": 3, "common  Reed": 3, "Schoenoplectus acutus": 2, "Softstem bulrush": 2,
		"reed canary grass": 0, "giant reed": 0, "Juncus effusus": 0, "": 0, " ": 0,
	} {
		require.Len(t, RootDepthsOf(name), want, "%q", name)
	}
}

// Sources agree on the order: cattail is the shallowest, bulrush the deepest.
func TestCattailIsShallow(t *testing.T) {
	for _, cattail := range RootDepthsOf("cattail") {
		for _, reed := range RootDepthsOf("reed") {
			for _, bulrush := range RootDepthsOf("bulrush") {
				require.Less(t, cattail.Depth, reed.Depth)
				require.LessOrEqual(t, reed.Depth, bulrush.Depth)
			}
		}
	}
}
