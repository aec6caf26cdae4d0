package greysill.dispersal.slow_soil_test

import rego.v2

import data.greysill.dispersal.slow_soil

limits := {"nevada_percolation_slowest": {"value": 280000}}

good := {"subject": "good", "percolation": 100000}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "percolation": 280000}]
	slow_soil.proved == {"limit"} with input as {"soil": items}
		with data.limits as limits
}

test_fail_just_too_slow if {
	items := [good, {"subject": "bad", "percolation": 280001}]
	slow_soil.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}

test_not_shown_percolation if {
	slow_soil.proved == {"good"} with input as {"soil": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
