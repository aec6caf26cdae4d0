package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var water20 = Fluid{Density: 998, Viscosity: 1.0e-3}

func TestStokesVelocityGrowsWithTheSquare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Particle{rapid.Float64Range(1e-7, 4e-5).Draw(t, "diameter"), rapid.Float64Range(1100, 3000).Draw(t, "density")}
		v, err := StokesVelocity(p, water20)
		require.NoError(t, err)
		p.Diameter *= 2
		faster, err := StokesVelocity(p, water20)
		require.NoError(t, err)
		require.InEpsilon(t, 4*v, faster, 1e-9)
	})
}

// Weight and drag are in balance at the settling velocity, and the velocity is
// below Stokes' everywhere.
func TestSettlingVelocityBalances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Particle{rapid.Float64Range(1e-7, 5e-4).Draw(t, "diameter"), rapid.Float64Range(1010, 2700).Draw(t, "density")}
		v, err := SettlingVelocity(p, water20)
		require.NoError(t, err)
		cd, err := DragCoefficient(reynolds(v, p, water20))
		require.NoError(t, err)
		back, err := VelocityAtDrag(p, water20, cd)
		require.NoError(t, err)
		require.InEpsilon(t, v, back, 1e-9)
		require.Less(t, v, stokes(p, water20))
	})
}

// At small Reynolds numbers the drag is Stokes' 24/Re.
func TestDragComesToStokes(t *testing.T) {
	cd, err := DragCoefficient(1e-6)
	require.NoError(t, err)
	require.InEpsilon(t, 24e6, cd, 1e-6)
}

// The standard drag curve of spheres, from memory: about 4.3 at Re 10 and 1.09 at
// Re 100.
func TestDragFollowsTheStandardCurve(t *testing.T) {
	for re, want := range map[float64]float64{10: 4.3, 100: 1.09} {
		cd, err := DragCoefficient(re)
		require.NoError(t, err)
		require.InEpsilon(t, want, cd, 0.06)
	}
}

func TestStokesSaysWhereItEnds(t *testing.T) {
	largest, err := LargestByStokes(2650, water20)
	require.NoError(t, err)

	_, err = StokesVelocity(Particle{largest * 0.999, 2650}, water20)
	require.NoError(t, err)
	_, err = StokesVelocity(Particle{largest * 1.001, 2650}, water20)
	var beyond *BeyondStokes
	require.ErrorAs(t, err, &beyond)
	require.InDelta(t, 1.003, beyond.Reynolds, 1e-3)
	require.ErrorContains(t, err, "Reynolds number")

	_, err = SmallestKept(1, 2650, water20)
	require.ErrorAs(t, err, &beyond)
}

// The particle that a basin just keeps settles at its surface loading.
func TestSmallestKeptSettlesAtTheLoading(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		loading := rapid.Float64Range(1e-8, 5e-3).Draw(t, "surface loading")
		d, err := SmallestKept(loading, 2650, water20)
		require.NoError(t, err)
		v, err := StokesVelocity(Particle{d, 2650}, water20)
		require.NoError(t, err)
		require.InEpsilon(t, loading, v, 1e-9)
	})
}

// Viscosity of water in handbooks, from memory: 1.792, 1.307, 1.002, 0.798 and
// 0.653 mPa·s at 0, 10, 20, 30 and 40 °C.
func TestViscosity(t *testing.T) {
	for celsius, want := range map[float64]float64{0: 1.792, 10: 1.307, 20: 1.002, 30: 0.798, 40: 0.653} {
		water, err := Water(celsius)
		require.NoError(t, err)
		require.InEpsilon(t, want*1e-3, water.Viscosity, 0.001, "%g °C", celsius)
	}
}

func TestSettlingRefuses(t *testing.T) {
	_, err := Water(-1)
	require.Error(t, err)
	requireRefused(t, map[string]func() (float64, error){
		"what floats":          func() (float64, error) { return StokesVelocity(Particle{1e-5, 900}, water20) },
		"grease kept":          func() (float64, error) { return SmallestKept(1e-4, 900, water20) },
		"grease by Stokes":     func() (float64, error) { return LargestByStokes(900, water20) },
		"density by gravity":   func() (float64, error) { return SettlingVelocity(Particle{1e-5, 2.65}, water20) },
		"a boulder":            func() (float64, error) { return StokesVelocity(Particle{1, 2650}, water20) },
		"beyond the drag law":  func() (float64, error) { return SettlingVelocity(Particle{5e-3, 2650}, water20) },
		"drag in still water":  func() (float64, error) { return DragCoefficient(0) },
		"no drag":              func() (float64, error) { return VelocityAtDrag(Particle{1e-5, 2650}, water20, 0) },
		"fluid without stick":  func() (float64, error) { return StokesVelocity(Particle{1e-5, 2650}, Fluid{Density: 1000}) },
		"no surface loading":   func() (float64, error) { return SmallestKept(0, 2650, water20) },
		"area without flow":    func() (float64, error) { return SettlingArea(0, 1e-4, 1.2) },
		"factor below ideal":   func() (float64, error) { return SettlingArea(1e-4, 1e-4, 0.8) },
		"interval of nobody":   func() (float64, error) { return CleanOutInterval(1, 0, 1e-9) },
		"negative sludge time": func() (float64, error) { return SludgeVolume(4, 1e-9, -1) },
	})
}

// In the interval the storage fills, no more and no less. Rates are per day: a
// rate per day read as one per year would give an interval 365 times as long.
func TestCleanOutInterval(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		storage := rapid.Float64Range(0.01, 10).Draw(t, "storage")
		persons := rapid.Float64Range(1, 20).Draw(t, "persons")
		rate := rapid.SampledFrom(SludgeRates).Draw(t, "rate").Rate
		interval, err := CleanOutInterval(storage, persons, rate)
		require.NoError(t, err)
		volume, err := SludgeVolume(persons, rate, interval)
		require.NoError(t, err)
		require.InEpsilon(t, storage, volume, 1e-9)
	})
}
