package climate_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/climate"
)

// A bed of 20 m² that holds 3 m³ in its pores.
var bed = climate.Basin{Area: 20, Full: 3}

func TestBalanceOfOneMonth(t *testing.T) {
	for name, c := range map[string]struct {
		start float64
		month climate.Fluxes
		want  climate.Balance
	}{
		// 12 + 0.05·20 − 0.1·1.2·20 = 10.6 over a full bed.
		"spills": {3, climate.Fluxes{In: 12, Rain: 0.05, ET: 0.1, Coefficient: 1.2},
			climate.Balance{Start: 3, In: 12, Rain: 1, ET: 2.4, Out: 10.6, End: 3}},
		// 1 + 2 − 0.1·1·20 = 1 stays.
		"draws down": {1, climate.Fluxes{In: 2, ET: 0.1, Coefficient: 1},
			climate.Balance{Start: 1, In: 2, ET: 2, End: 1}},
		// 5 asked of 1 m³: 4 for evaporation, 1 for seepage, a fifth of each is met.
		"runs dry": {1, climate.Fluxes{ET: 0.1, Coefficient: 2, Seepage: 1},
			climate.Balance{Start: 1, ET: 0.8, Seepage: 0.2, Short: 4}},
		"dew": {3, climate.Fluxes{ET: -0.001, Coefficient: 1},
			climate.Balance{Start: 3, ET: -0.02, Out: 0.02, End: 3}},
		"nothing": {0, climate.Fluxes{}, climate.Balance{}},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := bed.Step(c.start, c.month)
			require.NoError(t, err)
			for _, pair := range [][2]float64{{c.want.Start, got.Start}, {c.want.In, got.In}, {c.want.Rain, got.Rain}, {c.want.ET, got.ET},
				{c.want.Seepage, got.Seepage}, {c.want.Out, got.Out}, {c.want.Short, got.Short}, {c.want.End, got.End}} {
				require.InDelta(t, pair[0], pair[1], 1e-12)
			}
			require.Equal(t, c.want.Short > 0, got.Dry())
		})
	}
}

func TestBalanceRefuses(t *testing.T) {
	_, err := bed.Step(3.1, climate.Fluxes{})
	require.ErrorContains(t, err, "store at the start")
	_, err = bed.Step(0, climate.Fluxes{In: -1})
	require.ErrorContains(t, err, "the inflow is -1 m³: expected 0 or more")
	_, err = climate.Basin{Full: 3}.Step(0, climate.Fluxes{})
	require.ErrorContains(t, err, "the area is 0 m²: expected more than 0")
	_, err = bed.MeanYear(nil)
	require.ErrorContains(t, err, "without months")
}

func aMonth(t *rapid.T) climate.Fluxes {
	return climate.Fluxes{
		In:          rapid.Float64Range(0, 20).Draw(t, "in"),
		Rain:        rapid.Float64Range(0, 0.3).Draw(t, "rain"),
		ET:          rapid.Float64Range(-0.01, 0.3).Draw(t, "et"),
		Coefficient: rapid.Float64Range(0, 3.7).Draw(t, "coefficient"),
		Seepage:     rapid.Float64Range(0, 10).Draw(t, "seepage"),
	}
}

func TestBalanceClosesAndStaysBetweenLevels(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		months := rapid.SliceOfN(rapid.Custom(aMonth), 1, 24).Draw(t, "months")
		results, err := bed.Run(rapid.Float64Range(0, bed.Full).Draw(t, "start"), months)
		require.NoError(t, err)
		require.Len(t, results, len(months))
		for i, r := range results {
			require.InDelta(t, r.Start+r.In+r.Rain, r.ET+r.Seepage+r.Out+r.End, 1e-12)
			require.InDelta(t, months[i].ET*months[i].Coefficient*bed.Area+months[i].Seepage, r.ET+r.Seepage+r.Short, 1e-12)
			require.GreaterOrEqual(t, r.End, 0.0)
			require.LessOrEqual(t, r.End, bed.Full)
			if r.Dry() {
				require.Zero(t, r.End)
				require.Zero(t, r.Out)
			}
			if r.Out > 0 {
				require.Equal(t, bed.Full, r.End)
			}
		}
	})
}

func TestMoreWaterInNeverLeavesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		month := aMonth(t)
		start := rapid.Float64Range(0, bed.Full).Draw(t, "start")
		less, err := bed.Step(start, month)
		require.NoError(t, err)
		month.In++
		more, err := bed.Step(start, month)
		require.NoError(t, err)
		require.GreaterOrEqual(t, more.Out, less.Out)
		require.GreaterOrEqual(t, more.End, less.End)
		require.LessOrEqual(t, more.Short, less.Short)
	})
}

// Years run one after another from a full store settle on the mean year.
func TestMeanYearIsWhereYearsSettle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		months := rapid.SliceOfN(rapid.Custom(aMonth), 1, 12).Draw(t, "months")
		year, err := bed.MeanYear(months)
		require.NoError(t, err)
		start, end := year[0].Start, year[len(year)-1].End
		require.InDelta(t, start, end, 1e-8)

		store, settled := bed.Full, false
		for range 2000 {
			run, err := bed.Run(store, months)
			require.NoError(t, err)
			next := run[len(run)-1].End
			if settled = next == store; settled {
				break
			}
			store = next
		}
		if settled {
			require.InDelta(t, store, end, 1e-8)
		}
	})
}

// A dry summer that empties the bed and a winter that does not fill it: from a
// full start the year would begin with water that it never gets back.
func TestMeanYearForgetsItsFirstStore(t *testing.T) {
	year, err := bed.MeanYear([]climate.Fluxes{{ET: 0.5, Coefficient: 1}, {In: 1}})
	require.NoError(t, err)
	require.InDelta(t, 1, year[0].Start, 1e-12)
	require.InDelta(t, 9, year[0].Short, 1e-12)
	require.InDelta(t, 1, year[1].End, 1e-12)
}
