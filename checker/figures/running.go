package figures

import (
	"math"

	"greysill/checker/geometry"
	"greysill/checker/hydraulics"
	"greysill/checker/treatment"
)

// running is a bed with the water that runs through it in the warm season.
type running struct {
	*bed
	flow                      Value // more than 0
	loading                   Value
	leastPeak, greatestPeak   Value // more than 0
	course                    course
	depth                     Value // of water, mean, more than 0
	leastPores, greatestPores Value // under water
	detentions                estimate
	weakest, strongest        strength
	wet                       []wetLayer
	wetLacks                  []Lack
}

// wetLayer is the part of a layer that lies below the water level.
type wetLayer struct {
	*layer
	thickness float64
}

func (d *drawing) newRunning() []*running {
	beds := d.beds()
	if len(beds) == 0 {
		return nil
	}
	flows := d.flows()
	weakest, strongest := d.strengths()
	all := make([]*running, len(beds))
	for i, b := range beds {
		r := &running{bed: b, weakest: weakest, strongest: strongest}
		r.flow = r.running(flows[b.node-len(d.Sources)].greywater(warm))
		r.loading = r.hydraulicLoading()
		peak := d.peaks().load(b.part)
		r.leastPeak, r.greatestPeak = r.running(peak.peakIPC), r.running(peak.peakChicago)
		r.course = b.alongWater()
		r.depth = b.waterDepth()
		r.wet, r.wetLacks = r.underWater()
		r.leastPores = r.pores(func(l *layer) Value { return l.porosity().least })
		r.greatestPores = r.pores(func(l *layer) Value { return l.porosity().greatest })
		r.detentions = estimate{least: r.detention(r.leastPores, r.flow), greatest: r.detention(r.greatestPores, r.flow)}
		all[i] = r
	}
	return all
}

// running is a flow that has to be more than 0 to say anything of the bed.
func (r *running) running(flow Value) Value {
	if flow.Known() && flow.Number <= 0 {
		return unknown(Lack{"/sources", "a source of greywater that reaches " + r.ID + " in the warm season"})
	}
	return flow
}

func (r *running) hydraulicLoading() Value {
	area := r.area()
	return worked(r.lack("outline"), func() (float64, error) { return treatment.HydraulicLoading(r.flow.Number, area.Number) }, r.flow, area)
}

// area is that of a bed, which an outline has to show.
func (b *bed) area() Value {
	if b.shape.Area() == 0 {
		return unknown(b.lack("outline"))
	}
	return b.part.area()
}

// waterDepth is the mean depth of water over the floor.
func (b *bed) waterDepth() Value {
	floor := Value{Lacks: b.floor.lacks}
	if floor.Known() {
		floor = number(b.meanFloor(), b.floor.input)
	}
	level := unknown(b.lack("water_level"))
	if b.WaterLevel.Given() {
		level = number(b.WaterLevel.Value, b.drawn("water_level"))
	}
	inputs, lacks := gathered([]Value{level, floor})
	switch depth := level.Number - floor.Number; {
	case len(lacks) > 0:
		return unknown(lacks...)
	case depth <= geometry.Resolution:
		return unknown(Lack{b.Pointer + "/water_level", "water_level of " + b.ID + " above the mean level of its floor"})
	default:
		return number(depth, inputs...)
	}
}

// meanFloor is the mean level of the floor, which has to be known.
func (b *bed) meanFloor() float64 {
	ring := make([]geometry.Point, len(b.stations))
	for i, at := range b.stations {
		ring[i] = b.point(at)
	}
	return geometry.Outline(ring).Mean(b.floor.at)
}

// underWater gives the layers below the water level, each as thick as it is
// there, in the mean section of the bed. The lowest layer reaches down to the
// floor: media fill a bed.
func (r *running) underWater() ([]wetLayer, []Lack) {
	layers := r.layers()
	if len(layers) == 0 {
		return nil, []Lack{r.lack("media")}
	}
	above := layers[len(layers)-1].above()
	if _, lacks := gathered([]Value{r.depth, r.meanDepth(), above}); len(lacks) > 0 {
		return nil, lacks
	}
	var wet []wetLayer
	top := r.mean // over the floor
	for i, l := range layers {
		bottom := 0.0
		if i < len(layers)-1 {
			bottom = max(top-l.Layer.Thickness.Value, 0)
		}
		if thickness := min(top, r.depth.Number) - bottom; thickness > geometry.Resolution {
			wet = append(wet, wetLayer{l, thickness})
		}
		top = bottom
	}
	if len(wet) == 0 {
		return nil, []Lack{{r.Pointer + "/surface", "surface of " + r.ID + " above its floor"}}
	}
	return wet, nil
}

