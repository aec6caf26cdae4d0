package dispersal

import "math"

// PercolationTable gives loading rates by percolation as one code has them.
type PercolationTable struct {
	Name     string
	Source   string // document, clause, table
	Standing string // "published" or "from memory"
	Classes  []Class
	Slowest  float64 // percolation rate with which the table ends
}

// Class is one row: percolation rates from a bound to below the next row's.
type Class struct {
	From float64 // the fastest percolation, the least time for the water to fall
	Rate float64 // loading rate, 0 where the code allows no field
}

// Rate gives the loading rate for a percolation rate. ok is false where the code
// allows no field and where the table does not reach.
func (t *PercolationTable) Rate(percolation float64) (rate float64, ok bool) {
	if !measures(percolation) || percolation > t.Slowest*(1+rounding) {
		return 0, false
	}
	for _, c := range t.Classes {
		if percolation >= c.From*(1-rounding) {
			rate = c.Rate
		}
	}
	return rate, rate > 0
}

// PercolationTables lists the tables by percolation.
var PercolationTables = []*PercolationTable{&Montana, &InternationalPlumbingCode}

// Montana is for the effluent of septic tanks. The copy that was read prints the row
// for 121 min/in and slower twice, once with 0.15 gal/d on a square foot and once as
// not permitted; the stricter is kept.
var Montana = PercolationTable{
	Name:     "Montana, on-site sewage",
	Source:   "Montana DEQ, Circular DEQ-4 (a copy of 2015), Table 8-1",
	Standing: "published",
	Classes: []Class{
		class(0, 0.8), class(6, 0.6), class(10, 0.5), class(16, 0.4), class(31, 0.3), class(51, 0.2), class(121, 0),
	},
	Slowest: math.Inf(1),
}

// InternationalPlumbingCode is for fields that take greywater.
var InternationalPlumbingCode = PercolationTable{
	Name:     "International Plumbing Code, seepage",
	Source:   "International Plumbing Code, Table 1303.8, later in section 1403",
	Standing: "from memory",
	Classes:  []Class{class(0, 1.2), class(10, 0.8), class(30, 0.72), class(45, 0.4)},
	Slowest:  60 * minutePerInch,
}

// class makes a row of a percolation rate in minutes an inch and a loading rate in
// gallons a day on a square foot.
func class(from, rate float64) Class { return Class{from * minutePerInch, rate * gallonPerDayPerSF} }
