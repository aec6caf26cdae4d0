package greysill.drains.capacity_test

import rego.v2

import data.greysill.drains.capacity

limits := {"drain_slope": {"value": 0.02}, "drain_capacity": {"value": 1}}

good := {"subject": "good", "slope": 0.03, "share_of_capacity": 0.4}

test_pass_with_room if {
	items := [good]
	capacity.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	capacity.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_both_limits if {
	items := [{"subject": "limit", "slope": 0.02, "share_of_capacity": 1}]
	capacity.proved == {"limit"} with input as {"pipe_flow": items}
		with data.limits as limits
	capacity.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "bad", "slope": 0.03, "share_of_capacity": 1.001}]
	capacity.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	capacity.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_not_shown_share_of_capacity if {
	items := [good, {"subject": "unknown", "slope": 0.03}]
	capacity.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	capacity.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_not_shown_slope if {
	items := [good, {"subject": "unknown", "share_of_capacity": 0.4}]
	capacity.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	capacity.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_excused_flat if {
	items := [good, {"subject": "flat", "slope": 0.0199, "share_of_capacity": 3}]
	capacity.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	excused := capacity.excused with input as {"pipe_flow": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"flat"}
}
