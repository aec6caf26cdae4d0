package figures

import (
	"fmt"
	"math"
	"slices"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var cleanoutTable = tabulate(
	List{Name: "cleanouts", Doc: "How every drain pipe and overflow pipe can be cleaned, each pipe by itself.", Subject: "a pipe"},
	(*drawing).rodded, (*rodded).subject,
	[]column[*rodded]{
		{Field{Name: "kind", Kind: Text, Doc: "The pipe's kind.", Words: []string{drainPipe, overflowPipe}}, func(r *rodded) Value { return r.kind() }},
		{Field{Name: "length", Kind: Number, Dimension: quantity.Length, Doc: "Length of the pipe in plan.",
			Formula: "Σ √(Δx² + Δy²) from point to point of its path"}, func(r *rodded) Value { return r.ofPath(r.length) }},
		{Field{Name: "cleanouts", Kind: Number, Dimension: quantity.Number, Doc: "Cleanouts drawn on it."},
			func(r *rodded) Value { return number(float64(len(r.Cleanouts))) }},
		{Field{Name: "longest_run", Kind: Number, Dimension: quantity.Length,
			Doc: "Longest run to a cleanout of the pipe or to its end, from the cleanout before, from where the pipe begins or, where another pipe leads into it, from the last cleanout of that one. " +
				"A cleanout drawn farther from the pipe than a foot, and than the drawing's tolerance of distance, is none of its own.",
			Formula: "greatest length along the paths, each cleanout at the place of the path nearest to it"},
			func(r *rodded) Value { return r.ofPath(r.greatest(func(x run) float64 { return x.length })) }},
		{Field{Name: "cleanout_off_pipe", Kind: Number, Dimension: quantity.Length, Doc: "How far the farthest cleanout is drawn from the pipe; 0 without a cleanout.",
			Formula: "greatest distance in plan of a cleanout from the path"}, func(r *rodded) Value { return r.ofPath(r.off) }},
		{Field{Name: "sharpest_bend", Kind: Number, Dimension: quantity.Angle, Doc: "Sharpest single change of direction; 0 of a straight pipe.",
			Formula: bendFormula}, func(r *rodded) Value { return r.ofBends(r.sharpest) }},
		{Field{Name: "bends_without_cleanout", Kind: Number, Dimension: quantity.Angle,
			Doc:     "Most degrees of bend in one such run. A bend at a cleanout counts with the run below it.",
			Formula: "Σ of the bends of the run; " + bendFormula + "; where pipes lead on end to end, the angle between them"}, func(r *rodded) Value { return r.ofBends(r.greatest(func(x run) float64 { return x.degrees })) }},
		{Field{Name: "bends_without_cleanout_at", Kind: Text, Doc: "The run that has them."}, (*rodded).most},
	},
)

const bendFormula = "at each point of the path the angle between the directions before and after it in plan, or the bends drawn at that point where they are more; " +
	"bends drawn elsewhere by their own angle; wyes and tees none of their own"

// rodded is a pipe cut into runs by its cleanouts.
type rodded struct {
	*part
	path     []geometry.Point
	starts   []float64 // of the points along the path, m
	length   float64
	opens    []float64 // the cleanouts, along the path, in order
	off      float64
	bends    []bend
	sharpest float64
	runsIn   []runIn
	runs     []run  // to each cleanout and to the end
	lacks    []Lack // of the bends
}

// bend is a change of direction at a length along the path.
type bend struct{ along, degrees float64 }

// run is a length of pipe without a cleanout, and what it bends in all.
type run struct{ length, degrees float64 }

// runIn is a run that goes on from another pipe.
type runIn struct {
	run
	along float64 // where it comes in
}

// cleanoutReach is how far from its pipe a cleanout may be drawn, in m: a foot, the
// length of a branch and a bend up to the surface. Common practice, no source.
const cleanoutReach = 0.3048

func (d *drawing) rodded() []*rodded {
	var all []*rodded
	of := map[int]*rodded{}
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		r := &rodded{part: p, runs: []run{{}}}
		all, of[p.node] = append(all, r), r
		if len(p.Path) >= 2 {
			r.measure()
		}
	}
	for _, i := range d.network.order {
		if r := of[i]; r != nil && r.path != nil {
			r.cut()
			r.leadOn(of)
		}
	}
	return all
}

func (r *rodded) measure() {
	r.path = r.shape.Points()
	for i := range r.path {
		if i > 0 {
			r.length += apart(r.path[i-1], r.path[i])
		}
		r.starts = append(r.starts, r.length)
	}
	reach := max(cleanoutReach, r.drawing.planTolerance())
	for _, c := range r.Cleanouts {
		along, off := r.station(geometry.Point(c))
		if r.off = max(r.off, off); off <= reach {
			r.opens = append(r.opens, along)
		}
	}
	slices.Sort(r.opens)
	r.bend()
}

// station is the length along the path of its place nearest to a point, and
// how far that is off.
func (r *rodded) station(p geometry.Point) (along, off float64) {
	off = math.Inf(1)
	for i := 1; i < len(r.path); i++ {
		near, _ := geometry.Nearest(geometry.Path(r.path[i-1:i+1]), geometry.At(p))
		if d := apart(near, p); d < off {
			along, off = r.starts[i-1]+apart(r.path[i-1], near), d
		}
	}
	return along, off
}

