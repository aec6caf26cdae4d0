package greysill.diversion.cold_season_test

import rego.v2

import data.greysill.diversion.cold_season

frozen := {"subject": "the system", "any_month_freezes": true}

covered := {"subject": "the system", "any_month_freezes": true, "bypass_covers_freezing_months": true}

left_open := {"subject": "the system", "any_month_freezes": true, "bypass_covers_freezing_months": false}

frost_free := {"subject": "the system", "any_month_freezes": false, "bypass_covers_freezing_months": true}

climate_unknown := {"subject": "the system", "bypass_covers_freezing_months": true}

test_pass_bypass_covers_the_frost if {
	cold_season.proved == {"the system"} with input as {"system": [covered]}
	cold_season.excused == set() with input as {"system": [covered]}
}

test_fail_month_left_open if {
	cold_season.proved == set() with input as {"system": [left_open]}
	cold_season.excused == set() with input as {"system": [left_open]}
}

test_not_shown_bypass_season if {
	cold_season.proved == set() with input as {"system": [frozen]}
	cold_season.excused == set() with input as {"system": [frozen]}
}

test_not_shown_freezing_months if {
	cold_season.proved == set() with input as {"system": [climate_unknown]}
	cold_season.excused == set() with input as {"system": [climate_unknown]}
}

test_excused_no_month_freezes if {
	cold_season.proved == set() with input as {"system": [frost_free]}
	excused := cold_season.excused with input as {"system": [frost_free]}
	{e.subject | some e in excused} == {"the system"}
}
