package greysill.dispersal.ground_slope_test

import rego.v2

import data.greysill.dispersal.ground_slope

limits := {
	"ground_slope": {"value": 0.15},
}

good := {"subject": "good", "ground_slope": 0.1}

test_pass_good if {
	items := [good]
	ground_slope.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "ground_slope": 0.15}]
	ground_slope.proved == {"other"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_just_too_steep if {
	items := [good, {"subject": "other", "ground_slope": 0.1501}]
	ground_slope.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_a_cliff if {
	items := [good, {"subject": "other", "ground_slope": 2}]
	ground_slope.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_ground_slope if {
	items := [good, {"subject": "other"}]
	ground_slope.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}
