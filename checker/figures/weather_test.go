package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWhatWeatherLacks: a year without rain is one lack, whatever the month; months in a
// row are named by the first and the last.
func TestWhatWeatherLacks(t *testing.T) {
	for drawn, want := range map[string]string{
		``:                                 "rain of every month in the site's climate",
		`{"month": "feb", "rain": "1 in"}`: "rain of January, March to December in the site's climate",
		`{"month": "jan"}, {"month": "jun", "rain": "1 in"}, {"month": "aug", "rain": "0 in"}, {"month": "nov", "rain": "1 in"}`: "rain of January to May, July, September, October, December in the site's climate",
	} {
		e := pool(`"rain": "50 mm"`, ``)
		e["site"] = siteWith(`"climate": {"months": [` + drawn + `]}`)
		f := compute(t, e)
		for _, month := range []string{"January", "December"} {
			require.Equal(t, want, value(t, f, "months", "pond-1 in "+month, "rain").Lacks[0].Entry)
		}
		require.Len(t, value(t, f, "months", "pond-1 in July", "least_outflow").Lacks, 2, "rain and evapotranspiration")
	}
}

// TestPenmanMonteithBySunshine: 22.65 MJ/m² a day (FAO 56, Example 17) are the radiation
// of so much sunshine by equation 35, 0.25 + 0.50 × n ÷ N of the 38.06 above the air, with
// a day of 12.31 h (equation 34 for 13°44′ N in the middle of April, worked by hand).
func TestPenmanMonteithBySunshine(t *testing.T) {
	const full = "64.45"
	f := compute(t, bangkok(t, `, "humidity": "`+full+` %", "wind": "2 m/s", "sunshine": "8.49 h"`))
	require.Equal(t, "Penman–Monteith", known(t, f, "months", "pond-1 in April", "reference_et_by"))
	require.InDelta(t, (22.65/38.06-0.25)/0.50*12.31, 8.49, 0.01)
	require.InDelta(t, 30*5.72e-3, known(t, f, "months", "pond-1 in April", "reference_et"), 30*0.03e-3)
}

// TestWeatherThatIsDrawnGoesFirst, before what can be worked out.
func TestWeatherThatIsDrawnGoesFirst(t *testing.T) {
	f := compute(t, bangkok(t, `, "reference_et": "100 mm", "humidity": "64.45 %", "wind": "2 m/s", "radiation": "22.65 MJ/m2/d"`))
	requireKnown(t, f, "months", "pond-1 in April", map[string]any{"reference_et": 0.1, "reference_et_by": "drawn"})
}

// TestWeatherThatIsNotFull goes by Hargreaves for want of one month's wind, and by nothing
// without a latitude.
func TestWeatherThatIsNotFull(t *testing.T) {
	e := bangkok(t, `, "humidity": "64.45 %", "wind": "2 m/s", "radiation": "22.65 MJ/m2/d"`)
	e["site"] = strings.Replace(e["site"], `, "wind": "2 m/s"`, ``, 1)
	f := compute(t, e)
	require.Equal(t, "Hargreaves", known(t, f, "months", "pond-1 in April", "reference_et_by"))
	e["location"] = `{"region": "TH-10"}`
	f = compute(t, e)
	requireLacks(t, f, "months", "pond-1 in April", "reference_et", "/site/climate/months")
	require.Equal(t, "reference_et of every month in the site's climate", value(t, f, "months", "pond-1 in April", "reference_et").Lacks[0].Entry)
}

// TestWeatherOutOfRange: nights that are warmer than days, and more sun than the day is
// long.
func TestWeatherOutOfRange(t *testing.T) {
	e := bangkok(t, ``)
	e["site"] = strings.ReplaceAll(e["site"], `"minimum_temperature": "25.6 °C"`, `"minimum_temperature": "40 °C"`)
	f := compute(t, e)
	requireLacks(t, f, "months", "pond-1 in April", "reference_et", "/site/climate/months")
	require.Contains(t, value(t, f, "months", "pond-1 in April", "reference_et").Lacks[0].Entry,
		"temperatures of April and the latitude within the range of the formula: the minimum temperature, 40 °C, is above the maximum, 34.8 °C")

	f = compute(t, bangkok(t, `, "humidity": "64.45 %", "wind": "2 m/s", "sunshine": "20 h"`))
	requireLacks(t, f, "months", "pond-1 in April", "reference_et", "/site/climate/months")
	require.Contains(t, value(t, f, "months", "pond-1 in April", "reference_et").Lacks[0].Entry, "the sunshine is 72000 s")
}
