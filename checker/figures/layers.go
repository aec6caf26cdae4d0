package figures

import (
	"fmt"
	"math"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var layerTable = tabulate(
	List{Name: "layers", Doc: "Every layer of the media of every planted gravel bed, from the top down.", Subject: "a layer of media"},
	(*drawing).layers, (*layer).subject,
	[]column[*layer]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(l *layer) Value { return text(l.ID) }},
		{Field{Name: "material", Kind: Text, Doc: "What it is."}, func(l *layer) Value { return text(l.Material, l.entry("material")) }},
		{Field{Name: "size", Kind: Number, Dimension: quantity.GrainSize, Doc: "Typical size of its stones or grains."}, (*layer).size},
		{Field{Name: "thickness", Kind: Number, Dimension: quantity.Length,
			Doc:     "Thickness as drawn; of the lowest layer, where none is drawn, what the layers above it leave of the mean depth of media.",
			Formula: "as drawn, else mean depth of media − Σ thickness of the layers above"}, (*layer).thickness},
		{Field{Name: "washed", Kind: Truth, Doc: "Whether the fines were washed out of it."}, (*layer).washed},
		{Field{Name: "lies", Kind: Text, Words: []string{underWater, aboveWater}, Doc: "Whether any of it lies below the water level, in the mean section of the bed."}, (*layer).lies},
		{Field{Name: "no_finer_than_above", Kind: Truth, Doc: "Whether its stones are no smaller than those of the layer above it; true of the top layer."}, (*layer).noFinerThanAbove},
		{Field{Name: "volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume over the bed, stones and the pores between them.",
			Formula: "area of the bed × thickness"}, (*layer).volume},
		{Field{Name: "least_porosity", Kind: Number, Dimension: quantity.Share,
			Doc:     "Least porosity: as drawn, else the least that a table of media gives for the sizes next to its own.",
			Formula: tableFormula, Source: mediaTables}, func(l *layer) Value { return l.porosity().least }},
		{Field{Name: "greatest_porosity", Kind: Number, Dimension: quantity.Share,
			Doc:     "Greatest porosity: as drawn, else the greatest that a table of media gives for the sizes next to its own.",
			Formula: tableFormula, Source: mediaTables}, func(l *layer) Value { return l.porosity().greatest }},
		{Field{Name: "porosity_source", Kind: Text, Doc: "Whether the porosity is drawn, else which table gives it."},
			func(l *layer) Value { return l.porosity().source }},
		{Field{Name: "least_pore_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Volume of its pores by the least porosity.",
			Formula: "volume × porosity"}, func(l *layer) Value { return l.poreVolume(l.porosity().least) }},
		{Field{Name: "greatest_pore_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Volume of its pores by the greatest porosity.",
			Formula: "volume × porosity"}, func(l *layer) Value { return l.poreVolume(l.porosity().greatest) }},
		{Field{Name: "least_conductivity", Kind: Number, Dimension: quantity.Conductivity,
			Doc:     "Least clean hydraulic conductivity: as drawn, else the least that a table of media gives for the sizes next to its own.",
			Formula: tableFormula, Source: mediaTables}, func(l *layer) Value { return l.conductivity().least }},
		{Field{Name: "greatest_conductivity", Kind: Number, Dimension: quantity.Conductivity,
			Doc:     "Greatest clean hydraulic conductivity: as drawn, else the greatest that a table of media gives for the sizes next to its own.",
			Formula: tableFormula, Source: mediaTables}, func(l *layer) Value { return l.conductivity().greatest }},
		{Field{Name: "conductivity_source", Kind: Text, Doc: "Whether the conductivity is drawn, else which table gives it."},
			func(l *layer) Value { return l.conductivity().source }},
	},
)

const tableFormula = "as drawn, else from the rows of the tables whose size is next below and next above the layer's"

var mediaTables = Citation{Title: "Tables of bed media; the source of each value is named beside it", Standing: FromMemory}

// layer is one layer of a bed's media.
type layer struct {
	*bed
	*design.Layer
	number int // in the order of the document, from 0
}

