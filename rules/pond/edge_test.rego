package greysill.pond.edge_test

import rego.v2

import data.greysill.pond.edge

limits := {
	"pond_side_slope": {"value": 0.5},
	"shelf_width": {"value": 0.3},
	"shelf_depth": {"value": 0.45},
}

good := {"subject": "good", "climb_out_by": "sides", "inside_slope": 0.4}

test_pass_good if {
	items := [good]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "climb_out_by": "sides", "inside_slope": 0.5}]
	edge.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_steep if {
	items := [good, {"subject": "other", "climb_out_by": "sides", "inside_slope": 0.5001}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_a_wall if {
	items := [good, {"subject": "other", "climb_out_by": "sides", "inside_slope": 10}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_climb_out_by if {
	items := [good, {"subject": "other", "inside_slope": 0.4}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_inside_slope if {
	items := [good, {"subject": "other", "climb_out_by": "sides"}]
	edge.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

shelved := {"subject": "shelved", "climb_out_by": "shelf", "shelf_width": 0.4, "shelf_depth": 0.2, "inside_slope": 2}

test_pass_shelf if {
	edge.proved == {"good", "shelved"} with input as {"ponds": [good, shelved]}
		with data.limits as limits
}

test_pass_shelf_exactly_at_the_limits if {
	items := [{"subject": "other", "climb_out_by": "shelf", "shelf_width": 0.3, "shelf_depth": 0.45}]
	edge.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_shelf_just_too_narrow if {
	items := [shelved, object.union(shelved, {"subject": "other", "shelf_width": 0.2999})]
	edge.proved == {"shelved"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_shelf_just_too_deep if {
	items := [shelved, object.union(shelved, {"subject": "other", "shelf_depth": 0.4501})]
	edge.proved == {"shelved"} with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_shelf_width if {
	items := [shelved, object.remove(object.union(shelved, {"subject": "other"}), ["shelf_width"])]
	edge.proved == {"shelved"} with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_shelf_depth if {
	items := [shelved, object.remove(object.union(shelved, {"subject": "other"}), ["shelf_depth"])]
	edge.proved == {"shelved"} with input as {"ponds": items}
		with data.limits as limits
}
