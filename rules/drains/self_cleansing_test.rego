package greysill.drains.self_cleansing_test

import rego.v2

import data.greysill.drains.self_cleansing

limits := {"drain_slope": {"value": 0.02}, "self_cleansing_velocity": {"value": 0.6}}

good := {"subject": "good", "slope": 0.03, "half_full_velocity": 0.8}

test_pass_fast if {
	items := [good]
	self_cleansing.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	self_cleansing.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_both_limits if {
	items := [{"subject": "limit", "slope": 0.02, "half_full_velocity": 0.6}]
	self_cleansing.proved == {"limit"} with input as {"pipe_flow": items}
		with data.limits as limits
	self_cleansing.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_fail_just_too_slow if {
	items := [good, {"subject": "bad", "slope": 0.03, "half_full_velocity": 0.5999}]
	self_cleansing.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	self_cleansing.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_not_shown_half_full_velocity if {
	items := [good, {"subject": "unknown", "slope": 0.03}]
	self_cleansing.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	self_cleansing.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_not_shown_slope if {
	items := [good, {"subject": "unknown", "half_full_velocity": 0.8}]
	self_cleansing.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	self_cleansing.excused == set() with input as {"pipe_flow": items}
		with data.limits as limits
}

test_excused_flat if {
	items := [good, {"subject": "flat", "slope": 0.0199, "half_full_velocity": 0.1}, {"subject": "rising", "slope": -0.01}]
	self_cleansing.proved == {"good"} with input as {"pipe_flow": items}
		with data.limits as limits
	excused := self_cleansing.excused with input as {"pipe_flow": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"flat", "rising"}
}
