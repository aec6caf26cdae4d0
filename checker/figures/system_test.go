package figures_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

// TestPublishedOccupantFlows has the flows that follow from the California
// Plumbing Code, section 1503.8.1: 2 occupants for the first bedroom and 1 for
// each further one, 25 gal/d for bathing and 15 gal/d for laundry each.
func TestPublishedOccupantFlows(t *testing.T) {
	const gallonADay = 3.785411784e-3 / 86400
	tests := []struct {
		bedrooms, occupants    int
		both, bathing, laundry float64 // gal/d
	}{
		{1, 2, 80, 50, 30}, {2, 3, 120, 75, 45}, {3, 4, 160, 100, 60}, {4, 5, 200, 125, 75}, {5, 6, 240, 150, 90},
	}
	for _, tt := range tests {
		t.Run(fmt.Sprint(tt.bedrooms), func(t *testing.T) {
			require.Equal(t, tt.occupants, figures.OccupantsByBedrooms(tt.bedrooms))
			require.InDelta(t, tt.both*gallonADay, figures.DailyFlow(tt.occupants, true, true), 1e-15)
			require.InDelta(t, tt.bathing*gallonADay, figures.DailyFlow(tt.occupants, true, false), 1e-15)
			require.InDelta(t, tt.laundry*gallonADay, figures.DailyFlow(tt.occupants, false, true), 1e-15)
		})
	}
	require.Zero(t, figures.DailyFlow(4, false, false))
	require.Equal(t, 2, figures.OccupantsByBedrooms(0), "a dwelling without a bedroom counts as having one")
}

func TestOccupantsAndDailyFlow(t *testing.T) {
	tests := map[string]struct {
		dwelling  string
		occupants float64
		flow      string
	}{
		"by bedrooms":      {`{"bedrooms": 3, "sewage": "sewer"}`, 4, "160 gal/d"},
		"more stated":      {`{"bedrooms": 3, "occupants": 6, "sewage": "sewer"}`, 6, "240 gal/d"},
		"fewer stated":     {`{"bedrooms": 3, "occupants": 1, "sewage": "sewer"}`, 4, "160 gal/d"},
		"a single bedroom": {`{"bedrooms": 1, "sewage": "septic tank"}`, 2, "80 gal/d"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, train.with(entries{"dwelling": tt.dwelling}))
			requireKnown(t, f, "system", "the system", map[string]any{
				"occupants": tt.occupants, "daily_flow": si(t, tt.flow),
			})
		})
	}
}

func TestOccupantsPerBedroom(t *testing.T) {
	tests := map[string]struct {
		dwelling string
		each     float64
	}{
		"by bedrooms":      {`{"bedrooms": 3, "sewage": "sewer"}`, 4.0 / 3},
		"more stated":      {`{"bedrooms": 3, "occupants": 6, "sewage": "sewer"}`, 2},
		"a single bedroom": {`{"bedrooms": 1, "sewage": "sewer"}`, 2},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, train.with(entries{"dwelling": tt.dwelling}))
			require.InDelta(t, tt.each, known(t, f, "system", "the system", "occupants_per_bedroom"), 1e-12)
		})
	}
}

func TestBasement(t *testing.T) {
	for stated, want := range map[string]bool{"true": true, "false": false} {
		f := compute(t, train.with(entries{"dwelling": `{"bedrooms": 3, "sewage": "sewer", "basement": ` + stated + `}`}))
		requireKnown(t, f, "system", "the system", map[string]any{"basement": want})
	}
	requireLacks(t, compute(t, train), "system", "the system", "basement", "/dwelling/basement")
}

func TestDailyFlowCountsWhatIsOnTheSystem(t *testing.T) {
	tests := map[string]struct {
		sources string
		flow    string
	}{
		"bathing alone":          {`[{"id": "s", "kind": "bathtub", "to": "tank-1"}]`, "100 gal/d"},
		"laundry alone":          {`[{"id": "s", "kind": "laundry tub", "to": "tank-1"}]`, "60 gal/d"},
		"two of a kind":          {`[{"id": "s", "kind": "shower", "to": "tank-1"}, {"id": "u", "kind": "washbasin", "to": "bed-1"}]`, "100 gal/d"},
		"a shower on the sewer":  {`[{"id": "s", "kind": "shower", "to": "sewer-1"}]`, "0 gal/d"},
		"no greywater":           {`[{"id": "s", "kind": "roof drain", "to": "bed-1"}]`, "0 gal/d"},
		"one on, one off":        {`[{"id": "s", "kind": "shower", "to": "sewer-1"}, {"id": "u", "kind": "clothes washer", "to": "bed-1"}]`, "60 gal/d"},
		"by the warm route only": {`[{"id": "s", "kind": "shower", "to": "diverter-1"}]`, "100 gal/d"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, train.with(entries{"sources": tt.sources}))
			require.InDelta(t, si(t, tt.flow), known(t, f, "system", "the system", "daily_flow"), 1e-15)
		})
	}
}

