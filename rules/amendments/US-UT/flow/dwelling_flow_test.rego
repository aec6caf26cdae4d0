package greysill.flow.dwelling_flow_test

import rego.v2

import data.greysill.flow.dwelling_flow

limits := {"utah_dwelling_flow": {"value": 1}}

good := {"subject": "good", "utah_flow_share": 1.2}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "utah_flow_share": 1}]
	dwelling_flow.proved == {"limit"} with input as {"demand": items}
		with data.limits as limits
}

test_fail_just_less if {
	items := [good, {"subject": "bad", "utah_flow_share": 0.999}]
	dwelling_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
}

test_not_shown_utah_flow_share if {
	dwelling_flow.proved == {"good"} with input as {"demand": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
