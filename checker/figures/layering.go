package figures

import "greysill/checker/geometry"

// How a layer lies to the water level.
const (
	underWater = "under water"
	aboveWater = "above the water"
)

func (l *layer) washed() Value {
	if l.Layer.Washed == nil {
		return unknown(l.lacking("washed"))
	}
	return truth(*l.Layer.Washed, l.entry("washed"))
}

// lies compares the mean depth of dry media with the layers down to this one's
// top.
func (l *layer) lies() Value {
	dry, above := l.dryMedia(), l.above()
	inputs, lacks := gathered([]Value{dry, above, l.thickness()})
	switch {
	case len(lacks) > 0:
		return unknown(lacks...)
	case dry.Number >= above.Number+l.thickness().Number-geometry.Resolution:
		return text(aboveWater, inputs...)
	default:
		return text(underWater, inputs...)
	}
}

// dryMedia is the mean depth of media above the water level; negative where the
// water stands over them.
func (b *bed) dryMedia() Value {
	media, water := b.meanDepth(), b.waterDepth()
	return outOf(media.Number-water.Number, media, water)
}

func (l *layer) noFinerThanAbove() Value {
	if l.number == 0 {
		return truth(true)
	}
	upper := &layer{l.bed, &l.Media[l.number-1], l.number - 1}
	here, there := l.size(), upper.size()
	inputs, lacks := gathered([]Value{here, there})
	return orUnknown(truth(here.Number >= there.Number-geometry.Resolution, inputs...), lacks)
}
