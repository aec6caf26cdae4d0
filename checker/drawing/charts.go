package drawing

import (
	"fmt"
	"slices"
	"strconv"

	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// Charts draws the monthly water balance of every part that has one, the flow
// through the train by season, and the ways out against the design storm. A chart
// whose figures are not known is left out; its notes say what is missing.
func Charts(r Review) []*Drawing {
	all := Balances(r)
	if d := Seasons(r); d != nil {
		all = append(all, d)
	}
	if d := WaysOut(r); d != nil {
		all = append(all, d)
	}
	return append(all, Ratings(r)...)
}

// chart has an upright axis of quantities, or a level one.
type chart struct {
	canvas
	key
	units quantity.System
	plot  box
	most  float64 // the greatest quantity shown
	size  float64 // of one unit of the axis
	name  string  // of that unit
}

const chartLeft = 22.0

// newChart chooses the axis for quantities of a dimension up to a greatest.
func newChart(r Review, d quantity.Dimension, greatest float64, plot box) *chart {
	c := &chart{units: r.Units, plot: plot, size: 1}
	unit := quantity.UnitFor(d, r.Units, greatest)
	if q, err := quantity.Parse("1 "+unit.Symbol, d); err == nil {
		c.size, c.name = q.Value, unit.Symbol
	}
	c.most = max(greatest, 1e-9*c.size)
	return c
}

// ticks gives round quantities along the axis.
func (c *chart) ticks() []float64 {
	step := roundAbove(c.most/c.size/6) * c.size
	var all []float64
	for k := 0.0; (k-1)*step < c.most; k++ {
		all = append(all, k*step)
	}
	c.most = all[len(all)-1]
	return all
}

// upright draws the axis up the left side.
func (c *chart) upright() {
	ticks := c.ticks()
	for _, t := range ticks {
		y := c.y(t)
		c.canvas.line("grid", []point{{c.plot.left, y}, {c.plot.right, y}})
		c.text("note", mm(t/c.size), point{c.plot.left - 1, y + 0.36*smallLettering}, right, smallLettering)
	}
	c.text("note", c.name, point{c.plot.left - 1, c.plot.top - 2}, right, smallLettering)
	c.canvas.line("axis", []point{{c.plot.left, c.plot.top}, {c.plot.left, c.plot.bottom}, {c.plot.right, c.plot.bottom}})
}

func (c *chart) y(v float64) float64 {
	return c.plot.bottom - v/c.most*(c.plot.bottom-c.plot.top)
}

// level draws the axis along the foot.
func (c *chart) level() {
	ticks := c.ticks()
	for i, t := range ticks {
		x, words := c.x(t), mm(t/c.size)
		if i == len(ticks)-1 {
			words += " " + c.name
		}
		c.canvas.line("grid", []point{{x, c.plot.top}, {x, c.plot.bottom}})
		c.text("note", words, point{x, c.plot.bottom + 3}, middle, smallLettering)
	}
	c.canvas.line("axis", []point{{c.plot.left, c.plot.top}, {c.plot.left, c.plot.bottom}, {c.plot.right, c.plot.bottom}})
}

func (c *chart) x(v float64) float64 {
	return c.plot.left + v/c.most*(c.plot.right-c.plot.left)
}

// finish ends a chart with its key.
func (c *chart) finish(d *Drawing) *Drawing {
	d.Width = paperWidth
	d.Height = c.key.draw(&c.canvas, point{chartLeft, c.plot.bottom + 9}, chartLeft, c.plot.bottom+10)
	d.body = c.String()
	return d
}

// Balances draws the monthly balance of every bed and pond.
func Balances(r Review) []*Drawing {
	var all []*Drawing
	for _, part := range grouped(r.Figures.List("months")) {
		name := "balance-" + strconv.Itoa(len(all)+1)
		all = append(all, balance(r, part, name))
	}
	return all
}

// grouped puts the items of one part together, in order.
func grouped(items []*figures.Item) [][]*figures.Item {
	var groups [][]*figures.Item
	for _, it := range items {
		if n := len(groups); n > 0 && groups[n-1][0].Subject.IDs[0] == it.Subject.IDs[0] {
			groups[n-1] = append(groups[n-1], it)
			continue
		}
		groups = append(groups, []*figures.Item{it})
	}
	return groups
}

func balance(r Review, months []*figures.Item, name string) *Drawing {
	id := months[0].Subject.IDs[0]
	d := &Drawing{Name: name, Title: "Monthly water balance of " + id}
	most := greatest(months, "greywater", "least_outflow", "greatest_outflow")
	if most == 0 {
		d.Notes = []string{"Not drawn, since the design does not give what it takes: see the table of months."}
		return d
	}
	c := newChart(r, quantity.Volume, most, box{chartLeft, 6, paperWidth - 4, 56})
	c.upright()
	wide := (c.plot.right - c.plot.left) / float64(len(months))
	for i, it := range months {
		c.month(it, c.plot.left+wide*float64(i), wide)
	}
	c.key.area("bar second", "greywater in")
	c.key.area("bar", "outflow, at least")
	c.key.area("bar third", "outflow, at most")
	d.Desc = fmt.Sprintf("Bars for every month: greywater that comes to %s, and the least and the greatest outflow. The table of months gives the numbers.", id)
	d.Notes = remarksOn(months)
	return c.finish(d)
}

// remarksOn explains the words that stand under months, where they do.
func remarksOn(months []*figures.Item) []string {
	var notes []string
	if slices.ContainsFunc(months, mayRunDry) {
		notes = append(notes, "dry: it may run dry in the driest case.")
	}
	if slices.ContainsFunc(months, func(it *figures.Item) bool { return !it.Value("least_outflow").Known() }) {
		notes = append(notes, "?: the outflow is not known; the table of months says what the design lacks.")
	}
	return notes
}

func mayRunDry(it *figures.Item) bool {
	dry := it.Value("may_run_dry")
	return dry.Known() && dry.Truth
}

// month draws the bars of one month.
func (c *chart) month(it *figures.Item, x, wide float64) {
	bar := wide * 0.36
	if v := it.Value("greywater"); v.Known() {
		c.column("bar second", x+wide*0.1, bar, 0, v.Number)
	}
	least, most := it.Value("least_outflow"), it.Value("greatest_outflow")
	if least.Known() && most.Known() {
		c.column("bar third", x+wide*0.5, bar, least.Number, most.Number)
		c.column("bar", x+wide*0.5, bar, 0, least.Number)
	} else {
		c.text("note", "?", point{x + wide*0.68, c.plot.bottom - 1}, middle, lettering)
	}
	c.text("note", shortMonth(it.Value("month").Text), point{x + wide/2, c.plot.bottom + 3}, middle, smallLettering)
	if mayRunDry(it) {
		c.text("note", "dry", point{x + wide/2, c.plot.bottom + 5.6}, middle, smallLettering)
	}
}

func shortMonth(name string) string { return name[:min(3, len(name))] }

func (c *chart) column(class string, x, wide, from, to float64) {
	c.rect(class, box{x, c.y(to), x + wide, c.y(from)})
}

// greatest gives the greatest known value of some fields, 0 when none is known.
func greatest(items []*figures.Item, fields ...string) float64 {
	most := 0.0
	for _, it := range items {
		for _, name := range fields {
			if v := it.Value(name); v != nil && v.Known() {
				most = max(most, v.Number)
			}
		}
	}
	return most
}

const rowHeight = 5.5

// Seasons draws how much greywater a day passes every part in each season, nil
// when none is known to.
func Seasons(r Review) *Drawing {
	const warm, bypass = "warm_season_flow", "bypass_season_flow"
	rows := slices.Clone(r.Figures.List("flows"))
	rows = slices.DeleteFunc(rows, func(it *figures.Item) bool { return greatest([]*figures.Item{it}, warm, bypass) == 0 })
	if len(rows) == 0 {
		return nil
	}
	c := newChart(r, quantity.Flow, greatest(rows, warm, bypass), box{34, 2, paperWidth - 16, 3 + rowHeight*float64(len(rows))})
	c.level()
	for i, it := range rows {
		y := c.plot.top + 1 + rowHeight*float64(i)
		c.text("note", cut(it.Subject.IDs[0], smallLettering, 32), point{c.plot.left - 1, y + rowHeight/2 + 0.36*smallLettering - 0.4}, right, smallLettering)
		for k, name := range []string{warm, bypass} {
			if v := it.Value(name); v.Known() {
				c.rect([]string{"bar second", "bar third"}[k], box{c.plot.left, y + 2.2*float64(k), c.x(v.Number), y + 2.2*float64(k+1)})
			}
		}
	}
	c.key.area("bar second", "warm season")
	c.key.area("bar third", "bypass season")
	return c.finish(&Drawing{Name: "seasons", Title: "Flow through the train by season",
		Desc: "Bars for every part that greywater reaches: the greywater a day in the warm season and in the bypass season. The table of flows gives the numbers."})
}
