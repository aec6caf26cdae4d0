package greysill.overflow.spillway_lining_test

import rego.v2

import data.greysill.overflow.spillway_lining

good := {"subject": "good", "kind": "spillway", "lining_stated": true}

test_pass_good if {
	items := [good]
	spillway_lining.proved == {"good"} with input as {"spillways": items}
}

test_fail_bare if {
	items := [good, {"subject": "other", "kind": "spillway", "lining_stated": false}]
	spillway_lining.proved == {"good"} with input as {"spillways": items}
	spillway_lining.excused == set() with input as {"spillways": items}
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "lining_stated": true}]
	spillway_lining.proved == {"good"} with input as {"spillways": items}
	spillway_lining.excused == set() with input as {"spillways": items}
}

test_not_shown_lining_stated if {
	items := [good, {"subject": "other", "kind": "spillway"}]
	spillway_lining.proved == {"good"} with input as {"spillways": items}
	spillway_lining.excused == set() with input as {"spillways": items}
}

test_excused_pipe if {
	items := [good, {"subject": "other", "kind": "overflow pipe", "lining_stated": true}]
	spillway_lining.proved == {"good"} with input as {"spillways": items}
	wanted := {{"subject": "other", "reason": "a pipe does not wash out"}}
	spillway_lining.excused == wanted with input as {"spillways": items}
}
