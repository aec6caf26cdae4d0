package greysill.construction.cave_in_test

import rego.v2

import data.greysill.construction.cave_in

limits := {"unprotected_cut": {"value": 1.5}}

good := {"subject": "good", "deepest_cut": 0.6}

test_pass_shallow if {
	items := [good]
	cave_in.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	cave_in.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "deepest_cut": 1.5, "protected": true}]
	cave_in.proved == {"limit"} with input as {"cuts": items}
		with data.limits as limits
	cave_in.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_fail_just_too_deep if {
	items := [good, {"subject": "bad", "deepest_cut": 1.5001, "protected": false}]
	cave_in.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	cave_in.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_not_shown_deepest_cut if {
	items := [good, {"subject": "unknown", "protected": true}]
	cave_in.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	cave_in.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_not_shown_protected if {
	items := [good, {"subject": "unknown", "deepest_cut": 2}]
	cave_in.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	cave_in.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_excused_as_planned if {
	items := [good, {"subject": "deep", "deepest_cut": 2, "protected": true}]
	cave_in.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	excused := cave_in.excused with input as {"cuts": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"deep"}
}
