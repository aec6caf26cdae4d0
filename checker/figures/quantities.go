package figures

import (
	"fmt"
	"strings"

	"greysill/checker/design"
	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// quantityTables has one list for each kind of work and material that is taken
// off the drawing.
var quantityTables = []table{gravelTable, linerTable, pipeLengthTable, fittingTable, mulchTable, plantTable, excavationTable}

var gravelTable = tabulate(
	List{Name: "quantities.gravel", Doc: "Every layer of gravel, stone or sand of planted gravel beds and infiltration trenches.", Subject: "a layer of media"},
	(*drawing).stones, (*stones).subject,
	[]column[*stones]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(s *stones) Value { return text(s.ID) }},
		{Field{Name: "material", Kind: Text, Doc: "What it is."}, func(s *stones) Value { return text(s.Material, s.entry("material")) }},
		{Field{Name: "size", Kind: Number, Dimension: quantity.GrainSize, Doc: "Typical size of its stones or grains."}, func(s *stones) Value { return s.size() }},
		{Field{Name: "volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume in place, stones and the pores between them.",
			Formula: "area of the part × thickness"}, func(s *stones) Value { return s.taken }},
		{Field{Name: "least_mass", Kind: Number, Dimension: quantity.Mass,
			Doc:     "Least dry mass: by the greatest porosity, and the least specific gravity that stone usually has. A supplier's own density goes before it.",
			Formula: massFormula, Source: grainGravity}, func(s *stones) Value { return s.mass(lightStone, s.porosity().greatest) }},
		{Field{Name: "greatest_mass", Kind: Number, Dimension: quantity.Mass,
			Doc:     "Greatest dry mass: by the least porosity, and the greatest specific gravity that stone usually has.",
			Formula: massFormula, Source: grainGravity}, func(s *stones) Value { return s.mass(heavyStone, s.porosity().least) }},
	},
)

const massFormula = "volume × specific gravity × (1 − porosity) × 1,000 kg/m³"

var grainGravity = Citation{Title: "Specific gravity of stone, 2.5 to 2.7", Standing: Practice}

const (
	lightStone = 2.5
	heavyStone = 2.7
)

// stones is a layer of media with its volume.
type stones struct {
	*layer
	taken Value
}

func (d *drawing) stones() []*stones {
	var all []*stones
	for _, l := range d.layers() {
		all = append(all, &stones{l, l.volume()})
	}
	for _, p := range d.ofKind(trench) {
		for i := range p.Media {
			l := &layer{&bed{part: p}, &p.Media[i], i}
			thickness, area := l.read("thickness", l.Layer.Thickness), p.drawnArea()
			all = append(all, &stones{l, outOf(area.Number*thickness.Number, area, thickness)})
		}
	}
	return all
}

func (s *stones) mass(gravity float64, porosity Value) Value {
	constant := Input{Name: "specific gravity", Value: fmt.Sprint(gravity)}
	return worked(s.lacking("porosity"), func() (float64, error) {
		density, err := inRange(earthwork.DryDensity(gravity, porosity.Number))
		if err != nil {
			return 0, err
		}
		return inRange(earthwork.Mass(s.taken.Number, density))
	}, s.taken, porosity, Value{Inputs: []Input{constant}})
}

var linerTable = tabulate(
	List{Name: "quantities.liner", Doc: "Every liner as one rectangular sheet.", Subject: "a part with a liner"},
	(*drawing).sheets, (*linerSheet).subject,
	[]column[*linerSheet]{
		{Field{Name: "material", Kind: Text, Doc: "What it is."}, (*linerSheet).material},
		{Field{Name: "bedded", Kind: Truth, Doc: "Whether it lies on sand, fine soil or felt over smooth ground."},
			func(s *linerSheet) Value { return s.yesNo("liner/bedded", s.Liner.Bedded) }},
		{Field{Name: "length", Kind: Number, Dimension: quantity.Length, Doc: "Longer side of the sheet.", Formula: sheetFormula, Source: sheetSource},
			func(s *linerSheet) Value { return s.side(func(long, _ float64) float64 { return long }) }},
		{Field{Name: "width", Kind: Number, Dimension: quantity.Length, Doc: "Shorter side of the sheet.", Formula: sheetFormula, Source: sheetSource},
			func(s *linerSheet) Value { return s.side(func(_, short float64) float64 { return short }) }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of the sheet.", Formula: "length × width", Source: sheetSource},
			func(s *linerSheet) Value { return s.side(func(long, short float64) float64 { return long * short }) }},
	},
)

const sheetFormula = "side of the smallest rectangle round the outline − 2 × run × depth + 2 × depth × √(1 + run²) + 2 × overlap; walls without a side slope stand upright"

var sheetSource = Citation{Title: earthwork.SheetSource, Standing: Practice}

// linerSheet is a part with a liner.
type linerSheet struct {
	*part
	deep Value
}

func (d *drawing) sheets() []*linerSheet {
	var all []*linerSheet
	for _, p := range d.parts {
		if p.Liner != nil {
			all = append(all, &linerSheet{p, p.linedDepth()})
		}
	}
	return all
}