func (d *drawing) layers() []*layer {
	var all []*layer
	for _, b := range d.beds() {
		all = append(all, b.layers()...)
	}
	return all
}

func (b *bed) layers() []*layer {
	all := make([]*layer, len(b.Media))
	for i := range b.Media {
		all[i] = &layer{b, &b.Media[i], i}
	}
	return all
}

func (l *layer) name() string { return fmt.Sprintf("layer %d of %s", l.number+1, l.ID) }

func (l *layer) subject() Subject {
	return Subject{fmt.Sprintf("%s layer %d", l.ID, l.number+1), []string{l.ID}, []string{l.bed.Pointer}}
}

func (l *layer) pointer(entry string) string {
	return member(l.bed.Pointer+"/media", l.number) + "/" + entry
}

// entry names an entry of the layer as an input.
func (l *layer) entry(entry string) Input {
	return Input{Name: fmt.Sprintf("%s of layer %d", entry, l.number+1), Pointer: l.pointer(entry)}
}

// lacking names an entry that the layer does not have.
func (l *layer) lacking(entry string) Lack {
	return Lack{l.pointer(entry), entry + " of " + l.name()}
}

// read gives an entry of the layer as a figure.
func (l *layer) read(entry string, q quantity.Quantity) Value {
	if !q.Given() {
		return unknown(l.lacking(entry))
	}
	return number(q.Value, l.entry(entry))
}

func (l *layer) size() Value { return l.read("size", l.Size) }

func (l *layer) thickness() Value {
	if l.Layer.Thickness.Given() || l.number < len(l.Media)-1 {
		return l.read("thickness", l.Layer.Thickness)
	}
	above := l.above()
	inputs, lacks := gathered([]Value{l.meanDepth(), above})
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	left := l.mean - above.Number
	if left <= geometry.Resolution {
		return unknown(Lack{l.pointer("thickness"), "thickness of " + l.name() + ", since the layers above it leave none of the depth"})
	}
	return number(left, inputs...)
}

func (b *bed) layersThickness() Value {
	layers := b.layers()
	if len(layers) == 0 {
		return unknown(b.lack("media"))
	}
	thick := make([]Value, len(layers))
	for i, l := range layers {
		thick[i] = l.thickness()
	}
	return sum(thick...)
}

func (b *bed) layersFill() Value {
	thick, depth := b.layersThickness(), b.meanDepth()
	known := outOf(thick.Number-depth.Number, thick, depth)
	return orUnknown(truth(math.Abs(known.Number) <= b.drawing.levelTolerance(), known.Inputs...), known.Lacks)
}

// above is the thickness of all layers above.
func (l *layer) above() Value {
	thick := make([]Value, l.number)
	sum := 0.0
	for i, upper := range l.layers()[:l.number] {
		thick[i] = upper.read("thickness", upper.Layer.Thickness)
		sum += thick[i].Number
	}
	inputs, lacks := gathered(thick)
	return orUnknown(number(sum, inputs...), lacks)
}

func (l *layer) volume() Value {
	thickness, area := l.thickness(), l.bed.area()
	return worked(l.lacking("thickness"), func() (float64, error) { return area.Number * thickness.Number, nil }, area, thickness)
}

func (l *layer) poreVolume(porosity Value) Value {
	volume := l.volume()
	return worked(l.lacking("porosity"), func() (float64, error) {
		return treatment.PoreVolume(treatment.Pores{Volume: volume.Number, Porosity: porosity.Number})
	}, volume, porosity)
}

func (l *layer) porosity() estimate {
	if l.Layer.Porosity.Given() {
		return asDrawn(l.read("porosity", l.Layer.Porosity))
	}
	return l.fromTable("porosity", func(m *hydraulics.Medium) hydraulics.Span { return m.Porosity })
}

func (l *layer) conductivity() estimate {
	if l.Layer.Conductivity.Given() {
		return asDrawn(l.read("conductivity", l.Layer.Conductivity))
	}
	return l.fromTable("conductivity", func(m *hydraulics.Medium) hydraulics.Span { return m.Conductivity })
}
