package dispersal

import "slices"

// Textures lists the soil textures that a table by texture can be asked for, from
// coarse to fine: those of the USDA, and gravel.
var Textures = []string{
	"gravel", "coarse sand", "sand", "fine sand", "loamy sand", "sandy loam", "loam", "silt loam", "silt",
	"sandy clay loam", "clay loam", "silty clay loam", "sandy clay", "silty clay", "clay",
}

// TextureTable gives loading rates by soil as one code names it.
type TextureTable struct {
	Name     string // "Utah, trench"
	Source   string // document, clause, table
	Standing string // of the rates: "published" or "from memory"
	Matched  string // how the code's words were matched with textures
	Rows     []Row  // from coarse to fine
}

// Row is one soil of a table.
type Row struct {
	Soil     string   // as the table words it
	Rate     float64  // loading rate
	Textures []string // that it is for
}

// Rate gives the row for a texture. A texture that no row is for, between two that
// have one, takes the row with the lesser rate, inferred=true; one coarser than any
// takes the coarsest row, inferred as well. ok is false for one that is finer than
// any row, and for a word that is not in Textures.
func (t *TextureTable) Rate(texture string) (row Row, inferred, ok bool) {
	at := slices.Index(Textures, texture)
	if at < 0 {
		return Row{}, false, false
	}
	if row, ok := t.rowFor(texture); ok {
		return row, false, true
	}
	finer, ok := t.first(Textures[at+1:])
	if !ok {
		return Row{}, false, false
	}
	coarser := slices.Clone(Textures[:at])
	slices.Reverse(coarser)
	if row, ok := t.first(coarser); ok && row.Rate < finer.Rate {
		return row, true, true
	}
	return finer, true, true
}

// first gives the row of the first of the textures that has one.
func (t *TextureTable) first(textures []string) (Row, bool) {
	for _, texture := range textures {
		if row, ok := t.rowFor(texture); ok {
			return row, true
		}
	}
	return Row{}, false
}

func (t *TextureTable) rowFor(texture string) (Row, bool) {
	i := slices.IndexFunc(t.Rows, func(r Row) bool { return slices.Contains(r.Textures, texture) })
	if i < 0 {
		return Row{}, false
	}
	return t.Rows[i], true
}
