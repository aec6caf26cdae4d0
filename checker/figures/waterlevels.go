package figures

import (
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var waterLevelTable = tabulate(
	List{Name: "water_levels", Subject: "a part that holds or carries water",
		Doc: "Every surge tank, filter, planted gravel bed, settling basin, pond, mulch basin, infiltration trench and spillway with its water surface in ordinary flow and in the design storm."},
	func(d *drawing) []*standingWater { return d.surfaces().all }, (*standingWater).subject,
	[]column[*standingWater]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, func(s *standingWater) Value { return s.kind() }},
		{Field{Name: "dry_surface", Kind: Number, Dimension: quantity.Level,
			Doc: "Level at which water stands in ordinary flow: the water level drawn, else that of its level control, else the invert of its outlet; " +
				"of what lets water into soil its floor, of a spillway its crest."}, func(s *standingWater) Value { return s.dry }},
		{Field{Name: "dry_surface_by", Kind: Text, Doc: "What shows that level.", Words: []string{byWaterLevel, byControl, byOutlet, byFloor, byDepth, byCrest}},
			func(s *standingWater) Value { return s.by }},
		{Field{Name: "ways_out", Kind: Text,
			Doc: "The spillways and pipes that its overflow leads straight into, of a part without an overflow those of its ordinary outlet; \"none\" where there are none."},
			(*standingWater).named},
		{Field{Name: "storm_flow", Kind: Number, Dimension: quantity.Flow,
			Doc: "Peak of the design storm that it has to let out: all storm inflows and roof drains whose water can reach it or a way out of it, and the rain on it and on the parts above. " +
				"Nothing is held back above, and nothing leaves by an ordinary outlet where there is an overflow.",
			Formula: stormFormula, Source: rational}, func(s *standingWater) Value { return s.flow }},
		{Field{Name: "storm_surface", Kind: Number, Dimension: quantity.Level,
			Doc: "Level at which its ways out together let that peak out, by the least that they may carry, and not below the ordinary one; as if its walls went on over the rim. " +
				"Water below them is taken to leave freely.",
			Formula: levelFormula, Source: outletSource}, func(s *standingWater) Value { return s.storm }},
		{Field{Name: "rim", Kind: Number, Dimension: quantity.Level,
			Doc: "Level of its rim; of a mulch basin or trench the lowest ground at its edge, of a spillway the lowest rim of the parts that overflow into it."},
			func(s *standingWater) Value { return s.rim }},
		{Field{Name: "dry_freeboard", Kind: Number, Dimension: quantity.Length, Doc: "Height of the rim over the water in ordinary flow.",
			Formula: "rim − surface in ordinary flow"}, func(s *standingWater) Value { return outOf(s.rim.Number-s.dry.Number, s.rim, s.dry) }},
		{Field{Name: "storm_freeboard", Kind: Number, Dimension: quantity.Length, Doc: "Height of the rim over the water in the design storm; negative where it runs out over the rim.",
			Formula: "rim − surface in the storm"}, func(s *standingWater) Value { return outOf(s.rim.Number-s.storm.Number, s.rim, s.storm) }},
	},
)

// What shows the level at which water stands in ordinary flow.
const (
	byWaterLevel = "water level"
	byControl    = "level control"
	byOutlet     = "outlet"
	byFloor      = "floor"
	byDepth      = "ground and depth"
	byCrest      = "crest"
)

const levelFormula = "the level at which the flows of the ways out add up to the peak; spillway: " + crestFormula +
	"; pipe, 0.8 the loss of its entrance: " + pipeFormula

// standingWater is a part with its water surface.
type standingWater struct {
	*part
	dry, by     Value
	ways        []*part // out
	flow, storm Value
	rim         Value
}

// surfaces are all of them, and by the node of their part.
type surfaces struct {
	all []*standingWater
	of  map[int]*standingWater
}

func (d *drawing) newSurfaces() *surfaces {
	s := &surfaces{of: map[int]*standingWater{}}
	for _, p := range d.ofKind(slices.Concat(holdsWater, []string{spillway})...) {
		one := newStandingWater(p)
		s.all, s.of[p.node] = append(s.all, one), one
	}
	return s
}

func newStandingWater(p *part) *standingWater {
	s := &standingWater{part: p, ways: p.waysOut(), rim: p.edge()}
	s.dry, s.by = p.ordinary()
	s.flow = s.peak()
	s.storm = s.inStorm()
	return s
}

