package greysill.pond.edge_test

import rego.v2

import data.greysill.pond.edge

limits := {
	"pond_side_slope": {"value": 0.5},
}

good := {"subject": "good", "has_shelf": false, "inside_slope": 0.4}

test_pass_good if {
	items := [good]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "has_shelf": false, "inside_slope": 0.5}]
	edge.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_steep if {
	items := [good, {"subject": "other", "has_shelf": false, "inside_slope": 0.5001}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	edge.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_a_wall if {
	items := [good, {"subject": "other", "has_shelf": false, "inside_slope": 10}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	edge.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_has_shelf if {
	items := [good, {"subject": "other", "inside_slope": 0.4}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	edge.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_inside_slope if {
	items := [good, {"subject": "other", "has_shelf": false}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	edge.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_shelf if {
	items := [good, {"subject": "other", "has_shelf": true, "inside_slope": 2}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a shelf to climb out by is drawn"}}
	edge.excused == wanted with input as {"ponds": items}
		with data.limits as limits
}
