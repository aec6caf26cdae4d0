package greysill.flow.binding_rules_test

import rego.v2

import data.greysill.flow.binding_rules

limits := {"england_ground_discharge": {"value": 0.00001}}

good := {"subject": "good", "daily_flow": 0.000005}

test_pass_small_flow if {
	binding_rules.proved == {"good"} with input as {"system": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "daily_flow": 0.00001}]
	binding_rules.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_just_too_large if {
	items := [good, {"subject": "bad", "daily_flow": 0.0000101}]
	binding_rules.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_daily_flow if {
	items := [good, {"subject": "unknown"}]
	binding_rules.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
