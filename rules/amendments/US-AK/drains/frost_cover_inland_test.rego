package greysill.drains.frost_cover_inland_test

import rego.v2

import data.greysill.drains.frost_cover_inland

limits := {"frost_cover_inland": {"value": 1}}

good := {"subject": "good", "insulated_cover": 2}

test_pass_within if {
	frost_cover_inland.proved == {"good"} with input as {"pipe_winter": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "insulated_cover": 1}]
	frost_cover_inland.proved == {"limit"} with input as {"pipe_winter": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "insulated_cover": 0.99}]
	frost_cover_inland.proved == {"good"} with input as {"pipe_winter": items}
		with data.limits as limits
}

test_not_shown_insulated_cover if {
	items := [good, {"subject": "unknown"}]
	frost_cover_inland.proved == {"good"} with input as {"pipe_winter": items}
		with data.limits as limits
}
