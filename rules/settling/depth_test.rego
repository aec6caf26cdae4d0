package greysill.settling.depth_test

import rego.v2

import data.greysill.settling.depth

limits := {
	"settling_depth": {"value": 0.5},
}

good := {"subject": "good", "kind": "settling basin", "water_depth": 1}

test_pass_good if {
	items := [good]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "settling basin", "water_depth": 0.5}]
	depth.proved == {"other"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_shallow if {
	items := [good, {"subject": "other", "kind": "settling basin", "water_depth": 0.4999}]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	depth.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_a_puddle if {
	items := [good, {"subject": "other", "kind": "settling basin", "water_depth": 0.1}]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	depth.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "water_depth": 1}]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	depth.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_water_depth if {
	items := [good, {"subject": "other", "kind": "settling basin"}]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	depth.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_surge_tank if {
	items := [good, {"subject": "other", "kind": "surge tank", "water_depth": 1}]
	depth.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a surge tank evens out the flow and is not there to settle"}}
	depth.excused == wanted with input as {"settling": items}
		with data.limits as limits
}
