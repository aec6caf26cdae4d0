package greysill.exposure.open_water_ahead_test

import rego.v2

import data.greysill.exposure.open_water_ahead

good := {"subject": "good", "lies_open": true, "treated_first": true}

test_pass_treated_first if {
	open_water_ahead.proved == {"good"} with input as {"open_water": [good]}
}

test_pass_treated_first_whether_open_or_not if {
	open_water_ahead.proved == {"tank-1"} with input as {"open_water": [{"subject": "tank-1", "treated_first": true}]}
}

test_pass_covered if {
	waters := [{"subject": "tank-1", "lies_open": false, "treated_first": false}]
	open_water_ahead.proved == {"tank-1"} with input as {"open_water": waters}
}

test_fail_open_and_untreated if {
	waters := [good, {"subject": "pond-1", "lies_open": true, "treated_first": false}]
	open_water_ahead.proved == {"good"} with input as {"open_water": waters}
}

test_not_shown_treated_first if {
	waters := [good, {"subject": "pond-1", "lies_open": true}]
	open_water_ahead.proved == {"good"} with input as {"open_water": waters}
}

test_not_shown_lies_open if {
	waters := [good, {"subject": "tank-1", "treated_first": false}]
	open_water_ahead.proved == {"good"} with input as {"open_water": waters}
}
