package cost

import (
	"math"
	"slices"
	"strconv"

	"greysill/checker/figures"
)

// Estimate is what the quantities of a design come to at the prices of a list.
type Estimate struct {
	Prices   *Prices
	Lines    []*Line // one for each price that something takes, in the order of the list
	Unpriced []Thing // what the list has no price of
	Unknown  []Thing // what the drawing does not show enough of
	Total    Span    // of the lines
}

// Line is one price with all that takes it.
type Line struct {
	Price    *Price
	Things   []Thing
	Quantity Span // in the unit of the price, rounded as it is shown
	Amount   Span // in the currency, rounded to the decimals of the list
}

// Span is a least and a greatest value; the same twice where there is one.
type Span struct{ Least, Greatest float64 }

// Thing is something that costs money.
type Thing struct {
	Item    string // a kind of work or material: "gravel"
	Subject figures.Subject
	Lacks   []figures.Lack // what its quantity, or finding its price, lacks
}

// Of works out what a design's quantities come to. Each takes the first price of
// the list that fits it.
func Of(f *figures.Figures, p *Prices) *Estimate {
	e := &Estimate{Prices: p}
	lines := map[*Price]*Line{}
	for i := range items {
		for _, counted := range f.List(items[i].list) {
			e.add(&items[i], counted, lines)
		}
	}
	for _, price := range p.Prices {
		if line := lines[price]; line != nil {
			line.reckon(p.Decimals())
			e.Total.Least += line.Amount.Least
			e.Total.Greatest += line.Amount.Greatest
			e.Lines = append(e.Lines, line)
		}
	}
	return e
}

func (e *Estimate) add(it *item, counted *figures.Item, lines map[*Price]*Line) {
	thing := Thing{Item: it.name, Subject: counted.Subject}
	price, lacks := e.Prices.of(it, counted)
	switch {
	case len(lacks) > 0:
		thing.Lacks = lacks
		e.Unknown = append(e.Unknown, thing)
		return
	case price == nil:
		e.Unpriced = append(e.Unpriced, thing)
		return
	}
	least, greatest := counted.Value(price.measure.least), counted.Value(price.measure.greatest)
	if thing.Lacks = both(least.Lacks, greatest.Lacks); len(thing.Lacks) > 0 {
		e.Unknown = append(e.Unknown, thing)
		return
	}
	if lines[price] == nil {
		lines[price] = &Line{Price: price}
	}
	line := lines[price]
	line.Things = append(line.Things, thing)
	line.Quantity.Least += least.Number / price.Unit
	line.Quantity.Greatest += greatest.Number / price.Unit
}

func both(a, b []figures.Lack) []figures.Lack {
	all := slices.Clone(a)
	for _, l := range b {
		if !slices.Contains(all, l) {
			all = append(all, l)
		}
	}
	return all
}

// of finds the first price of the list that fits a thing. Where the drawing does
// not show enough to tell, it gives what is lacking.
func (p *Prices) of(it *item, counted *figures.Item) (*Price, []figures.Lack) {
	for _, price := range p.Prices {
		if price.Item != it.name {
			continue
		}
		fits, lacks := price.fits(it, counted)
		if fits || len(lacks) > 0 {
			return price, lacks
		}
	}
	return nil, nil
}

func (p *Price) fits(it *item, counted *figures.Item) (fits bool, lacks []figures.Lack) {
	for _, entry := range it.entries {
		written, value := p.Of[entry], counted.Value(entry)
		switch {
		case written == "":
		case !value.Known():
			lacks = append(lacks, value.Lacks...)
		case entry == "diameter" && math.Abs(value.Number-p.Diameter) > sameDiameter, entry != "diameter" && plain(value.Text) != plain(written):
			return false, nil
		}
	}
	return len(lacks) == 0, lacks
}

// sameDiameter is how far two texts of one diameter may lie apart, in m.
const sameDiameter = 1e-6

// reckon rounds the quantities as they are shown, so that who multiplies them by
// the price comes to the same amounts.
func (l *Line) reckon(decimals int) {
	l.Quantity = Span{shown(l.Quantity.Least), shown(l.Quantity.Greatest)}
	l.Amount = Span{rounded(l.Quantity.Least*l.Price.Amount, decimals), rounded(l.Quantity.Greatest*l.Price.Amount, decimals)}
}

// shown rounds a quantity to hundredths, from 1,000 on to whole units, below 1 to
// three significant digits.
func shown(x float64) float64 {
	switch {
	case x >= 1000:
		return math.Round(x)
	case x >= 1:
		return rounded(x, 2)
	}
	short, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64)
	return short
}

// rounded takes what is a millionth of a unit from a half as the half.
func rounded(x float64, decimals int) float64 {
	scale := math.Pow10(decimals)
	return math.Floor(x*scale+0.5+1e-6) / scale
}
