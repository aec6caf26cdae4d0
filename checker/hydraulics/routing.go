package hydraulics

import (
	"cmp"
	"fmt"
	"math"
)

// RoutingSource names level-pool routing.
const RoutingSource = "level-pool (storage-indication) routing: (I₁ + I₂)/2·Δt = S₂ − S₁ + (O₁ + O₂)/2·Δt (any hydrology textbook; from memory)"

// Pool is a basin with a level surface and a free way out.
type Pool struct {
	Storage func(stage float64) float64 // m³ at a stage in m, rising with it
	Outflow func(stage float64) float64 // m³/s at a stage, never falling with it
	Lowest  float64                     // stage, m, from which both are known
	Highest float64                     // stage, m, up to which they are known: the rim
}

// PoolState is a pool at one time.
type PoolState struct {
	Stage   float64 // m
	Storage float64 // m³
	Outflow float64 // m³/s
}

// OvertoppedError says that a pool rose over its highest stage.
type OvertoppedError struct{ Step int }

func (e *OvertoppedError) Error() string {
	return fmt.Sprintf("the water rises over the highest stage at time step %d", e.Step)
}

// Route leads inflows in m³/s at even steps of time in s through the pool from
// a starting stage, and gives its state at each of those times, the start
// included. What flows in, flows out or stays: by the trapezoidal rule the volumes
// balance to the rounding of the storage.
//
// The error is an *OvertoppedError where the water rises over the rim, or a
// *RangeError, also where the time step is so long that the pool would empty
// within it.
func (p Pool) Route(start, step float64, inflows []float64) ([]PoolState, error) {
	err := cmp.Or(within("starting stage", start, p.Lowest, p.Highest), positive("time step", step),
		within("number of inflows", float64(len(inflows)), 1, mostSteps))
	if err != nil {
		return nil, err
	}
	for _, q := range inflows {
		if err := notNegative("inflow", q); err != nil {
			return nil, err
		}
	}
	states := []PoolState{p.state(start)}
	for i := 1; i < len(inflows); i++ {
		before := states[i-1]
		indication := before.Storage - before.Outflow*step/2 + (inflows[i-1]+inflows[i])*step/2
		next, err := p.find(indication, step, i)
		if err != nil {
			return nil, err
		}
		states = append(states, next)
	}
	return states, nil
}

// find gives the state of which storage + outflow·Δt/2 is the indication.
func (p Pool) find(indication, step float64, i int) (PoolState, error) {
	f := func(stage float64) float64 { return p.Storage(stage) + p.Outflow(stage)*step/2 }
	lowest, highest := f(p.Lowest), f(p.Highest)
	switch {
	case math.IsNaN(indication) || math.IsNaN(lowest) || math.IsNaN(highest):
		return PoolState{}, outside("storage or outflow", math.NaN(), "a number at every stage from the lowest to the highest")
	case indication < lowest:
		return PoolState{}, outside("time step", step, "shorter, for the pool empties within it")
	case indication > highest:
		return PoolState{}, &OvertoppedError{i}
	}
	return p.state(bisect(indication, p.Lowest, p.Highest, f)), nil
}

func (p Pool) state(stage float64) PoolState {
	return PoolState{stage, p.Storage(stage), p.Outflow(stage)}
}

// LongestStep is the longest time step in s with which Route does not overshoot
// between two stages in m: the least 2·ΔS/ΔO over a hundredth of the way, without
// limit where the outflow does not rise.
func (p Pool) LongestStep(low, high float64) float64 {
	const parts = 100
	longest := math.Inf(1)
	for i := range parts {
		from, to := low+(high-low)*float64(i)/parts, low+(high-low)*float64(i+1)/parts
		if out := p.Outflow(to) - p.Outflow(from); out > 0 {
			longest = min(longest, 2*(p.Storage(to)-p.Storage(from))/out)
		}
	}
	return longest
}
