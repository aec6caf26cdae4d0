package figures

import (
	"fmt"
	"slices"

	"greysill/checker/design"
)

var coldSeasonTable = tabulate(
	List{Name: "cold_season", Doc: "The part of the year that freezes, and the bypass season: always one item.", Subject: "the cold season"},
	func(d *drawing) []*drawing { return []*drawing{d} },
	func(*drawing) Subject { return Subject{Name: "the cold season", Pointers: []string{seasonPointer}} },
	[]column[*drawing]{
		{Field{Name: "freezing_months", Kind: Text, Doc: "The months that freeze, in the order of the year: those named, and those whose mean temperature is 0 °C or less; empty when none does."}, (*drawing).freezingMonths},
		{Field{Name: "any_month_freezes", Kind: Truth, Doc: "Whether any month freezes."}, (*drawing).anyMonthFreezes},
		{Field{Name: "bypass_season", Kind: Text, Doc: "The bypass season as drawn, both days included; \"none\" where none is drawn."}, (*drawing).bypassSeason},
		{Field{Name: "has_bypass_season", Kind: Truth, Doc: "Whether a bypass season is drawn."}, (*drawing).hasBypassSeason},
		{Field{Name: "bypass_covers_freezing_months", Kind: Truth,
			Doc: "Whether every day of every freezing month lies in the bypass season, the leap day left out; true when no month freezes."}, (*drawing).bypassCovers},
		{Field{Name: "months_left_open", Kind: Text,
			Doc: "The freezing months that the bypass season leaves out, in part or whole; empty when it leaves out none."}, (*drawing).monthsLeftOpen},
	},
)

const (
	climatePointer = "/site/climate"
	monthsPointer  = climatePointer + "/freezing_months"
)

// freeze is what a design says of the months that freeze.
type freeze struct {
	months []int   // their numbers, in order
	inputs []Input // what says so
	lacks  []Lack  // not empty: other months may freeze too
}

// freezing puts together the months that the design names and those whose mean
// temperature does not rise above that of ice. Ground that freezes to a depth,
// but in no month, contradicts itself.
func freezing(c *design.Climate) freeze {
	if c == nil {
		return freeze{lacks: []Lack{{monthsPointer, "freezing_months of the site's climate ([] where none freezes)"}}}
	}
	f := cold(c)
	switch {
	case c.FreezingMonths == nil:
		f.lacks = []Lack{{monthsPointer, "freezing_months of the site's climate ([] where none freezes)"}}
		return f
	case len(*c.FreezingMonths)+len(f.months) == 0 && c.FrostDepth.Value > 0:
		f.lacks = []Lack{{monthsPointer, "freezing_months that agree with the frost depth of " + c.FrostDepth.Text}}
		return f
	}
	for i, m := range year {
		if slices.Contains(*c.FreezingMonths, m.code) {
			f.months = append(f.months, i)
		}
	}
	slices.Sort(f.months)
	f.months = slices.Compact(f.months)
	f.inputs = append([]Input{{Name: "freezing months", Pointer: monthsPointer}}, f.inputs...)
	return f
}

// cold gives the months whose mean temperature is 0 °C or less.
func cold(c *design.Climate) freeze {
	const rounding = 1e-9 // °C, of degrees Fahrenheit turned into Celsius
	var f freeze
	for i, given := range c.Months {
		t := given.MeanTemperature
		m := slices.IndexFunc(year, func(m month) bool { return m.code == given.Month })
		if m >= 0 && t.Given() && t.Value <= rounding {
			f.months = append(f.months, m)
			f.inputs = append(f.inputs, Input{Name: "mean temperature of " + year[m].name, Pointer: fmt.Sprintf("%s/months/%d/mean_temperature", climatePointer, i)})
		}
	}
	return f
}

// ofFreezing gives a figure that depends on the months that freeze.
func (d *drawing) ofFreezing(figure func(months []int) Value) Value {
	f := freezing(d.Site.Climate)
	if len(f.lacks) > 0 {
		return unknown(f.lacks...)
	}
	v := figure(f.months)
	v.Inputs = f.inputs
	if d.season() != nil {
		v.Inputs = append(v.Inputs, Input{Name: "bypass season", Pointer: seasonPointer})
	}
	return v
}

// anyMonthFreezes knows it by a single month, whatever the others do.
func (d *drawing) anyMonthFreezes() Value {
	f := freezing(d.Site.Climate)
	if len(f.months) > 0 {
		return truth(true, f.inputs...)
	}
	return orUnknown(truth(false, f.inputs...), f.lacks)
}
