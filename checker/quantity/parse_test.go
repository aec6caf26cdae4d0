package quantity_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
)

// The factors are the definitions of NIST Handbook 44, Appendix C: 1 in is
// 25.4 mm, 1 US gal is 231 in³, 1 lb is 0.45359237 kg. The wanted values are
// worked out from them here, not copied from what Parse gives.
const (
	in  = 0.0254
	ft  = 12 * in
	gal = 231 * in * in * in
	day = 86400.0
)

func TestParse(t *testing.T) {
	tests := []struct {
		d    quantity.Dimension
		text string
		want float64
	}{
		{quantity.Length, `24 in`, 24 * in},
		{quantity.Length, `24"`, 24 * in},
		{quantity.Length, `24″`, 24 * in},
		{quantity.Length, `24 inches`, 24 * in},
		{quantity.Length, `24 in.`, 24 * in},
		{quantity.Length, `2 ft 6 in`, 30 * in},
		{quantity.Length, `2' 6"`, 30 * in},
		{quantity.Length, `2'-6"`, 30 * in},
		{quantity.Length, `2′-6½″`, 30.5 * in},
		{quantity.Length, `2ft6in`, 30 * in},
		{quantity.Length, `1 1/2 in`, 1.5 * in},
		{quantity.Length, `1-1/2"`, 1.5 * in},
		{quantity.Length, `½ in`, 0.5 * in},
		{quantity.Length, `1½ in`, 1.5 * in},
		{quantity.Length, `.5 in`, 0.5 * in},
		{quantity.Length, `1,250 ft`, 1250 * ft},
		{quantity.Length, `0.6 m`, 0.6},
		{quantity.Length, `600 mm`, 0.6},
		{quantity.Length, `60 cm`, 0.6},
		{quantity.Length, "0.6\u00a0m", 0.6},
		{quantity.Length, `45 mil`, 0.045 * in},
		{quantity.Level, `-2 ft 6 in`, -30 * in},
		{quantity.Level, `−0.4 m`, -0.4},
		{quantity.Area, `1,250 ft2`, 1250 * ft * ft},
		{quantity.Area, `300 ft²`, 300 * ft * ft},
		{quantity.Area, `300 sq ft`, 300 * ft * ft},
		{quantity.Area, `300 sq. ft.`, 300 * ft * ft},
		{quantity.Area, `0.5 acre`, 0.5 * 43560 * ft * ft},
		{quantity.Area, `28 m^2`, 28},
		{quantity.Volume, `50 gal`, 50 * gal},
		{quantity.Volume, `190 L`, 0.19},
		{quantity.Volume, `2 yd3`, 2 * 27 * ft * ft * ft},
		{quantity.Volume, `2 cubic yards`, 2 * 27 * ft * ft * ft},
		{quantity.Flow, `250 gal/d`, 250 * gal / day},
		{quantity.Flow, `250 gpd`, 250 * gal / day},
		{quantity.Flow, `250 gallons per day`, 250 * gal / day},
		{quantity.Flow, `946 L/d`, 0.946 / day},
		{quantity.Flow, `3 m3/d`, 3 / day},
		{quantity.Flow, `4.5 gal/min`, 4.5 * gal / 60},
		{quantity.Flow, `4.5 gpm`, 4.5 * gal / 60},
		{quantity.Flow, `2 cfs`, 2 * ft * ft * ft},
		{quantity.Flow, `2 ft³/s`, 2 * ft * ft * ft},
		{quantity.Velocity, `2 ft/s`, 2 * ft},
		{quantity.Velocity, `10 mph`, 10 * 5280 * ft / 3600},
		{quantity.RainRate, `1.5 in/h`, 1.5 * in / 3600},
		{quantity.RainRate, `38 mm/h`, 0.038 / 3600},
		{quantity.Loading, `0.8 gal/d/ft2`, 0.8 * gal / day / ft / ft},
		{quantity.Loading, `33 L/d/m2`, 0.033 / day},
		{quantity.Load, `6 g/m2/d`, 0.006 / day},
		{quantity.Load, `1 lb/ac/d`, 0.45359237 / (43560 * ft * ft) / day},
		{quantity.Conductivity, `900 m/d`, 900 / day},
		{quantity.Percolation, `20 min/in`, 20 * 60 / in},
		{quantity.Percolation, `8 min/cm`, 8 * 60 / 0.01},
		{quantity.Slope, `1/4 in/ft`, 1. / 48},
		{quantity.Slope, `¼″/ft`, 1. / 48},
		{quantity.Slope, `1/4 in per ft`, 1. / 48},
		{quantity.Slope, `2 %`, 0.02},
		{quantity.Slope, `20 mm/m`, 0.02},
		{quantity.Slope, `1:50`, 0.02},
		{quantity.Share, `50%`, 0.5},
		{quantity.Share, `100 percent`, 1},
		{quantity.Duration, `24 h`, day},
		{quantity.Duration, `1 wk`, 7 * day},
		{quantity.Duration, `90 d`, 90 * day},
		{quantity.Duration, `6 mo`, 365 * day / 2},
		{quantity.Duration, `10 yr`, 3650 * day},
		{quantity.Temperature, `4 °C`, 4},
		{quantity.Temperature, `39 °F`, (39. - 32) * 5 / 9},
		{quantity.Temperature, `-40 F`, -40},
		{quantity.Temperature, `4 deg C`, 4},
		{quantity.Temperature, `277.15 K`, 4},
		{quantity.DegreeDays, `900 °F·d`, 500},
		{quantity.DegreeDays, `900 °F-days`, 500},
		{quantity.DegreeDays, `500 °C·d`, 500},
		{quantity.Angle, `12 deg`, 12},
		{quantity.Angle, `-12°`, -12},
		{quantity.Mass, `40 lb`, 40 * 0.45359237},
		{quantity.Mass, `1.5 t`, 1500},
		{quantity.Density, `100 lb/ft3`, 100 * 0.45359237 / (ft * ft * ft)},
		{quantity.Density, `100 pcf`, 100 * 0.45359237 / (ft * ft * ft)},
		{quantity.Density, `2 mg/L`, 0.002},
		{quantity.Density, `2 µg/L`, 2e-6},
		{quantity.Radiation, `18 MJ/m2/d`, 18e6},
		{quantity.Radiation, `1 W/m²`, day},
		{quantity.Number, `3`, 3},
	}
	for _, tt := range tests {
		t.Run(string(tt.d)+" "+tt.text, func(t *testing.T) {
			q, err := quantity.Parse(tt.text, tt.d)
			require.NoError(t, err)
			require.InEpsilon(t, tt.want, q.Value, 1e-14)
			require.Equal(t, tt.text, q.Text)
			require.True(t, q.Given())
		})
	}
}

