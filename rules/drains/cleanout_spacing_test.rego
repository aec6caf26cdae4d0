package greysill.drains.cleanout_spacing_test

import rego.v2

import data.greysill.drains.cleanout_spacing

limits := {"cleanout_spacing": {"value": 30}}

good := {"subject": "pipe-1", "longest_run": 10}

test_pass_short if {
	items := [good]
	cleanout_spacing.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "longest_run": 30}]
	cleanout_spacing.proved == {"limit"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_fail_just_too_long if {
	items := [good, {"subject": "bad", "longest_run": 30.001}]
	cleanout_spacing.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_not_shown_longest_run if {
	items := [good, {"subject": "unknown"}]
	cleanout_spacing.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}
