package greysill.drains.under_driveway_test

import rego.v2

import data.greysill.drains.under_driveway

good := {"subject": "pipe-1", "under_driveway": false}

test_pass_elsewhere if {
	items := [good]
	under_driveway.proved == {"pipe-1"} with input as {"pipes": items}
}

test_pass_cased if {
	items := [{"subject": "cased", "under_driveway": true, "cased": true}]
	under_driveway.proved == {"cased"} with input as {"pipes": items}
}

test_fail_not_cased if {
	items := [good, {"subject": "bad", "under_driveway": true, "cased": false}]
	under_driveway.proved == {"pipe-1"} with input as {"pipes": items}
}

test_not_shown_under_driveway if {
	items := [good, {"subject": "unknown", "cased": true}]
	under_driveway.proved == {"pipe-1"} with input as {"pipes": items}
}

test_not_shown_cased if {
	items := [good, {"subject": "unknown", "under_driveway": true}]
	under_driveway.proved == {"pipe-1"} with input as {"pipes": items}
}
