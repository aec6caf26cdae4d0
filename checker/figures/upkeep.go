package figures

import (
	"fmt"
	"math"

	"greysill/checker/quantity"
)

var upkeepTable = tabulate(
	List{Name: "upkeep", Subject: "a part that needs upkeep",
		Doc: "Every part that fails when nobody looks after it: diverters, filters, surge tanks, planted gravel beds, mulch basins, settling basins, ponds."},
	(*drawing).upkeep, (*part).subject,
	[]column[*part]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind.", Words: kept}, (*part).kind},
		{Field{Name: "tasks", Kind: Number, Dimension: quantity.Number, Doc: "Maintenance tasks that name it.", Formula: "count"}, (*part).tasks},
		{Field{Name: "timed", Kind: Truth, Doc: "Whether a task that names it says how often."}, (*part).timed},
		{Field{Name: "shortest_interval", Kind: Number, Dimension: quantity.Duration, Doc: "How often the most frequent task that names it is done."}, (*part).shortestInterval},
		{Field{Name: "labelled", Kind: Truth, Doc: "Whether it is labelled as holding greywater."}, func(p *part) Value { return p.yesNo("labelled", p.Labelled) }},
	},
)

// kept are the kinds of part that need upkeep.
var kept = []string{diverter, filter, surgeTank, plantedBed, mulchBasin, settlingBasin, pond}

const tasksPointer = "/operation/tasks"

func (d *drawing) upkeep() []*part { return d.ofKind(kept...) }

// intervals gives how often each task is done that names the part, 0 where it
// does not say, with the places of those that do.
func (p *part) intervals() (every []float64, inputs []Input) {
	if p.drawing.Operation == nil {
		return nil, nil
	}
	for i, t := range p.drawing.Operation.Tasks {
		if t.Part != p.ID {
			continue
		}
		if every = append(every, t.Every.Value); t.Every.Value > 0 {
			inputs = append(inputs, Input{Name: fmt.Sprintf("task %d", i+1), Pointer: member(tasksPointer, i) + "/every"})
		}
	}
	return every, inputs
}

func (p *part) tasks() Value {
	every, inputs := p.intervals()
	return number(float64(len(every)), inputs...)
}

func (p *part) timed() Value {
	_, inputs := p.intervals()
	return truth(len(inputs) > 0, inputs...)
}

func (p *part) shortestInterval() Value {
	every, inputs := p.intervals()
	if len(inputs) == 0 {
		return unknown(Lack{tasksPointer, "a task with its interval for " + p.ID})
	}
	shortest := math.Inf(1)
	for _, e := range every {
		if e > 0 {
			shortest = min(shortest, e)
		}
	}
	return number(shortest, inputs...)
}
