package figures

import (
	"greysill/checker/climate"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var pipeWinterTable = tabulate(
	List{Name: "pipe_winter", Doc: "Every reach of every drain pipe and overflow pipe in the cold season.", Subject: "a reach of pipe"},
	(*drawing).pipeWinters, (*pipeWinter).subject,
	[]column[*pipeWinter]{
		{Field{Name: "on_second_route", Kind: Truth, Doc: "Whether the second route of a diverter runs through it."},
			func(w *pipeWinter) Value { return truth(w.second) }},
		{Field{Name: "winter", Kind: Text,
			Doc: "What the cold season does to it: nothing where the pipe is stated to be heated or where no month freezes; " +
				"elsewhere its top lies below the frost depth or in it, insulation counted as soil.",
			Words: []string{neverFreezes, belowTheFrost, inTheFrost}}, (*pipeWinter).winter},
		{Field{Name: "frost_depth", Kind: Number, Dimension: quantity.Length, Doc: "Frost depth as drawn."},
			func(w *pipeWinter) Value { return w.frostDepth }},
		{Field{Name: "insulated_cover", Kind: Number, Dimension: quantity.Length,
			Doc: "Depth of soil that keeps frost out of it as well as its least cover and the insulation drawn do; " +
				"where it stands out of the ground, the least cover alone.",
			Formula: "least cover + 12 × insulation", Source: Citation{Title: climate.InsulationSource, Standing: Published}},
			func(w *pipeWinter) Value { return w.insulated }},
		{Field{Name: "below_frost", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far below the frost depth its top lies, insulation counted as soil; negative where it lies in the frost.",
			Formula: "insulated cover − frost depth"}, (*pipeWinter).belowFrost},
		{Field{Name: "rises", Kind: Truth, Doc: "Whether the pipe rises anywhere in the direction that the water runs."}, (*pipeWinter).rises},
		{Field{Name: "standing_water", Kind: Number, Dimension: quantity.Length,
			Doc: "Depth of the water that stays in it, at its lowest invert, when nothing runs; 0 where it falls empty. " +
				"What it drains to holds the water back: a pipe that begins or lies higher, the water level of a tank, basin, bed or pond, the invert of a connection; " +
				"mulch, an infiltration trench and what lies outside the system hold nothing back.",
			Formula: "highest level that the water has to rise to on its easiest way out − lowest invert"}, (*pipeWinter).standingWater},
	},
)

// What the cold season does to a pipe.
const (
	neverFreezes  = "never freezes"
	belowTheFrost = "below the frost"
	inTheFrost    = "in the frost"
)

// pipeWinter is a reach of pipe in the cold season.
type pipeWinter struct {
	*cover
	second     bool
	freezes    Value
	frostDepth Value
	insulated  Value
	sills      *sills
}

func (d *drawing) pipeWinters() []*pipeWinter {
	second := d.onSecondRoutes()
	freezes, frostDepth := d.anyMonthFreezes(), (&frost{drawing: d}).drawnDepth()
	sills := newSills(d)
	var all []*pipeWinter
	for _, c := range d.covers() {
		w := &pipeWinter{cover: c, second: second[c.node], freezes: freezes, frostDepth: frostDepth, sills: sills}
		w.insulated = w.insulatedCover()
		all = append(all, w)
	}
	return all
}

// onSecondRoutes marks what the second route of any diverter runs through.
func (d *drawing) onSecondRoutes() []bool {
	on := make([]bool, len(d.network.nodes))
	for _, p := range d.ofKind(diverter) {
		if len(p.BypassTo) == 0 {
			continue
		}
		for i, met := range d.network.downstream(p.node, bypassing, inTrain) {
			on[i] = on[i] || met
		}
	}
	return on
}

func (w *pipeWinter) insulatedCover() Value {
	least := w.of(w.least.depth)
	if !least.Known() || least.Number < 0 || !w.Insulation.Given() {
		return least
	}
	layer := w.entry("insulation", w.Insulation)
	return worked(w.lack("insulation"), func() (float64, error) { return climate.InsulatedCover(least.Number, layer.Number) }, least, layer)
}

func (w *pipeWinter) belowFrost() Value {
	return outOf(w.insulated.Number-w.frostDepth.Number, w.insulated, w.frostDepth)
}

func (w *pipeWinter) winter() Value {
	below := w.belowFrost()
	switch {
	case yes(w.Heated):
		return text(neverFreezes, w.drawn("heated"))
	case w.freezes.Known() && !w.freezes.Truth:
		return text(neverFreezes, w.freezes.Inputs...)
	case !w.freezes.Known() || !below.Known():
		return outOf(0, w.freezes, below)
	case below.Number < -geometry.Resolution:
		return text(inTheFrost, below.Inputs...)
	default:
		return text(belowTheFrost, below.Inputs...)
	}
}

func (w *pipeWinter) rises() Value {
	if len(w.Inverts) < 2 {
		return unknown(w.lack("inverts"))
	}
	for i := 1; i < len(w.Inverts); i++ {
		if w.Inverts[i].Value > w.Inverts[i-1].Value+geometry.Resolution {
			return truth(true, w.drawn("inverts"))
		}
	}
	return truth(false, w.drawn("inverts"))
}

func (w *pipeWinter) standingWater() Value {
	fall := w.fall()
	if !fall.Known() {
		return fall
	}
	lowest := min(w.Inverts[w.from].Value, w.Inverts[w.to].Value)
	sill := w.sills.pastPipe(w.node, w.from)
	if len(sill.Lacks) > 0 {
		return unknown(sill.Lacks...)
	}
	if depth := sill.Number - lowest; depth > geometry.Resolution {
		return number(depth, append(sill.Inputs, fall.Inputs...)...)
	}
	return number(0, fall.Inputs...)
}
