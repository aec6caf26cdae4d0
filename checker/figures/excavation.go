package figures

import (
	"errors"
	"math"

	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

var excavationTable = tabulate(
	List{Name: "quantities.excavation", Subject: "a part that is dug",
		Doc: "Every part that is dug into the ground, but for pipes, whose trenches are not drawn: surge tanks, planted gravel beds, mulch basins, infiltration trenches, settling basins, ponds. " +
			"Working space is not in it, nor the sloping or shoring that keeps a cut from burying somebody."},
	(*drawing).excavations, (*excavation).subject,
	[]column[*excavation]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, func(e *excavation) Value { return e.kind() }},
		{Field{Name: "volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume in the ground as it lies.",
			Formula: "area × depth where a depth is drawn; else with a side slope what lies between the ground by the spot levels and the floor with its sides carried up to it, " +
				"triangle by triangle, or where the ground is not known (area at the floor + 4 × area half way + area at the rim) × depth ÷ 6; " +
				"else the ground less the floor at each corner and wherever the ground bends along the edge, linear in between, over the outline",
			Source: digSource}, func(e *excavation) Value { return e.bank }},
		{Field{Name: "volume_by", Kind: Text, Doc: "What shows the volume.", Words: []string{depthDrawn, groundDrawn, sidesDrawn, levelsDrawn}},
			func(e *excavation) Value { return e.by }},
		{Field{Name: "soil_read_as", Kind: Text, Doc: "Soil of the table of swelling that the site's texture is read as."}, (*excavation).soilName},
		{Field{Name: "loose_volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume of the same soil on the heap or the truck.",
			Formula: "volume × loose volume of a unit of soil", Source: swellSource}, func(e *excavation) Value { return e.in(earthwork.Loose) }},
		{Field{Name: "compacted_volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume that the same soil fills when it is placed and compacted, as in a bank.",
			Formula: "volume × compacted volume of a unit of soil", Source: swellSource}, func(e *excavation) Value { return e.in(earthwork.Compacted) }},
		{Field{Name: "fill", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume of its embankment over the ground, compacted; 0 where none is drawn.",
			Formula: "what lies between the ground and the bank's top with its outside slope, carried through the part − (volume that the part holds up to its rim − volume dug)", Source: digSource},
			func(e *excavation) Value { return e.filled }},
		{Field{Name: "left_over", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Soil in the ground that the embankment leaves over; negative where soil has to be brought.",
			Formula: "volume − fill ÷ compacted volume of a unit of soil"}, (*excavation).leftOver},
	},
)

// What else shows the volume that is dug.
const (
	depthDrawn  = "depth as drawn"
	groundDrawn = "spot levels of the ground, floor and sides"
	levelsDrawn = "levels of the ground and the floor"
)

var (
	digSource   = Citation{Title: earthwork.GridSource + "; " + earthwork.PrismoidalSource, Standing: FromMemory}
	swellSource = Citation{Title: earthwork.SoilsSource, Standing: Published}
)

// excavation is a part that is dug.
type excavation struct {
	*part
	bank, by, filled Value
}

func (d *drawing) excavations() []*excavation {
	var all []*excavation
	for _, p := range d.ofKind(surgeTank, plantedBed, mulchBasin, trench, settlingBasin, pond) {
		if p.AboveGround == nil || !*p.AboveGround {
			bank, how := p.dug()
			e := &excavation{part: p, bank: bank, by: orUnknown(text(how, bank.Inputs...), bank.Lacks)}
			e.filled = e.fill()
			all = append(all, e)
		}
	}
	return all
}

// dug is the volume that is dug for the part.
func (p *part) dug() (bank Value, how string) {
	area := p.drawnArea()
	switch {
	case p.Depth.Given():
		depth := p.entry("depth", p.Depth)
		return outOf(area.Number*depth.Number, area, depth), depthDrawn
	case p.SideSlope.Given():
		if cut, ok := p.dugFromGround(); ok {
			return cut, groundDrawn
		}
		return p.held((*earthwork.Basin).Volume, p.entry("rim_level", p.RimLevel)), sidesDrawn
	case !area.Known():
		return area, levelsDrawn
	case len(p.Outline) == 0:
		return unknown(p.lack("depth")), levelsDrawn
	default:
		return p.dugByLevels(), levelsDrawn
	}
}

