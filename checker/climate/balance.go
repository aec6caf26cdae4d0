package climate

import (
	"errors"

	"greysill/checker/internal/bounds"
)

// BalanceSource is the balance of a bed or a pond: nothing is lost.
const BalanceSource = "conservation of water; common practice, no source"

// Basin is a bed or a pond that spills at its outlet's level.
type Basin struct {
	Area float64 // that rain falls on and water evaporates from, m²
	Full float64 // water held when it spills, m³: in a bed only what the pores hold
}

// Fluxes are what reaches and leaves a basin in one span of time, a month as a
// rule.
type Fluxes struct {
	In          float64 // water led in, m³
	Rain        float64 // m
	ET          float64 // reference evapotranspiration, m; below 0 it is dew
	Coefficient float64 // of the cover, by which ET is multiplied
	Seepage     float64 // through the floor, m³; 0 with a liner
}

// Balance is the water of one span of time in m³. Start + In + Rain is
// ET + Seepage + Out + End.
type Balance struct {
	Start, In, Rain  float64
	ET, Seepage, Out float64 // what left: less than was asked of a basin that ran dry
	Short            float64 // what evaporation and seepage asked and did not get
	End              float64
}

// rounding is the share of the full store in which sums of a year may differ.
const rounding = 1e-9

// Dry reports whether the basin ran dry.
func (b Balance) Dry() bool { return b.Short > 0 }

// Step balances one span of time from the water in store at its start in m³, 0 to
// Full. The span is taken as a whole: what comes in meets what is lost before
// anything spills. Of a basin that runs dry, evaporation and seepage get equal
// shares of what they ask. Source: BalanceSource.
func (b Basin) Step(start float64, f Fluxes) (Balance, error) {
	if err := b.refuse(start, f); err != nil {
		return Balance{}, err
	}
	r := Balance{Start: start, In: f.In, Rain: f.Rain * b.Area, ET: f.ET * f.Coefficient * b.Area, Seepage: f.Seepage}
	dew := max(-r.ET, 0)
	there, asked := start+r.In+r.Rain+dew, r.ET+dew+r.Seepage
	if asked > there {
		got := there / asked
		r.ET, r.Seepage, r.Short = (r.ET+dew)*got-dew, r.Seepage*got, asked-there
		return r, nil
	}
	r.Out = max(there-asked-b.Full, 0)
	r.End = min(there-asked, b.Full)
	return r, nil
}

func (b Basin) refuse(start float64, f Fluxes) error {
	return bounds.Refuse(bounds.Positive("area", b.Area, "m²"), bounds.NotNegative("full store", b.Full, "m³"),
		bounds.Given("store at the start", start, 0, b.Full, "m³"), bounds.NotNegative("inflow", f.In, "m³"), bounds.NotNegative("rain", f.Rain, "m"),
		bounds.Finite("evapotranspiration", f.ET, "m"), bounds.NotNegative("crop coefficient", f.Coefficient, ""), bounds.NotNegative("seepage", f.Seepage, "m³"))
}

// Run balances one span of time after another from the water in store at the
// start in m³.
func (b Basin) Run(start float64, spans []Fluxes) ([]Balance, error) {
	results := make([]Balance, 0, len(spans))
	for _, f := range spans {
		r, err := b.Step(start, f)
		if err != nil {
			return nil, err
		}
		results = append(results, r)
		start = r.End
	}
	return results, nil
}

// MeanYear balances a year that comes back again and again, so that it begins
// with the store that it ends with, to a billionth of the full store. Where
// several stores do, in a year that neither gains nor loses, it is the greatest
// of them. A year without spans is an error.
//
// A year moves the store up or down by as much from wherever it begins, but for
// spilling and running dry. So a year that gains in the end always returns to
// what a full start leaves, and one that loses to what an empty start leaves.
func (b Basin) MeanYear(spans []Fluxes) ([]Balance, error) {
	if len(spans) == 0 {
		return nil, errors.New("a year without months has no balance")
	}
	first, err := b.Run(b.Full, spans)
	if err != nil {
		return nil, err
	}
	full := first[len(first)-1].End
	year, err := b.Run(full, spans)
	if err != nil {
		return nil, err
	}
	if full-year[len(year)-1].End <= rounding*b.Full {
		return year, nil
	}
	empty, err := b.Run(0, spans)
	if err != nil {
		return nil, err
	}
	return b.Run(empty[len(empty)-1].End, spans)
}