func TestSystemLacks(t *testing.T) {
	f := compute(t, train.with(entries{
		"dwelling": `{"bedrooms": 2}`,
		"sources":  `[{"id": "s", "kind": "shower"}, {"id": "u", "kind": "toilet"}]`,
	}))
	requireLacks(t, f, "system", "the system", "sewage", "/dwelling/sewage")
	requireLacks(t, f, "system", "the system", "daily_flow", "/sources/0/to")
	for _, field := range []string{"freezing_months", "any_month_freezes", "bypass_covers_freezing_months", "months_left_open"} {
		requireLacks(t, f, "cold_season", "the cold season", field, "/site/climate/freezing_months")
	}
	requireKnown(t, f, "cold_season", "the cold season", map[string]any{"bypass_season": "none", "has_bypass_season": false})
	requireKnown(t, f, "system", "the system", map[string]any{"region": "US-CO", "bedrooms": 2.0})
}

func TestBypassSeason(t *testing.T) {
	tests := map[string]struct {
		freezing, operation string
		covers              bool
		open, season        string
	}{
		"over the new year":        {`["dec", "jan", "feb"]`, `{"bypass_season": {"from": "11-15", "to": "03-15"}}`, true, "", "15 November to 15 March"},
		"from the first day":       {`["dec", "jan", "feb"]`, `{"bypass_season": {"from": "12-01", "to": "02-28"}}`, true, "", "1 December to 28 February"},
		"to the leap day":          {`["dec", "jan", "feb"]`, `{"bypass_season": {"from": "12-01", "to": "02-29"}}`, true, "", "1 December to 29 February"},
		"a day late":               {`["dec", "jan"]`, `{"bypass_season": {"from": "12-02", "to": "03-01"}}`, false, "December", "2 December to 1 March"},
		"a day early":              {`["jan", "feb"]`, `{"bypass_season": {"from": "12-01", "to": "02-27"}}`, false, "February", "1 December to 27 February"},
		"within the year":          {`["jun", "jul"]`, `{"bypass_season": {"from": "05-31", "to": "08-01"}}`, true, "", "31 May to 1 August"},
		"the wrong half":           {`["jun", "jul"]`, `{"bypass_season": {"from": "08-01", "to": "05-31"}}`, false, "June, July", "1 August to 31 May"},
		"a single day":             {`["jan"]`, `{"bypass_season": {"from": "01-15", "to": "01-15"}}`, false, "January", "15 January to 15 January"},
		"a gap inside a month":     {`["nov"]`, `{"bypass_season": {"from": "11-20", "to": "11-10"}}`, false, "November", "20 November to 10 November"},
		"the whole year":           {`["jan", "dec"]`, `{"bypass_season": {"from": "01-01", "to": "12-31"}}`, true, "", "1 January to 31 December"},
		"the year from mid June":   {`["jun", "dec"]`, `{"bypass_season": {"from": "06-15", "to": "06-14"}}`, true, "", "15 June to 14 June"},
		"nothing freezes":          {`[]`, `{}`, true, "", "none"},
		"no season":                {`["jan", "feb"]`, `{}`, false, "January, February", "none"},
		"given out of order":       {`["dec", "jan"]`, `{}`, false, "January, December", "none"},
		"begins with the leap day": {`["mar"]`, `{"bypass_season": {"from": "02-29", "to": "03-31"}}`, true, "", "29 February to 31 March"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, entries{
				"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40]], "climate": {"freezing_months": ` + tt.freezing + `}}`, "operation": tt.operation,
			})
			requireKnown(t, f, "cold_season", "the cold season", map[string]any{
				"bypass_covers_freezing_months": tt.covers, "months_left_open": tt.open, "bypass_season": tt.season,
				"has_bypass_season": tt.season != "none", "any_month_freezes": tt.freezing != `[]`,
			})
		})
	}
}