// dugFromGround is the volume between the ground and a level floor whose sides are
// carried up to it, where both are known.
func (p *part) dugFromGround() (Value, bool) {
	run, rim, floor := p.sides(), p.entry("rim_level", p.RimLevel), p.levelFloor()
	inputs, lacks := gathered([]Value{p.drawnArea(), run, rim, floor})
	surface, unknownGround := p.drawing.surface("round " + p.ID)
	if len(lacks) > 0 || len(unknownGround) > 0 {
		return Value{}, false
	}
	bottom, err := earthwork.Offset(p.shape.Points(), -run.Number*(rim.Number-floor.Number))
	if err != nil {
		return Value{}, false
	}
	body, err := earthwork.Excavation(earthwork.Shape{Outline: bottom, Levels: []float64{floor.Number}, Run: run.Number}, surface)
	if err != nil {
		return Value{}, false
	}
	return number(body.Volume, append(inputs, spotLevels)...), true
}

// dugByLevels is the volume between the ground and the floor, walls upright.
func (p *part) dugByLevels() Value {
	if len(p.Floor) == 0 {
		return unknown(Lack{p.Pointer + "/floor", "floor of " + p.ID + ", or its depth"})
	}
	hole := p.hole()
	if v := hole.leastDepth(); v.Known() && v.Number < -geometry.Resolution {
		return unknown(Lack{p.Pointer + "/floor", "a floor of " + p.ID + " below the ground everywhere"})
	}
	return hole.volume()
}

// hole is the part as dug, from the ground down to its floor.
func (p *part) hole() *bed {
	bare := *p.Part
	bare.Surface = nil
	return newBed(&part{Part: &bare, drawing: p.drawing, shape: p.shape, lies: p.lies})
}

func (e *excavation) soil() (soil earthwork.Soil, v Value) {
	s := e.drawing.Site.Soil
	if s == nil || s.Texture == "" {
		return soil, unknown(soilEntry("texture"))
	}
	soil, ok := earthwork.SoilOf(s.Texture)
	if !ok {
		return soil, unknown(beyond(soilEntry("texture"), earthwork.SoilsSource))
	}
	return soil, text(soil.Name, Input{Name: "texture", Pointer: soilPointer + "/texture"})
}

func (e *excavation) soilName() Value {
	_, name := e.soil()
	return name
}

// in gives the volume of the soil in another state.
func (e *excavation) in(state earthwork.State) Value {
	soil, name := e.soil()
	return worked(soilEntry("texture"), func() (float64, error) {
		return inRange(soil.Convert(e.bank.Number, earthwork.Bank, state))
	}, e.bank, name)
}

// fill is the embankment as compacted: a solid bank through the whole part, less what
// the part takes out of it above the ground.
func (e *excavation) fill() Value {
	bank := e.Embankment
	if bank == nil {
		return number(0)
	}
	level, width := e.entry("embankment/top_level", bank.TopLevel), e.entry("embankment/top_width", bank.TopWidth)
	slope, rim := e.entry("embankment/outside_slope", bank.OutsideSlope), e.entry("rim_level", e.RimLevel)
	held := e.held((*earthwork.Basin).Volume, rim)
	inputs, lacks := gathered([]Value{level, width, slope, held, e.bank})
	surface, unknownGround := e.drawing.surface("round " + e.ID)
	if lacks = append(lacks, unknownGround...); len(lacks) > 0 {
		return unknown(lacks...)
	}
	if math.Abs(level.Number-rim.Number) > geometry.Resolution || e.by.Text != groundDrawn {
		return unknown(Lack{e.Pointer + "/embankment/top_level", "an embankment of " + e.ID + " whose top is its rim, with spot levels all round"})
	}
	solid, err := e.solid(surface, level.Number, width.Number, slope.Number)
	if err != nil {
		return unknown(Lack{e.Pointer + "/embankment", "embankment of " + e.ID + " within the range of the formula: " + err.Error()})
	}
	return number(solid-(held.Number-e.bank.Number), append(inputs, spotLevels)...)
}

var errAboveBank = errors.New("the ground rises above the top of the bank")

// solid is the bank without the part in it.
func (e *excavation) solid(surface *ground.Surface, level, width, slope float64) (float64, error) {
	if slope <= 0 {
		return 0, earthwork.ErrRun
	}
	outer, err := earthwork.Offset(e.shape.Points(), width)
	if err != nil {
		return 0, err
	}
	under, ok := surface.Under(geometry.Outline(outer))
	if !ok {
		return 0, earthwork.ErrBeyondGround
	}
	if under.Highest > level+geometry.Resolution {
		return 0, errAboveBank
	}
	body, err := earthwork.Embankment(earthwork.Shape{Outline: outer, Levels: []float64{level}, Run: 1 / slope}, surface)
	return body.Volume, err
}

func (e *excavation) leftOver() Value {
	soil, name := e.soil()
	return worked(soilEntry("texture"), func() (float64, error) {
		taken, err := inRange(soil.Convert(e.filled.Number, earthwork.Compacted, earthwork.Bank))
		return e.bank.Number - taken, err
	}, e.bank, e.filled, name)
}