// bend notes every bend.
func (r *rodded) bend() {
	fitted := r.fitted()
	for i := 1; i+1 < len(r.path); i++ {
		drawn := geometry.Turn(r.path[i-1], r.path[i], r.path[i], r.path[i+1])
		k := slices.IndexFunc(fitted, func(b bentAt) bool { return apart(b.at, r.path[i]) <= geometry.Resolution })
		if k < 0 {
			r.note(r.starts[i], drawn)
			continue
		}
		r.note(r.starts[i], max(drawn, fitted[k].degrees))
		fitted = slices.Delete(fitted, k, k+1)
	}
	for _, b := range fitted {
		along, _ := r.station(b.at)
		r.note(along, b.degrees)
	}
}

func (r *rodded) note(along, degrees float64) {
	r.bends = append(r.bends, bend{along, degrees})
	r.sharpest = max(r.sharpest, degrees)
}

// cut gives the run to every cleanout and to the end.
func (r *rodded) cut() {
	ends := append(slices.Clone(r.opens), r.length)
	r.runs = make([]run, len(ends))
	from := 0.0
	for i, to := range ends {
		r.runs[i], from = r.between(from, to, i > 0), to
	}
}

// between is the longest run and that which bends most from one place to another,
// those that go on from other pipes with them.
func (r *rodded) between(from, to float64, opened bool) run {
	longest := run{to - from, r.bent(from, to)}
	for _, in := range r.runsIn {
		if in.along <= to+geometry.Resolution && (in.along > from+geometry.Resolution || !opened) {
			longest.length = max(longest.length, in.length+to-in.along)
			longest.degrees = max(longest.degrees, in.degrees+r.bent(in.along, to))
		}
	}
	return longest
}

// bent adds up the bends from one place to another; a bend at the second counts
// beyond it, but for one at the end of the pipe.
func (r *rodded) bent(from, to float64) float64 {
	degrees := 0.0
	for _, b := range r.bends {
		before := b.along < to-geometry.Resolution || to >= r.length
		if b.along >= from-geometry.Resolution && before {
			degrees += b.degrees
		}
	}
	return degrees
}

// leadOn gives the pipes that this one leads into the run that goes on in them.
func (r *rodded) leadOn(of map[int]*rodded) {
	for _, w := range r.drawing.network.nodes[r.node].ways[everSeason] {
		next := of[w.to]
		if next == nil || next.path == nil {
			continue
		}
		j := join{r.part, next.part}
		leaves, comesIn, turn := r.length, 0.0, 0.0
		switch {
		case j.branches():
			leaves, _ = r.station(next.path[0])
		default:
			comesIn, _ = next.station(r.path[len(r.path)-1])
		}
		if comesIn == 0 && leaves == r.length {
			turn = geometry.Turn(r.path[len(r.path)-2], r.path[len(r.path)-1], next.path[0], next.path[1])
		}
		goesOn := r.backFrom(leaves)
		goesOn.degrees += turn
		next.runsIn = append(next.runsIn, runIn{goesOn, comesIn})
	}
}

// backFrom is the run from the last cleanout to a place.
func (r *rodded) backFrom(to float64) run {
	from, opened := 0.0, false
	for _, open := range r.opens {
		if open <= to+geometry.Resolution {
			from, opened = open, true
		}
	}
	return r.between(from, to, opened)
}

// bentAt is what the fittings at one place bend.
type bentAt struct {
	at      geometry.Point
	degrees float64
}

// bendOf has the degrees of every kind of fitting that bends the pipe.
var bendOf = map[string]float64{"22.5° bend": 22.5, "45° bend": 45, "90° bend": 90}

// fitted adds up the bends drawn at each place.
func (r *rodded) fitted() []bentAt {
	var all []bentAt
	for i, f := range r.Fittings {
		degrees := bendOf[f.Kind]
		switch {
		case degrees == 0:
			continue
		case f.At == nil:
			r.lacks = append(r.lacks, Lack{member(r.Pointer+"/fittings", i) + "/at", fmt.Sprintf("at of fitting %d of %s", i+1, r.ID)})
			continue
		}
		at := geometry.Point(*f.At)
		k := slices.IndexFunc(all, func(b bentAt) bool { return apart(b.at, at) <= geometry.Resolution })
		if k < 0 {
			k, all = len(all), append(all, bentAt{at: at})
		}
		all[k].degrees += degrees
	}
	return all
}

func (r *rodded) inputs() []Input {
	inputs := []Input{r.drawn("path")}
	if len(r.Cleanouts) > 0 {
		inputs = append(inputs, r.drawn("cleanouts"))
	}
	return inputs
}

func (r *rodded) ofPath(x float64) Value { return orUnknown(number(x, r.inputs()...), r.pathless()) }

func (r *rodded) ofBends(degrees float64) Value {
	v := number(degrees, r.inputs()...)
	if len(r.Fittings) > 0 {
		v.Inputs = append(v.Inputs, r.drawn("fittings"))
	}
	return orUnknown(v, append(r.pathless(), r.lacks...))
}

// greatest is the greatest of some measure of the runs.
func (r *rodded) greatest(measure func(run) float64) float64 {
	most := 0.0
	for _, x := range r.runs {
		most = max(most, measure(x))
	}
	return most
}

// most words the run that bends most.
func (r *rodded) most() Value {
	v := r.ofBends(0)
	if v.Known() {
		most := r.greatest(func(x run) float64 { return x.degrees })
		v.Text = r.worded(slices.IndexFunc(r.runs, func(x run) bool { return x.degrees == most }))
	}
	return v
}

func (r *rodded) worded(i int) string {
	from, to := "the start", "the end"
	if i > 0 {
		from = fmt.Sprintf("cleanout %d along it", i)
	}
	if i < len(r.opens) {
		to = fmt.Sprintf("cleanout %d along it", i+1)
	}
	return "from " + from + " to " + to
}
