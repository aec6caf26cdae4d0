package greysill.bed.surface_level_test

import rego.v2

import data.greysill.bed.surface_level

limits := {"surface_range": {"value": 0.1}}

good := {"subject": "good", "surface_range": 0}

test_pass_level if {
	items := [good, {"subject": "other", "surface_range": 0.02}]
	surface_level.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "surface_range": 0.1}]
	surface_level.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_uneven if {
	items := [good, {"subject": "other", "surface_range": 0.1001}]
	surface_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_surface_range if {
	items := [good, {"subject": "other"}]
	surface_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
