package greysill.drains.slope_test

import rego.v2

import data.greysill.drains.slope

limits := {"drain_slope": {"value": 0.02}}

good := {"subject": "good", "slope": 0.04}

test_pass_steep if {
	slope.proved == {"good"} with input as {"reaches": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "slope": 0.02}]
	slope.proved == {"limit"} with input as {"reaches": items}
		with data.limits as limits
}

test_fail_just_too_flat if {
	items := [good, {"subject": "bad", "slope": 0.0199}]
	slope.proved == {"good"} with input as {"reaches": items}
		with data.limits as limits
}

test_fail_level if {
	items := [good, {"subject": "bad", "slope": 0}]
	slope.proved == {"good"} with input as {"reaches": items}
		with data.limits as limits
}

test_fail_uphill if {
	items := [good, {"subject": "bad", "slope": -0.02}]
	slope.proved == {"good"} with input as {"reaches": items}
		with data.limits as limits
}

test_not_shown_slope if {
	items := [good, {"subject": "unknown"}]
	slope.proved == {"good"} with input as {"reaches": items}
		with data.limits as limits
}
