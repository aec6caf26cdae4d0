package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/hydraulics"
)

// peaks is what drains at once: every source, and the rain of the design storm.
type peaks struct {
	network *network
	feeders []feeder
	storms  []feeder // those of them that bring rain
	rained  []feeder // the rain on the parts themselves
}

// feeder is a source or a storm inflow with the parts that its water reaches,
// in any season and by any overflow.
type feeder struct {
	met    []bool
	open   []int // where its further way is not drawn
	source *design.Source
	storm  *storm // in place of a source's fixture units
}

func (d *drawing) newPeaks() *peaks {
	p := &peaks{network: d.network}
	for _, s := range d.storms() {
		p.add(feeder{storm: s}, s.node)
	}
	p.storms = slices.Clone(p.feeders)
	for i := range d.Sources {
		if s := &d.Sources[i]; s.Kind != roofDrain {
			p.add(feeder{source: s}, i)
		}
	}
	for _, q := range d.ofKind(holdsWater...) {
		if q.Covered == nil || !*q.Covered {
			rain := p.follow(feeder{storm: q.rain()}, q.node)
			rain.met[q.node] = true
			p.rained = append(p.rained, rain)
		}
	}
	return p
}

func (p *peaks) add(f feeder, from int) { p.feeders = append(p.feeders, p.follow(f, from)) }

// follow finds where the water goes.
func (p *peaks) follow(f feeder, from int) feeder {
	f.met = p.network.downstream(from, everSeason, nil)
	f.open = p.network.openEnds(from, f.met, nil)
	return f
}

// rain is the storm on the part itself.
func (p *part) rain() *storm {
	all := number(1, Input{Name: "coefficient", Value: "1"})
	return &storm{drawing: p.drawing, id: p.ID, pointer: p.Pointer, node: p.node, area: p.area(), least: all, greatest: all}
}

// storm is the peak of the design storm that may reach a part: all storm inflows
// and roof drains whose water can, and the rain on it and on the parts above it.
func (p *peaks) storm(at *part) Value {
	peak := func(f feeder) Value { return f.storm.peak(f.storm.greatest) }
	inflows, rain := p.of(p.storms, at, peak), p.of(p.rained, at, peak)
	inputs, lacks := gathered([]Value{inflows, rain})
	return orUnknown(number(inflows.Number+rain.Number, inputs...), lacks)
}

// load is what may reach a part at once. Nothing is taken off for what tanks
// and beds above it hold back, nor for shares: all of it may come.
func (p *peaks) load(at *part) *load {
	units := func(code hydraulics.FixtureUnits) Value {
		return p.reaching(at, func(f feeder) Value {
			if f.storm != nil {
				return Value{}
			}
			return unitsOf(f.source, code)
		})
	}
	rain := p.reaching(at, func(f feeder) Value {
		if f.storm == nil {
			return Value{}
		}
		return f.storm.peak(f.storm.greatest)
	})
	l := &load{unitsIPC: units(hydraulics.IPCFixtureUnits), unitsUPC: units(hydraulics.UPCFixtureUnits)}
	l.peakIPC = sum(times(l.unitsIPC, hydraulics.IPCUnitFlow.PerUnit, halfGallon), rain)
	l.peakChicago = sum(times(l.unitsIPC, hydraulics.ChicagoUnitFlow.PerUnit, oneGallon), rain)
	return l
}

// reaching adds up a figure of everything whose water reaches a part.
func (p *peaks) reaching(at *part, figure func(feeder) Value) Value {
	return p.of(p.feeders, at, figure)
}

func (p *peaks) of(feeders []feeder, at *part, figure func(feeder) Value) Value {
	var values []Value
	var open []int
	for _, f := range feeders {
		open = append(open, f.open...)
		if f.met[at.node] {
			values = append(values, figure(f))
		}
	}
	return orUnknown(sum(values...), p.network.lacks(p.network.above(at.node, open)))
}
