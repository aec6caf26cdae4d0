package greysill.bed.liner_holes_test

import rego.v2

import data.greysill.bed.liner_holes

good := {"subject": "good", "liner_holes_drawn": true}

test_pass_drawn if {
	items := [good, {"subject": "other", "liner_holes_drawn": true}]
	liner_holes.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_none_drawn if {
	items := [good, {"subject": "other", "liner_holes_drawn": false}]
	liner_holes.proved == {"good"} with input as {"beds": items}
}

test_not_shown_liner_holes_drawn if {
	items := [good, {"subject": "other"}]
	liner_holes.proved == {"good"} with input as {"beds": items}
}