// linedDepth is how far the sheet goes down: from the rim to the lowest place of
// the floor, of a bed without a rim level from the surface of its media.
func (p *part) linedDepth() Value {
	if p.Kind == plantedBed && !p.RimLevel.Given() {
		return newBed(p).greatestDepth()
	}
	rim, floor := p.entry("rim_level", p.RimLevel), p.lowestFloor()
	deep := outOf(rim.Number-floor.Number, rim, floor)
	if deep.Known() && deep.Number <= geometry.Resolution {
		return unknown(Lack{p.Pointer + "/rim_level", "rim_level of " + p.ID + " above its floor"})
	}
	return deep
}

func (s *linerSheet) material() Value {
	if s.Liner.Material == "" {
		return unknown(s.lack("liner/material"))
	}
	return text(s.Liner.Material, s.drawn("liner/material"))
}

func (s *linerSheet) side(of func(long, short float64) float64) Value {
	overlap, run := s.entry("liner/overlap", s.Liner.Overlap), Value{}
	if s.SideSlope.Given() {
		run = s.sides()
	}
	return worked(s.lack("outline"), func() (float64, error) {
		long, short, ok := earthwork.Sheet(s.shape.Points(), s.deep.Number, run.Number, overlap.Number)
		return inRange(of(long, short), ok)
	}, s.drawnArea(), s.deep, run, overlap)
}

var mulchTable = tabulate(
	List{Name: "quantities.mulch", Doc: "Every part that mulch is laid on.", Subject: "a part with mulch"},
	func(d *drawing) []*part { return d.where(func(p *part) bool { return p.Mulch.Value > 0 }) }, (*part).subject,
	[]column[*part]{
		{Field{Name: "volume", Kind: Number, Dimension: quantity.EarthVolume, Doc: "Volume of mulch.", Formula: "area × depth of mulch"}, (*part).mulchVolume},
	},
)

func (d *drawing) where(holds func(*part) bool) []*part {
	var all []*part
	for _, p := range d.parts {
		if holds(p) {
			all = append(all, p)
		}
	}
	return all
}

func (p *part) mulchVolume() Value {
	area, mulch := p.drawnArea(), p.entry("mulch", p.Mulch)
	return outOf(area.Number*mulch.Number, area, mulch)
}

var plantTable = tabulate(
	List{Name: "quantities.plants", Doc: "Every kind of plant of every part; the kinds of one part share its area evenly.", Subject: "a kind of plant in a part"},
	(*drawing).plantings, (*planting).subject,
	[]column[*planting]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(p *planting) Value { return text(p.ID) }},
		{Field{Name: "species", Kind: Text, Doc: "What it is."}, (*planting).species},
		{Field{Name: "spacing", Kind: Number, Dimension: quantity.Length, Doc: "Distance from plant to plant."}, (*planting).spacing},
		{Field{Name: "least_count", Kind: Number, Dimension: quantity.Number, Doc: "Plants in square rows.",
			Formula: "area ÷ kinds of plant ÷ spacing², rounded up", Source: plantSource}, func(p *planting) Value { return p.count(earthwork.SquareRows) }},
		{Field{Name: "greatest_count", Kind: Number, Dimension: quantity.Number, Doc: "Plants in staggered rows.",
			Formula: "area ÷ kinds of plant ÷ (spacing² × √3 ÷ 2), rounded up", Source: plantSource},
			func(p *planting) Value { return p.count(earthwork.StaggeredRows) }},
	},
)

var plantSource = Citation{Title: "Plants by spacing", Standing: Practice}

// planting is one kind of plant in a part.
type planting struct {
	*part
	*design.Planting
	number int // in the order of the document, from 0
}

func (d *drawing) plantings() []*planting {
	var all []*planting
	for _, p := range d.parts {
		for i := range p.Plants {
			all = append(all, &planting{p, &p.Plants[i], i})
		}
	}
	return all
}

func (p *planting) subject() Subject {
	name := fmt.Sprintf("plant %d of %s", p.number+1, p.ID)
	return Subject{name, []string{p.ID}, []string{p.part.Pointer}}
}

func (p *planting) pointer(entry string) string {
	return member(p.part.Pointer+"/plants", p.number) + "/" + entry
}

func (p *planting) species() Value {
	return text(strings.TrimSpace(p.Species), Input{Name: "species", Pointer: p.pointer("species")})
}

func (p *planting) spacing() Value {
	if !p.Spacing.Given() {
		return unknown(Lack{p.pointer("spacing"), "spacing of plant " + fmt.Sprint(p.number+1) + " of " + p.ID})
	}
	return number(p.Spacing.Value, Input{Name: "spacing", Pointer: p.pointer("spacing")})
}

func (p *planting) count(pattern earthwork.Pattern) Value {
	area, spacing := p.drawnArea(), p.spacing()
	return worked(Lack{p.pointer("spacing"), "spacing of plant " + fmt.Sprint(p.number+1) + " of " + p.ID}, func() (float64, error) {
		count, ok := earthwork.Plants(area.Number/float64(len(p.Plants)), spacing.Number, pattern)
		return inRange(float64(count), ok)
	}, area, spacing)
}
