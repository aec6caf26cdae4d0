package greysill.pond.oxygen_test

import rego.v2

import data.greysill.pond.oxygen

limits := {
	"fish_oxygen": {"value": 0.004},
}

good := {"subject": "good", "stocked": true, "oxygen_saturation": 0.009}

test_pass_good if {
	items := [good]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "stocked": true, "oxygen_saturation": 0.004}]
	oxygen.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_little if {
	items := [good, {"subject": "other", "stocked": true, "oxygen_saturation": 0.0039999}]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	oxygen.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_hardly_any if {
	items := [good, {"subject": "other", "stocked": true, "oxygen_saturation": 0.0001}]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	oxygen.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_stocked if {
	items := [good, {"subject": "other", "oxygen_saturation": 0.009}]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	oxygen.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_oxygen_saturation if {
	items := [good, {"subject": "other", "stocked": true}]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	oxygen.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_no_fish if {
	items := [good, {"subject": "other", "stocked": false, "oxygen_saturation": 0.009}]
	oxygen.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	oxygen.excused == {{"subject": "other", "reason": "no fish are drawn in it"}} with input as {"ponds": items}
		with data.limits as limits
}
