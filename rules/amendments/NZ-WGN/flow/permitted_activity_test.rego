package greysill.flow.permitted_activity_test

import rego.v2

import data.greysill.flow.permitted_activity

limits := {"wellington_greywater": {"value": 0.00001}}

good := {"subject": "good", "daily_flow": 0.000005}

test_pass_small_flow if {
	permitted_activity.proved == {"good"} with input as {"system": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "daily_flow": 0.00001}]
	permitted_activity.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_just_too_large if {
	items := [good, {"subject": "bad", "daily_flow": 0.0000101}]
	permitted_activity.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_daily_flow if {
	items := [good, {"subject": "unknown"}]
	permitted_activity.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
