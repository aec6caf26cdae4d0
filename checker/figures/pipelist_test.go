package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// laid is a pipe that leads somewhere, with features.
func listedPipe(pipe, features string) entries {
	return entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"features": [` + features + `]}`,
		"sources": `[{"id": "shower-1", "kind": "shower", "to": "pipe-1"}]`,
		"parts": `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]], "inverts": ["9.6 m", "9.3 m"], "diameter": "100 mm", ` + pipe + `},
			{"id": "sewer-1", "kind": "sewer connection", "at": [20, 10]},
			{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 12]]}]`,
	}
}

func TestPipes(t *testing.T) {
	f := compute(t, listedPipe(`"marked": true, "cased": false, "to": "basin-1"`, ""))
	requireKnown(t, f, "pipes", "pipe-1", map[string]any{
		"kind": "drain pipe", "diameter": 0.1, "marked": true, "cased": false, "leads_to_train": true, "under_driveway": false,
	})
	require.Equal(t, false, known(t, compute(t, listedPipe(`"to": "sewer-1"`, "")), "pipes", "pipe-1", "leads_to_train"))
}

func TestPipesUnderDriveways(t *testing.T) {
	drive := `{"id": "drive", "kind": "driveway", "outline": [[14, 5], [16, 5], [16, 15], [14, 15]]}`
	beside := `{"id": "drive", "kind": "driveway", "outline": [[14, 11], [16, 11], [16, 15], [14, 15]]}`
	require.Equal(t, true, known(t, compute(t, listedPipe(`"to": "sewer-1"`, beside+","+strings.Replace(drive, "drive", "yard", 1))), "pipes", "pipe-1", "under_driveway"))
	require.Equal(t, false, known(t, compute(t, listedPipe(`"to": "sewer-1"`, beside)), "pipes", "pipe-1", "under_driveway"))
}

func TestPipesWithoutEntries(t *testing.T) {
	f := compute(t, entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "features": [
			{"id": "drive", "kind": "driveway", "path": [[0, 0], [9, 9]]}]}`,
		"sources": `[{"id": "shower-1", "kind": "shower"}]`,
		"parts":   `[{"id": "pipe-1", "kind": "drain pipe", "path": [[10, 10], [20, 10]]}]`,
	})
	requireLacks(t, f, "pipes", "pipe-1", "marked", "/parts/0/marked")
	requireLacks(t, f, "pipes", "pipe-1", "cased", "/parts/0/cased")
	requireLacks(t, f, "pipes", "pipe-1", "diameter", "/parts/0/diameter")
	requireLacks(t, f, "pipes", "pipe-1", "leads_to_train", "/parts/0/to")
	requireLacks(t, f, "pipes", "pipe-1", "under_driveway", "/site/features/0/outline")
}
