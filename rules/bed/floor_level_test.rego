package greysill.bed.floor_level_test

import rego.v2

import data.greysill.bed.floor_level

limits := {"floor_range": {"value": 0.02}}

good := {"subject": "good", "floor_range": 0}

test_pass_level_floor if {
	floor_level.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "floor_range": 0.02}]
	floor_level.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_uneven if {
	items := [good, {"subject": "bad", "floor_range": 0.0201}]
	floor_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_floor_range if {
	items := [good, {"subject": "unknown"}]
	floor_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
