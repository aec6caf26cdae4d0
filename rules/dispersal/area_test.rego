package greysill.dispersal.area_test

import rego.v2

import data.greysill.dispersal.area

limits := {
	"soil_area": {"value": 1.2},
}

good := {"subject": "good", "flow": 0.001, "utah_area_share": 2}

test_pass_good if {
	items := [good]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "flow": 0.001, "utah_area_share": 1.2}]
	area.proved == {"other"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "other", "flow": 0.001, "utah_area_share": 1.1999}]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	area.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_fail_far_too_small if {
	items := [good, {"subject": "other", "flow": 0.001, "utah_area_share": 0.1}]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	area.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_flow if {
	items := [good, {"subject": "other", "utah_area_share": 2}]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	area.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_utah_area_share if {
	items := [good, {"subject": "other", "flow": 0.001}]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	area.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_excused_overflow_only if {
	items := [good, {"subject": "other", "flow": 0, "utah_area_share": 2}]
	area.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "no greywater comes to it but by an overflow"}}
	area.excused == wanted with input as {"soakage": items}
		with data.limits as limits
}