func TestParseRefuses(t *testing.T) {
	tests := []struct {
		d           quantity.Dimension
		text        string
		found, does string
	}{
		{quantity.Length, `24 gal`, `"24 gal" is a volume`, ``},
		{quantity.Length, `24`, `"24" has no unit`, `write the unit after the number`},
		{quantity.Length, `24 inchs`, `unknown unit "inchs" in "24 inchs"`, `did you mean "inch"?`},
		{quantity.Length, `24 IN`, `unknown unit "IN" in "24 IN"`, `did you mean "in"?`},
		{quantity.Length, `24 zzz`, `unknown unit "zzz" in "24 zzz"`, ``},
		{quantity.Length, `24 in about`, `unknown unit "about" in "24 in about"`, ``},
		{quantity.Length, `24 in 3`, `cannot read "3" at the end of "24 in 3"`, `write one number and its unit`},
		{quantity.Length, `18-30 in`, `cannot read "-30 in" in "18-30 in"`, `write one number and its unit`},
		{quantity.Length, `24 in;`, `cannot read ";" at the end of "24 in;"`, `write one number and its unit`},
		{quantity.Length, ``, `the quantity is empty`, `write a number and its unit, or leave the entry out`},
		{quantity.Length, ` `, `the quantity is empty`, `write a number and its unit, or leave the entry out`},
		{quantity.Length, `NaN ft`, `"NaN ft" has no number where one should stand`, `write the number first, then its unit`},
		{quantity.Length, `Inf ft`, `"Inf ft" has no number where one should stand`, `write the number first, then its unit`},
		{quantity.Length, `1e3 ft`, `"1e3 ft" has an exponent`, `write the number out`},
		{quantity.Length, `1/0 in`, `"1/0 in" divides by zero`, ``},
		{quantity.Length, `1,25 m`, `"1,25 m" has a comma that parts no thousands`, `write a decimal point, as in "1.5", or part the thousands, as in "1,250"`},
		{quantity.Length, `0,600 m`, `"0,600 m" has a comma that parts no thousands`, `write a decimal point, as in "1.5", or part the thousands, as in "1,250"`},
		{quantity.Length, `12,34,567 m`, `"12,34,567 m" has a comma that parts no thousands`, `write a decimal point, as in "1.5", or part the thousands, as in "1,250"`},
		{quantity.Length, `1000000000001 mm`, `"1000000000001 mm" is larger than anything on a site`, `check the number and its unit`},
		{quantity.Length, `1000000000 km`, ``, ``},
		{quantity.Length, `1000000001 km`, `"1000000001 km" is larger than anything on a site`, `check the number and its unit`},
		{quantity.Length, `-1 ft`, `"-1 ft" is negative`, `write it without the minus sign`},
		{quantity.Length, `2 ft 14 in`, `"2 ft 14 in" has 12 inches or more beside the feet`, `check the inches`},
		{quantity.Length, `2 ft 6 mm`, `"2 ft 6 mm" has feet followed by something other than inches`, `write feet and inches as "2 ft 6 in"`},
		{quantity.Length, `2'-6`, `"2'-6" ends where a unit should stand`, ``},
		{quantity.Length, "2 ft\xff", `"2 ft\xff" is not valid UTF-8`, ``},
		{quantity.Length, "2 \x00ft", `"2 \x00ft" has a character that cannot be seen`, `write it anew with plain blanks`},
		{quantity.Length, "2\nft", `"2\nft" has a character that cannot be seen`, `write it anew with plain blanks`},
		{quantity.Length, "2\u202eft", `"2\u202eft" has a character that cannot be seen`, `write it anew with plain blanks`},
		{quantity.Length, `10^3 m`, `cannot read "^3 m" in "10^3 m"`, `write one number and its unit`},
		{quantity.Length, `10² m`, `cannot read "² m" in "10² m"`, `write one number and its unit`},
		{quantity.Length, `2.5 1/2 in`, `cannot read "1/2 in" in "2.5 1/2 in"`, `write one number and its unit`},
		{quantity.Length, `1 3/2 in`, `"1 3/2 in" has a whole number and a fraction of one or more`, `check the fraction`},
		{quantity.Length, `24 ft·gal`, `the units in "24 ft·gal" multiply to nothing that a design has`, ``},
		{quantity.Number, `3 L/m3`, `the units in "3 L/m3" cancel out`, ``},
		{quantity.Number, `3 ft`, `"3 ft" is a length`, `leave the unit out`},
		{quantity.Number, `-3`, `"-3" is negative`, `write it without the minus sign`},
		{quantity.Volume, `50 oz`, `unknown unit "oz" in "50 oz"`, `an ounce may be a mass or a volume; write "lb" or "gal"`},
		{quantity.Volume, `50 imperial gal`, `unknown unit "imperial" in "50 imperial gal"`, `only the US gallon is understood; write an imperial gallon as 4.54609 L`},
		{quantity.Loading, `1 gal/d·ft2`, `"1 gal/d·ft2" leaves open what is divided`, `divide by one unit at a time, as in "gal/d/ft2"`},
		{quantity.Duration, `6 m`, `"6 m" is a length`, `"m" is metres; write "mo" for months, "min" for minutes`},
		{quantity.Percolation, `3 in/h`, `"3 in/h" is a length per time`, `write the time that the water takes to fall one inch, not how far it falls in an hour`},
		{quantity.Slope, `1/50`, `"1/50" has no unit`, `write the unit after the number`},
		{quantity.Slope, `-2 %`, `"-2 %" is negative`, `write it without the minus sign`},
		{quantity.Slope, `3:1`, `the slope "3:1" is not one in so many`, `write "1:3" for a fall of one in three, or the slope in %`},
		{quantity.Slope, `1 in 50`, `cannot read "50" at the end of "1 in 50"`, `write a fall of one in fifty as "1:50"`},
		{quantity.Share, `1/4 in/ft`, `"1/4 in/ft" is a slope`, ``},
		{quantity.Share, `101 %`, `"101 %" is more than the whole`, ``},
		{quantity.Temperature, `-460 °F`, `"-460 °F" is below absolute zero`, ``},
		{quantity.Temperature, `10 °F·d`, `"10 °F·d" is a number of degree days`, ``},
		{quantity.Angle, `361°`, `"361°" is more than a full turn`, ``},
		{quantity.Mass, `2 tons`, `unknown unit "tons" in "2 tons"`, `a ton has 2,000 lb, 2,240 lb or 1,000 kg; write "lb", "kg" or "t" (1,000 kg)`},
	}
	for _, tt := range tests {
		t.Run(string(tt.d)+" "+tt.text, func(t *testing.T) {
			q, err := quantity.Parse(tt.text, tt.d)
			if tt.found == "" {
				require.NoError(t, err)
				return
			}
			require.Equal(t, &quantity.Error{Found: tt.found, Expected: quantity.Examples(tt.d), Remedy: tt.does}, err)
			require.False(t, q.Given())
		})
	}
}

