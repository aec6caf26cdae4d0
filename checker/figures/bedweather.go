package figures

import "slices"

const monthsOfYear = climatePointer + "/months"

// monthlyMean is the mean temperature of one month.
type monthlyMean struct {
	month       int // from 0
	temperature Value
}

// monthlyMeans gives the mean temperature of every month, in the order of the
// year, or what is lacking for that.
func (d *drawing) monthlyMeans() ([]monthlyMean, []Lack) {
	means := make([]monthlyMean, len(year))
	for i := range year {
		mean := d.mean(i)
		if !mean.Known() {
			return nil, mean.Lacks
		}
		means[i] = monthlyMean{i, mean}
	}
	return means, nil
}

// extremes gives the warmest and the coldest of some months, the earlier of
// equals.
func extremes(means []monthlyMean) (warmest, coldest monthlyMean) {
	const rounding = 1e-9 // °C, of degrees Fahrenheit turned into Celsius
	warmest, coldest = means[0], means[0]
	for _, m := range means[1:] {
		if m.temperature.Number > warmest.temperature.Number+rounding {
			warmest = m
		}
		if m.temperature.Number < coldest.temperature.Number-rounding {
			coldest = m
		}
	}
	return warmest, coldest
}

// runningMonths leaves out the months that the bypass season covers whole.
func (d *drawing) runningMonths(means []monthlyMean) []monthlyMean {
	every := make([]int, len(means))
	for i, m := range means {
		every[i] = m.month
	}
	open := leftOpen(every, d.season())
	return slices.DeleteFunc(slices.Clone(means), func(m monthlyMean) bool { return !slices.Contains(open, m.month) })
}

// waterTemperatures gives how warm and how cold the water in a bed is taken to
// be: as the air on the mean of the warmest and the coldest month in which the
// bed runs, but liquid.
func (d *drawing) waterTemperatures() (warmest, coldest Value) {
	means, lacks := d.monthlyMeans()
	if len(lacks) > 0 {
		return unknown(lacks...), unknown(lacks...)
	}
	means = d.runningMonths(means)
	if len(means) == 0 {
		v := unknown(Lack{seasonPointer, "bypass_season that leaves the beds a part of the year"})
		return v, v
	}
	w, c := extremes(means)
	return d.liquid(w), d.liquid(c)
}

func (d *drawing) liquid(m monthlyMean) Value {
	v := m.temperature
	v.Number = max(v.Number, 0)
	if d.season() != nil {
		v.Inputs = append(slices.Clone(v.Inputs), Input{Name: "bypass season", Pointer: seasonPointer})
	}
	return v
}
