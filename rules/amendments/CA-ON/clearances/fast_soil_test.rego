package greysill.clearances.fast_soil_test

import rego.v2

import data.greysill.clearances.fast_soil

limits := {"ontario_fast_soil": {"value": 60000}}

good := {"subject": "good", "percolation": 90000}

test_pass_slow_soil if {
	fast_soil.proved == {"good"} with input as {"soil": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	fast_soil.proved == {"limit"} with input as {"soil": [{"subject": "limit", "percolation": 60000}]}
		with data.limits as limits
}

test_fail_just_too_fast if {
	fast_soil.proved == {"good"} with input as {"soil": [good, {"subject": "bad", "percolation": 59999}]}
		with data.limits as limits
}

test_not_shown_percolation if {
	fast_soil.proved == {"good"} with input as {"soil": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
