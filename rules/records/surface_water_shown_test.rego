package greysill.records.surface_water_shown_test

import rego.v2

import data.greysill.records.surface_water_shown

limits := {"surface_water_shown_within": {"value": 50}}

good := {"subject": "good", "surface_water_shown_within": 80}

test_pass_far if {
	items := [good]
	surface_water_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "surface_water_shown_within": 50}]
	surface_water_shown.proved == {"limit"} with input as {"plan": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "surface_water_shown_within": 49.99}]
	surface_water_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}

test_not_shown_surface_water_shown_within if {
	items := [good, {"subject": "unknown"}]
	surface_water_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}