// section gives a figure of the layers under water by one property of each.
func (r *running) section(entry string, of func(*layer) Value, formula func(properties []Value) (float64, error)) Value {
	if len(r.wetLacks) > 0 {
		return unknown(r.wetLacks...)
	}
	properties := make([]Value, len(r.wet))
	for i, w := range r.wet {
		properties[i] = of(w.layer)
	}
	return worked(Lack{r.Pointer + "/media", entry + " of the media of " + r.ID},
		func() (float64, error) { return formula(properties) }, append(properties, r.depth, r.meanDepth())...)
}

func (r *running) pores(porosity func(*layer) Value) Value {
	return r.section("porosity", porosity, func(porosities []Value) (float64, error) {
		layers := make([]treatment.Pores, len(r.wet))
		for i, w := range r.wet {
			layers[i] = treatment.Pores{Volume: r.shape.Area() * w.thickness, Porosity: porosities[i].Number}
		}
		return treatment.PoreVolume(layers...)
	})
}

// clean is the conductivity of all layers under water together, before they
// clog.
func (r *running) clean(conductivity func(*layer) Value) Value {
	return r.section("conductivity", conductivity, func(conductivities []Value) (float64, error) {
		layers := make([]hydraulics.Layer, len(r.wet))
		for i, w := range r.wet {
			layers[i] = hydraulics.Layer{Thickness: w.thickness, Conductivity: conductivities[i].Number}
		}
		return hydraulics.ConductivityAlong(layers...)
	})
}

// course is the way of the water through a bed in plan.
type course struct{ by, length, width Value }

// What shows the course of the water.
const (
	headerToOutlet = "inlet header to outlet"
	longerSide     = "longer side of the outline"
)

func (b *bed) alongWater() course {
	if b.shape.Area() == 0 {
		v := unknown(b.lack("outline"))
		return course{v, v, v}
	}
	outline := b.drawn("outline")
	if b.Inlet == nil || len(b.Inlet.Path) == 0 || b.Outlet == nil || b.Outlet.At == nil {
		along := b.extent(b.longestSide())
		return course{text(longerSide, outline), number(along, outline), number(b.shape.Area()/along, outline)}
	}
	header, outlet := geometry.Path(points(b.Inlet.Path)), geometry.At(geometry.Point(*b.Outlet.At))
	from, to := geometry.Nearest(header, outlet)
	length := math.Hypot(to.X-from.X, to.Y-from.Y)
	if length <= geometry.Resolution {
		v := unknown(Lack{b.Pointer + "/outlet/at", "a place of the outlet of " + b.ID + " away from its inlet header"})
		return course{v, v, v}
	}
	ends := []Input{{Name: "inlet header", Pointer: b.Pointer + "/inlet/path"}, {Name: "outlet", Pointer: b.Pointer + "/outlet/at"}}
	return course{text(headerToOutlet, ends...), number(length, ends...),
		number(b.shape.Area()/b.extent(from, to), append(ends[:len(ends):len(ends)], outline)...)}
}

// extent is how long the outline is in the direction from one place to another.
func (b *bed) extent(from, to geometry.Point) float64 {
	return extent(b.shape, geometry.Point{X: to.X - from.X, Y: to.Y - from.Y})
}

// longestSide gives the ends of the outline's longest side.
func (b *bed) longestSide() (from, to geometry.Point) {
	const rounding = 1e-9 // of feet turned into metres, as a ratio
	longest := 0.0
	for i := range b.Outline {
		p, q := b.corner(i), b.corner(i+1)
		if length := math.Hypot(q.X-p.X, q.Y-p.Y); length > longest*(1+rounding) {
			longest, from, to = length, p, q
		}
	}
	return from, to
}
