package hydraulics

import (
	"cmp"
	"math"
)

// StormSource names the modified rational method.
const StormSource = "modified rational method: a trapezoid that rises and falls in the shorter of storm and time of concentration (from memory)"

// Storm is rain of one intensity on a catchment, by the modified rational
// method.
type Storm struct {
	Coefficient   float64 // of runoff, 0 to 1
	Intensity     float64 // m/s
	Area          float64 // m²
	Duration      float64 // s
	Concentration float64 // time of concentration, s
}

// Peak is the greatest flow, m³/s: C·i·A, and where the storm is over before
// the whole catchment drains to the outlet, only the share duration over time of
// concentration of it. The times are more than 0.
func (s Storm) Peak() (float64, error) {
	whole, err := RationalPeak(s.Coefficient, s.Intensity, s.Area)
	return valid(whole*math.Min(1, s.Duration/s.Concentration),
		err, positive("duration", s.Duration), positive("time of concentration", s.Concentration))
}

// Hydrograph is the flow in m³/s at even steps of time in s from the storm's
// beginning until it is over: the volume under it is C·i·A·duration. A step
// is more than 0, and no longer than either time, or it would miss the peak.
func (s Storm) Hydrograph(step float64) ([]float64, error) {
	peak, err := s.Peak()
	rise, fall := math.Min(s.Duration, s.Concentration), math.Max(s.Duration, s.Concentration)
	if err := cmp.Or(err, positive("time step", step), within("time step", step, 0, rise), steps(rise+fall, step)); err != nil {
		return nil, err
	}
	var flows []float64
	for i := 0; float64(i)*step < rise+fall+step; i++ {
		t := float64(i) * step
		flows = append(flows, peak*math.Max(0, math.Min(1, math.Min(t/rise, (rise+fall-t)/rise))))
	}
	return flows, nil
}

// mostSteps bounds what a routing and its hydrograph may take.
const mostSteps = 1_000_000

func steps(duration, step float64) error {
	return within("number of time steps", duration/step, 0, mostSteps)
}

// LeaderSource names the formula of the leader tables.
const LeaderSource = "Wyly and Eaton, q = 27.8·r^(5/3)·d^(8/3) in gpm and in (from memory), which gives National Standard Plumbing Code 2006, Table 13.6.1"

// LeaderFlow is the flow of an upright leader whose water covers its wall and
// fills a share of its section, m³/s: q = 27.8·r^(5/3)·d^(8/3) in gal/min and
// inches. The diameter in m is more than 0; codes take shares of 1/4 to 1/3, and
// 7/24 in the National Standard Plumbing Code. Above 1/3 the air core breaks (from
// memory) and the formula gives a *RangeError.
func LeaderFlow(diameter, share float64) (float64, error) {
	return valid(27.8*gallonPerMinute*math.Pow(share, 5.0/3)*math.Pow(diameter/inch, 8.0/3),
		positive("diameter", diameter), positive("share of the section", share), within("share of the section", share, 0, 1.0/3))
}
