package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// laid is a pipe under level ground at 10 m, in a place whose winter freezes 0.5 m
// deep.
func laid(pipe, features string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"levels": [[0, 0, 10], [60, 0, 10], [60, 40, 10], [0, 40, 10]],
			"climate": {"frost_depth": "0.5 m", "freezing_months": ["jan"]}, "features": [` + features + `]}`,
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "pipe-1"}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "inverts": ["9.6 m", "9.3 m"], "diameter": "100 mm", ` + pipe + `},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 10]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]}]`,
	}
}

func TestPipes(t *testing.T) {
	f := compute(t, laid(`"marked": true, "cased": false, "to": "basin-1"`, ""))
	requireKnown(t, f, "pipes", "pipe-1", map[string]any{
		"kind": "drain pipe", "diameter": 0.1, "marked": true, "cased": false, "leads_to_train": true, "indoors": false, "under_driveway": false,
		"runs_in_winter": true, "least_cover": 10 - (9.6 + 0.1), "cover_below_frost": 10 - (9.6 + 0.1) - 0.5,
	})
	f = compute(t, laid(`"insulation": "25 mm", "to": "sewer-1"`, ""))
	requireKnown(t, f, "pipes", "pipe-1", map[string]any{"leads_to_train": false, "cover_below_frost": 0.3 + 12*0.025 - 0.5})
}

func TestPipesUnderThings(t *testing.T) {
	house := `{"id": "house", "kind": "building", "outline": [[5, 5], [25, 5], [25, 15], [5, 15]]}`
	porch := `{"id": "porch", "kind": "building", "outline": [[5, 5], [15, 5], [15, 15], [5, 15]]}`
	drive := `{"id": "drive", "kind": "driveway", "outline": [[14, 5], [16, 5], [16, 15], [14, 15]]}`
	requireKnown(t, compute(t, laid(`"to": "sewer-1"`, house+","+drive)), "pipes", "pipe-1", map[string]any{"indoors": true, "under_driveway": true})
	requireKnown(t, compute(t, laid(`"to": "sewer-1"`, porch)), "pipes", "pipe-1", map[string]any{"indoors": false, "under_driveway": false})
}

// TestPipesThatRestInWinter: turned off by a diverter, or where nothing freezes.
func TestPipesThatRestInWinter(t *testing.T) {
	turned := laid(`"to": "basin-1"`, "").with(entries{
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "diverter-1"}]`,
		"parts": `[{"id": "diverter-1", "kind": "diverter", "at": [10, 10], "to": "pipe-1", "bypass_to": "pipe-2"},
			{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "to": "basin-1"},
			{"id": "pipe-2", "kind": "drain pipe", "path": [[10, 10], [20, 20]], "to": "sewer-1"},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 20]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]}]`,
	})
	f := compute(t, turned)
	require.Equal(t, false, known(t, f, "pipes", "pipe-1", "runs_in_winter"))
	require.Equal(t, true, known(t, f, "pipes", "pipe-2", "runs_in_winter"))
	mild := turned.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "climate": {"freezing_months": []}}`})
	require.Equal(t, false, known(t, compute(t, mild), "pipes", "pipe-2", "runs_in_winter"))
}

func TestPipesWithoutEntries(t *testing.T) {
	f := compute(t, entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [
			{"id": "house", "kind": "building", "at": [5, 5]}, {"id": "drive", "kind": "driveway", "path": [[0, 0], [9, 9]]}]}`,
		"sources": `[{"id": "shower-1", "kind": "shower"}]`,
		"parts":   `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]]}]`,
	})
	requireLacks(t, f, "pipes", "pipe-1", "marked", "/parts/0/marked")
	requireLacks(t, f, "pipes", "pipe-1", "cased", "/parts/0/cased")
	requireLacks(t, f, "pipes", "pipe-1", "diameter", "/parts/0/diameter")
	requireLacks(t, f, "pipes", "pipe-1", "leads_to_train", "/parts/0/to")
	requireLacks(t, f, "pipes", "pipe-1", "indoors", "/site/features/0/outline")
	requireLacks(t, f, "pipes", "pipe-1", "under_driveway", "/site/features/1/outline")
	requireLacks(t, f, "pipes", "pipe-1", "runs_in_winter", "/site/climate/freezing_months")
	requireLacks(t, f, "pipes", "pipe-1", "least_cover", "/parts/0/inverts", "/parts/0/diameter", "/site/levels")
	requireLacks(t, f, "pipes", "pipe-1", "cover_below_frost", "/parts/0/inverts", "/parts/0/diameter", "/site/levels", "/site/climate/frost_depth")
	cold := compute(t, laid("", "").with(entries{
		"sources": `[{"id": "shower-1", "kind": "shower"}]`,
		"parts":   `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]]}]`,
	}))
	requireLacks(t, cold, "pipes", "pipe-1", "runs_in_winter", "/sources/0/to")
}
