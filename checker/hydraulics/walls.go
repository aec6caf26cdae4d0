package hydraulics

import (
	"slices"
	"strings"
	"unicode"
)

// walls has the kind of pipe wall that words of a material mean; the first of
// which all words are there.
var walls = []struct {
	words []string
	wall  *Roughness
}{
	{[]string{"corrugated", "metal"}, &CorrugatedPipe},
	{[]string{"corrugated", "steel"}, &CorrugatedPipe},
	{[]string{"corrugated"}, &CorrugatedPlastic},
	{[]string{"clay"}, &VitrifiedClayPipe},
	{[]string{"concrete"}, &OldDrain},
	{[]string{"upvc"}, &UPVCPipe},
	{[]string{"pvc"}, &PlasticPipe},
	{[]string{"abs"}, &PlasticPipe},
	{[]string{"polyethylene"}, &PlasticPipe},
	{[]string{"hdpe"}, &PlasticPipe},
	{[]string{"polypropylene"}, &PlasticPipe},
	{[]string{"plastic"}, &PlasticPipe},
}

// WallOf reads a material as it is written on a drawing ("Schedule 40 PVC") as a
// kind of wall; false where no table here has it. Our reading; common practice,
// no source.
func WallOf(material string) (Roughness, bool) {
	words := strings.FieldsFunc(strings.ToLower(material), func(r rune) bool { return !unicode.IsLetter(r) })
	for _, w := range walls {
		if !slices.ContainsFunc(w.words, func(word string) bool { return !slices.Contains(words, word) }) {
			return *w.wall, true
		}
	}
	return Roughness{}, false
}
