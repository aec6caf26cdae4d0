package figures

import (
	"slices"
	"strings"
	"unicode"

	"greysill/checker/hydraulics"
)

// walls has the kind of pipe wall that words of a material mean; the first of
// which all words are there.
var walls = []struct {
	words []string
	wall  *hydraulics.Roughness
}{
	{[]string{"corrugated", "metal"}, &hydraulics.CorrugatedPipe},
	{[]string{"corrugated", "steel"}, &hydraulics.CorrugatedPipe},
	{[]string{"corrugated"}, &hydraulics.CorrugatedPlastic},
	{[]string{"clay"}, &hydraulics.VitrifiedClayPipe},
	{[]string{"concrete"}, &hydraulics.OldDrain},
	{[]string{"upvc"}, &hydraulics.UPVCPipe},
	{[]string{"pvc"}, &hydraulics.PlasticPipe},
	{[]string{"abs"}, &hydraulics.PlasticPipe},
	{[]string{"polyethylene"}, &hydraulics.PlasticPipe},
	{[]string{"hdpe"}, &hydraulics.PlasticPipe},
	{[]string{"polypropylene"}, &hydraulics.PlasticPipe},
	{[]string{"plastic"}, &hydraulics.PlasticPipe},
}

// wall gives the roughness of a pipe's wall, as drawn or by its material, and
// what it is known from.
func (p *part) wall() (hydraulics.Roughness, Value) {
	if p.Roughness > 0 {
		drawn := hydraulics.Roughness{Wall: "as drawn", Usual: p.Roughness, Range: hydraulics.Span{Low: p.Roughness, High: p.Roughness}}
		return drawn, Value{Inputs: []Input{p.drawn("roughness")}}
	}
	if p.Material == "" {
		return hydraulics.Roughness{}, unknown(p.lack("roughness"), p.lack("material"))
	}
	words := strings.FieldsFunc(strings.ToLower(p.Material), func(r rune) bool { return !unicode.IsLetter(r) })
	for _, w := range walls {
		if !slices.ContainsFunc(w.words, func(word string) bool { return !slices.Contains(words, word) }) {
			return *w.wall, Value{Inputs: []Input{p.drawn("material")}}
		}
	}
	return hydraulics.Roughness{}, unknown(Lack{p.Pointer + "/roughness", "roughness of " + p.ID + ", since no table here has its material"})
}
