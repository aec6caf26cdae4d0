package cost_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/cost"
	"greysill/checker/design"
	"greysill/checker/figures"
)

// yard is level ground at 10 m with a bed of 4 m × 3 m with two layers and mulch, a trench without plants'
// spacing, 10 m of pipe with two bends, and a pipe of unknown diameter.
const yard = `{
	"format": "greywater-design/1", "title": "A yard", "location": {"region": "US-CO"}, "units": "si",
	"dwelling": {"bedrooms": 2, "sewage": "sewer"},
	"site": {"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "levels": [[0, 0, 10], [60, 0, 10], [60, 40, 10], [0, 40, 10]]},
	"sources": [{"id": "shower-1", "kind": "shower", "to": "pipe-1"}],
	"parts": [
		{"id": "pipe-1", "kind": "drain pipe", "path": [[0, 10], [10, 10]], "diameter": "50 mm", "material": "ABS", "to": "bed-1",
			"fittings": [{"kind": "45° bend"}, {"kind": "45° bend"}], "cleanouts": [[1, 10]]},
		{"id": "pipe-2", "kind": "drain pipe", "path": [[14, 10], [20, 10]], "material": "ABS", "to": "basin-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [14, 10], [14, 13], [10, 13]], "surface": "10 m", "floor": "9.4 m", "mulch": "0.1 m",
			"media": [{"material": "Pea gravel", "thickness": "0.1 m", "porosity": "40 %"}, {"material": "gravel", "porosity": "40 %"}],
			"plants": [{"species": "Juncus effusus", "spacing": "0.5 m"}], "to": "pipe-2"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[20, 10], [22, 10], [22, 11], [20, 11]], "mulch": "0.3 m", "depth": "0.35 m", "plants": [{"species": "Salix"}]}
	]
}`

func estimate(t *testing.T, prices string) *cost.Estimate {
	d, problems := design.Read("yard.json", []byte(yard))
	require.Empty(t, problems)
	p, problems := cost.Read("prices.json", []byte(list(prices)))
	require.Empty(t, problems)
	return cost.Of(figures.Compute(d), p)
}

func TestAmounts(t *testing.T) {
	tests := map[string]struct {
		prices           string
		quantity, amount cost.Span
	}{
		"one material, however it is written": {`{"item": "gravel", "material": "pea  Gravel", "price": 60.00, "per": "m3"}`, span(1.2), span(72)},
		"all materials":                       {`{"item": "gravel", "price": 50.00, "per": "m3"}`, span(12 * 0.6), span(360)},
		// 12 m² × 0.1 m × 60 % × 2.5 to 2.7 t/m³.
		"by mass": {`{"item": "gravel", "material": "pea gravel", "price": 30.00, "per": "t"}`, cost.Span{Least: 1.8, Greatest: 1.94}, cost.Span{Least: 54, Greatest: 58.2}},
		"pipe":    {`{"item": "pipe", "diameter": "50 mm", "price": 4.25, "per": "m"}`, span(10), span(42.5)},
		"bends":   {`{"item": "fitting", "kind": "45° bend", "price": 5.10, "per": "each"}`, span(2), span(10.2)},
		"mulch":   {`{"item": "mulch", "price": 40, "per": "m3"}`, span(12*0.1 + 2*0.3), span(72)},
		"digging": {`{"item": "excavation", "price": 30, "per": "m3"}`, span(12*0.6 + 2*0.35), span(237)},
		// 12 m² ÷ 0.25 m² in squares; ÷ (0.25 m² × √3 ÷ 2) staggered.
		"plants": {`{"item": "plant", "species": "Juncus effusus", "price": 3.50, "per": "each"}`, cost.Span{Least: 48, Greatest: 56}, cost.Span{Least: 168, Greatest: 196}},
		"free":   {`{"item": "mulch", "price": 0, "per": "m3"}`, span(1.8), span(0)},
		// 1.8 m³ is 2.354… yd³; what is shown is multiplied: 2.35 × 40.
		"rounded as shown": {`{"item": "mulch", "price": 40, "per": "yd3"}`, span(2.35), span(94)},
		"whole units":      {`{"item": "excavation", "price": 33, "per": "m3"}`, span(7.9), span(261)}, // 260.7
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			e := estimate(t, tt.prices)
			require.Len(t, e.Lines, 1)
			for _, pair := range [][2]cost.Span{{tt.quantity, e.Lines[0].Quantity}, {tt.amount, e.Lines[0].Amount}, {tt.amount, e.Total}} {
				require.InDelta(t, pair[0].Least, pair[1].Least, 1e-9)
				require.InDelta(t, pair[0].Greatest, pair[1].Greatest, 1e-9)
			}
		})
	}
}

func span(x float64) cost.Span { return cost.Span{Least: x, Greatest: x} }

func names(things []cost.Thing) []string {
	all := []string{}
	for _, t := range things {
		all = append(all, t.Item+": "+t.Subject.Name)
	}
	return all
}

// TestNothingIsLost: what has no price and what is not known is named.
func TestNothingIsLost(t *testing.T) {
	e := estimate(t, `{"item": "pipe", "diameter": "50 mm", "price": 4, "per": "m"}, {"item": "plant", "price": 3, "per": "each"}`)
	require.Equal(t, []string{"gravel: bed-1 layer 1", "gravel: bed-1 layer 2", "fitting: 45° bend of 50 mm", "fitting: cleanout of 50 mm",
		"mulch: bed-1", "mulch: basin-1", "excavation: bed-1", "excavation: basin-1"}, names(e.Unpriced))
	require.Equal(t, []string{"pipe: pipe-2", "plant: plant 1 of basin-1"}, names(e.Unknown))
	require.Equal(t, "/parts/1/diameter", e.Unknown[0].Lacks[0].Pointer)
	require.Equal(t, "/parts/3/plants/0/spacing", e.Unknown[1].Lacks[0].Pointer)
	require.Equal(t, cost.Span{Least: 40 + 48*3, Greatest: 40 + 56*3}, e.Total)
}

// TestTheFirstPriceThatFits: those for one material stand before those for all. A
// price without a diameter holds for a pipe without one.
func TestTheFirstPriceThatFits(t *testing.T) {
	e := estimate(t, `{"item": "gravel", "material": "pea gravel", "price": 60, "per": "m3"}, {"item": "gravel", "price": 50, "per": "m3"},
		{"item": "gravel", "material": "gravel", "price": 1, "per": "m3"}, {"item": "pipe", "price": 4, "per": "m"}`)
	require.Len(t, e.Lines, 3)
	require.Equal(t, []string{"gravel: bed-1 layer 1"}, names(e.Lines[0].Things))
	require.Equal(t, []string{"gravel: bed-1 layer 2"}, names(e.Lines[1].Things))
	require.InDelta(t, 12*0.5*50, e.Lines[1].Amount.Least, 1e-9)
	require.InDelta(t, 16*4.0, e.Lines[2].Amount.Least, 1e-9)
	require.InDelta(t, 72+300+64, e.Total.Greatest, 1e-9)
}
