package treatment

import (
	"slices"
	"strings"
	"unicode"
)

// SpreadingSource says who calls the plants of SpreadingPlants invasive, and
// where.
const SpreadingSource = "NRCS and EPA, Handbook of Constructed Wetlands (Davis, 1995), table of emergent plants, in North America: " +
	"of common reed; of reed canary grass from memory"

// spreading has the plants of wet ground that take over where they are not
// native, with their botanical and their common names.
var spreading = []struct{ plant, genus, species, native, common string }{
	{"common reed", "phragmites", "", "americanus", "reed"},
	{"reed canary grass", "phalaris", "arundinacea", "", "reed canarygrass"},
}

// SpreadingPlants names the plants of wet ground that take over where they are
// not native. Source: SpreadingSource.
func SpreadingPlants() []string {
	names := make([]string, len(spreading))
	for i, s := range spreading {
		names[i] = s.plant
	}
	return names
}

// SpreadingPlant gives which of SpreadingPlants a plant is by its botanical or
// common name, as "Phragmites australis" or "common reed"; "" for any other. The
// American subspecies of the reed, Phragmites australis subsp. americanus, is
// another plant.
func SpreadingPlant(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) })
	name = strings.Join(words, " ")
	for _, s := range spreading {
		botanical := slices.Contains(words, s.genus) && (s.species == "" || slices.Contains(words, s.species))
		native := s.native != "" && slices.Contains(words, s.native)
		if name == s.plant || name == s.common || botanical && !native {
			return s.plant
		}
	}
	return ""
}
