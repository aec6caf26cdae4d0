package greysill.overflow.spillway_velocity_test

import rego.v2

import data.greysill.overflow.spillway_velocity

limits := {
	"turf_velocity": {"value": 0.8},
	"turf_slope": {"value": 0.1},
}

good := {"subject": "good", "crest_velocity": 0.3, "channel_velocity": 0.5, "channel_slope": 0.1}

test_pass_good if {
	items := [good]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "crest_velocity": 0.8, "channel_velocity": 0.8, "channel_slope": 0.1}]
	spillway_velocity.proved == {"other"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_pass_dry if {
	items := [{"subject": "other", "crest_velocity": 0, "channel_velocity": 0, "channel_slope": 0.1}]
	spillway_velocity.proved == {"other"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_fail_crest_just_too_fast if {
	items := [good, {"subject": "other", "crest_velocity": 0.8001, "channel_velocity": 0.5, "channel_slope": 0.1}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_fail_channel_just_too_fast if {
	items := [good, {"subject": "other", "crest_velocity": 0.3, "channel_velocity": 0.8001, "channel_slope": 0.1}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_fail_a_chute if {
	items := [good, {"subject": "other", "crest_velocity": 2, "channel_velocity": 4, "channel_slope": 0.1}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_not_shown_crest_velocity if {
	items := [good, {"subject": "other", "channel_velocity": 0.5, "channel_slope": 0.1}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_not_shown_channel_velocity if {
	items := [good, {"subject": "other", "crest_velocity": 0.3, "channel_slope": 0.1}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_fail_just_too_steep if {
	items := [good, {"subject": "other", "crest_velocity": 0.3, "channel_velocity": 0.5, "channel_slope": 0.1001}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}

test_not_shown_channel_slope if {
	items := [good, {"subject": "other", "crest_velocity": 0.3, "channel_velocity": 0.5}]
	spillway_velocity.proved == {"good"} with input as {"spillway_channels": items}
		with data.limits as limits
}
