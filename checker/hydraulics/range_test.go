package hydraulics_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

const (
	foot   = 0.3048
	inch   = 0.0254
	cfs    = foot * foot * foot
	gpm    = 231 * inch * inch * inch / 60
	day    = 86400.0
	degree = math.Pi / 180
)

// formulas are the package's formulas of up to five numbers.
var formulas = map[string]func(a, b, c, d, e float64) (float64, error){
	"circle":         func(a, _, _, _, _ float64) (float64, error) { return hydraulics.CircleArea(a) },
	"circle section": func(a, b, _, _, _ float64) (float64, error) { return area(hydraulics.CircularSection(a, b)) },
	"trapezoid":      func(a, b, c, _, _ float64) (float64, error) { return area(hydraulics.TrapezoidalSection(a, b, c)) },
	"Manning":        func(a, b, c, _, _ float64) (float64, error) { return hydraulics.ManningVelocity(a, b, c) },
	"friction slope": func(a, b, c, d, _ float64) (float64, error) {
		return hydraulics.FrictionSlope(a, hydraulics.Section{Area: b, Perimeter: c}, d)
	},
	"sheet": func(a, b, c, _, _ float64) (float64, error) {
		f, err := hydraulics.WideSheet(a, b, c)
		return f.Velocity, err
	},
	"pipe at": func(a, b, c, d, _ float64) (float64, error) {
		f, err := hydraulics.Pipe{Diameter: a, Slope: b, Roughness: c}.At(d)
		return f.Discharge, err
	},
	"pipe carrying": func(a, b, c, d, _ float64) (float64, error) {
		f, err := hydraulics.Pipe{Diameter: a, Slope: b, Roughness: c}.Carrying(d)
		return f.Depth, err
	},
	"channel at": func(a, b, c, d, e float64) (float64, error) {
		f, err := hydraulics.Channel{Bottom: a, SideSlope: b, Slope: c, Roughness: d}.At(e)
		return f.Discharge, err
	},
	"channel carrying": func(a, b, c, d, e float64) (float64, error) {
		f, err := hydraulics.Channel{Bottom: a, SideSlope: b, Slope: c, Roughness: d}.Carrying(e)
		return f.Depth, err
	},
	"elements": func(a, _, _, _, _ float64) (float64, error) {
		r, err := hydraulics.HydraulicElements(a)
		return r.Discharge, err
	},
	"clogging": func(a, b, _, _, _ float64) (float64, error) {
		zones, err := hydraulics.EPAZones.Zones(a, b)
		if err != nil {
			return 0, err
		}
		return zones[1].Conductivity, nil
	},
	"head for": func(a, b, _, _, _ float64) (float64, error) {
		return hydraulics.HeadFor(a, b, func(head float64) (float64, error) { return hydraulics.Weir(1.7, 1, head) })
	},
	"weir":           func(a, b, c, _, _ float64) (float64, error) { return hydraulics.Weir(a, b, c) },
	"rectangular":    func(a, b, c, _, _ float64) (float64, error) { return hydraulics.RectangularWeir(a, b, c) },
	"Francis":        func(a, b, c, _, _ float64) (float64, error) { return hydraulics.FrancisWeir(a, b, c, 2) },
	"Rehbock Cd":     func(a, b, _, _, _ float64) (float64, error) { return hydraulics.RehbockCd(a, b) },
	"Rehbock":        func(a, b, c, _, _ float64) (float64, error) { return hydraulics.RehbockWeir(a, b, c) },
	"Bazin Cd":       func(a, _, _, _, _ float64) (float64, error) { return hydraulics.BazinCd(a) },
	"Cipolletti":     func(a, b, _, _, _ float64) (float64, error) { return hydraulics.CipollettiWeir(a, b) },
	"V-notch":        func(a, b, c, _, _ float64) (float64, error) { return hydraulics.VNotch(a, b, c) },
	"trapezoid weir": func(a, b, c, d, _ float64) (float64, error) { return hydraulics.TrapezoidalWeir(a, b, c, d) },
	"rated notch":    func(a, _, _, _, _ float64) (float64, error) { return hydraulics.ConeNotch90.Flow(a) },
	"spillway": func(a, b, c, d, _ float64) (float64, error) {
		f, err := hydraulics.Spillway{Bottom: a, SideSlope: b, Coefficient: c}.Flow(d)
		return f.Discharge, err
	},
	"velocity head": func(a, _, _, _, _ float64) (float64, error) { return hydraulics.VelocityHead(a) },
	"orifice":       func(a, b, c, _, _ float64) (float64, error) { return hydraulics.Orifice(a, b, c) },
	"drain time":    hydraulics.DrainTime,
	"riser": func(a, b, c, d, _ float64) (float64, error) {
		o, err := hydraulics.Riser{Diameter: a, CrestC: b, OrificeCd: c}.Flow(d)
		return o.Discharge, err
	},
	"outlet": func(a, b, c, d, e float64) (float64, error) {
		o, err := hydraulics.Outlet{Diameter: a, Length: b, Roughness: c, Losses: 0.5, OrificeCd: 0.6}.Flow(d, e)
		return o.Discharge, err
	},
	"rational":      func(a, b, c, _, _ float64) (float64, error) { return hydraulics.RationalPeak(a, b, c) },
	"runoff volume": func(a, b, c, _, _ float64) (float64, error) { return hydraulics.RunoffVolume(a, b, c) },
	"composite": func(a, b, c, d, _ float64) (float64, error) {
		return hydraulics.CompositeCoefficient(hydraulics.Surface{Area: a, Coefficient: b}, hydraulics.Surface{Area: c, Coefficient: d})
	},
	"frequency": func(a, b, _, _, _ float64) (float64, error) {
		return hydraulics.WithFrequency(a, hydraulics.FrequencyFactor{Factor: b})
	},
	"roof":       func(a, b, c, d, _ float64) (float64, error) { return hydraulics.RoofFlow(a, b, c, d) },
	"retention":  func(a, _, _, _, _ float64) (float64, error) { return hydraulics.PotentialRetention(a) },
	"runoff":     func(a, b, c, _, _ float64) (float64, error) { return hydraulics.RunoffDepth(a, b, c) },
	"risk":       func(a, b, _, _, _ float64) (float64, error) { return hydraulics.Risk(a, b) },
	"storm peak": func(a, b, c, d, e float64) (float64, error) { return hydraulics.Storm{a, b, c, d, e}.Peak() },
	"leader":     func(a, b, _, _, _ float64) (float64, error) { return hydraulics.LeaderFlow(a, b) },
	"Darcy":      func(a, b, c, _, _ float64) (float64, error) { return hydraulics.DarcyDischarge(a, b, c) },
	"section":    func(a, b, c, _, _ float64) (float64, error) { return hydraulics.DarcySection(a, b, c) },
	"head loss":  hydraulics.HeadLoss,
	"width":      hydraulics.WidthForHeadLoss,
	"along": func(a, b, c, d, _ float64) (float64, error) {
		return hydraulics.ConductivityAlong(hydraulics.Layer{a, b}, hydraulics.Layer{c, d})
	},
	"across": func(a, b, c, d, _ float64) (float64, error) {
		return hydraulics.ConductivityAcross(hydraulics.Layer{a, b}, hydraulics.Layer{c, d})
	},
	"Kozeny":     func(a, b, _, _, _ float64) (float64, error) { return hydraulics.KozenyRatio(a, b) },
	"void ratio": func(a, _, _, _, _ float64) (float64, error) { return hydraulics.VoidRatio(a) },
	"porosity":   func(a, _, _, _, _ float64) (float64, error) { return hydraulics.Porosity(a) },
	"unit flow":  func(a, _, _, _, _ float64) (float64, error) { return hydraulics.IPCUnitFlow.Units(a) },
	"bed": func(a, b, c, d, e float64) (float64, error) {
		bed := hydraulics.Bed{Width: a, FloorSlope: b, OutletDepth: c, Zones: []hydraulics.Zone{{d, 0.01}}}
		stations, err := bed.WaterSurface(e)
		if err != nil {
			return 0, err
		}
		return stations[0].Level, nil
	},
}

