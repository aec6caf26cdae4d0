package greysill.bed.water_level_test

import rego.v2

import data.greysill.bed.water_level

limits := {"water_below_surface_least": {"value": 0.05}}

good := {"subject": "good", "water_below_surface": 0.1}

test_pass_well_below if {
	water_level.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "water_below_surface": 0.05}]
	water_level.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_high if {
	items := [good, {"subject": "bad", "water_below_surface": 0.0499}]
	water_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_at_the_surface if {
	items := [good, {"subject": "bad", "water_below_surface": 0}]
	water_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_water_standing_in_the_open if {
	items := [good, {"subject": "bad", "water_below_surface": -0.02}]
	water_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_water_below_surface if {
	items := [good, {"subject": "unknown"}]
	water_level.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
