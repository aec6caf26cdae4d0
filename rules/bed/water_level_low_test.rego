package greysill.bed.water_level_low_test

import rego.v2

import data.greysill.bed.water_level_low

limits := {"water_below_surface_greatest": {"value": 0.15}}

good := {"subject": "good", "water_below_surface": 0.1}

test_pass_near_the_roots if {
	water_level_low.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "water_below_surface": 0.15}]
	water_level_low.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_low if {
	items := [good, {"subject": "bad", "water_below_surface": 0.1501}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_water_below_surface if {
	items := [good, {"subject": "unknown"}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