func TestParseRefusesLongText(t *testing.T) {
	long := make([]byte, quantity.MaxText+1)
	for i := range long {
		long[i] = '9'
	}
	_, err := quantity.Parse(string(long), quantity.Number)
	require.EqualError(t, err, `a quantity of 65 bytes is too long; expected a plain number such as "3"; write it in at most 64`)
	_, err = quantity.Parse(string(long[1:]), quantity.Number)
	require.ErrorContains(t, err, "larger than anything on a site")
}

func TestErrorReadsAsOneSentence(t *testing.T) {
	_, err := quantity.Parse("24 gal", quantity.Length)
	require.EqualError(t, err, `"24 gal" is a volume; expected a length such as "24 in", "2 ft 6 in" or "0.6 m"`)
}

// What shares a unit has one value, whatever it is read as.
func TestValueDoesNotDependOnDimension(t *testing.T) {
	for _, text := range []string{"2 %", "1.5 in/h", "0.8 gal/d/ft2", "2 ft 6 in", "18 MJ/m2/d", "39 °F"} {
		q, dimensions, err := quantity.ParseAny(text)
		require.NoError(t, err)
		require.NotEmpty(t, dimensions)
		for _, d := range dimensions {
			again, err := quantity.Parse(text, d)
			require.NoError(t, err)
			require.Equal(t, q, again)
		}
	}
}

// The examples that errors give are themselves right.
func TestExamplesParse(t *testing.T) {
	for _, d := range quantity.Dimensions {
		texts := quoted(quantity.Examples(d))
		require.NotEmpty(t, texts, d)
		for _, text := range texts {
			_, err := quantity.Parse(text, d)
			require.NoError(t, err)
		}
	}
}
