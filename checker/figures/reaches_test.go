package figures_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func piping(pipe string) entries {
	return entries{"parts": `[{"id": "pipe-1", "to": "sewer-1", ` + pipe + `}, {"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`}
}

func TestReaches(t *testing.T) {
	tests := map[string]struct {
		pipe string
		want map[string]map[string]any
	}{
		"two inverts over a straight pipe": {`"kind": "drain pipe", "path": [[0, 0], [3, 4]], "inverts": ["10.1 m", "10 m"]`, map[string]map[string]any{
			"pipe-1": {"kind": "drain pipe", "length": 5.0, "fall": 10.1 - 10, "slope": (10.1 - 10) / 5},
		}},
		"two inverts over a bent pipe": {`"kind": "drain pipe", "path": [[0, 0], [3, 4], [3, 9]], "inverts": ["10.2 m", "10 m"]`, map[string]map[string]any{
			"pipe-1": {"length": 5.0 + 5, "fall": 10.2 - 10, "slope": (10.2 - 10) / 10},
		}},
		"an invert at each point": {`"kind": "overflow pipe", "path": [[0, 0], [3, 4], [3, 9]], "inverts": ["10.2 m", "10 m", "10.05 m"]`, map[string]map[string]any{
			"pipe-1 reach 1": {"kind": "overflow pipe", "length": 5.0, "fall": 10.2 - 10, "slope": (10.2 - 10) / 5},
			"pipe-1 reach 2": {"length": 5.0, "fall": 10 - 10.05, "slope": (10 - 10.05) / 5},
		}},
		"level": {`"kind": "drain pipe", "path": [[0, 0], [3, 4]], "inverts": ["10 m", "10 m"]`, map[string]map[string]any{
			"pipe-1": {"fall": 0.0, "slope": 0.0},
		}},
		// Common practice, no source: a quarter of an inch in a foot is 2.08 %.
		"a quarter inch in a foot": {`"kind": "drain pipe", "path": [[0, 0], [3.048, 0]], "inverts": ["100 ft 2 1/2 in", "100 ft"]`, map[string]map[string]any{
			"pipe-1": {"length": 3.048, "fall": 2.5 * 0.0254, "slope": 0.25 / 12},
		}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, piping(tt.pipe))
			require.Len(t, f.List("reaches"), len(tt.want))
			for reach, want := range tt.want {
				requireKnown(t, f, "reaches", reach, want)
			}
		})
	}
}

func TestReachesWithoutInverts(t *testing.T) {
	f := compute(t, piping(`"kind": "drain pipe", "path": [[0, 0], [1, 1], [2, 2]]`))
	requireKnown(t, f, "reaches", "pipe-1", map[string]any{"length": 2 * math.Sqrt2})
	requireLacks(t, f, "reaches", "pipe-1", "fall", "/parts/0/inverts")
	requireLacks(t, f, "reaches", "pipe-1", "slope", "/parts/0/inverts")
}
