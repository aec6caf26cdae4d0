package treatment

import (
	"fmt"
	"math"

	"greysill/checker/internal/bounds"
)

// Sources of the formulas of this file.
const (
	StokesSource    = "Stokes' law: Davis, Water and Wastewater Engineering, Ex. 10-1; its limit: Subramanya, 1000 Solved Problems in Fluid Mechanics, Ex. 9.3, as worked in an open companion"
	DragSource      = "Cd = (24/Re)·(1 + 3Re/16)^½: Natarajan, Principles of Fluid Mechanics, Ex. 11.3, as worked in an open companion; its upper limit of Re 100 from memory"
	ViscositySource = "Kestin, Sokolov & Wakeham, Viscosity of Liquid Water (1978), from memory"
	IdealSource     = "ideal settling basin of Hazen and Camp, from memory"
)

// Fluid is what particles settle in.
type Fluid struct {
	Density   float64 // kg/m³
	Viscosity float64 // Pa·s, dynamic
}

// Water gives water at 0 to 40 °C: 1,000 kg/m³, within 0.8 % there (common
// practice), and its viscosity. Source: ViscositySource.
func Water(celsius float64) (Fluid, error) {
	if err := bounds.Refuse(bounds.Given("water temperature", celsius, 0, 40, "°C")); err != nil {
		return Fluid{}, err
	}
	below := 20 - celsius
	exponent := below / (celsius + 96) * (1.2364 - 1.37e-3*below + 5.7e-6*below*below)
	return Fluid{Density: 1000, Viscosity: 1.002e-3 * math.Pow(10, exponent)}, nil
}

func (f Fluid) kinematic() float64 { return f.Viscosity / f.Density }

// Particle is a grain, taken as a ball.
type Particle struct {
	Diameter float64 // m: not the radius
	Density  float64 // kg/m³, above the fluid's
}

// Reynolds numbers up to which the laws hold.
const (
	StokesLimit = 1.0 // 0.5 for the strict
	DragLimit   = 100.0
)

// BeyondStokes is the error of Stokes' law outside its range.
type BeyondStokes struct {
	Velocity float64 // m/s by Stokes' law, too fast
	Reynolds float64 // at that velocity
}

func (e *BeyondStokes) Error() string {
	return fmt.Sprintf("the Reynolds number by Stokes' law is %.3g: expected below %g", e.Reynolds, StokesLimit)
}

// StokesVelocity gives the settling velocity in m/s: v = g·(ρs−ρ)·d²/(18·μ). From
// Re = 1 on the error is a *BeyondStokes, which has the velocity and the Reynolds
// number; SettlingVelocity goes on. Source: StokesSource.
func StokesVelocity(p Particle, f Fluid) (float64, error) {
	if err := p.refuse(f); err != nil {
		return 0, err
	}
	v := stokes(p, f)
	if re := reynolds(v, p, f); re >= StokesLimit {
		return 0, &BeyondStokes{v, re}
	}
	return v, nil
}

// SettlingVelocity gives the settling velocity in m/s for Reynolds numbers up to
// 100: that of Stokes' law with its drag corrected until the velocity stays. It
// is a little below Stokes' law already at Re 1. Source: DragSource.
func SettlingVelocity(p Particle, f Fluid) (float64, error) {
	if err := p.refuse(f); err != nil {
		return 0, err
	}
	v := stokes(p, f)
	for range 100 { // each step at least halves the error of log v
		v = p.velocityAt(drag(reynolds(v, p, f)), f)
	}
	return bounds.Result(v, bounds.Given("Reynolds number", reynolds(v, p, f), 0, DragLimit, ""))
}

// DragCoefficient gives the drag coefficient of a ball at a Reynolds number
// above 0, to 100. Source: DragSource.
func DragCoefficient(re float64) (float64, error) {
	return bounds.Result(drag(re), bounds.Given("Reynolds number", re, 1e-12, DragLimit, ""))
}

// VelocityAtDrag gives the velocity in m/s at which a particle settles against a
// drag coefficient: v = √(4·g·d·(ρs−ρ)/(3·Cd·ρ)). One step of the textbooks'
// trial and error. Source: StokesSource.
func VelocityAtDrag(p Particle, f Fluid, coefficient float64) (float64, error) {
	if err := p.refuse(f); err != nil {
		return 0, err
	}
	return bounds.Result(p.velocityAt(coefficient, f), bounds.Positive("drag coefficient", coefficient, ""))
}

// LargestByStokes gives the diameter in m of the largest particle of a density
// in kg/m³ that obeys Stokes' law, that of Re = 1. Source: StokesSource.
func LargestByStokes(density float64, f Fluid) (float64, error) {
	if err := (Particle{Diameter: 1e-6, Density: density}).refuse(f); err != nil {
		return 0, err
	}
	return math.Cbrt(StokesLimit * 18 * f.Viscosity * f.kinematic() / (standardGravity * (density - f.Density))), nil
}

// SmallestKept gives the diameter in m of the smallest particle of a density in
// kg/m³ that a basin keeps whole at a surface loading in m/s: the one that
// settles just as fast, whatever the depth. One that settles outside Stokes' law
// is a *BeyondStokes. Source: IdealSource.
func SmallestKept(surfaceLoading, density float64, f Fluid) (float64, error) {
	if err := bounds.Refuse(bounds.Positive("surface loading", surfaceLoading, "m/s")); err != nil {
		return 0, err
	}
	if err := (Particle{Diameter: 1e-6, Density: density}).refuse(f); err != nil {
		return 0, err
	}
	d := math.Sqrt(18 * f.Viscosity * surfaceLoading / (standardGravity * (density - f.Density)))
	if _, err := StokesVelocity(Particle{d, density}, f); err != nil {
		return 0, err
	}
	return d, nil
}

func (p Particle) refuse(f Fluid) error {
	return bounds.Refuse(bounds.Positive("density of the fluid", f.Density, "kg/m³"), bounds.Positive("viscosity of the fluid", f.Viscosity, "Pa·s"),
		bounds.Given("diameter of the particle", p.Diameter, 1e-9, 0.1, "m"),
		bounds.Given("density of the particle (one that is lighter than the fluid floats)", p.Density, f.Density*(1+1e-9), 25000, "kg/m³"))
}

func (p Particle) velocityAt(coefficient float64, f Fluid) float64 {
	return math.Sqrt(4 * standardGravity * p.Diameter * (p.Density - f.Density) / (3 * coefficient * f.Density))
}

func stokes(p Particle, f Fluid) float64 {
	return standardGravity * (p.Density - f.Density) * p.Diameter * p.Diameter / (18 * f.Viscosity)
}

func reynolds(v float64, p Particle, f Fluid) float64 { return v * p.Diameter / f.kinematic() }

func drag(re float64) float64 { return 24 / re * math.Sqrt(1+3*re/16) }
