package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// plumbed is a shower that leads into part-1 twice and into a basin, which has no level.
func plumbed(level, part string) entries {
	return entries{
		"sources": `[{"id": "shower-1", "kind": "shower"` + level + `, "to": [{"target": "part-1"}, {"target": "basin-1"}, {"target": "part-1"}]},
			{"id": "toilet-1", "kind": "toilet", "to": "sewer-1"}]`,
		"parts": `[{"id": "part-1", ` + part + `}, {"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]},
			{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`,
	}
}

func TestFixtureFalls(t *testing.T) {
	const level = `, "level": "10 m"`
	tests := map[string]struct {
		part  string
		drop  float64
		falls bool
	}{
		"onto a diverter":        {`"kind": "diverter", "at": [1, 1], "level": "9.6 m"`, 10 - 9.6, true},
		"level with it":          {`"kind": "diverter", "at": [1, 1], "level": "10 m"`, 0, true},
		"up to a diverter":       {`"kind": "diverter", "at": [1, 1], "level": "10.3 m"`, 10 - 10.3, false},
		"onto a pipe's end":      {`"kind": "drain pipe", "path": [[1, 1], [2, 1]], "inverts": ["10.2 m", "9.7 m"]`, 10 - 9.7, true},
		"up to a pipe":           {`"kind": "drain pipe", "path": [[1, 1], [2, 1]], "inverts": ["10.2 m", "10.1 m"]`, 10 - 10.1, false},
		"into a tank's inlet":    {`"kind": "surge tank", "at": [1, 1], "inlet_level": "9.9 m"`, 10 - 9.9, true},
		"into a bed's header":    {`"kind": "planted gravel bed", "inlet": {"level": "9.5 m"}, ` + plot, 10 - 9.5, true},
		"down to the connection": {`"kind": "sewer connection", "at": [1, 1], "level": "9 m"`, 1, true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, plumbed(level, tt.part))
			require.Equal(t, []string{"shower-1 to part-1"}, subjects(f, "fixture_falls"))
			requireKnown(t, f, "fixture_falls", "shower-1 to part-1", map[string]any{"fixture": "shower-1", "next": "part-1", "drop": tt.drop, "falls": tt.falls})
		})
	}
}

func TestFixtureFallsLack(t *testing.T) {
	f := compute(t, plumbed("", `"kind": "drain pipe", "path": [[1, 1], [2, 1]]`))
	requireLacks(t, f, "fixture_falls", "shower-1 to part-1", "drop", "/sources/0/level", "/parts/0/inverts")
	requireLacks(t, f, "fixture_falls", "shower-1 to part-1", "falls", "/sources/0/level", "/parts/0/inverts")
}
