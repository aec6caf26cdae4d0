package greysill.dispersal.mulch_holds_surge_test

import rego.v2

import data.greysill.dispersal.mulch_holds_surge

limits := {
	"mulch_surge": {"value": 0.6},
}

good := {"subject": "good", "kind": "mulch basin", "porosity_wanted": 0.1}

test_pass_good if {
	items := [good]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "mulch basin", "porosity_wanted": 0.6}]
	mulch_holds_surge.proved == {"other"} with input as {"soakage": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "other", "kind": "mulch basin", "porosity_wanted": 0.6001}]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	mulch_holds_surge.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_fail_far_too_much if {
	items := [good, {"subject": "other", "kind": "mulch basin", "porosity_wanted": 9}]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	mulch_holds_surge.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "porosity_wanted": 0.1}]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	mulch_holds_surge.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_not_shown_porosity_wanted if {
	items := [good, {"subject": "other", "kind": "mulch basin"}]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	mulch_holds_surge.excused == set() with input as {"soakage": items}
		with data.limits as limits
}

test_excused_trench if {
	items := [good, {"subject": "other", "kind": "infiltration trench", "porosity_wanted": 0.1}]
	mulch_holds_surge.proved == {"good"} with input as {"soakage": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "an infiltration trench holds gravel, not mulch"}}
	mulch_holds_surge.excused == wanted with input as {"soakage": items}
		with data.limits as limits
}
