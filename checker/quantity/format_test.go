package quantity_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
)

func TestFormat(t *testing.T) {
	tests := []struct {
		d      quantity.Dimension
		text   string
		us, si string
	}{
		// Worked out by hand from the definitions in NIST Handbook 44, Appendix C.
		{quantity.Length, "24 in", "24 in", "610 mm"},
		{quantity.Length, "22.9 in", "22.9 in", "582 mm"},
		{quantity.Length, "3 ft", "3 ft", "914 mm"},
		{quantity.Length, "100 ft", "100 ft", "30.48 m"},
		{quantity.Length, "101.25 ft", "101.25 ft", "30.86 m"},
		{quantity.Length, "0.1 mm", "0.004 in", "0.1 mm"},
		{quantity.Length, "0 ft", "0 in", "0 mm"},
		{quantity.Length, "3/4 in", "0.75 in", "19 mm"},
		{quantity.Length, "45 mil", "0.045 in", "1.1 mm"},
		{quantity.Level, "98.5 ft", "98.5 ft", "30.023 m"},
		{quantity.Level, "-0.4 m", "-1.31 ft", "-0.4 m"},
		{quantity.Area, "300 ft2", "300 ft²", "27.87 m²"},
		{quantity.Volume, "50 gal", "50 gal", "189.3 L"},
		{quantity.Volume, "2 yd3", "403.9 gal", "1.53 m³"},
		{quantity.Flow, "160 gal/d", "160 gal/d", "605.7 L/d"},
		{quantity.Flow, "4.5 gal/min", "4.5 gal/min", "0.28 L/s"},
		{quantity.GrainSize, "3/8 in", "0.375 in", "9.5 mm"},
		{quantity.GrainSize, "2 mm", "2 mm", "2 mm"},
		{quantity.GrainSize, "20 um", "20 µm", "20 µm"},
		{quantity.EarthVolume, "202 gal", "1 yd³", "0.76 m³"}, // 27 × 1,728 in³ ÷ 231 in³ = 201.97 gal to the yard
		{quantity.EarthVolume, "2 yd3", "2 yd³", "1.53 m³"},
		{quantity.PeakFlow, "160 gal/d", "0.1 gal/min", "0.01 L/s"},
		{quantity.PeakFlow, "8 gal/min", "8 gal/min", "0.5 L/s"},
		{quantity.Velocity, "2 ft/s", "2 ft/s", "0.61 m/s"},
		{quantity.RainRate, "1.5 in/h", "1.5 in/h", "38.1 mm/h"},
		{quantity.Loading, "1 gal/d/ft2", "1 gal/d/ft²", "40.7 L/d/m²"},
		{quantity.Load, "8 g/m2/d", "71.4 lb/ac/d", "8 g/m²/d"},
		{quantity.Percolation, "20 min/in", "20 min/in", "7.9 min/cm"},
		{quantity.Slope, "1/4 in/ft", "0.25 in/ft", "2.08 %"},
		{quantity.Slope, "1/8 in/ft", "0.125 in/ft", "1.04 %"},
		{quantity.Share, "33.3 %", "33.3 %", "33.3 %"},
		{quantity.Duration, "90 s", "90 s", "90 s"},
		{quantity.Duration, "45 min", "45 min", "45 min"},
		{quantity.Duration, "24 h", "24 h", "24 h"},
		{quantity.Duration, "90 d", "90 d", "90 d"},
		{quantity.Duration, "100 yr", "100 yr", "100 yr"},
		{quantity.Temperature, "39 °F", "39 °F", "3.9 °C"},
		{quantity.Temperature, "0 °F", "0 °F", "-17.8 °C"},
		{quantity.DegreeDays, "900 °F·d", "900 °F·d", "500 °C·d"},
		{quantity.Angle, "12 deg", "12°", "12°"},
		{quantity.Mass, "40 lb", "40 lb", "18.1 kg"},
		{quantity.Mass, "6482.5 lb", "6482 lb", "2.94 t"},
		{quantity.Mass, "500 lb", "500 lb", "227 kg"},
		{quantity.Density, "100 lb/ft3", "100 lb/ft³", "1602 kg/m³"},
		{quantity.Density, "2 mg/L", "2 mg/L", "2 mg/L"},
		{quantity.Radiation, "18 MJ/m2/d", "18 MJ/m²/d", "18 MJ/m²/d"},
		{quantity.Conductivity, "3000 ft/d", "3000 ft/d", "914.4 m/d"},
		{quantity.Number, "3", "3", "3"},
		{quantity.Number, "1.234", "1.234", "1.234"},
		{quantity.Number, "30.097", "30.1", "30.1"},
		{quantity.Duration, "447.3 d", "447 d", "447 d"},
	}
	for _, tt := range tests {
		t.Run(string(tt.d)+" "+tt.text, func(t *testing.T) {
			q, err := quantity.Parse(tt.text, tt.d)
			require.NoError(t, err)
			require.Equal(t, tt.us, quantity.Format(q.Value, tt.d, quantity.US))
			require.Equal(t, tt.si, quantity.Format(q.Value, tt.d, quantity.SI))
		})
	}
}

