package treatment_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/treatment"
)

// The botanical names are those of the Handbook of Constructed Wetlands (Davis,
// 1995), table of emergent plants; that the American subspecies of the reed is
// native in North America is common practice, no source.
func TestSpreadingPlant(t *testing.T) {
	for name, want := range map[string]string{
		"Phragmites australis":                   "common reed",
		" phragmites  AUSTRALIS ":                "common reed",
		"Phragmites":                             "common reed",
		"Phragmites australis subsp. americanus": "",
		"common reed":                            "common reed",
		"Common reed (Phragmites australis)":     "common reed",
		"native reed (P. a. subsp. americanus)":  "",
		"Reed":                                   "common reed",
		"bur reed":                               "",
		"Phalaris arundinacea":                   "reed canary grass",
		"Phalaris aquatica":                      "",
		"reed canary grass":                      "reed canary grass",
		"Reed canarygrass":                       "reed canary grass",
		"Juncus effusus":                         "",
		"":                                       "",
	} {
		require.Equal(t, want, treatment.SpreadingPlant(name), name)
	}
	require.Equal(t, []string{"common reed", "reed canary grass"}, treatment.SpreadingPlants())
}
