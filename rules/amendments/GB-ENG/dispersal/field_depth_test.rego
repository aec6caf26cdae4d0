package greysill.dispersal.field_depth_test

import rego.v2

import data.greysill.dispersal.field_depth

limits := {"england_field_depth": {"value": 0.9}}

good := {"subject": "good", "bottom_depth": 0.4}

test_pass_shallow if {
	field_depth.proved == {"good"} with input as {"soakage": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	field_depth.proved == {"limit"} with input as {"soakage": [{"subject": "limit", "bottom_depth": 0.9}]}
		with data.limits as limits
}

test_fail_just_too_deep if {
	field_depth.proved == {"good"} with input as {"soakage": [good, {"subject": "bad", "bottom_depth": 0.901}]}
		with data.limits as limits
}

test_not_shown_bottom_depth if {
	field_depth.proved == {"good"} with input as {"soakage": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
