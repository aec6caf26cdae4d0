package greysill.flow.occupants_test

import rego.v2

import data.greysill.flow.occupants

limits := {"occupants_per_bedroom": {"value": 2}}

good := {"subject": "good", "occupants_per_bedroom": 3}

test_pass_within if {
	occupants.proved == {"good"} with input as {"system": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "occupants_per_bedroom": 2}]
	occupants.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "occupants_per_bedroom": 1.99}]
	occupants.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_occupants_per_bedroom if {
	items := [good, {"subject": "unknown"}]
	occupants.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
