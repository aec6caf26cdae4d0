package greysill.drains.cleanout_bends_test

import rego.v2

import data.greysill.drains.cleanout_bends

limits := {"cleanout_bends": {"value": 135}}

good := {"subject": "pipe-1", "bends_without_cleanout": 45}

test_pass_straight if {
	items := [good]
	cleanout_bends.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "bends_without_cleanout": 135}]
	cleanout_bends.proved == {"limit"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_fail_just_too_crooked if {
	items := [good, {"subject": "bad", "bends_without_cleanout": 135.1}]
	cleanout_bends.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}

test_not_shown_bends_without_cleanout if {
	items := [good, {"subject": "unknown"}]
	cleanout_bends.proved == {"pipe-1"} with input as {"cleanouts": items}
		with data.limits as limits
}
