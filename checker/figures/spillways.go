package figures

import (
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var spillwayTable = tabulate(
	List{Name: "spillways", Subject: "a spillway or overflow pipe",
		Doc: "Every spillway and overflow pipe, and every drain pipe that a part overflows into, with what it can carry before the water stands at the rim, and what a storm brings."},
	(*drawing).spillways, (*wayOut).subject,
	[]column[*wayOut]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind.", Words: []string{spillway, overflowPipe, drainPipe}}, func(w *wayOut) Value { return w.kind() }},
		{Field{Name: "serves", Kind: Text, Doc: "The parts that overflow straight into it; \"none\" where none does."}, (*wayOut).serving},
		{Field{Name: "serves_pond", Kind: Truth, Doc: "Whether a pond overflows straight into it."},
			func(w *wayOut) Value {
				return truth(slices.ContainsFunc(w.served, func(p *part) bool { return p.Kind == pond }))
			}},
		{Field{Name: "rim", Kind: Number, Dimension: quantity.Level, Doc: "Lowest rim of those parts."}, func(w *wayOut) Value { return w.rim }},
		{Field{Name: "head", Kind: Number, Dimension: quantity.Length,
			Doc:     "Head available: the water at that rim over the crest, or over the upper invert of a pipe; negative where the rim is lower.",
			Formula: "lowest rim level − crest level or upper invert"}, func(w *wayOut) Value { return w.head }},
		{Field{Name: "below_rim", Kind: Truth, Doc: "Whether water begins to leave by it before it stands at the rim."},
			func(w *wayOut) Value {
				return orUnknown(truth(w.head.Number > geometry.Resolution, w.head.Inputs...), w.head.Lacks)
			}},
		{Field{Name: "least_capacity", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "Least flow at that head: by the low end of coefficients of an earth crest, or a pipe with an entrance that reaches into the water and the roughest wall.",
			Formula: capacityFormula, Source: outletSource}, func(w *wayOut) Value { return w.least.flow }},
		{Field{Name: "greatest_capacity", Kind: Number, Dimension: quantity.PeakFlow,
			Doc:     "Greatest flow at that head: by the high end of coefficients of an earth crest, or a pipe with a sharp entrance flush with the wall and the smoothest wall.",
			Formula: capacityFormula, Source: outletSource}, func(w *wayOut) Value { return w.greatest.flow }},
		{Field{Name: "control", Kind: Text, Doc: "What holds the least flow back; \"none\" where the rim leaves no head.",
			Words: []string{string(hydraulics.CrestControl), string(hydraulics.MouthControl), string(hydraulics.OrificeControl), string(hydraulics.BarrelControl), none}}, func(w *wayOut) Value { return w.least.control }},
		{Field{Name: "storm_flow", Kind: Number, Dimension: quantity.PeakFlow,
			Doc: "Peak of the design storm that may reach it: all storm inflows and roof drains whose water can, by their greatest coefficients, " +
				"and the rain on the parts above it. Nothing is held back above.",
			Formula: stormFormula, Source: rational}, func(w *wayOut) Value { return w.storm }},
		{Field{Name: "capacity_to_storm", Kind: Number, Dimension: quantity.Number, Doc: "Least capacity for each unit of that peak; less than 1 lets water over the rim.",
			Formula: "least capacity ÷ peak of the storm"}, (*wayOut).ratio},
	},
)

const stormFormula = "Σ coefficient × intensity × area"

const (
	capacityFormula = "spillway: share × √(gravity × area³ ÷ top width) where depth + area ÷ (2 × top width) = head, share = coefficient ÷ 3.09 in feet; pipe: " + pipeFormula
	pipeFormula     = "until the water stands at the top of its mouth, depth y over the upper invert, critical or normal, whichever asks for more head, head = y + (1 + loss of the entrance) × velocity² ÷ (2 × gravity), " +
		"none where the pipe does not fall; above, the least of that at critical depth, of 0.60 × area × √(2 × gravity × head on the middle of its mouth), and of the full barrel, " +
		"head on the middle of its lower end = (1 + loss of the entrance + 2 × gravity × n² × length ÷ (diameter ÷ 4)^(4/3)) × velocity² ÷ (2 × gravity)"
)

var outletSource = Citation{Title: hydraulics.BroadCrestSource + "; earth crests and pipes: " + hydraulics.OutletSource + "; " + hydraulics.OpenMouthSource, Standing: FromMemory}

