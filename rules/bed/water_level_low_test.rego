package greysill.bed.water_level_low_test

import rego.v2

import data.greysill.bed.water_level_low

limits := {"water_below_surface_greatest": {"value": 0.15}, "surface_range": {"value": 0.1}}

good := {"subject": "good", "surface_range": 0.01, "water_below_highest": 0.1}

test_pass_within_reach if {
	water_level_low.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
	water_level_low.excused == set() with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limits if {
	items := [{"subject": "limit", "surface_range": 0.1, "water_below_highest": 0.15}]
	water_level_low.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
	water_level_low.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_low if {
	items := [good, {"subject": "bad", "surface_range": 0.01, "water_below_highest": 0.1501}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	water_level_low.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_water_below_highest if {
	items := [good, {"subject": "unknown", "surface_range": 0.01}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	water_level_low.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_surface_range if {
	items := [good, {"subject": "unknown", "water_below_highest": 0.1}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	water_level_low.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_excused_surface_not_level if {
	items := [good, {"subject": "sloping", "surface_range": 0.1001, "water_below_highest": 0.1}]
	water_level_low.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	excused := water_level_low.excused with input as {"beds": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"sloping"}
}
