package figures

import "greysill/checker/quantity"

var siteSoilTable = tabulate(
	List{Name: "soil", Doc: "The site's soil, where a mulch basin or infiltration trench is drawn.", Subject: "the soil"},
	(*drawing).soaked, func(*drawing) Subject { return Subject{Name: "the soil", Pointers: []string{soilPointer}} },
	[]column[*drawing]{
		{Field{Name: "texture", Kind: Text, Doc: "Its texture."}, (*drawing).texture},
		{Field{Name: "percolation", Kind: Number, Dimension: quantity.Percolation, Doc: "How long the water in the test hole takes to fall; the longer, the slower the soil."},
			(*drawing).percolation},
	},
)

// soaked gives the drawing where water is let into its soil.
func (d *drawing) soaked() []*drawing {
	if len(d.ofKind(mulchBasin, trench)) == 0 {
		return nil
	}
	return []*drawing{d}
}

func (d *drawing) texture() Value {
	if d.Site.Soil == nil || d.Site.Soil.Texture == "" {
		return unknown(soilEntry("texture"))
	}
	return text(d.Site.Soil.Texture, Input{Name: "texture", Pointer: soilPointer + "/texture"})
}

func (d *drawing) percolation() Value {
	if d.Site.Soil == nil || !d.Site.Soil.Percolation.Given() {
		return unknown(soilEntry("percolation"))
	}
	return number(d.Site.Soil.Percolation.Value, Input{Name: "percolation", Pointer: soilPointer + "/percolation"})
}
