package drawing

import (
	"fmt"
	"slices"
	"strconv"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/geometry"
	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

// WaysOut draws what every spillway and overflow pipe carries with the water at
// the rim, beside the peak of the design storm, nil when neither is known of any.
func WaysOut(r Review) *Drawing {
	const least, most, storm = "least_capacity", "greatest_capacity", "storm_flow"
	rows := slices.Clone(r.Figures.List("spillways"))
	rows = slices.DeleteFunc(rows, func(it *figures.Item) bool { return greatest([]*figures.Item{it}, least, most, storm) == 0 })
	if len(rows) == 0 {
		return nil
	}
	c := newChart(r, quantity.Flow, greatest(rows, least, most, storm), box{34, 2, paperWidth - 16, 3 + rowHeight*float64(len(rows))})
	c.level()
	for i, it := range rows {
		y := c.plot.top + 1 + rowHeight*float64(i)
		c.text("note", cut(it.Subject.IDs[0], smallLettering, 32), point{c.plot.left - 1, y + rowHeight/2 + 0.36*smallLettering - 0.4}, right, smallLettering)
		c.capacity(it.Value(least), it.Value(most), y)
		if v := it.Value(storm); v.Known() {
			c.stormMark(c.x(v.Number), y-0.4, y+rowHeight-1)
		}
	}
	c.key.area("bar", "carries at least")
	c.key.area("bar third", "carries at most")
	c.key.add("peak of the design storm", func(c *canvas, at point) {
		c.line("storm-mark", []point{at.plus(keySample/2, -1.6), at.plus(keySample/2, 1.6)})
	})
	return c.finish(&Drawing{Name: "ways-out", Title: "Spillways and overflow pipes with the water at the rim, and the design storm",
		Desc: "Bars for every spillway and overflow pipe: the least and the greatest flow that it carries, with a mark at the peak of the design storm. The table of spillways gives the numbers."})
}

func (c *chart) capacity(least, most *figures.Value, y float64) {
	if !least.Known() || !most.Known() {
		c.text("note", "capacity not known", point{c.plot.left + 2, y + rowHeight/2 + 0.3}, left, smallLettering)
		return
	}
	c.rect("bar third", box{c.plot.left, y, c.x(most.Number), y + 3.6})
	c.rect("bar", box{c.plot.left, y, c.x(least.Number), y + 3.6})
}

func (c *chart) stormMark(x, from, to float64) {
	c.canvas.line("storm-mark", []point{{x, from}, {x, to}})
}

// Ratings draws the stage and discharge of every spillway whose crest and rim are
// known, with the design storm marked. A pipe's flow at the rim is with the ways
// out.
func Ratings(r Review) []*Drawing {
	var all []*Drawing
	for _, it := range r.Figures.List("spillways") {
		part := r.Figures.Design.Part(it.Subject.IDs[0])
		head, most := it.Value("head"), it.Value("greatest_capacity")
		if part.Kind == spillway && head.Known() && head.Number > 0 && most.Known() {
			all = append(all, rating(r, part, it, "rating-"+strconv.Itoa(len(all)+1)))
		}
	}
	return all
}

const ratingSteps = 40

func rating(r Review, part *design.Part, it *figures.Item, name string) *Drawing {
	head, storm := it.Value("head").Number, it.Value("storm_flow")
	greatestFlow := it.Value("greatest_capacity").Number
	if storm.Known() {
		greatestFlow = max(greatestFlow, storm.Number)
	}
	c := newChart(r, quantity.Flow, greatestFlow, box{chartLeft, 6, paperWidth - 16, 56})
	c.level()
	up := newChart(r, quantity.Length, head, c.plot)
	c.stages(up)
	for i, share := range []float64{hydraulics.EarthCrest.Low / hydraulics.BroadCrest, hydraulics.EarthCrest.High / hydraulics.BroadCrest} {
		c.canvas.line([]string{"heavy", "fine"}[i], c.curve(up, spillwayOf(part, share), head))
	}
	c.key.line("heavy", "least discharge")
	c.key.line("fine", "greatest discharge")
	if storm.Known() {
		c.stormMark(c.x(storm.Number), c.plot.top, c.plot.bottom)
		c.key.line("storm-mark", "peak of the design storm")
	}
	d := &Drawing{Name: name, Title: "Stage and discharge of " + part.ID,
		Desc: fmt.Sprintf("Curves of the flow over %s against the height of the water over its crest, up to the rim, with the peak of the design storm marked. The table of spillways gives the numbers.", part.ID)}
	return c.finish(d)
}

// stages draws the upright axis of another chart on the same plot.
func (c *chart) stages(up *chart) {
	for _, t := range up.ticks() {
		y := up.y(t)
		c.canvas.line("grid", []point{{c.plot.left, y}, {c.plot.right, y}})
		c.text("note", mm(t/up.size), point{c.plot.left - 1, y + 0.36*smallLettering}, right, smallLettering)
	}
	c.text("note", up.name+" over the crest", point{c.plot.left - 1, c.plot.top - 2}, left, smallLettering)
}

func (c *chart) curve(up *chart, s hydraulics.Spillway, head float64) []point {
	var on []point
	for i := range ratingSteps + 1 {
		h := head * float64(i) / ratingSteps
		flow, err := s.Flow(h)
		if err != nil {
			break
		}
		on = append(on, point{c.x(flow.Discharge), up.y(h)})
	}
	return on
}

// spillwayOf is the crest of a spillway as figures take it: as long as it is
// stated, else as it is drawn, its sides upright where no slope is drawn.
func spillwayOf(part *design.Part, share float64) hydraulics.Spillway {
	s := hydraulics.Spillway{Bottom: part.CrestLength.Value, Coefficient: share}
	if !part.CrestLength.Given() {
		s.Bottom = geometry.Path(points(part.Path)).Length()
	}
	if part.SideSlope.Value > 0 {
		s.SideSlope = 1 / part.SideSlope.Value
	}
	return s
}