// wayOut is a spillway, an overflow pipe, or a drain pipe that serves as one.
type wayOut struct {
	*part
	served          []*part
	rim, head       Value
	least, greatest outflow
	storm           Value
}

// outflow is a flow with what governs it.
type outflow struct{ flow, control Value }

func (d *drawing) spillways() []*wayOut {
	parts := slices.DeleteFunc(d.ofKind(spillway, overflowPipe, drainPipe), func(p *part) bool { return p.Kind == drainPipe && !p.takesOverflow() })
	if len(parts) == 0 {
		return nil
	}
	peaks := d.peaks()
	all := make([]*wayOut, len(parts))
	for i, p := range parts {
		w := &wayOut{part: p, served: p.serves()}
		w.rim = p.lowestRim(w.served)
		low := p.lowest()
		w.head = outOf(w.rim.Number-low.Number, w.rim, low)
		w.least, w.greatest = w.capacity(leastEarth, hydraulics.ProjectingEntrance, func(r hydraulics.Roughness) float64 { return r.Range.High }),
			w.capacity(greatestEarth, hydraulics.SharpEntrance, func(r hydraulics.Roughness) float64 { return r.Range.Low })
		w.storm = peaks.storm(p)
		all[i] = w
	}
	return all
}

// takesOverflow reports whether the overflow of any part leads straight into the
// part.
func (p *part) takesOverflow() bool {
	return slices.ContainsFunc(p.drawing.parts, func(from *part) bool {
		return slices.ContainsFunc(from.OverflowTo, func(o design.Outlet) bool { return o.Target == p.ID })
	})
}

// serves gives the parts that overflow straight into the part.
func (p *part) serves() []*part {
	var served []*part
	for _, from := range p.drawing.parts {
		for _, w := range from.overflow() {
			if w.to == p.node && !slices.Contains(served, from) {
				served = append(served, from)
			}
		}
	}
	return served
}

func (w *wayOut) serving() Value {
	names := make([]string, len(w.served))
	inputs := make([]Input, len(w.served))
	for i, p := range w.served {
		names[i], inputs[i] = p.ID, Input{Name: p.ID, Pointer: p.Pointer}
	}
	return text(listed(names), inputs...)
}

func (p *part) lowestRim(served []*part) Value {
	if len(served) == 0 {
		return unknown(Lack{"/parts", "a part whose overflow_to is " + p.ID})
	}
	rims := make([]Value, len(served))
	lowest := served[0].RimLevel.Value
	for i, from := range served {
		rims[i] = from.entry("rim_level", from.RimLevel)
		lowest = min(lowest, rims[i].Number)
	}
	return outOf(lowest, rims...)
}

// capacity is the flow at the head available: none where the rim is no higher.
func (w *wayOut) capacity(earth, entrance float64, n func(hydraulics.Roughness) float64) outflow {
	switch {
	case w.head.Known() && w.head.Number <= 0:
		return outflow{number(0, w.head.Inputs...), text(none, w.head.Inputs...)}
	case w.Kind == spillway:
		return w.overCrest(earth)
	default:
		return w.throughPipe(entrance, n)
	}
}

func (w *wayOut) overCrest(share float64) outflow {
	crest, drawn := w.spill(share)
	flow := worked(w.lack("crest_length"), func() (float64, error) {
		f, err := crest.Flow(w.head.Number)
		return f.Discharge, err
	}, w.head, drawn)
	return outflow{flow, orUnknown(text(string(hydraulics.CrestControl), flow.Inputs...), flow.Lacks)}
}

func (w *wayOut) throughPipe(entrance float64, n func(hydraulics.Roughness) float64) outflow {
	pipe, drawn := w.barrel(entrance, n)
	upper, lower := w.lowest(), w.lowerInvert()
	var control hydraulics.Control
	flow := worked(w.lack("inverts"), func() (float64, error) {
		f, err := pipe.Rating(w.head.Number, upper.Number-lower.Number)
		control = f.Control
		return f.Discharge, err
	}, w.head, drawn, upper, lower)
	return outflow{flow, orUnknown(text(string(control), flow.Inputs...), flow.Lacks)}
}

func (w *wayOut) ratio() Value {
	if w.storm.Known() && w.storm.Number == 0 {
		return unknown(Lack{"/parts", "a storm inflow whose water reaches " + w.ID})
	}
	return outOf(w.least.flow.Number/w.storm.Number, w.least.flow, w.storm)
}
