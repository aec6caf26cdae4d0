package figures

import (
	"cmp"
	"slices"

	"greysill/checker/quantity"
)

var surgeTable = tabulate(
	List{Name: "surges", Subject: "a fixture that lets much water go at once",
		Doc: "Every clothes washer and bathtub, with the first part that holds its water in the warm season: a surge tank, bed, settling basin or pond, or mulch or an infiltration trench that takes it up. Filters hold nothing back."},
	(*drawing).surges, surge.subject,
	[]column[surge]{
		{Field{Name: "kind", Kind: Text, Doc: "The fixture's kind."}, func(s surge) Value { return text(s.Kind) }},
		{Field{Name: "surge_volume", Kind: Number, Dimension: quantity.Volume, Doc: "Water that comes at once: that of one use, as stated."},
			func(s surge) Value { return s.entry("volume_per_use", s.VolumePerUse) }},
		{Field{Name: "first_parts", Kind: Text, Doc: "The first parts that hold its water or take it up; \"none\" where none does."}, surge.firstParts},
		{Field{Name: "meets_holding", Kind: Truth, Doc: "Whether any of them is a tank, bed, basin or pond that has to hold it."}, surge.meetsHolding},
		{Field{Name: "room", Kind: Number, Dimension: quantity.Volume,
			Doc: "Room for water that comes at once in the one of them that it fills most: the pores of a bed's top layer above its water level; " +
				"of a tank, settling basin or pond what lies between its water level and its inlet.",
			Formula: "area × least porosity × depth of the water level below the surface; area × (inlet level − water level)"},
			func(s surge) Value { return s.fullest(func(room, share float64) float64 { return room }) }},
		{Field{Name: "share_of_room", Kind: Number, Dimension: quantity.Share, Doc: "The water of one use as a share of that room; of water that divides, what comes there.",
			Formula: "volume for each use × share of the way ÷ room"}, surge.shareOfRoom},
	},
)

// surge is a fixture that lets much water go at once.
type surge struct {
	fixture
	firsts []firstPart
	open   []Lack // where its water goes on before any of them in a way not drawn
}

// firstPart is a part that holds or takes up a share of the water first.
type firstPart struct {
	*part
	share float64
	room  Value
}

func (d *drawing) surges() []surge {
	var all []surge
	for _, f := range d.fixtures() {
		if f.Kind == "clothes washer" || f.Kind == "bathtub" {
			all = append(all, d.surgeOf(f))
		}
	}
	return all
}

func (d *drawing) surgeOf(f fixture) surge {
	s := surge{fixture: f}
	shares := make([]float64, len(d.network.nodes))
	shares[f.number] = 1
	passes := map[int]bool{f.number: true}
	for _, i := range d.network.order {
		here := &d.network.nodes[i]
		switch {
		case !passes[i]:
			continue
		case here.part != nil && inTrain(here.kind) && here.kind != filter:
			p := d.parts[i-len(d.Sources)]
			s.firsts = append(s.firsts, firstPart{p, shares[i], p.surgeRoom()})
			continue
		case here.open():
			s.open = append(s.open, here.lack())
		}
		for _, w := range here.ways[warm] {
			passes[w.to], shares[w.to] = true, shares[w.to]+shares[i]*w.share
		}
	}
	slices.SortFunc(s.firsts, func(a, b firstPart) int { return cmp.Compare(a.node, b.node) })
	return s
}

// surgeRoom is the room for water that comes at once, of a part that holds water:
// what stands below its outlet already is no room.
func (p *part) surgeRoom() Value {
	switch {
	case takesUp(p.Kind):
		return Value{}
	case p.Kind == plantedBed:
		return newBed(p).poresAboveWater()
	default:
		area, inlet, water := p.drawnArea(), p.entry("inlet_level", p.InletLevel), p.entry("water_level", p.WaterLevel)
		return outOf(area.Number*(inlet.Number-water.Number), area, inlet, water)
	}
}

func (b *bed) poresAboveWater() Value {
	layers := b.layers()
	if len(layers) == 0 {
		return unknown(b.lack("media"))
	}
	area, porosity, depth := b.area(), layers[0].porosity().least, b.waterBelowSurface()
	return outOf(area.Number*porosity.Number*depth.Number, area, porosity, depth)
}

func (s surge) firstParts() Value {
	var names []string
	for _, f := range s.firsts {
		names = append(names, f.ID)
	}
	return orUnknown(text(listed(names), entryOf(s.Source, "to")), s.open)
}

func (s surge) meetsHolding() Value {
	holds := slices.ContainsFunc(s.firsts, func(f firstPart) bool { return !takesUp(f.Kind) })
	if holds {
		return truth(true, entryOf(s.Source, "to"))
	}
	return orUnknown(truth(false, entryOf(s.Source, "to")), s.open)
}

// fullest gives a figure of the part that the water fills most.
func (s surge) fullest(figure func(room, share float64) float64) Value {
	var rooms []Value
	var most *firstPart
	for i := range s.firsts {
		f := &s.firsts[i]
		if takesUp(f.Kind) {
			continue
		}
		if rooms = append(rooms, f.room); f.room.Known() && f.room.Number <= 0 {
			return unknown(Lack{f.Pointer + "/water_level", "water_level of " + f.ID + " that leaves room above it"})
		}
		if most == nil || f.share*most.room.Number > most.share*f.room.Number {
			most = f
		}
	}
	inputs, lacks := gathered(rooms)
	if lacks = append(lacks, s.open...); most == nil || len(lacks) > 0 {
		return unknown(append(lacks, s.nowhere(most)...)...)
	}
	return number(figure(most.room.Number, most.share), inputs...)
}

// nowhere says what is lacking where the water meets no part that holds it.
func (s surge) nowhere(most *firstPart) []Lack {
	if most != nil || len(s.open) > 0 {
		return nil
	}
	return []Lack{{s.Pointer + "/to", "a part that holds the water of " + s.ID}}
}

func (s surge) shareOfRoom() Value {
	volume := s.entry("volume_per_use", s.VolumePerUse)
	share := s.fullest(func(room, share float64) float64 { return share / room })
	return outOf(volume.Number*share.Number, volume, share)
}
