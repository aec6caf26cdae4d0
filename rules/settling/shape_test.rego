package greysill.settling.shape_test

import rego.v2

import data.greysill.settling.shape

limits := {
	"settling_length_to_width": {"value": 2},
}

good := {"subject": "good", "kind": "settling basin", "length_to_width": 3}

test_pass_good if {
	items := [good]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "settling basin", "length_to_width": 2}]
	shape.proved == {"other"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_wide if {
	items := [good, {"subject": "other", "kind": "settling basin", "length_to_width": 1.999}]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	shape.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_square if {
	items := [good, {"subject": "other", "kind": "settling basin", "length_to_width": 1}]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	shape.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "length_to_width": 3}]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	shape.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_length_to_width if {
	items := [good, {"subject": "other", "kind": "settling basin"}]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	shape.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_surge_tank if {
	items := [good, {"subject": "other", "kind": "surge tank", "length_to_width": 3}]
	shape.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a surge tank evens out the flow and is not there to settle"}}
	shape.excused == wanted with input as {"settling": items}
		with data.limits as limits
}
