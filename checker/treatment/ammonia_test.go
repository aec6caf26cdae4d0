package treatment

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// At a pH of the pKa half the ammonia is un-ionized, and one unit of pH off it
// one part in eleven or ten in eleven, by definition of the pKa.
func TestUnionizedAtThePKa(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		celsius := rapid.Float64Range(0, 50).Draw(t, "celsius")
		pKa := 0.09018 + 2729.92/(celsius+273.15)
		for shift, want := range map[float64]float64{-1: 1.0 / 11, 0: 0.5, 1: 10.0 / 11} {
			share, err := Emerson1975.Unionized(pKa+shift, celsius)
			require.NoError(t, err)
			require.InDelta(t, want, share, 1e-9)
		}
	})
}

func TestUnionizedGrowsWithPHAndWarmth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pH := rapid.Float64Range(7, 8.4).Draw(t, "pH")
		celsius := rapid.Float64Range(10, 24).Draw(t, "celsius")
		for name, share := range map[string]func(pH, celsius float64) (float64, error){
			"Emerson": Emerson1975.Unionized, "Trussell": TrussellUnionized,
		} {
			at, err := share(pH, celsius)
			require.NoError(t, err)
			alkaline, err := share(pH+0.1, celsius)
			require.NoError(t, err)
			warm, err := share(pH, celsius+1)
			require.NoError(t, err)
			require.Greater(t, alkaline, at, name)
			require.Greater(t, warm, at, name)
		}
	})
}

// The two sources agree within 2 % and the rounding of the table.
func TestTrussellIsNearEmerson(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pH := rapid.Float64Range(7, 8.5).Draw(t, "pH")
		celsius := rapid.Float64Range(10, 25).Draw(t, "celsius")
		table, err := TrussellUnionized(pH, celsius)
		require.NoError(t, err)
		equation, err := Emerson1975.Unionized(pH, celsius)
		require.NoError(t, err)
		require.Less(t, math.Abs(table-equation), 0.02*equation+0.00005)
	})
}

// Between two cells the table gives their geometric mean half-way.
func TestTrussellBetweenCells(t *testing.T) {
	share, err := TrussellUnionized(7.05, 10)
	require.NoError(t, err)
	require.InDelta(t, math.Sqrt(0.19*0.23)/100, share, 1e-9)
	share, err = TrussellUnionized(8.5, 22.5)
	require.NoError(t, err)
	require.InDelta(t, math.Sqrt(11.18*14.97)/100, share, 1e-9)
}

func TestPondWaterRefuses(t *testing.T) {
	requireRefused(t, map[string]func() (float64, error){
		"pH of no water":           func() (float64, error) { return Emerson1975.Unionized(15, 20) },
		"temperature in °F":        func() (float64, error) { return Emerson1975.Unionized(8, 68) },
		"below the table":          func() (float64, error) { return TrussellUnionized(6.9, 20) },
		"above the table":          func() (float64, error) { return TrussellUnionized(8.6, 20) },
		"colder than the table":    func() (float64, error) { return TrussellUnionized(8, 9) },
		"warmer than the table":    func() (float64, error) { return TrussellUnionized(8, 26) },
		"oxygen of hot water":      func() (float64, error) { return OxygenSaturation(41) },
		"oxygen of ice":            func() (float64, error) { return OxygenSaturation(-1) },
		"pressure in hPa":          func() (float64, error) { return OxygenSaturationAt(20, 1013.25) },
		"oxygen of ice, by height": func() (float64, error) { return OxygenSaturationAt(-1, 101325) },
		"criterion, acid":          func() (float64, error) { return AcuteAmmonia1999(6.4, true) },
		"criterion, alkaline":      func() (float64, error) { return ChronicAmmonia1999(9.1, 20) },
		"criterion, hot":           func() (float64, error) { return ChronicAmmonia2013(8, 31) },
		"criterion, frozen":        func() (float64, error) { return AcuteAmmonia2013(8, -1, false) },
	})
}
