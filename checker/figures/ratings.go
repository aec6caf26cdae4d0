package figures

import "greysill/checker/hydraulics"

// The shares of the ideal flow over a broad crest that earth crests carry.
var (
	leastEarth    = hydraulics.EarthCrest.Low / hydraulics.BroadCrest
	greatestEarth = hydraulics.EarthCrest.High / hydraulics.BroadCrest
)

// spill is a spillway's crest, its sides upright where no side slope is drawn, and
// what it is known from.
func (p *part) spill(share float64) (hydraulics.Spillway, Value) {
	length, run := p.crest(), Value{}
	if p.SideSlope.Given() {
		run = p.sides()
	}
	return hydraulics.Spillway{Bottom: length.Number, SideSlope: run.Number, Coefficient: share}, outOf(0, length, run)
}

// crest is the length of the crest, as drawn in plan where it is not stated.
func (p *part) crest() Value {
	if !p.CrestLength.Given() && p.shape.Length() > 0 {
		return p.inPlan()
	}
	return p.entry("crest_length", p.CrestLength)
}

// barrel is a pipe under head and what it is known from.
func (p *part) barrel(entrance float64, n func(hydraulics.Roughness) float64) (hydraulics.Outlet, Value) {
	wall, rough := p.wall()
	diameter, length := p.diameter(), p.inPlan()
	pipe := hydraulics.Outlet{Diameter: diameter.Number, Length: length.Number, Roughness: n(wall), Losses: entrance, OrificeCd: hydraulics.SharpOrifice}
	return pipe, outOf(0, diameter, length, rough)
}

// lowest is where water begins to leave: the crest of a spillway, the upper invert
// of a pipe.
func (p *part) lowest() Value {
	if p.Kind == spillway {
		return p.entry("crest_level", p.CrestLevel)
	}
	if len(p.Inverts) == 0 {
		return unknown(p.lack("inverts"))
	}
	return number(p.Inverts[0].Value, Input{Name: "upper invert", Pointer: p.Pointer + "/inverts/0"})
}

func (p *part) lowerInvert() Value {
	if len(p.Inverts) < 2 {
		return unknown(p.lack("inverts"))
	}
	last := len(p.Inverts) - 1
	return number(p.Inverts[last].Value, Input{Name: "lower invert", Pointer: member(p.Pointer+"/inverts", last)})
}

// rating is what a spillway or pipe carries at a head over where water begins to
// leave, by the least that its shape may carry.
type rating struct {
	*part
	low, drawn Value                                    // drawn: what else it is known from
	head       func(discharge float64) (float64, error) // m, of m³/s more than 0
	flow       func(head float64) (float64, error)
}

func (p *part) rating() *rating {
	r := &rating{part: p, low: p.lowest()}
	if p.Kind == spillway {
		r.overCrest()
	} else {
		r.throughPipe()
	}
	return r
}

func (r *rating) overCrest() {
	crest, drawn := r.spill(leastEarth)
	r.drawn = drawn
	r.head = func(discharge float64) (float64, error) {
		_, head, err := crest.Carrying(discharge)
		return head, err
	}
	r.flow = func(head float64) (float64, error) {
		flow, err := crest.Flow(head)
		return flow.Discharge, err
	}
}

func (r *rating) throughPipe() {
	pipe, drawn := r.barrel(hydraulics.ProjectingEntrance, func(r hydraulics.Roughness) float64 { return r.Range.High })
	lower := r.lowerInvert()
	fall := r.low.Number - lower.Number
	r.drawn = outOf(0, drawn, lower)
	r.head = func(discharge float64) (float64, error) { return pipe.Head(discharge, fall) }
	r.flow = func(head float64) (float64, error) {
		flow, err := pipe.Rating(head, fall)
		return flow.Discharge, err
	}
}

// refused is lacking where the rating does not hold.
func (r *rating) refused() Lack {
	if r.Kind == spillway {
		return r.lack("crest_length")
	}
	return r.lack("inverts")
}
