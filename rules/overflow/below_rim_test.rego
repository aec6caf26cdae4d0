package greysill.overflow.below_rim_test

import rego.v2

import data.greysill.overflow.below_rim

good := {"subject": "good", "below_rim": true}

test_pass_good if {
	items := [good]
	below_rim.proved == {"good"} with input as {"spillways": items}
}

test_fail_not_below if {
	items := [good, {"subject": "other", "below_rim": false}]
	below_rim.proved == {"good"} with input as {"spillways": items}
}

test_not_shown_below_rim if {
	items := [good, {"subject": "other"}]
	below_rim.proved == {"good"} with input as {"spillways": items}
}
