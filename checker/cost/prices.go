// Package cost holds the quantities of a design against a price list: what each
// thing that is dug, laid and planted comes to, what the list has no price of,
// and what the drawing does not show. It knows no engineering.
package cost

import (
	"strings"

	"greysill/checker/quantity"
	"greysill/checker/source"
)

// Format is the format entry of the price lists that are read here.
const Format = "greysill-prices/1"

// Prices is a price list.
type Prices struct {
	Document *source.Document
	Title    string
	Date     string // RFC 3339 full-date, "" when not given
	Currency string // ISO 4217 alphabetic code
	Prices   []*Price
}

// Price is what one unit of something costs.
type Price struct {
	Item     string            // a word of Items
	Of       map[string]string // what it is the price of, as written: material, kind, species, diameter; any that are left out hold for all
	Diameter float64           // m, of Of["diameter"]
	Amount   float64           // in the currency, for one unit
	Decimals int               // of the amount as written
	Per      string            // the unit as written; Each for what is counted
	Unit     float64           // size of the unit in SI, 1 for Each
	measure  *measure          // what the unit measures
	Pointer  string
}

// Each is the unit of what is counted.
const Each = "each"

// Decimals is how many decimals amounts of the currency are shown with: as many as
// the prices have, at most 2.
func (p *Prices) Decimals() int {
	most := 0
	for _, price := range p.Prices {
		most = max(most, price.Decimals)
	}
	return min(most, 2)
}

// Name says what the price is of: "pipe, ABS, 2 in".
func (p *Price) Name() string {
	words := []string{p.Item}
	for _, entry := range entries {
		if of := p.Of[entry]; of != "" {
			words = append(words, of)
		}
	}
	return strings.Join(words, ", ")
}

// entries tell the prices of one item apart, in the order in which they are said.
var entries = []string{"material", "kind", "species", "diameter"}

// item is a kind of work or material that has prices.
type item struct {
	name     string
	list     string // of the figures
	measures []measure
	entries  []string // that its prices may have; the list has fields of these names
}

// measure is one way to count an item: by the fields of its list that have the
// least and the greatest quantity.
type measure struct {
	dimension       quantity.Dimension
	least, greatest string
}

// items are all kinds of work and material, in the order of the figures.
var items = []item{
	{"gravel", "quantities.gravel", []measure{{quantity.EarthVolume, "volume", "volume"}, {quantity.Mass, "least_mass", "greatest_mass"}}, []string{"material"}},
	{"liner", "quantities.liner", []measure{{quantity.Area, "area", "area"}}, []string{"material"}},
	{"pipe", "quantities.pipe", []measure{{quantity.Length, "length", "length"}}, []string{"material", "diameter"}},
	{"fitting", "quantities.fittings", []measure{{quantity.Number, "count", "count"}}, []string{"kind", "diameter"}},
	{"mulch", "quantities.mulch", []measure{{quantity.EarthVolume, "volume", "volume"}}, nil},
	{"plant", "quantities.plants", []measure{{quantity.Number, "least_count", "greatest_count"}}, []string{"species"}},
	{"excavation", "quantities.excavation", []measure{{quantity.EarthVolume, "volume", "volume"}}, nil},
}