func TestFreezingMonthsStandInTheOrderOfTheYear(t *testing.T) {
	f := compute(t, entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40]], "climate": {"freezing_months": ["dec", "feb", "jan"]}}`})
	require.Equal(t, "January, February, December", known(t, f, "cold_season", "the cold season", "freezing_months"))
}

func TestMonthsAsColdAsIceFreeze(t *testing.T) {
	tests := map[string]struct {
		climate string
		months  string
		covers  bool
	}{
		"named none":              {`"freezing_months": [], "months": [{"month": "jan", "mean_temperature": "-20 °F"}]`, "January", false},
		"named others":            {`"freezing_months": ["dec"], "months": [{"month": "feb", "mean_temperature": "0 °C"}, {"month": "jan", "mean_temperature": "32 °F"}]`, "January, February, December", false},
		"named the same":          {`"freezing_months": ["jan"], "months": [{"month": "jan", "mean_temperature": "-1 °C"}]`, "January", false},
		"a little above":          {`"freezing_months": [], "months": [{"month": "jan", "mean_temperature": "0.1 °C"}, {"month": "feb", "rain": "1 in"}]`, "", true},
		"and frost in the ground": {`"freezing_months": [], "frost_depth": "5 ft", "months": [{"month": "jul", "mean_temperature": "-2 °C"}]`, "July", false},
		"no frost in the ground":  {`"freezing_months": [], "frost_depth": "0 mm"`, "", true},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			requireKnown(t, compute(t, inClimate(tt.climate)), "cold_season", "the cold season", map[string]any{
				"freezing_months": tt.months, "any_month_freezes": tt.months != "", "bypass_covers_freezing_months": tt.covers, "months_left_open": tt.months,
			})
		})
	}
	inputs := value(t, compute(t, inClimate(`"freezing_months": ["dec"], "months": [{"month": "may"}, {"month": "jan", "mean_temperature": "-1 °C"}]`)), "cold_season", "the cold season", "freezing_months").Inputs
	require.Equal(t, []figures.Input{
		{Name: "freezing months", Pointer: "/site/climate/freezing_months"},
		{Name: "mean temperature of January", Pointer: "/site/climate/months/1/mean_temperature"},
	}, inputs)
}

func inClimate(climate string) entries {
	return entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40]], "climate": {` + climate + `}}`}
}

// TestFrostInNoMonth: ground that freezes, but in no month, contradicts itself.
func TestFrostInNoMonth(t *testing.T) {
	f := compute(t, inClimate(`"freezing_months": [], "frost_depth": "60 in"`))
	for _, field := range []string{"freezing_months", "any_month_freezes", "bypass_covers_freezing_months", "months_left_open"} {
		requireLacks(t, f, "cold_season", "the cold season", field, "/site/climate/freezing_months")
		require.Equal(t, "freezing_months that agree with the frost depth of 60 in", value(t, f, "cold_season", "the cold season", field).Lacks[0].Entry)
	}
}

// TestAColdMonthTellsThatSomeFreeze, but not which others do.
func TestAColdMonthTellsThatSomeFreeze(t *testing.T) {
	f := compute(t, inClimate(`"months": [{"month": "jan", "mean_temperature": "-5 °C"}]`))
	requireKnown(t, f, "cold_season", "the cold season", map[string]any{"any_month_freezes": true})
	requireLacks(t, f, "cold_season", "the cold season", "bypass_covers_freezing_months", "/site/climate/freezing_months")
}

// A flow that is stated counts where it is more than the code's 160 gal/d, and comes
// from the fixtures in the same shares; one that is less does not.
func TestTheGreaterFlowCounts(t *testing.T) {
	for stated, want := range map[string]string{"100 gal/d": "160 gal/d", "160 gal/d": "160 gal/d", "400 gal/d": "400 gal/d"} {
		f := compute(t, train.with(entries{"dwelling": `{"bedrooms": 3, "sewage": "sewer", "stated_flow": "` + stated + `"}`}))
		requireKnown(t, f, "system", "the system", map[string]any{"daily_flow": si(t, want)})
		requireKnown(t, f, "demand", "the system", map[string]any{"daily_flow_by_occupants": si(t, "160 gal/d")})
		requireKnown(t, f, "flows", "bed-1", map[string]any{"warm_season_flow": si(t, want)})
		requireKnown(t, f, "fixtures", "shower-1", map[string]any{"flow_by_occupants": si(t, "100 gal/d")})
	}
}
