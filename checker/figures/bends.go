package figures

import (
	"cmp"
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
			Doc:     "Longest run without a cleanout: from an end of the pipe or a cleanout to the next.",
			Formula: "greatest length along the path between the ends and the cleanouts, each cleanout at the place of the path nearest to it"},
			func(r *rodded) Value { return r.ofPath(slices.Max(r.runs)) }},
		{Field{Name: "cleanout_off_pipe", Kind: Number, Dimension: quantity.Length, Doc: "How far the farthest cleanout is drawn from the pipe; 0 without a cleanout.",
			Formula: "greatest distance in plan of a cleanout from the path"}, func(r *rodded) Value { return r.ofPath(r.off) }},
		{Field{Name: "sharpest_bend", Kind: Number, Dimension: quantity.Angle, Doc: "Sharpest single change of direction; 0 of a straight pipe.",
			Formula: bendFormula}, func(r *rodded) Value { return r.ofBends(r.sharpest) }},
		{Field{Name: "bends_without_cleanout", Kind: Number, Dimension: quantity.Angle,
			Doc:     "Most degrees of bend in one run without a cleanout. A bend at a cleanout counts with the run below it.",
			Formula: "Σ of the bends of the run; " + bendFormula}, func(r *rodded) Value { return r.ofBends(slices.Max(r.degrees)) }},
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
	sharpest float64
	runs     []float64 // lengths
	degrees  []float64 // of bends in each run
	lacks    []Lack    // of the bends
}

func (d *drawing) rodded() []*rodded {
	var all []*rodded
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		r := &rodded{part: p, runs: []float64{0}, degrees: []float64{0}}
		if len(p.Path) >= 2 {
			r.measure()
		}
		all = append(all, r)
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
	for _, c := range r.Cleanouts {
		along, off := r.station(geometry.Point(c))
		r.opens, r.off = append(r.opens, along), max(r.off, off)
	}
	slices.Sort(r.opens)
	r.cut()
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

func (r *rodded) cut() {
	ends := append(slices.Clone(r.opens), r.length)
	r.runs, r.degrees = make([]float64, len(ends)), make([]float64, len(ends))
	from := 0.0
	for i, to := range ends {
		r.runs[i], from = to-from, to
	}
}

// bend adds every bend to its run.
func (r *rodded) bend() {
	fitted := r.fitted()
	for i := 1; i+1 < len(r.path); i++ {
		drawn := geometry.Turn(r.path[i-1], r.path[i], r.path[i], r.path[i+1])
		k := slices.IndexFunc(fitted, func(b bentAt) bool { return apart(b.at, r.path[i]) <= geometry.Resolution })
		if k < 0 {
			r.count(r.starts[i], drawn)
			continue
		}
		r.count(r.starts[i], max(drawn, fitted[k].degrees))
		fitted = slices.Delete(fitted, k, k+1)
	}
	for _, b := range fitted {
		along, _ := r.station(b.at)
		r.count(along, b.degrees)
	}
}

func (r *rodded) count(along, degrees float64) {
	run, open := slices.BinarySearchFunc(r.opens, along, func(o, along float64) int {
		if math.Abs(o-along) <= geometry.Resolution {
			return 0
		}
		return cmp.Compare(o, along)
	})
	if open {
		run++
	}
	r.degrees[run] += degrees
	r.sharpest = max(r.sharpest, degrees)
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

// most words the run that bends most.
func (r *rodded) most() Value {
	v := r.ofBends(0)
	if v.Known() {
		v.Text = r.run(slices.Index(r.degrees, slices.Max(r.degrees)))
	}
	return v
}

func (r *rodded) run(i int) string {
	from, to := "the start", "the end"
	if i > 0 {
		from = fmt.Sprintf("cleanout %d along it", i)
	}
	if i < len(r.opens) {
		to = fmt.Sprintf("cleanout %d along it", i+1)
	}
	return "from " + from + " to " + to
}