// What runs the wrong way is shown with its sign.
func TestFormatNegative(t *testing.T) {
	require.Equal(t, "-0.25 in/ft", quantity.Format(-1./48, quantity.Slope, quantity.US))
	require.Equal(t, "-1.5 in", quantity.Format(-1.5*in, quantity.Length, quantity.US))
	require.Equal(t, "0 in", quantity.Format(math.Copysign(0, -1), quantity.Length, quantity.US))
}

func TestUnitForValuesReadTogether(t *testing.T) {
	tests := []struct {
		name            string
		measured, limit float64
		want            [3]string // measured, limit, margin
	}{
		{"the greatest decides the unit", 2 * ft, 100 * ft, [3]string{"2 ft", "100 ft", "-98 ft"}},
		{"small ones in inches", 17.5 * in, 18 * in, [3]string{"17.5 in", "18 in", "-0.5 in"}},
		{"a small margin is not shown as zero", 99.999 * ft, 100 * ft, [3]string{"99.999 ft", "100 ft", "-0.001 ft"}},
		{"close values are shown apart", 22.96 * in, 23.01 * in, [3]string{"22.96 in", "23.01 in", "-0.05 in"}},
		{"the noise of computing is not shown", 0.1*ft + 0.2*ft, 0.3 * ft, [3]string{"3.6 in", "3.6 in", "0 in"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			margin := tt.measured - tt.limit
			u := quantity.UnitFor(quantity.Length, quantity.US, tt.measured, tt.limit, margin)
			require.Equal(t, tt.want, [3]string{u.Format(tt.measured), u.Format(tt.limit), u.FormatDifference(margin)})
		})
	}
}

// What is held against a text is shown in the unit of the text, where the
// system has it.
func TestUnitAsWritten(t *testing.T) {
	tests := []struct {
		limit    string
		d        quantity.Dimension
		measured float64
		us, si   [3]string // measured, limit, margin
	}{
		{"30 in", quantity.Length, 3.15 * ft, [3]string{"37.8 in", "30 in", "7.8 in"}, [3]string{"960 mm", "762 mm", "198 mm"}},
		{`30"`, quantity.Length, 3.15 * ft, [3]string{"37.8 in", "30 in", "7.8 in"}, [3]string{"960 mm", "762 mm", "198 mm"}},
		{"2 ft", quantity.Length, 1.5 * ft, [3]string{"1.5 ft", "2 ft", "-0.5 ft"}, [3]string{"457 mm", "610 mm", "-152 mm"}},
		{"2 ft 6 in", quantity.Length, 2 * ft, [3]string{"24 in", "30 in", "-6 in"}, [3]string{"610 mm", "762 mm", "-152 mm"}},
		{"1/4 in", quantity.Length, 1 * in, [3]string{"1 in", "0.25 in", "0.75 in"}, [3]string{"25 mm", "6 mm", "19 mm"}},
		{"0.9 m", quantity.Length, 1 * ft, [3]string{"12 in", "35.4 in", "-23.4 in"}, [3]string{"0.3 m", "0.9 m", "-0.6 m"}},
		{"1/4 in/ft", quantity.Slope, 0.01, [3]string{"0.12 in/ft", "0.25 in/ft", "-0.13 in/ft"}, [3]string{"1 %", "2.08 %", "-1.08 %"}},
		{"1:50", quantity.Slope, 0.01, [3]string{"0.12 in/ft", "0.24 in/ft", "-0.12 in/ft"}, [3]string{"1 %", "2 %", "-1 %"}},
		{"3", quantity.Number, 4, [3]string{"4", "3", "1"}, [3]string{"4", "3", "1"}},
		{"50 °F", quantity.Temperature, 5, [3]string{"41 °F", "50 °F", "-9 °F"}, [3]string{"5 °C", "10 °C", "-5 °C"}},
	}
	for _, tt := range tests {
		t.Run(tt.limit, func(t *testing.T) {
			limit, err := quantity.Parse(tt.limit, tt.d)
			require.NoError(t, err)
			margin := tt.measured - limit.Value
			for system, want := range map[quantity.System][3]string{quantity.US: tt.us, quantity.SI: tt.si} {
				u := quantity.UnitAs(tt.limit, tt.d, system, tt.measured, limit.Value, margin)
				require.Equal(t, want, [3]string{u.Format(tt.measured), u.Format(limit.Value), u.FormatDifference(margin)})
			}
		})
	}
}

// 4 °C is 39.2 °F; 1 °C warmer is 1.8 °F warmer.
func TestTemperatureDifference(t *testing.T) {
	u := quantity.UnitFor(quantity.Temperature, quantity.US, 5, 4, 1)
	require.Equal(t, "41 °F", u.Format(5))
	require.Equal(t, "39.2 °F", u.Format(4))
	require.Equal(t, "1.8 °F", u.FormatDifference(1))
}
