package greysill.bed.rim_test

import rego.v2

import data.greysill.bed.rim

good := {"subject": "good", "rim_above_surface": true}

test_pass_rim_above if {
	items := [good, {"subject": "other", "rim_above_surface": true}]
	rim.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_gravel_above_the_rim if {
	items := [good, {"subject": "other", "rim_above_surface": false}]
	rim.proved == {"good"} with input as {"beds": items}
}

test_not_shown_rim_above_surface if {
	items := [good, {"subject": "other"}]
	rim.proved == {"good"} with input as {"beds": items}
}
