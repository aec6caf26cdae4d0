package drawing

import (
	"slices"
	"strings"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// vessel is a part with an area as a profile cuts it: at each distance from the
// beginning of its way the floor, the top of what fills it and the ground.
type vessel struct {
	*profile
	*stretch
	outline   []geometry.Point
	distances []float64
	floor     []float64
	top       []float64 // of media, or the rim where there are none
}

// newVessel works out the cut through a part, ok=false when the design gives no
// floor for it.
func (p *profile) newVessel(s *stretch) (v *vessel, ok bool) {
	v = &vessel{profile: p, stretch: s, outline: points(s.part.Outline)}
	v.distances = s.steps(1 / p.perMetre)
	for _, distance := range v.distances {
		at := s.place(distance)
		floor, known := p.floorAt(s.part, v.outline, at)
		top, given := p.topAt(s.part, v.outline, at)
		if !known || !given {
			return nil, false
		}
		if slope := s.part.SideSlope.Value; slope > 0 {
			floor = max(floor, top-slope*min(distance, s.long()-distance))
		}
		v.floor, v.top = append(v.floor, floor), append(v.top, top)
	}
	return v, len(v.floor) > 1
}

// floorAt is the level of a part's floor: as drawn, else its depth below the
// ground.
func (p *profile) floorAt(part *design.Part, ring []geometry.Point, at geometry.Point) (float64, bool) {
	if level, ok := levelOver(ring, part.Floor, at); ok {
		return level, true
	}
	if level, ok := p.groundAt(at); ok && part.Depth.Given() {
		return level - part.Depth.Value, true
	}
	return 0, false
}

// topAt is the level that a part is filled up to or ends at: the surface of its
// media, the ground at its edge as drawn, its rim, or the ground.
func (p *profile) topAt(part *design.Part, ring []geometry.Point, at geometry.Point) (float64, bool) {
	for _, levels := range [][]quantity.Quantity{part.Surface, part.EdgeLevels} {
		if level, ok := levelOver(ring, levels, at); ok {
			return level, true
		}
	}
	if part.RimLevel.Given() {
		return part.RimLevel.Value, true
	}
	return p.groundAt(at)
}

func (p *profile) groundAt(at geometry.Point) (float64, bool) {
	if p.ground == nil {
		return 0, false
	}
	return p.ground.Level(at)
}

// draw draws the cut: what fills it, its floor and sides, water and rim.
func (v *vessel) draw() {
	v.open("g", "class", "part-of", "data-id", v.part.ID)
	v.fill()
	sides := slices.Concat([]point{v.profile.at(v.from, v.top[0])}, v.curve(v.floor), []point{v.profile.at(v.to(), v.top[len(v.top)-1])})
	v.line("dug", sides)
	v.obstacle(sides)
	v.key.line("dug", "floor and sides")
	v.water()
	v.close("g")
	v.level(v.profile.at(v.from+v.long()/2, v.floor[len(v.floor)/2]), v.floor[len(v.floor)/2], "floor ")
	if v.part.RimLevel.Given() {
		rim := v.profile.at(v.to(), v.part.RimLevel.Value)
		v.line("fine", []point{rim.plus(-1.5, 0), rim.plus(1, 0)})
		v.level(rim, v.part.RimLevel.Value, "rim ")
	}
}

// curve puts levels along the way on the paper.
func (v *vessel) curve(levels []float64) []point {
	on := make([]point, len(levels))
	for i, level := range levels {
		on[i] = v.profile.at(v.from+v.distances[i], level)
	}
	return on
}

// fill draws the layers of media from the top down, mulch over them, or nothing
// where a part is open.
func (v *vessel) fill() {
	upper := v.media()
	if depth := v.part.Mulch.Value; depth > 0 {
		v.mulch(v.top, depth)
	}
	for i, l := range v.part.Media {
		lower := slices.Clone(v.floor)
		if l.Thickness.Given() && i+1 < len(v.part.Media) {
			for k := range lower {
				lower[k] = max(lower[k], upper[k]-l.Thickness.Value)
			}
		}
		v.band(layerClasses[i%len(layerClasses)], upper, lower)
		words := l.Material
		if l.Size.Given() {
			words += ", " + l.Size.Text
		}
		v.key.area(layerClasses[i%len(layerClasses)], words)
		upper = lower
	}
}

// media is the level that the media reach up to: of a bed its surface, of a trench
// that is filled in over them the floor and the thickness of its layers.
func (v *vessel) media() []float64 {
	upper := slices.Clone(v.top)
	if v.part.Kind == plantedBed {
		return upper
	}
	thick := 0.0
	for _, l := range v.part.Media {
		if !l.Thickness.Given() {
			return upper
		}
		thick += l.Thickness.Value
	}
	for i := range upper {
		upper[i] = min(upper[i], v.floor[i]+thick)
	}
	return upper
}

// layerClasses are the fillings of layers, from the top down.
var layerClasses = []string{"layer-gravel", "layer-coarse", "layer-sand"}

// mulch lies on the media of a bed, and fills a basin from its floor.
func (v *vessel) mulch(top []float64, depth float64) {
	upper, lower := slices.Clone(top), slices.Clone(top)
	for i := range top {
		if v.part.Kind == plantedBed {
			upper[i] += depth
			continue
		}
		lower[i] = v.floor[i]
		upper[i] = min(v.floor[i]+depth, top[i])
	}
	v.band("layer-bark", upper, lower)
	v.key.area("layer-bark", "mulch")
}

func (v *vessel) band(class string, upper, lower []float64) {
	ring := v.curve(upper)
	below := v.curve(lower)
	slices.Reverse(below)
	v.ring(class, append(ring, below...))
}

// water draws the surface in ordinary flow, and in the design storm where that is
// worked out.
func (v *vessel) water() {
	if v.part.WaterLevel.Given() {
		v.surfaceLine("surface", v.part.WaterLevel.Value, "water ", v.drops()...)
		v.key.line("surface", "water in ordinary flow")
	}
	if level, known := v.stormLevel(v.part.ID); known && (!v.part.WaterLevel.Given() || level > v.part.WaterLevel.Value+geometry.Resolution) {
		v.surfaceLine("storm", level, "storm ")
		v.key.line("storm", "water in the design storm")
	}
}

// surfaceLine draws a level water surface with the mark of one.
func (v *vessel) surfaceLine(class string, level float64, words string, more ...string) {
	a, b := v.profile.at(v.from, level), v.profile.at(v.to(), level)
	v.line(class, []point{a, b})
	mark := point{a.x + (b.x-a.x)*0.3, a.y}
	v.ring("fine", []point{mark, mark.plus(-0.9, -1.5), mark.plus(0.9, -1.5)})
	v.level(mark.plus(0, -1.5), level, words, more...)
}

// drops words how far the water falls from the parts above.
func (v *vessel) drops() []string {
	var said []string
	for _, it := range v.Figures.List("drops") {
		if ids := it.Subject.IDs; len(ids) > 1 && ids[1] == v.part.ID {
			if drop := it.Value("dry_drop"); drop != nil && drop.Known() {
				said = append(said, quantity.Format(drop.Number, quantity.Length, v.Units)+" below "+ids[0])
			}
		}
	}
	return said
}

// stormLevel is the water level in the storm that figures give for a part.
func (r *Review) stormLevel(id string) (float64, bool) {
	for _, it := range r.Figures.List("water_levels") {
		if len(it.Subject.IDs) == 0 || it.Subject.IDs[0] != id {
			continue
		}
		for i, f := range it.List.Fields {
			if f.Dimension == quantity.Level && strings.HasPrefix(f.Name, "storm") {
				return it.Values[i].Number, it.Values[i].Known()
			}
		}
	}
	return 0, false
}
