package greysill.flow.stated_flow_test

import rego.v2

import data.greysill.flow.stated_flow

limits := {"stated_flow": {"value": 1}}

good := {"subject": "good", "states_flow": true, "stated_share": 1.2}

test_pass_more if {
	items := [good]
	stated_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
	stated_flow.excused == set() with input as {"demand": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "states_flow": true, "stated_share": 1}]
	stated_flow.proved == {"limit"} with input as {"demand": items}
		with data.limits as limits
	stated_flow.excused == set() with input as {"demand": items}
		with data.limits as limits
}

test_fail_just_less if {
	items := [good, {"subject": "bad", "states_flow": true, "stated_share": 0.999}]
	stated_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
	stated_flow.excused == set() with input as {"demand": items}
		with data.limits as limits
}

test_not_shown_stated_share if {
	items := [good, {"subject": "unknown", "states_flow": true}]
	stated_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
	stated_flow.excused == set() with input as {"demand": items}
		with data.limits as limits
}

test_not_shown_states_flow if {
	items := [good, {"subject": "unknown", "stated_share": 1.2}]
	stated_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
	stated_flow.excused == set() with input as {"demand": items}
		with data.limits as limits
}

test_excused_not_stated if {
	items := [good, {"subject": "none", "states_flow": false}]
	stated_flow.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
	excused := stated_flow.excused with input as {"demand": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"none"}
}
