package greysill.dispersal.basin_depth_test

import rego.v2

import data.greysill.dispersal.basin_depth

limits := {
	"mulch_basin_depth": {"value": 0.2},
}

good := {"subject": "good", "kind": "mulch basin", "depth": 0.5}

test_pass_good if {
	items := [good]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "mulch basin", "depth": 0.2}]
	basin_depth.proved == {"other"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_just_too_shallow if {
	items := [good, {"subject": "other", "kind": "mulch basin", "depth": 0.1999}]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	basin_depth.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_fail_a_dish if {
	items := [good, {"subject": "other", "kind": "mulch basin", "depth": 0.02}]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	basin_depth.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "depth": 0.5}]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	basin_depth.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_depth if {
	items := [good, {"subject": "other", "kind": "mulch basin"}]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	basin_depth.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_excused_trench if {
	items := [good, {"subject": "other", "kind": "infiltration trench", "depth": 0.5}]
	basin_depth.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "the depth of a trench is that of its pipe and gravel"}}
	basin_depth.excused == wanted with input as {"soakage": items}
		with data.limits as limits
}
