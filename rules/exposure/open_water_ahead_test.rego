package greysill.exposure.open_water_ahead_test

import rego.v2

import data.greysill.exposure.open_water_ahead

good := {"subject": "good", "treated_first": true}

test_pass_treated_first if {
	open_water_ahead.proved == {"good"} with input as {"open_water": [good]}
}

test_fail_untreated if {
	waters := [good, {"subject": "pond-1", "treated_first": false}]
	open_water_ahead.proved == {"good"} with input as {"open_water": waters}
}

test_not_shown_treated_first if {
	waters := [good, {"subject": "pond-1"}]
	open_water_ahead.proved == {"good"} with input as {"open_water": waters}
}
