package greysill.dispersal.outlets_test

import rego.v2

import data.greysill.dispersal.outlets

limits := {
	"mulch_outlets": {"value": 1.5},
}

good := {"subject": "good", "kind": "mulch basin", "flow": 0.001, "utah_outlets_share": 2}

test_pass_good if {
	items := [good]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "mulch basin", "flow": 0.001, "utah_outlets_share": 1.5}]
	outlets.proved == {"other"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_just_too_few if {
	items := [good, {"subject": "other", "kind": "mulch basin", "flow": 0.001, "utah_outlets_share": 1.4999}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	outlets.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_fail_one_of_many if {
	items := [good, {"subject": "other", "kind": "mulch basin", "flow": 0.001, "utah_outlets_share": 0.1}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	outlets.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "flow": 0.001, "utah_outlets_share": 2}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	outlets.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_flow if {
	items := [good, {"subject": "other", "kind": "mulch basin", "utah_outlets_share": 2}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	outlets.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_utah_outlets_share if {
	items := [good, {"subject": "other", "kind": "mulch basin", "flow": 0.001}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	outlets.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_excused_trench if {
	items := [good, {"subject": "other", "kind": "infiltration trench", "flow": 0.001, "utah_outlets_share": 2}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a trench spreads its water by its pipe"}}
	outlets.excused == wanted with input as {"soakage": items}
		with data.limits as limits
}

test_excused_overflow_only if {
	items := [good, {"subject": "other", "kind": "mulch basin", "flow": 0, "utah_outlets_share": 2}]
	outlets.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "no greywater comes to it but by an overflow"}}
	outlets.excused == wanted with input as {"soakage": items}
		with data.limits as limits
}