// ordinary is the level of the water in ordinary flow, and what shows it.
func (p *part) ordinary() (level, by Value) {
	how := byWaterLevel
	switch {
	case p.Kind == spillway:
		level, how = p.lowest(), byCrest
	case takesUp(p.Kind) && len(p.Floor) == 0 && p.Depth.Given():
		ground, depth := p.lowestEdge(), p.entry("depth", p.Depth)
		level, how = outOf(ground.Number-depth.Number, ground, depth), byDepth
	case takesUp(p.Kind):
		level, how = p.lowestFloor(), byFloor
	case p.WaterLevel.Given():
		level = p.entry("water_level", p.WaterLevel)
	case p.Outlet != nil && p.Outlet.Level.Given():
		level, how = p.entry("outlet/level", p.Outlet.Level), byControl
	case p.OutletLevel.Given() || p.Kind == filter:
		level, how = p.entry("outlet_level", p.OutletLevel), byOutlet
	default:
		level = unknown(p.lack("water_level"))
	}
	return level, orUnknown(text(how, level.Inputs...), level.Lacks)
}

// lowestEdge is the lowest level of the ground at the part's edge.
func (p *part) lowestEdge() Value {
	if len(p.EdgeLevels) > 0 {
		return number(slices.MinFunc(p.EdgeLevels, lower).Value, p.drawn("edge_levels"))
	}
	return p.onGround(lowestGround)
}

// edge is the level over which the part's water runs out.
func (p *part) edge() Value {
	switch {
	case p.Kind == spillway:
		return p.lowestRim(p.serves())
	case takesUp(p.Kind):
		return p.lowestEdge()
	default:
		return p.entry("rim_level", p.RimLevel)
	}
}

// waysOut gives the spillways and pipes that let a storm out.
func (p *part) waysOut() []*part {
	ways := p.overflow()
	if len(ways) == 0 {
		ways = p.drawing.network.nodes[p.node].ways[warm]
	}
	var out []*part
	for _, w := range ways {
		to := p.drawing.partAt(w.to)
		if to != nil && (to.Kind == spillway || works(to.Kind) == pipe) && !slices.Contains(out, to) {
			out = append(out, to)
		}
	}
	return out
}

// partAt gives the part at a node, nil where there is none.
func (d *drawing) partAt(node int) *part {
	if i := node - len(d.Sources); i >= 0 && i < len(d.parts) {
		return d.parts[i]
	}
	return nil
}

func (s *standingWater) named() Value {
	names, inputs := make([]string, len(s.ways)), make([]Input, len(s.ways))
	for i, w := range s.ways {
		names[i], inputs[i] = w.ID, Input{Name: w.ID, Pointer: w.Pointer}
	}
	return text(listed(names), inputs...)
}

// peak is the greatest of the flows that reach the part and its ways out, which
// others may share.
func (s *standingWater) peak() Value {
	peaks := s.drawing.peaks()
	flow := peaks.storm(s.part)
	for _, w := range s.ways {
		shared := peaks.storm(w)
		inputs, lacks := gathered([]Value{flow, shared})
		flow = orUnknown(number(max(flow.Number, shared.Number), inputs...), lacks)
	}
	return flow
}

func (s *standingWater) inStorm() Value {
	switch {
	case !s.flow.Known() || !s.dry.Known() || s.flow.Number == 0:
		return outOf(s.dry.Number, s.flow, s.dry)
	case s.Kind == spillway:
		return s.risen(s.rating())
	case len(s.ways) == 0:
		return unknown(Lack{s.Pointer + "/overflow_to", "a spillway or overflow pipe that " + s.ID + " overflows into"})
	}
	ratings := make([]*rating, len(s.ways))
	for i, w := range s.ways {
		ratings[i] = w.rating()
	}
	return s.risen(ratings...)
}

// risen is the level at which ways out let the storm out, not below the ordinary
// one.
func (s *standingWater) risen(ways ...*rating) Value {
	from := []Value{s.flow, s.dry}
	for _, w := range ways {
		from = append(from, w.low, w.drawn)
	}
	return worked(ways[0].refused(), func() (float64, error) {
		level, err := levelFor(s.flow.Number, ways)
		return max(level, s.dry.Number), err
	}, from...)
}

// levelFor is the level at which ways out carry a discharge together: at most that
// at which one of them carries it alone.
func levelFor(discharge float64, ways []*rating) (float64, error) {
	highest := 0.0
	for i, w := range ways {
		head, err := w.head(discharge)
		if err != nil {
			return 0, err
		}
		if level := w.low.Number + head; i == 0 || level < highest {
			highest = level
		}
	}
	if len(ways) == 1 {
		return highest, nil
	}
	lowest := lowestOf(ways)
	head, err := hydraulics.HeadFor(discharge, highest-lowest+geometry.Resolution, func(head float64) (float64, error) {
		return flowAt(lowest+head, ways)
	})
	return lowest + head, err
}

// flowAt is the flow of ways out together at a level.
func flowAt(level float64, ways []*rating) (sum float64, err error) {
	for _, w := range ways {
		flow, err := w.flow(max(level-w.low.Number, 0))
		if err != nil {
			return 0, err
		}
		sum += flow
	}
	return sum, nil
}
