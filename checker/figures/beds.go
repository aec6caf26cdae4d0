package figures

import (
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var bedTable = tabulate(
	List{Name: "beds", Doc: "Every planted gravel bed.", Subject: "a planted gravel bed"},
	(*drawing).beds, (*bed).subject,
	slices.Concat([]column[*bed]{
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area in plan.",
			Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"}, func(b *bed) Value { return b.area() }},
		{Field{Name: "least_depth", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least depth of media over the outline. The media fill from the floor to the surface drawn, else to the ground at the edge.",
			Formula: depthFormula}, (*bed).leastDepth},
		{Field{Name: "least_depth_at", Kind: Text, Doc: "Where it is least."}, (*bed).leastDepthAt},
		{Field{Name: "greatest_depth", Kind: Number, Dimension: quantity.Length,
			Doc:     "Greatest depth of media over the outline.",
			Formula: depthFormula}, (*bed).greatestDepth},
		{Field{Name: "greatest_depth_at", Kind: Text, Doc: "Where it is greatest."}, (*bed).greatestDepthAt},
		{Field{Name: "mean_depth", Kind: Number, Dimension: quantity.Length, Doc: "Mean depth of media.",
			Formula: "volume ÷ area", Source: gridMethod}, (*bed).meanDepth},
		{Field{Name: "media_volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume of media, stones and the pores between them.",
			Formula: "depth, linear over each triangle that the outline is cut into, times the triangle's area; for four corners the mean of both ways to cut them, " +
				"which over a rectangle is the mean of its corners",
			Source: gridMethod}, (*bed).volume},
		{Field{Name: "floor_range", Kind: Number, Dimension: quantity.Length, Doc: "How far the floor is from level.",
			Formula: "highest − lowest floor level"}, (*bed).floorRange},
		{Field{Name: "water_below_surface", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of the water below the lowest point of the gravel's surface; negative where water stands in the open.",
			Formula: "lowest level of the media's surface − the higher of the water level and the level of its outlet, where that is drawn"}, (*bed).waterBelowSurface},
		{Field{Name: "water_below_highest", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of the water level below the highest point of the gravel's surface.",
			Formula: "highest level of the media's surface − water level"}, (*bed).waterBelowHighest},
		{Field{Name: "layers_fill", Kind: Truth,
			Doc:     "Whether the layers of media drawn fill the mean depth, as far as the drawing's tolerance of levels tells. A lowest layer without a thickness takes what the layers above it leave.",
			Formula: "Σ thickness of the layers = mean depth of media"}, (*bed).layersFill},
		{Field{Name: "layers_thickness", Kind: Number, Dimension: quantity.Length, Doc: "Thickness of all layers of media together.",
			Formula: "Σ thickness of the layers"}, (*bed).layersThickness},
		{Field{Name: "storm_water_below_surface", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of the water in the design storm below the lowest point of the gravel's surface; negative where it stands in the open.",
			Formula: "lowest level of the media's surface − storm_surface of water_levels"}, (*bed).stormBelowSurface},
		{Field{Name: "inlet_inside", Kind: Truth,
			Doc: "Whether the whole inlet header lies within the bed's outline; touching it from inside is inside."}, (*bed).inletInside},
	}, fittingColumns, edgeColumns, rootColumns, settledColumns),
)

const depthFormula = "surface − floor at each corner, and wherever the ground bends along an edge when the surface is the ground between spot levels; " +
	"both are straight in between"

var gridMethod = Citation{Title: "The grid method of earthworks", Standing: Practice}

func (d *drawing) newBeds() []*bed {
	var all []*bed
	for _, p := range d.ofKind(plantedBed) {
		all = append(all, newBed(p))
	}
	return all
}

// ofDepth gives a figure of the depths round the bed.
func (b *bed) ofDepth(figure func() Value) Value {
	if len(b.lacks) > 0 {
		return unknown(b.lacks...)
	}
	v := figure()
	v.Inputs = []Input{b.surface.input, b.floor.input}
	return v
}

func (b *bed) leastDepth() Value {
	return b.ofDepth(func() Value { return number(b.least) })
}

func (b *bed) leastDepthAt() Value { return b.ofDepth(func() Value { return text(b.where(b.least)) }) }

func (b *bed) greatestDepth() Value {
	return b.ofDepth(func() Value { return number(b.greatest) })
}

func (b *bed) greatestDepthAt() Value {
	return b.ofDepth(func() Value { return text(b.where(b.greatest)) })
}

func (b *bed) meanDepth() Value { return b.ofDepth(func() Value { return number(b.mean) }) }

func (b *bed) volume() Value {
	return b.ofDepth(func() Value { return number(b.mean * b.shape.Area()) })
}

func (b *bed) floorRange() Value {
	if len(b.floor.lacks) > 0 {
		return unknown(b.floor.lacks...)
	}
	return number(slices.Max(b.floor.at)-slices.Min(b.floor.at), b.floor.input)
}

func (b *bed) inletInside() Value {
	if b.Inlet == nil || len(b.Inlet.Path) == 0 {
		return unknown(Lack{b.Pointer + "/inlet/path", "path of the inlet of " + b.ID})
	}
	if len(b.Outline) == 0 {
		return unknown(b.lack("outline"))
	}
	header := b.header()
	return truth(header.inside(b.shape), header.drawn, b.drawn("outline"))
}

// dryGravelLeast is the depth of the water below the lowest point of the gravel's
// surface, where it lies below it.
func (b *bed) dryGravelLeast() Value {
	below := b.waterBelowSurface()
	if below.Known() && below.Number <= geometry.Resolution {
		return unknown(Lack{b.Pointer + "/water_level", "water_level of " + b.ID + " below the surface of its gravel"})
	}
	return below
}

func (b *bed) waterBelowSurface() Value {
	lacks := b.surface.lacks
	if !b.WaterLevel.Given() {
		lacks = append(lacks[:len(lacks):len(lacks)], b.lack("water_level"))
	}
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	standing, drawn := b.standing()
	return number(slices.Min(b.surface.at)-standing, append(drawn, b.surface.input)...)
}

func (b *bed) waterBelowHighest() Value {
	below := b.waterBelowSurface()
	if !below.Known() {
		return below
	}
	return number(slices.Max(b.surface.at)-b.WaterLevel.Value, b.surface.input, b.drawn("water_level"))
}

// standing is the level at which the water stands: that of its outlet where that is
// drawn higher than the water. The water level has to be known.
func (b *bed) standing() (level float64, drawn []Input) {
	level, drawn = b.WaterLevel.Value, []Input{b.drawn("water_level")}
	if held := b.heldBy(); held.Known() && held.Number > level+geometry.Resolution {
		return held.Number, held.Inputs
	}
	return level, drawn
}

func (b *bed) stormBelowSurface() Value {
	storm := b.drawing.surfaces().of[b.node].storm
	surface := Value{Lacks: b.surface.lacks}
	if surface.Known() {
		surface = number(slices.Min(b.surface.at), b.surface.input)
	}
	return outOf(surface.Number-storm.Number, surface, storm)
}
