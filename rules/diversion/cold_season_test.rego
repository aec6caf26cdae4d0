package greysill.diversion.cold_season_test

import rego.v2

import data.greysill.diversion.cold_season

frozen := {"subject": "the cold season", "any_month_freezes": true}

covered := {"subject": "the cold season", "any_month_freezes": true, "bypass_covers_freezing_months": true}

left_open := {"subject": "the cold season", "any_month_freezes": true, "bypass_covers_freezing_months": false}

frost_free := {"subject": "the cold season", "any_month_freezes": false, "bypass_covers_freezing_months": true}

climate_unknown := {"subject": "the cold season", "bypass_covers_freezing_months": true}

test_pass_bypass_covers_the_frost if {
	cold_season.proved == {"the cold season"} with input as {"cold_season": [covered]}
	cold_season.excused == set() with input as {"cold_season": [covered]}
}

test_fail_month_left_open if {
	cold_season.proved == set() with input as {"cold_season": [left_open]}
	cold_season.excused == set() with input as {"cold_season": [left_open]}
}

test_not_shown_bypass_season if {
	cold_season.proved == set() with input as {"cold_season": [frozen]}
	cold_season.excused == set() with input as {"cold_season": [frozen]}
}

test_not_shown_freezing_months if {
	cold_season.proved == set() with input as {"cold_season": [climate_unknown]}
	cold_season.excused == set() with input as {"cold_season": [climate_unknown]}
}

test_excused_no_month_freezes if {
	cold_season.proved == set() with input as {"cold_season": [frost_free]}
	excused := cold_season.excused with input as {"cold_season": [frost_free]}
	{e.subject | some e in excused} == {"the cold season"}
}
