package greysill.construction.exit_test

import rego.v2

import data.greysill.construction.exit

limits := {"cut_without_exit": {"value": 1.5}}

good := {"subject": "good", "deepest_cut": 0.6}

test_pass_shallow if {
	items := [good]
	exit.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	exit.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "deepest_cut": 1.5, "has_exit": true}]
	exit.proved == {"limit"} with input as {"cuts": items}
		with data.limits as limits
	exit.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_fail_just_too_deep if {
	items := [good, {"subject": "bad", "deepest_cut": 1.5001, "has_exit": false}]
	exit.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	exit.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_not_shown_deepest_cut if {
	items := [good, {"subject": "unknown", "has_exit": true}]
	exit.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	exit.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_not_shown_has_exit if {
	items := [good, {"subject": "unknown", "deepest_cut": 2}]
	exit.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	exit.excused == set() with input as {"cuts": items}
		with data.limits as limits
}

test_excused_as_planned if {
	items := [good, {"subject": "deep", "deepest_cut": 2, "has_exit": true}]
	exit.proved == {"good"} with input as {"cuts": items}
		with data.limits as limits
	excused := exit.excused with input as {"cuts": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"deep"}
}
