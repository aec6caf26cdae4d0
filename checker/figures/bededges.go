package figures

import (
	"slices"
	"strings"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// edgeColumns are the figures of what closes a bed off: its surface and what lies
// on it, its rim and its liner.
var edgeColumns = []column[*bed]{
	{Field{Name: "surface_range", Kind: Number, Dimension: quantity.Length, Doc: "How far the surface of the media is from level.",
		Formula: "highest − lowest level of the surface"}, (*bed).surfaceRange},
	{Field{Name: "freeboard", Kind: Number, Dimension: quantity.Length, Doc: "Height of the rim over the water level; negative where the water would stand over it.",
		Formula: "rim level − water level"}, func(b *bed) Value { return b.freeboard() }},
	{Field{Name: "storm_rise_share", Kind: Number, Dimension: quantity.Share,
		Doc:     "How much of the dry gravel over the water in ordinary flow the design storm takes up; above 100 % the water comes up through the gravel.",
		Formula: "(surface in the storm − surface in ordinary flow, of water_levels) ÷ (lowest level of the media's surface − water level)"}, (*bed).stormRiseShare},
	{Field{Name: "rim_above_surface", Kind: Truth, Doc: "Whether the rim stands nowhere lower than the surface of the media."}, (*bed).rimAboveSurface},
	{Field{Name: "mulch", Kind: Number, Dimension: quantity.Length, Doc: "Depth of mulch over the media."}, (*bed).mulch},
	{Field{Name: "runs_in_frost", Kind: Truth, Doc: "Whether the bypass season leaves any part of a freezing month open."}, (*bed).runsInFrost},
	{Field{Name: "liner_material", Kind: Text, Doc: "What its liner is made of."}, (*bed).linerMaterial},
	{Field{Name: "liner_thickness", Kind: Number, Dimension: quantity.Length, Doc: "Thickness of its liner."}, (*bed).linerThickness},
	{Field{Name: "liner_overlap", Kind: Number, Dimension: quantity.Length, Doc: "How far its liner is drawn to reach beyond the edge, to be anchored."}, (*bed).linerOverlap},
	{Field{Name: "liner_holes_drawn", Kind: Truth,
		Doc: "Whether the drawing says what goes through its liner and how each hole is sealed; false where it says that nothing does, since water leaves a bed below its rim."},
		(*bed).linerHolesDrawn},
}

func (b *bed) surfaceRange() Value {
	if len(b.surface.lacks) > 0 {
		return unknown(b.surface.lacks...)
	}
	return number(slices.Max(b.surface.at)-slices.Min(b.surface.at), b.surface.input)
}

func (b *bed) stormRiseShare() Value {
	water := b.drawing.surfaces().of[b.node]
	below := b.dryGravelLeast()
	return outOf((water.storm.Number-water.dry.Number)/below.Number, water.storm, water.dry, below)
}

func (b *bed) rimAboveSurface() Value {
	rim := b.entry("rim_level", b.RimLevel)
	_, lacks := gathered([]Value{rim, {Lacks: b.surface.lacks}})
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	return truth(rim.Number >= slices.Max(b.surface.at)-geometry.Resolution, append(rim.Inputs, b.surface.input)...)
}

func (b *bed) runsInFrost() Value {
	return b.drawing.ofFreezing(func(months []int) Value {
		return truth(len(leftOpen(months, b.drawing.season())) > 0)
	})
}

// linerEntry names an entry of the liner as an input.
func (b *bed) linerEntry(entry string) Input {
	return Input{Name: "liner's " + entry, Pointer: b.Pointer + "/liner/" + entry}
}

// lackOfLiner names an entry that the liner does not have.
func (b *bed) lackOfLiner(entry string) Value {
	return unknown(Lack{b.Pointer + "/liner/" + entry, entry + " of the liner of " + b.ID})
}

func (b *bed) linerMaterial() Value {
	if b.Liner == nil || strings.TrimSpace(b.Liner.Material) == "" {
		return b.lackOfLiner("material")
	}
	return text(b.Liner.Material, b.linerEntry("material"))
}

func (b *bed) linerThickness() Value {
	if b.Liner == nil || !b.Liner.Thickness.Given() {
		return b.lackOfLiner("thickness")
	}
	return number(b.Liner.Thickness.Value, b.linerEntry("thickness"))
}

func (b *bed) linerOverlap() Value {
	if b.Liner == nil || !b.Liner.Overlap.Given() {
		return b.lackOfLiner("overlap")
	}
	return number(b.Liner.Overlap.Value, b.linerEntry("overlap"))
}

func (b *bed) linerHolesDrawn() Value {
	if b.Liner == nil || b.Liner.Penetrations == nil {
		return b.lackOfLiner("penetrations")
	}
	return truth(len(b.Liner.Penetrations) > 0, b.linerEntry("penetrations"))
}
