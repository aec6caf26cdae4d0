package greysill.flow.permit_free_test

import rego.v2

import data.greysill.flow.permit_free

limits := {"new_mexico_permit_free_flow": {"value": 0.00001}}

good := {"subject": "good", "daily_flow": 0.000005}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "daily_flow": 0.00001}]
	permit_free.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_just_too_large if {
	items := [good, {"subject": "bad", "daily_flow": 0.0000101}]
	permit_free.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_daily_flow if {
	permit_free.proved == {"good"} with input as {"system": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