func area(s hydraulics.Section, err error) (float64, error) { return s.Area, err }

// TestEveryFormulaAnswersOrRefuses: whatever comes in, a number or a
// *RangeError comes out.
func TestEveryFormulaAnswersOrRefuses(t *testing.T) {
	odd := rapid.OneOf(
		rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), 0, -1, 1, 100, math.MaxFloat64, math.SmallestNonzeroFloat64}),
		rapid.Float64Range(0, 1), rapid.Float64Range(-10, 1000))
	for name, formula := range formulas {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				result, err := formula(odd.Draw(t, "a"), odd.Draw(t, "b"), odd.Draw(t, "c"), odd.Draw(t, "d"), odd.Draw(t, "e"))
				if err != nil {
					var outside *hydraulics.RangeError
					require.ErrorAs(t, err, &outside)
					require.Zero(t, result)
				}
				require.False(t, math.IsNaN(result) || math.IsInf(result, 0), "%g", result)
			})
		})
	}
}

func TestWhatTheFormulasRefuse(t *testing.T) {
	pipe := hydraulics.Pipe{Diameter: 0.1, Slope: 0.02, Roughness: 0.011}
	full, err := pipe.Full()
	require.NoError(t, err)
	tests := map[string]struct {
		err  func() error
		want string
	}{
		"a pipe that rises": {func() error { _, err := hydraulics.Pipe{0.1, -0.02, 0.011}.Full(); return err },
			"the slope is -0.02; it must be a number more than 0"},
		"water over the crown": {func() error { _, err := pipe.At(0.11); return err },
			"the depth in the pipe is 0.11; it must be from 0 to 0.1"},
		"more than the pipe carries": {func() error { _, err := pipe.Carrying(1.08 * full.Discharge); return err },
			"no more than the pipe carries without pressure"},
		"a channel of no width": {func() error { _, err := hydraulics.Channel{0, 0, 0.01, 0.02}.At(0.1); return err },
			"the sum of bottom width and side slope is 0"},
		"Francis for a deep, narrow notch": {func() error { _, err := hydraulics.FrancisWeir(hydraulics.FrancisSI, 0.46, 0.7196, 2); return err },
			"the head over a third of the length"},
		"Rehbock for a low crest": {func() error { _, err := hydraulics.RehbockCd(0.5, 0.2); return err },
			"the head over twice the crest's height is 1.25"},
		"a notch that is a line": {func() error { _, err := hydraulics.VNotch(0.6, math.Pi, 0.1); return err },
			"the rest of the notch angle to π is 0"},
		"a rated notch with a thread of water": {func() error { _, err := hydraulics.Notch60.Flow(0.01); return err },
			"the head on the notch is 0.01; it must be from 0.06096 to 0.381"},
		"a tank that fills": {func() error { _, err := hydraulics.DrainTime(1, 0.6, 0.01, 1, 2); return err },
			"the final head is 2; it must be from 0 to 1"},
		"an outlet whose mouth is dry": {func() error { _, err := hydraulics.Outlet{0.1, 3, 0.011, 0.5, 0.6}.Flow(0.04, 1); return err },
			"so that water covers the mouth"},
		"a coefficient in percent": {func() error { _, err := hydraulics.RationalPeak(90, 1e-5, 100); return err },
			"the runoff coefficient is 90; it must be from 0 to 1"},
		"a leader over a third full": {func() error { _, err := hydraulics.LeaderFlow(0.1, 0.5); return err },
			"the share of the section is 0.5"},
		"a rating that doesn't reach": {func() error {
			_, err := hydraulics.HeadFor(1, 0.1, func(h float64) (float64, error) { return hydraulics.CipollettiWeir(0.3, h) })
			return err
		}, "no more than passes at the highest head"},
		"a sand that is tighter than a developed bed": {func() error { _, err := hydraulics.DevelopedBed.Zones(5, 1e-4); return err },
			"at least that of a developed bed"},
		"a porosity of 1": {func() error { _, err := hydraulics.KozenyRatio(0.4, 1); return err },
			"the porosity is 1; it must be more than 0 and less than 1"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) { require.ErrorContains(t, tt.err(), tt.want) })
	}
}
