package figures

import (
	"fmt"

	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

var reachTable = tabulate(
	List{Name: "reaches", Subject: "a reach of pipe",
		Doc: "Every reach of every drain pipe and overflow pipe, between one drawn invert and the next; the whole pipe where no invert is drawn."},
	(*drawing).reaches, (*reach).subject,
	[]column[*reach]{
		{Field{Name: "kind", Kind: Text, Doc: "The pipe's kind.", Words: []string{drainPipe, overflowPipe}}, func(r *reach) Value { return r.kind() }},
		{Field{Name: "length", Kind: Number, Dimension: quantity.Length, Doc: "Length along the pipe in plan.",
			Formula: "Σ √(Δx² + Δy²) from point to point of its path"}, (*reach).length},
		{Field{Name: "fall", Kind: Number, Dimension: quantity.Length,
			Doc:     "Fall in the direction that the water runs; negative where the pipe rises.",
			Formula: "upper invert − lower invert"}, (*reach).fall},
		{Field{Name: "slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope in the direction that the water runs; negative where the pipe rises.",
			Formula: "fall ÷ length in plan"}, (*reach).slope},
	},
)

// reach is a stretch of pipe of one grade.
type reach struct {
	*part
	name string
	path geometry.Shape
	from int // number of the upper invert
	to   int // of the lower one; the same when there is none
}

func (d *drawing) reaches() []*reach {
	var all []*reach
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		all = append(all, p.reaches()...)
	}
	return all
}

func (p *part) reaches() []*reach {
	points, inverts := p.shape.Points(), len(p.Inverts)
	if inverts != len(points) || inverts <= 2 {
		return []*reach{{p, p.ID, p.shape, 0, max(inverts-1, 0)}}
	}
	var all []*reach
	for i := 1; i < inverts; i++ {
		all = append(all, &reach{p, fmt.Sprintf("%s reach %d", p.ID, i), geometry.Path(points[i-1 : i+1]), i - 1, i})
	}
	return all
}

func (r *reach) subject() Subject { return Subject{r.name, []string{r.ID}, []string{r.Pointer}} }

func (r *reach) length() Value {
	return orUnknown(number(r.path.Length(), r.drawn("path")), r.unplaced())
}

func (r *reach) fall() Value {
	if r.from == r.to {
		return unknown(r.lack("inverts"))
	}
	upper, lower := r.invert("upper invert", r.from), r.invert("lower invert", r.to)
	return number(r.Inverts[r.from].Value-r.Inverts[r.to].Value, upper, lower)
}

func (r *reach) invert(name string, i int) Input {
	return Input{Name: name, Pointer: member(r.Pointer+"/inverts", i)}
}

func (r *reach) slope() Value {
	fall, length := r.fall(), r.path.Length()
	switch {
	case !fall.Known():
		return fall
	case length <= geometry.Resolution:
		return unknown(Lack{r.Pointer + "/path", "a length of " + r.name})
	}
	return number(fall.Number/length, append(fall.Inputs, r.drawn("path"))...)
}
