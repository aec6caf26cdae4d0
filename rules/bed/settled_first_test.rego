package greysill.bed.settled_first_test

import rego.v2

import data.greysill.bed.settled_first

good := {"subject": "good", "settled_first": true}

test_pass_settled if {
	items := [good, {"subject": "other", "settled_first": true}]
	settled_first.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_straight_from_the_house if {
	items := [good, {"subject": "other", "settled_first": false}]
	settled_first.proved == {"good"} with input as {"beds": items}
}

test_not_shown_settled_first if {
	items := [good, {"subject": "other"}]
	settled_first.proved == {"good"} with input as {"beds": items}
}
