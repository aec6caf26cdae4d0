package greysill.records.soil_tested_test

import rego.v2

import data.greysill.records.soil_tested

limits := {"soil_test_distance": {"value": 8}}

good := {"subject": "good", "soil_test_distance": 3}

test_pass_tested_beside if {
	soil_tested.proved == {"good"} with input as {"soakage": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	soil_tested.proved == {"limit"} with input as {"soakage": [{"subject": "limit", "soil_test_distance": 8}]}
		with data.limits as limits
}

test_fail_just_too_far if {
	soil_tested.proved == {"good"} with input as {"soakage": [good, {"subject": "bad", "soil_test_distance": 8.0001}]}
		with data.limits as limits
}

test_not_shown_soil_test_distance if {
	soil_tested.proved == {"good"} with input as {"soakage": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
