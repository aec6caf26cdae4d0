package greysill.flow.greatest_flow_test

import rego.v2

import data.greysill.flow.greatest_flow

limits := {"greatest_flow": {"value": 0.0001}, "greatest_flow_on_septic": {"value": 0.00001}}

good := {"subject": "good", "sewage": "sewer", "daily_flow": 0.00005}

test_pass_on_the_sewer_at_the_limit if {
	items := [{"subject": "limit", "sewage": "sewer", "daily_flow": 0.0001}]
	greatest_flow.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_pass_on_a_septic_tank_at_the_limit if {
	items := [{"subject": "limit", "sewage": "septic tank", "daily_flow": 0.00001}]
	greatest_flow.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_on_the_sewer if {
	items := [good, {"subject": "bad", "sewage": "sewer", "daily_flow": 0.000101}]
	greatest_flow.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_fail_on_a_septic_tank if {
	items := [good, {"subject": "bad", "sewage": "septic tank", "daily_flow": 0.0000101}]
	greatest_flow.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_sewage if {
	items := [good, {"subject": "unknown", "daily_flow": 0.000001}]
	greatest_flow.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_daily_flow if {
	items := [good, {"subject": "unknown 1", "sewage": "sewer"}, {"subject": "unknown 2", "sewage": "septic tank"}]
	greatest_flow.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
