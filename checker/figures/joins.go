package figures

import (
	"math"
	"slices"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var joinTable = tabulate(
	List{Name: "joins", Subject: "where a part leads on to the next",
		Doc: "Every way on, second route or overflow from one part to the next that begins or ends with a pipe and whose levels are drawn: mulch basins and trenches have none."},
	(*drawing).joins, (*join).subject,
	[]column[*join]{
		{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(j *join) Value { return text(j.from.ID) }},
		{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(j *join) Value { return j.from.kind() }},
		{Field{Name: "next", Kind: Text, Doc: "The id of the part that it leads to."}, func(j *join) Value { return text(j.to.ID) }},
		{Field{Name: "next_kind", Kind: Text, Doc: "That part's kind."}, func(j *join) Value { return j.to.kind() }},
		{Field{Name: "drop", Kind: Number, Dimension: quantity.Length,
			Doc:     "How far the water drops from where it leaves the one to where it enters the other; negative where it would have to rise.",
			Formula: "invert of the pipe's end or level of the outlet − invert of the next pipe's beginning or level of the inlet; where a pipe branches off or runs in midway, the other's invert there"}, (*join).drop},
		{Field{Name: "gap", Kind: Number, Dimension: quantity.Length, Doc: "Distance in plan between the two where they join.",
			Formula: "least distance in plan from the pipe's end to the other part, or from a pipe to where its branch begins"}, (*join).gap},
		{Field{Name: "meets", Kind: Truth, Doc: "Whether the two meet in plan, as far as the drawing's tolerance of distance tells."}, (*join).meets},
		{Field{Name: "narrows", Kind: Truth, Doc: "Whether a pipe leads into a smaller pipe, diverter or connection; false where it leads into anything else."}, (*join).narrows},
	},
)

// join is a way from one part to the next.
type join struct{ from, to *part }

func (d *drawing) joins() []*join {
	var all []*join
	for _, p := range d.parts {
		for _, o := range slices.Concat(p.To, p.BypassTo, p.OverflowTo) {
			j := &join{p, d.part(o.Target)}
			if j.to != nil && (j.from.isPipe() || j.to.isPipe()) && !takesUp(j.to.Kind) && !slices.ContainsFunc(all, j.is) {
				all = append(all, j)
			}
		}
	}
	return all
}

// part finds a part by its id, nil when the id is that of something else.
func (d *drawing) part(id string) *part {
	i := slices.IndexFunc(d.parts, func(p *part) bool { return p.ID == id })
	if i < 0 {
		return nil
	}
	return d.parts[i]
}

func (j *join) is(other *join) bool { return *j == *other }

func (p *part) isPipe() bool { return works(p.Kind) == pipe }

func (p *part) isDug() bool { return slices.Contains(dug, p.Kind) }

func (j *join) subject() Subject {
	return Subject{j.from.ID + " to " + j.to.ID, []string{j.from.ID, j.to.ID}, []string{j.from.Pointer, j.to.Pointer}}
}

func (j *join) drop() Value {
	leaves, enters := j.leavesAt(), j.entersAt()
	return outOf(leaves.Number-enters.Number, leaves, enters)
}

// leavesAt is the level at which the water leaves: of an overflow that of the
// pipe which takes it, since it is drawn nowhere else; of a pipe with a branch,
// the invert where the branch begins.
func (j *join) leavesAt() Value {
	p := j.from
	switch {
	case j.branches():
		return p.invertBeside(j.to.first())
	case p.isPipe():
		return p.invert(len(p.Inverts) - 1)
	case slices.ContainsFunc(p.OverflowTo, func(o design.Outlet) bool { return o.Target == j.to.ID }):
		return j.entersAt()
	case p.Kind == diverter:
		return p.entry("level", p.Level)
	case p.Kind == plantedBed && p.Outlet != nil && p.Outlet.Level.Given():
		return number(p.Outlet.Level.Value, p.drawn("outlet/level"))
	default:
		return p.entry("outlet_level", p.OutletLevel)
	}
}

// entersAt is the level at which the water enters: of a pipe that another runs
// into midway, its invert there.
func (j *join) entersAt() Value {
	if j.ofPipes() && !j.branches() {
		return j.to.invertBeside(j.from.last())
	}
	return j.to.entersAt()
}

// branches reports whether the next pipe begins nearer to this one than this one
// ends to the next.
func (j *join) branches() bool {
	return j.ofPipes() && geometry.Distance(j.to.first(), j.from.shape) < geometry.Distance(j.from.last(), j.to.shape)
}

// ofPipes reports whether both parts are pipes with a path.
func (j *join) ofPipes() bool {
	return j.from.isPipe() && j.to.isPipe() && len(j.from.Path) > 1 && len(j.to.Path) > 1
}

// invertBeside is the invert at the place of the path nearest to a point.
func (p *part) invertBeside(at geometry.Shape) Value {
	var nearest *reach
	for _, r := range p.reaches() {
		if nearest == nil || geometry.Distance(r.path, at) < geometry.Distance(nearest.path, at) {
			nearest = r
		}
	}
	return nearest.level(nearest.along(at))
}

// along is the length along the reach to its place nearest to a point.
func (r *reach) along(at geometry.Shape) float64 {
	place, _ := geometry.Nearest(r.path, at)
	along, line := 0.0, r.path.Points()
	for i := 1; i < len(line); i++ {
		step := geometry.Path(line[i-1 : i+1])
		if geometry.Distance(step, geometry.At(place)) <= geometry.Resolution {
			return along + apart(line[i-1], place)
		}
		along += step.Length()
	}
	return along
}

func (p *part) entersAt() Value {
	switch {
	case p.isPipe():
		return p.invert(0)
	case p.Kind == diverter || leaves(p.Kind):
		return p.entry("level", p.Level)
	case p.Kind == plantedBed && p.Inlet != nil && p.Inlet.Level.Given():
		return number(p.Inlet.Level.Value, p.drawn("inlet/level"))
	default:
		return p.entry("inlet_level", p.InletLevel)
	}
}

func (p *part) invert(i int) Value {
	if len(p.Inverts) == 0 {
		return unknown(p.lack("inverts"))
	}
	return number(p.Inverts[i].Value, Input{Name: "invert of " + p.ID, Pointer: member(p.Pointer+"/inverts", i)})
}

// gap is measured from the end of the pipe; of two pipes from the end of the
// first to the second, or from the first to the beginning of its branch.
func (j *join) gap() Value {
	if lacks := append(j.from.unplaced(), j.to.unplaced()...); len(lacks) > 0 {
		return unknown(lacks...)
	}
	least := math.Inf(1)
	if j.from.isPipe() {
		least = j.to.awayFrom(j.from.last())
	}
	if j.to.isPipe() {
		least = min(least, j.from.awayFrom(j.to.first()))
	}
	return number(least, Input{Name: j.from.ID, Pointer: j.from.lies}, Input{Name: j.to.ID, Pointer: j.to.lies})
}

func (p *part) first() geometry.Shape { return geometry.At(p.shape.Points()[0]) }

func (p *part) last() geometry.Shape {
	line := p.shape.Points()
	return geometry.At(line[len(line)-1])
}

// awayFrom is how far the ground that the part covers is from a place.
func (p *part) awayFrom(at geometry.Shape) float64 {
	least := math.Inf(1)
	for _, g := range p.grounds {
		least = min(least, max(geometry.Distance(at, g.shape)-g.half, 0))
	}
	return least
}

func (j *join) meets() Value {
	gap := j.gap()
	return orUnknown(truth(gap.Number <= j.from.drawing.planTolerance(), gap.Inputs...), gap.Lacks)
}

func (j *join) narrows() Value {
	if !j.from.isPipe() || !j.to.isPipe() && j.to.Kind != diverter && !leaves(j.to.Kind) {
		return truth(false)
	}
	from, to := j.from.diameter(), j.to.diameter()
	known := outOf(0, from, to)
	return orUnknown(truth(to.Number < from.Number-geometry.Resolution, known.Inputs...), known.Lacks)
}
