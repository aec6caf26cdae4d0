package greysill.flow.growing_season_test

import rego.v2

import data.greysill.flow.growing_season

good := {"subject": "good", "has_bypass_season": true, "bypass_covers_freezing_months": true}

test_pass_bypassed_in_the_cold if {
	growing_season.proved == {"good"} with input as {"cold_season": [good]}
}

test_fail_no_bypass_season if {
	items := [good, {"subject": "bad", "has_bypass_season": false, "bypass_covers_freezing_months": true}]
	growing_season.proved == {"good"} with input as {"cold_season": items}
}

test_fail_a_freezing_month_left_open if {
	items := [good, {"subject": "bad", "has_bypass_season": true, "bypass_covers_freezing_months": false}]
	growing_season.proved == {"good"} with input as {"cold_season": items}
}

test_not_shown_has_bypass_season if {
	items := [good, {"subject": "unknown", "bypass_covers_freezing_months": true}]
	growing_season.proved == {"good"} with input as {"cold_season": items}
}

test_not_shown_freezing_months if {
	items := [good, {"subject": "unknown", "has_bypass_season": true}]
	growing_season.proved == {"good"} with input as {"cold_season": items}
}
