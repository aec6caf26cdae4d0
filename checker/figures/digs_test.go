package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestDigs(t *testing.T) {
	tests := map[string]struct {
		part             string
		distance         float64
		meets, openWater bool
	}{
		"a bed three metres off":   {`"kind": "planted gravel bed", "outline": [[20, 28], [24, 28], [24, 31], [20, 31]]`, 20 - 17, false, false},
		"a bed over it":            {`"kind": "planted gravel bed", ` + outline, 0, true, false},
		"a pipe beside it":         {`"kind": "drain pipe", "path": [[17.5, 20], [17.5, 30]]`, 0.5, false, false},
		"a pipe across it":         {`"kind": "overflow pipe", "path": [[10, 25], [20, 25]]`, 0, true, false},
		"a pond":                   {`"kind": "pond", "outline": [[20, 28], [24, 28], [24, 31], [20, 31]]`, 20 - 17, false, true},
		"an open settling basin":   {`"kind": "settling basin", "covered": false, "outline": [[20, 28], [24, 28], [24, 31], [20, 31]]`, 20 - 17, false, true},
		"a covered one":            {`"kind": "settling basin", "covered": true, "outline": [[20, 28], [24, 28], [24, 31], [20, 31]]`, 20 - 17, false, false},
		"a trench by its width":    {`"kind": "infiltration trench", "path": [[20, 20], [20, 30]], "width": "1 m"`, 20 - 0.5 - 17, false, false},
		"a tank set in the ground": {`"kind": "surge tank", "outline": [[20, 28], [24, 28], [24, 31], [20, 31]]`, 20 - 17, false, false},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, served(`"kind": "gas"`).with(entries{"parts": `[{"id": "part-1", ` + tt.part + `}]`}))
			require.Equal(t, []string{"part-1 and line-1"}, subjects(f, "digs"))
			requireKnown(t, f, "digs", "part-1 and line-1", map[string]any{
				"part": "part-1", "service": "line-1", "service_kind": "gas", "distance": tt.distance, "meets": tt.meets, "open_water": tt.openWater,
			})
		})
	}
}

func TestDigsWithinTheTolerance(t *testing.T) {
	near := served(`"kind": "gas"`).with(entries{"parts": `[{"id": "part-1", "kind": "drain pipe", "path": [[17.1, 20], [17.1, 30]]}]`})
	require.Equal(t, false, known(t, compute(t, near), "digs", "part-1 and line-1", "meets"))
	near = near.with(entries{"tolerances": `{"distance": "0.1 m"}`})
	require.Equal(t, true, known(t, compute(t, near), "digs", "part-1 and line-1", "meets"))
}

// TestWhatIsNotDug: what stands on the ground, and what is no dig.
func TestWhatIsNotDug(t *testing.T) {
	f := compute(t, served(`"kind": "gas"`).with(entries{"parts": `[
		{"id": "tank-1", "kind": "surge tank", "above_ground": true, ` + outline + `},
		{"id": "diverter-1", "kind": "diverter", "at": [17, 25]}
	]`}))
	require.Empty(t, f.List("digs"))
}

func TestDigsWithoutEntries(t *testing.T) {
	f := compute(t, served(`"kind": "gas"`).with(entries{"parts": `[
		{"id": "tank-1", "kind": "surge tank", "at": [20, 20]},
		{"id": "basin-1", "kind": "settling basin", ` + outline + `}
	]`}))
	requireLacks(t, f, "digs", "tank-1 and line-1", "distance", "/parts/0/outline")
	requireLacks(t, f, "digs", "tank-1 and line-1", "meets", "/parts/0/outline")
	requireLacks(t, f, "digs", "basin-1 and line-1", "open_water", "/parts/1/covered")
}
