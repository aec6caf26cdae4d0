package greysill.bed.washed_test

import rego.v2

import data.greysill.bed.washed

good := {"subject": "good", "washed": true}

test_pass_washed if {
	items := [good, {"subject": "other", "washed": true}]
	washed.proved == {"good", "other"} with input as {"layers": items}
}

test_fail_not_washed if {
	items := [good, {"subject": "other", "washed": false}]
	washed.proved == {"good"} with input as {"layers": items}
}

test_not_shown_washed if {
	items := [good, {"subject": "other"}]
	washed.proved == {"good"} with input as {"layers": items}
}
