package greysill.pond.stocking_permit_test

import rego.v2

import data.greysill.pond.stocking_permit

good := {"subject": "good", "stocked": true, "has_stocking_permit": true}

test_pass_good if {
	items := [good]
	stocking_permit.proved == {"good"} with input as {"ponds": items}
}

test_fail_no_leave if {
	items := [good, {"subject": "other", "stocked": true, "has_stocking_permit": false}]
	stocking_permit.proved == {"good"} with input as {"ponds": items}
	stocking_permit.excused == set() with input as {"ponds": items}
}

test_not_shown_stocked if {
	items := [good, {"subject": "other", "has_stocking_permit": true}]
	stocking_permit.proved == {"good"} with input as {"ponds": items}
	stocking_permit.excused == set() with input as {"ponds": items}
}

test_not_shown_has_stocking_permit if {
	items := [good, {"subject": "other", "stocked": true}]
	stocking_permit.proved == {"good"} with input as {"ponds": items}
	stocking_permit.excused == set() with input as {"ponds": items}
}

test_excused_no_fish if {
	items := [good, {"subject": "other", "stocked": false, "has_stocking_permit": true}]
	stocking_permit.proved == {"good"} with input as {"ponds": items}
	wanted := {{"subject": "other", "reason": "no fish are drawn in it"}}
	stocking_permit.excused == wanted with input as {"ponds": items}
}
