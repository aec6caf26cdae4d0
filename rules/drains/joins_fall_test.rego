package greysill.drains.joins_fall_test

import rego.v2

import data.greysill.drains.joins_fall

limits := {"join_drop": {"value": 0}}

good := {"subject": "pipe-1 to tank-1", "drop": 0.05}

test_pass_drop if {
	items := [good]
	joins_fall.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "drop": 0}]
	joins_fall.proved == {"limit"} with input as {"joins": items}
		with data.limits as limits
}

test_fail_just_too_high if {
	items := [good, {"subject": "bad", "drop": -0.0001}]
	joins_fall.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
		with data.limits as limits
}

test_not_shown_drop if {
	items := [good, {"subject": "unknown"}]
	joins_fall.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
		with data.limits as limits
}
