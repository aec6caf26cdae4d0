package climate

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	StefanSource           = "U.S. Army TM 5-852-6 / UFC 3-130-06, from memory: the modified Berggren formula with λ = 1"
	ModifiedBerggrenSource = "U.S. Army TM 5-852-6 / UFC 3-130-06, from memory"
	AldrichPaynterSource   = "Aldrich and Paynter 1953, eq. 2-33, as an open frost-depth program cites it with UFC 3-130-06"
	ReducedSource          = "an open frost-depth program that cites UFC 3-130-06: 0.707 of the closed form"
	InsulationSource       = "Alaska Administrative Code 18 AAC 72.630 (c), note: 1 in of insulation in place of 1 ft of soil"
	NeumannSource          = "Neumann's solution for one conductivity and one heat capacity, frozen or thawed, which the manual's chart of λ draws; from memory"
)

// Winter is the winter that the ground has to bear.
type Winter struct {
	FreezingIndex float64 // of the air, °C·d
	SurfaceFactor float64 // n-factor of the ground's surface, 0.1 to 2
	Days          float64 // length of the freezing season, 1 to 365
	MeanAnnual    float64 // mean temperature of the year, °C
}

func (w Winter) refuse() error {
	return bounds.Refuse(bounds.Given("freezing index", w.FreezingIndex, 0, 10000, "°C·d"), bounds.Given("surface factor", w.SurfaceFactor, 0.1, 2, ""),
		bounds.Given("length of the freezing season", w.Days, 1, 365, "d"), temperature("mean annual temperature", w.MeanAnnual))
}

// Stefan gives the depth to which the ground freezes in m when only the latent
// heat of its water holds the frost back: more than it really is. The winter's
// length and the year's mean do not matter. Source: StefanSource.
func Stefan(g Ground, w Winter) (float64, error) {
	latent, err := g.LatentHeat()
	if err != nil {
		return 0, err
	}
	if err := w.refuse(); err != nil {
		return 0, err
	}
	return math.Sqrt(2 * g.Conductivity * w.SurfaceFactor * w.FreezingIndex * day / latent), nil
}

// Lambda is one form of the factor λ, above 0 to 1, by which the modified
// Berggren method lessens Stefan's depth.
type Lambda struct {
	Name, Source string
	at           func(alpha, mu float64) float64
}

// The forms of λ.
var (
	// AldrichPaynter is said to give too much depth in temperate climates.
	AldrichPaynter = Lambda{"closed form of Aldrich and Paynter", AldrichPaynterSource, closedForm}
	Reduced        = Lambda{"0.707 of the closed form", ReducedSource, func(alpha, mu float64) float64 { return 0.707 * closedForm(alpha, mu) }}
	Between        = Lambda{"mean of the closed form and 0.707 of it", ReducedSource, func(alpha, mu float64) float64 { return (1 + 0.707) / 2 * closedForm(alpha, mu) }}
	Neumann        = Lambda{"Neumann's solution", NeumannSource, neumann}
)

// At gives λ for the thermal ratio α, 0 or more, and the fusion
// parameter μ, 0 to 1,000.
func (l Lambda) At(alpha, mu float64) (float64, error) {
	if err := bounds.Refuse(bounds.NotNegative("thermal ratio", alpha, ""), bounds.Given("fusion parameter", mu, 0, 1000, "")); err != nil {
		return 0, err
	}
	return l.at(alpha, mu), nil
}

func closedForm(alpha, mu float64) float64 {
	return 1 / math.Sqrt(1+mu*(alpha+0.5))
}

// neumann solves, by halving, the equation that the chart of λ is drawn from.
// With λ = γ·√(2/μ), the front moves as fast as the difference of the heat flows
// on its two sides freezes: γ·√π·exp(γ²) = μ·(1/erf(γ) − α/erfc(γ)).
func neumann(alpha, mu float64) float64 {
	if mu == 0 {
		return 1
	}
	ahead := func(gamma float64) bool {
		return gamma*math.Sqrt(math.Pi)*math.Exp(gamma*gamma) > mu*(1/math.Erf(gamma)-alpha/math.Erfc(gamma))
	}
	low, high := 0.0, math.Sqrt(mu/2) // Stefan's front is never behind
	for range 60 {
		if middle := (low + high) / 2; ahead(middle) {
			high = middle
		} else {
			low = middle
		}
	}
	return high * math.Sqrt(2/mu)
}

// Berggren is a frost depth by the modified Berggren method with its steps.
type Berggren struct {
	Stefan       float64 // m
	ThermalRatio float64 // α: how warm the ground is at first against how cold its surface gets
	Fusion       float64 // μ: heat stored by cooling against the latent heat
	Lambda       float64
	Depth        float64 // m
}

// ModifiedBerggren gives the depth to which the ground freezes, by one of the
// forms of λ. Ground whose mean annual temperature is not above 0 °C stays frozen,
// and the method does not apply: an error. Source: ModifiedBerggrenSource.
func ModifiedBerggren(g Ground, w Winter, lambda Lambda) (Berggren, error) {
	stefan, err := Stefan(g, w)
	if err != nil {
		return Berggren{}, err
	}
	if w.MeanAnnual <= 0 {
		return Berggren{}, fmt.Errorf("the mean annual temperature is %g °C: ground that never thaws has no frost depth", w.MeanAnnual)
	}
	if w.FreezingIndex == 0 {
		return Berggren{Lambda: 1}, nil
	}
	var c chain
	surface := w.SurfaceFactor * w.FreezingIndex / w.Days
	b := Berggren{Stefan: stefan, ThermalRatio: w.MeanAnnual / surface}
	b.Fusion = surface * c.take(g.HeatCapacity()) / c.take(g.LatentHeat())
	b.Lambda = c.take(lambda.At(b.ThermalRatio, b.Fusion))
	b.Depth = b.Lambda * stefan
	if c.err != nil {
		return Berggren{}, c.err
	}
	return b, nil
}

// UncoveredFrost gives how far frost reaches below a cover of earth, stone or
// pavement in m, negative where it ends within the cover. Source: UFC 3-260-03
// (2001), worked example of pavement thickness.
func UncoveredFrost(frost, cover float64) (float64, error) {
	return unless(bounds.Refuse(bounds.NotNegative("frost depth", frost, "m"), bounds.NotNegative("cover", cover, "m")), frost-cover)
}

// soilForInsulation is how much soil keeps frost out as well as insulation of
// unit thickness does. Source: InsulationSource.
const soilForInsulation = 12

// InsulatedCover gives the depth of soil in m that keeps frost out of a pipe as
// well as a cover of soil and insulation do, both in m. Source: InsulationSource.
func InsulatedCover(cover, insulation float64) (float64, error) {
	err := bounds.Refuse(bounds.NotNegative("cover", cover, "m"), bounds.NotNegative("insulation", insulation, "m"))
	return unless(err, cover+soilForInsulation*insulation)
}
